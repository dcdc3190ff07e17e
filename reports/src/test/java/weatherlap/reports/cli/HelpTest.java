package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.reports.words.PlainWords;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

/** The help of each command. */
class HelpTest {
    private static Stream<CommandLine> commands() {
        CommandLine all = Weatherlap.commandLine();
        return Stream.concat(Stream.of(all), all.getSubcommands().values().stream());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandHasExamplesThatParse(CommandLine command) {
        List<String> examples = Stream.of(
                        command.getCommandSpec().usageMessage().footer())
                .filter(line -> line.startsWith("  weatherlap "))
                .map(line -> line.strip().substring("weatherlap ".length()))
                .toList();
        assertThat(examples).as(command.getCommandName()).isNotEmpty();
        for (String example : examples) {
            String words = example.split(" [>;|]", 2)[0];
            CommandLine fresh = Weatherlap.commandLine();
            CommandLine.ParseResult parsed = fresh.parseArgs(words.split(" "));
            assertThat(parsed.hasSubcommand()).as(example).isTrue();
        }
        if (command.getParent() != null) {
            assertThat(examples).anyMatch(example -> example.startsWith(command.getCommandName() + " "));
        }
    }

    /** A run reads the options of the command that it begins with, alone; the list of commands is that of a run that reads them all. */
    @Test
    void theListOfCommandsDoesNotDependOnTheCommandNamed() {
        assertThat(Weatherlap.commandLine(List.of("--help")).getUsageMessage())
                .isEqualTo(Weatherlap.commandLine().getUsageMessage());
        CommandLine one = Weatherlap.commandLine(List.of("handout", "--help"));
        assertThat(one.getSubcommands().get("handout").getUsageMessage())
                .isEqualTo(
                        Weatherlap.commandLine().getSubcommands().get("handout").getUsageMessage());
        assertThat(one.getSubcommands()).containsOnlyKeys("handout");
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyOptionIsDescribedInOneSentence(CommandLine command) {
        assertThat(command.getCommandSpec().args()).allSatisfy(arg -> assertThat(String.join("", arg.description()))
                .endsWith("."));
    }

    /** By sentence, since a usage is read in scraps; commands of the trade alone read easier than those of the analyst. */
    @ParameterizedTest
    @MethodSource("commands")
    void readsAsATradesmanSpeaks(CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        String footer = Stream.of(spec.usageMessage().footer())
                .filter(line -> !line.startsWith("  weatherlap ") && !line.startsWith("Examples"))
                .collect(Collectors.joining(" "));
        List<String> texts = Stream.concat(
                        Stream.of(String.join(" ", spec.usageMessage().description()), footer),
                        spec.args().stream().map(HelpTest::text))
                .filter(line -> !line.isBlank())
                .toList();
        texts.forEach(line -> PlainWords.hold(line, 11));
        PlainWords.hold(String.join(" ", texts), 7);
    }

    /** An option of one name means one thing, but for those that say otherwise in their own words. */
    @Test
    void optionsOfOneNameAreDescribedAlike() {
        Map<String, String> described = new TreeMap<>();
        for (CommandLine command : Weatherlap.commandLine().getSubcommands().values()) {
            for (OptionSpec option : command.getCommandSpec().options()) {
                String before = described.putIfAbsent(option.longestName(), text(option));
                boolean own = List.of("--houses", "--climate", "--draws", "--seed", "--jobs")
                        .contains(option.longestName());
                if (before != null && !own) {
                    assertThat(text(option)).as(command.getCommandName()).isEqualTo(before);
                }
            }
        }
        assertThat(described).containsKeys("--assumptions", "--out", "--paper", "--method", "--house");
    }

    /** What is said to be bundled is what the bundled scenario holds. */
    @Test
    void compareNamesTheBundledDefaults() {
        Scenario bundled = AssumptionTables.bundled().assumptions().scenario();
        CommandSpec compare =
                Weatherlap.commandLine().getSubcommands().get("compare").getCommandSpec();
        assertThat(text(compare.findOption("--draws"))).endsWith("(bundled: " + bundled.whole(Scalar.DRAWS) + ").");
        assertThat(text(compare.findOption("--seed"))).endsWith("(bundled: " + bundled.whole(Scalar.SEED) + ").");
        assertThat(text(compare.findOption("--sampling")))
                .endsWith("(bundled: " + bundled.choice(Choice.SAMPLING) + ").");
    }

    /** So that no line breaks where nobody meant it to. */
    @ParameterizedTest
    @MethodSource("commands")
    void noLineBelowTheOptionsIsWiderThanThePage(CommandLine command) {
        assertThat(command.getCommandSpec().usageMessage().footer())
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    /** A name of a file is read, and copied, in one piece. */
    @ParameterizedTest
    @MethodSource("commands")
    void noLineBreaksWithinTheNameOfAFile(CommandLine command) {
        command.setUsageHelpWidth(100); // that of a run
        assertThat(command.getUsageMessage().replaceAll("\\n +", "\n"))
                .doesNotContainPattern("\\.\n(toml|csv|json|pdf|html|xlsx|svg)\\b");
    }

    private static String text(ArgSpec option) {
        return String.join(" ", option.description());
    }
}
