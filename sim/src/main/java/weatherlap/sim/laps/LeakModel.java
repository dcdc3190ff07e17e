package weatherlap.sim.laps;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.WarrantyCovers;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
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
    private static final int COLUMNS = LeakTable.COLUMNS;

    private final List<LeakPath> paths;
    private final double[][] standing;
    private final double[][] tables;
    private final double[] firstPosition;
    private final double knotsPerLog;
    private final double knotsPerNormal;
    private final WarrantyCovers covers;

    private LeakModel(
            List<LeakPath> paths, double[][] standing, OpeningExposure exposure, LeakTables tables, Cladding cladding) {
        this.paths = List.copyOf(paths);
        this.standing = standing;
        Scenario scenario = tables.assumptions().scenario();
        covers = tables.warrantyCovers();
        int horizon = scenario.whole(Scalar.HORIZON_YEARS);
        double variance = Math.log1p(exposure.yearSpread() * exposure.yearSpread() / horizon);
        this.tables = new double[paths.size()][];
        firstPosition = new double[paths.size()];
        double scale = 0;
        for (int f = 0; f < paths.size(); f++) {
            LeakTable table = tables.table(paths.get(f).fault().firstLine(), cladding);
            double logLitres = Math.log(paths.get(f).arrivingLitresPerYear());
            this.tables[f] = table.values;
            firstPosition[f] = (logLitres - variance / 2 - table.lowest) * table.knotsPerLog;
            scale = table.knotsPerLog;
        }
        knotsPerLog = scale;
        knotsPerNormal = scale * Math.sqrt(variance);
    }

    /** Compiles the paths that can stand at an opening of the house after the work. */
    public static LeakModel of(Opening opening, Method method, OpeningExposure exposure, HouseLaps laps) {
        LeakTables tables = laps.tables();
        Cladding cladding = laps.house().cladding();
        List<LapFault> faults = tables.assumptions().faults();
        List<LeakPath> paths = new ArrayList<>();
        List<double[]> standing = new ArrayList<>();
        HouseLaps.AtOpening here = laps.at(opening);
        for (int f = 0; f < faults.size(); f++) {
            LapFault fault = faults.get(f);
            if (!here.canStand(f, method)) {
                continue;
            }
            HouseLaps.Standing stands = here.standing(f);
            if (stands.probability() > 0) {
                paths.add(new LeakPath(
                        f,
                        fault,
                        laps.prior(f),
                        stands.probability(),
                        exposure.litresPerYear(fault.joint()),
                        tables.passes(fault.firstLine(), cladding)));
                standing.add(stands.byStratum());
            }
        }
        return new LeakModel(paths, standing.toArray(double[][]::new), exposure, tables, cladding);
    }

    /** In the order of the table of faults. */
    public List<LeakPath> paths() {
        return paths;
    }

    /** Chances and contributions for every draw of the causes. */
    public void run(LeakCauses causes, LeakDraws out) {
        out.prepare(paths.size());
        double wettest = causes.wettest();
        for (int f = 0; f < paths.size(); f++) {
            boolean crew = paths.get(f).fault().kind() == FaultKind.NEW;
            path(f, causes, crew ? causes.crewStratum() : causes.houseStratum(), wettest, out);
        }
        finish(out);
    }

    private void path(int f, LeakCauses causes, int[] stratum, double wettest, LeakDraws out) {
        int fault = paths.get(f).faultIndex();
        if (position(f, causes.admitted().highest(fault), wettest) <= 0) {
            out.addDry(f);
            return;
        }
        double[] logAdmitted = causes.admitted().logs(fault);
        double[] normal = causes.weatherNormal();
        double[] strata = standing[f];
        double[] table = tables[f];
        double first = firstPosition[f];
        double perLog = knotsPerLog;
        double perNormal = knotsPerNormal;
        double last = LeakTable.lastPosition();
        double[] own = out.byPath[f];
        double damaged = 0;
        double warranted = 0;
        double discounted = 0;
        boolean covered = covers(f);
        int draws = causes.draws();
        for (int d = 0; d < draws; d++) {
            double position = first + perLog * logAdmitted[d] + perNormal * normal[d];
            position = position > 0 ? position < last ? position : last : 0;
            int knot = (int) position;
            double share = position - knot;
            int at = knot * COLUMNS;
            double stands = strata[stratum[d]];
            double y = stands * (table[at + LeakTable.HORIZON] + share * table[at + LeakTable.HORIZON + 1]);
            own[d] = y;
            damaged += y;
            discounted += stands * (table[at + LeakTable.DISCOUNTED] + share * table[at + LeakTable.DISCOUNTED + 1]);
            if (covered) {
                warranted += stands * (table[at + LeakTable.WARRANTY] + share * table[at + LeakTable.WARRANTY + 1]);
            }
        }
        out.warranted[f] = damaged > 0 ? warranted / damaged : 0;
        out.discounting[f] = damaged > 0 ? discounted / damaged : 0;
        out.add(own);
    }

    /** Where in the table the water of a path lies; at 0 and below it does no damage. */
    private double position(int f, double logAdmitted, double normal) {
        return firstPosition[f] + knotsPerLog * logAdmitted + knotsPerNormal * normal;
    }

    /** Whether the shop mends the damage of a path within its warranty. */
    private boolean covers(int f) {
        return covers.covers(paths.get(f).fault().kind());
    }

    private void finish(LeakDraws out) {
        double[] damage = out.damage();
        double[] weight = out.sum;
        int draws = damage.length;
        for (int d = 0; d < draws; d++) {
            damage[d] = 1 - damage[d];
            weight[d] = weight[d] > 0 ? damage[d] / weight[d] : 0;
        }
        for (int f = 0; f < paths.size(); f++) {
            double[] own = out.byPath[f];
            double total = 0;
            for (int d = 0; d < draws; d++) {
                total += own[d] * weight[d];
            }
            out.contribution[f] = total / draws;
        }
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
            double ofShop = covers(f) ? run.warranted[f] : 0;
            total += run.contribution[f];
            shop += run.contribution[f] * ofShop;
            family += run.contribution[f] * Math.max(0, run.discounting[f] - ofShop);
        }
        return total > 0 ? new RepairWorth(family / total, shop / total) : new RepairWorth(0, 0);
    }
}
