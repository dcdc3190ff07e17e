package weatherlap.analysis.choice;

import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.price.JobCost;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.work.WorkTakeoff;

/** What a method costs a house however few of its openings are done by it. */
final class SecondMethod {
    private SecondMethod() {}

    /** Work once a house and the rest of the last packages, at the shop's prices, USD; the permit is the house's, whatever the method. */
    static double setupUsd(HouseTakeoff takeoff) {
        WorkTakeoff work = takeoff.work();
        Scenario scenario = work.assumptions().scenario();
        double hours = Units.minutesToHours(LabourLine.meanMinutes(work.jobLines()));
        double rest = work.materials().stream()
                .mapToDouble(line -> line.remainderAmount().value())
                .sum();
        JobCost cost =
                new JobCost(hours * work.personHour().value(), rest, 0, hours / scenario.whole(Scalar.CREW_SIZE));
        return Pricing.of(scenario).priceUsd(cost);
    }
}
