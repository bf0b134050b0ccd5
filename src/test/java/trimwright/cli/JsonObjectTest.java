package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class JsonObjectTest {

    @Test
    void membersKeepTheirOrderAndNumbersTheirDigits() {
        JsonObject json = new JsonObject()
                .number("b", 0.1 + 0.2)
                .number("a", -0.0)
                .number("gone", Optional.empty())
                .count("n", 3)
                .truth("t", true)
                .text("s", "a \"b\"\n°")
                .vector("v", new Vector3D(1, 2, 3))
                .object("o", new JsonObject())
                .list("l", List.of(new JsonObject().count("x", 1), "y"));
        assertEquals("""
                {
                  "b" : 0.30000000000000004,
                  "a" : 0.0,
                  "n" : 3,
                  "t" : true,
                  "s" : "a \\"b\\"\\n°",
                  "v" : [ 1.0, 2.0, 3.0 ],
                  "o" : { },
                  "l" : [ {
                    "x" : 1
                  }, "y" ]
                }
                """, json.render());
    }

    @Test
    void whatIsNotFiniteIsNull() {
        JsonObject json =
                new JsonObject().number("a", Double.NaN).vector("v", new Vector3D(1, Double.POSITIVE_INFINITY, 0));
        assertEquals("{\n  \"a\" : null,\n  \"v\" : [ 1.0, null, 0.0 ]\n}\n", json.render());
    }

    @Test
    void aKeyIsPutOnce() {
        JsonObject json = new JsonObject().count("a", 1);
        assertThrows(IllegalStateException.class, () -> json.count("a", 2));
    }
}
