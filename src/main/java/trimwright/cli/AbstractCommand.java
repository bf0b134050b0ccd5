package trimwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import trimwright.report.Numbers;

/**
 * What every command has: a name, a description, help, and options. Options are declared in code and not by annotations, since reading
 * those takes a good part of the start of the program.
 */
abstract class AbstractCommand implements Callable<Integer> {

    private final CommandSpec spec;

    /**
     * @param name what the user types
     * @param description what it does, for its help
     * @param footer examples and hints for the end of its help, line by line
     */
    AbstractCommand(String name, String description, String... footer) {
        spec = CommandSpec.wrapWithoutInspection(this).name(name);
        spec.usageMessage()
                .width(Page.WIDTH)
                .description(description)
                .descriptionHeading("%n")
                .parameterListHeading("%n")
                .optionListHeading("%nOptions:%n")
                .sortOptions(false)
                .sortSynopsis(false)
                .footerHeading("%n")
                .footer(footer);
        addHelp(spec);
    }

    static void addHelp(CommandSpec spec) {
        spec.addOption(OptionSpec.builder("-h", "--help")
                .order(99)
                .usageHelp(true)
                .description("Show this help.")
                .build());
    }

    CommandSpec spec() {
        return spec;
    }

    /** Declares an option that is there or not. */
    final OptionSpec flag(int order, String name, String description) {
        return add(OptionSpec.builder(name).order(order).type(boolean.class).description(description));
    }

    static boolean isGiven(OptionSpec flag) {
        return Boolean.TRUE.equals(flag.getValue());
    }

    /** Declares an option with a value, {@code null} when it is not given. */
    final OptionSpec option(int order, String name, String label, Class<?> type, String description) {
        OptionSpec.Builder built = OptionSpec.builder(name)
                .order(order)
                .paramLabel(label)
                .type(type)
                .description(description);
        return add(type.equals(Path.class) ? built.converters(new FileName()) : built);
    }

    /** Declares an option with a number, {@code null} when it is not given. */
    final OptionSpec number(int order, String name, String label, String description) {
        return add(OptionSpec.builder(name)
                .order(order)
                .paramLabel(label)
                .type(Double.class)
                .converters(new FiniteNumber())
                .description(description));
    }

    /** The value of a number option, {@code null} when it is not given, refused when it is out of range. */
    final Double within(OptionSpec option, double least, double greatest, String unit) {
        Double value = option.getValue();
        if (value != null && !(value >= least && value <= greatest)) {
            throw misuse(option.longestName() + " takes " + Numbers.plain(least) + " to " + Numbers.plain(greatest)
                    + " " + unit + ", found " + Numbers.plain(value) + ".");
        }
        return value;
    }

    /** Declares an option that takes one of a few words, {@code null} when it is not given. */
    final <T> OptionSpec choice(
            int order, String name, Class<T> type, List<T> values, Function<T, String> word, String description) {
        List<String> words = values.stream().map(word).toList();
        return add(OptionSpec.builder(name)
                .order(order)
                .paramLabel(String.join("|", words))
                .type(type)
                .completionCandidates(words)
                .converters(text -> values.stream()
                        .filter(v -> word.apply(v).equals(text))
                        .findFirst()
                        .orElseThrow(() ->
                                new TypeConversionException("'" + text + "' is none of " + String.join(", ", words))))
                .description(description));
    }

    final OptionSpec add(OptionSpec.Builder option) {
        OptionSpec built = option.build();
        spec.addOption(built);
        return built;
    }

    /** Declares a file that must be named, in the order of declaration. */
    final PositionalParamSpec file(String label, String description) {
        PositionalParamSpec built = PositionalParamSpec.builder()
                .paramLabel(label)
                .type(Path.class)
                .converters(new FileName())
                .required(true)
                .description(description)
                .build();
        spec.addPositional(built);
        return built;
    }

    /** The command line makes no sense; the message says what was found, what is allowed and what to do. */
    final ParameterException misuse(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
