package weatherlap.reports.owner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import weatherlap.analysis.plan.Limit;
import weatherlap.analysis.tables.Answer.PerHouse;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.page.Block;
import weatherlap.reports.page.Block.Questions.Question;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.Summary;

/** The first page in words: what an owner asks, each answered in a few short sentences. */
public final class OwnerWords {
    private static final double SURE = 0.9;
    private static final double LIKELY = 0.7;

    private final OwnerFigures figures;
    private final String usual;
    private final String other;
    private final String years;

    public OwnerWords(OwnerFigures figures) {
        this.figures = figures;
        this.usual = figures.usual().many();
        this.other = figures.other().many();
        this.years = Numbers.count(figures.years(), "year", "years");
    }

    /** The answer in a line or two. */
    public String headline() {
        String family = isSure()
                ? "Make " + usual + " your default."
                : isLikely()
                        ? "Make " + usual + " your default. It is likely, not certain."
                        : "It is close. Lean to " + usual + ".";
        if (isEven()) {
            return family + " A crew day earns you the same either way.";
        }
        return figures.even().raised() == figures.usual()
                ? family + " But a crew day earns you more with " + other + "."
                : family + " A crew day earns you more with " + usual + ", too.";
    }

    /** The answer where there is room for little more. */
    public String inALine() {
        return headline() + " With " + usual + " the average family saves "
                + usd(figures.answer().savedPerHouseUsd().mean()) + " over " + years
                + "; to earn the shop the same, " + raised() + " must cost "
                + usd(figures.even().perWindowUsd()) + " more a window.";
    }

    /** The three numbers. */
    public List<Block.Numbers.Number> numbers() {
        return List.of(
                new Block.Numbers.Number(
                        "The family",
                        usd(figures.answer().savedPerHouseUsd().mean()),
                        "saved over " + years + " with " + usual + ", for the average house"),
                new Block.Numbers.Number(
                        "A crew day",
                        usd(perDay(figures.usual())) + " or " + usd(perDay(figures.other())),
                        "earned by your shop with " + usual + ", or with " + other),
                new Block.Numbers.Number(
                        "To earn the same",
                        "+" + usd(figures.even().perWindowUsd()) + " a window",
                        isEven()
                                ? "both methods earn the same now"
                                : "for " + raised() + ": charge at least that much more ("
                                        + usd(figures.even().perHouseUsd()) + " a house)"));
    }

    /** @param ownRecords of the shop, on which the level of the leaks rests, in words; empty: on judgment */
    public List<Question> questions(Optional<String> ownRecords) {
        return List.of(
                new Question("What is my default?", choice()),
                new Question("How sure is that?", sureness(ownRecords)),
                new Question("Where not?", elsewhere()),
                new Question("What does it cost me?", cost()),
                new Question("What do I change in price?", price()));
    }

    private String choice() {
        String how = isSure() ? ", clearly" : isLikely() ? ", most likely" : ", by a little";
        return InWords.capital(usual) + how + ". Over " + years + " it costs the average family "
                + usd(figures.answer().savedPerHouseUsd().mean()) + " less than " + other
                + ". That counts price, likely leak repairs and lost glass. " + meanAgainstCount();
    }

    /** Many small losses beside a few large gains, or the other way round. */
    private String meanAgainstCount() {
        int keeping = figures.answer().keeping();
        int departing = figures.answer().departures();
        String otherWins = "With " + other + " the family does better at "
                + Numbers.count(departing, "house", "houses") + ", by " + usd(figures.departingEachUsd())
                + (departing == 1 ? "" : " each");
        String usualWins = "ith " + usual + " at " + Numbers.plain(keeping, 0) + ", by " + usd(figures.keepingEachUsd())
                + (keeping == 1 ? "" : " each");
        if (departing == 0) {
            return "No house does better with " + other + ".";
        }
        return departing > keeping
                ? otherWins + ". But w" + usualWins + ". Fewer wins, bigger ones: that tips the average."
                : otherWins + ". W" + usualWins + ".";
    }

    private String sureness(Optional<String> ownRecords) {
        int of100 = (int) Math.round(100 * figures.answer().probability());
        String grade = isSure() ? "nearly every time" : isLikely() ? "likely, not certain" : "close to a coin toss";
        return "We ran the numbers " + Numbers.count(figures.runs(), "time", "times")
                + ", each time with other costs and leak odds. " + InWords.capital(usual) + " came out cheaper in "
                + of100 + " of 100 runs: " + grade + ". In 8 runs of 10 it "
                + saved(figures.answer().savedPerHouseUsd()) + " a house. " + leakBasis(ownRecords);
    }

    private static String saved(Summary usd) {
        return usd.p10() < 0
                ? "fell between costing " + usd(-usd.p10()) + " more and saving " + usd(usd.p90())
                : "saved between " + usd(usd.p10()) + " and " + usd(usd.p90());
    }

