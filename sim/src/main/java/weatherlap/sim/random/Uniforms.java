package weatherlap.sim.random;

import java.util.List;

/**
 * Uniforms by the name of their cause: a column of draws for each, from a stream of its own, so that none shifts another.
 *
 * @param draws a column, 1 or more
 * @param leading causes that matter most, in the order in which they are given the best dimensions; by the name asked for
 */
public record Uniforms(Sampling sampling, int draws, Streams streams, List<String> leading) {
    public Uniforms {
        leading = List.copyOf(leading);
    }

    /** Of a cause that every house shares, such as the minutes of a labour step. */
    public double[] world(String cause) {
        return sampling.uniforms(draws, streams.world(cause), leading.indexOf(cause));
    }

    /** Of a cause that the openings of a house share. */
    public double[] house(String cause, String houseId) {
        return sampling.uniforms(draws, streams.house(cause, houseId), leading.indexOf(cause));
    }

    /** Of a cause of one opening. */
    public double[] opening(String cause, String houseId, String openingId) {
        return sampling.uniforms(draws, streams.opening(cause, houseId, openingId), Sampling.NO_DIMENSION);
    }
}
