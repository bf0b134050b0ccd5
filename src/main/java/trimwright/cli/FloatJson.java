package trimwright.cli;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;
import trimwright.statics.Condition;
import trimwright.statics.Draughts;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.PaintedOffset;
import trimwright.statics.Submerged;

/** The JSON keys of a floating boat, for every command that reports one. Described in docs/commands.md. */
final class FloatJson {

    private static final double MM2_PER_CM2 = 100;
    private static final double MM3_PER_CM3 = 1000;

    private FloatJson() {}

    /** All keys of {@code float}. */
    static JsonObject of(Flotation flotation) {
        Condition condition = flotation.condition();
        JsonObject json = new JsonObject()
                .number("waterDensityGPerCm3", condition.boat().water().densityGPerCm3())
                .number("massG", condition.massG());
        if (flotation.settled().isEmpty()) {
            // With the fills at hand, her water lying as she would stand upright; `submerged` always has full tanks.
            return json.vector("centreOfGravityMm", condition.centreOfGravityMm(WaterPlane.level(0)))
                    .text("outcome", "sinks")
                    .number("deficitG", -flotation.reserveG())
                    .object("submerged", of(flotation.submerged()));
        }
        Equilibrium rest = flotation.settled().get();
        json.vector("centreOfGravityMm", rest.centreOfGravityMm()).text("outcome", "floats");
        attitude(json, rest);
        json.number("displacedCm3", rest.sums().volumeMm3() / MM3_PER_CM3)
                .vector("centreOfBuoyancyMm", rest.centreOfBuoyancyMm())
                .number("waterplaneCm2", rest.sums().waterplaneMm2() / MM2_PER_CM2)
                .number("wettedCm2", flotation.wettedMm2() / MM2_PER_CM2)
                .number("gmTransverseMm", rest.gmTransverseMm())
                .number("gmLongitudinalMm", rest.gmLongitudinalMm())
                .number("bgMm", rest.bgMm())
                .number("reserveG", flotation.reserveG())
                .number("gramsPerMmImmersion", flotation.gramsPerMmImmersion())
                .number("gmmPerDegreeList", flotation.gmmPerDegreeList())
                .number("gmmPerDegreeTrim", flotation.gmmPerDegreeTrim());
        flotation.fromPaintedLine().ifPresent(off -> json.object("offPaintedLine", of(off)));
        Draughts.of(condition.boat(), rest.plane()).ifPresent(d -> json.object("draughts", of(d)));
        return json.list(
                        "attitudes",
                        flotation.attitudes().stream().map(FloatJson::of).toList())
                .object("submerged", of(flotation.submerged()));
    }

    /** One stable attitude. */
    static JsonObject of(Equilibrium rest) {
        JsonObject json = new JsonObject();
        attitude(json, rest);
        return json.number("energyMm", rest.energyMm());
    }

    /** She wholly under water with her tanks full. */
    static JsonObject of(Submerged submerged) {
        return attitude(new JsonObject(), submerged.up())
                .number("bgMm", submerged.bgMm())
                .number("residualG", submerged.residualG());
    }

    private static JsonObject of(PaintedOffset off) {
        return new JsonObject()
                .number("bowMm", off.bowMm())
                .number("sternMm", off.sternMm())
                .number("listDeg", off.listDeg());
    }

    private static JsonObject of(Draughts draughts) {
        return new JsonObject()
                .number("bowXMm", draughts.bowXMm())
                .number("bowMm", draughts.bowMm())
                .number("sternXMm", draughts.sternXMm())
                .number("sternMm", draughts.sternMm());
    }

    private static void attitude(JsonObject json, Equilibrium rest) {
        json.vector("upVector", rest.plane().up())
                .number("heightMm", rest.plane().heightMm())
                .number("heelDeg", rest.heelDeg())
                .number("trimDeg", rest.trimDeg());
    }

    private static JsonObject attitude(JsonObject json, Vector3D up) {
        return json.vector("upVector", up)
                .number("heelDeg", Equilibrium.heelDeg(up))
                .number("trimDeg", Equilibrium.trimDeg(up));
    }
}
