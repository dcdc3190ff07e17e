package weatherlap.sim.laps;

/** What is believed of one fault. */
final class Belief {
    /**
     * Probability that a fault stands at an opening, after the evidence.
     *
     * @param probability over all qualities
     * @param byStratum given the stratum of the quality of the house (or crew)
     */
    @SuppressWarnings("ArrayRecordComponent") // column of the hot loop
    record Standing(double probability, double[] byStratum) {}

    private final double prior;
    private final SharedQuality quality;
    private final Standing unseen;
    /** By the number of what is seen there, when it was first asked for; the same whoever asks first. */
    private final Standing[] seen = new Standing[Sights.COUNT];

    /**
     * @param prior probability before anyone looked: of the house for an existing fault, of the crew for a new one
     * @param quality after the evidence
     * @param strata of it, as {@link QualityStrata} has them
     */
    Belief(double prior, SharedQuality quality, double[] strata) {
        this.prior = prior;
        this.quality = quality;
        unseen = new Standing(quality.mean(), strata);
    }

    double prior() {
        return prior;
    }

    SharedQuality quality() {
        return quality;
    }

    /** At an opening where something is seen, or nothing that tells of the fault. */
    Standing standing(Sights sights, int sight) {
        if (!sights.tells(sight)) {
            return unseen;
        }
        if (seen[sight] == null) {
            seen[sight] = updated(sights.likelihood(sight));
        }
        return seen[sight];
    }

    private Standing updated(Likelihood sight) {
        double[] shared = unseen.byStratum();
        double[] own = new double[shared.length];
        double sum = 0;
        for (int i = 0; i < own.length; i++) {
            own[i] = sight.update(shared[i]);
            sum += own[i];
        }
        return new Standing(Math.min(1, sum / own.length), own);
    }
}
