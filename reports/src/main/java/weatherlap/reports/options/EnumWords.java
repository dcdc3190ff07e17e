package weatherlap.reports.options;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Constants of an enum as the command line writes them. */
public final class EnumWords {
    private EnumWords() {}

    public static List<String> of(Class<? extends Enum<?>> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(constant -> constant.name().toLowerCase(Locale.ROOT))
                .toList();
    }
}
