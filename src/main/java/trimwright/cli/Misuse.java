package trimwright.cli;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import trimwright.file.Nearest;

/** The words for a command line that makes no sense: where, what was found, what is allowed, and what to do. */
final class Misuse {

    private Misuse() {}

    /** One sentence or more about the first thing that is wrong. */
    static String of(ParameterException e) {
        CommandSpec spec = e.getCommandLine().getCommandSpec();
        if (e instanceof UnmatchedArgumentException unmatched) {
            return unmatched(spec, unmatched.getUnmatched());
        }
        if (e instanceof MissingParameterException missing) {
            return missing.getMissing().stream().map(a -> missing(spec, a)).collect(Collectors.joining(" "));
        }
        if (e instanceof OverwrittenOptionException twice && twice.getOverwritten() instanceof OptionSpec option) {
            return option.longestName() + " is given more than once. Give it once.";
        }
        if (e.getCause() instanceof TypeConversionException conversion && e.getArgSpec() != null) {
            return notConverted(e.getArgSpec(), e.getValue(), conversion);
        }
        return e.getMessage();
    }

    private static String unmatched(CommandSpec spec, List<String> words) {
        List<String> options = words.stream().filter(Misuse::looksLikeOption).toList();
        if (!options.isEmpty()) {
            return options.stream().map(o -> noSuchOption(spec, o)).collect(Collectors.joining(" "));
        }
        String word = words.get(0);
        if (spec.parent() == null) {
            return noSuchCommand(spec, word);
        }
        String files = spec.positionalParameters().stream()
                .map(PositionalParamSpec::paramLabel)
                .collect(Collectors.joining(" "));
        return spec.name() + (files.isEmpty() ? " takes no file" : " takes " + files + " and no more") + ", found '"
                + word + "'. A name with spaces in it goes into quotes.";
    }

    /** Also with the long dashes that word processors put in place of two short ones. */
    private static boolean looksLikeOption(String word) {
        return word.matches("[-\u2013\u2014].*");
    }

    private static String noSuchOption(CommandSpec spec, String word) {
        String name = word.replaceFirst("=.*", "");
        List<String> known =
                spec.options().stream().map(OptionSpec::longestName).toList();
        return spec.name() + " has no option '" + name + "'."
                + guess(name.replaceFirst("^[-\u2013\u2014]+", "--"), known, "");
    }

    private static String noSuchCommand(CommandSpec spec, String word) {
        Set<String> known = spec.subcommands().keySet();
        String otherwise = word.indexOf('.') > 0
                ? " A command goes before the file, as in trimwright float " + word
                : " The commands are " + String.join(", ", known) + ".";
        return "there is no command '" + word + "'." + guess(word, known, otherwise);
    }

    private static String guess(String word, Collection<String> known, String otherwise) {
        String nearest = Nearest.to(word, known);
        return nearest.isEmpty() ? otherwise : " Did you mean " + nearest + "?";
    }

    private static String missing(CommandSpec spec, ArgSpec argument) {
        String what = description(argument);
        return argument instanceof OptionSpec option
                ? option.longestName() + " has no value behind it; it takes " + option.paramLabel() + ". " + what
                : spec.name() + " needs " + argument.paramLabel() + ", and it is not given: "
                        + what.substring(0, 1).toLowerCase(Locale.ROOT) + what.substring(1);
    }

    private static String notConverted(ArgSpec argument, String found, TypeConversionException e) {
        if (argument instanceof OptionSpec option) {
            return option.arity().max() == 0
                    ? option.longestName() + " takes no value, found '" + found + "'. Write " + option.longestName()
                            + " alone."
                    : option.longestName() + ": " + e.getMessage() + ". " + description(option);
        }
        return argument.paramLabel() + ": " + e.getMessage() + ". " + description(argument);
    }

    private static String description(ArgSpec argument) {
        return String.join(" ", argument.description());
    }

    /** The line that shows the way to the help. */
    static String help(CommandLine line) {
        return "Help: " + line.getCommandSpec().qualifiedName() + " --help";
    }
}
