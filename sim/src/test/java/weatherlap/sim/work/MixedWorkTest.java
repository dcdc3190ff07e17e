package weatherlap.sim.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weatherlap.sim.work.WorkFixtures.elevation;
import static weatherlap.sim.work.WorkFixtures.item;
import static weatherlap.sim.work.WorkFixtures.opening;
import static weatherlap.sim.work.WorkFixtures.step;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.house.House;
import weatherlap.sim.material.MaterialLine;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;
import weatherlap.sim.quantity.ElevationQuantities;
import weatherlap.sim.quantity.HouseQuantities;
import weatherlap.sim.quantity.OpeningQuantities;
import weatherlap.sim.quantity.SidingRun;

/** One house by hand: of two windows on the north wall one gets a flange and one an insert, the east wall's one an insert. */
class MixedWorkTest {
    private static final House HOUSE = WorkFixtures.house(
            1990,
            elevation("north", List.of(opening("n1", 24, 1), opening("n2", 132, 1))),
            elevation("east", List.of(opening("e1", 24, 1))));

    private final WorkTakeoff work = WorkTakeoff.of(
            WorkFixtures.assumptions(
                    List.of(
                            step("unload", Driver.JOB, 40),
                            only(Method.INSERT, step("brake", Driver.JOB, 10)),
                            step("sweep", Driver.DAY, 20),
                            only(Method.FULL_FLANGE, step("staging", Driver.ELEVATION, 60)),
                            only(Method.INSERT, step("ladders", Driver.ELEVATION, 20)),
                            step("cover", Driver.ELEVATION, 8),
                            only(Method.FULL_FLANGE, step("rehang", Driver.PANEL, 3)),
                            only(Method.FULL_FLANGE, step("set", Driver.OPENING, 100)),
                            only(Method.INSERT, step("set_in", Driver.OPENING, 50)),
                            step("bead", Driver.PERIMETER_FT, 5)),
                    List.of(
                            only(Method.FULL_FLANGE, item("tape", Driver.PERIMETER_FT, 1, 0.1, 10, 30)),
                            only(Method.INSERT, item("foam", Driver.OPENING, 1, 0, 1, 8)),
                            item("tarp", Driver.ELEVATION, 1, 0, 4, 20))),
            HOUSE,
            new HouseQuantities(
                    Set.of(Method.FULL_FLANGE, Method.INSERT),
                    List.of(
                            new ElevationQuantities(
                                    List.of(new SidingRun(List.of(0), 10), new SidingRun(List.of(1), 0)),
                                    List.of(counted(Method.FULL_FLANGE), counted(Method.INSERT))),
                            new ElevationQuantities(SidingRun.apart(1), List.of(counted(Method.INSERT))))));

    private static OpeningQuantities counted(Method method) {
        return new OpeningQuantities(method, Map.of(Driver.OPENING, 1.0, Driver.PERIMETER_FT, 16.0));
    }

    private static LabourStep only(Method method, LabourStep step) {
        return new LabourStep(
                step.id(),
                MethodScope.of(method),
                step.tradeName(),
                step.driver(),
                step.minutes(),
                step.appliesWhen(),
                step.coldSensitive(),
                step.heightSensitive(),
                step.people(),
                step.origin());
    }

    private static Material only(Method method, Material item) {
        return new Material(
                item.id(),
                MethodScope.of(method),
                item.tradeName(),
                item.driver(),
                item.quantityPerDriver(),
                item.unit(),
                item.wasteFraction(),
                item.packageSize(),
                item.price(),
                item.appliesWhen(),
                item.origin());
    }

    /**
     * By hand, person-minutes. n1: 100 + 16 · 5 = 180; n2 and e1: 50 + 80 = 130. North: staging 60, ladders 20, cover once 8, 10 panels
     * · 3 = 118; east: ladders 20, cover 8. Job: 40 + 10. All are (180 + 130 + 130 + 118 + 28 + 50)/2 = 318 crew minutes of 480 − 60
     * travel − 10 sweeping: one day. House: 636 + sweeping 20 + travel 120 = 776.
     */
    @Test
    void minutesByHand() {
        assertThat(work.openings().stream().map(OpeningWork::meanMinutes)).containsExactly(180.0, 130.0, 130.0);
        assertThat(work.elevations().get(0).shared().value()).isCloseTo(118, within(1e-9));
        assertThat(work.elevations().get(1).shared().value()).isCloseTo(28, within(1e-9));
        assertThat(work.jobLines()).extracting(line -> line.step().id()).containsExactly("unload", "brake");
        assertThat(work.crewDays().days()).isEqualTo(1);
        assertThat(work.meanMinutes()).isCloseTo(776, within(1e-9));
    }

    /** By hand. Units: 200 + 4 · 96 = 584 with a flange, 210 + 4 · 96 = 594 as inserts. Tape 16 · 1.1 = 17.6 ft: two rolls of 10 ft. */
    @Test
    void unitsAndPackagesByHand() {
        assertThat(work.openings().stream().map(opening -> opening.unit().value()))
                .containsExactly(584.0, 594.0, 594.0);
        assertThat(work.materials())
                .extracting(line -> line.item().id(), MaterialLine::packages)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("tape", 2),
                        org.assertj.core.groups.Tuple.tuple("foam", 2),
                        org.assertj.core.groups.Tuple.tuple("tarp", 1));
        assertThat(work.materials().get(0).openings()).containsExactly(16.0, 0.0, 0.0);
    }
}
