package weatherlap.reports.format;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.tables.ResultRows;
import weatherlap.analysis.tables.ResultTable;

/** A small table for the tests of the writers, and texts that try to be more than texts. */
final class TestTables {
    record Line(String id, int count, OptionalDouble costUsd) {}

    static final Layout<Line> LAYOUT = Layout.<Line>of("test.csv", "Test", "a row")
            .text("id", "id", "key", Line::id)
            .whole("count", "count", "how many", Line::count)
            .optionalNumber("cost_usd", "cost", "USD", 2, "what it costs", Line::costUsd)
            .build();

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
        return hostileRows().table();
    }

    static ResultRows<Line> hostileRows() {
        return new ResultRows<>(
                LAYOUT,
                IntStream.range(0, HOSTILE.size())
                        .mapToObj(i -> new Line(
                                HOSTILE.get(i), i, i % 2 == 0 ? OptionalDouble.of(-i - 0.005) : OptionalDouble.empty()))
                        .toList());
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
