package weatherlap.reports.output;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import weatherlap.analysis.columns.Column;
import weatherlap.analysis.columns.Schema;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.analysis.tables.TableBuilder;

/** A small table for the tests of the writers, and texts that try to be more than texts. */
final class TestTables {
    static final Schema SCHEMA = new Schema(
            "test.csv",
            "Test",
            "a row",
            List.of(
                    new Column("id", "id", Column.Kind.TEXT, "", 0, false, "key"),
                    new Column("count", "count", Column.Kind.WHOLE, "", 0, false, "how many"),
                    new Column("cost_usd", "cost", Column.Kind.NUMBER, "USD", 2, true, "what it costs")));

    static final List<String> HOSTILE = List.of(
            "=1+1",
            "+49 123",
            "-7",
            "@SUM(A1)",
            "\t=1",
            "\rx",
            "'=quoted",
            "''=twice",
            "  =spaced",
            "\uFF1Dfull width",
            "<script>alert(1)</script>",
            "\"quotes\", commas",
            "line\nbreak",
            "\u05D1\u05D9\u05EA \u05D0\u05D1\u05DF",
            "\u0628\u064A\u062A \u0627\u0644\u062D\u062C\u0631",
            "\u77F3\u306E\u5BB6",
            "x".repeat(200));

    private TestTables() {}

    static ResultTable hostile() {
        TableBuilder table = new TableBuilder(SCHEMA);
        for (int i = 0; i < HOSTILE.size(); i++) {
            table.row(HOSTILE.get(i), i, i % 2 == 0 ? OptionalDouble.of(-i - 0.005) : OptionalDouble.empty());
        }
        return table.build();
    }

    static byte[] bytes(Content content) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            content.writeTo(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
