package weatherlap.datasets.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;

/** Names of rows: letters, marks and digits as Unicode has them, by the expression engine of Java. */
class KeyTest {
    private static final Pattern NAMES = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N} _.+-]{0,63}");

    @Property
    void asTheExpressionHasIt(
            @ForAll
                    @StringLength(max = 70)
                    @CharRange(from = 'a', to = 'z')
                    @CharRange(from = '0', to = '9')
                    @Chars({' ', '_', '.', '+', '-', '/', 'é', '\u0301', '@', '[', '`', '{', '~'})
                    String cell) {
        assertThat(new CellType.Key().fault(cell).isEmpty())
                .isEqualTo(NAMES.matcher(cell).matches());
    }

    @Property
    void inAscii(@ForAll @StringLength(max = 66) @CharRange(from = '+', to = 'z') String cell) {
        assertThat(new CellType.Key().fault(cell).isEmpty())
                .isEqualTo(NAMES.matcher(cell).matches());
    }

    @Property
    void names(@ForAll @StringLength(max = 66) @CharRange(from = 'A', to = 'Z') @Chars({' ', '-'}) String cell) {
        assertThat(new CellType.Key().fault(cell).isEmpty())
                .isEqualTo(NAMES.matcher(cell).matches());
    }
}
