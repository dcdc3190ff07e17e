package weatherlap.datasets.assumptions;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.UnitPrice;

/**
 * The assumptions of a run and the texts of their tables.
 *
 * @param texts text by file name, as they were read, changed only where the assumptions were or where people had typed otherwise than tables stand
 */
public record AssumptionTables(Assumptions assumptions, Map<String, String> texts) {
    /** Every table of an assumption folder, as a schema; the scenario is a file beside them. */
    public static final List<Schema> SCHEMAS = List.of(
            AssumptionSchemas.LABOUR_STEPS,
            AssumptionSchemas.MATERIALS,
            AssumptionSchemas.UNITS,
            AssumptionSchemas.SIGHTLINES,
            AssumptionSchemas.LAP_FAULTS,
            AssumptionSchemas.WAGES);

    /** The file of single numbers beside the tables. */
    public static final String NUMBERS = ScenarioText.FILE;

    /** Tables that a folder may do without. */
    public static final List<Schema> MAY_LACK = List.of(AssumptionSchemas.PRICE_INDEX, AssumptionSchemas.CREWS);

    private static final int LONGEST_TABLE = 50_000_000;

    public AssumptionTables {
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    }

    /** The tables that come with the program, read once. */
    public static AssumptionTables bundled() {
        return Bundled.TABLES;
    }

    /** The tables of a folder, or every problem in them. */
    public static Loaded<AssumptionTables> read(Path folder) {
        return read(Folder.of(folder));
    }

    public static Loaded<AssumptionTables> read(Folder folder) {
        Problems problems = new Problems();
        Map<String, String> texts = new LinkedHashMap<>();
        SCHEMAS.forEach(schema -> text(folder, schema.file(), LONGEST_TABLE, texts, problems));
        text(folder, ScenarioText.FILE, ScenarioText.LONGEST, texts, problems);
        for (Schema schema : MAY_LACK) {
            folder.find(schema.file(), new Problems())
                    .flatMap(source -> source.text(LONGEST_TABLE, problems))
                    .ifPresent(text -> texts.put(schema.file(), text));
        }
        return Loaded.of(read(texts, problems), problems);
    }

    /**
     * The tables that texts are; every problem of them is reported.
     *
     * @param texts by file, which are brought to the form of tables where they were typed otherwise
     */
    static Optional<AssumptionTables> read(Map<String, String> texts, Problems problems) {
        Reading reading = new Reading(texts, problems);
        MAY_LACK.forEach(schema -> reading.rows(schema, row -> Optional.empty()));
        Optional<Assumptions> assumptions = reading.assumptions();
        if (!problems.hasErrors()) {
            assumptions.ifPresent(read -> CrossChecks.check(read, problems));
        }
        return assumptions.map(read -> new AssumptionTables(read, texts));
    }

    private static void text(Folder folder, String file, int longest, Map<String, String> texts, Problems problems) {
        folder.find(file, problems)
                .flatMap(source -> source.text(longest, problems))
                .ifPresent(text -> texts.put(file, text));
    }

