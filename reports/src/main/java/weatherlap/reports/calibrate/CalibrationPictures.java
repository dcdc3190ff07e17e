package weatherlap.reports.calibrate;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weatherlap.analysis.calibration.Calibration;
import weatherlap.analysis.calibration.FittedJob;
import weatherlap.analysis.calibration.HeldOutError;
import weatherlap.analysis.calibration.StepFit;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.study.FittedHours;
import weatherlap.charts.study.HeldOutPlaces;
import weatherlap.charts.study.RateMoves;
import weatherlap.charts.study.Residuals;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.assumptions.Fact;

/** Fitted against actual hours, and what is left over by crew, temperature and storey. */
final class CalibrationPictures {
    /** Crews shown by name; the rest are one. */
    private static final int CREWS = 10;

    /** Jobs drawn one by one; of more, every second, third and so on, and the first that were set aside. */
    private static final int MOST_POINTS = 1500;

    private static final int MOST_ASIDE = 50;

    private static final String NOT_KEPT = "not kept";
    private static final String OTHERS = "others";

    private final Calibration calibration;
    private final List<FittedJob> jobs;

    CalibrationPictures(Calibration calibration) {
        this.calibration = calibration;
        jobs = calibration.jobs();
    }

    List<Picture> all() {
        return List.of(rates(), hours(), residuals(), places());
    }

    private Picture rates() {
        List<StepFit> steps = calibration.steps();
        return new RateMoves(
                Numbers.count(steps.size(), "rate", "rates") + ", those that moved most money",
                IntStream.range(0, steps.size())
                        .mapToObj(s -> {
                            StepFit fit = steps.get(s);
                            double usd = calibration.usdPerMinute().get(s);
                            return new RateMoves.Rate(
                                    CalibrationText.name(calibration, fit),
                                    usd * fit.priorMinutes(),
                                    usd * fit.fittedMinutes(),
                                    usd * fit.lowMinutes(),
                                    usd * fit.highMinutes());
                        })
                        .filter(rate -> rate.afterUsd() > 0)
                        .toList());
    }

    private Picture places() {
        List<Double> places = calibration.heldOut().map(HeldOutError::places).orElse(List.of());
        return new HeldOutPlaces(
                Numbers.count(places.size(), "job", "jobs") + " predicted by fits to the others", places);
    }

    private Picture hours() {
        List<FittedJob> shown = Stream.concat(
                        drawn(kept()).stream(),
                        jobs.stream().filter(FittedJob::outlier).limit(MOST_ASIDE))
                .toList();
        return new FittedHours(
                scope(shown.size(), jobs.size()),
                shown.stream()
                        .map(job -> new FittedHours.Job(
                                MethodStyle.of(job.job().method()),
                                job.fittedHours(),
                                job.actualHours(),
                                Optional.of(job.job().id()).filter(id -> job.outlier())))
                        .toList());
    }

    private List<FittedJob> kept() {
        return jobs.stream().filter(job -> !job.outlier()).toList();
    }

    private static String scope(int shown, int all) {
        return (shown < all ? Numbers.plain(shown, 0) + " of " : "") + Numbers.count(all, "job", "jobs");
    }

    private static List<FittedJob> drawn(List<FittedJob> jobs) {
        int step = 1 + (jobs.size() - 1) / MOST_POINTS;
        return IntStream.range(0, jobs.size())
                .filter(i -> i % step == 0)
                .mapToObj(jobs::get)
                .toList();
    }

    private Picture residuals() {
        List<FittedJob> kept = drawn(kept());
        Map<String, Long> crews =
                kept.stream().collect(Collectors.groupingBy(CalibrationPictures::crew, Collectors.counting()));
        List<String> shown = crews.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .limit(CREWS)
                .map(Map.Entry::getKey)
                .toList();
        return new Residuals(
                scope(kept.size(), kept().size()) + (kept().size() < jobs.size() ? ", those set aside left out" : ""),
                List.of(
                        factor("crew", kept, job -> shown.contains(crew(job)) ? crew(job) : OTHERS),
                        factor("year", kept, job -> job.job()
                                .date()
                                .map(day -> Integer.toString(day.getYear()))
                                .orElse(NOT_KEPT)),
                        factor("temperature", kept, job -> temperature(job.job())),
                        factor("stories", kept, job -> job.job().facts().getOrDefault(Fact.STOREYS, NOT_KEPT))));
    }

    /** Levels by their names, those that are none last. */
    private static Residuals.Factor factor(String heading, List<FittedJob> jobs, Function<FittedJob, String> level) {
        Map<String, List<Double>> levels = new TreeMap<>(jobs.stream()
                .collect(Collectors.groupingBy(
                        level, Collectors.mapping(FittedJob::residualFraction, Collectors.toList()))));
        Map<String, List<Double>> ordered = new LinkedHashMap<>(levels);
        for (String last : List.of(OTHERS, NOT_KEPT)) {
            Optional.ofNullable(ordered.remove(last)).ifPresent(residuals -> ordered.put(last, residuals));
        }
        Stream<String> names = heading.equals("temperature")
                ? Stream.concat(Band.all(), Stream.of(NOT_KEPT)).filter(ordered::containsKey)
                : ordered.keySet().stream();
        return new Residuals.Factor(
                heading,
                names.map(name -> new Residuals.Level(name, ordered.get(name))).toList());
    }

    private static String crew(FittedJob job) {
        return job.job().crew().orElse(NOT_KEPT);
    }

    private static String temperature(JobRecord job) {
        return job.temperatureF().isPresent() ? Band.of(job.temperatureF().getAsDouble()) : NOT_KEPT;
    }

    /** Bands of the day's temperature: tape wants warming below the second bound (about 45 °F), water freezes below the first. */
    private static final class Band {
        private static final int[] BOUNDS_F = {32, 45, 60, 75, 90};

        static String of(double temperatureF) {
            int band = 0;
            while (band < BOUNDS_F.length && temperatureF >= BOUNDS_F[band]) {
                band++;
            }
            return name(band);
        }

        static Stream<String> all() {
            return Stream.iterate(0, band -> band <= BOUNDS_F.length, band -> band + 1)
                    .map(Band::name);
        }

        private static String name(int band) {
            String unit = "\u202f\u00b0F";
            if (band == 0) {
                return "under " + Numbers.plain(BOUNDS_F[0], 0) + unit;
            }
            return band == BOUNDS_F.length
                    ? "from " + Numbers.plain(BOUNDS_F[band - 1], 0) + unit
                    : Numbers.plain(BOUNDS_F[band - 1], 0) + " to " + Numbers.plain(BOUNDS_F[band] - 1.0, 0) + unit;
        }
    }
}
