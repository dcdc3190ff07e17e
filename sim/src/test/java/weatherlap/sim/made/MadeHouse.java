package weatherlap.sim.made;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.house.Terrain;

/**
 * An invented house for tests, changed step by step; a step changes this one. It begins as one of 1975 and one story in a suburb, vinyl over
 * housewrap, paint not tested.
 */
public final class MadeHouse {
    private final String id;
    private String label;
    private int yearBuilt = 1975;
    private Terrain terrain = Terrain.SUBURBAN;
    private Cladding cladding = Cladding.VINYL_SIDING;
    private Barrier barrier = Barrier.HOUSEWRAP;
    private int storeys = 1;
    private Optional<String> region = Optional.empty();
    private LeadTest leadTest = LeadTest.UNKNOWN;
    private List<Elevation> walls;
    private Map<String, String> job = Map.of();

    private MadeHouse(String id, List<Elevation> walls) {
        this.id = id;
        this.label = "House " + id;
        this.walls = walls;
    }

    public static MadeHouse of(String id, List<Elevation> walls) {
        return new MadeHouse(id, walls);
    }

    public static MadeHouse of(String id, Elevation... walls) {
        return new MadeHouse(id, List.of(walls));
    }

    /** Begins as this one. */
    public static MadeHouse like(House other) {
        MadeHouse made = new MadeHouse(other.id(), other.elevations());
        made.label = other.label();
        made.yearBuilt = other.yearBuilt();
        made.terrain = other.terrain();
        made.cladding = other.cladding();
        made.barrier = other.barrier();
        made.storeys = other.storeys();
        made.region = other.region();
        made.leadTest = other.leadTest();
        made.job = other.job();
        return made;
    }

    public MadeHouse label(String text) {
        label = text;
        return this;
    }

    public MadeHouse built(int year) {
        yearBuilt = year;
        return this;
    }

    public MadeHouse paidIn(String other) {
        region = Optional.of(other);
        return this;
    }

    public MadeHouse in(Terrain other) {
        terrain = other;
        return this;
    }

    public MadeHouse clad(Cladding outside) {
        cladding = outside;
        return this;
    }

    public MadeHouse over(Barrier behind) {
        barrier = behind;
        return this;
    }

    public MadeHouse storeys(int count) {
        storeys = count;
        return this;
    }

    public MadeHouse lead(LeadTest found) {
        leadTest = found;
        return this;
    }

    public MadeHouse walls(List<Elevation> others) {
        walls = others;
        return this;
    }

    /** Each wall changed. */
    public MadeHouse eachWall(UnaryOperator<MadeWall> change) {
        walls = walls.stream()
                .map(wall -> change.apply(MadeWall.like(wall)).wall())
                .toList();
        return this;
    }

    /** Each window changed. */
    public MadeHouse eachOpening(UnaryOperator<MadeOpening> change) {
        return eachWall(wall -> wall.eachOpening(change));
    }

    public House house() {
        return new House(id, label, yearBuilt, terrain, cladding, barrier, storeys, region, leadTest, walls, job);
    }
}
