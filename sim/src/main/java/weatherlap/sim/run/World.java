package weatherlap.sim.run;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.random.PertQuantile;

/**
 * The causes that every house shares, a column a draw: what is not known about the rates, not what varies from job to job. Rows are in
 * the order of the assumption tables.
 *
 * @param stepMinutes person-minutes of each labour step for one unit of its driver
 * @param itemPriceUsd price of a package of each material
 * @param admitted share of arriving water that each lap fault lets past
 * @param unitPriceFactor times the price list of new units
 * @param repairUsd mending one leak-damaged opening
 * @param meanRepairUsd exact mean of it
 */
@SuppressWarnings("ArrayRecordComponent") // columns of the hot loop
record World(
        double[][] stepMinutes,
        double[][] itemPriceUsd,
        double[][] admitted,
        double[] unitPriceFactor,
        double[] repairUsd,
        double meanRepairUsd) {

    /** Name of the cause that is the price of a repair. */
    static final String REPAIR = "repair";

    private static final String ADMITTED = "admitted";

    /** Name of the cause that is the admitted share of a lap fault. */
    static String admitted(LapFault fault) {
        return cause(ADMITTED, fault.id());
    }

    private static String cause(String purpose, String row) {
        return purpose + ":" + row;
    }

    /**
     * Draws the world.
     *
     * @param uniforms gives the uniforms of a named cause, all of one length
     */
    public static World of(Assumptions assumptions, Function<String, double[]> uniforms) {
        Scenario scenario = assumptions.scenario();
        double spread = scenario.value(Scalar.UNIT_PRICE_SPREAD);
        ThreePoint repair = scenario.repairUsd();
        return new World(
                rows(assumptions.steps(), "step", LabourStep::id, LabourStep::minutes, uniforms),
                rows(assumptions.materials(), "price", Material::id, Material::price, uniforms),
                admitted(assumptions, uniforms),
                PertQuantile.draws(new ThreePoint(1 - spread, 1, 1 + spread), uniforms.apply("unit price")),
                PertQuantile.draws(repair, uniforms.apply(REPAIR)),
                repair.mean());
    }

    /** The admitted shares alone. */
    static double[][] admitted(Assumptions assumptions, Function<String, double[]> uniforms) {
        return rows(assumptions.faults(), ADMITTED, LapFault::id, LapFault::admitted, uniforms);
    }

    public int draws() {
        return repairUsd.length;
    }

    /** The same with the admitted share of one lap fault known, 0 to 1. */
    public World withAdmitted(int fault, double share) {
        double[][] changed = admitted.clone();
        changed[fault] = new double[draws()];
        Arrays.fill(changed[fault], Check.fraction("admitted share", share));
        return new World(stepMinutes, itemPriceUsd, changed, unitPriceFactor, repairUsd, meanRepairUsd);
    }

    private static <T> double[][] rows(
            List<T> table,
            String purpose,
            Function<T, String> id,
            Function<T, ThreePoint> points,
            Function<String, double[]> uniforms) {
        return table.stream()
                .map(row -> PertQuantile.draws(points.apply(row), uniforms.apply(cause(purpose, id.apply(row)))))
                .toArray(double[][]::new);
    }
}
