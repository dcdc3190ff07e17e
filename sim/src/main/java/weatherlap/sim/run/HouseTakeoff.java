package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weatherlap.sim.Each;
import weatherlap.sim.Sum;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.HouseFacts;
import weatherlap.sim.code.CodeChange;
import weatherlap.sim.code.CodeReview;
import weatherlap.sim.code.RoomChange;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.geometry.Geometries;
import weatherlap.sim.geometry.OpeningGeometry;
import weatherlap.sim.geometry.SidingRuns;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.labour.LabourTakeoff;
import weatherlap.sim.laps.HouseLaps;
import weatherlap.sim.laps.LeakModel;
import weatherlap.sim.laps.LeakTables;
import weatherlap.sim.method.Method;
import weatherlap.sim.quantity.ElevationQuantities;
import weatherlap.sim.quantity.HouseQuantities;
import weatherlap.sim.rain.OpeningExposure;
import weatherlap.sim.rain.OpeningRain;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.work.OpeningWork;
import weatherlap.sim.work.WorkTakeoff;

/**
 * All of a house that does not depend on a draw, done by one method or each opening by its own: what {@link Simulator} draws from and
 * what an explanation and a crew's sheet read.
 *
 * @param methods by which its openings are done
 * @param panelsDown by wall, in table order
 * @param openings in table order over the walls
 * @param work labour and material
 * @param laps what is believed of the laps of the house, the same under both methods
 * @param rooms rules of the code that are asked of rooms
 */
