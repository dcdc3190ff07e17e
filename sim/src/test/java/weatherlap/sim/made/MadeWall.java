package weatherlap.sim.made;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.SidingCondition;

/**
 * An invented wall for tests, changed step by step; a step changes this one. It begins 30 ft wide and 9 ft high to the north, under 12 in. of
 * eave, without courses.
 */
public final class MadeWall {
    private final String id;
    private double bearingDeg;
    private double widthFt = 30;
    private double eaveHeightFt = 9;
    private double overhangIn = 12;
    private OptionalDouble courseExposureIn = OptionalDouble.empty();
    private OptionalDouble panelLengthIn = OptionalDouble.empty();
    private SidingCondition sidingCondition = SidingCondition.SOUND;
    private OptionalDouble obstructionM = OptionalDouble.empty();
    private List<Opening> openings;

    private MadeWall(String id, List<Opening> openings) {
        this.id = id;
        this.openings = openings;
    }

    public static MadeWall of(String id, List<Opening> openings) {
        return new MadeWall(id, openings);
    }

    public static MadeWall of(String id, Opening... openings) {
        return new MadeWall(id, List.of(openings));
    }

    /** Begins as this one. */
    public static MadeWall like(Elevation other) {
        MadeWall made = new MadeWall(other.id(), other.openings());
        made.bearingDeg = other.bearingDeg();
        made.widthFt = other.widthFt();
        made.eaveHeightFt = other.eaveHeightFt();
        made.overhangIn = other.overhangIn();
        made.courseExposureIn = other.courseExposureIn();
        made.panelLengthIn = other.panelLengthIn();
        made.sidingCondition = other.sidingCondition();
        made.obstructionM = other.obstructionM();
        return made;
    }

    public MadeWall facing(double degrees) {
        bearingDeg = degrees;
        return this;
    }

    /** Width and height of the eave, ft. */
    public MadeWall size(double width, double eave) {
        widthFt = width;
        eaveHeightFt = eave;
        return this;
    }

    /** Eave, in. */
    public MadeWall under(double overhang) {
        overhangIn = overhang;
        return this;
    }

    /** Courses of this exposure in panels of this length, in. */
    public MadeWall courses(double exposureIn, double panelIn) {
        courseExposureIn = OptionalDouble.of(exposureIn);
        panelLengthIn = OptionalDouble.of(panelIn);
        return this;
    }

    public MadeWall obstructed(double distanceM) {
        obstructionM = OptionalDouble.of(distanceM);
        return this;
    }

    public MadeWall openings(List<Opening> others) {
        openings = others;
        return this;
    }

    /** Each window changed. */
    public MadeWall eachOpening(UnaryOperator<MadeOpening> change) {
        return openings(openings.stream()
                .map(opening -> change.apply(MadeOpening.like(opening)).opening())
                .toList());
    }

    /** Only the first so many windows. */
    public MadeWall first(int count) {
        return openings(openings.subList(0, count));
    }

    public Elevation wall() {
        return new Elevation(
                id,
                bearingDeg,
                widthFt,
                eaveHeightFt,
                overhangIn,
                courseExposureIn,
                panelLengthIn,
                sidingCondition,
                obstructionM,
                openings);
    }
}
