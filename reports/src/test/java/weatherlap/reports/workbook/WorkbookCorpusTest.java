package weatherlap.reports.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.jobs.CallReader;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.datasets.portfolio.Portfolios;
import weatherlap.datasets.table.Loaded;

/**
 * Workbooks as people make them. A case of {@code workbooks.txt} spoils or varies the template and says every error ({@code >}) and warning
 * ({@code ?}) that comes of it; none: it is read without a word.
 *
 * <pre>
 * Windows!2!frame_width_in = n:35.5   a cell, by row and heading, as {@link MadeWorkbook} writes it; nothing after = empties it
 * Windows!3 copy 2                    a row like another
 * Windows!2 down 3                    rows from there moved down
 * Windows!2 gone                      a row less
 * Windows drop frame_width_in         a column left out
 * Windows name Fenster                a sheet under another name
 * Windows hide                        a hidden sheet
 * 1904                                days counted from 1904
 * short Fenster                       nothing but the short table, on a sheet of that name
 * records                             with jobs and service calls, which are read too
 * </pre>
 */
class WorkbookCorpusTest {
    private static final Pattern CELL = Pattern.compile("([^!]+)!(\\d+)!([^=]+?) =(.*)");
    private static final Pattern COPY = Pattern.compile("([^!]+)!(\\d+) copy (\\d+)");
    private static final Pattern DOWN = Pattern.compile("([^!]+)!(\\d+) down (\\d+)");
    private static final Pattern WORD = Pattern.compile("(\\w+) (drop|name|hide)(?: (.*))?");

    @TempDir
    private Path folder;

    @TestFactory
    Stream<DynamicTest> workbooks() throws IOException {
        try (InputStream in = WorkbookCorpusTest.class.getResourceAsStream("workbooks.txt")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Arrays.stream(text.split("(?m)^## "))
                    .skip(1)
                    .map(one -> DynamicTest.dynamicTest(one.lines().findFirst().orElseThrow(), () -> run(one)));
        }
    }

    private void run(String one) throws IOException {
        List<String> lines = one.lines().skip(1).filter(line -> !line.isBlank()).toList();
        MadeWorkbook made = MadeWorkbook.template();
        boolean records = lines.contains("records");
        if (records) {
            made.withRecords();
        }
        lines.stream().filter(line -> !line.matches("[>?] .*|records")).forEach(line -> change(made, line));
        List<String> errors = new ArrayList<>();
        List<String> warnings = new ArrayList<>();
        try (InputWorkbooks workbooks = new InputWorkbooks()) {
            Path read =
                    workbooks.folder(made.write(folder.resolve("houses.xlsx")).toString());
            errors.addAll(workbooks.problems());
            warnings.addAll(workbooks.warnings());
            if (errors.isEmpty()) {
                List<Loaded<?>> loaded = new ArrayList<>(List.of(Portfolios.read(read)));
                if (records) {
                    loaded.add(CallReader.read(read, AssumptionTables.bundled().assumptions(), JobHouses.unmeasured()));
                }
                for (Loaded<?> tables : loaded) {
                    tables.errors().forEach(e -> errors.add(workbooks.said(e.toString())));
                    tables.warnings().forEach(w -> warnings.add(workbooks.said(w.toString())));
                }
            }
            assertThat(errors.stream().map(error -> error.replace(folder.toString(), "")))
                    .containsExactlyElementsOf(expected(lines, "> "));
            assertThat(warnings).containsExactlyElementsOf(expected(lines, "? "));
            assertThat(Files.exists(read)).isTrue();
        }
    }

    private static List<String> expected(List<String> lines, String mark) {
        return lines.stream()
                .filter(line -> line.startsWith(mark))
                .map(line -> line.substring(2))
                .toList();
    }

    private static void change(MadeWorkbook made, String line) {
        Matcher cell = CELL.matcher(line);
        Matcher copy = COPY.matcher(line);
        Matcher down = DOWN.matcher(line);
        Matcher word = WORD.matcher(line);
        if (cell.matches()) {
            String sheet = cell.group(1);
            String heading = cell.group(3);
            int column = heading.matches("\\d+") ? Integer.parseInt(heading) : made.column(sheet, heading);
            made.put(
                    sheet,
                    Integer.parseInt(cell.group(2)),
                    column,
                    cell.group(4).strip());
        } else if (copy.matches()) {
            made.sheets
                    .get(copy.group(1))
                    .get(Integer.parseInt(copy.group(3)))
                    .forEach((c, value) -> made.put(copy.group(1), Integer.parseInt(copy.group(2)), c, value));
        } else if (down.matches()) {
            made.down(down.group(1), Integer.parseInt(down.group(2)), Integer.parseInt(down.group(3)));
        } else if (line.endsWith(" gone")) {
            String[] row = line.replace(" gone", "").split("!");
            made.sheets.get(row[0]).remove(Integer.parseInt(row[1]));
        } else if (line.startsWith("short ")) {
            made.onlyShort(line.replace("short ", ""));
        } else if (line.equals("1904")) {
            made.from1904 = true;
        } else if (word.matches()) {
            word(made, word.group(1), word.group(2), word.group(3));
        } else {
            throw new AssertionError("not understood: " + line);
        }
    }

    private static void word(MadeWorkbook made, String sheet, String verb, String object) {
        switch (verb) {
            case "drop" -> {
                int column = made.column(sheet, object);
                made.sheets.get(sheet).values().forEach(row -> row.remove(column));
            }
            case "name" -> made.sheets.put(object, made.sheets.remove(sheet));
            default -> made.hidden.add(sheet);
        }
    }
}
