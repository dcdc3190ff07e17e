package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Fonts;
import weatherlap.reports.handout.Handout.Named;
import weatherlap.reports.handout.Handout.WindowSection;
import weatherlap.reports.page.Figure;
import weatherlap.reports.page.Paper;
import weatherlap.reports.page.Unprintable;
import weatherlap.reports.page.WeatherWords;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.SimulatedHouse;
import weatherlap.sim.run.Simulator;

/** Puts a handout together from the results of one house. */
public final class HandoutMaker {
    private static final int LONGEST_LABEL = 240;

    private final HouseResult result;
    private final WindowByWindow third;
    private final Map<Method, HouseTakeoff> takeoffs;
    private final Assumptions assumptions;
    private final RainOnHouse rain;
    private final String weather;
    private final Optional<Figure> rose;
    private final WindowKinds kinds;

    private HandoutMaker(
            SimulatedHouse simulated,
            Map<Method, HouseTakeoff> takeoffs,
            Assumptions assumptions,
            RainClimate climate) {
        this.result = simulated.result();
        this.third = WindowByWindow.of(simulated, assumptions);
        this.takeoffs = takeoffs;
        this.assumptions = assumptions;
        this.rain = new RainOnHouse(takeoffs.get(result.contrast().first()), climate);
        this.weather = WeatherWords.sheet(climate);
        this.rose = climate.anyBearing() ? Optional.empty() : Optional.of(rain.rose());
        this.kinds = WindowKinds.of(result.contrast(), takeoffs);
    }

    /**
     * Simulates a house and puts its handout together.
     *
     * @param assumptions and climate: those of the simulator
     */
    public static HandoutMaker of(House house, Simulator simulator, Assumptions assumptions, RainClimate climate) {
        SimulatedHouse simulated = simulator.simulateForPlans(house);
        Map<Method, HouseTakeoff> takeoffs = new EnumMap<>(simulator.takeoff(house));
        takeoffs.keySet().retainAll(simulated.result().contrast().both());
        return new HandoutMaker(simulated, takeoffs, assumptions, climate);
    }

    House house() {
        return result.house();
    }

    /** For a page that scrolls: all of it. */
    public Handout page() {
        return handout(Density.SCREEN);
    }

    /** For paper, from the roomiest layout to the tightest. The tightest cuts what would not fit, and says so. */
    Stream<HandoutSheet> sheets(Paper paper) {
        return Density.forPaper(kinds.groups().size()).stream()
                .map(density -> new HandoutSheet(handout(density), paper, density));
    }

    private Handout handout(Density density) {
        House house = result.house();
        WindowViews windows = new WindowViews(kinds, result.contrast(), takeoffs, density);
        List<WindowSection> sections = windows.sections();
        Offer offer = new Offer(result, takeoffs, assumptions);
        return new Handout(
                density.cut(house.label(), LONGEST_LABEL),
                facts(house),
                house.cladding(),
                Merits.sentences(result),
                offer.table(),
                offer.priceHolds(),
                third.words(density),
                sections,
                windows.rest(),
                windows.footPx(),
                WindowViews.widestPx(sections),
                weather,
                rose,
                rose.map(known -> rain.walls(density)),
                BehindSiding.lines(takeoffs.get(result.contrast().second()), density),
                new CodeWords(kinds, takeoffs, density).lines(),
                cautions(house),
                lean(),
                Prose.UNCERTAIN,
                density.bounded() ? Unprintable.note(Stream.of(house), "handout.html") : "");
    }

    private static String facts(House house) {
        return InWords.capital(InWords.of(house.cladding())) + ", built " + house.yearBuilt() + ", "
                + Numbers.count(house.storeys(), "story", "stories") + ", "
                + Numbers.count(house.openingCount(), "window opening", "window openings");
    }

    private static List<Named> cautions(House house) {
        List<Named> cautions = new ArrayList<>();
        if (house.leadSafe()) {
            cautions.add(Prose.LEAD);
        } else if (house.yearBuilt() < 1978) {
            cautions.add(Prose.LEAD_CLEAR);
        }
        cautions.addAll(List.of(Prose.ASBESTOS, Prose.SAFETY, Prose.CODE));
        return cautions;
    }

    private String lean() {
        Method preferred = result.preferred();
        double share = result.preferredProbability();
        MethodResult lower = result.method(preferred);
        MethodResult other = result.method(result.contrast().other(preferred));
        String years = Numbers.count(assumptions.scenario().whole(Scalar.HORIZON_YEARS), "year", "years");
        String sure = share >= 0.9
                ? "The gap is clear."
                : share >= 0.7 ? "The gap is likely, not certain." : "It is close: either may cost less in the end.";
        return "Count price, likely leak damage and the worth of lost glass over " + years + ". Then "
                + preferred.inSentence() + " comes to "
                + Phrases.usd(lower.horizonCostUsd().mean()) + " and "
                + result.contrast().other(preferred).inSentence() + " to "
                + Phrases.usd(other.horizonCostUsd().mean()) + " on average. In " + Phrases.percent(share)
                + " of our trial runs " + preferred.inSentence() + " is lower. " + sure + rotten()
                + " How long you will stay and what light is worth to you is your call.";
    }

    private String rotten() {
        long frames = result.house()
                .openings()
                .filter(opening -> opening.frame().rotten())
                .count();
        return frames == 0
                ? ""
                : " But " + Numbers.count(frames, "old frame is", "old frames are")
                        + " rotten and cannot hold an insert: mend the frame first, or choose "
                        + result.contrast().first().label() + " there.";
    }

    /** Fonts of the printed sheet are made known before anything is measured. */
    static {
        Fonts.install();
    }
}
