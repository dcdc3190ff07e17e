package weatherlap.sim.assumptions;

import java.util.Arrays;
import java.util.Map;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;

/** The facts of a house, a wall or an opening that conditions ask about. */
public final class Facts {
    private static final int UNKNOWN = -1;

    /** By ordinal of the fact: the place of its word among those allowed, 0 where any name is. */
    private final int[] places;

    /** Of the one fact that any name is allowed of, {@link Fact#REGION}, where it is known. */
    private final String region;

    private Facts(int[] places, String region) {
        this.places = places;
        this.region = region;
    }

    /** @throws IllegalArgumentException where a word is not one that its fact may be */
    public static Facts of(Map<Fact, String> words) {
        int[] places = none();
        words.forEach((fact, word) -> {
            fact.check(word);
            places[fact.ordinal()] = Math.max(0, fact.allowed().indexOf(word));
        });
        return new Facts(places, words.get(Fact.REGION));
    }

    /** What rows of labor and material may ask of a house. */
    public static Facts of(House house, Scenario scenario) {
        int[] places = ofHouse(house);
        places[Fact.REGION.ordinal()] = 0;
        return new Facts(places, scenario.regionOf(house));
    }

    public static Facts of(House house, Elevation elevation, Scenario scenario) {
        return of(house, scenario).at(elevation);
    }

    /** What rows of labor and material may ask of an opening. */
    public static Facts of(House house, Elevation elevation, Opening opening, Scenario scenario) {
        return of(house, elevation, scenario).at(house, elevation, opening, scenario);
    }

    /** What lap faults may ask of an opening done by a method. */
    public static Facts of(House house, Opening opening, Method method, Scenario scenario) {
        int[] places = ofHouse(house);
        put(places, house, opening, scenario);
        put(places, Fact.HEAD_LAP, opening.laps().head());
        put(places, Fact.JAMB_LAP, opening.laps().jamb());
        put(places, Fact.SILL_LAP, opening.laps().sill());
        put(places, Fact.METHOD, method);
        return new Facts(places, null);
    }

    /** Those of a wall, from those of its house. */
    Facts at(Elevation elevation) {
        int[] more = places.clone();
        put(more, Fact.SIDING_CONDITION, elevation.sidingCondition());
        return new Facts(more, region);
    }

    /** Those of an opening, from those of its wall. */
    Facts at(House house, Elevation elevation, Opening opening, Scenario scenario) {
        int[] more = places.clone();
        put(more, Fact.STOREY, house.storeyOf(elevation, opening));
        put(more, house, opening, scenario);
        return new Facts(more, region);
    }

    /** The word that a fact is. */
    public String word(Fact fact) {
        int place = place(fact);
        return fact.allowed().isEmpty() ? region : fact.allowed().get(place);
    }

    /** Place of the word among those allowed. */
    int place(Fact fact) {
        int place = places[fact.ordinal()];
        if (place == UNKNOWN) {
            throw new IllegalArgumentException("The fact " + fact + " is not known where the condition is asked.");
        }
        return place;
    }

    private static int[] none() {
        int[] places = new int[Fact.values().length];
        Arrays.fill(places, UNKNOWN);
        return places;
    }

    private static int[] ofHouse(House house) {
        int[] places = none();
        put(places, Fact.CLADDING, house.cladding());
        put(places, Fact.BARRIER, house.barrier());
        put(places, Fact.STOREYS, house.storeys());
        put(places, Fact.YEAR_BUILT, house.yearBuilt());
        put(places, Fact.LEAD_SAFE, house.leadSafe());
        return places;
    }

    private static void put(int[] places, House house, Opening opening, Scenario scenario) {
        put(places, Fact.ROOM, opening.place().room());
        put(places, Fact.OPERATION, opening.operation());
        put(places, Fact.NEW_OPERATION, opening.newOperation());
        put(places, Fact.UNITS, opening.units());
        put(places, Fact.EXISTING_MATERIAL, opening.frame().material());
        put(places, Fact.SASH_WEIGHTS, hangsOnWeights(house, opening, scenario));
        put(places, Fact.OLD_FLANGE, hasFlange(house, opening, scenario));
        put(places, Fact.FRAME_CONDITION, opening.frame().condition());
        put(places, Fact.INTERIOR_RETURN, opening.inside().finish());
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

    /** A fact whose words are the constants of an enum, in their order. */
    private static void put(int[] places, Fact fact, Enum<?> constant) {
        places[fact.ordinal()] = constant.ordinal();
    }

    private static void put(int[] places, Fact fact, int number) {
        places[fact.ordinal()] = fact.place(number);
    }

    /** A fact whose words are yes and no. */
    private static void put(int[] places, Fact fact, boolean holds) {
        places[fact.ordinal()] = holds ? 0 : 1;
    }
}