    private static String leakBasis(Optional<String> ownRecords) {
        return ownRecords
                .map(records -> "How often walls leak comes from your own records ("
                        + records.replaceFirst("^own records: ", "") + ").")
                .orElse("How often old walls leak is our judgment. No survey counts it.");
    }

    private String elsewhere() {
        List<String> lines = new ArrayList<>();
        int departing = figures.answer().departures();
        lines.add(
                departing == 0
                        ? "Nowhere in these houses, for the family."
                        : "Use " + other + " at " + departing + " of "
                                + Numbers.count(figures.answer().houses(), "house", "houses")
                                + ". It saves those families "
                                + usd(figures.departingEachUsd()) + " on average. Page 2 names "
                                + (departing > MondaySection.MOST_NAMED ? "those with the most at stake" : "them")
                                + ".");
        figures.answer().contrast().both().forEach(method -> ruledOut(method).ifPresent(lines::add));
        standIn().ifPresent(lines::add);
        return String.join(" ", lines);
    }

    /** Where brick or stucco leaves no way for one of the two, another stands in its place. */
    private Optional<String> standIn() {
        Contrast named = figures.answer().contrast();
        return figures.houses().stream()
                .map(house -> house.choice().result().contrast())
                .filter(here -> !here.equals(named))
                .findFirst()
                .map(here -> "At " + Numbers.count(figures.answer().standIns(), "house", "houses")
                        + " brick or stucco rules out " + apart(named, here) + ". There every number here is for "
                        + apart(here, named) + " instead ("
                        + InWords.list(notIn(named, here).map(OwnerTerms::of).toList()) + ").");
    }

    /** Those of the first pair that the second lacks. */
    private static String apart(Contrast some, Contrast others) {
        return InWords.list(notIn(others, some).map(Method::many).toList());
    }

    private static Stream<Method> notIn(Contrast others, Contrast some) {
        return some.both().stream().filter(method -> !others.holds(method));
    }

    /** What cannot be built at a window or more, by number of the houses shown. */
    private Optional<String> ruledOut(Method method) {
        List<String> counts = new ArrayList<>();
        for (Limit limit : List.of(Limit.NO_UNIT_FITS, Limit.ROTTEN_FRAME, Limit.ESCAPE_LOST)) {
            long count = figures.closed(method, limit);
            if (count > 0) {
                counts.add(OwnerTerms.of(limit) + " at " + Numbers.count(count, "house", "houses"));
            }
        }
        return counts.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        InWords.capital(method.many()) + " can\u2019t go in everywhere: " + InWords.list(counts) + ".");
    }

    private String cost() {
        PerHouse mine = figures.answer().of(figures.usual());
        PerHouse theirs = figures.answer().of(figures.other());
        String days = "A house takes " + days(mine) + " crew days with " + usual + " and " + days(theirs) + " with "
                + other + ". A crew day earns you " + usd(mine.grossProfitPerCrewDayUsd()) + " and "
                + usd(theirs.grossProfitPerCrewDayUsd()) + ".";
        double lost = theirs.grossProfitPerCrewDayUsd() - mine.grossProfitPerCrewDayUsd();
        double house = mine.grossProfitUsd() - theirs.grossProfitUsd();
        if (isEven()) {
            return days + " It costs you nothing.";
        }
        return lost < 0
                ? days + " It costs you nothing: each day brings in " + usd(-lost) + " more."
                : days + " If you are booked up, each day of " + usual + " costs you " + usd(lost)
                        + ". If your crews wait for work, look at the whole house: it brings in "
                        + usd(Math.abs(house)) + (house < 0 ? " less" : " more") + " with " + usual + ".";
    }

    private static String days(PerHouse house) {
        return Numbers.plain(house.crewDays(), 1);
    }

    private String price() {
        if (isEven()) {
            return "Nothing. Both methods earn you the same for a crew day.";
        }
        String raise = "If you are booked up, charge at least "
                + usd(figures.even().perWindowUsd()) + " more a window for " + raised() + " ("
                + usd(figures.even().perHouseUsd()) + " a house). Then a crew day earns you the same as with "
                + figures.even().other().many() + ".";
        if (figures.even().raised() != figures.usual()) {
            return "Nothing for " + usual + ". But " + InWords.small(raise);
        }
        double kept = figures.keptAfterRaiseUsd();
        return raise + " "
                + (kept > 0
                        ? "The average family still saves " + usd(kept) + " at that price. Both of you gain."
                        : "But the average family saves only "
                                + usd(figures.answer().savedPerHouseUsd().mean()) + " with " + usual
                                + " now. At the higher price " + other + " would be the better buy for most.");
    }

    private String raised() {
        return figures.even().raised().many();
    }

    private boolean isEven() {
        return Math.round(figures.even().perHouseUsd()) == 0;
    }

    boolean isSure() {
        return figures.answer().probability() >= SURE;
    }

    private boolean isLikely() {
        return figures.answer().probability() >= LIKELY;
    }

    private double perDay(Method method) {
        return figures.perDayUsd(method);
    }

    private static String usd(double usd) {
        return Numbers.usd(usd);
    }
}
