package weatherlap.datasets.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.portfolio.PortfolioTables;

/** What people type, and what is read. */
class AsTypedTest {
    private static final Column INCHES = Column.number("in", "inches", 0, 1000, "");
    private static final Column FEET = Column.positive("ft", "feet", 1000, "");
    private static final Column BEARING = Column.numberBelow("deg", "degrees", 0, 360, "");
    private static final Column MONEY = Column.number("usd", "USD", 0, 1e6, "");
    private static final Column SHARE = Column.fraction("share", "");
    private static final Column COUNT = Column.whole("n", 0, 1_000_000, "");
    private static final Column MINUTES = Column.number("min", "minutes", 0, 1e5, "");
    private static final Column LAP = Column.word("lap", List.of("shingled", "reversed", "missing", "unknown"), "");
    private static final Column OPENS = PortfolioTables.OPENINGS.columns().get(5);
    private static final Column FRAME = Column.word("frame", List.of("aluminum", "vinyl", "wood", "steel"), "");
    private static final Column SIDING = PortfolioTables.HOUSES.columns().get(4);
    private static final Column TOLD = Column.yesNo("told", "");

    private static Column column(String name) {
        return Stream.of(INCHES, FEET, BEARING, MONEY, SHARE, COUNT, MINUTES, LAP, OPENS, FRAME, SIDING, TOLD)
                .filter(column -> column.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            in | 35-1/2 | 35.5
            in | 35 1/2" | 35.5
            in | 35 1/2 in. | 35.5
            in | 37½ | 37.5
            in | 37 ⅝″ | 37.625
            in | 5/8 | 0.625
            in | 37 5⁄8 | 37.625
            in | 6'2" | 74
            in | 6’ 2 1/2” | 74.5
            in | 6'-2" | 74
            in | 6 ft 2 in | 74
            in | 6'2 | 74
            in | 40' | 480
            in | 72in | 72
            in | 35–1/2 | 35.5
            in | 35.50 | 35.50
            in | 1e2 | 1e2
            ft | 40' | 40
            ft | 40 feet | 40
            ft | 6'3" | 6.25
            ft | 12 1/2 | 12.5
            ft | 480" | 40
            deg | S | 180
            deg | sw | 225
            deg | E | 90
            deg | e | 90
            deg | NNW | 337.5
            deg | North | 0
            deg | south-east | 135
            deg | W. | 270
            deg | 225° | 225
            deg | 225 deg | 225
            usd | $34.00 | 34.00
            usd | $1,250 | 1250
            usd | 1,250.50 | 1250.50
            usd | 34 USD | 34
            usd | $ 34 | 34
            share | 30% | 0.30
            share | 7.5 % | 0.075
            share | 1/2 | 0.5
            n | 1,250 | 1250
            n | 12 500 | 12500
            min | 45 min | 45
            min | 45 minutes | 45
            min | 1,250 | 1250
            lap | Shingled | shingled
            lap | ? | unknown
            operation | DH | double_hung
            operation | Double Hung | double_hung
            operation | DOUBLE-HUNG | double_hung
            operation | slider | slider
            operation | Fixed | picture
            frame | Alum. | aluminum
            frame | Wood | wood
            frame | Vinyl | vinyl
            cladding | Vinyl | vinyl_siding
            cladding | brick | brick_veneer
            cladding | Fiber Cement | fiber_cement
            told | Y | yes
            told | N | no
            told | TRUE | yes
            """)
    void isRead(String name, String typed, String read) {
        assertThat(column(name).plain(typed)).isEqualTo(read);
        assertThat(column(name).fault(typed, column(name).plain(typed))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            in | 35-3/2
            in | 5/0
            in | 3'14"
            in | 90 cm
            in | 35,5
            in | 35 x 60
            in | -3"
            in | 35 1/2 1/2
            in | 8-May
            ft | 12 m
            deg | front
            deg | SWN
            deg | 30%
            usd | 34 EUR
            usd | (34)
            usd | 1,25
            usd | 1,2500
            usd | 30%
            share | 30 percent
            share | $0.30
            n | 1.5
            n | two
            min | 2 h
            lap | Y
            operation | hung
            operation | D
            frame | metal
            cladding | siding
            told | x
            told | maybe
            """)
    void isLeftAndRefused(String name, String typed) {
        assertThat(column(name).plain(typed)).isEqualTo(typed);
        assertThat(column(name).fault(typed, typed)).isNotEmpty();
    }

    @Property
    void aNumberIsReadAsItIsPrinted(@ForAll @DoubleRange(min = 0, max = 1000) double value) {
        for (Column column : List.of(INCHES, FEET, MONEY, MINUTES)) {
            assertThat(column.plain(CsvText.cell(value))).isEqualTo(CsvText.cell(value));
        }
    }

    /** Sixteenths, printed as feet, inches and a fraction in several ways, are read to the last digit. */
    @Property
    void aLengthIsReadHoweverItIsPrinted(
            @ForAll @IntRange(min = 0, max = 40) int feet,
            @ForAll @IntRange(min = 0, max = 11) int inches,
            @ForAll @IntRange(min = 1, max = 15) int sixteenths) {
        double length = 12 * feet + inches + sixteenths / 16.0;
        String fraction = sixteenths + "/16";
        String whole = Integer.toString(12 * feet + inches);
        for (String typed : List.of(
                whole + " " + fraction,
                whole + "-" + fraction + "\"",
                whole + " " + fraction + " in.",
                feet + "'" + inches + "-" + fraction + "\"",
                feet + " ft " + inches + " " + fraction + " in",
                CsvText.cell(length),
                CsvText.cell(length) + "″")) {
            assertThat(INCHES.plain(typed)).as(typed).isEqualTo(CsvText.cell(length));
        }
        assertThat(FEET.plain(feet + "' " + inches + " " + fraction + "\"")).isEqualTo(CsvText.cell(length / 12));
    }

    @Property
    void moneyIsReadHoweverItIsPrinted(@ForAll @IntRange(min = 0, max = 999_999) int usd) {
        for (String form : List.of("$%d", "$%,d", "%,d", "%d USD", "$%,d.00")) {
            String typed = String.format(Locale.ROOT, form, usd);
            assertThat(Double.parseDouble(MONEY.plain(typed))).as(typed).isEqualTo(usd);
        }
    }

    @Property
    void aShareIsReadAsPercent(@ForAll @IntRange(min = 0, max = 1000) int tenths) {
        assertThat(Double.parseDouble(SHARE.plain(tenths / 10 + "." + tenths % 10 + "%")))
                .isEqualTo(tenths / 1000.0);
    }

    /** Every word of every list stands for itself, in capitals and with blanks too: no short form stands in its way. */
    @Test
    void everyWordStandsForItself() {
        List<Column> words = Stream.of(PortfolioTables.ALL, AssumptionTables.SCHEMAS)
                .flatMap(List::stream)
                .flatMap(schema -> schema.columns().stream())
                .filter(column -> column.type() instanceof CellType.Word)
                .toList();
        assertThat(words).hasSizeGreaterThan(20);
        for (Column column : words) {
            for (String word : ((CellType.Word) column.type()).allowed()) {
                for (String typed :
                        List.of(word, word.toUpperCase(Locale.ROOT), word.replace('_', ' '), word.replace('_', '-'))) {
                    assertThat(column.plain(typed)).isEqualTo(word);
                }
            }
        }
    }
}