    /**
     * The rows of one table by their key, as explanations name it; of each its cells by column, those that are empty left out.
     *
     * @throws IllegalArgumentException for a file that is none of them
     */
    public Map<String, Map<String, String>> rows(String file) {
        if (file.equals(ScenarioText.FILE)) {
            return ScenarioText.rows(assumptions.scenario());
        }
        Schema schema = Stream.concat(SCHEMAS.stream(), MAY_LACK.stream())
                .filter(each -> each.file().equals(file))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(file + " is not a table of assumptions"));
        Map<String, Map<String, String>> rows = new LinkedHashMap<>();
        TextTable.read(Source.of(file, texts.get(file)), schema, new Problems())
                .ifPresent(table -> table.rows().forEach(row -> rows.put(row.key(schema), row.filled(schema))));
        return rows;
    }

    /** Whether a table of these holds what that of others does, however it is written. */
    public boolean sameRows(AssumptionTables others, String file) {
        return texts.get(file).equals(others.texts.get(file))
                || others.texts.containsKey(file) && rows(file).equals(others.rows(file));
    }

    /**
     * The same in prices of a year by as_of=YEAR, at the pace of a crew of {@code crews.csv} by crew=NAME, and with scalars, choices or wages
     * changed by NAME=VALUE, or every change that cannot be made.
     */
    public Loaded<AssumptionTables> with(List<String> changes) {
        Problems problems = new Problems();
        AssumptionTables paced = PriceDates.asked(changes)
                .map(year -> PriceDates.at(this, year, problems))
                .orElse(this);
        for (String crew : crews(changes)) {
            paced = CrewTable.at(paced, crew, problems);
        }
        List<String> others = changes.stream()
                .filter(change -> !change.startsWith(CrewTable.CHANGE) && !change.startsWith(PriceDates.CHANGE))
                .toList();
        return paced.changed(others, problems);
    }

    private static List<String> crews(List<String> changes) {
        return changes.stream()
                .filter(each -> each.startsWith(CrewTable.CHANGE))
                .map(each -> each.substring(CrewTable.CHANGE.length()))
                .toList();
    }

    private Loaded<AssumptionTables> changed(List<String> changes, Problems problems) {
        Assumptions changed = Changes.apply(assumptions, changes, problems);
        if (!problems.hasErrors()) {
            CrossChecks.check(changed, problems);
        }
        Map<String, String> newTexts = new LinkedHashMap<>(texts);
        if (!changed.scenario().equals(assumptions.scenario())) {
            newTexts.put(ScenarioText.FILE, ScenarioText.write(changed.scenario()));
        }
        if (!changed.wages().equals(assumptions.wages())) {
            newTexts.computeIfPresent(
                    AssumptionSchemas.WAGES.file(), (file, text) -> RowText.withWages(text, changed.wages()));
        }
        return Loaded.of(Optional.of(new AssumptionTables(changed, newTexts)), problems);
    }

    /** What in some assumptions contradicts together, each number being in its own range; none: nothing. */
    public static List<Problem> contradictions(Assumptions assumptions) {
        Problems problems = new Problems();
        CrossChecks.check(assumptions, problems);
        return problems.errors();
    }

    /** What would contradict together somewhere in the ranges of their numbers; none: nothing. */
    public static List<Problem> contradictionsInRanges(Assumptions assumptions) {
        return WorstCorners.of(assumptions).stream()
                .flatMap(corner -> contradictions(corner).stream())
                .distinct()
                .toList();
    }

    /**
     * The same with what a file of the shop says of its scenario; what was set by hand for a run stands.
     *
     * @param values in the ranges of their scalars
     * @param source the file
     */
    public AssumptionTables withOwn(Map<Scalar, Double> values, String source) {
        Scenario own = Changes.own(assumptions.scenario(), values, source);
        return own.equals(assumptions.scenario()) ? this : with(own);
    }

    /** The same with the minutes and origins of steps replaced by those of the given steps, which must be the steps of the table. */
    public AssumptionTables withSteps(List<LabourStep> steps) {
        return with(
                assumptions.withSteps(steps),
                AssumptionSchemas.LABOUR_STEPS.file(),
                text -> RowText.withSteps(text, steps));
    }

    /** The same with the admitted shares and origins of lap faults replaced by those of the given faults, which must be those of the table. */
    public AssumptionTables withFaults(List<LapFault> faults) {
        return with(
                assumptions.withFaults(faults),
                AssumptionSchemas.LAP_FAULTS.file(),
                text -> RowText.withFaults(text, faults));
    }

    /** The same with waste, prices and origins of items replaced by those of the given items, which must be those of the table. */
    public AssumptionTables withMaterials(List<Material> items) {
        return with(
                assumptions.withMaterials(items),
                AssumptionSchemas.MATERIALS.file(),
                text -> RowText.withMaterials(text, items));
    }

    /** The same with prices and origins of units replaced by those of the given rows, which must be those of the table. */
    public AssumptionTables withUnitPrices(List<UnitPrice> prices) {
        return with(
                assumptions.withUnitPrices(prices),
                AssumptionSchemas.UNITS.file(),
                text -> RowText.withUnitPrices(text, prices));
    }

    /** The same with the paces of crews. */
    public AssumptionTables withCrews(List<CrewTable.Pace> crews, String source) {
        return with(assumptions, AssumptionSchemas.CREWS.file(), text -> CrewTable.text(crews, source));
    }

    /** The same with another scenario. */
    public AssumptionTables with(Scenario scenario) {
        return with(assumptions.with(scenario), ScenarioText.FILE, text -> ScenarioText.write(scenario));
    }

    /** @param change from the text of one file, null where there is none yet, to that which goes with the other assumptions */
    private AssumptionTables with(Assumptions changed, String file, UnaryOperator<String> change) {
        Map<String, String> newTexts = new LinkedHashMap<>(texts);
        newTexts.put(file, change.apply(texts.get(file)));
        return new AssumptionTables(changed, newTexts);
    }

    private static final class Bundled {
        static final AssumptionTables TABLES =
                read(Folder.beside(AssumptionTables.class)).orElseThrow();
    }

    /** Turns texts into the domain. */
    private record Reading(Map<String, String> texts, Problems problems) {
        Optional<Assumptions> assumptions() {
            RowParts parts = new RowParts(problems);
            WorkRows work = new WorkRows(parts);
            OpeningRows opening = new OpeningRows(parts);
            var steps = rows(AssumptionSchemas.LABOUR_STEPS, work::step);
            var materials = rows(AssumptionSchemas.MATERIALS, work::material);
            var unitPrices = rows(AssumptionSchemas.UNITS, work::unitPrice);
            var sightlines = rows(AssumptionSchemas.SIGHTLINES, opening::sightline);
            var faults = rows(AssumptionSchemas.LAP_FAULTS, opening::fault);
            var wages = rows(AssumptionSchemas.WAGES, work::wage);
            return Optional.ofNullable(texts.get(ScenarioText.FILE))
                    .flatMap(text -> ScenarioText.read(text, problems))
                    .map(scenario ->
                            new Assumptions(steps, materials, unitPrices, sightlines, faults, wages, scenario));
        }

        /** Keeps the text of a table as it was read where it was not typed as tables stand. */
        private TextTable kept(TextTable table) {
            if (table.isAsTyped()) {
                texts.put(table.schema().file(), table.text());
            }
            return table;
        }

        private <T> List<T> rows(Schema schema, Function<Row, Optional<T>> make) {
            return Optional.ofNullable(texts.get(schema.file()))
                    .flatMap(text -> TextTable.read(Source.of(schema.file(), text), schema, problems))
                    .map(this::kept)
                    .map(table -> table.soundRows()
                            .flatMap(row -> make.apply(row).stream())
                            .toList())
                    .orElse(List.of());
        }
    }
}
