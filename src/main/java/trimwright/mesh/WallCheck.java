package trimwright.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/**
 * Whether a mesh looks like what it is declared to be: an outer surface, or the two surfaces of a wall. A thin closed wall
 * has an area of twice its middle surface, so that 2 V / A is its thickness; of an outer surface alone 2 V / A is about a third to
 * a half of the hull's beam. Where a mesh is open, rays tell instead: those that start on the outside of a wall meet its other side at
 * once, facing the other way.
 */
final class WallCheck {

    /** Share of the shortest side below which 2 V / A, or a ray, is a wall. Hulls are above 0.2, walls below 0.07. */
    private static final double THIN = 0.1;

    /** Printed walls are thinner than this; common practice, no source. */
    private static final double THICKEST_WALL_MM = 8;

    /** Share of rays that must meet a wall; fins and edges of an outer surface alone are a small part of it. */
    private static final double MOST_RAYS = 0.6;

    /** Of the tetrahedra from the middle to the triangles, so much more must be turned inward than outward. */
    private static final double INSIDE_OUT = 0.5;

    private static final int RAYS = 256;
    private static final int FEWEST_RAYS = 8;

    private final TriangleMesh mesh;
    private final Soundness soundness;
    private final MeshUse use;
    private final List<Finding> findings = new ArrayList<>();

    WallCheck(TriangleMesh mesh, Soundness soundness, MeshUse use) {
        this.mesh = mesh;
        this.soundness = soundness;
        this.use = use;
    }

    List<Finding> run() {
        boolean solid = soundness.closed() && soundness.oriented();
        if (use.needsClosed() && !solid) {
            List<Object> values = new ArrayList<>(
                    List.of("build", use.symbol(), "closed", soundness.closed(), "oriented", soundness.oriented()));
            values.addAll(new Missing(mesh).values());
            findings.add(Finding.of(Code.MESH_BUILD_NEEDS_CLOSED, new Place.Whole(), values.toArray()));
        }
        // That of the largest shell: several pieces side by side say nothing about how thick one is.
        double shortest = soundness.shells().isEmpty()
                ? 0
                : soundness.shells().get(0).bounds().shortestSide();
        if (solid) {
            double wall = 2 * Math.abs(soundness.volumeMm3().orElseThrow()) / soundness.areaMm2();
            if (use.isOuterSurface() && wall < THIN * shortest) {
                looksLikeWall(wall, "sign", "volume");
            } else if (use.isOuterSurface()) {
                soundness.findings().forEach(finding -> lookInside(finding, THIN * shortest));
            } else if (use == MeshUse.PRINTED && wall > Math.max(THICKEST_WALL_MM, THIN * shortest)) {
                findings.add(Finding.of(
                        Code.MESH_LOOKS_LIKE_OUTER_SURFACE, new Place.Whole(), "build", use.symbol(), "wallMm", wall));
            }
        } else if (use.isOuterSurface() && shortest > 0) {
            shootRays(THIN * shortest);
        }
        if (use == MeshUse.SKIN && !soundness.closed() && soundness.oriented()) {
            lookAtSides();
        }
        return findings;
    }

