package weatherlap.reports.owner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weatherlap.analysis.rule.Rule;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.owner.OwnerFigures.OwnHouse;
import weatherlap.reports.page.Block;
import weatherlap.reports.page.Section;
import weatherlap.reports.page.TableView;
import weatherlap.sim.house.House;

/** The second page: the rule, what to do on Monday, the houses to treat differently, and what would change the answer. */
public final class MondaySection {
    /** Houses named where there is room. */
    public static final int MOST_NAMED = 12;

    /** Houses that a printed page mostly has room for. */
    public static final int LIKELY_NAMED = 5;

    private static final int LONGEST_LABEL = 36;

    private final OwnerFigures figures;
    private final String usual;
    private final String other;

    private MondaySection(OwnerFigures figures) {
        this.figures = figures;
        this.usual = figures.usual().many();
        this.other = figures.other().many();
    }

    /**
     * The page.
     *
     * @param season in a few sentences; none where no house has a window
     * @param named so many houses at most
     */
    public static Section of(OwnerFigures figures, List<String> season, int named) {
        MondaySection section = new MondaySection(figures);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.Heading.of("The rule to hang on the wall"));
        blocks.add(new Block.Points(figures.decision().study().rule().lines()));
        blocks.add(new Block.Paragraphs(List.of(section.following())));
        blocks.add(Block.Heading.of("On Monday"));
        blocks.add(new Block.Points(section.monday()));
        if (!figures.departing().isEmpty()) {
            blocks.add(Block.Heading.of("Houses to treat differently"));
            blocks.add(Block.Table.of(section.departing(named)));
        }
        if (!season.isEmpty()) {
            blocks.add(Block.Heading.of("Your season"));
            blocks.add(new Block.Points(season));
        }
        blocks.add(Block.Heading.of("What would change the answer"));
        blocks.add(new Block.Points(new ChangeWords(figures).sentences()));
        return new Section("monday", "What to do", "What to do", Section.Sheet.SECOND, blocks);
    }

    /** Houses that there are to name, {@link #MOST_NAMED} at most. */
    public static int most(OwnerFigures figures) {
        return Math.min(MOST_NAMED, figures.departing().size());
    }

    private String following() {
        double lost = figures.ruleCostsMoreUsd();
        return (Math.round(lost) == 0
                        ? "It picks the best way at every house."
                        : "Follow it and the average family pays " + Numbers.usd(lost)
                                + " more over the years than with the best pick at each house.")
                + mixing()
                + (figures.decision().study().runnerUpInWords().isPresent()
                        ? " A longer rule looked better here, but more houses are needed to trust it."
                        : "");
    }

    private String mixing() {
        double saves = figures.mixingSavesUsd();
        return Math.round(saves) <= 0
                ? ""
                : " Picking window by window, with leak risk kept low, saves " + Numbers.usd(saves) + " on top of "
                        + usual + " everywhere. The list of houses shows how.";
    }

    private List<String> monday() {
        List<String> lines = new ArrayList<>();
        boolean sure = new OwnerWords(figures).isSure();
        lines.add(
                sure
                        ? "Default: quote " + usual + " first."
                        : "Default: lead with " + usual + ", and show the price of " + other + " beside it.");
        lines.add("Price list: " + priceList());
        question()
                .ifPresent(asks -> lines.add("On the next five houses, ask first: " + asks
                        + " No other question told our houses apart as well. Write down which way the family went."));
        figures.leak()
                .cause()
                .ifPresent(cause -> lines.add("On those five, open up one window and look for this: "
                        + InWords.small(cause)
                        + ". It is the likeliest leak at "
                        + Numbers.plain(figures.leak().openings(), 0) + " of "
                        + Numbers.count(figures.leak().of(), "window", "windows") + "."));
        lines.add(
                "Write down crew days and callbacks on each job. Then your own records can take the place of our guesses.");
        return lines;
    }

    private String priceList() {
        String raised = figures.even().raised().many();
        if (Math.round(figures.even().perHouseUsd()) == 0) {
            return "leave it as it is.";
        }
        return (figures.even().raised() == figures.usual() ? "" : "leave " + usual + " as it is. ")
                + "Booked up all season? Add " + Numbers.usd(figures.even().perWindowUsd()) + " a window to " + raised
                + "."
                + figures.inSeason()
                        .map(season -> " In the season below one more crew day is worth "
                                + Numbers.usd(season.crewDayUsd()) + ". At that, " + raised
                                + (Math.round(season.perHouseUsd()) == 0
                                        ? " needs no raise."
                                        : " needs " + Numbers.usd(figures.perWindowUsd(season)) + " a window."))
                        .orElse("");
    }

    /** The one question that tells the houses apart best. */
    private Optional<String> question() {
        return figures.decision().study().lengths().stream()
                .flatMap(length -> length.rule() instanceof Rule.Ask ask ? java.util.stream.Stream.of(ask) : null)
                .map(ask -> ask.question().words())
                .findFirst();
    }

    private TableView departing(int named) {
        List<OwnHouse> all = figures.departing();
        int rest = Math.max(0, all.size() - named);
        boolean risky = all.stream().limit(named).anyMatch(figures::isTooRisky);
        TableView.Builder table = TableView.of("Use " + other
                        + " here. The family saves what price, leaks and lost glass come to"
                        + " together, over " + Numbers.count(figures.years(), "year", "years")
                        + ". A minus is less to pay. Leak chance: first with " + usual + ", then with " + other
                        + "."
                        + (risky ? " *The list of houses has a pick with less leak risk, window by window." : "")
                        + (rest == 0 ? "" : " The appendix has " + rest + " more."))
                .texts("House", "What it is")
                .numbers("Family saves", "Price", "Leaks and glass", "Leak chance", "Shop, a crew day");
        all.stream().limit(named).forEach(house -> table.row(
                        cut(house.choice().result().house().label()),
                        kind(house),
                        Numbers.usd(Math.abs(house.familySavesUsd())),
                        Numbers.signedUsd(-figures.priceDropsUsd(house)),
                        Numbers.signedUsd(figures.priceDropsUsd(house) - Math.abs(house.familySavesUsd())),
                        leakChance(house),
                        Numbers.signedUsd(figures.shopGainsUsd(house)))
                .leadsTo(house.anchor()));
        return table.build();
    }

    private String leakChance(OwnHouse house) {
        return Numbers.percent(figures.leakProbability(house, figures.usual()), 0) + " to "
                + Numbers.percent(figures.leakProbability(house, figures.other()), 0)
                + (figures.isTooRisky(house) ? "*" : "");
    }

    private static String kind(OwnHouse own) {
        double overhang = own.shortestOverhangIn();
        House house = own.choice().result().house();
        return InWords.of(house.cladding()) + ", " + Numbers.count(house.storeys(), "story", "stories") + ", "
                + (overhang == 0 ? "no eave" : Numbers.trimmed(overhang, 0) + " in. eave");
    }

    private static String cut(String label) {
        return label.codePointCount(0, label.length()) <= LONGEST_LABEL
                ? label
                : label.substring(0, label.offsetByCodePoints(0, LONGEST_LABEL)).strip() + "\u2026";
    }
}
