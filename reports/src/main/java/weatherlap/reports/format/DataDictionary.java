package weatherlap.reports.format;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.columns.ResultColumn;

/**
 * {@code columns.json}: what each column of the tables beside it is called, holds and means, and in which unit, so that any notebook
 * can load them. Besides the members of the standard a field has its {@code unit}, where there is one.
 *
 * @see "Frictionless Standards, Tabular Data Package and Table Schema, version 1"
 */
public final class DataDictionary {
    /** Name of the file. */
    public static final String FILE = "columns.json";

    private DataDictionary() {}

    /** @param tables at least one, in the order to list them */
    public static Content of(Collection<Layout<?>> tables) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("profile", "tabular-data-package");
        json.put("name", "weatherlap-results");
        json.put("resources", tables.stream().map(DataDictionary::table).toList());
        return Json.of(json);
    }

    private static Map<String, Object> table(Layout<?> layout) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("profile", "tabular-data-resource");
        json.put("name", layout.file().replace(".csv", ""));
        json.put("path", layout.file());
        json.put("title", layout.title());
        json.put("description", layout.meaning());
        json.put("format", "csv");
        json.put("mediatype", "text/csv");
        json.put("encoding", "utf-8");
        json.put("schema", schema(layout));
        return json;
    }

    private static Map<String, Object> schema(Layout<?> layout) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("fields", layout.columns().stream().map(DataDictionary::field).toList());
        json.put("missingValues", List.of(""));
        return json;
    }

    private static Map<String, Object> field(ResultColumn<?> column) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("name", column.name());
        json.put("type", type(column.kind()));
        json.put("title", column.title());
        if (!column.unit().isEmpty()) {
            json.put("unit", column.unit());
        }
        json.put("description", column.meaning());
        json.put("constraints", Map.of("required", !column.mayBeEmpty()));
        return json;
    }

    private static String type(ResultColumn.Kind kind) {
        return switch (kind) {
            case TEXT -> "string";
            case WHOLE -> "integer";
            case NUMBER -> "number";
        };
    }
}
