package weatherlap.analysis.leaks;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import weatherlap.analysis.columns.Schemas;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.analysis.tables.TableBuilder;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.house.House;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.OpeningResult;
import weatherlap.sim.run.OpeningResult.LeakCause;

/** The leaks of houses: opening by opening under both methods, by the bearing of the wall, then by storey. */
public final class HouseLeakTable {
    private static final List<Joint> JOINTS = List.of(Joint.HEAD, Joint.JAMB, Joint.SILL, Joint.CORNER, Joint.FIELD);
    private static final int CAUSES = 3;

    private record Place(double bearingDeg, int storey) {}

    private HouseLeakTable() {}

    /** House by house. */
    public static ResultTable of(List<HouseResult> results) {
        TableBuilder table = new TableBuilder(Schemas.HOUSE_LEAKS);
        results.forEach(result -> add(table, result));
        return table.build();
    }

    private static void add(TableBuilder table, HouseResult result) {
        Function<OpeningResult, Place> place = opening -> place(result.house(), opening);
        result.openings().stream()
                .sorted(Comparator.comparing(
                        place, Comparator.comparingDouble(Place::bearingDeg).thenComparingInt(Place::storey)))
                .forEach(opening -> table.row(cells(result.house(), place.apply(opening), opening)));
    }

    private static Place place(House house, OpeningResult opening) {
        return new Place(opening.elevation().bearingDeg(), house.storeyOf(opening.elevation(), opening.opening()));
    }

    private static Object[] cells(House house, Place place, OpeningResult opening) {
        List<Object> cells = new java.util.ArrayList<>(List.of(
                house.id(),
                place.bearingDeg(),
                place.storey(),
                opening.elevation().id(),
                opening.opening().id(),
                opening.method().word(),
                opening.exposure().litresPerM2Year(),
                opening.exposure().shelterFraction()));
        JOINTS.forEach(joint -> cells.add(opening.exposure().litresPerYear(joint)));
        cells.add(opening.leakScore().mean());
        cells.add(opening.leakScore().p10());
        cells.add(opening.leakScore().p90());
        for (int c = 0; c < CAUSES; c++) {
            cells.add(cause(opening, c));
        }
        return cells.toArray();
    }

    private static String cause(OpeningResult opening, int c) {
        if (c >= opening.leakCauses().size() || opening.leakCauses().get(c).contribution() == 0) {
            return "";
        }
        LeakCause cause = opening.leakCauses().get(c);
        long percent = Math.round(100 * cause.contribution() / opening.leakProbability());
        return cause.tradeName() + ": " + percent + " % of the risk";
    }
}
