package trimwright.immersion;

import java.util.Arrays;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A round bar with flat ends or with half a ball at each end, and the ball itself.
 *
 * <p>The bar is summed over slices square to its axis. The water cuts a slice along a straight chord, so that area and moment of the
 * immersed part are known exactly. Along the axis the squared half chord is a parabola k² (ρ² − (s − m)²); with s − m = −ρ cos φ area
 * and moments are smooth in φ, and Gauss–Legendre with 32 points leaves less than 1e-12 of the bar's volume, also where the
 * water just enters or leaves the slices (RoundBarTest compares with closed forms).
 */
public final class RoundBar implements Displacer {

    private static final int POINTS = 32;
    private static final GaussIntegrator LEGENDRE = new GaussIntegratorFactory().legendre(POINTS, 0, 1);

    /** Sine between axis and plumb line below which the slices count as level; the moments' error is of that order. */
    private static final double LEVEL_SLICES = 1e-12;

    private final Vector3D from;
    private final Vector3D axis;
    private final double length;
    private final double radius;
    private final boolean round;

    private RoundBar(Vector3D from, Vector3D axis, double length, double radius, boolean round) {
        this.from = from;
        this.axis = axis;
        this.length = length;
        this.radius = radius;
        this.round = round;
    }

    /**
     * A bar with flat ends.
     *
     * @param fromMm centre of one end
     * @param toMm centre of the other end
     * @throws IllegalArgumentException when radius or length is not positive
     */
    public static RoundBar flat(Vector3D fromMm, Vector3D toMm, double radiusMm) {
        return bar(fromMm, toMm, radiusMm, false);
    }

    /**
     * A bar with half a ball at each end.
     *
     * @param fromMm one tip
     * @param toMm the other tip
     * @throws IllegalArgumentException when the radius is not positive or the bar is shorter than thick
     */
    public static RoundBar round(Vector3D fromMm, Vector3D toMm, double radiusMm) {
        return bar(fromMm, toMm, radiusMm, true);
    }

    /** A ball. */
    public static RoundBar ball(Vector3D centreMm, double radiusMm) {
        Vector3D r = new Vector3D(radiusMm, Vector3D.PLUS_I);
        return new RoundBar(centreMm.subtract(r), Vector3D.PLUS_I, 2 * radiusMm, radiusMm, true);
    }

    private static RoundBar bar(Vector3D from, Vector3D to, double radius, boolean round) {
        double length = from.distance(to);
        double roundLimit = 2 * radius * (1 - 1e-12);
        if (!(radius > 0) || !(length > 0) || (round && length < roundLimit)) {
            throw new IllegalArgumentException("a bar of length " + length + " mm and radius " + radius + " mm");
        }
        return new RoundBar(from, to.subtract(from).normalize(), length, radius, round);
    }

    @Override
    public double volumeMm3() {
        double prism = Math.PI * radius * radius * length;
        return round ? prism - 2 * Math.PI * radius * radius * radius / 3 : prism;
    }

    @Override
    public Vector3D centroidMm() {
        return new Vector3D(1, from, length / 2, axis);
    }

    @Override
    public double topMm(Vector3D up) {
        double along = up.dotProduct(axis);
        double base = up.dotProduct(from);
        if (round) {
            return Math.max(base + radius * along, base + (length - radius) * along) + radius;
        }
        return Math.max(base, base + length * along)
                + radius * axis.crossProduct(up).getNorm();
    }

    @Override
    public Vector3D highestMm(Vector3D up) {
        double along = up.dotProduct(axis);
        if (round) {
            Vector3D middle = new Vector3D(1, from, along > 0 ? length - radius : radius, axis);
            return new Vector3D(1, middle, radius, up);
        }
        Vector3D end = new Vector3D(1, from, along > 0 ? length : 0, axis);
        Vector3D rise = axis.crossProduct(up).crossProduct(axis);
        double across = rise.getNorm();
        return across < LEVEL_SLICES ? end : new Vector3D(1, end, radius / across, rise);
    }