public record HouseTakeoff(
        House house,
        Set<Method> methods,
        List<Integer> panelsDown,
        List<OpeningTakeoff> openings,
        WorkTakeoff work,
        HouseLaps laps,
        List<RoomChange> rooms) {
    public HouseTakeoff {
        methods = Method.set(methods);
        panelsDown = List.copyOf(panelsDown);
        openings = List.copyOf(openings);
        rooms = List.copyOf(rooms);
    }

    /**
     * The one method of the whole house.
     *
     * @throws IllegalStateException where it has several
     */
    public Method method() {
        return single().orElseThrow(() -> new IllegalStateException(house.id() + " is done by " + methods));
    }

    /** The one method of the whole house; empty where it has several. */
    public Optional<Method> single() {
        return methods.size() == 1 ? Optional.of(methods.iterator().next()) : Optional.empty();
    }

    /**
     * One opening.
     *
     * @param rain on the opening, the same under both methods
     * @param exposure the sums of it
     * @param leaks paths of water that stand after the work
     * @param codes rules of the code that hang on the opening, before and after
     * @param codeFlags of them for tables, in the order of the rules; where no unit can be had, that last
     */
    public record OpeningTakeoff(
            Elevation elevation,
            Opening opening,
            OpeningGeometry geometry,
            OpeningRain rain,
            OpeningExposure exposure,
            LeakModel leaks,
            List<CodeChange> codes,
            List<String> codeFlags) {
        public OpeningTakeoff {
            codes = List.copyOf(codes);
            codeFlags = List.copyOf(codeFlags);
        }

        OpeningTakeoff(
                Elevation elevation,
                Opening opening,
                OpeningGeometry geometry,
                OpeningRain rain,
                OpeningExposure exposure,
                LeakModel leaks,
                List<CodeChange> codes) {
            this(elevation, opening, geometry, rain, exposure, leaks, codes, flags(codes, geometry));
        }

        private OpeningTakeoff with(List<CodeChange> changed) {
            return new OpeningTakeoff(elevation, opening, geometry, rain, exposure, leaks, changed);
        }

        private static List<String> flags(List<CodeChange> codes, OpeningGeometry geometry) {
            List<String> flags = new ArrayList<>();
            for (int c = 0; c < codes.size(); c++) {
                if (!codes.get(c).passes()) {
                    flags.add(codes.get(c).flag().orElseThrow());
                }
            }
            if (!geometry.hasUnit()) {
                flags.add("no_unit_fits");
            }
            return flags;
        }
    }

    /** Takes a house off for every method that it is open to. */
    public static Map<Method, HouseTakeoff> of(
            House house, Assumptions assumptions, RainClimate climate, LeakTables tables) {
        return of(house, assumptions, climate, tables, new Simulator.Alike(assumptions));
    }

    /** The same, with what is known of those like this house and its openings. */
    static Map<Method, HouseTakeoff> of(
            House house, Assumptions assumptions, RainClimate climate, LeakTables tables, Simulator.Alike alike) {
        HouseLaps laps = HouseLaps.of(house, tables);
        List<Method> methods = Method.openTo(house.cladding());
        Map<Method, List<OpeningGeometry>> geometries = geometries(house, methods, alike.geometries());
        Map<Method, CodeReview> codes = CodeReview.of(geometries, assumptions.scenario());
        Map<Method, List<OpeningTakeoff>> openings = listEach(methods);
        int o = 0;
        for (Elevation wall : house.elevations()) {
            for (Opening opening : wall.openings()) {
                OpeningRain rain = OpeningRain.of(climate, house, wall, opening, assumptions.scenario());
                OpeningExposure exposure = rain.exposure();
                List<LeakModel> leaks = LeakModel.each(opening, methods, exposure, laps);
                for (int m = 0; m < methods.size(); m++) {
                    Method method = methods.get(m);
                    OpeningGeometry geometry = geometries.get(method).get(o);
                    List<CodeChange> changes = codes.get(method).byOpening().get(o);
                    openings.get(method)
                            .add(new OpeningTakeoff(wall, opening, geometry, rain, exposure, leaks.get(m), changes));
                }
                o++;
            }
        }
        LabourTakeoff labour = new LabourTakeoff(alike.paces(), house, HouseFacts.of(house, assumptions.scenario()));
        Map<Method, HouseTakeoff> takeoffs = new EnumMap<>(Method.class);
        for (Method method : methods) {
            List<RoomChange> rooms = codes.get(method).rooms();
            takeoffs.put(method, of(house, Set.of(method), labour, openings.get(method), laps, rooms));
        }
        return takeoffs;
    }

    private static <T> Map<Method, List<T>> listEach(List<Method> methods) {
        Map<Method, List<T>> lists = new EnumMap<>(Method.class);
        methods.forEach(method -> lists.put(method, new ArrayList<>()));
        return lists;
    }

    static List<OpeningGeometry> geometries(House house, Method method, Assumptions assumptions) {
        return geometries(house, List.of(method), new Geometries(assumptions)).get(method);
    }

    private static Map<Method, List<OpeningGeometry>> geometries(House house, List<Method> methods, Geometries alike) {
        Map<Method, List<OpeningGeometry>> geometries = listEach(methods);
        for (Elevation wall : house.elevations()) {
            for (Opening opening : wall.openings()) {
                for (OpeningGeometry one : alike.each(house, wall, opening, methods)) {
                    geometries.get(one.method()).add(one);
                }
            }
        }
        return geometries;
    }

    /**
     * The same house, each opening by a method of its own.
     *
     * @param each the house by every method that it is open to, of one call of {@link #of}
     * @param methods in table order over the walls, one for every opening
     * @throws IllegalArgumentException where they are not as many as the openings, or the house is not open to one of them
     */
    public static HouseTakeoff mixed(Map<Method, HouseTakeoff> each, List<Method> methods) {
        HouseTakeoff any = each.values().iterator().next();
        if (methods.size() != any.openings.size() || !each.keySet().containsAll(methods)) {
            throw new IllegalArgumentException(any.house.id() + " is not done by " + methods);
        }
        Assumptions assumptions = any.work.assumptions();
        Map<Method, List<OpeningGeometry>> geometries = new EnumMap<>(Method.class);
        each.forEach((method, takeoff) -> geometries.put(method, Each.of(takeoff.openings, OpeningTakeoff::geometry)));
        List<OpeningTakeoff> own =
                Each.upTo(methods.size(), o -> each.get(methods.get(o)).openings.get(o));
        CodeReview codes = CodeReview.of(geometries, Each.of(own, OpeningTakeoff::geometry), assumptions.scenario());
        List<OpeningTakeoff> openings =
                Each.upTo(own.size(), o -> own.get(o).with(codes.byOpening().get(o)));
        return of(any.house, Method.set(methods), any.work.steps(), openings, any.laps, codes.rooms());
    }

    private static HouseTakeoff of(
            House house,
            Set<Method> methods,
            LabourTakeoff labour,
            List<OpeningTakeoff> openings,
            HouseLaps laps,
            List<RoomChange> rooms) {
        HouseQuantities quantities = quantities(house, methods, Each.of(openings, OpeningTakeoff::geometry));
        List<Integer> panelsDown = Each.of(quantities.elevations(), wall -> (int) wall.panelsDown());
        WorkTakeoff work = WorkTakeoff.of(labour, house, quantities);
        return new HouseTakeoff(house, methods, panelsDown, openings, work, laps, rooms);
    }

    /** The work alone, without rain and leaks. */
    public static WorkTakeoff work(House house, Method method, Assumptions assumptions) {
        return WorkTakeoff.of(
                assumptions, house, quantities(house, Set.of(method), geometries(house, method, assumptions)));
    }

    static HouseQuantities quantities(House house, Set<Method> methods, List<OpeningGeometry> geometries) {
        List<ElevationQuantities> walls = new ArrayList<>();
        int first = 0;
        for (Elevation elevation : house.elevations()) {
            List<OpeningGeometry> own =
                    geometries.subList(first, first + elevation.openings().size());
            walls.add(new ElevationQuantities(
                    SidingRuns.of(house, elevation, Each.of(own, o -> o.method().takesSidingDown())),
                    Each.of(own, OpeningGeometry::quantities)));
            first += own.size();
        }
        return new HouseQuantities(methods, walls);
    }

    /** Of each opening, the paths of water that stand after the work. */
    List<LeakModel> leaks() {
        return Each.of(openings, OpeningTakeoff::leaks);
    }

    /**
     * An opening's share of a price of the house, USD: by what labour and material at the opening alone cost, so that what openings
     * share is spread over them and the shares sum to the price.
     */
    public Amount priceOfOpening(int opening, Amount housePrice) {
        double all = Sum.of(directUsd(work.openingMaterialUsd()));
        Amount own = directCost(opening);
        return Amount.product(
                "price of the opening",
                "USD",
                List.of(
                        housePrice,
                        Amount.formula(
                                "share: its own cost over that of all openings",
                                own.value() / all,
                                "",
                                List.of(own, Amount.given("all openings", all, "USD")))));
    }

    /**
     * What labour and material at each opening alone cost, USD.
     *
     * @param materialUsd {@link WorkTakeoff#openingMaterialUsd} of this takeoff
     */
    double[] directUsd(double[] materialUsd) {
        double[] usd = materialUsd.clone();
        double wage = work.personHour().value();
        List<OpeningWork> all = work.openings();
        for (int o = 0; o < usd.length; o++) {
            usd[o] += Units.minutesToHours(all.get(o).meanMinutes()) * wage;
        }
        return usd;
    }

    private Amount directCost(int opening) {
        Amount minutes = work.openings().get(opening).labour();
        Amount wage = work.personHour();
        Amount labour = Amount.formula(
                "labor in hours × wage",
                Units.minutesToHours(minutes.value()) * wage.value(),
                "USD",
                List.of(minutes, wage));
        return Amount.sum("its own cost", "USD", List.of(labour, work.materialOfOpening(opening)));
    }
}
