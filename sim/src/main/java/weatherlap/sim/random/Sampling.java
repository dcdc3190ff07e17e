package weatherlap.sim.random;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.PermutationSampler;

/** How the draws of one cause are laid over (0, 1). */
public enum Sampling {
    /**
     * One draw in each of n equal strata, in random order: Latin hypercube sampling over all causes, since each cause has its own order.
     * What adds up over the causes is then almost free of sampling error.
     *
     * @see "McKay, Beckman, Conover 1979, Technometrics 21(2), 239-245; Stein 1987, Technometrics 29(2), 143-151"
     */
    STRATIFIED {
        @Override
        public double[] uniforms(int draws, UniformRandomProvider stream) {
            int[] order = PermutationSampler.natural(draws);
            PermutationSampler.shuffle(stream, order);
            double[] uniforms = new double[draws];
            for (int d = 0; d < draws; d++) {
                uniforms[d] = (order[d] + open(stream)) / draws;
            }
            return uniforms;
        }
    },
    /** Independent draws: plain Monte Carlo. */
    PLAIN {
        @Override
        public double[] uniforms(int draws, UniformRandomProvider stream) {
            double[] uniforms = new double[draws];
            for (int d = 0; d < draws; d++) {
                uniforms[d] = open(stream);
            }
            return uniforms;
        }
    };

    /** Draws in the open interval (0, 1). */
    public abstract double[] uniforms(int draws, UniformRandomProvider stream);

    /** From the middle of one of 2^52 equal cells, so never 0 or 1. */
    private static double open(UniformRandomProvider stream) {
        return ((stream.nextLong() >>> 12) + 0.5) * 0x1.0p-52;
    }
}
