package weatherlap.sim.laps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weatherlap.sim.assumptions.Era;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.FirstLine;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Opening;

/** Why an opening leaks: the chance of damage as a sum over its paths, each down to its row. */
public final class LeakExplanation {
    private static final String LITRES = "L/year";

    private final List<LeakPath> paths;
    private final double[] contribution;
    private final HouseLaps laps;
    private final Opening opening;
    private final Function<Joint, Amount> water;

    private LeakExplanation(
            List<LeakPath> paths,
            double[] contribution,
            HouseLaps laps,
            Opening opening,
            Function<Joint, Amount> water) {
        this.paths = paths;
        this.contribution = contribution;
        this.laps = laps;
        this.opening = opening;
        this.water = water;
    }

    /**
     * @param contribution of each path of the model to the chance of damage, as {@link LeakDraws#contribution} gives it
     * @param water that arrives at a joint of the opening, L a year
     */
    public static LeakExplanation of(
            LeakModel model, double[] contribution, HouseLaps laps, Opening opening, Function<Joint, Amount> water) {
        return new LeakExplanation(model.paths(), contribution, laps, opening, water);
    }

    /** The chance of damage within the horizon as the sum of the contributions of its paths, largest first. */
    public Amount tree() {
        return Amount.sum(
                "chance of leak damage within the years looked at",
                "",
                largestFirst()
                        .map(f -> contribution(paths.get(f), contribution[f]))
                        .toList());
    }

    private Stream<Integer> largestFirst() {
        return IntStream.range(0, paths.size())
                .boxed()
                .sorted(Comparator.comparingDouble((Integer f) -> -contribution[f]));
    }

    private Amount contribution(LeakPath path, double value) {
        Scenario scenario = scenario();
        Amount entering = Amount.product(
                "water let into the wall where the fault stands",
                LITRES,
                List.of(
                        water.apply(path.fault().joint()),
                        firstLine(path),
                        Amount.given(
                                "mean admitted share",
                                path.fault().admitted().mean(),
                                "",
                                path.fault().origin())));
        return Amount.formula(
                path.fault().tradeName() + ": part of the chance of damage, mean of the runs",
                value,
                "",
                List.of(
                        standing(path),
                        entering,
                        scenario.amount(Scalar.DRYING_L_PER_YEAR),
                        scenario.amount(Scalar.DAMAGE_MEDIAN_L_PER_YEAR),
                        scenario.amount(Scalar.DAMAGE_SPREAD),
                        scenario.amount(Scalar.HORIZON_YEARS)));
    }

    private Amount firstLine(LeakPath path) {
        FirstLine line = path.fault().firstLine();
        String name = "mean share past the first line (" + word(line) + ") over the years";
        List<Scalar> scalars =
                switch (line) {
                    case SEALANT ->
                        List.of(
                                Scalar.SOUND_SEAL_PASSES,
                                Scalar.FAILED_SEAL_PASSES,
                                Scalar.SEALANT_LIFE_SHAPE,
                                Scalar.SEALANT_LIFE_YEARS,
                                Scalar.RESEAL_YEARS);
                    case CAPPING ->
                        List.of(
                                Scalar.SOUND_SEAL_PASSES,
                                Scalar.FAILED_SEAL_PASSES,
                                Scalar.CAPPING_LIFE_SHAPE,
                                Scalar.CAPPING_LIFE_YEARS,
                                Scalar.RESEAL_YEARS);
                    case CLADDING -> List.of(LineOfDefence.passing(laps.house().cladding()));
                    case NONE -> List.of();
                };
        return scalars.isEmpty()
                ? Amount.given(name, path.passesFirstLine(), "")
                : Amount.formula(
                        name,
                        path.passesFirstLine(),
                        "",
                        scalars.stream().map(scenario()::amount).toList());
    }

    private Amount standing(LeakPath path) {
        LapFault fault = path.fault();
        List<Amount> parts = new ArrayList<>();
        if (fault.kind() == FaultKind.EXISTING) {
            double byBarrier = FaultPrior.byBarrier(fault, laps.house());
            parts.add(Amount.given("prior for the barrier", byBarrier, "", fault.origin()));
            Era era = Era.of(laps.house().yearBuilt());
            parts.add(Amount.given(
                    "odds for the years built", fault.oddsByEra().getOrDefault(era, 1.0), "", fault.origin()));
            Likelihood sight = laps.sight(path.faultIndex(), opening);
            parts.add(Amount.given(
                    "mean of the house after all that was seen",
                    laps.quality(path.faultIndex()).mean(),
                    ""));
            parts.add(Amount.given("likelihood of what was seen here, if it stands", sight.ifStanding(), ""));
            parts.add(Amount.given("likelihood of what was seen here, if not", sight.ifNot(), ""));
        } else {
            parts.add(Amount.given("prior for the workmanship", path.prior(), "", fault.origin()));
            if (fault.id().equals(LeakTables.TAPE_COLD)) {
                parts.add(scenario().amount(Scalar.TEMPERATURE_F));
                parts.add(scenario().amount(Scalar.TAPE_WARM_F));
                parts.add(scenario().amount(Scalar.COLD_TAPE_ODDS));
            }
        }
        return Amount.formula("probability that the fault stands", path.probability(), "", parts);
    }

    private Scenario scenario() {
        return laps.tables().assumptions().scenario();
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
