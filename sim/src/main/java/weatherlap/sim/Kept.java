package weatherlap.sim;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What was worked out and may be asked for again, the first so many of it. Safe to share between threads.
 *
 * @param <K> what it is of, compared by equals
 */
public final class Kept<K, V> {
    private final Map<K, V> known = new ConcurrentHashMap<>();
    private final int most;

    /** @param most things kept; those that come later are worked out each time */
    public Kept(int most) {
        this.most = most;
    }

    /** Null where it is not kept: who asks makes it, and has it {@link #keep kept}. */
    public V get(K key) {
        return known.get(key);
    }

    /** Keeps it where there is room, and gives it back. */
    public V keep(K key, V value) {
        if (known.size() < most) {
            known.put(key, value);
        }
        return value;
    }
}