    @Override
    public double outlineMm(WaterPlane plane) {
        Vector3D up = plane.up();
        if (bottomMm(up) >= plane.heightMm() || topMm(up) < plane.heightMm()) {
            return 0;
        }
        Slicer slicer = new Slicer(Immersion.below(plane, centroidMm()));
        if (!round) {
            return slicer.outline(0, length, 0, false) + slicer.chordLength(0) + slicer.chordLength(length);
        }
        return slicer.outline(0, radius, radius, true)
                + slicer.outline(radius, length - radius, 0, false)
                + slicer.outline(length - radius, length, length - radius, true);
    }

    @Override
    public void addBelow(Immersion sum) {
        Vector3D up = sum.plane().up();
        double height = cutHeight(sum.plane());
        if (bottomMm(up) >= height) {
            return;
        }
        if (topMm(up) < height) {
            double volume = volumeMm3();
            Vector3D arm = centroidMm().subtract(sum.referenceMm());
            sum.volume += volume;
            sum.mx += volume * arm.getX();
            sum.my += volume * arm.getY();
            sum.mz += volume * arm.getZ();
            return;
        }
        if (round && length == 2 * radius) {
            // A ball has every direction for its axis; standing upright its slices are level and nothing is
            // approximate.
            Vector3D lowest = new Vector3D(1, centroidMm(), -radius, up);
            new RoundBar(lowest, up, length, radius, true).addCutBar(sum);
            return;
        }
        addCutBar(sum);
    }

    /** Height at which the plane cuts, lowered as for meshes, so that a flat end lying in the plane is dry. */
    private double cutHeight(WaterPlane plane) {
        return plane.heightMm() - TriangleCut.ROUNDING * (from.getNorm1() + length + 2 * radius);
    }

    private void addCutBar(Immersion sum) {
        Slicer slicer = new Slicer(sum);
        if (!round) {
            slicer.add(0, length, 0, false);
            return;
        }
        slicer.add(0, radius, radius, true);
        slicer.add(radius, length - radius, 0, false);
        slicer.add(length - radius, length, length - radius, true);
    }

    /** Sums the slices of one bar against one plane. Distances along the axis run from {@link #from}. */
    private final class Slicer {

        private final Immersion sum;
        private final Vector3D start;
        private final double startHeight;
        private final double alongUp;
        private final double acrossUp;
        private final Vector3D across;
        private final Vector3D chord;

        Slicer(Immersion sum) {
            this.sum = sum;
            Vector3D up = sum.plane().up();
            start = from.subtract(sum.referenceMm());
            startHeight = up.dotProduct(from) - cutHeight(sum.plane());
            alongUp = up.dotProduct(axis);
            Vector3D rise = axis.crossProduct(up).crossProduct(axis);
            acrossUp = rise.getNorm();
            across = acrossUp < LEVEL_SLICES ? axis.orthogonal() : rise.scalarMultiply(1 / acrossUp);
            chord = axis.crossProduct(across);
        }

        /** Radius of the slice at s, squared; a ball's centre lies at {@code centre}. */
        private double radiusSquared(double s, double centre, boolean cap) {
            return cap ? radius * radius - (s - centre) * (s - centre) : radius * radius;
        }

        private double heightAt(double s) {
            return startHeight + s * alongUp;
        }

        void add(double s0, double s1, double centre, boolean cap) {
            if (!(s1 > s0)) {
                return;
            }
            if (acrossUp < LEVEL_SLICES) {
                addLevelSlices(s0, s1, centre, cap);
                return;
            }
            double[] ends = sections(s0, s1, centre, cap);
            for (int i = 1; i < ends.length; i++) {
                double middle = 0.5 * (ends[i - 1] + ends[i]);
                double reach = -heightAt(middle) / acrossUp;
                double r2 = radiusSquared(middle, centre, cap);
                if (reach * reach < r2) {
                    addCut(ends[i - 1], ends[i], centre, cap);
                } else if (reach > 0) {
                    addWhole(ends[i - 1], ends[i], centre, cap);
                }
            }
        }

