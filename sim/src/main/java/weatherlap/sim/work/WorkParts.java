package weatherlap.sim.work;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.Each;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.labour.DayPlan;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.labour.LabourTakeoff;
import weatherlap.sim.method.MethodScope;
import weatherlap.sim.price.CrewRate;
import weatherlap.sim.quantity.ElevationQuantities;
import weatherlap.sim.quantity.HouseQuantities;

/** What a {@link WorkTakeoff} is put together from: the work on each wall, the days that it takes and what an hour costs. */
final class WorkParts {
    private WorkParts() {}

    static List<ElevationWork> elevations(LabourTakeoff labour, House house, HouseQuantities quantities) {
        List<ElevationWork> walls = new ArrayList<>();
        for (int wall = 0; wall < house.elevations().size(); wall++) {
            walls.add(elevation(
                    labour,
                    house.elevations().get(wall),
                    wall,
                    quantities.elevations().get(wall)));
        }
        return walls;
    }

    private static ElevationWork elevation(
            LabourTakeoff labour, Elevation elevation, int wall, ElevationQuantities counted) {
        List<Opening> here = elevation.openings();
        OpeningWork[] openings = new OpeningWork[here.size()];
        for (int o = 0; o < openings.length; o++) {
            openings[o] = new OpeningWork(
                    labour.assumptions(),
                    here.get(o),
                    counted.openings().get(o).method(),
                    labour.ofOpening(wall, counted, o));
        }
        return new ElevationWork(elevation, labour.ofElevation(wall, counted), List.of(openings));
    }

    static DayPlan days(
            LabourTakeoff labour,
            List<ElevationWork> elevations,
            List<LabourLine> jobLines,
            HouseQuantities quantities) {
        Scenario scenario = labour.assumptions().scenario();
        int crew = scenario.whole(Scalar.CREW_SIZE);
        List<LabourLine> daily = labour.ofDays(MethodScope.of(quantities.methods()), 1);
        double lostMinutes = scenario.value(Scalar.TRAVEL_MINUTES_PER_DAY) + LabourLine.meanMinutes(daily) / crew;
        double dayMinutes = scenario.value(Scalar.HOURS_PER_DAY) * Units.MINUTES_PER_HOUR - lostMinutes;
        List<DayPlan.Wall> walls = Each.upTo(
                elevations.size(),
                e -> elevations.get(e).toPlan(quantities.elevations().get(e)));
        return DayPlan.of(dayMinutes, crew, LabourLine.meanMinutes(jobLines), walls);
    }

    static Amount personHour(Assumptions assumptions, House house) {
        return CrewRate.usdPerPersonHour(
                assumptions.wages(house), assumptions.scenario().whole(Scalar.CREW_SIZE));
    }
}
