package trimwright.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.file.BoatFile;
import trimwright.mesh.Bounds;
import trimwright.report.Measure;
import trimwright.report.PlanWords;

/** Where pieces are drawn, read from the drawing with its own rulers, as a builder would, against where they are. */
class PlaceDrawingTest {

    /** Half a px of the drawing is less than this in Heron. */
    private static final double TOLERANCE_MM = 0.8;

    private static Part piece(String id, Kind kind, double x0, double x1, double y0, double y1, double z0, double z1) {
        return TestParts.solid(
                id,
                kind,
                new BoxShape(new Vector3D(x0, y0, z0), new Vector3D(x1, y1, z1)),
                kind == Kind.FOAM ? 0.03 : 11.34);
    }

    private static final List<Part> PIECES = List.of(
            piece("lead", Kind.BALLAST, 320, 360.8, -8.25, 8.25, 2.6, 10.6),
            piece("port foam", Kind.FOAM, 541, 654, 36, 41, 64, 72),
            piece("starboard foam", Kind.FOAM, 541, 654, -41, -36, 64, 72));

    private static List<Element> elements(NodeList nodes, String cssClass) {
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            Element e = (Element) nodes.item(i);
            if (List.of(e.getAttribute("class").split(" ")).contains(cssClass)) {
                found.add(e);
            }
        }
        return found;
    }

    private static double number(Element e, String name) {
        return Double.parseDouble(e.getAttribute(name));
    }

    /** A ruler: from px to the value that its ticks say. */
    private record Ruler(double px0, double pxPerUnit) {

        double read(double px) {
            return (px - px0) / pxPerUnit;
        }

        /** Ticks and the numbers nearest to them. */
        static Ruler of(List<Element> ticks, NodeList texts, boolean along) {
            List<double[]> points = new ArrayList<>();
            for (Element tick : ticks) {
                String[] start = tick.getAttribute("d").substring(1).split("[ ,]");
                double x = Double.parseDouble(start[0]);
                double y = Double.parseDouble(start[1]);
                Element nearest = null;
                double best = Double.POSITIVE_INFINITY;
                for (int i = 0; i < texts.getLength(); i++) {
                    Element text = (Element) texts.item(i);
                    double off = Math.hypot(
                            number(text, "x") - x + (along ? 0 : 3), number(text, "y") - y - (along ? 18 : 4.5));
                    if (off < best && text.getTextContent().matches("[0-9.]+")) {
                        best = off;
                        nearest = text;
                    }
                }
                points.add(new double[] {along ? x : y, Double.parseDouble(nearest.getTextContent())});
            }
            points.sort(Comparator.comparingDouble(p -> p[1]));
            double[] first = points.get(0);
            double[] last = points.get(points.size() - 1);
            assertEquals(0, first[1]);
            return new Ruler(first[0], (last[0] - first[0]) / last[1]);
        }
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void piecesStandWhereTheRulersSayAndTheNumbersAgree(Measure measure) throws Exception {
        Boat boat = BoatFile.read(Path.of("sample-meshes/heron.boat.json")).boat();
        Bounds hull = PlanWords.hull(boat);
        String svg = new PlaceDrawing(boat, PIECES, measure).svg();
        Element root = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)))
                .getDocumentElement();
        NodeList rects = root.getElementsByTagName("rect");
        NodeList texts = root.getElementsByTagName("text");
        NodeList paths = root.getElementsByTagName("path");
        Ruler along = Ruler.of(elements(paths, "along"), texts, true);
        Ruler up = Ruler.of(elements(paths, "up"), texts, false);
        List<Element> sides = elements(rects, "side");
        List<Element> plans = elements(rects, "plan");
        assertEquals(3, sides.size());
        String centre = elements(paths, "centre").get(0).getAttribute("d");
        double centrePx = Double.parseDouble(centre.substring(1).split("[ ,]")[1]);
        double off = TOLERANCE_MM / measure.typedMm(1);
        for (int i = 0; i < 3; i++) {
            Bounds b = PIECES.get(i).shape().orElseThrow().bounds();
            Element side = sides.get(i);
            Element plan = plans.get(i);
            assertEquals(
                    PIECES.get(i).kind() == Kind.FOAM,
                    side.getAttribute("class").startsWith("foam"));
            double left = number(side, "x");
            assertEquals(measure.inLengthUnit(b.minX() - hull.minX()), along.read(left), off);
            assertEquals(measure.inLengthUnit(b.maxX() - hull.minX()), along.read(left + number(side, "width")), off);
            assertEquals(measure.inLengthUnit(b.maxZ() - hull.minZ()), up.read(number(side, "y")), off);
            assertEquals(
                    measure.inLengthUnit(b.minZ() - hull.minZ()),
                    up.read(number(side, "y") + number(side, "height")),
                    off);
            assertEquals(left, number(plan, "x"), 0.01);
            // Port is up, at the scale of the length.
            double port = (centrePx - number(plan, "y")) / along.pxPerUnit();
            assertEquals(measure.inLengthUnit(b.maxY()), port, off);
            assertEquals(measure.inLengthUnit(b.minY()), port - number(plan, "height") / along.pxPerUnit(), off);
        }
        List<String> words = new ArrayList<>();
        for (int i = 0; i < texts.getLength(); i++) {
            words.add(texts.item(i).getTextContent());
        }
        // 541 mm from the stern and 64 mm above the keel, with 25.4 mm to the inch.
        String stern = measure == Measure.METRIC ? "541.0" : String.format(Locale.ROOT, "%.3f", 541 / 25.4);
        String under = measure == Measure.METRIC ? "64.0" : String.format(Locale.ROOT, "%.3f", 64 / 25.4);
        String edge = measure == Measure.METRIC ? "-41.0" : String.format(Locale.ROOT, "%.3f", -41 / 25.4);
        assertTrue(words.containsAll(List.of(stern, under, edge, "2, 3")), words.toString());
    }
}