    /** The outside of an open hull looks away from its middle almost everywhere; if it looks there, it is inside out. */
    private void lookAtSides() {
        Bounds bounds = mesh.bounds();
        double[] xyz = mesh.xyz();
        double away = 0;
        double inAll = 0;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            int a = 3 * mesh.corners()[3 * t];
            int b = 3 * mesh.corners()[3 * t + 1];
            int c = 3 * mesh.corners()[3 * t + 2];
            double volume = Triangles.tripleProduct(
                    xyz[a] - bounds.centreX(),
                    xyz[a + 1] - bounds.centreY(),
                    xyz[a + 2] - bounds.centreZ(),
                    xyz[b] - bounds.centreX(),
                    xyz[b + 1] - bounds.centreY(),
                    xyz[b + 2] - bounds.centreZ(),
                    xyz[c] - bounds.centreX(),
                    xyz[c + 1] - bounds.centreY(),
                    xyz[c + 2] - bounds.centreZ());
            away += volume;
            inAll += Math.abs(volume);
        }
        if (away < -INSIDE_OUT * inAll) {
            findings.add(Finding.of(
                    Code.MESH_SKIN_LOOKS_INSIDE_OUT,
                    new Place.Whole(),
                    "build",
                    use.symbol(),
                    "inwardPercent",
                    50 * (1 - away / inAll)));
        }
    }

    private void shootRays(double thin) {
        double tolerance = SoundnessCheck.tolerance(mesh.bounds());
        Columns[] columns = new Columns[3];
        int stride = Math.max(1, mesh.triangleCount() / RAYS);
        double[] walls = new double[2 * RAYS];
        int rays = 0;
        int onWall = 0;
        for (int t = 0; t < mesh.triangleCount() && rays < walls.length; t += stride) {
            Ray ray = new Ray(t);
            if (ray.alongAxis == 0) {
                continue;
            }
            rays++;
            if (columns[ray.axis] == null) {
                columns[ray.axis] = new Columns(mesh, ray.axis, tolerance);
            }
            columns[ray.axis].visit(ray.x, ray.y, ray.z, ray);
            if (ray.nearest < thin) {
                walls[onWall++] = ray.nearest;
            }
        }
        if (rays >= FEWEST_RAYS && onWall >= MOST_RAYS * rays) {
            Arrays.sort(walls, 0, onWall);
            looksLikeWall(walls[onWall / 2], "sign", "rays", "raysOnWall", onWall, "rays", rays);
        }
    }

    private void looksLikeWall(double wall, Object... more) {
        List<Object> values = new ArrayList<>(List.of("build", use.symbol(), "wallMm", wall));
        values.addAll(List.of(more));
        findings.add(Finding.of(Code.MESH_LOOKS_LIKE_WALL, new Place.Whole(), values.toArray()));
    }

    /** A shell inside another that follows it closely is the inner side of its wall, whichever way it is turned. */
    private void lookInside(Finding finding, double thin) {
        if (finding.code() != Code.MESH_CAVITY && finding.code() != Code.MESH_COUNTED_TWICE) {
            return;
        }
        int inner = (Integer) finding.values().get("shell");
        int outer = (Integer) finding.values().get("inside");
        Shells shells = soundness.numbering();
        double between = Math.abs(shells.volume(outer)) - Math.abs(shells.volume(inner));
        double wall = 2 * between / (shells.area(outer) + shells.area(inner));
        if (wall < thin) {
            looksLikeWall(wall, "sign", "nested", "shell", inner, "inside", outer);
        }
    }

    /** From the middle of a triangle inward, along the coordinate axis that its normal follows most. */
    private final class Ray implements Columns.Visitor {

        private final int axis;
        private final int start;
        private final double x;
        private final double y;
        private final double z;
        /** Component along the axis of the unit normal at the start. */
        private final double alongAxis;

        private double nearest = Double.POSITIVE_INFINITY;

        Ray(int start) {
            this.start = start;
            x = middle(0);
            y = middle(1);
            z = middle(2);
            double nx = normal(start, 0);
            double ny = normal(start, 1);
            double nz = normal(start, 2);
            boolean mostX = Math.abs(nx) >= Math.abs(ny) && Math.abs(nx) >= Math.abs(nz);
            axis = mostX ? 0 : Math.abs(ny) >= Math.abs(nz) ? 1 : 2;
            alongAxis = normal(start, axis);
        }

        @Override
        public void crosses(int triangle, int sense, double distance) {
            double otherAlongAxis = normal(triangle, axis);
            if (triangle == start || sense * alongAxis > 0 || otherAlongAxis == 0) {
                return;
            }
            // Along the axis the other plane lies at −distance / (its normal's component); inward is against our
            // normal.
            double ahead = -distance / otherAlongAxis * -Math.signum(alongAxis);
            if (ahead > 0) {
                nearest = Math.min(nearest, ahead * Math.abs(alongAxis));
            }
        }

        @Override
        public void touches(int triangle) {
            // The start itself and its neighbours.
        }

        private double middle(int k) {
            int[] corners = mesh.corners();
            double[] xyz = mesh.xyz();
            return (xyz[3 * corners[3 * start] + k]
                            + xyz[3 * corners[3 * start + 1] + k]
                            + xyz[3 * corners[3 * start + 2] + k])
                    / 3;
        }

        /** A component of the unit normal; zero where there is none. */
        private double normal(int t, int k) {
            double[] xyz = mesh.xyz();
            int a = 3 * mesh.corners()[3 * t];
            int b = 3 * mesh.corners()[3 * t + 1];
            int c = 3 * mesh.corners()[3 * t + 2];
            int u = (k + 1) % 3;
            int v = (k + 2) % 3;
            double twiceArea = 2 * Triangles.area(xyz, a, b, c);
            double turn = (xyz[b + u] - xyz[a + u]) * (xyz[c + v] - xyz[a + v])
                    - (xyz[b + v] - xyz[a + v]) * (xyz[c + u] - xyz[a + u]);
            return twiceArea > 0 ? turn / twiceArea : 0;
        }
    }
}
