package weatherlap.datasets.table;

import java.text.NumberFormat;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the cells of a column hold. */
public sealed interface CellType {
    /** What is expected, for messages and documentation: {@code inches, 8 to 144}. */
    String expected();

    /** What is wrong with the text of a cell that is not empty; empty: nothing. */
    String fault(String cell);

    /** A name by which rows refer to each other; it also becomes part of file names and of command-line arguments. */
    record Key() implements CellType {
        private static final Pattern ALLOWED = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N} _.+-]{0,63}");

        @Override
        public String expected() {
            return "a name of at most 64 letters, digits, spaces and _ . + -, beginning with a letter or digit";
        }

        @Override
        public String fault(String cell) {
            return ALLOWED.matcher(cell).matches() ? "" : Quoted.of(cell) + " is not " + expected();
        }
    }

    /** Free text. */
    record Text() implements CellType {
        private static final int LONGEST = 1000;

        @Override
        public String expected() {
            return "text of at most " + LONGEST + " characters";
        }

        @Override
        public String fault(String cell) {
            return cell.length() <= LONGEST
                    ? ""
                    : "has " + cell.length() + " characters (expected: " + expected() + ")";
        }
    }

    /** Free text in a table that runs copy as it is: nothing that a spreadsheet would work out, whatever its separator of lists. */
    record Prose() implements CellType {
        private static final Pattern FORMULA =
                Pattern.compile("(?:^|[;\\t\\n])['\" ]*[=+@\\-\\uFF1D\\uFF0B\\uFF0D\\uFF20]");
        private static final Text TEXT = new Text();

        @Override
        public String expected() {
            return TEXT.expected();
        }

        @Override
        public String fault(String cell) {
            return FORMULA.matcher(cell).find()
                    ? Quoted.of(cell) + " would be a formula in a spreadsheet; put a word before = + - @"
                    : TEXT.fault(cell);
        }
    }

    /** A finite decimal number between two bounds, each in the range or just outside it. */
    record Number(String unit, double low, boolean aboveLow, double high, boolean belowHigh) implements CellType {
        private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,9})?");
        private static final Pattern GROUPED = Pattern.compile("[+-]?\\d{1,3}([,' \u00a0\u202f]\\d{3})+(\\.\\d*)?");
        private static final Pattern COMMA = Pattern.compile("[+-]?\\d+,\\d+");
        private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,9})[ -])?(\\d{1,9})/([1-9]\\d{0,8})");
        private static final Pattern DAY =
                Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})|\\d{1,2}-[A-Z][a-z]{2}|[A-Z][a-z]{2}-\\d{1,2}");
        private static final Pattern WITH_UNIT =
                Pattern.compile("[\\d ./]+(in\\.?|inch|inches|ft\\.?|feet|[\"'\u2032\u2033\u00b0])");

        /** Nothing that is measured, counted or judged here is smaller and not nothing. */
        private static final double SMALLEST = 1e-6;

        /** Any number that a machine can hold. */
        static Number any(String unit) {
            return new Number(unit, -Double.MAX_VALUE, false, Double.MAX_VALUE, false);
        }

        private boolean isAny() {
            return high == Double.MAX_VALUE;
        }

        @Override
        public String expected() {
            if (isAny()) {
                return unit;
            }
            String range = (aboveLow ? "above " : "")
                    + show(low)
                    + (belowHigh ? " to below " : aboveLow ? ", at most " : " to ")
                    + show(high);
            return unit.isEmpty() ? range : unit + ", " + range;
        }

        @Override
        public String fault(String cell) {
            if (!isPlain(cell) && !DECIMAL.matcher(cell).matches()) {
                return Quoted.of(cell) + " is not a number (" + expected() + ")" + hint(cell);
            }
            double value = Double.parseDouble(cell);
            if (value != 0 && Math.abs(value) < SMALLEST && !isAny()) {
                return Quoted.of(cell) + " is too small to mean anything (" + expected()
                        + "); write 0 where nothing is meant";
            }
            boolean inside = (aboveLow ? value > low : value >= low) && (belowHigh ? value < high : value <= high);
            return inside ? "" : Quoted.of(cell) + " is out of range (" + expected() + ")" + nearest(value);
        }

        /** The bound that was passed, where it may be reached. */
        private String nearest(double value) {
            boolean tooLow = value <= low;
            return isAny() || (tooLow ? aboveLow : belowHigh) ? "" : "; the nearest is " + show(tooLow ? low : high);
        }

        /** Short and of digits alone, as most cells are: spares the pattern. */
        private static boolean isPlain(String cell) {
            boolean plain = !cell.isEmpty() && cell.length() < 16;
            for (int i = 0; plain && i < cell.length(); i++) {
                plain = cell.charAt(i) >= '0' && cell.charAt(i) <= '9';
            }
            return plain;
        }

        private static String hint(String cell) {
            if (GROUPED.matcher(cell).matches()) {
                return "; write it without separators between thousands";
            }
            if (COMMA.matcher(cell).matches()) {
                return "; the decimal mark is a point";
            }
            Matcher fraction = FRACTION.matcher(cell);
            if (fraction.matches()) {
                return "; write it as a decimal number, " + show(decimal(fraction));
            }
            Matcher day = DAY.matcher(cell);
            if (day.matches()) {
                return "; a spreadsheet made a day of what was typed" + (day.group(1) == null ? "" : asTyped(day))
                        + "; write a decimal number";
            }
            return WITH_UNIT.matcher(cell).matches() ? "; write the number without its unit" : "";
        }

        /** The fraction that may have been typed where a day came out, 5/8 for May 8. */
        private static String asTyped(Matcher day) {
            int month = Integer.parseInt(day.group(2));
            int dayOfMonth = Integer.parseInt(day.group(3));
            return ", perhaps of " + month + "/" + dayOfMonth + ", which is " + show((double) month / dayOfMonth);
        }

        /** 31 1/2 as a carpenter writes it. */
        private static double decimal(Matcher fraction) {
            double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
            return whole + Double.parseDouble(fraction.group(2)) / Double.parseDouble(fraction.group(3));
        }
    }

    /** A whole number between two bounds. */
    record Whole(int low, int high) implements CellType {
        private static final Pattern DIGITS = Pattern.compile("[+-]?\\d{1,18}");

        @Override
        public String expected() {
            return low + " to " + high;
        }

        @Override
        public String fault(String cell) {
            if (!DIGITS.matcher(cell).matches()) {
                return Quoted.of(cell) + " is not a whole number (" + expected() + ")";
            }
            long value = Long.parseLong(cell);
            return value >= low && value <= high
                    ? ""
                    : Quoted.of(cell) + " is out of range (" + expected() + "); the nearest is "
                            + (value < low ? low : high);
        }
    }

    /** One of a list of words. */
    record Word(List<String> allowed) implements CellType {
        public Word {
            allowed = List.copyOf(allowed);
        }

        @Override
        public String expected() {
            return String.join(", ", allowed);
        }

        @Override
        public String fault(String cell) {
            return allowed.contains(cell)
                    ? ""
                    : Quoted.of(cell) + " is not one of " + expected() + Nearest.hint(cell, allowed);
        }
    }

    /** One or more words of a list, between bars. */
    record Words(Word one) implements CellType {
        @Override
        public String expected() {
            return one.expected();
        }

        @Override
        public String fault(String cell) {
            return Arrays.stream(cell.split("\\|", -1))
                    .map(word -> one.fault(word.strip()))
                    .filter(fault -> !fault.isEmpty())
                    .findFirst()
                    .orElse("");
        }
    }

    private static String show(double bound) {
        NumberFormat format = NumberFormat.getInstance(Locale.ROOT);
        format.setGroupingUsed(false);
        format.setMaximumFractionDigits(9);
        return format.format(bound);
    }
}
