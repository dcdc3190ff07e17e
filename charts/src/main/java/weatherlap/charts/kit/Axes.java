package weatherlap.charts.kit;

import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.Range;
import weatherlap.analysis.words.Numbers;

/** Axes in the theme: round ends, few ticks, a label that ends in the unit. */
public final class Axes {

    private static final int INTERVALS = 6;

    private Axes() {}

    /** How numbers stand at the ticks of an axis. */
    public enum Format {
        PLAIN {
            @Override
            String text(double value, double step) {
                return Numbers.plain(value, decimals(step));
            }
        },
        SIGNED {
            @Override
            String text(double value, double step) {
                return Numbers.signed(value, decimals(step));
            }
        },
        PERCENT {
            @Override
            String text(double value, double step) {
                return Numbers.percent(value, decimals(step * 100));
            }
        },
        SIGNED_PERCENT {
            @Override
            String text(double value, double step) {
                return Numbers.signed(value * 100, decimals(step * 100)) + "%";
            }
        },
        /** A difference of fractions in percentage points. */
        SIGNED_POINTS {
            @Override
            String text(double value, double step) {
                return Numbers.signed(value * 100, decimals(step * 100));
            }
        },
        USD {
            @Override
            String text(double value, double step) {
                return step >= 1 ? Numbers.usd(value) : "$" + Numbers.plain(value, decimals(step));
            }
        },
        SIGNED_USD {
            @Override
            String text(double value, double step) {
                return Numbers.signedUsd(value);
            }
        };

        abstract String text(double value, double step);
    }

    /**
     * An axis that holds all values, with round ends.
     *
     * @param label what is measured, with its unit
     * @param values NaN and infinities are passed over
     * @param zero whether the axis holds 0 in any case
     */
    public static NumberAxis value(String label, Format format, boolean zero, DoubleStream values) {
        return value(label, format, zero, INTERVALS, values);
    }

    /** @param intervals about how many parts the ticks cut it into, 2 or more */
    public static NumberAxis value(String label, Format format, boolean zero, int intervals, DoubleStream values) {
        double[] finite = values.filter(Double::isFinite).toArray();
        double low = DoubleStream.concat(DoubleStream.of(finite), zero ? DoubleStream.of(0) : DoubleStream.empty())
                .min()
                .orElse(0);
        double high = DoubleStream.concat(DoubleStream.of(finite), zero ? DoubleStream.of(0) : DoubleStream.empty())
                .max()
                .orElse(1);
        return between(label, format, low, high, intervals);
    }

    private static NumberAxis between(String label, Format format, double low, double high, int intervals) {
        double room = high > low ? high - low : Math.max(Math.abs(high), 1);
        double step = step(room, intervals);
        double start = Math.floor(low / step + 1e-9) * step;
        double end = Math.ceil(high / step - 1e-9) * step;
        NumberAxis axis = themed(label);
        axis.setRange(new Range(start, end > start ? end : start + step));
        axis.setTickUnit(new NumberTickUnit(step, new Ticks(v -> format.text(v, step))), false, true);
        return axis;
    }

    public static NumberAxis themed(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setLabelFont(Theme.SMALL);
        axis.setLabelPaint(Tone.MUTED.color());
        axis.setTickLabelFont(Theme.SMALL);
        axis.setTickLabelPaint(Tone.MUTED.color());
        axis.setTickMarksVisible(false);
        axis.setAxisLineVisible(false);
        axis.setTickLabelInsets(new RectangleInsets(4, 4, 2, 4));
        axis.setAutoRange(false);
        return axis;
    }

    /** An axis without a look, from 0 to a number of rows, the first on top. */
    public static NumberAxis rows(int rows) {
        NumberAxis axis = new NumberAxis();
        axis.setRange(new Range(0, Math.max(1, rows)));
        axis.setInverted(true);
        axis.setVisible(false);
        return axis;
    }

    /** 1, 2 or 5 times a power of ten, so that about six of them fill the room. */
    public static double step(double room) {
        return step(room, INTERVALS);
    }

    private static double step(double room, int intervals) {
        double rough = room / intervals;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double share = rough / power;
        return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
    }

    private static int decimals(double step) {
        return (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
    }

    /** A number format that writes only, as the axis asks for. */
    @SuppressWarnings("serial")
    private static final class Ticks extends NumberFormat {

        private final transient DoubleFunction<String> text;

        private Ticks(DoubleFunction<String> text) {
            this.text = text;
        }

        @Override
        public StringBuffer format(double value, StringBuffer to, FieldPosition position) {
            return to.append(text.apply(value));
        }

        @Override
        public StringBuffer format(long value, StringBuffer to, FieldPosition position) {
            return format((double) value, to, position);
        }

        @Override
        public Number parse(String source, ParsePosition position) {
            throw new UnsupportedOperationException("ticks are only written");
        }
    }
}
