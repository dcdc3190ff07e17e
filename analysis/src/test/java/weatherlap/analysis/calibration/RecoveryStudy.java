package weatherlap.analysis.calibration;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.madeup.JobHabits;
import weatherlap.datasets.madeup.JobMaker;
import weatherlap.datasets.madeup.MadeShop;
import weatherlap.sim.assumptions.Assumptions;

/**
 * How often the intervals of a calibration hold the true rates, and how far the rates are off, over shops drawn from the tables' ranges
 * and the pace of the options, each with job records of its own. As a program it prints the table of {@code analysis/README.md}:
 *
 * <pre>java -cp … weatherlap.analysis.calibration.RecoveryStudy 200 [small]</pre>
 *
 * @param insideByStep share of the shops whose true rate lay in its interval, by step id in table order
 * @param insideByShop share of the rates of each shop that lay in theirs
 * @param levelByShop minutes of each shop's jobs by the fitted rates over those by its true ones, less 1
 * @param aside jobs and timings set aside, of all jobs
 */
record RecoveryStudy(
        Map<String, Double> insideByStep, List<Double> insideByShop, List<Double> levelByShop, double aside) {
    /** Between jobs of a shop, as {@link JobMaker} makes them. */
    static final double JOB_SPREAD = 0.15;

    RecoveryStudy {
        insideByStep = Collections.unmodifiableMap(new LinkedHashMap<>(insideByStep));
        insideByShop = List.copyOf(insideByShop);
        levelByShop = List.copyOf(levelByShop);
    }

    /**
     * How records are made.
     *
     * @param jobs of each shop
     * @param timedShare share of them in which the steps were timed
     */
    record Case(String name, int jobs, double timedShare, JobHabits habits) {
        static final List<Case> ALL = List.of(
                new Case("clean, totals alone", 120, 0, JobHabits.CAREFUL),
                new Case("20% timed", 120, 0.2, JobHabits.CAREFUL),
                new Case(
                        "one of three crews 35% slower",
                        120, 0.2, new JobHabits(Map.of("south", 1.35), 0, 0, 0, 0, 0, 1)),
                new Case("10% longer each year, 2 years", 240, 0.2, new JobHabits(Map.of(), 0.1, 0, 0, 0, 0, 1)),
                new Case("rounded to quarter hours", 120, 0.2, new JobHabits(Map.of(), 0, 0.25, 0, 0, 0, 1)),
                new Case("5% mistyped by ten", 120, 0.2, new JobHabits(Map.of(), 0, 0, 0.05, 0, 0, 1)),
                new Case("20% of the facts blank", 120, 0.2, new JobHabits(Map.of(), 0, 0, 0, 0.2, 0, 1)),
                new Case("10% logged by the clock", 120, 0.2, new JobHabits(Map.of(), 0, 0, 0, 0, 0.1, 1)));
    }

    /** Draws shops with seeds 1, 2, … and calibrates each. */
    static RecoveryStudy of(Assumptions tables, Case records, int shops) {
        CalibrationOptions options = CalibrationOptions.ORDINARY.withoutHeldOut();
        Map<String, Double> byStep = new LinkedHashMap<>();
        List<Double> byShop = new ArrayList<>();
        List<Double> levels = new ArrayList<>();
        double aside = 0;
        for (long seed = 1; seed <= shops; seed++) {
            MadeShop shop = MadeShop.drawn(tables, options.paceSpread(), seed);
            List<JobRecord> made =
                    new JobMaker(tables, shop, JOB_SPREAD, records.timedShare(), seed).jobs(records.jobs());
            Calibration calibration =
                    Calibrator.calibrate(tables, records.habits().applied(made), options);
            int inside = 0;
            for (StepFit fit : calibration.steps()) {
                boolean holds = fit.holds(shop.minutes().get(fit.step().id()));
                byStep.merge(fit.step().id(), holds ? 1.0 / shops : 0, Double::sum);
                inside += holds ? 1 : 0;
            }
            byShop.add((double) inside / calibration.steps().size());
            levels.add(level(JobTable.of(tables, made), shop, calibration));
            aside += (calibration.outliers().size() + calibration.grossTimings().size())
                    / (double) (shops * records.jobs());
        }
        return new RecoveryStudy(byStep, byShop, levels, aside);
    }

    private static double level(JobTable table, MadeShop shop, Calibration calibration) {
        double fitted = 0;
        double truth = 0;
        for (JobLine line : table.lines()) {
            for (int i = 0; i < line.steps().length; i++) {
                StepFit fit = calibration.steps().get(line.steps()[i]);
                fitted += line.weights()[i] * fit.fittedMinutes();
                truth += line.weights()[i] * shop.minutes().get(fit.step().id());
            }
        }
        return fitted / truth - 1;
    }

    /** Share of all rates of all shops that lay in their intervals. */
    double inside() {
        return mean(insideByShop);
    }

    /** Standard error of {@link #inside()}, from shop to shop. */
    double standardError() {
        return error(insideByShop);
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(v -> v).average().orElseThrow();
    }

    private static double error(List<Double> values) {
        double mean = mean(values);
        double squares = values.stream().mapToDouble(v -> Math.pow(v - mean, 2)).sum();
        return Math.sqrt(squares / (values.size() - 1) / values.size());
    }

    /** Mean over the shops of {@link #levelByShop}. */
    double bias() {
        return mean(levelByShop);
    }

    private String row(Case records) {
        return String.format(
                Locale.ROOT,
                "| %s | %d | %.3f | %.3f | %+.1f%% | %.1f%% | %.1f%% |%n",
                records.name(),
                records.jobs(),
                inside(),
                standardError(),
                100 * bias(),
                100 * error(levelByShop),
                100 * aside);
    }

    /** Arguments: how many shops; small for the shop of 13 steps, else the bundled rows. */
    public static void main(String[] arguments) {
        Assumptions tables = arguments.length > 1
                ? CalibrationFixtures.assumptions()
                : AssumptionTables.bundled().assumptions();
        System.out.print(
                "| records | jobs | inside | error | level | error | set aside |\n| --- | ---: | ---: | ---: | ---: | ---: | ---: |\n");
        Case.ALL.parallelStream()
                .forEach(records -> System.out.print(
                        of(tables, records, Integer.parseInt(arguments[0])).row(records)));
    }
}
