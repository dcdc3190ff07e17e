package weatherlap.datasets.jobs;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import weatherlap.datasets.table.CsvText;
import weatherlap.sim.method.Method;

/** Writes service calls as CSV that reads back as the same. */
public final class CallText {
    private CallText() {}

    /** {@code callbacks.csv}. */
    public static String of(List<CallRecord> calls) {
        return CsvText.line(CallSchema.CALLBACKS.names())
                + calls.stream().map(CallText::line).collect(Collectors.joining());
    }

    /** {@code true-callbacks.csv}: method, level, lag_years. */
    public static String of(Map<Method, Double> levels, double lagYears) {
        return CsvText.line("method", "level", "lag_years")
                + Arrays.stream(Method.values())
                        .map(method ->
                                CsvText.line(word(method), CsvText.cell(levels.get(method)), CsvText.cell(lagYears)))
                        .collect(Collectors.joining());
    }

    private static String line(CallRecord call) {
        return CsvText.line(List.of(
                call.jobId(),
                call.opening().orElse(""),
                call.called().toString(),
                call.cause().map(CallText::word).orElse(""),
                call.damage().map(yes -> yes ? "yes" : "no").orElse(""),
                CsvText.cell(call.costUsd()),
                call.paidBy().map(CallText::word).orElse("")));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
