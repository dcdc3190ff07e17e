package weatherlap.reports.options;

import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;
import weatherlap.reports.jobs.CrewPlan;
import weatherlap.sim.method.Method;

/** How each window is replaced. */
public final class PlanOption {
    private static final String EXPECTED =
            "full_flange, full_frame or insert, plan (each window by the family's plan), the line that a family kept"
                    + " from handout.html, or a list such as insert,front/W1=full_flange";

    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--method",
            paramLabel = "M",
            completionCandidates = Words.class,
            description = MethodOption.DESCRIPTION)
    private String line;

    /** The plan, which the user has to name. */
    public CrewPlan plan() {
        if (line == null) {
            throw new ParameterException(spec.commandLine(), "--method M is missing: " + EXPECTED);
        }
        return new CrewPlan(line);
    }

    public static final class Words implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            List<String> methods = EnumWords.of(Method.class);
            return Stream.concat(methods.stream(), Stream.of(CrewPlan.FAMILY)).iterator();
        }
    }
}
