package weatherlap.reports.weather;

import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import weatherlap.datasets.climate.ClimateReport;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.rain.DrivingRainRose;
import weatherlap.sim.rain.RainCoverage;
import weatherlap.sim.rain.RainDays;

/** What a file of weather holds, lacks and shows, as lines for people. */
public record ExposureText(ClimateReport report, RainCoverage coverage, List<String> credits) {
    private static final double SHOWN_EVERY_DEG = 45;

    /** What the file holds and lacks, and what was made of that. */
    public List<String> facts() {
        List<String> lines = new ArrayList<>(credits);
        lines.add(text(
                "%s, %s: %d rows, %s to %s; calendar years %s, taken as %.2f years",
                report.file(),
                report.format().label(),
                report.rows(),
                report.firstHour(),
                report.lastHour(),
                report.years(),
                coverage.years()));
        lines.add(text(
                "hours: %d, of which %d without a row, %d without rain, %d without wind or its direction, %d calm",
                report.hours(),
                report.hoursWithoutRow(),
                report.rainMissingHours(),
                report.windMissingHours(),
                report.calmHours()));
        lines.add(text(
                "rain: %.1f mm in %d wet hours; %d of them lack a wind and are left out, with %.1f mm, %.1f%% of the rain",
                coverage.rainMm(),
                coverage.wetHours(),
                coverage.wetHoursWithoutWind(),
                coverage.rainWithoutWindMm(),
                100 * coverage.rainLeftOut()));
        lines.add(text(
                "calm wet hours: %d, with %.1f%% of the rain", coverage.calmWetHours(), 100 * coverage.calmRain()));
        lines.add(text(
                "faults: %d repeated rows, %d rows out of order, %d readings that cannot be",
                report.repeatedRows(), report.rowsOutOfOrder(), report.absurdValues()));
        lines.addAll(report.treatment());
        return lines;
    }

    /** Working days that rain takes, month by month. */
    public static String rainDays(RainDays days, Scenario scenario) {
        return text(
                "working days lost to rain (%.1f mm or more from %.0f h on, for %.0f h): %s; %.0f a year",
                scenario.value(Scalar.RAIN_DAY_MM),
                scenario.value(Scalar.WORK_START_HOUR),
                scenario.value(Scalar.HOURS_PER_DAY),
                days.lostShare().keySet().stream()
                        .map(month -> text(
                                "%s %.1f", month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH), days.lostDays(month)))
                        .collect(Collectors.joining(", ")),
                days.lostDaysPerYear());
    }

    /** Eight bearings, with a heading. */
    public static List<String> table(DrivingRainRose rose) {
        List<String> lines = new ArrayList<>();
        lines.add("wall faces  ISO 15927-3  ASHRAE 160  worst spell  wet hours");
        lines.add("   degrees    L/m2 year   L/m2 year         L/m2          h");
        rose.rows().stream()
                .filter(row -> row.bearingDeg() % SHOWN_EVERY_DEG == 0)
                .forEach(row -> lines.add(text(
                        "%10.0f  %11.1f  %10.1f  %11.1f  %9d",
                        row.bearingDeg(),
                        row.isoLitresPerM2Year(),
                        row.ashraeLitresPerM2Year(),
                        row.worstSpellLitresPerM2(),
                        row.wetHours())));
        return lines;
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
