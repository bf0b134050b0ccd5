package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Piece;
import trimwright.boat.Zone;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Bounds;
import trimwright.mesh.Soundness;

/**
 * Zones for a boat whose file gives none: keel, bow, stern, sides below the painted line, above the cylinder, above the line. Each is a box that
 * reaches as far as the hull; what of it is really free is measured afterwards. In a flooded hull lead goes into the keel and foam everywhere else; in a
 * watertight one foam is of no use and lead may go anywhere below the line.
 */
public final class ZoneFinder {

    /** Height of the keel zone as a share of the draught where no cylinder leaves room below it (common practice, no source). */
    private static final double KEEL_SHARE = 0.15;
    /** The same in a watertight hull, where lead lies on the bottom. */
    private static final double DRY_KEEL_SHARE = 0.4;
    /** Length of the bow and stern zone as a share of the hull where there is no cylinder. */
    private static final double END_SHARE = 0.25;
    /** A zone less high, wide or long than this is not worth having. */
    private static final double LEAST_MM = 4;

    private final List<Zone> zones = new ArrayList<>();
    private final Bounds hull;
    private final Optional<Bounds> cylinder;
    private final double lineMm;

    private ZoneFinder(Bounds hull, Optional<Bounds> cylinder, double lineMm) {
        this.hull = hull;
        this.cylinder = cylinder;
        this.lineMm = Math.max(hull.minZ(), Math.min(hull.maxZ(), lineMm));
    }

    /** Whether a boat has a hull whose inside is known; of an open skin nobody can tell where its inside ends. */
    public static boolean canFind(Boat boat) {
        return boat.parts().stream().anyMatch(p -> p.isHull() && p.inside().isEmpty()) && !hasOpenHull(boat);
    }

    /** Whether some hull of hers is an open surface. */
    public static boolean hasOpenHull(Boat boat) {
        return boat.parts().stream()
                .filter(p -> p.build().orElse(null) instanceof HullBuild.Skin)
                .anyMatch(p -> !Soundness.quick(((MeshShape) p.shape().orElseThrow()).mesh())
                        .closed());
    }

    /** The boat with zones of her own or, where she has none and they can be found, with those. */
    static Boat withZones(Boat boat, WaterPlane line) {
        return boat.zones().isEmpty() && canFind(boat) ? boat.withZones(find(boat, line)) : boat;
    }

    private static List<Zone> find(Boat boat, WaterPlane line) {
        Optional<Bounds> hull = Optional.empty();
        Optional<Bounds> cylinder = Optional.empty();
        boolean watertight = true;
        for (Piece piece : boat.pieces()) {
            if (piece.shape().isEmpty() || piece.part().inside().isPresent()) {
                continue;
            }
            Bounds box = piece.shape().get().bounds();
            if (piece.part().isHull()) {
                hull = Optional.of(hull.map(box::union).orElse(box));
                watertight &= !FreeSpace.floods(piece.part());
            } else if (piece.part().kind() == Kind.CYLINDER) {
                cylinder = Optional.of(cylinder.map(box::union).orElse(box));
            }
        }
        Bounds around = hull.orElseThrow();
        double lineMm = Room.heightAt(line, around.centreX(), around.centreY());
        ZoneFinder finder = new ZoneFinder(around, cylinder, lineMm);
        return watertight ? finder.dry() : finder.flooded();
    }

    private List<Zone> flooded() {
        double keel = keelMm();
        double aft = cylinder.map(Bounds::minX).orElse(hull.minX() + END_SHARE * hull.sizeX());
        double fore = cylinder.map(Bounds::maxX).orElse(hull.maxX() - END_SHARE * hull.sizeX());
        across("keel", Zone.Use.BALLAST, hull.minX(), hull.maxX(), hull.minZ(), keel);
        across("stern", Zone.Use.FOAM, hull.minX(), aft, keel, lineMm);
        across("bow", Zone.Use.FOAM, fore, hull.maxX(), keel, lineMm);
        cylinder.ifPresent(c -> {
            double half = Math.max(Math.abs(c.minY()), Math.abs(c.maxY())) / 2;
            add("above the cylinder", Zone.Use.FOAM, aft, fore, -half, half, c.maxZ(), hull.maxZ(), false);
        });
        double side = Math.max(-hull.minY(), hull.maxY());
        add("sides", Zone.Use.FOAM, aft, fore, 0, side, keel, lineMm, true);
        across("above the line", Zone.Use.FOAM, hull.minX(), hull.maxX(), lineMm, hull.maxZ());
        return zones;
    }

    private List<Zone> dry() {
        double keel = hull.minZ() + DRY_KEEL_SHARE * (lineMm - hull.minZ());
        double aft = hull.minX() + END_SHARE * hull.sizeX();
        double fore = hull.maxX() - END_SHARE * hull.sizeX();
        double side = Math.max(-hull.minY(), hull.maxY());
        add("keel", Zone.Use.BALLAST, hull.minX(), hull.maxX(), -side / 3, side / 3, hull.minZ(), keel, false);
        across("stern", Zone.Use.BALLAST, hull.minX(), aft, keel, lineMm);
        across("bow", Zone.Use.BALLAST, fore, hull.maxX(), keel, lineMm);
        add("sides", Zone.Use.BALLAST, aft, fore, 0, side, hull.minZ(), lineMm, true);
        return zones;
    }

    /** Height up to which lead may lie in the keel: to the underside of the cylinder, if that leaves room. */
    private double keelMm() {
        double usual = hull.minZ() + Math.max(LEAST_MM, KEEL_SHARE * (lineMm - hull.minZ()));
        double under = cylinder.map(Bounds::minZ).orElse(usual);
        return under > hull.minZ() + LEAST_MM && under < lineMm ? under : Math.min(usual, lineMm);
    }

    private void across(String id, Zone.Use use, double x0, double x1, double z0, double z1) {
        add(id, use, x0, x1, hull.minY(), hull.maxY(), z0, z1, false);
    }

    private void add(
            String id, Zone.Use use, double x0, double x1, double y0, double y1, double z0, double z1, boolean mirror) {
        if (x1 - x0 >= LEAST_MM && y1 - y0 >= LEAST_MM && z1 - z0 >= LEAST_MM) {
            BoxShape box = new BoxShape(new Vector3D(x0, y0, z0), new Vector3D(x1, y1, z1));
            zones.add(new Zone(id, use, box, Optional.empty(), mirror));
        }
    }
}
