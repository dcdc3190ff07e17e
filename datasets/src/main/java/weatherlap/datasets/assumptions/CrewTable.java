package weatherlap.datasets.assumptions;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;

/** {@code crews.csv}, which an assumption folder may hold: how fast the shop's crews are. */
public final class CrewTable {
    /** The change that names a crew: {@code crew=NAME}. */
    static final String CHANGE = "crew=";

    private static final int LONGEST_BEFORE = 850;

    private CrewTable() {}

    /**
     * A crew.
     *
     * @param factor its minutes over those of the tables
     * @param low lower end of the 90 % interval
     * @param high upper end
     * @param jobs it was learnt from
     */
    public record Pace(String crew, double factor, double low, double high, int jobs) {}

    /** The table of such crews. */
    public static String text(List<Pace> crews, String source) {
        return CsvText.line(AssumptionSchemas.CREWS.names())
                + crews.stream()
                        .map(crew -> CsvText.line(List.of(
                                crew.crew(),
                                rounded(crew.factor()),
                                rounded(crew.low()),
                                rounded(crew.high()),
                                Integer.toString(crew.jobs()),
                                Basis.OWN_RECORDS.word(),
                                source)))
                        .collect(Collectors.joining());
    }

    private static String rounded(double factor) {
        return CsvText.cell(Math.rint(factor * 1e4) / 1e4);
    }

    /** Factors by the name of the crew; every problem of the table is reported. */
    static Map<String, Double> factors(String text, Problems problems) {
        Map<String, Double> factors = new LinkedHashMap<>();
        TextTable.read(Source.of(AssumptionSchemas.CREWS.file(), text), AssumptionSchemas.CREWS, problems)
                .ifPresent(
                        table -> table.soundRows().forEach(row -> factors.put(row.text("crew"), row.number("factor"))));
        return factors;
    }

    /** The tables at the pace of a crew, which the labor rows then hold; a crew that is not known is reported. */
    static AssumptionTables at(AssumptionTables tables, String crew, Problems problems) {
        String file = AssumptionSchemas.CREWS.file();
        String text = tables.texts().get(file);
        if (text == null) {
            problems.error(
                    "--crew",
                    Quoted.of(crew) + " is not known: the assumptions hold no " + file
                            + ", which calibrate writes where records name two crews or more");
            return tables;
        }
        Map<String, Double> factors = factors(text, new Problems());
        Double factor = factors.get(crew);
        if (factor == null) {
            problems.error(
                    "--crew",
                    Quoted.of(crew) + " is not in " + file + Nearest.hint(crew, List.copyOf(factors.keySet())));
            return tables;
        }
        List<LabourStep> steps = tables.assumptions().steps().stream()
                .map(step -> at(step, crew, factor))
                .toList();
        Map<String, String> texts = new LinkedHashMap<>(tables.withSteps(steps).texts());
        // the rows are that crew's now: they must not be slowed again
        texts.remove(file);
        return new AssumptionTables(tables.assumptions().withSteps(steps), texts);
    }

    private static LabourStep at(LabourStep step, String crew, double factor) {
        Origin before = step.origin();
        String source = Stream.of(
                        "\u00d7 " + rounded(factor) + ", the pace of crew " + crew + " (crews.csv)",
                        before.source()
                                .substring(
                                        0,
                                        Math.min(LONGEST_BEFORE, before.source().length())))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("; before: "));
        return new LabourStep(
                step.id(),
                step.method(),
                step.tradeName(),
                step.driver(),
                step.minutes().times(factor),
                step.appliesWhen(),
                step.coldSensitive(),
                step.heightSensitive(),
                step.people(),
                new Origin(before.table(), before.row(), before.basis(), source));
    }
}
