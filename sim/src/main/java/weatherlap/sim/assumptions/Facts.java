package weatherlap.sim.assumptions;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
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
        facts.put(Fact.ROOM, word(opening.room()));
        facts.put(Fact.OPERATION, word(opening.operation()));
        facts.put(Fact.NEW_OPERATION, word(opening.newOperation()));
        facts.put(Fact.UNITS, Integer.toString(opening.units()));
        facts.put(Fact.EXISTING_MATERIAL, word(opening.existingMaterial()));
        facts.put(Fact.FRAME_CONDITION, word(opening.frameCondition()));
        facts.put(Fact.INTERIOR_RETURN, word(opening.interiorReturn()));
        return Collections.unmodifiableMap(facts);
    }

    private static Map<Fact, String> ofElevation(House house, Elevation elevation) {
        Map<Fact, String> facts = ofHouse(house);
        facts.put(Fact.SIDING_CONDITION, word(elevation.sidingCondition()));
        return facts;
    }

    private static Map<Fact, String> ofHouse(House house) {
        Map<Fact, String> facts = new EnumMap<>(Fact.class);
        facts.put(Fact.CLADDING, word(house.cladding()));
        facts.put(Fact.BARRIER, word(house.barrier()));
        facts.put(Fact.STOREYS, Integer.toString(house.storeys()));
        facts.put(Fact.LEAD_SAFE, house.leadSafe() ? "yes" : "no");
        return facts;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
