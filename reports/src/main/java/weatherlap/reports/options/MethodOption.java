package weatherlap.reports.options;

import java.util.Iterator;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import weatherlap.sim.method.Method;

/** How the windows are replaced. */
public final class MethodOption {
    static final String DESCRIPTION =
            "How the windows get replaced: full_flange, full_frame or insert. Without it, explain shows all three. A"
                    + " crew sheet needs it, and also takes plan (each window as in the family's plan), the line that"
                    + " a family kept from handout.html, or a list such as insert,front/W1=full_flange.";

    private static final String EXPECTED = "full_flange, full_frame or insert";

    @Option(
            names = "--method",
            paramLabel = "M",
            converter = ByWord.class,
            completionCandidates = Words.class,
            description = DESCRIPTION)
    private Method method;

    /** The method, or every method where the user names none. */
    public List<Method> oneOrAll() {
        return method == null ? List.of(Method.values()) : List.of(method);
    }

    public static final class Words implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return EnumWords.of(Method.class).iterator();
        }
    }

    /** Takes {@code full-flange}, as sheets say it, too. */
    public static final class ByWord implements ITypeConverter<Method> {
        @Override
        public Method convert(String word) {
            int place = EnumWords.of(Method.class).indexOf(word.replace('-', '_'));
            if (place < 0) {
                throw new TypeConversionException("--method (" + word + ") must be " + EXPECTED);
            }
            return Method.values()[place];
        }
    }
}
