package weatherlap.analysis.calibration;

import java.util.Arrays;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import weatherlap.analysis.regression.OrdinaryCrew;
import weatherlap.analysis.regression.RateRegression;

/**
 * Rates of an ordinary crew on the day of the last job, the paces of the crews against it and the drift.
 *
 * @param values of the unknowns
 * @param covariance of them
 * @param otherCrews log pace of a crew that has none of its own
 * @param noise coefficient of variation of a job about its fitted minutes
 * @param degrees of freedom of the noise
 */
record PaceFit(
        Unknowns unknowns, double[] values, RealMatrix covariance, double otherCrews, double noise, double degrees) {

    /**
     * Takes paces against the ordinary crew, and rates from the middle of the jobs to those of that crew on the last day: e^c times as
     * much, c a sum of paces and drift. Of such a product the mean is β e^c (1 + Var(c)/2 + Cov(β, c)/β) to second order.
     *
     * @param values means of the unknowns
     */
    static PaceFit of(RateRegression fit, double[] values, Unknowns unknowns, double[] jobsOfCrews) {
        double[] shares = unknowns.crews() == 0
                ? new double[0]
                : OrdinaryCrew.shares(
                        Arrays.copyOfRange(values, unknowns.crew(0), unknowns.crew(unknowns.crews())), jobsOfCrews);
        RealVector part = new ArrayRealVector(values.length);
        double ordinary = 0;
        for (int k = 0; k < shares.length; k++) {
            part.setEntry(unknowns.crew(k), shares[k]);
            ordinary += shares[k] * values[unknowns.crew(k)];
        }
        if (unknowns.drifts()) {
            part.setEntry(unknowns.drift(), -unknowns.day());
        }
        double factor = Math.exp(part.dotProduct(new ArrayRealVector(values, false)));
        RealVector covariances = fit.covariance().operate(part);
        double half = part.dotProduct(covariances) / 2;
        RealMatrix change = MatrixUtils.createRealIdentityMatrix(values.length);
        double[] moved = values.clone();
        for (int s = 0; s < unknowns.steps(); s++) {
            change.setRowVector(s, part.mapMultiply(factor * values[s]));
            change.setEntry(s, s, factor);
            moved[s] = Math.max(0, factor * (values[s] * (1 + half) + covariances.getEntry(s)));
        }
        for (int k = 0; k < shares.length; k++) {
            moved[unknowns.crew(k)] -= ordinary;
            for (int other = 0; other < shares.length; other++) {
                change.addToEntry(unknowns.crew(k), unknowns.crew(other), -shares[other]);
            }
        }
        RealMatrix covariance = change.multiply(fit.covariance()).multiply(change.transpose());
        return new PaceFit(unknowns.onTheLastDay(), moved, covariance, -ordinary, fit.noise(), fit.degrees());
    }

    RealVector rates() {
        return new ArrayRealVector(values, 0, unknowns.steps());
    }

    double standardError(int unknown) {
        return Math.sqrt(Math.max(0, covariance.getEntry(unknown, unknown)));
    }

    /** Log of the pace at which a job is done. */
    double pace(JobLine line) {
        return unknowns.pace(line, values) + (line.crew() < 0 ? otherCrews : 0);
    }

    /** Person-hours of a job by its crew on its day. */
    double hours(JobLine line) {
        return line.hours(rates()) * Math.exp(pace(line));
    }

    /** Of these, the hours of steps that were not timed. */
    double restHours(JobLine line) {
        return line.restHours(rates()) * Math.exp(pace(line));
    }

    /** What is not known of the fitted hours of a job, as a share of them. */
    double uncertainty(JobLine line) {
        double[] share = new double[values.length];
        double minutes = 0;
        for (int i = 0; i < line.steps().length; i++) {
            share[line.steps()[i]] = line.weights()[i];
            minutes += line.weights()[i] * values[line.steps()[i]];
        }
        for (int s = 0; s < unknowns.steps(); s++) {
            share[s] /= minutes;
        }
        if (line.crew() >= 0) {
            share[unknowns.crew(line.crew())] = 1;
        }
        if (unknowns.drifts()) {
            share[unknowns.drift()] = line.years();
        }
        RealVector all = new ArrayRealVector(share);
        return Math.sqrt(Math.max(0, all.dotProduct(covariance.operate(all))));
    }
}
