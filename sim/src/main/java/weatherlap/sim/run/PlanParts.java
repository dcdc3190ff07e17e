package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;

/**
 * What any plan of a house is put together from. A plan gives each opening a method; it is priced at
 *
 * <pre>
 *   price = Σ_opening own + Σ_wall (fixed(M_wall) + panels · perPanel(M_wall)) + setup(M_house)
 * </pre>
 *
 * where M are the methods used on the wall and in the house, and the panels of a wall are those that its openings whose method takes
 * siding down need, each once. What two methods both need (a ladder at the wall, a walk with the owner, the rest of a package) is counted
 * once, at the dearer of the two. The working days of one method alone are spread over its minutes; what two half-jobs lose by packing
 * their days anew, and a height factor of a wall other than the mean over all its openings, are left out. A plan of one method has the
 * price of {@link MethodResult#priceUsd}.
 *
 * <p>Methods are counted by {@link Method#ordinal()}; a set of methods is the sum of 1 &lt;&lt; ordinal.
 *
 * @param walls those with openings, in table order
 * @param setupUsd [set of methods]: part of the price that the house bears once
 * @param repair by draw: the cost of a repair over its mean
 */
@SuppressWarnings("ArrayRecordComponent") // columns of the search for plans
public record PlanParts(House house, List<Wall> walls, double[] setupUsd, double[] repair) {
    public PlanParts {
        walls = List.copyOf(walls);
    }

    /**
     * One wall.
     *
     * @param fixedUsd [set of methods]: part of the price that its openings share, whatever the siding
     * @param perPanelUsd [set of methods]: likewise for each panel taken down
     * @param openings in its order
     */
    public record Wall(Elevation elevation, double[] fixedUsd, double[] perPanelUsd, List<Part> openings) {
        public Wall {
            openings = List.copyOf(openings);
        }
    }

    /**
     * One opening.
     *
     * @param panels siding panels to take down for it
     * @param ways [method]
     */
    public record Part(Opening opening, BitSet panels, List<Way> ways) {
        public Part {
            ways = List.copyOf(ways);
        }
    }

    /**
     * One opening by one method.
     *
     * @param priceUsd part of the price for it alone
     * @param damageUsd mean of the leak damage within the horizon, discounted
     * @param glassUsd worth of the glass lost
     * @param dry by draw: chance that no leak damage comes within the horizon
     * @param codeFlags of the new unit
     */
    public record Way(
            Method method, double priceUsd, double damageUsd, double glassUsd, double[] dry, List<String> codeFlags) {
        public Way {
            codeFlags = List.copyOf(codeFlags);
        }

        /** Part of the family's cost over the horizon, mean, USD. */
        public double horizonUsd() {
            return priceUsd + damageUsd + glassUsd;
        }
    }

    /** All openings, in table order over the walls. */
    public List<Part> openings() {
        List<Part> openings = new ArrayList<>();
        for (Wall wall : walls) {
            openings.addAll(wall.openings());
        }
        return openings;
    }

    /** How a set of methods is counted. */
    public static int mask(Collection<Method> methods) {
        return MethodScope.of(methods).mask();
    }
}
