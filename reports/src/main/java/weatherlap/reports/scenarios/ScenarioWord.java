package weatherlap.reports.scenarios;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.InputPaths;

/**
 * A set of assumptions as a user names it: {@code NAME}, {@code NAME=DIR} or {@code NAME=SETTING=VALUE,SETTING=VALUE}.
 *
 * @param folder of tables of its own
 * @param changes on top of it, or of what the run assumes
 */
public record ScenarioWord(String name, Optional<Path> folder, List<String> changes) {
    private static final int LONGEST_NAME = 60;

    public ScenarioWord {
        changes = List.copyOf(changes);
    }

    /** @throws BadInput with every word that is none, or names two sets alike */
    public static List<ScenarioWord> of(List<String> words) {
        List<ScenarioWord> sets = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (String word : words) {
            int equals = word.indexOf('=');
            String name = (equals < 0 ? word : word.substring(0, equals)).strip();
            String rest = equals < 0 ? "" : word.substring(equals + 1).strip();
            if (name.isEmpty() || name.length() > LONGEST_NAME || equals >= 0 && rest.isEmpty()) {
                problems.add("--scenario: \"" + word
                        + "\" is not NAME, NAME=DIR or NAME=SETTING=VALUE,... with a name of at most " + LONGEST_NAME
                        + " characters");
            } else if (!names.add(name)) {
                problems.add("--scenario: two are named \"" + name + "\"");
            }
            boolean settings = rest.contains("=");
            sets.add(new ScenarioWord(
                    name,
                    settings || rest.isEmpty() ? Optional.empty() : Optional.of(Path.of(rest)),
                    settings ? List.of(rest.split(",")) : List.of()));
        }
        if (words.size() < 2) {
            problems.add("--scenario: name two sets or more, such as --scenario base --scenario thin=gross_margin=0.3");
        }
        if (!problems.isEmpty()) {
            throw new BadInput(problems);
        }
        return sets;
    }

    /** What it reads where the run reads those. */
    InputPaths paths(InputPaths run) {
        List<String> all = new ArrayList<>(run.changes());
        all.addAll(changes);
        return run.with(folder.or(run::assumptions), all);
    }
}
