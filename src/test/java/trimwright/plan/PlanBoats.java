package trimwright.plan;

import static trimwright.TestParts.at;
import static trimwright.TestParts.box;
import static trimwright.TestParts.hull;
import static trimwright.TestParts.weighed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.TestParts;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.boat.Zone;
import trimwright.mesh.Solids;

/** Boats to plan for: a box-shaped submarine whose figures can be followed by hand. */
final class PlanBoats {

    private PlanBoats() {}

    static Part tank(String id, String inside, Shape shape) {
        return TestParts.tank(id, shape, Optional.of(inside));
    }

    static Zone zone(String id, Zone.Use use, BoxShape box, boolean mirror) {
        return new Zone(id, use, box, Optional.empty(), mirror);
    }

    /**
     * A free-flooding box 800 × 120 × 110 mm of 1.5 mm with a tower, a cylinder of 76 mm and a tank in it; the line at 84 mm.
     *
     * @param tankMm length of the tank about x = 430
     * @param cylinderG mass of the cylinder
     * @param sideMm how far its centre of mass lies to port
     */
    static Boat submarine(double tankMm, double cylinderG, double sideMm) {
        List<Part> parts = new ArrayList<>();
        parts.add(hull("hull", Solids.box(0, -60, 0, 800, 60, 110), new HullBuild.Skin(1.5), 1.2));
        parts.add(weighed("tower", Kind.FITTING, box(380, -12, 110, 460, 12, 150), 60, at(420, 0, 130)));
        parts.add(weighed(
                "wtc",
                Kind.CYLINDER,
                new BarShape(at(150, 0, 50), at(650, 0, 50), 76, BarShape.Ends.FLAT),
                cylinderG,
                at(395, sideMm, 46)));
        parts.add(tank(
                "tank",
                "wtc",
                new BarShape(at(430 - tankMm / 2, 0, 50), at(430 + tankMm / 2, 0, 50), 70, BarShape.Ends.FLAT)));
        return new Boat(
                "box submarine",
                Water.FRESH,
                Optional.of(new PaintedLine(List.of(at(20, 0, 84), at(780, 0, 84)))),
                parts,
                List.of(
                        zone("keel", Zone.Use.BALLAST, box(60, -9, 2, 740, 9, 11), false),
                        zone("saddle", Zone.Use.FOAM, box(60, 40, 40, 740, 57, 100), true)),
                Targets.NONE);
    }

    /**
     * A raft that can be followed by hand: a watertight box 400 × 100 × 60 mm in water of 1 g/cm³, painted at 40 mm, where she displaces 1600 g. G of the
     * raft alone is given; her tanks, if she has any, are parts inside {@code raft}.
     */
    static Boat raft(double massG, Vector3D centre, List<Zone> zones, Part... others) {
        List<Part> parts = new ArrayList<>();
        parts.add(weighed("raft", Kind.CYLINDER, box(0, -50, 0, 400, 50, 60), massG, centre));
        parts.addAll(List.of(others));
        return new Boat(
                "raft",
                Water.ofDensity(1),
                Optional.of(new PaintedLine(List.of(at(0, 0, 40), at(400, 0, 40)))),
                parts,
                zones,
                Targets.NONE);
    }

    /** A raft that dives: with a tank in the middle, as long as said and 80 × 25 mm across, 20 mm above the bottom. At 385 mm 30 g are left to her. */
    static Boat divingRaft(double massG, Vector3D centre, double tankMm, List<Zone> zones, Part... others) {
        List<Part> all = new ArrayList<>(List.of(others));
        all.add(tank("tank", "raft", box(200 - tankMm / 2, -40, 7.5, 200 + tankMm / 2, 40, 32.5)));
        return raft(massG, centre, zones, all.toArray(Part[]::new));
    }

    static final Wanted WANTED = new Wanted(6, 4, new Targets.Band(20, 40), 0.5, 0.3, 1.5);

    static PlanRequest request(Boat boat, Wanted wanted, Goal goal) {
        return new PlanRequest(
                boat,
                boat.paintedLine().orElseThrow().plane(),
                wanted,
                goal,
                PlanRequest.LEAD_G_PER_CM3,
                PlanRequest.FOAM_G_PER_CM3,
                Set.of());
    }
}
