package weatherlap.sim.run;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weatherlap.sim.Each;
import weatherlap.sim.Sum;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.material.MaterialLine;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.JobCost;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.work.OpeningWork;
import weatherlap.sim.work.WorkTakeoff;

/**
 * How one method's work turns into what plans are counted in: dollars of price, or days of the crew.
 *
 * @param perMinuteUsd of a person-minute, the working days and the way to the house spread over it
 * @param perUsd of a dollar of material
 * @param openingUsd of each opening's own work and material
 */
record MethodShares(Method method, WorkTakeoff work, double perMinuteUsd, double perUsd, double[] openingUsd) {
    private MethodShares(Method method, WorkTakeoff work, double perMinuteUsd, double perUsd) {
        this(method, work, perMinuteUsd, perUsd, work.openingMaterialUsd());
        List<OpeningWork> openings = work.openings();
        for (int o = 0; o < openingUsd.length; o++) {
            openingUsd[o] = openings.get(o).meanMinutes() * perMinuteUsd + openingUsd[o] * perUsd;
        }
    }

    /** In dollars of price. */
    static MethodShares price(Method method, WorkTakeoff work, Pricing pricing) {
        int crew = work.crewSize();
        double hour = Units.minutesToHours(1);
        double perMinute = pricing.priceUsd(new JobCost(hour * work.personHour().value(), 0, 0, hour / crew));
        double perUsd = pricing.priceUsd(new JobCost(0, 1, 0, 0));
        double dayUsd = Sum.of(
                Each.where(work.materials(), line -> line.item().driver() == Driver.DAY), MaterialLine::houseUsd);
        double others = otherMinutes(work);
        double days = others > 0 ? (dayMinutes(work) * perMinute + dayUsd * perUsd) / others : 0;
        return new MethodShares(method, work, perMinute + days, perUsd);
    }

    /** In working days of the crew, spread over all other work. */
    static MethodShares days(Method method, WorkTakeoff work) {
        double others = otherMinutes(work);
        return new MethodShares(method, work, others > 0 ? work.crewDays().days() / others : 0, 0);
    }

    /** In working days that hold nothing but work: no plan is done in fewer. */
    static MethodShares fullDays(Method method, WorkTakeoff work) {
        var scenario = work.assumptions().scenario();
        double minutes = scenario.value(Scalar.HOURS_PER_DAY) * Units.MINUTES_PER_HOUR
                - scenario.value(Scalar.TRAVEL_MINUTES_PER_DAY);
        double once = LabourLine.meanMinutes(work.dayLines()) / work.crewDays().days();
        return new MethodShares(method, work, 1 / (work.crewSize() * minutes - once), 0);
    }

    private static double dayMinutes(WorkTakeoff work) {
        return LabourLine.meanMinutes(work.dayLines()) + work.travel().value();
    }

    private static double otherMinutes(WorkTakeoff work) {
        return work.meanMinutes() - dayMinutes(work);
    }

    double opening(int o) {
        return openingUsd[o];
    }

    double warranty(double usd) {
        return usd * perUsd;
    }

    Map<String, Double> setup() {
        Map<String, Double> usd = new HashMap<>();
        for (LabourLine line : work.jobLines()) {
            usd.merge(key(line), line.meanMinutes() * perMinuteUsd, Double::sum);
        }
        for (MaterialLine line : work.materials()) {
            boolean daily = line.item().driver() == Driver.DAY;
            usd.put(key(line), (line.remainderUsd() + (daily ? 0 : line.houseUsd())) * perUsd);
        }
        usd.put("permit", work.houseFixedUsd() * perUsd);
        return usd;
    }

    Map<String, Double> fixed(int e) {
        Map<String, Double> usd = new HashMap<>();
        for (LabourLine line : work.elevations().get(e).lines()) {
            if (line.step().driver() == Driver.ELEVATION) {
                usd.put(key(line), line.meanMinutes() * perMinuteUsd);
            }
        }
        for (MaterialLine line : work.materials()) {
            if (line.item().driver() == Driver.ELEVATION) {
                usd.put(key(line), line.wallUsd(e) * perUsd);
            }
        }
        return usd;
    }

    Map<String, Double> perPanel(int e, int panels) {
        Map<String, Double> usd = new HashMap<>();
        if (panels > 0) {
            for (LabourLine line : work.elevations().get(e).lines()) {
                if (line.step().driver() != Driver.ELEVATION) {
                    usd.put(key(line), line.meanMinutes() * perMinuteUsd / panels);
                }
            }
            for (MaterialLine line : work.materials()) {
                if (line.item().driver() == Driver.PANEL || line.item().driver() == Driver.BROKEN_PANEL) {
                    usd.put(key(line), line.wallUsd(e) * perUsd / panels);
                }
            }
        }
        return usd;
    }

    private static String key(LabourLine line) {
        return "step " + line.step().id();
    }

    private static String key(MaterialLine line) {
        return "item " + line.item().id();
    }
}
