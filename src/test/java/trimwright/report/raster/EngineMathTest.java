package trimwright.report.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.jme3.math.Matrix4f;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.concurrent.Callable;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/**
 * The tool's jar carries of the graphics engine only its mathematics. Some of that reaches for the rest of the engine when called,
 * such as the product of two Matrix4f or Quaternion.toRotationMatrix(Matrix4f); nothing that draws may do so.
 */
class EngineMathTest {

    /** What the shade filter in the build keeps of the engine. */
    private static final List<String> KEPT = List.of("com.jme3.math.", "com.jme3.export.", "com.jme3.util.");

    /** Loads everything anew, but of the engine only what the jar has. */
    private static final class JarLoader extends ClassLoader {

        JarLoader() {
            super(ClassLoader.getPlatformClassLoader());
        }

        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            boolean engine = name.startsWith("com.jme3.");
            if (engine && KEPT.stream().noneMatch(name::startsWith)) {
                throw new ClassNotFoundException(name);
            }
            String file = name.replace('.', '/') + ".class";
            try (InputStream in = EngineMathTest.class.getClassLoader().getResourceAsStream(file)) {
                if (in == null) {
                    throw new ClassNotFoundException(name);
                }
                byte[] bytes = in.readAllBytes();
                return defineClass(name, bytes, 0, bytes.length);
            } catch (IOException e) {
                throw new ClassNotFoundException(name, e);
            }
        }
    }

    /** Everything that pictures do with the engine. */
    static final class Draws implements Callable<Integer> {

        @Override
        public Integer call() {
            View view = View.of(Vector3D.ZERO, Vector3D.PLUS_I, Vector3D.PLUS_K, 1, 10, 10);
            Layer layer = new Canvas(20, 20, 0).layer(0);
            layer.line(view.project(Vector3D.ZERO), view.project(new Vector3D(5, 0, 5)), 2, -1, 0);
            return Math.round(view.project(new Vector3D(3, 0, 0)).x);
        }
    }

    /** What must not be called: shows that the loader does withhold the rest of the engine. */
    static final class Strays implements Callable<Integer> {

        @Override
        public Integer call() {
            return (int) Matrix4f.IDENTITY.mult(Matrix4f.IDENTITY).m00;
        }
    }

    private static Object run(Class<?> what) throws ReflectiveOperationException {
        Class<?> loaded = new JarLoader().loadClass(what.getName());
        var constructor = loaded.getDeclaredConstructor();
        constructor.setAccessible(true);
        var call = loaded.getMethod("call");
        call.setAccessible(true);
        return call.invoke(constructor.newInstance());
    }

    @Test
    void drawingNeedsNoMoreOfTheEngineThanTheJarHas() throws Exception {
        assertEquals(13, run(Draws.class));
        InvocationTargetException e = assertThrows(InvocationTargetException.class, () -> run(Strays.class));
        assertEquals(NoClassDefFoundError.class, e.getCause().getClass());
    }
}
