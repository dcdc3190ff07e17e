package weatherlap.reports.options;

import java.util.Iterator;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;
import picocli.CommandLine.TypeConversionException;
import weatherlap.sim.method.Method;

/** How the windows are replaced. */
public final class MethodOption {
    private static final String EXPECTED = "full_flange, full_frame or insert";

    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--method",
            paramLabel = "M",
            converter = ByWord.class,
            completionCandidates = Words.class,
            description = "How the windows are replaced: " + EXPECTED + ". To be named, but for explain (else all).")
    private Method method;

    /** The method, which the user has to name. */
    public Method one() {
        if (method == null) {
            throw new ParameterException(spec.commandLine(), "--method M is missing: " + EXPECTED);
        }
        return method;
    }

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
