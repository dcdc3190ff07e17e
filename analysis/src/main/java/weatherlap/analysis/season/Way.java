package weatherlap.analysis.season;

import java.util.Locale;
import java.util.Optional;
import weatherlap.sim.method.Method;

/** A way to choose how the houses of a season are done. */
public enum Way {
    ALWAYS_FULL_FLANGE(Method.FULL_FLANGE),
    ALWAYS_FULL_FRAME(Method.FULL_FRAME),
    ALWAYS_INSERT(Method.INSERT),
    RULE(null),
    FAMILY_PLANS(null),
    BEST_MIX(null);

    private final Method method;

    Way(Method method) {
        this.method = method;
    }

    /** The one method that it takes wherever that can be built. */
    public Optional<Method> method() {
        return Optional.ofNullable(method);
    }

    /** As tables have it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** As people read it. */
    public String label() {
        return switch (this) {
            case ALWAYS_FULL_FLANGE, ALWAYS_FULL_FRAME, ALWAYS_INSERT -> "always " + method.label();
            case RULE -> "by the rule";
            case FAMILY_PLANS -> "what suits each family best";
            case BEST_MIX -> "best mix for the shop";
        };
    }
}
