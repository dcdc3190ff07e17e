package weatherlap.sim.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import weatherlap.sim.Each;
import weatherlap.sim.Sum;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.HouseFacts;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.House;
import weatherlap.sim.labour.DayPlan;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.labour.LabourTakeoff;
import weatherlap.sim.material.Disposal;
import weatherlap.sim.material.MaterialLine;
import weatherlap.sim.material.MaterialTakeoff;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;
import weatherlap.sim.price.JobCost;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.quantity.HouseQuantities;

/**
 * The work on one house.
 *
 * @param steps of the house, which its labour by any methods is taken from
 * @param methods by which its openings are done
 * @param elevations in table order
 * @param jobLines labour once a house
 * @param dayLines labour of all working days
 * @param crewDays what is done on which day, on mean minutes
 * @param materials items bought, openings counted in table order over all walls
 * @param personHour wage with burden of a person of the crew, USD/h
 */
public record WorkTakeoff(
        Assumptions assumptions,
        House house,
        LabourTakeoff steps,
        Set<Method> methods,
        List<ElevationWork> elevations,
        List<LabourLine> jobLines,
        List<LabourLine> dayLines,
        DayPlan crewDays,
        List<MaterialLine> materials,
        Amount personHour) {
    public WorkTakeoff {
        methods = Method.set(methods);
        elevations = List.copyOf(elevations);
        jobLines = List.copyOf(jobLines);
        dayLines = List.copyOf(dayLines);
        materials = List.copyOf(materials);
    }

    /**
     * Takes the work off.
     *
     * @throws IllegalArgumentException when the quantities do not cover the house, a driver was not taken off, a unit has no price, or
     *     a day's overhead leaves no time to work
     */
    public static WorkTakeoff of(Assumptions assumptions, House house, HouseQuantities quantities) {
        return of(
                new LabourTakeoff(assumptions, house, HouseFacts.of(house, assumptions.scenario())), house, quantities);
    }

    /** The same from the labor of the house, which serves any methods. */
    public static WorkTakeoff of(LabourTakeoff labour, House house, HouseQuantities quantities) {
        quantities.fitting(house);
        Assumptions assumptions = labour.assumptions();
        MethodScope methods = MethodScope.of(quantities.methods());
        List<ElevationWork> elevations = WorkParts.elevations(labour, house, quantities);
        List<LabourLine> jobLines = labour.ofJob(methods);
        DayPlan days = WorkParts.days(labour, elevations, jobLines, quantities);
        return new WorkTakeoff(
                assumptions,
                house,
                labour,
                quantities.methods(),
                elevations,
                jobLines,
                labour.ofDays(methods, days.days()),
                days,
                new MaterialTakeoff(assumptions, house, labour.facts(), quantities).lines(days.days()),
                WorkParts.personHour(assumptions, house));
    }

    /**
     * The same work by a crew of another size; without a step that one of the two is too small for, its minutes are the same.
     *
     * @param theirs the labor of the house by assumptions that differ from those of this takeoff in the crew's size alone
     * @param quantities that this takeoff was made from
     */
    public WorkTakeoff by(LabourTakeoff theirs, HouseQuantities quantities) {
        Assumptions changed = theirs.assumptions();
        int smaller = Math.min(
                assumptions.scenario().whole(Scalar.CREW_SIZE),
                changed.scenario().whole(Scalar.CREW_SIZE));
        boolean same = !Each.any(changed.steps(), step -> step.people() > smaller);
        List<ElevationWork> walls = same ? elevations : WorkParts.elevations(theirs, house, quantities);
        List<LabourLine> ofJob = same ? jobLines : theirs.ofJob(MethodScope.of(methods));
        DayPlan days = WorkParts.days(theirs, walls, ofJob, quantities);
        return new WorkTakeoff(
                changed,
                house,
                theirs,
                methods,
                walls,
                ofJob,
                theirs.ofDays(MethodScope.of(methods), days.days()),
                days,
                Each.of(materials, line -> line.over(days.days())),
                WorkParts.personHour(changed, house));
    }

    /** All openings, in table order over the walls. */
    public List<OpeningWork> openings() {
        List<OpeningWork> all = new ArrayList<>();
        for (ElevationWork wall : elevations) {
            all.addAll(wall.openings());
        }
        return all;
    }

    /** Mean person-minutes of the house, travel in: the value of {@link #labour()}. */
    public double meanMinutes() {
        return Sum.of(elevations, ElevationWork::meanMinutes)
                + LabourLine.meanMinutes(jobLines)
                + LabourLine.meanMinutes(dayLines)
                + travel().value();
    }

    /** Mean person-minutes of the house, travel in. */
    public Amount labour() {
        Stream<Amount> walls = elevations.stream().map(ElevationWork::labour);
        Stream<Amount> house =
                Stream.concat(jobLines.stream(), dayLines.stream()).map(LabourLine::amount);
        return Amount.sum(
                "labor",
                "min",
                Stream.of(walls, house, Stream.of(travel())).flatMap(s -> s).toList());
    }

    /** Person-minutes on the road. */
    public Amount travel() {
        Scenario scenario = assumptions.scenario();
        return Amount.product(
                "travel",
                "min",
                List.of(
                        Amount.given("working days", crewDays.days(), "days"),
                        scenario.amount(Scalar.TRAVEL_MINUTES_PER_DAY),
                        scenario.amount(Scalar.CREW_SIZE)));
    }

    /**
     * Windows a day at this job's pace, in parts of a day: what is done once a day comes off every day, all else is work to get through.
     *
     * <pre>n (C T − D) / M    n openings, C people, T minutes a day at the house, D person-minutes once a day, M all others</pre>
     *
     * @param dayMinutes of a working day at the house, travel apart, min
     */
    public double openingsADay(double dayMinutes) {
        double days = LabourLine.meanMinutes(dayLines);
        double all = meanMinutes() - travel().value() - days;
        double leftADay = assumptions.scenario().whole(Scalar.CREW_SIZE) * dayMinutes - days / crewDays.days();
        return openings().size() * leftADay / all;
    }

    /** Every labour line of the house. */
    public List<LabourLine> lines() {
        List<LabourLine> lines = new ArrayList<>();
        for (ElevationWork wall : elevations) {
            lines.addAll(wall.lines());
            wall.openings().forEach(opening -> lines.addAll(opening.lines()));
        }
        lines.addAll(jobLines);
        lines.addAll(dayLines);
        return lines;
    }

    /** Mean person-minutes by step, travel apart, in the order of {@link #lines}. */
    public Map<String, Double> minutesByStep() {
        return StepMinutes.of(this);
    }

    /** Material of the house, USD: units, items in whole packages, permit and tipping. */
    public Amount material() {
        return MaterialAmounts.all(assumptions.scenario(), openings(), materials);
    }

    /** The value of {@link #material()}, USD. */
    public double materialUsd() {
        double units = 0;
        double items = 0;
        for (OpeningWork opening : openings()) {
            units += opening.unitUsd();
        }
        for (MaterialLine line : materials) {
            items += line.usd();
        }
        double tipping = tippingUsd();
        double rest = Disposal.restOfLeastCharge(assumptions.scenario(), tipping);
        return units + items + tipping + rest + assumptions.scenario().value(Scalar.PERMIT_USD);
    }

    private double tippingUsd() {
        double tipping = 0;
        for (OpeningWork opening : openings()) {
            tipping += opening.tippingUsd();
        }
        return tipping;
    }

    /** What the house pays the tip beyond the weight of its openings, USD: a load has a least charge. */
    public Amount restOfTipping() {
        return MaterialAmounts.restOfTipping(assumptions.scenario(), openings());
    }

    /** Expected material of each opening, USD: the values of {@link #materialOfOpening}. */
    public double[] openingMaterialUsd() {
        List<OpeningWork> all = openings();
        double[] usd = new double[all.size()];
        for (int o = 0; o < usd.length; o++) {
            usd[o] = all.get(o).unitUsd() + all.get(o).tippingUsd();
            for (MaterialLine line : materials) {
                usd[o] += line.openingUsd(o);
            }
        }
        return usd;
    }

    /** Material of one opening, USD: its unit, its tipping and what it uses of the items. */
    public Amount materialOfOpening(int opening) {
        return MaterialAmounts.ofOpening(openings().get(opening), opening, materials);
    }

    /**
     * Material of the house that no opening uses, USD: shared items, the rest of each last package and of the tip's least charge, the
     * permit.
     */
    public Amount materialOfHouse() {
        return MaterialAmounts.ofHouse(assumptions.scenario(), openings(), materials);
    }

    /** The permit, and what the house pays the tip beyond the weight of its openings, USD. */
    public double houseFixedUsd() {
        return assumptions.scenario().value(Scalar.PERMIT_USD)
                + Disposal.restOfLeastCharge(assumptions.scenario(), tippingUsd());
    }

    /** People. */
    public int crewSize() {
        return assumptions.scenario().whole(Scalar.CREW_SIZE);
    }

    /**
     * What the house is expected to cost the shop.
     *
     * @param warrantyUsd repairs expected under the warranty
     */
    public JobCost expectedCost(double warrantyUsd) {
        double personHours = Units.minutesToHours(meanMinutes());
        return new JobCost(personHours * personHour.value(), materialUsd(), warrantyUsd, personHours / crewSize());
    }

    /**
     * What the method is expected to cost the shop at this house however few of the openings are done by it: the work once a house and
     * the rest of each last package. The permit and the least charge of
     * the tip are the house's, whatever the method.
     */
    public JobCost setupCost() {
        double personHours = Units.minutesToHours(LabourLine.meanMinutes(jobLines));
        return new JobCost(
                personHours * personHour.value(),
                Sum.of(materials, MaterialLine::remainderUsd),
                0,
                personHours / crewSize());
    }

    /** Expected gross profit for each day the crew is at the house, USD. */
    public double grossProfitPerCrewDayUsd(double warrantyUsd) {
        Pricing pricing = Pricing.of(assumptions.scenario());
        JobCost cost = expectedCost(warrantyUsd);
        return pricing.grossProfitUsd(pricing.priceUsd(cost), cost) / crewDays.days();
    }

    /** The same as arrays, for drawing. */
    public WorkWeights weights() {
        return WorkWeights.of(this);
    }
}
