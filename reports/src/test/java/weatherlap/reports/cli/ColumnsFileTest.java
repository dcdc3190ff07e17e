package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The dictionary beside the results, against the published schema of its standard and against the tables it speaks of.
 *
 * @see "Frictionless Standards, tabular-data-package.json, version 1 (the copy among the resources is that of the npm package
 *     datapackage 1.1.10, MIT license)"
 */
class ColumnsFileTest {
    private static final String FILE = "columns.json";

    @TempDir
    static Path folder;

    @BeforeAll
    static void run() {
        Path made = folder.resolve("made");
        ran("generate", "--houses", 2, "--jobs", 20, "--out", made);
        ran("compare", made, "--draws", 16, "--out", folder.resolve("report"));
        ran("calibrate", made.resolve("jobs.csv"), "--out", folder.resolve("fitted"));
        ran("callbacks", made, "--out", folder.resolve("callbacks"));
    }

    @Test
    void followsThePublishedSchema() throws IOException {
        JsonSchema schema = schema();
        for (String output : List.of("report", "fitted", "callbacks")) {
            assertThat(schema.validate(text(output), InputFormat.JSON))
                    .as(output)
                    .isEmpty();
        }
        String without = text("report").replaceFirst("\"name\" : \"house_id\",", "");
        assertThat(schema.validate(without, InputFormat.JSON)).isNotEmpty();
    }

    @Test
    void speaksOfEveryResultTableAndNoOther() throws IOException {
        assertThat(tables("report").keySet())
                .contains("houses.csv", "elevations.csv", "openings.csv", "leaks.csv", "rule.csv");
        assertThat(folder.resolve("made").resolve(FILE))
                .as("input tables have their own words")
                .doesNotExist();
    }

    @Test
    void namesAndTypesAreThoseOfTheTables() throws IOException {
        for (String output : List.of("report", "fitted", "callbacks")) {
            for (Map.Entry<String, List<Map<String, Object>>> table :
                    tables(output).entrySet()) {
                List<List<String>> rows = Outputs.rows(folder.resolve(output).resolve(table.getKey()));
                List<Map<String, Object>> fields = table.getValue();
                assertThat(rows.get(0))
                        .isEqualTo(fields.stream().map(each -> each.get("name")).toList());
                for (List<String> row : rows.subList(1, rows.size())) {
                    for (int c = 0; c < row.size(); c++) {
                        assertHolds(fields.get(c), row.get(c));
                    }
                }
            }
        }
    }

    private static void assertHolds(Map<String, Object> field, String cell) {
        String name = field.get("name").toString();
        if (cell.isEmpty()) {
            assertThat(field.get("constraints")).as(name).isEqualTo(Map.of("required", "false"));
        } else if (!field.get("type").equals("string")) {
            boolean whole = field.get("type").equals("integer");
            assertThat(cell).as(name).matches(whole ? "-?\\d+" : "-?\\d+(\\.\\d+)?");
        }
    }

    private static void ran(Object... line) {
        Cli cli = Cli.run(line);
        assertThat(cli.status()).as(cli.err()).isZero();
    }

    private static String text(String output) throws IOException {
        return Files.readString(folder.resolve(output).resolve(FILE));
    }

    private static JsonSchema schema() throws IOException {
        try (InputStream in = ColumnsFileTest.class.getResourceAsStream("tabular-data-package.schema.json")) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V4).getSchema(in);
        }
    }

    /** The fields of each table by its path. */
    @SuppressWarnings("unchecked")
    private static Map<String, List<Map<String, Object>>> tables(String output) throws IOException {
        try (JsonParser json = new JsonFactory().createParser(text(output))) {
            json.nextToken();
            Map<String, Object> whole = (Map<String, Object>) value(json);
            Map<String, List<Map<String, Object>>> tables = new LinkedHashMap<>();
            for (Map<String, Object> table : (List<Map<String, Object>>) whole.get("resources")) {
                Map<String, Object> schema = (Map<String, Object>) table.get("schema");
                tables.put(table.get("path").toString(), (List<Map<String, Object>>) schema.get("fields"));
            }
            return tables;
        }
    }

    private static Object value(JsonParser json) throws IOException {
        if (json.currentToken() == JsonToken.START_OBJECT) {
            Map<String, Object> members = new LinkedHashMap<>();
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                json.nextToken();
                members.put(name, value(json));
            }
            return members;
        }
        if (json.currentToken() == JsonToken.START_ARRAY) {
            List<Object> items = new ArrayList<>();
            while (json.nextToken() != JsonToken.END_ARRAY) {
                items.add(value(json));
            }
            return items;
        }
        return json.getText();
    }
}