        /** The section's ends and, between them, the places where the water's chord enters or leaves the slices. */
        private double[] sections(double s0, double s1, double centre, boolean cap) {
            double first;
            double second;
            if (cap) {
                double centreHeight = heightAt(centre);
                double root = Math.sqrt(radius * radius - centreHeight * centreHeight);
                first = centre - centreHeight * alongUp - acrossUp * root;
                second = centre - centreHeight * alongUp + acrossUp * root;
            } else {
                first = (-acrossUp * radius - startHeight) / alongUp;
                second = (acrossUp * radius - startHeight) / alongUp;
            }
            // Not-a-number (no such place) and infinity (axis level) fail these comparisons.
            double[] ends = {s0, first > s0 && first < s1 ? first : s0, second > s0 && second < s1 ? second : s0, s1};
            Arrays.sort(ends);
            return ends;
        }

        /** Length of the two lines that the ends of the chords draw. */
        double outline(double s0, double s1, double centre, boolean cap) {
            if (!(s1 > s0)) {
                return 0;
            }
            if (acrossUp < LEVEL_SLICES) {
                double surface = -startHeight / alongUp;
                return surface > s0 && surface <= s1 ? 2 * Math.PI * Math.sqrt(radiusSquared(surface, centre, cap)) : 0;
            }
            double[] ends = sections(s0, s1, centre, cap);
            double length = 0;
            for (int i = 1; i < ends.length; i++) {
                double middle = 0.5 * (ends[i - 1] + ends[i]);
                if (ends[i] > ends[i - 1] && halfChord(middle, centre, cap) > 0) {
                    length += 2 * arc(ends[i - 1], ends[i], centre, cap).length(acrossUp);
                }
            }
            return length;
        }

        /** Length of the chord along which the water cuts the slice at s of a bar; zero where it cuts none. */
        double chordLength(double s) {
            if (acrossUp < LEVEL_SLICES) {
                return 0;
            }
            double reach = -heightAt(s) / acrossUp;
            return reach * reach < radius * radius ? 2 * Math.sqrt(radius * radius - reach * reach) : 0;
        }

        private void addWhole(double s0, double s1, double centre, boolean cap) {
            // Slices are polynomials of second degree in s, their moments of third: two Gauss points are exact.
            double half = 0.5 * (s1 - s0);
            double middle = 0.5 * (s0 + s1);
            double off = half / Math.sqrt(3);
            addSlice(middle - off, half * Math.PI * radiusSquared(middle - off, centre, cap), 0);
            addSlice(middle + off, half * Math.PI * radiusSquared(middle + off, centre, cap), 0);
        }

        private void addSlice(double s, double volume, double momentAcross) {
            sum.volume += volume;
            sum.mx += volume * (start.getX() + s * axis.getX()) + momentAcross * across.getX();
            sum.my += volume * (start.getY() + s * axis.getY()) + momentAcross * across.getY();
            sum.mz += volume * (start.getZ() + s * axis.getZ()) + momentAcross * across.getZ();
        }

        private void addCut(double s0, double s1, double centre, boolean cap) {
            double chordV = sum.plane().port().dotProduct(chord);
            double chordU = sum.plane().ahead().dotProduct(chord);
            Arc arc = arc(s0, s1, centre, cap);
            for (int i = 0; i < POINTS; i++) {
                double share = LEGENDRE.getPoint(i);
                double half = 0.5 * arc.turn * share;
                double sine = half == 0 ? 1 : Math.sin(half) / half;
                double s = s0 + (arc.first * Math.cos(half) - arc.off * Math.sin(half)) * sine * share * arc.turnPerK;
                double halfChord = arc.halfChord(share);
                double reach = -heightAt(s) / acrossUp;
                double weight = LEGENDRE.getWeight(i) * halfChord * arc.turnPerK;
                double segment = radiusSquared(s, centre, cap) * Math.atan2(halfChord, -reach) + reach * halfChord;
                double cubed = halfChord * halfChord * halfChord;
                addSlice(s, weight * segment, -weight * cubed * 2 / 3);
                addChord(s, reach, halfChord, cubed, weight / acrossUp, chordU, chordV);
            }
        }

