package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.code.CodeChange;
import weatherlap.sim.code.CodeReview;
import weatherlap.sim.code.RoomChange;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.geometry.OpeningGeometry;
import weatherlap.sim.geometry.SidingRuns;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.laps.HouseLaps;
import weatherlap.sim.laps.LeakModel;
import weatherlap.sim.laps.LeakTables;
import weatherlap.sim.method.Method;
import weatherlap.sim.quantity.ElevationQuantities;
import weatherlap.sim.quantity.HouseQuantities;
import weatherlap.sim.quantity.SidingRun;
import weatherlap.sim.rain.OpeningExposure;
import weatherlap.sim.rain.OpeningRain;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.work.OpeningWork;
import weatherlap.sim.work.WorkTakeoff;

/**
 * All of a house under one method that does not depend on a draw: what {@link Simulator} draws from and what an explanation reads.
 *
 * @param panelsDown by wall, in table order
 * @param openings in table order over the walls
 * @param work labour and material
 * @param laps what is believed of the laps of the house, the same under both methods
 * @param rooms rules of the code that are asked of rooms
 */
public record HouseTakeoff(
        House house,
        Method method,
        List<Integer> panelsDown,
        List<OpeningTakeoff> openings,
        WorkTakeoff work,
        HouseLaps laps,
        List<RoomChange> rooms) {
    public HouseTakeoff {
        panelsDown = List.copyOf(panelsDown);
        openings = List.copyOf(openings);
        rooms = List.copyOf(rooms);
    }

    /**
     * One opening.
     *
     * @param rain on the opening, the same under both methods
     * @param exposure the sums of it
     * @param leaks paths of water that stand after the work
     * @param codes rules of the code that hang on the opening, before and after
     */
    public record OpeningTakeoff(
            Elevation elevation,
            Opening opening,
            OpeningGeometry geometry,
            OpeningRain rain,
            OpeningExposure exposure,
            LeakModel leaks,
            List<CodeChange> codes) {
        public OpeningTakeoff {
            codes = List.copyOf(codes);
        }

        /** Flags for tables, in the order of the rules; where no unit can be had, that last. */
        public List<String> codeFlags() {
            Stream<String> fit = geometry.hasUnit() ? Stream.empty() : Stream.of("no_unit_fits");
            return Stream.concat(codes.stream().map(CodeChange::flag).flatMap(Optional::stream), fit)
                    .toList();
        }
    }

    /** Takes a house off for every method that it is open to. */
    public static Map<Method, HouseTakeoff> of(
            House house, Assumptions assumptions, RainClimate climate, LeakTables tables) {
        HouseLaps laps = HouseLaps.of(house, tables);
        List<OpeningRain> rain = house.elevations().stream()
                .flatMap(e ->
                        e.openings().stream().map(o -> OpeningRain.of(climate, house, e, o, assumptions.scenario())))
                .toList();
        List<OpeningExposure> exposures =
                rain.stream().map(OpeningRain::exposure).toList();
        Map<Method, List<OpeningGeometry>> geometries = new EnumMap<>(Method.class);
        for (Method method : Method.openTo(house.cladding())) {
            geometries.put(method, geometries(house, method, assumptions));
        }
        Map<Method, CodeReview> codes = CodeReview.of(geometries, assumptions.scenario());
        Map<Method, HouseTakeoff> takeoffs = new EnumMap<>(Method.class);
        geometries.forEach((method, own) ->
                takeoffs.put(method, of(house, method, assumptions, own, codes.get(method), rain, exposures, laps)));
        return takeoffs;
    }

    private static List<OpeningGeometry> geometries(House house, Method method, Assumptions assumptions) {
        return house.elevations().stream()
                .flatMap(e -> e.openings().stream().map(o -> OpeningGeometry.of(house, e, o, method, assumptions)))
                .toList();
    }

    private static HouseTakeoff of(
            House house,
            Method method,
            Assumptions assumptions,
            List<OpeningGeometry> geometries,
            CodeReview codes,
            List<OpeningRain> rain,
            List<OpeningExposure> exposures,
            HouseLaps laps) {
        List<Integer> panelsDown = new ArrayList<>();
        List<OpeningTakeoff> openings = new ArrayList<>();
        List<ElevationQuantities> quantities = new ArrayList<>();
        for (Elevation elevation : house.elevations()) {
            List<Map<Driver, Double>> counted = new ArrayList<>();
            for (Opening opening : elevation.openings()) {
                int o = openings.size();
                OpeningGeometry geometry = geometries.get(o);
                OpeningExposure exposure = exposures.get(o);
                counted.add(geometry.quantities());
                openings.add(new OpeningTakeoff(
                        elevation,
                        opening,
                        geometry,
                        rain.get(o),
                        exposure,
                        LeakModel.of(opening, method, exposure, laps),
                        codes.byOpening().get(o)));
            }
            quantities.add(new ElevationQuantities(runs(house, elevation, method), counted));
            panelsDown.add((int) quantities.get(quantities.size() - 1).panelsDown());
        }
        WorkTakeoff work = WorkTakeoff.of(assumptions, house, method, new HouseQuantities(quantities));
        return new HouseTakeoff(house, method, panelsDown, openings, work, laps, codes.rooms());
    }

    /** The work alone, without rain and leaks. */
    public static WorkTakeoff work(House house, Method method, Assumptions assumptions) {
        List<ElevationQuantities> quantities = house.elevations().stream()
                .map(elevation -> new ElevationQuantities(
                        runs(house, elevation, method),
                        elevation.openings().stream()
                                .map(opening -> OpeningGeometry.of(house, elevation, opening, method, assumptions)
                                        .quantities())
                                .toList()))
                .toList();
        return WorkTakeoff.of(assumptions, house, method, new HouseQuantities(quantities));
    }

    private static List<SidingRun> runs(House house, Elevation elevation, Method method) {
        return method.takesSidingDown()
                ? SidingRuns.of(house, elevation)
                : SidingRun.apart(elevation.openings().size());
    }

    /**
     * An opening's share of a price of the house, USD: by what labour and material at the opening alone cost, so that what openings
     * share is spread over them and the shares sum to the price.
     */
    public Amount priceOfOpening(int opening, Amount housePrice) {
        double all = Arrays.stream(directUsd()).sum();
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

    /** What labour and material at each opening alone cost, USD. */
    double[] directUsd() {
        double[] usd = work.openingMaterialUsd();
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
