package weatherlap.reports.jobs;

import weatherlap.analysis.drivers.Factor;
import weatherlap.analysis.drivers.Factor.Span;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.sim.assumptions.Assumptions;

/** How far a number may go before it contradicts another. */
final class SoundSpan {
    private static final int HALVINGS = 40;

    private SoundSpan() {}

    /** As far as the user says, or else as the value goes with all others. */
    static Span of(Factor factor, Span asked, boolean lowNamed, boolean highNamed, Assumptions base) {
        double likely =
                Math.max(asked.low(), Math.min(asked.high(), factor.range().likely()));
        return new Span(
                lowNamed ? asked.low() : towards(asked.low(), likely, factor, base),
                highNamed ? asked.high() : towards(asked.high(), likely, factor, base));
    }

    /** The end, or as far from the likely value towards it as nothing contradicts. */
    private static double towards(double end, double likely, Factor factor, Assumptions base) {
        double sound = likely;
        double tried = end;
        for (int i = 0; i < HALVINGS; i++) {
            if (AssumptionTables.contradictions(factor.assume(base, tried)).isEmpty()) {
                sound = tried;
                if (i == 0) {
                    return end;
                }
            } else {
                end = tried;
            }
            tried = (sound + end) / 2;
        }
        return sound;
    }
}
