package weatherlap.reports.offer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import weatherlap.analysis.callbacks.FittedFaultTables;
import weatherlap.analysis.plan.PlanReasons;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.shop.Terms;
import weatherlap.datasets.shop.Terms.Quote;
import weatherlap.reports.offer.OfferTable.Head;
import weatherlap.reports.offer.OfferTable.Line;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Phrases;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.code.RoomChange;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;

/**
 * What the choices of a house come to, in words.
 *
 * @param mark of a window by its position in the house
 * @param ownWarranty whether the shop states its warranty in its own words, which then stand alone
 */
public record Offer(
        Choices choices,
        Prices prices,
        Assumptions assumptions,
        FamilyWords words,
        Function<Integer, String> mark,
        boolean ownWarranty) {
    public ChoiceWords names() {
        return new ChoiceWords(words, choices.choice().result().contrast());
    }

    /** The advice of the shop in a sentence or two. */
    public String recommendation() {
        return advice().sentence();
    }

    private Recommendation advice() {
        return new Recommendation(choices, names(), prices, years());
    }

    public OfferTable table() {
        return new OfferTable(choices.all().stream().map(this::head).toList(), lines(), notes());
    }

    private Head head(OfferedPlan choice) {
        String badge = choice.kind() == OfferedPlan.Kind.OWN
                ? words.of("badge.own")
                : choice == choices.recommended() && advice().decides() ? words.of("badge.advised") : "";
        return new Head(
                names().title(choice), choice.plan().single().map(Method::label).orElse("mixed"), badge);
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        if (prices.shown()) {
            addPrices(lines);
        }
        lines.add(
                new Line(words.of("offer.days", crew()), "text", cells(choice -> words.count(choice.days(), "days"))));
        lines.add(line("offer.glass", "text", choice -> new Phrases(words)
                .glass(choice.glassTodayFt2() - choice.glassFt2(), choice.glassTodayFt2())));
        if (choices.all().stream().anyMatch(choice -> choice.panelsDown() > 0)) {
            lines.add(line("offer.siding", "text", this::siding));
        }
        lines.add(new Line(words.of("offer.leaks", years()) + "*", "text", cells(this::leaks)));
        if (choices.all().stream().anyMatch(choice -> !choice.escapesLost().isEmpty())) {
            lines.add(line("offer.escapes", "warning", this::escapes));
        }
        lines.add(line("offer.initials", "initials", choice -> ""));
        return lines;
    }

    /** The price, and what the shop takes off, puts on and asks for at the signing. */
    private void addPrices(List<Line> lines) {
        Terms terms = prices.terms();
        lines.add(line(
                "offer.price",
                "price",
                choice -> Prices.usd(prices.quote(choice).price())));
        terms.discount()
                .ifPresent(rate -> lines.add(line("offer.discount", rate, quote -> Prices.minus(quote.discount()))));
        terms.tax().ifPresent(rate -> lines.add(line("offer.tax", rate, quote -> Prices.exact(quote.tax()))));
        boolean account = terms.discount().isPresent() || terms.tax().isPresent();
        if (account) {
            lines.add(line(
                    "offer.total",
                    "total",
                    choice -> Prices.exact(prices.quote(choice).total())));
        }
        if (terms.deposit().isPresent()) {
            lines.add(line("offer.deposit", "text", choice -> {
                double deposit = prices.quote(choice).deposit().orElseThrow();
                return account ? Prices.exact(deposit) : Prices.usd(deposit);
            }));
        }
    }

    private Line line(String label, Terms.Rate rate, Function<Quote, String> amount) {
        return new Line(
                words.of(label, rate.label(), Prices.percent(rate.share())),
                "text",
                cells(choice -> amount.apply(prices.quote(choice))));
    }

    private Line line(String label, String kind, Function<OfferedPlan, String> cell) {
        return new Line(words.of(label), kind, cells(cell));
    }

    private List<String> cells(Function<OfferedPlan, String> cell) {
        return choices.all().stream().map(cell).toList();
    }

    private String siding(OfferedPlan choice) {
        return choice.panelsDown() == 0
                ? words.of("none")
                : words.count(choice.panelsDown(), words.name(house().cladding(), "piece"));
    }

    /** A figure where the shop's own records bear one, and where it stands among all choices. */
    private String leaks(OfferedPlan choice) {
        String rank = words.name(choices.rank(choice));
        return ownRecords()
                ? words.of(
                        "leaks.figure",
                        rank,
                        new Phrases(words).range(PlanReasons.leakScore(choices.parts(), choice.plan())))
                : rank;
    }

    /** Rooms that lose their way out, beside the price of what takes it. */
    private String escapes(OfferedPlan choice) {
        List<RoomChange> lost = choice.escapesLost();
        return lost.isEmpty()
                ? words.of("none")
                : words.count(
                        lost.size(),
                        "escapes.lost",
                        lost.stream()
                                .flatMap(room -> room.bearers().stream())
                                .map(mark)
                                .distinct()
                                .collect(Collectors.joining(", ")));
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.addAll(new ClosedWindows(choices, words).sentences());
        if (prices.shown()) {
            notes.add(holds());
        }
        notes.add("* " + words.of("leaks.scope") + ' ' + words.of(ownRecords() ? "leaks.records" : "leaks.judgement"));
        return notes;
    }

    /** What is in every price. */
    private String holds() {
        List<String> holds = new ArrayList<>();
        holds.add(words.of("holds.all"));
        Optional.of("holds.permit")
                .filter(key -> scenario().value(Scalar.PERMIT_USD) > 0)
                .map(words::of)
                .ifPresent(holds::add);
        Optional.of("holds.lead")
                .filter(key -> house().leadSafe())
                .map(words::of)
                .ifPresent(holds::add);
        String adds = choices.methods().stream()
                .map(method -> ' ' + FamilyWords.capital(words.name(method, "adds")))
                .collect(Collectors.joining());
        return words.count(
                        choices.all().size(),
                        "holds",
                        String.join(", ", holds),
                        ownWarranty
                                ? words.of("holds.own_warranty")
                                : words.of(
                                        "holds.warranty",
                                        words.count(scenario().whole(Scalar.WARRANTY_YEARS), "years")))
                + adds;
    }

    public String crew() {
        return Numbers.plain(scenario().whole(Scalar.CREW_SIZE), 0);
    }

    public String years() {
        return words.count(scenario().whole(Scalar.HORIZON_YEARS), "years");
    }

    boolean ownRecords() {
        return FittedFaultTables.isFitted(assumptions);
    }

    private House house() {
        return choices.choice().result().house();
    }

    private Scenario scenario() {
        return assumptions.scenario();
    }
}
