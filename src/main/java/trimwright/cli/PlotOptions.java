package trimwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.report.picture.Plot;

/** The options of a command that draws curves. */
final class PlotOptions {

    private final OptionSpec file;
    private final OptionSpec overwrite;

    /** Declares the options on a command. */
    PlotOptions(AbstractCommand command, String description) {
        file = command.option(40, "--plot", "OUT.svg|OUT.png", Path.class, description);
        overwrite = command.flag(41, "--overwrite", "Replace that file if it is there.");
    }

    /** Declares only the plot on a command that has an option for replacing files. */
    PlotOptions(AbstractCommand command, OptionSpec overwrite, String description) {
        file = command.option(39, "--plot", "OUT.svg|OUT.png", Path.class, description);
        this.overwrite = overwrite;
    }

    boolean isWanted() {
        return file.getValue() != null;
    }

    /**
     * Writes the plot if one is wanted.
     *
     * @param plot empty when there is nothing to draw
     * @return that nothing was drawn, where a plot was wanted
     * @throws trimwright.finding.UnusableInputException when it cannot be written
     */
    Optional<Finding> write(Optional<Plot> plot) {
        if (!isWanted()) {
            return Optional.empty();
        }
        if (plot.isEmpty()) {
            return Optional.of(Finding.of(Code.PLOT_NOTHING, new Place.AtOption("--plot")));
        }
        plot.get().write(file.getValue(), AbstractCommand.isGiven(overwrite));
        return Optional.empty();
    }
}
