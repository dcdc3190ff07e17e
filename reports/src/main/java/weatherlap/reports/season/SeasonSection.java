package weatherlap.reports.season;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import weatherlap.analysis.choice.Decision;
import weatherlap.analysis.season.Season;
import weatherlap.analysis.season.SeasonOutcome;
import weatherlap.analysis.season.SeasonRow;
import weatherlap.analysis.season.SeasonStudy;
import weatherlap.analysis.season.Way;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.page.Block;
import weatherlap.reports.page.ReportWords;
import weatherlap.reports.page.Section;
import weatherlap.reports.page.TableView;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;

/** What a season comes to by each way to choose a method. */
public final class SeasonSection {
    private SeasonSection() {}

    /** The season of a report; empty where no house has a window. */
    public static Optional<SeasonStudy> study(Decision decision, Scenario scenario, RainClimate climate) {
        return SeasonStudy.of(decision.choices(), decision.study().rule(), scenario, rainShare(climate, scenario));
    }

    /** Known only where the weather is that of the houses. */
    private static OptionalDouble rainShare(RainClimate climate, Scenario scenario) {
        return climate.anyBearing()
                ? OptionalDouble.empty()
                : OptionalDouble.of(climate.rainDays(scenario).lostShareOfYear());
    }

    public static Section of(Optional<SeasonStudy> study, Scenario scenario) {
        List<Block> blocks = study.map(found -> List.<Block>of(
                        new Block.Paragraphs(sentences(found, scenario)),
                        new Block.Table(ways(found), "", "fixed"),
                        new Block.Table(swept(found), "", "fixed"),
                        new Block.Paragraphs(meaning())))
                .orElseGet(() -> List.of(new Block.Paragraphs(List.of("No house here has a window to replace."))));
        return new Section("season", "Your season", "Your season", Section.Sheet.WIDE, blocks);
    }

    /** The season in a few sentences. */
    public static List<String> sentences(SeasonStudy study, Scenario scenario) {
        Season season = study.season();
        SeasonRow best = study.row(Way.BEST_MIX).orElseThrow();
        List<String> sentences = new ArrayList<>();
        sentences.add(Numbers.count(season.crews(), "crew", "crews") + ", " + Numbers.trimmed(season.weeks(), 1)
                + " weeks of " + Numbers.trimmed(season.daysPerWeek(), 1) + " days" + rain(season) + ": "
                + Numbers.count(season.crewDays(), "crew day", "crew days") + ". "
                + Numbers.count(season.jobs(), "house waits", "houses wait") + "." + judged(scenario));
        sentences.add("The best mix for the shop does " + houses(best.outcome()) + " and earns "
                + ReportWords.usd(best.outcome().grossProfitUsd()) + " before overhead: " + mix(best) + ".");
        sentences.add(why(study, best, scenario.contrast()));
        sentences.add(
                study.dayPrice().usd() == 0
                        ? "Crew days are left over: another crew would find no work, and a job need not hurry."
                        : "One more day of a crew is worth "
                                + ReportWords.usd(study.dayPrice().usd())
                                + ": a job that brings less for each day it takes is better left for later. One more crew for the"
                                + " season adds " + ReportWords.usd(best.oneMoreCrewUsd())
                                + " before its own overhead.");
        return sentences;
    }

    /** By what the mix picks, what families make of it, and why a method may stand in it that the report does not compare. */
    private static String why(SeasonStudy study, SeasonRow best, Contrast compared) {
        double day = study.dayPrice().usd();
        String third = InWords.list(Stream.of(Method.values())
                .filter(method -> !compared.holds(method) && best.done(method.word()) >= 0.5)
                .map(Method::label)
                .toList());
        return "It looks at the shop alone: each house gets the method that earns most"
                + (day == 0 ? "" : ", counting " + ReportWords.usd(day) + " for each crew day it takes")
                + ". Families would pay "
                + ReportWords.usd(best.outcome().familyExtraUsd()) + " a house more than by their best plans."
                + (third.isEmpty()
                        ? ""
                        : " It may use every method, not only the two compared here; so " + third + " is in it too"
                                + (third.equals(Method.FULL_FRAME.label())
                                        ? ", which leaves the siding up and takes fewer days than full-flange."
                                        : "."));
    }

    private static String rain(Season season) {
        return season.rainShare().isPresent()
                ? ", less " + Numbers.percent(season.rainShare().getAsDouble(), 1) + " for rain"
                : ", no rain days taken off, since the weather is not yours";
    }

