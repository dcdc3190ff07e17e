package weatherlap.reports.owner;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.report.BothSides;
import weatherlap.reports.owner.OwnerFigures.OwnHouse;
import weatherlap.reports.page.Block;
import weatherlap.reports.page.Figure;
import weatherlap.reports.page.Section;

/** The first page: three numbers, one picture, and what an owner asks. */
public final class FirstSection {
    /** Houses named in the picture on each side. */
    private static final int NAMED = 3;

    private FirstSection() {}

    /** @param ownRecords of the shop, on which the level of the leaks rests, in words; empty: on judgment */
    public static Section of(OwnerFigures figures, Optional<String> ownRecords) {
        OwnerWords words = new OwnerWords(figures);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Headline(words.headline()));
        blocks.add(new Block.Numbers(words.numbers()));
        blocks.add(picture(figures));
        blocks.add(new Block.Questions(words.questions(ownRecords)));
        return Section.answer(blocks);
    }

    private static Block.Dots picture(OwnerFigures figures) {
        List<OwnHouse> houses = figures.withChoice();
        BothSides wide = chart(figures, houses, 720, 360);
        List<Point2D> at = wide.spots();
        List<Block.Dots.Spot> spots = new ArrayList<>();
        for (int h = 0; h < at.size(); h++) {
            OwnHouse house = houses.get(h);
            spots.add(new Block.Dots.Spot(
                    house.anchor(),
                    words(figures, house),
                    100 * at.get(h).getX(),
                    100 * at.get(h).getY()));
        }
        return new Block.Dots(
                Figure.of(wide, "houses.csv and summary.json"),
                chart(figures, houses, 360, 380).svg(),
                spots);
    }

    private static BothSides chart(OwnerFigures figures, List<OwnHouse> shown, int widthPx, int heightPx) {
        List<Integer> departing =
                figures.departing().stream().map(OwnHouse::number).toList();
        Set<Integer> marked = new HashSet<>(departing.subList(0, Math.min(NAMED, departing.size())));
        Set<Integer> apart = new HashSet<>(departing);
        shown.stream()
                .filter(house -> !apart.contains(house.number()))
                .sorted(Comparator.comparingDouble(house -> -Math.abs(house.familySavesUsd())))
                .limit(NAMED)
                .forEach(house -> marked.add(house.number()));
        Stream<BothSides.House> houses = shown.stream()
                .map(house -> new BothSides.House(
                        house.choice().result().house().label(),
                        house.familySavesUsd(),
                        house.choice().shopEarnsMoreUsd(),
                        marked.contains(house.number())));
        return new BothSides(
                figures.answer().contrast(),
                Numbers.count(figures.years(), "year", "years"),
                houses.toList(),
                widthPx,
                heightPx);
    }

    private static String words(OwnerFigures figures, OwnHouse house) {
        String first = figures.answer().contrast().first().many();
        return house.choice().result().house().label() + ": with " + first + " the family "
                + moreOrLess("saves", "loses", house.familySavesUsd()) + ", the shop "
                + moreOrLess("gains", "loses", house.choice().shopEarnsMoreUsd()) + " a crew day";
    }

    private static String moreOrLess(String more, String less, double usd) {
        return (usd < 0 ? less : more) + " " + Numbers.usd(Math.abs(usd));
    }
}
