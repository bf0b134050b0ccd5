package trimwright.report.sheet;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.boat.Targets;
import trimwright.immersion.WaterPlane;
import trimwright.plan.Wanted;
import trimwright.plan.pool.Figure;
import trimwright.plan.pool.Tolerance;
import trimwright.report.DiveWords;
import trimwright.report.FloatVerdict;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.StabilityWords;
import trimwright.report.picture.BoatPicture;
import trimwright.report.picture.Pictures;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.ResidualWanted;
import trimwright.statics.Steadiness;
import trimwright.statics.Submerged;

/** Page one: the verdict, the boat afloat and dived, and the key figures against what is wanted. */
final class SheetFirst {

    private static final int PICTURE_WIDTH_PX = 1500;
    /** Letters of 13.5 on a picture as wide as the text of a page come out at 7 points. */
    private static final int PICTURE_DESIGN = 1000;
    /** Most that one of two pictures may take in height, so that both stand on the page with the figures; and one alone. */
    private static final double ONE_OF_TWO = 225;

    private static final double ALONE = 560;
    /** How deep a boat that sinks is drawn under the surface, as a share of her length. */
    private static final double DEPTH_SHARE = 0.05;

    private final Subject subject;
    private final Measure measure;
    private final List<List<String>> rows = new ArrayList<>();

    SheetFirst(Subject subject) {
        this.subject = subject;
        measure = subject.measure();
    }

    /** What she does, in words. */
    List<Block> verdict(boolean planned) {
        List<Block> blocks = new ArrayList<>();
        String words = FloatVerdict.of(subject.afloat(), measure);
        blocks.add(new Block.Words(
                planned
                        ? "With the plan carried out: " + Character.toLowerCase(words.charAt(0)) + words.substring(1)
                        : words,
                true));
        subject.dive().ifPresent(run -> {
            blocks.add(new Block.Words(DiveWords.verdict(run, measure), false));
            DiveWords.leastFirm(run.course(), measure).ifPresent(s -> blocks.add(new Block.Words(s, false)));
        });
        if (subject.dive().isEmpty()) {
            Steadiness.afloat(subject.condition())
                    .ifPresent(s -> blocks.add(new Block.Words(StabilityWords.of(s, measure), false)));
        }
        return blocks;
    }

    /** Her afloat and dived; a boat that sinks as she hangs under water. */
    List<Block> pictures() {
        List<Block> blocks = new ArrayList<>();
        Optional<Block> dived = subject.dived()
                .flatMap(step -> step.settled()
                        .map(rest -> picture(
                                BoatPicture.Scene.of(step.flotation().condition(), rest, ""),
                                "Dived, tanks full",
                                "The boat at the end of her dive",
                                true,
                                ONE_OF_TWO)))
                .or(() -> subject.dived()
                        .map(step -> picture(
                                sunk(),
                                "Dived, tanks full: she goes down, and hangs like this",
                                "The boat wholly under water",
                                true,
                                ONE_OF_TWO)));
        Optional<Equilibrium> afloat = subject.afloat().settled();
        afloat.ifPresent(rest -> blocks.add(picture(
                BoatPicture.Scene.of(subject.condition(), rest, ""),
                subject.dives() ? "Afloat, tanks empty" : "Afloat",
                "The boat afloat",
                dived.isEmpty(),
                dived.isEmpty() ? ALONE : ONE_OF_TWO)));
        dived.ifPresent(blocks::add);
        if (afloat.isEmpty()) {
            blocks.add(picture(
                    sunk(),
                    "Sunk: as she hangs under water" + (subject.dives() ? ", tanks full" : ""),
                    "The boat under water",
                    true,
                    ALONE));
        }
        return blocks;
    }

    private BoatPicture.Scene sunk() {
        Condition full = subject.condition().withAllTanksAt(1);
        Submerged hanging = subject.afloat().submerged();
        double top = full.topMm(hanging.up()) + DEPTH_SHARE * full.lengthMm();
        return new BoatPicture.Scene(
                full.boat(),
                WaterPlane.of(hanging.up(), top),
                full.boat().paintedLine(),
                Optional.of(hanging.centreOfBuoyancyMm()),
                Optional.of(hanging.centreOfGravityMm()),
                Optional.empty(),
                "",
                "");
    }

    private Block picture(BoatPicture.Scene scene, String title, String alt, boolean key, double greatestHeight) {
        BufferedImage image = BoatPicture.draw(
                new BoatPicture.Scene(
                        scene.boat(),
                        scene.water(),
                        scene.paintedLine(),
                        scene.centreOfBuoyancyMm(),
                        scene.centreOfGravityMm(),
                        scene.metacentreMm(),
                        title,
                        ""),
                PICTURE_WIDTH_PX,
                new BoatPicture.Style(PICTURE_DESIGN, true, key, greatestHeight, measure));
        return new Block.Picture(
                Pictures.png(image),
                image.getWidth() / (double) image.getHeight(),
                alt + " from starboard, from above and from ahead, with the water" + marks(scene) + ".");
    }

    private static String marks(BoatPicture.Scene scene) {
        return (scene.paintedLine().isPresent() ? ", the painted line" : "")
                + (scene.metacentreMm().isPresent()
                        ? ", the centres of buoyancy and gravity and the metacentre"
                        : ", the centres of buoyancy and gravity");
    }

