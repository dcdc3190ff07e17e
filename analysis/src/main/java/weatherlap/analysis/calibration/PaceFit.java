package weatherlap.analysis.calibration;

import java.util.Arrays;
import java.util.stream.IntStream;
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

    /** Takes paces against the ordinary crew, which the rates become those of. */
    static PaceFit of(RateRegression fit, Unknowns unknowns, double[] jobsOfCrews) {
        double[] values = fit.coefficients().toArray();
        if (unknowns.crews() == 0) {
            return new PaceFit(unknowns, values, fit.covariance(), 0, fit.noise(), fit.degrees());
        }
        double[] paces = Arrays.copyOfRange(values, unknowns.crew(0), unknowns.crew(unknowns.crews()));
        double[] shares = OrdinaryCrew.shares(paces, jobsOfCrews);
        double ordinary = IntStream.range(0, paces.length)
                .mapToDouble(k -> shares[k] * paces[k])
                .sum();
        RealMatrix change = MatrixUtils.createRealIdentityMatrix(values.length);
        double factor = Math.exp(ordinary);
        for (int s = 0; s < unknowns.steps(); s++) {
            change.setEntry(s, s, factor);
            for (int k = 0; k < shares.length; k++) {
                change.setEntry(s, unknowns.crew(k), factor * values[s] * shares[k]);
            }
            values[s] *= factor;
        }
        for (int k = 0; k < shares.length; k++) {
            values[unknowns.crew(k)] -= ordinary;
            for (int other = 0; other < shares.length; other++) {
                change.addToEntry(unknowns.crew(k), unknowns.crew(other), -shares[other]);
            }
        }
        RealMatrix covariance = change.multiply(fit.covariance()).multiply(change.transpose());
        return new PaceFit(unknowns, values, covariance, -ordinary, fit.noise(), fit.degrees());
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
