package weatherlap.analysis.columns;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import weatherlap.analysis.columns.ResultColumn.Kind;

/**
 * What a column takes from a row.
 *
 * @param <R> what a row is made from
 */
public sealed interface Cell<R> {
    Kind kind();

    /** @throws IllegalArgumentException for a cell that is empty, or no finite number, where the column wants one */
    tech.tablesaw.columns.Column<?> fill(ResultColumn<R> column, List<? extends R> rows);

    /**
     * Hands the cell of one row over.
     *
     * @param at place of the row, from 0
     * @throws IllegalArgumentException likewise
     */
    void give(ResultColumn<R> column, R row, int at, CellTaker taker);

    record Text<R>(Function<? super R, String> of) implements Cell<R> {
        @Override
        public Kind kind() {
            return Kind.TEXT;
        }

        @Override
        public StringColumn fill(ResultColumn<R> column, List<? extends R> rows) {
            StringColumn filled = StringColumn.create(column.name());
            for (R row : rows) {
                filled.append(text(column, row, filled.size()));
            }
            return filled;
        }

        @Override
        public void give(ResultColumn<R> column, R row, int at, CellTaker taker) {
            taker.text(text(column, row, at));
        }

        private String text(ResultColumn<R> column, R row, int at) {
            String text = of.apply(row);
            if (text == null || text.isEmpty() && !column.mayBeEmpty()) {
                throw column.wrong(text, at, "text that is not empty");
            }
            return text;
        }
    }

    /** A text put together from parts; it may come to nothing. */
    record Parts<R>(BiConsumer<? super R, TextParts> of) implements Cell<R> {
        @Override
        public Kind kind() {
            return Kind.TEXT;
        }

        @Override
        public StringColumn fill(ResultColumn<R> column, List<? extends R> rows) {
            return new Text<R>(row -> BuiltText.of(row, of)).fill(column, rows);
        }

        @Override
        public void give(ResultColumn<R> column, R row, int at, CellTaker taker) {
            taker.text(row, of);
        }
    }

    record Whole<R>(ToIntFunction<? super R> of) implements Cell<R> {
        @Override
        public Kind kind() {
            return Kind.WHOLE;
        }

        @Override
        public IntColumn fill(ResultColumn<R> column, List<? extends R> rows) {
            IntColumn filled = IntColumn.create(column.name());
            rows.forEach(row -> filled.append(of.applyAsInt(row)));
            return filled;
        }

        @Override
        public void give(ResultColumn<R> column, R row, int at, CellTaker taker) {
            taker.number(of.applyAsInt(row), 0);
        }
    }

    record Number<R>(ToDoubleFunction<? super R> of) implements Cell<R> {
        @Override
        public Kind kind() {
            return Kind.NUMBER;
        }

        @Override
        public DoubleColumn fill(ResultColumn<R> column, List<? extends R> rows) {
            DoubleColumn filled = DoubleColumn.create(column.name());
            rows.forEach(row -> filled.append(column.finite(of.applyAsDouble(row), filled.size())));
            return filled;
        }

        @Override
        public void give(ResultColumn<R> column, R row, int at, CellTaker taker) {
            taker.number(column.finite(of.applyAsDouble(row), at), column.decimals());
        }
    }

    record OptionalNumber<R>(Function<? super R, OptionalDouble> of) implements Cell<R> {
        @Override
        public Kind kind() {
            return Kind.NUMBER;
        }

        @Override
        public DoubleColumn fill(ResultColumn<R> column, List<? extends R> rows) {
            DoubleColumn filled = DoubleColumn.create(column.name());
            for (R row : rows) {
                OptionalDouble number = of.apply(row);
                if (number.isPresent()) {
                    filled.append(column.finite(number.getAsDouble(), filled.size()));
                } else {
                    filled.appendMissing();
                }
            }
            return filled;
        }

        @Override
        public void give(ResultColumn<R> column, R row, int at, CellTaker taker) {
            OptionalDouble number = of.apply(row);
            if (number.isPresent()) {
                taker.number(column.finite(number.getAsDouble(), at), column.decimals());
            } else {
                taker.nothing();
            }
        }
    }
}