    private static String judged(Scenario scenario) {
        List<String> judged = new ArrayList<>();
        for (Scalar scalar : EnumSet.range(Scalar.CREWS, Scalar.JOBS_WAITING)) {
            if (scenario.settings().get(scalar).origin().basis() == Basis.JUDGEMENT) {
                judged.add(name(scalar));
            }
        }
        return judged.isEmpty()
                ? ""
                : " Not your own numbers yet: " + InWords.list(judged) + ". Write yours into shop.toml.";
    }

    private static String name(Scalar scalar) {
        return switch (scalar) {
            case CREWS -> "crews";
            case SEASON_WEEKS -> "weeks";
            case SEASON_DAYS_PER_WEEK -> "days a week";
            default -> "houses waiting";
        };
    }

    private static String houses(SeasonOutcome outcome) {
        return ReportWords.number(outcome.housesDone(), 0) + " houses";
    }

    /** What is done how, and what is left out. */
    private static String mix(SeasonRow row) {
        List<String> parts = new ArrayList<>();
        row.outcome()
                .byMethod()
                .forEach((by, houses) -> parts.add(Numbers.plain(houses, 0) + " " + by.replace('_', '-')));
        double left = row.left();
        if (left >= 0.5) {
            parts.add(Numbers.plain(left, 0) + " left for later");
        }
        return InWords.list(parts);
    }

    private static TableView ways(SeasonStudy study) {
        Set<String> kinds = kinds(study.rows());
        TableView.Builder table = TableView.of(
                        "What a season comes to by each way to choose; in brackets where eight runs in ten lie. Jobs are done as they"
                                + " come; the best mix picks them")
                .texts("way to choose")
                .numbers("houses done", "gross profit", "callbacks owed", "families pay", "over their best plans");
        kinds.forEach(kind -> table.numbers(kind.replace('_', '-')));
        table.numbers("one more crew adds");
        for (SeasonRow row : study.rows()) {
            List<String> cells = new ArrayList<>(List.of(
                    row.way().label(),
                    ReportWords.number(row.outcome().housesDone(), 0),
                    ReportWords.usd(row.outcome().grossProfitUsd()),
                    ReportWords.number(row.outcome().callbacks(), 1),
                    ReportWords.usd(row.outcome().familyUsd()),
                    ReportWords.usd(row.outcome().familyExtraUsd())));
            kinds.forEach(kind -> cells.add(ReportWords.number(row.done(kind), 0)));
            cells.add(ReportWords.usd(row.oneMoreCrewUsd()));
            table.row(cells.toArray(String[]::new));
        }
        return table.build();
    }

    /** What houses are done by, in the order of the methods. */
    private static Set<String> kinds(List<SeasonRow> rows) {
        Set<String> kinds = new java.util.LinkedHashSet<>();
        for (Method method : Method.values()) {
            if (rows.stream().anyMatch(row -> row.done(method.word()) > 0)) {
                kinds.add(method.word());
            }
        }
        if (rows.stream().anyMatch(row -> row.done("mixed") > 0)) {
            kinds.add("mixed");
        }
        return kinds;
    }

    private static TableView swept(SeasonStudy study) {
        List<Way> ways = study.rows().stream().map(SeasonRow::way).toList();
        TableView.Builder table = TableView.of("The same with one number of the season otherwise: gross profit")
                .texts("if");
        ways.forEach(way -> table.numbers(way.label()));
        table.numbers("a crew day is worth");
        study.swept().stream().map(SeasonRow::when).distinct().forEach(when -> {
            List<SeasonRow> rows = study.swept().stream()
                    .filter(row -> row.when().equals(when))
                    .toList();
            List<String> cells = new ArrayList<>(List.of(when.replace('_', ' ')));
            rows.forEach(row ->
                    cells.add(ReportWords.usd(row.outcome().grossProfitUsd().mean())));
            cells.add(rows.stream()
                    .flatMap(row -> row.dayPriceUsd().stream().boxed())
                    .findFirst()
                    .map(ReportWords::usd)
                    .orElse(""));
            table.row(cells.toArray(String[]::new));
        });
        return table.build();
    }

    private static List<String> meaning() {
        return List.of(
                "Gross profit is the price less labor, material, repairs under the warranty and service. Trucks, rent and the office are"
                        + " paid out of it; so are the wages of days on which no house is done. Prices stand as the shop makes them now: a"
                        + " method that sells less well at its price is not seen here.",
                "A house takes whole days of a crew. A house that gets two methods is given the days of each by its share of the minutes.",
                "What families pay is price, repairs that they bear and glass lost, over the years they look ahead, a house done. Where"
                        + " that is well over their best plans, the shop earns what the family loses.");
    }
}
