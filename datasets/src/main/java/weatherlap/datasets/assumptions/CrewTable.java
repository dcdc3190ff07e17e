package weatherlap.datasets.assumptions;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.EarlierSource;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.random.Normal;

/** {@code crews.csv}, which an assumption folder may hold: how fast the shop's crews are. */
public final class CrewTable {
    /** The change that names a crew: {@code crew=NAME}. */
    static final String CHANGE = "crew=";

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

    /** Paces by the name of the crew; every problem of the table is reported. */
    static Map<String, Pace> paces(String text, Problems problems) {
        Map<String, Pace> paces = new LinkedHashMap<>();
        TextTable.read(Source.of(AssumptionSchemas.CREWS.file(), text), AssumptionSchemas.CREWS, problems)
                .ifPresent(table -> table.soundRows()
                        .map(row -> new Pace(
                                row.text("crew"),
                                row.number("factor"),
                                row.number("low_90"),
                                row.number("high_90"),
                                row.whole("jobs")))
                        .forEach(pace -> paces.put(pace.crew(), pace)));
        return paces;
    }

    /**
     * The tables at the pace of a crew, which the labor rows then hold; the spread of the pace from house to house is widened by what is not
     * known of it. A crew that is not known is reported.
     */
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
        Map<String, Pace> paces = paces(text, new Problems());
        Pace pace = paces.get(crew);
        if (pace == null) {
            problems.error(
                    "--crew", Quoted.of(crew) + " is not in " + file + Nearest.hint(crew, List.copyOf(paces.keySet())));
            return tables;
        }
        AssumptionTables paced = tables.withSteps(tables.assumptions().steps().stream()
                        .map(step -> at(step, crew, pace.factor()))
                        .toList())
                .with(widened(tables.assumptions().scenario(), pace));
        Map<String, String> texts = new LinkedHashMap<>(paced.texts());
        // the rows are that crew's now: they must not be slowed again
        texts.remove(file);
        return new AssumptionTables(paced.assumptions(), texts);
    }

    private static Scenario widened(Scenario scenario, Pace pace) {
        double unknown = Math.max(0, Math.log(pace.high() / pace.low())) / (2 * Normal.NINETY_PERCENT);
        Setting before = scenario.settings().get(Scalar.CREW_SPREAD);
        Origin origin = before.origin();
        Map<Scalar, Setting> settings = new EnumMap<>(scenario.settings());
        settings.put(
                Scalar.CREW_SPREAD,
                new Setting(
                        Scalar.CREW_SPREAD,
                        with(before.value(), unknown),
                        before.range()
                                .map(range -> new ThreePoint(
                                        with(range.low(), unknown),
                                        with(range.likely(), unknown),
                                        with(range.high(), unknown))),
                        new Origin(
                                origin.table(),
                                origin.row(),
                                origin.basis(),
                                "widened from " + rounded(before.value()) + " by what is not known of the pace of crew "
                                        + pace.crew() + " (" + AssumptionSchemas.CREWS.file() + ")"
                                        + EarlierSource.of(origin.source()))));
        return new Scenario(settings, scenario.choices());
    }

    private static double with(double spread, double unknown) {
        return Math.min(1, Math.rint(Math.hypot(spread, unknown) * 1e4) / 1e4);
    }

    private static LabourStep at(LabourStep step, String crew, double factor) {
        Origin before = step.origin();
        String source = "\u00d7 " + rounded(factor) + ", the pace of crew " + crew + " (crews.csv)"
                + EarlierSource.of(before.source());
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
