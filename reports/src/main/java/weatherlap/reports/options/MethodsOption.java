package weatherlap.reports.options;

import java.util.Iterator;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.sim.method.Contrast;

/** Which two methods are set side by side. */
public final class MethodsOption {
    @Option(
            names = "--methods",
            paramLabel = "A,B",
            completionCandidates = Words.class,
            description =
                    "The two methods to put side by side: any two of full_flange, full_frame and insert. A difference"
                            + " is A less B. Same as --set methods=A,B (bundled: full_flange,insert).")
    private String methods;

    /** The inputs with the methods that the user names. */
    public InputPaths in(InputPaths paths) {
        return methods == null
                ? paths
                : paths.with(Stream.of("methods=" + methods.replace('-', '_').replace(" ", "")));
    }

    public static final class Words implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Contrast.all().stream().map(Contrast::word).iterator();
        }
    }
}
