package weatherlap.reports.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.LeakWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.compare.Traces.Measure;
import weatherlap.reports.owner.GainWords;
import weatherlap.reports.owner.OwnerFigures.OwnHouse;
import weatherlap.reports.page.HouseEntry;
import weatherlap.reports.page.ReportWords;
import weatherlap.reports.page.TableView;
import weatherlap.sim.Each;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseLook;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.OpeningResult;
import weatherlap.sim.run.Summary;

/** Houses as entries of the index and as rows of one table. */
final class HouseViews {
    private final String years;
    private final Function<HouseResult, Optional<HouseLook>> look;

    /** @param look what opening up one window of a house first is worth */
    HouseViews(int horizonYears, Function<HouseResult, Optional<HouseLook>> look) {
        this.years = Numbers.count(horizonYears, "year", "years");
        this.look = look;
    }

    List<HouseEntry> entries(List<HouseChoice> choices) {
        return Each.upTo(choices.size(), h -> entry(choices.get(h), h + 1));
    }

    /** One row a house. */
    TableView summary(List<HouseChoice> choices) {
        Contrast named =
                choices.isEmpty() ? Contrast.USUAL : choices.get(0).result().named();
        String first = named.first().label();
        String second = named.second().label();
        TableView.Builder table = TableView.of("Each house wholly done by either method; costs over " + years
                        + " with the range of 8 runs in 10. Plan: the family\u2019s cheapest that can be built and keeps leak risk low"
                        + " enough, window by window in openings.csv. All stand in report.html")
                .texts("house", "label")
                .numbers("openings", "price, " + first, "price, " + second, "glass lost, " + first, second)
                .numbers("leak chance, " + first, second, "cost, " + first, "cost, " + second)
                .texts("cheaper, share of runs", "plan");
        for (HouseChoice choice : choices) {
            HouseResult house = choice.result();
            MethodResult full = house.first();
            MethodResult insert = house.second();
            table.row(
                    house.house().id(),
                    house.house().label(),
                    ReportWords.number(house.house().openingCount(), 0),
                    ReportWords.usd(full.priceUsd()),
                    ReportWords.usd(insert.priceUsd()),
                    ReportWords.percent(full.glassLostFraction(), 1),
                    ReportWords.percent(insert.glassLostFraction(), 1),
                    ReportWords.percent(full.leakProbability(), 0),
                    ReportWords.percent(insert.leakProbability(), 0),
                    ReportWords.usd(full.horizonCostUsd()),
                    ReportWords.usd(insert.horizonCostUsd()),
                    ReportWords.of(house.preferred()) + ", " + ReportWords.percent(house.preferredProbability(), 0),
                    PlanWords.word(choice));
        }
        return table.build();
    }

    private HouseEntry entry(HouseChoice choice, int number) {
        HouseResult result = choice.result();
        House house = result.house();
        String facts = escape(result) + InWords.capital(ReportWords.of(house.cladding())) + ", built "
                + house.yearBuilt()
                + ", "
                + Numbers.count(house.storeys(), "story", "stories") + ", "
                + Numbers.count(house.openingCount(), "opening", "openings")
                + (house.leadSafe() ? "; lead-safe work presumed" : "") + ". "
                + LeakWords.verdict(result)
                + PlanWords.sentences(choice).map(sentence -> " " + sentence).collect(Collectors.joining())
                + look.apply(result).map(worth -> " " + LeakWords.look(worth)).orElse("");
        OwnHouse own = new OwnHouse(number, choice);
        String words = (house.id() + " " + house.label() + " " + ReportWords.of(house.cladding()) + " "
                        + house.yearBuilt() + " " + house.yearBuilt() / 10 * 10 + "s " + PlanWords.word(choice))
                .toLowerCase(Locale.ROOT);
        return new HouseEntry(
                house.id(),
                house.label(),
                own.anchor(),
                words,
                new HouseEntry.Keys(
                        ReportWords.of(house.cladding()),
                        Numbers.count(house.storeys(), "story", "stories"),
                        PlanWords.word(choice),
                        GainWords.who(own),
                        house.yearBuilt(),
                        Math.abs(own.familySavesUsd()),
                        Math.abs(choice.shopEarnsMoreUsd())),
                facts,
                GainWords.line(own),
                PlanWords.line(choice),
                houseTable(result),
                openingTable(result));
    }

    /** What a family must know first: a way out that is there today and would be gone. */
    private static String escape(HouseResult result) {
        List<String> worse = new ArrayList<>();
        for (Method method : result.contrast().both()) {
            for (String flag : List.of("escape_lost", "escape_relieved")) {
                List<String> openings = result.openings().stream()
                        .filter(o -> o.method() == method && o.codeFlags().contains(flag))
                        .map(o -> o.elevation().id() + "/" + o.opening().id())
                        .toList();
                if (!openings.isEmpty()) {
                    worse.add(ReportWords.of(method)
                            + " would make too small, or leave in doubt, the way out of a room that passes today (IRC 2018 "
                            + (flag.equals("escape_lost")
                                    ? "R310.2) at "
                                    : "R310.2; R310.2.5 may let a replacement stand) at ")
                            + String.join(", ", openings));
                }
            }
        }
        return worse.isEmpty()
                ? ""
                : InWords.capital(String.join("; ", worse)) + ": confirm with the local building official. ";
    }

