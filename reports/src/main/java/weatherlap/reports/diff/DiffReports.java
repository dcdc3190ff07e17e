package weatherlap.reports.diff;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import weatherlap.analysis.changes.ChangedRow;
import weatherlap.analysis.changes.Exchange;
import weatherlap.analysis.changes.HouseMove;
import weatherlap.analysis.changes.Parts;
import weatherlap.analysis.changes.RowKey;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.output.Checksum;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.TableWriter;
import weatherlap.reports.output.Version;

/**
 * Sets two reports side by side.
 *
 * @param before folder of the earlier one
 * @param after folder of the later one
 * @param paths portfolio, weather and site that both read, for the parts of the changed rows
 * @param houses to simulate for them, at most
 * @param output where tables go, if anywhere
 */
public record DiffReports(Path before, Path after, InputPaths paths, int houses, Optional<OutputRequest> output) {
    /** What was found. */
    private record Found(List<ChangedRow> rows, List<HouseMove> moves, Optional<Parts> parts) {}

    /**
     * Whether every file of the two is the same to the byte.
     *
     * @throws weatherlap.reports.inputs.BadInput if one is no report, or what is named is not what they read
     */
    public boolean run(Messages messages) throws IOException {
        EarlierReport was = EarlierReport.read(before);
        EarlierReport is = EarlierReport.read(after);
        for (EarlierReport report : List.of(was, is)) {
            messages.warn(report.edited().stream()
                    .map(file -> report.folder().resolve(file) + " was changed after the run wrote it")
                    .toList());
        }
        boolean same = was.run().outputs().equals(is.run().outputs());
        if (same) {
            messages.result("the same to the byte: every file of the two reports");
        } else {
            Found found = new Found(rows(was, is), moves(was, is), parts(was, is, messages));
            new DiffText(was, is, ChangeLog.bundled())
                    .lines(found.rows, found.moves, found.parts)
                    .forEach(messages::result);
            if (output.isPresent()) {
                write(found, output.orElseThrow(), messages);
            }
        }
        return same;
    }

    private static List<ChangedRow> rows(EarlierReport was, EarlierReport is) {
        if (was.assumptions().value().isEmpty() || is.assumptions().value().isEmpty()) {
            return List.of();
        }
        AssumptionTables then = was.assumptions().orElseThrow();
        AssumptionTables now = is.assumptions().orElseThrow();
        List<ChangedRow> rows = new ArrayList<>();
        Map<String, Map<String, Map<String, String>>> before = new HashMap<>();
        Map<String, Map<String, Map<String, String>>> after = new HashMap<>();
        for (RowKey key : new Exchange(then.assumptions(), now.assumptions()).differing()) {
            rows.add(ChangedRow.of(
                    key,
                    cells(before.computeIfAbsent(key.table(), then::rows), key),
                    cells(after.computeIfAbsent(key.table(), now::rows), key)));
        }
        return rows;
    }

    private static Optional<Map<String, String>> cells(Map<String, Map<String, String>> table, RowKey key) {
        return Optional.ofNullable(table.get(key.row()));
    }

    private static List<HouseMove> moves(EarlierReport was, EarlierReport is) {
        Map<String, EarlierReport.HouseOf> later = is.byHouse();
        List<HouseMove> moves = new ArrayList<>();
        was.byHouse().forEach((id, house) -> {
            if (later.containsKey(id)) {
                moves.add(new HouseMove(
                        id, later.get(id).label(), house.side(), later.get(id).side()));
            }
        });
        moves.sort(HouseMove.LARGEST_FIRST);
        return moves;
    }

    private Optional<Parts> parts(EarlierReport was, EarlierReport is, Messages messages) throws IOException {
        Optional<String> cannot = RowEffects.cannot(was, is);
        if (cannot.isPresent()) {
            messages.note("the program did not work out what each row does: " + cannot.orElseThrow());
            return Optional.empty();
        }
        return Optional.of(new RowEffects(paths, houses).of(was, is, messages));
    }

    private void write(Found found, OutputRequest request, Messages messages) throws IOException {
        try (OutputFolder folder = request.open(List.of(before, after))) {
            List<ResultTable> tables = new ArrayList<>();
            tables.add(ResultTable.of(ChangedRow.LAYOUT, found.rows));
            tables.add(ResultTable.of(HouseMove.LAYOUT, found.moves));
            found.parts.ifPresent(parts -> tables.add(ResultTable.of(Parts.LAYOUT, parts.parts())));
            TableWriter.CSV.write(folder, tables);
            Map<String, Object> settings = new LinkedHashMap<>();
            settings.put("houses", houses);
            folder.commit(new RunRecord(Version.current(), "diff", settings, sums()));
        }
        messages.note("the tables are in " + request.folder());
    }

    /** The records of both, which hold the sums of all else that they read and wrote. */
    private SortedMap<String, String> sums() throws IOException {
        SortedMap<String, String> sums = new TreeMap<>();
        sums.put("before/" + RunRecord.FILE, Checksum.of(before.resolve(RunRecord.FILE)));
        sums.put("after/" + RunRecord.FILE, Checksum.of(after.resolve(RunRecord.FILE)));
        return sums;
    }
}