    /** The key figures, how far each may be off, and whether it is as wanted. */
    Block key(Optional<Tolerance> tolerance) {
        rows.clear();
        Condition condition = subject.condition();
        Targets t = subject.boat().targets();
        Wanted wanted = Wanted.of(t, condition.dryMassG());
        subject.afloat().settled().ifPresent(rest -> afloat(rest, t, wanted, tolerance));
        row(
                "Weight" + (subject.dives() ? ", tanks empty" : ""),
                mass(condition.massG(), 0),
                spread(tolerance, Figure.MASS, 0));
        if (subject.afloat().settled().isPresent()) {
            row("Reserve: what she could still carry", mass(condition.reserveG(), 0), "");
        } else {
            row("Too heavy by", mass(-condition.reserveG(), 0), "", "", "NO");
        }
        if (subject.dives()) {
            dived(t, wanted, tolerance);
        }
        return new Block.Grid(
                "key-figures",
                "Key figures; wanted in brackets is what is usual where the boat file says nothing",
                "lrllll",
                List.of("", "is", "", "may be off by", "wanted", "as wanted"),
                rows);
    }

    private void afloat(Equilibrium rest, Targets t, Wanted wanted, Optional<Tolerance> tolerance) {
        subject.afloat().fromPaintedLine().ifPresent(off -> {
            String within = wanted("within ", measure.briefLength(wanted.offLineMm()), t.offLineMm());
            row(
                    "Water above the paint, bow",
                    length(off.bowMm()),
                    spread(tolerance, Figure.BOW, 1),
                    within,
                    mark(Math.abs(off.bowMm()) <= wanted.offLineMm()));
            row(
                    "Water above the paint, stern",
                    length(off.sternMm()),
                    spread(tolerance, Figure.STERN, 1),
                    within,
                    mark(Math.abs(off.sternMm()) <= wanted.offLineMm()));
        });
        row(
                "List, + to starboard",
                degrees(rest.heelDeg()),
                spread(tolerance, Figure.LIST, 1),
                wanted("within ", Numbers.brief(wanted.listDeg()), t.listDeg()),
                mark(Math.abs(rest.heelDeg()) <= wanted.listDeg()));
        row("Trim, + bow up", degrees(rest.trimDeg()), spread(tolerance, Figure.TRIM, 1));
        row(
                "GM across, surfaced",
                length(rest.gmTransverseMm()),
                spread(tolerance, Figure.GM, 1),
                wanted("at least ", measure.briefLength(wanted.gmMm()), t.gmMm()),
                mark(rest.gmTransverseMm() >= wanted.gmMm()));
    }

    private void dived(Targets t, Wanted wanted, Optional<Tolerance> tolerance) {
        Submerged under = subject.afloat().submerged();
        ResidualWanted band = ResidualWanted.of(subject.condition());
        row(
                "B above G, dived",
                length(under.bgMm()),
                spread(tolerance, Figure.BG_DIVED, 1),
                wanted("at least ", measure.briefLength(wanted.bgMm()), t.bgMm()),
                mark(under.bgMm() >= wanted.bgMm()));
        row("Trim wholly under water, + bow up", degrees(under.trimDeg()), spread(tolerance, Figure.TRIM_DIVED, 1));
        row(
                "Buoyancy left, dived",
                mass(under.residualG(), 1),
                spread(tolerance, Figure.RESIDUAL, 1),
                wanted(
                        "",
                        measure.briefMass(band.leastG()) + " to " + measure.briefMass(band.greatestG()),
                        t.residualG()),
                mark(under.residualG() >= band.leastG() && under.residualG() <= band.greatestG()));
        subject.dived()
                .flatMap(step -> step.settled())
                .ifPresent(rest -> row(
                        "Trim at the end of the dive, + bow up",
                        degrees(rest.trimDeg()),
                        "",
                        wanted("within ", Numbers.brief(wanted.divedTrimDeg()), t.divedTrimDeg()),
                        mark(Math.abs(rest.trimDeg()) <= wanted.divedTrimDeg())));
    }

    private static String wanted(String before, String value, Optional<?> stated) {
        return stated.isPresent() ? before + value : "(" + before + value + ")";
    }

    private static String mark(boolean good) {
        return good ? "yes" : "NO";
    }

    /** The error of a figure, one standard deviation. */
    private String spread(Optional<Tolerance> tolerance, Figure figure, int decimals) {
        return tolerance
                .map(t -> t.spreads().get(figure))
                .map(s -> "± " + SheetPool.number(figure, s.error(), decimals, measure))
                .orElse("");
    }

    private String[] length(double mm) {
        return new String[] {measure.lengthNumber(mm, 1), measure.lengthUnit()};
    }

    private String[] mass(double g, int decimals) {
        return new String[] {measure.massNumber(g, decimals), measure.massUnit()};
    }

    private static String[] degrees(double deg) {
        return new String[] {Numbers.fixed(deg, 1), "°"};
    }

    private void row(String what, String[] is, String off) {
        row(what, is, off, "", "");
    }

    private void row(String what, String[] is, String off, String wanted, String good) {
        rows.add(List.of(what, is[0], is[1], off, wanted, good));
    }
}
