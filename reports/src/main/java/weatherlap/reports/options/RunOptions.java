package weatherlap.reports.options;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * Options of a command as the record of its run holds them, a word each: {@code --paper=a4}. Left out is where files lie, which differs from
 * machine to machine and is named again, and what bears on no result.
 */
final class RunOptions {
    static final String REPEAT = "--repeat";

    private static final Set<String> ON_NO_RESULT =
            Set.of("--out", "--force", "--quiet", "--help", "--threads", REPEAT, "--scenario");

    private RunOptions() {}

    /** Those that the user gave. */
    static List<String> of(ParseResult parsed) {
        List<String> words = new ArrayList<>();
        for (OptionSpec option : new LinkedHashSet<>(parsed.matchedOptions())) {
            if (isRecorded(option)) {
                String name = option.longestName();
                if (option.arity().max() == 0) {
                    words.add(name);
                } else {
                    option.originalStringValues().forEach(value -> words.add(name + "=" + value));
                }
            }
        }
        return words;
    }

    private static boolean isRecorded(OptionSpec option) {
        return !ON_NO_RESULT.contains(option.longestName()) && !isPlace(option);
    }

    private static boolean isPlace(OptionSpec option) {
        return option.type() == Path.class
                || Collection.class.isAssignableFrom(option.type()) && option.auxiliaryTypes()[0] == Path.class;
    }

    /** The options among some arguments that a record holds, or of which it has words. */
    static List<String> heldIn(List<String> arguments, List<String> recorded, CommandSpec command) {
        Set<String> held = Set.copyOf(recorded.stream().map(RunOptions::name).toList());
        return arguments.stream()
                .map(RunOptions::name)
                .filter(name -> held.contains(name)
                        || Optional.ofNullable(command.findOption(name))
                                .filter(RunOptions::isRecorded)
                                .isPresent())
                .distinct()
                .toList();
    }

    static String name(String word) {
        int equals = word.indexOf('=');
        return equals < 0 ? word : word.substring(0, equals);
    }
}
