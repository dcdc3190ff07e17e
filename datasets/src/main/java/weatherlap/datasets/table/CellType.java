package weatherlap.datasets.table;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import weatherlap.datasets.typed.Amounts;
import weatherlap.datasets.typed.Bearings;
import weatherlap.datasets.typed.Lengths;
import weatherlap.datasets.typed.PlainNumber;
import weatherlap.datasets.typed.ShortForms;
import weatherlap.datasets.typed.Unread;

/** What the cells of a column hold. */
public sealed interface CellType {
    /** What is expected, for messages and documentation: {@code inches, 8 to 144}. */
    String expected();

    /** What is wrong with the text of a cell that is not empty; empty: nothing. */
    String fault(String cell);

    /** What people typed into a cell that is not empty, as tables have it; text that is none of what the column holds stays as it is. */
    default String plain(String cell) {
        return cell;
    }

    /** A name by which rows refer to each other; it also becomes part of file names and of command-line arguments. */
    record Key() implements CellType {
        private static final int LONGEST = 64;
        private static final String BETWEEN = " _.+-";
        private static final Pattern ALLOWED =
                Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N}" + BETWEEN + "]{0," + (LONGEST - 1) + "}");

        @Override
        public String expected() {
            return "a name of at most 64 letters, digits, spaces and _ . + -, beginning with a letter or digit";
        }

        @Override
        public String fault(String cell) {
            return isAscii(cell) || ALLOWED.matcher(cell).matches() ? "" : Quoted.of(cell) + " is not " + expected();
        }

        /** Of what is allowed in ASCII alone, as most names are. */
        private static boolean isAscii(String cell) {
            for (int i = 0; i < cell.length(); i++) {
                char c = cell.charAt(i);
                boolean plain = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9';
                if (!plain && (i == 0 || BETWEEN.indexOf(c) < 0)) {
                    return false;
                }
            }
            return !cell.isEmpty() && cell.length() <= LONGEST;
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

        /** Nothing that is measured, counted or judged here is smaller and not nothing. */
        private static final double SMALLEST = 1e-6;

        /** Any number that a machine can hold. */
        static Number any(String unit) {
            return new Number(unit, -Double.MAX_VALUE, false, Double.MAX_VALUE, false);
        }

        private boolean isAny() {
            return high == Double.MAX_VALUE;
        }

        /** Whether the cell is a length, which may carry marks of feet and inches. */
        boolean isLength() {
            return unit.equals("inches") || unit.equals("feet");
        }

        private boolean isBearing() {
            return unit.equals("degrees") && low == 0 && high == 360;
        }

        @Override
        public String plain(String cell) {
            if (isAny() || isDecimal(cell)) {
                return cell;
            }
            Optional<String> amount = isBearing() && Bearings.degrees(cell).isPresent()
                    ? number(Bearings.degrees(cell))
                    : switch (unit) {
                        case "inches", "in." -> number(Lengths.inches(cell));
                        case "feet", "ft" -> number(Lengths.feet(cell));
                        case "fraction", "fraction/year" -> Amounts.share(cell);
                        case "percent" -> Amounts.percent(cell);
                        default -> unit.startsWith("USD") ? Amounts.dollars(cell) : Amounts.of(unit, cell);
                    };
            return amount.or(() -> Amounts.number(cell))
                    .or(() -> number(Lengths.number(cell)))
                    .orElse(cell);
        }

        private static Optional<String> number(OptionalDouble value) {
            return value.isPresent() ? Optional.of(CsvText.cell(value.getAsDouble())) : Optional.empty();
        }

        /** Of nothing but what a decimal number is made of, as most cells are. */
        static boolean isDecimal(String cell) {
            for (int i = 0; i < cell.length(); i++) {
                char c = cell.charAt(i);
                boolean exponent = i > 0 && (c == 'e' || c == 'E');
                if ((c < '0' || c > '9') && c != '.' && c != '-' && c != '+' && !exponent) {
                    return false;
                }
            }
            return true;
        }

        @Override
        public String expected() {
            if (isAny()) {
                return unit;
            }
            String range = (aboveLow ? "above " : "")
                    + Amounts.shown(low)
                    + (belowHigh ? " to below " : aboveLow ? ", at most " : " to ")
                    + Amounts.shown(high);
            return unit.isEmpty() ? range : unit + ", " + range;
        }

        @Override
        public String fault(String cell) {
            double plain = PlainNumber.of(cell);
            boolean isPlain = !Double.isNaN(plain);
            if (!isPlain && !DECIMAL.matcher(cell).matches()) {
                return Quoted.of(cell)
                        + (isBearing() ? " is not a direction (N, NE, ... NW, or " : " is not a number (")
                        + expected() + ")" + Unread.hint(cell);
            }
            double value = isPlain ? plain : Double.parseDouble(cell);
            if (value != 0 && Math.abs(value) < SMALLEST && !isAny()) {
                return Quoted.of(cell) + " is too small to mean anything (" + expected() + "); write 0 for none";
            }
            boolean inside = (aboveLow ? value > low : value >= low) && (belowHigh ? value < high : value <= high);
            return inside ? "" : Quoted.of(cell) + " is out of range (" + expected() + ")" + nearest(value);
        }

        /** The bound that was passed, where it may be reached. */
        private String nearest(double value) {
            if (unit.startsWith("fraction") && value >= 2 && value > high && value <= 100) {
                return "; write " + Amounts.shown(value) + "% where percent is meant";
            }
            boolean tooLow = value <= low;
            return isAny() || (tooLow ? aboveLow : belowHigh)
                    ? ""
                    : "; the nearest is " + Amounts.shown(tooLow ? low : high);
        }
    }

    /** A whole number between two bounds. */
    record Whole(int low, int high) implements CellType {
        @Override
        public String plain(String cell) {
            return PlainNumber.isWhole(cell) ? cell : Amounts.number(cell).orElse(cell);
        }

        @Override
        public String expected() {
            return low + " to " + high;
        }

        @Override
        public String fault(String cell) {
            if (!PlainNumber.isWhole(cell)) {
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
        public String plain(String cell) {
            return allowed.contains(cell) ? cell : ShortForms.of(cell, allowed).orElse(cell);
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
        public String plain(String cell) {
            return Arrays.stream(cell.split("\\|", -1))
                    .map(word -> one.plain(word.strip()))
                    .collect(Collectors.joining("|"));
        }

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

    /** One of a list of words, or text of one's own that is not a misspelt one of them. */
    record WordOrText(Word word) implements CellType {
        private static final Prose PROSE = new Prose();

        @Override
        public String plain(String cell) {
            return word.plain(cell);
        }

        @Override
        public String expected() {
            return word.expected();
        }

        @Override
        public String fault(String cell) {
            return word.allowed().contains(cell)
                            || Nearest.to(cell, word.allowed()).isEmpty()
                    ? PROSE.fault(cell)
                    : word.fault(cell);
        }
    }
}
