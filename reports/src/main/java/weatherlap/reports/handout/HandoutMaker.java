package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import weatherlap.analysis.plan.PlanReason;
import weatherlap.analysis.plan.PlanReasons;
import weatherlap.charts.kit.Fonts;
import weatherlap.reports.format.Printable;
import weatherlap.reports.handout.Handout.Named;
import weatherlap.reports.handout.Handout.WindowSection;
import weatherlap.reports.offer.Choices;
import weatherlap.reports.offer.Offer;
import weatherlap.reports.offer.ShopSide;
import weatherlap.reports.offer.TickTable;
import weatherlap.reports.page.Figure;
import weatherlap.reports.page.Paper;
import weatherlap.reports.page.Unprintable;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Language;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.house.LeadTest;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.SimulatedHouse;
import weatherlap.sim.run.Simulator;

/** Puts a handout together from the results of one house. */
public final class HandoutMaker {
    private static final int LONGEST_LABEL = 240;

    private final House house;
    private final SheetWords sheet;
    private final Map<Method, HouseTakeoff> takeoffs;
    private final Choices choices;
    private final List<PlanReason> reasons;
    private final Assumptions assumptions;
    private final Offer offer;
    private final RainOnHouse rain;
    private final Optional<Figure> rose;
    private final Daylight daylight;
    private final WindowKinds kinds;

    private HandoutMaker(
            SimulatedHouse simulated,
            Map<Method, HouseTakeoff> takeoffs,
            Simulator simulator,
            SheetWords sheet,
            Optional<String> line) {
        Assumptions assumptions = simulator.assumptions();
        double riskLimit = assumptions.scenario().value(Scalar.RISK_LIMIT);
        Contrast contrast = simulated.result().contrast();
        this.house = simulated.result().house();
        this.sheet = sheet;
        this.takeoffs = takeoffs;
        this.choices = Choices.of(simulated, riskLimit, takeoffs, line);
        this.reasons = PlanReasons.of(simulated.parts(), choices.choice(), riskLimit);
        this.rain = new RainOnHouse(takeoffs.get(contrast.first()), simulator.climate(), words());
        this.rose = simulator.climate().anyBearing() ? Optional.empty() : Optional.of(rain.rose());
        this.kinds = WindowKinds.of(contrast, takeoffs);
        this.assumptions = assumptions;
        this.offer = offer(words());
        this.daylight = Daylight.of(choices, offer.names());
    }

    /**
     * Simulates a house and puts its handout together.
     *
     * @param line what the family has ticked on its page; empty: nothing is
     * @throws weatherlap.reports.offer.ChoiceLine.Refused where that is of another house or cannot be built
     */
    public static HandoutMaker of(House house, Simulator simulator, SheetWords sheet, Optional<String> line) {
        Map<Method, HouseTakeoff> takeoffs = new EnumMap<>(simulator.takeoff(house));
        return new HandoutMaker(simulator.simulateForPlans(house, takeoffs), takeoffs, simulator, sheet, line);
    }

    private Offer offer(FamilyWords words) {
        return new Offer(
                choices,
                sheet.prices(),
                assumptions,
                words,
                kinds::mark,
                sheet.shop().terms().warranty().isPresent());
    }

    House house() {
        return house;
    }

    String title() {
        return words().of("title");
    }

    Choices choices() {
        return choices;
    }

    /** For a page that scrolls: all of it. */
    public Handout page() {
        return handout(Density.SCREEN);
    }

    /** For paper, from the roomiest layout to the tightest. The tightest cuts what would not fit, and says so. */
    List<Density> ladder() {
        return Density.forPaper(kinds.groups().size());
    }

    HandoutSheet sheet(Paper paper, Density density) {
        return new HandoutSheet(handout(density), paper, density);
    }

    private Handout handout(Density density) {
        List<Method> methods = List.copyOf(choices.methods());
        WindowViews windows = new WindowViews(kinds, methods, takeoffs, density, words());
        List<WindowSection> sections = windows.sections();
        Optional<TickTable> ticked =
                density.bounded() ? Optional.empty() : Optional.of(TickTable.of(choices, takeoffs, sheet.prices()));
        return new Handout(
                words(),
                ShopHead.of(sheet.shop(), choices.all().size(), words(), density),
                sheet.pricesShown(),
                density.cut(house.label(), LONGEST_LABEL),
                facts(),
                offer.recommendation(),
                offer.table(),
                new MixedPlan(choices, offer.names(), reasons, sheet.prices(), words(), density).windows(),
                new SeeTheDifference(kinds, methods, takeoffs, daylight, words(), density).difference(),
                new MethodLines(house.cladding(), words()).columns(named(ticked)),
                sections,
                windows.rest(),
                windows.footPx(),
                WindowViews.widestPx(sections),
                RainOnHouse.weather(rain.climate(), density, words()),
                rose,
                rose.map(known -> rain.walls(density)),
                new BehindSiding(words(), density).lines(takeoffs.get(lasting())),
                new CodeWords(kinds, choices, offer.names(), density).lines(),
                cautions(),
                Stream.of("uncertain.faults", "uncertain.prices", "uncertain.glass")
                        .map(words()::of)
                        .toList(),
                ticked.map(table -> TickViews.of(table, choices, offer, kinds, sheet.pricesShown())),
                density.bounded() ? notPrinted() : "");
    }

    /**
     * The page for the salesperson alone.
     *
     * @param direct the house as {@link ShopSide} wants it
     * @param floor likewise
     */
    public InsideSheet inside(Paper paper, PlanParts direct, PlanParts floor, double serviceReserve) {
        return new InsideSheet(
                Printable.of(house.label()),
                paper,
                new ShopSide(choices, offer(FamilyWords.in(Language.EN)), offer.names(), direct, floor, serviceReserve)
                        .sheets());
    }

    /** A sentence where names are spelt otherwise on paper than on the page; else empty. */
    private String notPrinted() {
        return Stream.concat(sheet.shop().letterhead().name().stream(), Unprintable.names(house))
                        .allMatch(Printable::isPrintable)
                ? ""
                : words().of("spelt");
    }

    /** The methods that it names: those of its choices, and on a page those to tick. */
    private Set<Method> named(Optional<TickTable> ticked) {
        Set<Method> named = EnumSet.copyOf(choices.methods());
        ticked.ifPresent(table -> table.walls().forEach(rows -> rows.forEach(row -> named.addAll(row.methods()))));
        return named;
    }

    /** The method under which most of what is in the wall stays. */
    private Method lasting() {
        Contrast contrast = choices.choice().result().contrast();
        return contrast.leaves().orElse(contrast.second());
    }

    private String facts() {
        return words().of(
                        "facts",
                        FamilyWords.capital(words().name(house.cladding())),
                        Integer.toString(house.yearBuilt()),
                        words().count(house.storeys(), "stories"),
                        words().count(house.openingCount(), "openings"));
    }

    private List<Named> cautions() {
        List<String> keys = new ArrayList<>();
        if (house.leadSafe()) {
            keys.add(house.leadTest() == LeadTest.POSITIVE ? "lead_found" : "lead");
        } else if (house.builtWithLead()) {
            keys.add("lead_clear");
        }
        keys.addAll(List.of("asbestos", "safety", "local_code"));
        return keys.stream()
                .map(key -> new Named(words().of("care." + key + ".name"), words().of("care." + key)))
                .toList();
    }

    private FamilyWords words() {
        return sheet.words();
    }

    /** Fonts of the printed sheet are made known before anything is measured. */
    static {
        Fonts.install();
    }
}
