package weatherlap.analysis.words;

import java.util.Collection;
import java.util.Set;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.method.Method;

/** What a labor step is called. */
public final class StepWords {
    private StepWords() {}

    /**
     * Its name, with its methods where another step is called the same.
     *
     * @param others among which it stands, itself or not
     * @param methods those that are meant
     */
    public static String name(LabourStep step, Collection<LabourStep> others, Set<Method> methods) {
        boolean alone = others.stream()
                .noneMatch(other -> other != step && other.tradeName().equals(step.tradeName()));
        return step.tradeName()
                + (alone || methods.size() == 1
                        ? ""
                        : ", "
                                + InWords.list(methods.stream()
                                        .filter(step.method()::covers)
                                        .map(Method::label)
                                        .toList()));
    }
}
