package weatherlap.reports.inputs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weatherlap.datasets.table.Loaded;
import weatherlap.reports.output.Warnings;

/** Collects problems over several files. */
final class FileReading {
    private final List<String> problems = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();

    <T> Optional<T> take(Loaded<T> loaded) {
        loaded.errors().forEach(problem -> problems.add(problem.toString()));
        warnings.addAll(Warnings.grouped(loaded.warnings()));
        return loaded.value();
    }

    List<String> problems() {
        return problems;
    }

    /** To which more may be added. */
    List<String> warnings() {
        return warnings;
    }
}
