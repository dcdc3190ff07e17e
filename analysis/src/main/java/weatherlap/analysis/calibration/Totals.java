package weatherlap.analysis.calibration;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
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
    public List<Equation> about(double[] guess) {
        return jobs.stream().map(job -> equation(table.lines().get(job), guess)).toList();
    }

    private Equation equation(JobLine line, double[] guess) {
        int[] open = IntStream.range(0, line.steps().length)
                .filter(i -> !line.wasTimed(i))
                .toArray();
        double foreseen = LEAST_FORESEEN * line.untimedMinutes();
        double sum = 0;
        for (int i : open) {
            sum += line.weights()[i] * guess[line.steps()[i]];
        }
        foreseen = Math.max(foreseen, sum);
        double[] weights = new double[open.length];
        for (int i = 0; i < open.length; i++) {
            weights[i] = line.weights()[open[i]] / foreseen;
        }
        double pace = unknowns.pace(line, guess);
        double rest = line.takenMinutes() - line.timedMinutes();
        return new Equation(
                unknowns.columns(
                        line, Arrays.stream(open).map(i -> line.steps()[i]).toArray()),
                unknowns.weights(line, weights),
                rest / (foreseen * Math.exp(pace)) + pace,
                recency(line, halfLife));
    }

    /** How many jobs of today a job counts for. */
    static double recency(JobLine line, double halfLife) {
        return Math.pow(2, line.years() / halfLife);
    }

    /** The equations as a triangle; a job whose record leaves things out pulls less than one whose noise is known. */
    Triangle triangle(double[] guess, double noise) {
        List<Equation> equations = about(guess);
        return Triangle.of(unknowns.count(), IntStream.range(0, jobs.size()).mapToObj(i -> {
            double own = table.lines().get(jobs.get(i)).spread() / noise;
            return equations.get(i).pulling(1 / (1 + own * own));
        }));
    }
}
