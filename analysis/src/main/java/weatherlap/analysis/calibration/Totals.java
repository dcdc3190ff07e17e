package weatherlap.analysis.calibration;

import java.util.List;
import java.util.stream.Stream;
import weatherlap.analysis.regression.Bend;
import weatherlap.analysis.regression.Equation;
import weatherlap.analysis.regression.HuberFit;
import weatherlap.analysis.regression.Triangle;

/**
 * Totals of jobs, less what was timed, as linear equations about a guess (β⁰, a⁰, δ⁰), each over what the guess foresees of it:
 *
 * <pre>Σ_s w_s β_s / f + a_c + δ t = y / (f g) + a⁰_c + δ⁰ t      f = Σ_s w_s β⁰_s,  g = exp(a⁰_c + δ⁰ t)</pre>
 *
 * @param jobs places in the table
 * @param halfLife years after which a job counts half
 */
record Totals(JobTable table, Unknowns unknowns, List<Integer> jobs, double halfLife) implements HuberFit.Problem {
    /** No guess foresees less than this share of what the tables expect. */
    private static final double LEAST_FORESEEN = 1e-3;

    @Override
    public Stream<Equation> about(double[] guess) {
        return jobs.stream().map(job -> equation(table.lines().get(job), guess));
    }

    private Equation equation(JobLine line, double[] guess) {
        int[] steps = new int[line.steps().length];
        double[] weights = new double[steps.length];
        double sum = 0;
        int open = 0;
        for (int i = 0; i < steps.length; i++) {
            if (!line.wasTimed(i)) {
                steps[open] = line.steps()[i];
                weights[open] = line.weights()[i];
                sum += weights[open] * guess[steps[open]];
                open++;
            }
        }
        double foreseen = Math.max(LEAST_FORESEEN * line.untimedMinutes(), sum);
        for (int i = 0; i < open; i++) {
            weights[i] /= foreseen;
        }
        double pace = unknowns.pace(line, guess);
        double rest = line.takenMinutes() - line.timedMinutes();
        return new Equation(
                unknowns.columns(line, steps, open),
                unknowns.weights(line, weights, open),
                rest / (foreseen * Math.exp(pace)) + pace,
                recency(line, halfLife));
    }

    /** How many jobs of today a job counts for. */
    static double recency(JobLine line, double halfLife) {
        return Math.pow(2, line.years() / halfLife);
    }

    /** What each job bends, at a guess that the equations have settled on. */
    void addTo(Bend bend, double[] guess, double noise) {
        for (int job : jobs) {
            JobLine line = table.lines().get(job);
            Equation equation = equation(line, guess);
            int rates = line.steps().length - line.timings();
            double variance = noise * noise + line.spread() * line.spread();
            bend.add(equation.columns(), equation.weights(), rates, equation.count() / variance);
        }
    }

    /** The equations as a triangle; a job whose record leaves things out pulls less than one whose noise is known. */
    Triangle triangle(double[] guess, double noise) {
        return Triangle.of(
                unknowns.count(), jobs.stream().map(table.lines()::get).map(line -> {
                    double own = line.spread() / noise;
                    return equation(line, guess).pulling(1 / (1 + own * own));
                }));
    }
}
