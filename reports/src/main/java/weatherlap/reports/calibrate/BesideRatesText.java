package weatherlap.reports.calibrate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import weatherlap.analysis.calibration.Calibration;
import weatherlap.analysis.calibration.CrewPace;
import weatherlap.analysis.calibration.Drift;
import weatherlap.analysis.calibration.RateChange;
import weatherlap.analysis.calibration.TimeNext;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.page.TableView;

/** What a calibration tells of the shop beside its rates: crews, years, records, what to time. */
final class BesideRatesText {
    private static final int CHANGES = 15;

    private final Calibration calibration;

    BesideRatesText(Calibration calibration) {
        this.calibration = calibration;
    }

    /** Crews that differ and what changes over the years. */
    List<String> crewSentences() {
        List<String> lines = new ArrayList<>();
        List<CrewPace> crews = calibration.crews();
        if (crews.isEmpty()) {
            lines.add("The records do not name two crews, so that the rates are those of all jobs alike.");
        } else {
            List<String> apart = crews.stream()
                    .filter(CrewPace::isApart)
                    .sorted(Comparator.comparingDouble(crew -> -Math.abs(Math.log(crew.factor()))))
                    .map(crew ->
                            crew.crew() + " takes " + more(crew.factor() - 1) + " than an ordinary crew (90% interval "
                                    + percent(crew.low() - 1) + " to " + percent(crew.high() - 1) + ")")
                    .toList();
            lines.add(
                    apart.isEmpty()
                            ? "No crew is surely faster or slower than the others."
                            : "Crew " + String.join("; crew ", apart) + ".");
            lines.add(
                    "The rates are those of an ordinary crew, which a crew far from the others does not move. Together the crews take "
                            + percent(average() - 1) + " against it. compare prices an ordinary crew; --crew NAME, with"
                            + " these assumptions, prices a crew of the table.");
        }
        lines.add(calibration
                .drift()
                .map(BesideRatesText::drift)
                .orElse("The records hold no two days, so that nothing is known of the years."));
        return lines;
    }

    private double average() {
        List<CrewPace> crews = calibration.crews();
        return crews.stream().mapToDouble(crew -> crew.jobs() * crew.factor()).sum()
                / crews.stream().mapToDouble(CrewPace::jobs).sum();
    }

    private static String drift(Drift drift) {
        return (drift.isSure()
                        ? "The same work takes " + more(drift.perYear()) + " each year"
                        : "No change over the years is sure: " + percent(drift.perYear()) + " a year")
                + " (90% interval " + percent(drift.low()) + " to " + percent(drift.high()) + ", records of "
                + Numbers.plain(drift.years(), 1) + " years). The rates are those of the last day.";
    }

    private static String more(double fraction) {
        return Numbers.plain(100 * Math.abs(fraction), 0) + "% " + (fraction < 0 ? "less" : "longer");
    }

    private static String percent(double fraction) {
        return Numbers.signed(100 * fraction, 0) + "%";
    }

    TableView crews() {
        TableView.Builder table = TableView.of("Time of each crew at the same work, over that of an ordinary crew")
                .texts("crew")
                .numbers("jobs", "time", "low 90%", "high 90%");
        calibration
                .crews()
                .forEach(crew -> table.row(
                        crew.crew(),
                        Numbers.plain(crew.jobs(), 0),
                        Numbers.plain(crew.factor(), 2),
                        Numbers.plain(crew.low(), 2),
                        Numbers.plain(crew.high(), 2)));
        return table.build();
    }

    String timeNextSentence() {
        List<TimeNext> next = calibration.timeNext();
        return next.isEmpty()
                ? "The jobs tell every step apart."
                : "Time " + (next.size() == 1 ? "this step" : "these " + Numbers.plain(next.size(), 0) + " steps")
                        + " next, in ten jobs; hours of whole jobs do not tell them from the others. In labor of an average job the"
                        + " interval of each leaves open:";
    }

    TableView timeNext() {
        TableView.Builder table =
                TableView.of("What to time next").texts("step", "done").numbers("open now", "open then");
        calibration
                .timeNext()
                .forEach(next -> table.row(
                        next.step().id(),
                        next.step().tradeName(),
                        Numbers.usd(next.openUsd()),
                        Numbers.usd(next.thenUsd())));
        return table.build();
    }

    String filledSentence() {
        int jobs = calibration.filledIn().jobs();
        int measured = calibration.filledIn().measured();
        return (measured == 0 ? "" : Numbers.count(measured, "job", "jobs") + " taken off a measured house. ")
                + (jobs == 0
                        ? "No record leaves out what a step hangs on."
                        : Numbers.count(jobs, "job", "jobs")
                                + " leave out facts that steps hang on. Each counts as often as it holds in the shop's"
                                + " other records (and, as much as four jobs would, in made-up houses), and such jobs weigh less: "
                                + calibration.filledIn().blanks().entrySet().stream()
                                        .map(BesideRatesText::blank)
                                        .collect(Collectors.joining(", "))
                                + ".");
    }

    private static String blank(Map.Entry<weatherlap.sim.assumptions.Fact, Integer> fact) {
        return fact.getKey().key() + " in " + Numbers.count(fact.getValue(), "job", "jobs");
    }

    String changesSentence() {
        long sure = calibration.changes().stream().filter(RateChange::isSure).count();
        return sure == 0
                ? "Since the earlier fit no rate has moved further than chance would make it."
                : "Since the earlier fit " + Numbers.count((int) sure, "rate has", "rates have")
                        + " moved further than chance makes one in twenty move.";
    }

    TableView changes() {
        TableView.Builder table = TableView.of("Rates then and now, the surest changes first")
                .texts("step", "done")
                .numbers("then", "now", "change", "how sure");
        calibration.changes().stream()
                .limit(CHANGES)
                .forEach(change -> table.row(
                        change.step().id(),
                        change.step().tradeName(),
                        Numbers.plain(change.then(), 2),
                        Numbers.plain(change.now(), 2),
                        change.then() == 0 ? "\u2013" : percent(change.now() / change.then() - 1),
                        Numbers.percent(change.sure(), 0)));
        return table.build();
    }
}
