package weatherlap.datasets.assumptions;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import weatherlap.datasets.table.Nearest;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.sim.assumptions.Condition;
import weatherlap.sim.assumptions.Era;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.FirstLine;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Product;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.assumptions.Workmanship;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Operation;
import weatherlap.sim.method.MethodScope;

/** Makes sightlines and lap faults of sound rows. */
record OpeningRows(RowParts parts) {
    private static final Map<String, Era> ODDS = Map.of(
            "odds_before_1960", Era.BEFORE_1960,
            "odds_1960_1979", Era.FROM_1960,
            "odds_1980_1999", Era.FROM_1980,
            "odds_from_2000", Era.FROM_2000);
    private static final Map<String, Barrier> PRIORS = Map.of(
            "prior_housewrap", Barrier.HOUSEWRAP,
            "prior_building_paper", Barrier.BUILDING_PAPER,
            "prior_none", Barrier.NONE);
    private static final Map<String, Workmanship> NEW_PRIORS = Map.of(
            "prior_careful", Workmanship.CAREFUL,
            "prior_typical", Workmanship.TYPICAL,
            "prior_hurried", Workmanship.HURRIED);
    private static final List<String> LAPS = List.of("head_lap", "jamb_lap", "sill_lap");
    private static final List<String> SEEN = List.of("reversed", "missing");

    Optional<Sightline> sightline(Row row) {
        String key = row.text("product") + "/" + row.text("material") + "/" + row.text("operation");
        return parts.origin(row, key)
                .map(origin -> new Sightline(
                        row.word("product", Product.class),
                        row.word("material", FrameMaterial.class),
                        row.word("operation", Operation.class),
                        row.number("head_in"),
                        row.number("jamb_in"),
                        row.number("sill_in"),
                        row.number("meeting_rail_in"),
                        row.number("top_rail_in"),
                        row.number("bottom_rail_in"),
                        row.number("stile_in"),
                        row.number("width_deduction_in"),
                        row.number("height_deduction_in"),
                        row.number("depth_in"),
                        origin));
    }

    Optional<LapFault> fault(Row row) {
        FaultKind kind = row.word("kind", FaultKind.class);
        int before = parts.problems().errorCount();
        Optional<Origin> origin = parts.origin(row, row.text("fault_id"));
        Optional<ThreePoint> admitted = parts.points(row, "admitted_low", "admitted_likely", "admitted_high");
        Map<Barrier, Double> priors = numbers(row, PRIORS, Barrier.class, kind == FaultKind.EXISTING);
        Map<Era, Double> odds = numbers(row, ODDS, Era.class, kind == FaultKind.EXISTING);
        Map<Workmanship, Double> newPriors = numbers(row, NEW_PRIORS, Workmanship.class, kind == FaultKind.NEW);
        Optional<LapFault.SeenAs> seenAs = seenAs(row);
        Optional<Condition> condition = parts.condition(row, Fact.ofLaps());
        if (parts.problems().errorCount() > before || origin.isEmpty() || admitted.isEmpty() || condition.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new LapFault(
                row.text("fault_id"),
                row.word("joint", Joint.class),
                row.text("trade_name"),
                row.text("what_happens"),
                MethodScope.parse(row.text("method")),
                kind,
                condition.get(),
                priors,
                odds,
                newPriors,
                row.word("first_line", FirstLine.class),
                admitted.get(),
                seenAs,
                row.number("stain_odds"),
                origin.get()));
    }

    /** Cells that a fault of one kind must have and one of the other kind must not. */
    private <E extends Enum<E>> Map<E, Double> numbers(
            Row row, Map<String, E> columns, Class<E> type, boolean expected) {
        Map<E, Double> numbers = new EnumMap<>(type);
        columns.keySet().stream().sorted().forEach(column -> {
            if (expected && row.has(column)) {
                numbers.put(columns.get(column), row.number(column));
            } else if (expected) {
                row.error(parts.problems(), column, "is empty; a fault of the kind " + row.text("kind") + " needs it");
            } else if (row.has(column)) {
                row.error(parts.problems(), column, "must be empty for a fault of the kind " + row.text("kind"));
            }
        });
        return numbers;
    }

    private Optional<LapFault.SeenAs> seenAs(Row row) {
        if (!row.has("seen_as")) {
            return Optional.empty();
        }
        String text = row.text("seen_as");
        int equals = text.indexOf('=');
        String lap = text.substring(0, Math.max(0, equals)).strip();
        String reading = text.substring(equals + 1).strip();
        if (!LAPS.contains(lap) || !SEEN.contains(reading)) {
            List<String> all = LAPS.stream()
                    .flatMap(l -> SEEN.stream().map(s -> l + "=" + s))
                    .toList();
            row.error(
                    parts.problems(),
                    "seen_as",
                    Quoted.of(text) + " is not one of " + String.join(", ", all) + Nearest.hint(text, all));
            return Optional.empty();
        }
        Joint joint = Joint.valueOf(lap.substring(0, lap.indexOf('_')).toUpperCase(Locale.ROOT));
        return Optional.of(new LapFault.SeenAs(joint, Lap.valueOf(reading.toUpperCase(Locale.ROOT))));
    }
}
