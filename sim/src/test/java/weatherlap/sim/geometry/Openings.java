package weatherlap.sim.geometry;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;

/** Openings of every size, operation and material. */
final class Openings {
    private Openings() {}

    static Arbitrary<Opening> any() {
        Arbitrary<Double> sizes = Arbitraries.doubles().between(8, 144).ofScale(3);
        return Combinators.combine(
                        sizes,
                        sizes,
                        Arbitraries.of(Operation.class),
                        Arbitraries.of(Operation.class),
                        Arbitraries.integers().between(1, 4),
                        Arbitraries.of(FrameMaterial.class))
                .as((width, height, from, to, units, material) -> Measured.frame(width, height)
                        .opens(from, to)
                        .mulled(units)
                        .of(material)
                        .opening());
    }
}
