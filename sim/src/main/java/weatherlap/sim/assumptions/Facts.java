package weatherlap.sim.assumptions;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;

/** The facts of a house, a wall or an opening that conditions ask about. */
public final class Facts {
    private Facts() {}

    public static Map<Fact, String> of(House house, Scenario scenario) {
        return Collections.unmodifiableMap(ofWork(house, scenario));
    }

    public static Map<Fact, String> of(House house, Elevation elevation, Scenario scenario) {
        return Collections.unmodifiableMap(ofElevation(house, elevation, scenario));
    }

    /** What rows of labor and material may ask of an opening. */
    public static Map<Fact, String> of(House house, Elevation elevation, Opening opening, Scenario scenario) {
        Map<Fact, String> facts = ofElevation(house, elevation, scenario);
        facts.put(Fact.STOREY, Integer.toString(house.storeyOf(elevation, opening)));
        putOpening(facts, house, opening, scenario);
        return Collections.unmodifiableMap(facts);
    }

    /** What lap faults may ask of an opening done by a method. */
    public static Map<Fact, String> of(House house, Opening opening, Method method, Scenario scenario) {
        EnumMap<Fact, String> facts = ofHouse(house);
        putOpening(facts, house, opening, scenario);
        put(facts, Fact.HEAD_LAP, opening.laps().head());
        put(facts, Fact.JAMB_LAP, opening.laps().jamb());
        put(facts, Fact.SILL_LAP, opening.laps().sill());
        put(facts, Fact.METHOD, method);
        return Collections.unmodifiableMap(facts);
    }

    private static void putOpening(Map<Fact, String> facts, House house, Opening opening, Scenario scenario) {
        put(facts, Fact.ROOM, opening.place().room());
        put(facts, Fact.OPERATION, opening.operation());
        put(facts, Fact.NEW_OPERATION, opening.newOperation());
        facts.put(Fact.UNITS, Integer.toString(opening.units()));
        put(facts, Fact.EXISTING_MATERIAL, opening.frame().material());
        facts.put(Fact.SASH_WEIGHTS, yes(hangsOnWeights(house, opening, scenario)));
        facts.put(Fact.OLD_FLANGE, yes(hasFlange(house, opening, scenario)));
        put(facts, Fact.FRAME_CONDITION, opening.frame().condition());
        put(facts, Fact.INTERIOR_RETURN, opening.inside().finish());
    }

    private static Map<Fact, String> ofWork(House house, Scenario scenario) {
        Map<Fact, String> facts = ofHouse(house);
        facts.put(Fact.REGION, scenario.regionOf(house));
        return facts;
    }

    private static Map<Fact, String> ofElevation(House house, Elevation elevation, Scenario scenario) {
        Map<Fact, String> facts = ofWork(house, scenario);
        put(facts, Fact.SIDING_CONDITION, elevation.sidingCondition());
        return facts;
    }

    private static EnumMap<Fact, String> ofHouse(House house) {
        EnumMap<Fact, String> facts = new EnumMap<>(Fact.class);
        put(facts, Fact.CLADDING, house.cladding());
        put(facts, Fact.BARRIER, house.barrier());
        facts.put(Fact.STOREYS, Integer.toString(house.storeys()));
        facts.put(Fact.YEAR_BUILT, Integer.toString(house.yearBuilt()));
        facts.put(Fact.LEAD_SAFE, yes(house.leadSafe()));
        return facts;
    }

    /** Wood hung windows of houses before {@link Scalar#SASH_WEIGHTS_UNTIL_YEAR}; that the units are the house's first is presumed. */
    private static boolean hangsOnWeights(House house, Opening opening, Scenario scenario) {
        boolean hung =
                switch (opening.operation()) {
                    case DOUBLE_HUNG, SINGLE_HUNG -> true;
                    case SLIDER, CASEMENT, AWNING, PICTURE -> false;
                };
        return hung
                && opening.frame().material() == FrameMaterial.WOOD
                && house.yearBuilt() < scenario.value(Scalar.SASH_WEIGHTS_UNTIL_YEAR);
    }

    private static boolean hasFlange(House house, Opening opening, Scenario scenario) {
        Scalar from =
                switch (opening.frame().material()) {
                    case ALUMINUM, VINYL, STEEL -> Scalar.FLANGE_FROM_YEAR;
                    case WOOD -> Scalar.WOOD_FLANGE_FROM_YEAR;
                };
        return house.yearBuilt() >= scenario.value(from);
    }

    private static String yes(boolean holds) {
        return holds ? "yes" : "no";
    }

    /** A fact whose words are the constants of an enum, in their order. */
    private static void put(Map<Fact, String> facts, Fact fact, Enum<?> constant) {
        facts.put(fact, fact.allowed().get(constant.ordinal()));
    }
}