        private Arc arc(double s0, double s1, double centre, boolean cap) {
            double k = (cap ? 1 : Math.abs(alongUp)) / acrossUp;
            double first = halfChord(s0, centre, cap);
            double last = halfChord(s1, centre, cap);
            // k (s0 − m): a bar's slices are deepest in the water, and a cap's widest there, at m.
            double off = cap
                    ? (s0 - centre + heightAt(centre) * alongUp) / acrossUp
                    : heightAt(s0) / acrossUp * Math.signum(alongUp);
            double turn = 2 * Math.atan2(k * (s1 - s0), first + last);
            double turnPerK = turn == 0 ? 2 * (s1 - s0) / (first + last) : turn / k;
            return new Arc(first, off, turn, turnPerK);
        }

        /** Half the chord that the water cuts; rounding at the end of a section must not make it imaginary. */
        private double halfChord(double s, double centre, boolean cap) {
            double reach = heightAt(s) / acrossUp;
            return Math.sqrt(Math.max(0, radiusSquared(s, centre, cap) - reach * reach));
        }

        /** The strip of waterplane that a slice carries: 2 × half chord wide, {@code strip} long. */
        private void addChord(
                double s, double reach, double halfChord, double cubed, double strip, double chordU, double chordV) {
            double px = start.getX() + s * axis.getX() + reach * across.getX();
            double py = start.getY() + s * axis.getY() + reach * across.getY();
            double pz = start.getZ() + s * axis.getZ() + reach * across.getZ();
            double u = sum.ux * px + sum.uy * py + sum.uz * pz;
            double v = sum.vx * px + sum.vy * py + sum.vz * pz;
            double area = 2 * halfChord * strip;
            double spread = cubed * strip * 2 / 3;
            sum.area += area;
            sum.areaU += area * u;
            sum.areaV += area * v;
            sum.areaUu += area * u * u + spread * chordU * chordU;
            sum.areaUv += area * u * v + spread * chordU * chordV;
            sum.areaVv += area * v * v + spread * chordV * chordV;
        }

        /** The axis stands upright: every slice is wholly under or wholly dry, and the waterplane is a whole slice. */
        private void addLevelSlices(double s0, double s1, double centre, boolean cap) {
            double surface = -startHeight / alongUp;
            boolean rising = alongUp > 0;
            double from = rising ? s0 : Math.max(s0, surface);
            double to = rising ? Math.min(s1, surface) : s1;
            if (!(to > from)) {
                return;
            }
            addWhole(from, to, centre, cap);
            boolean cuts = rising ? to == surface : from == surface;
            if (cuts) {
                double r2 = radiusSquared(surface, centre, cap);
                double px = start.getX() + surface * axis.getX();
                double py = start.getY() + surface * axis.getY();
                double pz = start.getZ() + surface * axis.getZ();
                double u = sum.ux * px + sum.uy * py + sum.uz * pz;
                double v = sum.vx * px + sum.vy * py + sum.vz * pz;
                double area = Math.PI * r2;
                sum.area += area;
                sum.areaU += area * u;
                sum.areaV += area * v;
                sum.areaUu += area * (u * u + r2 / 4);
                sum.areaUv += area * u * v;
                sum.areaVv += area * (v * v + r2 / 4);
            }
        }
    }

    /**
     * How the half chord goes along a section, whose share runs from 0 to 1: first · cos(turn · share) − off · sin(turn · share).
     *
     * @param first the half chord where the section begins
     * @param off k (s₀ − m) there
     * @param turn angle φ that the section spans
     * @param turnPerK that angle over k: times half chord the way along the axis for each share
     */
    private record Arc(double first, double off, double turn, double turnPerK) {

        double halfChord(double share) {
            return first * Math.cos(turn * share) - off * Math.sin(turn * share);
        }

        /** Length of the line that the chord's end draws in the water's surface, where the way along the axis is stretched by 1 / acrossUp. */
        double length(double acrossUp) {
            return LEGENDRE.integrate(share -> {
                double along = halfChord(share) * turnPerK / acrossUp;
                double outward = (first * Math.sin(turn * share) + off * Math.cos(turn * share)) * turn;
                return Math.sqrt(along * along + outward * outward);
            });
        }
    }
}