    private TableView houseTable(HouseResult house) {
        MethodResult full = house.first();
        MethodResult insert = house.second();
        return TableView.of("The house: the average, and the range of 8 runs in 10; houses.csv, rows of house_id "
                        + house.house().id())
                .texts("measure")
                .numbers(full.method().label(), insert.method().label())
                .row("price", ReportWords.usd(full.priceUsd()), ReportWords.usd(insert.priceUsd()))
                .leadsTo(Measure.PRICE.id())
                .row(
                        "cost to the shop, overhead included",
                        ReportWords.usd(full.costUsd()),
                        ReportWords.usd(insert.costUsd()))
                .leadsTo(Measure.PRICE.id())
                .row("kept of the price after all costs", kept(full), kept(insert))
                .leadsTo(Measure.PRICE.id())
                .row(
                        "chance of a loss at that price",
                        ReportWords.percent(full.lossProbability(), 1),
                        ReportWords.percent(insert.lossProbability(), 1))
                .leadsTo(Measure.PRICE.id())
                .row(
                        "labor, person-hours",
                        ReportWords.number(full.labourHours(), 1),
                        ReportWords.number(insert.labourHours(), 1))
                .leadsTo(Measure.LABOUR.id())
                .row(
                        "gross profit: price less labor, material and service",
                        ReportWords.usd(full.grossProfitUsd()),
                        ReportWords.usd(insert.grossProfitUsd()))
                .leadsTo(Measure.PRICE.id())
                .row("crew days", ReportWords.number(full.crewDays(), 0), ReportWords.number(insert.crewDays(), 0))
                .leadsTo(Measure.LABOUR.id())
                .row(
                        "gross profit a crew day: the one divided by the other",
                        ReportWords.usd(full.grossProfitPerCrewDayUsd()),
                        ReportWords.usd(insert.grossProfitPerCrewDayUsd()))
                .leadsTo(Measure.PRICE.id())
                .row("material", ReportWords.usd(full.materialUsd()), ReportWords.usd(insert.materialUsd()))
                .leadsTo(Measure.PRICE.id())
                .row("glass lost of today\u2019s", glass(full), glass(insert))
                .leadsTo(Measure.GLASS.id())
                .row("leak damage at any opening within " + years, score(full.leakScore()), score(insert.leakScore()))
                .leadsTo(Measure.LEAKS.id())
                .row(
                        "cost over " + years,
                        ReportWords.usd(full.horizonCostUsd()),
                        ReportWords.usd(insert.horizonCostUsd()))
                .leadsTo(Measure.HORIZON.id())
                .row("look at", flags(full.flags()), flags(insert.flags()))
                .build();
    }

    /** What is left of the price, as a share of it: mean, and the range of eight draws in ten. */
    private static String kept(MethodResult method) {
        Summary cost = method.costUsd();
        double price = method.priceUsd();
        return price == 0
                ? "\u2013"
                : ReportWords.percent(1 - cost.mean() / price, 0) + " ("
                        + ReportWords.percent(1 - cost.p90() / price, 0) + " to "
                        + ReportWords.percent(1 - cost.p10() / price, 0) + ")";
    }

    private static String glass(MethodResult method) {
        return ReportWords.number(method.glassLostFt2(), 1) + " ft\u00b2, "
                + ReportWords.percent(method.glassLostFraction(), 1);
    }

    private static String score(Summary score) {
        return ReportWords.percent(score.mean() / 100, 1) + " (" + ReportWords.number(score.p10(), 1) + " to "
                + ReportWords.number(score.p90(), 1) + ")";
    }

    private static String flags(List<String> flags) {
        return flags.isEmpty() ? "\u2013" : String.join(", ", flags).replace('_', ' ');
    }

    private TableView openingTable(HouseResult house) {
        String first = house.contrast().first().label();
        String second = house.contrast().second().label();
        TableView.Builder table = TableView.of("Its openings; leak chance within " + years
                        + "; openings.csv, rows of house_id " + house.house().id())
                .texts("wall / opening")
                .numbers("glass today (ft\u00b2)", "lost, " + first, "lost, " + second)
                .numbers("order, " + first + " (in.)", "order, " + second + " (in.)")
                .numbers("labor, " + first + " (person-min)", "labor, " + second)
                .numbers("leak chance, " + first, "leak chance, " + second)
                .texts("largest leak cause, " + second, "code flags");
        for (Map<Method, OpeningResult> both : house.byOpening()) {
            OpeningResult full = both.get(house.contrast().first());
            OpeningResult insert = both.get(house.contrast().second());
            table.row(
                    full.elevation().id() + " / " + full.opening().id(),
                    ReportWords.number(full.glassExistingFt2(), 2),
                    ReportWords.percent(full.glassLostFraction(), 1),
                    ReportWords.percent(insert.glassLostFraction(), 1),
                    size(full),
                    size(insert),
                    ReportWords.number(full.labourMinutes().mean(), 0),
                    ReportWords.number(insert.labourMinutes().mean(), 0),
                    ReportWords.percent(full.leakProbability(), 1),
                    ReportWords.percent(insert.leakProbability(), 1),
                    insert.leakCauses().isEmpty()
                            ? "\u2013"
                            : insert.leakCauses().get(0).tradeName(),
                    codeFlags(full, insert));
        }
        return table.build();
    }

    private static String size(OpeningResult opening) {
        return inches(opening.orderWidthIn()) + " \u00d7 " + inches(opening.orderHeightIn());
    }

    /** Without zeros at the end: 31.25, 54. */
    private static String inches(double inches) {
        return Numbers.trimmed(inches, 3);
    }

    private static String codeFlags(OpeningResult full, OpeningResult insert) {
        if (full.codeFlags().isEmpty() && insert.codeFlags().isEmpty()) {
            return "\u2013";
        }
        if (full.codeFlags().equals(insert.codeFlags())) {
            return "both: " + flags(full.codeFlags());
        }
        return full.method().label() + ": " + flags(full.codeFlags()) + "; "
                + insert.method().label() + ": " + flags(insert.codeFlags());
    }
}
