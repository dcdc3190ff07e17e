package weatherlap.sim.price;

import java.util.List;
import weatherlap.sim.Check;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.explain.Amount;

/** What an hour of a person of the crew costs: one carpenter, the others helpers, wage × (1 + burden). */
public final class CrewRate {
    private static final String LEAD = "carpenter";
    private static final String OTHERS = "helper";

    private CrewRate() {}

    /** Roles that a crew of so many people has; each needs a wage in every region. */
    public static List<String> roles(int crewSize) {
        return crewSize == 1 ? List.of(LEAD) : List.of(LEAD, OTHERS);
    }

    /**
     * Whether each role of a crew has a wage.
     *
     * @param wages rows of one region
     */
    public static boolean isKnown(List<Wage> wages, int crewSize) {
        return Each.of(wages, Wage::role).containsAll(roles(crewSize));
    }

    /**
     * Mean over the crew, USD/h.
     *
     * @param wages rows of one region
     * @param crewSize people, 1 or more
     * @throws IllegalArgumentException when a role of the crew has no row
     */
    public static Amount usdPerPersonHour(List<Wage> wages, int crewSize) {
        Check.within("crew size", crewSize, 1, Integer.MAX_VALUE);
        List<Amount> all = crewSize == 1
                ? List.of(hours(wages, LEAD, 1))
                : List.of(hours(wages, LEAD, 1), hours(wages, OTHERS, crewSize - 1));
        Amount crew = Amount.sum("crew", "USD/h", all);
        return Amount.formula(
                "crew ÷ people",
                crew.value() / crewSize,
                "USD/h",
                List.of(crew, Amount.given("people", crewSize, "people")));
    }

    private static Amount hours(List<Wage> wages, String role, int people) {
        Wage wage = wage(wages, role);
        Amount burden = Amount.formula(
                "1 + burden",
                1 + wage.burdenFraction(),
                "",
                List.of(Amount.given("burden", wage.burdenFraction(), "", wage.origin())));
        return Amount.product(
                role,
                "USD/h",
                List.of(
                        Amount.given("people", people, "people"),
                        Amount.given("wage", wage.usdPerHour(), "USD/h", wage.origin()),
                        burden));
    }

    private static Wage wage(List<Wage> wages, String role) {
        for (Wage row : wages) {
            if (row.role().equals(role)) {
                return row;
            }
        }
        throw new IllegalArgumentException("wages.csv has no row for the role " + role + " in "
                + wages.stream().map(Wage::region).distinct().toList());
    }
}
