package weatherlap.sim.laps;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import weatherlap.sim.Each;
import weatherlap.sim.Kept;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.FirstLine;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.WarrantyCovers;
import weatherlap.sim.assumptions.Workmanship;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;

/** What the leak model needs of a scenario, tabulated once and shared by all houses and threads. */
public final class LeakTables {
    /** The fault that stands by choice, not by chance, where the scenario seals the bottom flange. */
    static final String SEALED_SILL_FLANGE = "sill_flange_sealed";

    /** The fault that cold makes likelier: its odds are multiplied below the temperature that tape needs. */
    static final String TAPE_COLD = "tape_cold";

    /** @param passes mean share of the arriving water that passes it over the horizon, 0 to 1 */
    record Compiled(LeakTable table, double passes) {}

    /** All that a line's table depends on. */
    private record Terms(
            LineOfDefence line, Fragility fragility, int horizonYears, int warrantyYears, double discountRate) {
        Compiled compiled() {
            LeakTable table = new LeakTable(line, fragility, horizonYears, warrantyYears, discountRate);
            return new Compiled(table, line.meanPasses(horizonYears));
        }
    }

    /** Sights of a fault at openings of one house. */
    @SuppressWarnings("ArrayRecordComponent") // compared by what it holds
    private record Told(Belief untold, int[] numbers) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Told told && untold == told.untold && Arrays.equals(numbers, told.numbers);
        }

        @Override
        public int hashCode() {
            return 31 * untold.hashCode() + Arrays.hashCode(numbers);
        }
    }

    /**
     * Methods that no fault tells apart by what it asks.
     *
     * @param one of them, any
     */
    record Alike(Method one, MethodScope all) {}

    private static final int FIRST_LINES = FirstLine.values().length;

    /** Lines that are kept for others like them and for later runs: sweeps of other assumptions come back to the same ones. */
    private static final int KEPT = 512;

    /** Beliefs kept: some 10 MB. */
    private static final int MOST_TOLD = 2048;

    private static final Map<Terms, Compiled> SHARED =
            Collections.synchronizedMap(new LinkedHashMap<>(KEPT, 0.75f, true) {
                @Override
                protected boolean removeEldestEntry(Map.Entry<Terms, Compiled> eldest) {
                    return size() > KEPT;
                }
            });

    private final Assumptions assumptions;
    private final Fragility fragility;
    private final Map<Cladding, Map<FirstLine, LineOfDefence>> lines = new EnumMap<>(Cladding.class);
    /** Made when they are first asked for. */
    private final AtomicReferenceArray<Compiled> compiled =
            new AtomicReferenceArray<>(Cladding.values().length * FIRST_LINES);

    private final QualityStrata strata;
    private final Map<SharedQuality, double[]> untoldStrata = new ConcurrentHashMap<>();
    private final Map<FaultPrior.Ground, List<Belief>> untold = new ConcurrentHashMap<>();
    private final Kept<Told, Belief> told = new Kept<>(MOST_TOLD);
    private final LapFault[] faults;
    private final Sights[] sights;
    private final List<Alike> alike;
    private final List<SharedQuality> crew;
    private final WarrantyCovers covers;

    private LeakTables(Assumptions assumptions) {
        this.assumptions = assumptions;
        Scenario scenario = assumptions.scenario();
        fragility = new Fragility(
                scenario.value(Scalar.DRYING_L_PER_YEAR),
                scenario.value(Scalar.DAMAGE_MEDIAN_L_PER_YEAR),
                scenario.value(Scalar.DAMAGE_SPREAD));
        for (Cladding cladding : Cladding.values()) {
            Map<FirstLine, LineOfDefence> behind = new EnumMap<>(FirstLine.class);
            for (FirstLine first : FirstLine.values()) {
                behind.put(first, LineOfDefence.of(first, cladding, scenario));
            }
            lines.put(cladding, behind);
        }
        double correlation = scenario.value(Scalar.HOUSE_CORRELATION);
        strata = QualityStrata.at(SharedQuality.of(0.5, correlation).weight());
        covers = scenario.choice(Choice.WARRANTY_COVERS, WarrantyCovers.class);
        Workmanship workmanship = scenario.choice(Choice.WORKMANSHIP, Workmanship.class);
        crew = assumptions.faults().stream()
                .map(fault -> SharedQuality.of(crewPrior(fault, workmanship), correlation))
                .toList();
        faults = assumptions.faults().toArray(LapFault[]::new);
        double reliability = scenario.value(Scalar.INSPECTION_RELIABILITY);
        sights = Arrays.stream(faults)
                .map(fault -> new Sights(fault, reliability))
                .toArray(Sights[]::new);
        alike = Each.any(assumptions.faults(), fault -> fault.appliesWhen().asks(Fact.METHOD))
                ? Each.of(MethodScope.EVERY.methods(), method -> new Alike(method, MethodScope.of(method)))
                : List.of(new Alike(Method.INSERT, MethodScope.EVERY));
    }

    public static LeakTables of(Assumptions assumptions) {
        return new LeakTables(assumptions);
    }

    Compiled compiled(FirstLine first, Cladding cladding) {
        int place = cladding.ordinal() * FIRST_LINES + first.ordinal();
        Compiled known = compiled.get(place);
        if (known == null) {
            known = compiled(lines.get(cladding).get(first), assumptions.scenario());
            compiled.set(place, known);
        }
        return known;
    }

    private Compiled compiled(LineOfDefence line, Scenario scenario) {
        Terms terms = new Terms(
                line,
                fragility,
                scenario.whole(Scalar.HORIZON_YEARS),
                scenario.whole(Scalar.WARRANTY_YEARS),
                scenario.value(Scalar.DISCOUNT_RATE));
        Compiled known = SHARED.get(terms);
        if (known != null) {
            return known;
        }
        Compiled made = terms.compiled(); // outside the lock: others may make theirs meanwhile
        SHARED.put(terms, made);
        return made;
    }

    private double crewPrior(LapFault fault, Workmanship workmanship) {
        if (fault.kind() == FaultKind.EXISTING) {
            return 0;
        }
        boolean chosen = fault.id().equals(SEALED_SILL_FLANGE)
                && assumptions.scenario().choice(Choice.SILL_FLANGE).equals("sealed");
        double prior = FaultPrior.given(fault, fault.priorByWorkmanship(), workmanship);
        boolean cold = fault.id().equals(TAPE_COLD) && scalar(Scalar.TEMPERATURE_F) < scalar(Scalar.TAPE_WARM_F);
        return chosen ? 1 : cold ? FaultPrior.timesOdds(prior, scalar(Scalar.COLD_TAPE_ODDS)) : prior;
    }

    public Assumptions assumptions() {
        return assumptions;
    }

    public Fragility fragility() {
        return fragility;
    }

    LineOfDefence line(FirstLine line, Cladding cladding) {
        return lines.get(cladding).get(line);
    }

    /** Mean share of the arriving water that passes a first line over the horizon, 0 to 1. */
    public double passes(FirstLine line, Cladding cladding) {
        return compiled(line, cladding).passes();
    }

    LeakTable table(FirstLine line, Cladding cladding) {
        return compiled(line, cladding).table();
    }

    /**
     * What is believed of each fault before anyone has looked. There are as many as crews' faults, and old ones by barrier and era: all
     * are kept.
     */
    List<Belief> untold(FaultPrior.Ground ground) {
        return untold.computeIfAbsent(ground, asked -> Each.upTo(crew.size(), f -> untold(prior(f, asked))));
    }

    private SharedQuality prior(int f, FaultPrior.Ground ground) {
        LapFault fault = faults[f];
        return fault.kind() == FaultKind.NEW
                ? crew.get(f)
                : SharedQuality.of(FaultPrior.of(fault, ground), scalar(Scalar.HOUSE_CORRELATION));
    }

    private Belief untold(SharedQuality prior) {
        return new Belief(prior.mean(), prior, untoldStrata.computeIfAbsent(prior, strata::of));
    }

    /**
     * What is believed of a fault after sights at some openings of a house. Few houses have many, so that most of what is told is told of
     * many houses: it is kept.
     *
     * @param untold the belief before, as {@link #untold(FaultPrior.Ground)} gives it
     * @param numbers of the sights, see {@link Sights}
     */
    Belief told(int fault, Belief untold, int[] numbers) {
        Told evidence = new Told(untold, numbers);
        Belief known = told.get(evidence);
        return known != null ? known : told.keep(evidence, tell(fault, evidence));
    }

    private Belief tell(int fault, Told told) {
        Belief untold = told.untold();
        Sights sights = sights(fault);
        SharedQuality quality =
                untold.quality().after(Each.upTo(told.numbers().length, i -> sights.likelihood(told.numbers()[i])));
        return quality.equals(untold.quality()) ? untold : new Belief(untold.prior(), quality, strata.of(quality));
    }

    /** In the order of their table; read them, do not write. */
    LapFault[] faults() {
        return faults;
    }

    /** Of a fault by its position in its table. */
    Sights sights(int fault) {
        return sights[fault];
    }

    /** All methods together, or each by itself where a fault asks for the method. */
    List<Alike> alike() {
        return alike;
    }

    WarrantyCovers warrantyCovers() {
        return covers;
    }

    double scalar(Scalar scalar) {
        return assumptions.scenario().value(scalar);
    }
}
