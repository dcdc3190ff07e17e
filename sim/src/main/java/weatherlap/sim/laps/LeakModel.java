package weatherlap.sim.laps;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;
import weatherlap.sim.rain.OpeningExposure;

/**
 * The leaks of one opening under one method, compiled for many draws.
 *
 * <p>Given the shared causes of a draw, path f does damage within the horizon with probability y_f = p_f · Q_f(x_f): the fault stands
 * with p_f, the stratum of {@link HouseLaps} at the draw's quality, and x_f = W_f · a_f · ω, the litres a year at the joint times the
 * admitted share times the weather factor, do damage with Q_f of {@link LeakTable}. Paths are independent given the causes:
 *
 * <pre>  P = 1 − ∏_f (1 − y_f)</pre>
 *
 * <p>ω = exp(σz − σ²/2) with σ² = ln(1 + c²/n): mean 1, c the spread of the annual driving rain, n the years of the horizon.
 *
 * <p>P is shared out over the paths in proportion to y_f, draw by draw, so that the contributions sum to it. (Shares by −ln(1 − y_f)
 * differ only where several paths are all but certain, and cost a logarithm a path and draw.)
 *
 * <p>Approximations: each path wets its own place, so that each has its own drying; the seal before several faults of one opening is
 * taken to fail for each by itself, which overstates P by less than 0.02 (held by a test); ω is the mean weather of the whole horizon, so
 * that a longer one, which varies less, can lower P of an opening that is all but dry, by less than 0.0001 (held by a test).
 */
public final class LeakModel {
    private static final Joint[] JOINTS = Joint.values();

    private final PathTerms[] terms;
    private final List<LeakPath> paths;

    private LeakModel(PathTerms[] terms) {
        this.terms = terms;
        LeakPath[] own = new LeakPath[terms.length];
        for (int f = 0; f < own.length; f++) {
            own[f] = terms[f].path();
        }
        paths = List.of(own);
    }

    /** Compiles the paths that can stand at an opening of the house after the work. */
    public static LeakModel of(Opening opening, Method method, OpeningExposure exposure, HouseLaps laps) {
        return each(opening, List.of(method), exposure, laps).get(0);
    }

    /** The same after the work of each of some methods, in their order. */
    public static List<LeakModel> each(
            Opening opening, List<Method> methods, OpeningExposure exposure, HouseLaps laps) {
        HouseLaps.AtOpening here = laps.at(opening);
        Scenario scenario = laps.tables().assumptions().scenario();
        double variance =
                Math.log1p(exposure.yearSpread() * exposure.yearSpread() / scenario.whole(Scalar.HORIZON_YEARS));
        double[] litres = new double[JOINTS.length];
        double[] logLitres = new double[JOINTS.length];
        for (Joint joint : JOINTS) {
            litres[joint.ordinal()] = exposure.litresPerYear(joint);
            logLitres[joint.ordinal()] = Math.log(litres[joint.ordinal()]);
        }
        MethodScope some = MethodScope.of(methods);
        PathTerms[] byFault = new PathTerms[here.faults()];
        for (int f = 0; f < byFault.length; f++) {
            if (here.canStand(f, some)) {
                Belief.Standing stands = here.standing(f);
                byFault[f] = stands.probability() > 0 ? path(f, stands, litres, logLitres, variance, laps) : null;
            }
        }
        List<LeakModel> models = new ArrayList<>(methods.size());
        for (Method after : methods) {
            models.add(new LeakModel(standing(byFault, here, after)));
        }
        return models;
    }

    private static PathTerms[] standing(PathTerms[] byFault, HouseLaps.AtOpening here, Method after) {
        int count = 0;
        for (int f = 0; f < byFault.length; f++) {
            count += byFault[f] != null && here.canStand(f, after) ? 1 : 0;
        }
        PathTerms[] standing = new PathTerms[count];
        for (int f = byFault.length - 1; count > 0; f--) {
            if (byFault[f] != null && here.canStand(f, after)) {
                standing[--count] = byFault[f];
            }
        }
        return standing;
    }

    private static PathTerms path(
            int f, Belief.Standing stands, double[] litres, double[] logLitres, double variance, HouseLaps laps) {
        LeakTables tables = laps.tables();
        LapFault fault = tables.faults()[f];
        int joint = fault.joint().ordinal();
        LeakTables.Compiled line = laps.line(fault.firstLine());
        LeakPath path = new LeakPath(f, fault, laps.prior(f), stands.probability(), litres[joint], line.passes());
        boolean covered = tables.warrantyCovers().covers(fault.kind());
        return PathTerms.of(path, stands.byStratum(), line.table(), logLitres[joint], variance, covered);
    }

    /** In the order of the table of faults. */
    public List<LeakPath> paths() {
        return paths;
    }

    /** Chances and contributions for every draw of the causes. */
    public void run(LeakCauses causes, LeakDraws out) {
        out.run(terms, causes);
    }

    /**
     * Present worth of the repairs after a run, for each damage within the horizon and each dollar that a repair costs. The shop pays
     * the damage within the warranty through the paths that it covers, the family all other damage within the horizon, so that within
     * the horizon every repair is paid once. The shop's is above 1 at most where the warranty outlasts the horizon.
     *
     * @param family what the family pays, 0 to 1
     * @param shop what the shop pays
     */
    public record RepairWorth(double family, double shop) {}

    /**
     * Who pays how much, by the year of the first damage. Each path has its own mean over the draws; they are weighted by contribution.
     * The first of several damages comes a little before each of them, so that the worth is low: by less than 1 % where the chance of
     * damage is below 0.1, by 4 % where it is 0.45 (held by a test).
     */
    public RepairWorth repairWorth(LeakDraws run) {
        double total = 0;
        double family = 0;
        double shop = 0;
        for (int f = 0; f < paths.size(); f++) {
            PathDraws path = run.ofPath(f);
            double contribution = run.contribution()[f];
            total += contribution;
            shop += contribution * path.warranted;
            family += contribution * Math.max(0, path.discounting - path.warranted);
        }
        return total > 0 ? new RepairWorth(family / total, shop / total) : new RepairWorth(0, 0);
    }
}
