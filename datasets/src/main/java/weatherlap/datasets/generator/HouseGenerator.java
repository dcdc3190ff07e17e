package weatherlap.datasets.generator;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.SidingCondition;
import weatherlap.sim.house.Terrain;
import weatherlap.sim.random.Streams;

/** Makes houses of a mix, one for each number, in any order and without end. */
public final class HouseGenerator {
    private static final List<String> WALLS = List.of("front", "left", "back", "right");

    private final Mix mix;
    private final Streams streams;

    public HouseGenerator(Mix mix, long seed) {
        this.mix = mix;
        this.streams = new Streams(seed);
    }

    /** Houses 1 to count, made one after another as they are asked for. */
    public Stream<House> houses(long count) {
        return LongStream.rangeClosed(1, count).mapToObj(this::house);
    }

    /** The house of a number from 1; it depends on nothing else but the mix and the seed. */
    public House house(long number) {
        Draw draw = new Draw(mix, streams.house("synthetic house", Long.toString(number)));
        int yearBuilt = draw.whole(Property.YEAR_BUILT);
        int storeys = draw.whole(Property.STOREYS);
        Terrain terrain = draw.word(Property.TERRAIN, Terrain.class);
        Cladding cladding = draw.word(Property.CLADDING, Cladding.class);
        Barrier barrier = draw.word(Property.BARRIER, Barrier.class);
        LeadTest leadTest = draw.word(Property.LEAD_TEST, LeadTest.class);
        String label = draw.whole(Property.STREET_NUMBER) + " " + draw.text(Property.STREET);
        return new House(
                id(number),
                label,
                yearBuilt,
                terrain,
                cladding,
                barrier,
                storeys,
                Optional.empty(),
                leadTest,
                elevations(draw, storeys));
    }

    private static String id(long number) {
        String digits = Long.toString(number);
        return "G" + "0".repeat(Math.max(0, 4 - digits.length())) + digits;
    }

    /** Four walls, a right angle apart; the left and right ones are gables. */
    private static List<Elevation> elevations(Draw draw, int storeys) {
        int bearing = draw.whole(Property.BEARING_DEG);
        int width = draw.whole(Property.WIDTH_FT);
        int depth = draw.whole(Property.DEPTH_FT);
        int eave = draw.whole(Property.EAVE_HEIGHT_FT);
        int overhang = draw.whole(Property.OVERHANG_IN);
        int gableOverhang = draw.whole(Property.GABLE_OVERHANG_IN);
        OptionalDouble exposure = draw.number(Property.COURSE_EXPOSURE_IN);
        OptionalDouble panel = draw.number(Property.PANEL_LENGTH_IN);
        SidingCondition siding = draw.word(Property.SIDING_CONDITION, SidingCondition.class);
        WindowRows rows = new WindowRows(
                draw,
                storeys,
                eave,
                draw.word(Property.EXISTING_MATERIAL, FrameMaterial.class),
                draw.word(Property.HOUSE_OPERATION, Operation.class),
                draw.text(Property.LAPS_SEEN).equals("yes"));
        List<Elevation> walls = new ArrayList<>();
        for (int w = 0; w < WALLS.size(); w++) {
            boolean gable = w % 2 == 1;
            int wallWidth = gable ? depth : width;
            walls.add(new Elevation(
                    WALLS.get(w),
                    (bearing + 90 * w) % 360,
                    wallWidth,
                    eave,
                    gable ? gableOverhang : overhang,
                    exposure,
                    panel,
                    siding,
                    draw.number(Property.OBSTRUCTION_M),
                    rows.openings(WALLS.get(w), wallWidth)));
        }
        return walls;
    }
}
