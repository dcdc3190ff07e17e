package weatherlap.datasets.workbook;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Locale;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;

/**
 * The text of a cell, as it would stand in CSV: texts on one line; numbers as the shortest decimal, without the digits that binary fractions
 * leave behind; what is formatted as a day as year-month-day; yes and no; of a formula the value that was kept.
 */
final class CellText {
    private static final Pattern NOT_FORMAT = Pattern.compile("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.|_.|\\*.");
    private static final Pattern BREAKS = Pattern.compile("\\s*[\\r\\n]+\\s*");
    private static final MathContext SHOWN = new MathContext(15);
    private static final double LAST_DIGITS = 1e-15;
    private static final LocalDate EPOCH = LocalDate.of(1899, 12, 30);
    private static final LocalDate EPOCH_1904 = LocalDate.of(1904, 1, 1);
    private static final double LATEST_DAY = 2_958_465;
    private static final int SECONDS_A_DAY = 86_400;

    private final boolean from1904;

    CellText(boolean from1904) {
        this.from1904 = from1904;
    }

    /** What is wrong with a cell before anything is asked of its text; empty: nothing. */
    static String fault(Cell cell) {
        if (cell.getType() == CellType.ERROR) {
            return "holds the error " + cell.getRawValue();
        }
        if (cell.getType() == CellType.FORMULA && cell.getValue() == null) {
            return "holds a formula whose value was not kept; open the workbook in a spreadsheet and save it";
        }
        if (cell.getType() == CellType.FORMULA
                && String.valueOf(cell.getValue()).startsWith("#")) {
            return "holds a formula with the error " + cell.getValue();
        }
        return "";
    }

    String of(Cell cell) {
        Object value = cell.getValue();
        if (value instanceof BigDecimal number) {
            return isDay(cell) ? day(number.doubleValue()) : number(number);
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        return value == null ? "" : BREAKS.matcher(value.toString().strip()).replaceAll(" ");
    }

    /** The first line of a heading; what stands below explains it. */
    static String heading(Cell cell) {
        return cell.getValue() == null
                ? ""
                : cell.getValue().toString().strip().split("[\\r\\n]", 2)[0].strip();
    }

    static String number(BigDecimal number) {
        double value = number.doubleValue();
        BigDecimal shown = BigDecimal.valueOf(value).round(SHOWN);
        boolean same = Math.abs(shown.doubleValue() - value) <= LAST_DIGITS * Math.abs(value);
        BigDecimal kept = (same ? shown : BigDecimal.valueOf(value)).stripTrailingZeros();
        return Math.abs(value) < 1e15 && kept.scale() < 20 ? kept.toPlainString() : kept.toString();
    }

    private static boolean isDay(Cell cell) {
        String format = cell.getDataFormatString();
        if (format == null) {
            Integer id = cell.getDataFormatId();
            return id != null && (id >= 14 && id <= 22 || id >= 45 && id <= 47);
        }
        String bare = NOT_FORMAT.matcher(format).replaceAll("").toLowerCase(Locale.ROOT);
        return !bare.contains("general") && !bare.contains("standard") && bare.matches(".*[dmyhs].*");
    }

    private String day(double value) {
        if (!(value >= 0 && value <= LATEST_DAY)) {
            return number(BigDecimal.valueOf(value));
        }
        if (value < 1) {
            return LocalTime.ofSecondOfDay(Math.min(SECONDS_A_DAY - 1, Math.round(value * SECONDS_A_DAY)))
                    .toString();
        }
        return (from1904 ? EPOCH_1904 : EPOCH).plusDays((long) value).toString();
    }
}
