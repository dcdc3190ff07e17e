package weatherlap.sim.random;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Random streams by name. A stream depends on the seed and on its own names alone, so that a house's draws do not change with other
 * houses, threads or chunks, and a new purpose never shifts an old one.
 *
 * @param seed of the run
 */
public record Streams(long seed) {
    /** The stream of a cause shared by every house, such as the minutes of a labour step. */
    public UniformRandomProvider world(String purpose) {
        return create(purpose, "", "");
    }

    /** The stream of a cause shared by the openings of a house. */
    public UniformRandomProvider house(String purpose, String houseId) {
        return create(purpose, houseId, "");
    }

    /** The stream of a cause of one opening. */
    public UniformRandomProvider opening(String purpose, String houseId, String openingId) {
        return create(purpose, houseId, openingId);
    }

    private UniformRandomProvider create(String purpose, String houseId, String openingId) {
        long key = absorb(absorb(absorb(mix(seed), purpose), houseId), openingId);
        return RandomSource.SPLIT_MIX_64.create(key);
    }

    /** Takes a name into the key; the length goes in too, so that ("ab", "c") and ("a", "bc") differ. */
    private static long absorb(long key, String name) {
        long k = mix(key + name.length());
        for (int i = 0; i < name.length(); i++) {
            k = mix(k ^ name.charAt(i));
        }
        return k;
    }

    /**
     * A bijection of 64-bit words whose output bits each depend on every input bit.
     *
     * @see "Stafford 2011, variant 13 of the MurmurHash3 finalizer, as used by SplittableRandom (Steele, Lea, Flood 2014)"
     */
    private static long mix(long word) {
        long z = word + 0x9e3779b97f4a7c15L;
        z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }
}
