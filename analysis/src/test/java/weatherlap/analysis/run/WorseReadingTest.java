package weatherlap.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.Sighting;
import weatherlap.sim.made.MadeHouse;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.Simulator;

/**
 * A worse reading never lowers the risk of an insert: over every combination of barrier, three laps and stain that does not contradict
 * itself, on the bundled rows. A lap in order is no worse than an unknown one, that no worse than a reversed or a missing one; a barrier
 * of either kind no worse than an unknown one, that no worse than none; no stain no worse than an unknown one, that no worse than one seen.
 */
class WorseReadingTest {
    private static final Simulator SIMULATOR = new Simulator(Town.BUNDLED, Town.CLIMATE, Sampling.SOBOL, 64, 3);
    private static final double ROUNDING = 1e-9;

    private record Reading(Barrier barrier, Lap head, Lap jamb, Lap sill, Sighting stain) {
        boolean contradicts() {
            return barrier == Barrier.NONE
                    && List.of(head, jamb, sill).stream().anyMatch(lap -> lap == Lap.SHINGLED || lap == Lap.REVERSED);
        }

        /** Every reading that is worse by one step in one place. */
        List<Reading> worse() {
            List<Reading> worse = new ArrayList<>();
            switch (barrier) {
                case HOUSEWRAP, BUILDING_PAPER -> worse.add(new Reading(Barrier.UNKNOWN, head, jamb, sill, stain));
                case UNKNOWN -> worse.add(new Reading(Barrier.NONE, head, jamb, sill, stain));
                case NONE -> {}
            }
            WORSE_LAP
                    .getOrDefault(head, List.of())
                    .forEach(lap -> worse.add(new Reading(barrier, lap, jamb, sill, stain)));
            WORSE_LAP
                    .getOrDefault(jamb, List.of())
                    .forEach(lap -> worse.add(new Reading(barrier, head, lap, sill, stain)));
            WORSE_LAP
                    .getOrDefault(sill, List.of())
                    .forEach(lap -> worse.add(new Reading(barrier, head, jamb, lap, stain)));
            switch (stain) {
                case NO -> worse.add(new Reading(barrier, head, jamb, sill, Sighting.UNKNOWN));
                case UNKNOWN -> worse.add(new Reading(barrier, head, jamb, sill, Sighting.YES));
                case YES -> {}
            }
            return worse.stream().filter(reading -> !reading.contradicts()).toList();
        }
    }

    private static final Map<Lap, List<Lap>> WORSE_LAP = new EnumMap<>(Map.of(
            Lap.SHINGLED, List.of(Lap.UNKNOWN),
            Lap.UNKNOWN, List.of(Lap.REVERSED, Lap.MISSING)));

    @ParameterizedTest
    @CsvSource({
        "1994, VINYL_SIDING, ALUMINUM",
        "1930, WOOD_LAP, WOOD",
        "1970, ALUMINUM_SIDING, ALUMINUM",
        "2005, BRICK_VENEER, VINYL"
    })
    void neverLowersTheRiskOfAnInsert(int year, Cladding cladding, FrameMaterial material) {
        int compared = 0;
        for (Reading better : all()) {
            double before = risk(better, year, cladding, material);
            for (Reading worse : better.worse()) {
                assertThat(risk(worse, year, cladding, material))
                        .as("%s after %s", worse, better)
                        .isGreaterThanOrEqualTo(before - ROUNDING);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(1500);
    }

    private static List<Reading> all() {
        List<Reading> all = new ArrayList<>();
        for (Barrier barrier : Barrier.values()) {
            for (Lap head : Lap.values()) {
                for (Lap jamb : Lap.values()) {
                    for (Lap sill : Lap.values()) {
                        for (Sighting stain : Sighting.values()) {
                            all.add(new Reading(barrier, head, jamb, sill, stain));
                        }
                    }
                }
            }
        }
        return all.stream().filter(reading -> !reading.contradicts()).toList();
    }

    private final Map<Reading, Double> known = new java.util.HashMap<>();

    /** Chance of leak damage anywhere in a house whose one read opening stands among others. */
    private double risk(Reading reading, int year, Cladding cladding, FrameMaterial material) {
        return known.computeIfAbsent(reading, r -> {
            House house = MadeHouse.like(
                            Town.like(Town.house("H1"), year, cladding, r.barrier(), material, Lap.UNKNOWN))
                    .eachOpening(
                            o -> o.opening().id().equals("1") ? o.laps(r.head(), r.jamb(), r.sill(), r.stain()) : o)
                    .house();
            return SIMULATOR.simulate(house).method(Method.INSERT).leakProbability();
        });
    }
}
