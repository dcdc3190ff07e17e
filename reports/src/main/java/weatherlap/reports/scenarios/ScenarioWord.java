package weatherlap.reports.scenarios;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import weatherlap.datasets.table.Characters;
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

    /**
     * The sets of a file and of words.
     *
     * @throws BadInput with everything that is wrong with them, or where there are not two
     */
    public static List<ScenarioWord> of(Optional<Path> file, List<String> words) {
        List<String> problems = new ArrayList<>();
        List<ScenarioWord> sets = new ArrayList<>();
        file.ifPresent(path -> sets.addAll(ScenarioFile.read(path, problems)));
        words.forEach(word -> sets.add(of(word)));
        Set<String> names = new HashSet<>();
        for (ScenarioWord set : sets) {
            if (set.name().isEmpty()
                    || set.name().length() > LONGEST_NAME
                    || set.name().contains("=")) {
                problems.add("--scenario: \"" + Characters.shown(set.name())
                        + "\" cannot be the name of a set; use 1 to " + LONGEST_NAME + " characters without =");
            } else if (!names.add(set.name())) {
                problems.add("--scenario: two sets are named \"" + set.name() + "\"");
            }
        }
        if (sets.size() < 2 && problems.isEmpty()) {
            problems.add(
                    "--scenario: name at least two sets, such as --scenario base --scenario thin=gross_margin=0.3");
        }
        if (!problems.isEmpty()) {
            throw new BadInput(problems);
        }
        return sets;
    }

    private static ScenarioWord of(String word) {
        int equals = word.indexOf('=');
        String name = (equals < 0 ? word : word.substring(0, equals)).strip();
        String rest = equals < 0 ? "" : word.substring(equals + 1).strip();
        if (equals >= 0 && rest.isEmpty()) {
            throw new BadInput(List.of("--scenario: \"" + word + "\" is not NAME, NAME=DIR or NAME=SETTING=VALUE,..."));
        }
        boolean settings = rest.contains("=");
        return new ScenarioWord(
                name,
                settings || rest.isEmpty() ? Optional.empty() : Optional.of(Path.of(rest)),
                settings ? List.of(rest.split(",")) : List.of());
    }

    /** What it reads where the run reads those. */
    InputPaths paths(InputPaths run) {
        List<String> all = new ArrayList<>(run.changes());
        all.addAll(changes);
        return run.with(folder.or(run::assumptions), all);
    }
}
