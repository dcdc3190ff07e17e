package weatherlap.sim.geometry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.House;
import weatherlap.sim.house.InteriorReturn;
import weatherlap.sim.house.Lap;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;
import weatherlap.sim.house.Readings;
import weatherlap.sim.house.Room;
import weatherlap.sim.house.SidingCondition;
import weatherlap.sim.house.Sighting;
import weatherlap.sim.house.Terrain;

/** Invented openings and walls for the tests of this package. */
record Measured(
        Room room,
        Operation operation,
        Operation newOperation,
        int units,
        double widthIn,
        double heightIn,
        double leftIn,
        double sillHeightIn,
        OptionalDouble interiorSillIn,
        OptionalDouble floorAreaFt2,
        FrameMaterial material,
        Optional<Readings> readings) {

    /** A double hung in an aluminium frame. */
    static Measured frame(double widthIn, double heightIn) {
        return new Measured(
                Room.LIVING,
                Operation.DOUBLE_HUNG,
                Operation.DOUBLE_HUNG,
                1,
                widthIn,
                heightIn,
                24,
                36,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                FrameMaterial.ALUMINUM,
                Optional.empty());
    }

    Measured opens(Operation from, Operation to) {
        return new Measured(
                room,
                from,
                to,
                units,
                widthIn,
                heightIn,
                leftIn,
                sillHeightIn,
                interiorSillIn,
                floorAreaFt2,
                material,
                readings);
    }

    Measured mulled(int count) {
        return new Measured(
                room,
                operation,
                newOperation,
                count,
                widthIn,
                heightIn,
                leftIn,
                sillHeightIn,
                interiorSillIn,
                floorAreaFt2,
                material,
                readings);
    }

    Measured of(FrameMaterial frame) {
        return new Measured(
                room,
                operation,
                newOperation,
                units,
                widthIn,
                heightIn,
                leftIn,
                sillHeightIn,
                interiorSillIn,
                floorAreaFt2,
                frame,
                readings);
    }

    Measured at(double fromLeftIn, double overGradeIn) {
        return new Measured(
                room,
                operation,
                newOperation,
                units,
                widthIn,
                heightIn,
                fromLeftIn,
                overGradeIn,
                interiorSillIn,
                floorAreaFt2,
                material,
                readings);
    }

    Measured in(Room where, double sillOverFloorIn, double floorFt2) {
        return new Measured(
                where,
                operation,
                newOperation,
                units,
                widthIn,
                heightIn,
                leftIn,
                sillHeightIn,
                OptionalDouble.of(sillOverFloorIn),
                OptionalDouble.of(floorFt2),
                material,
                readings);
    }

    Measured read(Readings taken) {
        return new Measured(
                room,
                operation,
                newOperation,
                units,
                widthIn,
                heightIn,
                leftIn,
                sillHeightIn,
                interiorSillIn,
                floorAreaFt2,
                material,
                Optional.of(taken));
    }

    Opening opening() {
        return new Opening(
                "1",
                room,
                operation,
                newOperation,
                units,
                widthIn,
                heightIn,
                leftIn,
                sillHeightIn,
                interiorSillIn,
                floorAreaFt2,
                material,
                FrameCondition.SOUND,
                InteriorReturn.DRYWALL,
                2,
                OptionalDouble.empty(),
                Lap.UNKNOWN,
                Lap.UNKNOWN,
                Lap.UNKNOWN,
                Sighting.UNKNOWN,
                readings);
    }

    static Elevation wall(double widthFt, double eaveFt, double exposureIn, double panelIn, List<Opening> openings) {
        return new Elevation(
                "N",
                0,
                widthFt,
                eaveFt,
                12,
                OptionalDouble.of(exposureIn),
                OptionalDouble.of(panelIn),
                SidingCondition.SOUND,
                OptionalDouble.empty(),
                openings);
    }

    static House house(Cladding cladding, Elevation wall) {
        return new House(
                "1",
                "a house",
                1985,
                Terrain.SUBURBAN,
                cladding,
                Barrier.HOUSEWRAP,
                2,
                Optional.empty(),
                LeadTest.UNKNOWN,
                List.of(wall));
    }
}
