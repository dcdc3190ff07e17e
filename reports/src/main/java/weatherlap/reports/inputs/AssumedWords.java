package weatherlap.reports.inputs;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import weatherlap.datasets.assumptions.AssumptionTables;

/** In words, which tables of assumptions are not as bundled and of which years their prices are. */
public final class AssumedWords {
    private AssumedWords() {}

    /** @param folder of the assumptions, where one was named */
    public static String of(AssumptionTables assumptions, Optional<Path> folder) {
        AssumptionTables bundled = AssumptionTables.bundled();
        List<String> own = assumptions.texts().keySet().stream()
                .filter(file -> !assumptions.sameRows(bundled, file))
                .map(file -> folder.map(tables -> TableNames.of(tables.resolve(file)))
                        .orElse(file))
                .toList();
        return "assumptions as bundled" + (own.isEmpty() ? "" : " but for " + String.join(", ", own)) + "; "
                + PriceWords.of(assumptions);
    }
}
