package weatherlap.sim.work;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.labour.DayPlan;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.quantity.ElevationQuantities;
import weatherlap.sim.quantity.SidingRun;

/**
 * What one wall takes.
 *
 * @param lines labour that its openings share
 * @param openings in the wall's order
 */
public record ElevationWork(Elevation elevation, List<LabourLine> lines, List<OpeningWork> openings) {
    public ElevationWork {
        lines = List.copyOf(lines);
        openings = List.copyOf(openings);
    }

    /** Mean person-minutes, those of its openings in: the value of {@link #labour()}. */
    public double meanMinutes() {
        double minutes = LabourLine.meanMinutes(lines);
        for (OpeningWork opening : openings) {
            minutes += opening.meanMinutes();
        }
        return minutes;
    }

    /** Mean person-minutes, those of its openings in. */
    public Amount labour() {
        Stream<Amount> parts = Stream.of(Stream.of(shared()), openings.stream().map(OpeningWork::labour))
                .flatMap(s -> s);
        return Amount.sum("elevation " + elevation.id(), "min", parts.toList());
    }

    /** As a plan of days sees it: siding comes down and goes back run by run, all else that its openings share is done once before. */
    DayPlan.Wall toPlan(ElevationQuantities quantities) {
        double siding = 0;
        double setup = 0;
        for (LabourLine line : lines) {
            if (line.step().driver() == Driver.ELEVATION) {
                setup += line.meanMinutes();
            } else {
                siding += line.meanMinutes();
            }
        }
        double perPanel = siding == 0 ? 0 : siding / quantities.panelsDown();
        List<DayPlan.Run> runs = new ArrayList<>();
        for (SidingRun run : quantities.runs()) {
            List<Double> minutes = new ArrayList<>(run.openings().size());
            for (int opening : run.openings()) {
                minutes.add(openings.get(opening).meanMinutes());
            }
            runs.add(new DayPlan.Run(run.openings(), run.panels() * perPanel, minutes));
        }
        return new DayPlan.Wall(setup, runs);
    }

    /** Mean person-minutes that its openings share. */
    public Amount shared() {
        return Amount.sum(
                "shared on elevation " + elevation.id(),
                "min",
                lines.stream().map(LabourLine::amount).toList());
    }
}
