package weatherlap.reports.diff;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weatherlap.analysis.changes.HouseMove;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.output.Checksum;
import weatherlap.reports.output.RunFile;
import weatherlap.reports.output.RunRecord;
import weatherlap.sim.method.Method;

/**
 * A folder that {@code compare} wrote, of this version or an earlier one.
 *
 * @param assumptions as it used them; with problems where this version cannot read them
 * @param houses its {@code houses.csv}
 */
record EarlierReport(Path folder, RunFile run, Loaded<AssumptionTables> assumptions, ResultRows houses) {
    /** One house of it. */
    record HouseOf(String label, HouseMove.Side side) {}

    /** @throws BadInput if it is no such folder */
    static EarlierReport read(Path folder) throws IOException {
        String denied = Folder.denied(folder.resolve(RunRecord.FILE));
        if (!denied.isEmpty()) {
            throw new BadInput(List.of(folder + "/" + RunRecord.FILE + ": " + denied));
        }
        RunFile run = RunFile.read(folder.resolve(RunRecord.FILE))
                .filter(record -> record.command().equals("compare"))
                .orElseThrow(
                        () -> new BadInput(List.of(folder + ": is not a report; name a folder that compare wrote")));
        return new EarlierReport(
                folder,
                run,
                AssumptionTables.read(folder.resolve("assumptions")),
                ResultRows.read(folder.resolve("houses.csv")));
    }

    /** Files that are not as the run wrote them. */
    List<String> edited() throws IOException {
        List<String> edited = new ArrayList<>();
        for (Map.Entry<String, String> file : run.outputs().entrySet()) {
            Path path = folder.resolve(file.getKey());
            if (!Files.isRegularFile(path) || !Checksum.of(path).equals(file.getValue())) {
                edited.add(file.getKey());
            }
        }
        return edited;
    }

    /** The houses by their key. */
    Map<String, HouseOf> byHouse() {
        Map<String, HouseOf> found = new LinkedHashMap<>();
        Map<String, List<String>> plans = new LinkedHashMap<>();
        houses.rows().forEach(row -> {
            String id = houses.text(row, "house_id");
            List<String> plan = plans.computeIfAbsent(id, key -> new ArrayList<>());
            if (!houses.text(row, "chosen").equals("no")) {
                plan.add(words(houses.text(row, "method")));
            }
            HouseMove.Side side = new HouseMove.Side(
                    plan.isEmpty() ? "none" : String.join(" + ", plan),
                    houses.number(row, "family_plan_price_usd"),
                    houses.number(row, "family_plan_horizon_cost_usd"));
            found.put(id, new HouseOf(houses.text(row, "label"), side));
        });
        return found;
    }

    /** A method as people say it; one that this version does not know, as it stands. */
    private static String words(String method) {
        return Method.of(method).map(Method::label).orElse(method);
    }
}
