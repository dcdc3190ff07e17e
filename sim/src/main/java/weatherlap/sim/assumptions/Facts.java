package weatherlap.sim.assumptions;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;

/** The facts of a house, a wall or an opening that conditions ask about. */
public final class Facts {
    private Facts() {}

    public static Map<Fact, String> of(House house) {
        return Collections.unmodifiableMap(ofHouse(house));
    }

    public static Map<Fact, String> of(House house, Elevation elevation) {
        return Collections.unmodifiableMap(ofElevation(house, elevation));
    }

    public static Map<Fact, String> of(House house, Elevation elevation, Opening opening) {
        Map<Fact, String> facts = ofElevation(house, elevation);
        facts.put(Fact.STOREY, Integer.toString(house.storeyOf(elevation, opening)));
        put(facts, Fact.ROOM, opening.room());
        put(facts, Fact.OPERATION, opening.operation());
        put(facts, Fact.NEW_OPERATION, opening.newOperation());
        facts.put(Fact.UNITS, Integer.toString(opening.units()));
        put(facts, Fact.EXISTING_MATERIAL, opening.existingMaterial());
        put(facts, Fact.FRAME_CONDITION, opening.frameCondition());
        put(facts, Fact.INTERIOR_RETURN, opening.interiorReturn());
        return Collections.unmodifiableMap(facts);
    }

    private static Map<Fact, String> ofElevation(House house, Elevation elevation) {
        Map<Fact, String> facts = ofHouse(house);
        put(facts, Fact.SIDING_CONDITION, elevation.sidingCondition());
        return facts;
    }

    private static Map<Fact, String> ofHouse(House house) {
        Map<Fact, String> facts = new EnumMap<>(Fact.class);
        put(facts, Fact.CLADDING, house.cladding());
        put(facts, Fact.BARRIER, house.barrier());
        facts.put(Fact.STOREYS, Integer.toString(house.storeys()));
        facts.put(Fact.LEAD_SAFE, house.leadSafe() ? "yes" : "no");
        return facts;
    }

    /** A fact whose words are the constants of an enum, in their order. */
    private static void put(Map<Fact, String> facts, Fact fact, Enum<?> constant) {
        facts.put(fact, fact.allowed().get(constant.ordinal()));
    }
}
