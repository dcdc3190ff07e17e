package weatherlap.reports.offer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import weatherlap.analysis.plan.Plan;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.sim.run.PlanParts;

/**
 * What only the shop may see of the choices of a house, beside the family's proposal: what each costs, what it earns, how low its price
 * may go, and what speaks for it.
 *
 * @param offer in the salesperson's language
 * @param family what the family's sheet calls the choices
 * @param direct the house with prices that are the direct cost: no margin, no service, no overhead
 * @param floor likewise with prices at which the shop earns nothing: overhead and service paid, no profit
 * @param serviceReserve fraction of the price kept for service
 */
public record ShopSide(
        Choices choices, Offer offer, ChoiceWords family, PlanParts direct, PlanParts floor, double serviceReserve) {
    private static final int ARGUMENTS = 3;

    /**
     * One choice, for the salesperson.
     *
     * @param inFamilysWords its title on the family's sheet; empty: the same
     * @param rows names and amounts; the names are those of every choice
     * @param arguments for it, the strongest first
     */
    public record Sheet(String title, String inFamilysWords, List<List<String>> rows, List<String> arguments) {
        public Sheet {
            rows = List.copyOf(rows);
            arguments = List.copyOf(arguments);
        }
    }

    /** An argument and what it is worth, USD over the horizon. */
    private record Argument(String words, double usd) {}

    public List<Sheet> sheets() {
        return choices.all().stream().map(this::sheet).toList();
    }

    private Sheet sheet(OfferedPlan choice) {
        var quote = offer.prices().quote(choice);
        double asked = quote.price() - quote.discount();
        double directUsd = Plan.of(direct, choice.methods()).priceUsd();
        double floorUsd = Plan.of(floor, choice.methods()).priceUsd();
        double gross = asked * (1 - serviceReserve) - directUsd;
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Price on the sheet", Prices.usd(quote.price())));
        if (quote.discount() > 0) {
            rows.add(List.of("Asked: less the discount, before tax", Prices.usd(asked)));
        }
        rows.addAll(List.of(
                List.of("Direct cost: labor, material, repairs under the warranty", usd(directUsd)),
                List.of("Set aside for service calls", usd(asked * serviceReserve)),
                List.of("Gross profit", usd(gross)),
                List.of("Gross margin", Numbers.percent(gross / asked, 1)),
                List.of("Gross profit a crew day", usd(gross / Math.max(1, choice.days()))),
                List.of("Floor price: overhead and service paid, nothing earned", usd(floorUsd)),
                List.of("Room above the floor", usd(asked - floorUsd))));
        return new Sheet(
                offer.names().title(choice),
                family.words().language() == offer.words().language() ? "" : family.title(choice),
                rows,
                arguments(choice));
    }

    /** Each against the other choice that it differs from most. */
    private List<String> arguments(OfferedPlan choice) {
        List<Argument> arguments = new ArrayList<>();
        for (OfferedPlan other : choices.all()) {
            if (other != choice) {
                add(arguments, choice, other);
            }
        }
        return arguments.stream()
                .sorted(Comparator.comparingDouble(Argument::usd).reversed())
                .map(Argument::words)
                .limit(ARGUMENTS)
                .toList();
    }

    private void add(List<Argument> arguments, OfferedPlan choice, OfferedPlan other) {
        String than = " than " + offer.names().inSentence(other);
        double price = other.plan().priceUsd() - choice.plan().priceUsd();
        double damage = other.damageUsd() - choice.damageUsd();
        double horizon = other.plan().horizonCostUsd() - choice.plan().horizonCostUsd();
        double glass = horizon - price - damage;
        double more = choice.glassFt2() - other.glassFt2();
        double asked = offer.prices().quote(other).price()
                - offer.prices().quote(choice).price();
        add(arguments, asked, "Its price is " + Prices.usd(asked) + " lower" + than + ".");
        add(
                arguments,
                damage,
                "It leaves less leak damage to be feared" + than + ": " + usd(damage)
                        + " less of the family\u2019s money over " + offer.years() + " on average.");
        add(
                arguments,
                glass,
                "It keeps " + Numbers.plain(more, 1) + " square feet more glass" + than + ", worth " + usd(glass)
                        + " over " + offer.years() + " at the worth of light that is assumed.");
        add(
                arguments,
                horizon,
                "Counting price, leaks and light it comes out " + usd(horizon) + " ahead of "
                        + offer.names().inSentence(other) + " over " + offer.years() + ".");
        int escapes = other.escapesLost().size() - choice.escapesLost().size();
        add(
                arguments,
                escapes > 0 ? Double.MAX_VALUE : 0,
                "It keeps " + Numbers.count(escapes, "way", "ways") + " out of a room that would be lost with "
                        + offer.names().inSentence(other) + ".");
        int days = other.days() - choice.days();
        add(arguments, days, "The house is done " + Numbers.count(days, "day", "days") + " sooner" + than + ".");
        if (choice.panelsDown() == 0 && other.panelsDown() > 0) {
            add(
                    arguments,
                    1,
                    InWords.capital("no siding comes down; with "
                                    + offer.names().inSentence(other)) + " "
                            + Numbers.count(other.panelsDown(), "piece does", "pieces do") + ".");
        }
    }

    private static void add(List<Argument> arguments, double usd, String words) {
        if (usd >= 1) {
            arguments.add(new Argument(words, usd));
        }
    }

    private static String usd(double usd) {
        return Numbers.usd(usd);
    }
}
