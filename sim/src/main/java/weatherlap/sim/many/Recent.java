package weatherlap.sim.many;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.function.Supplier;

/** The last few values of a function by their keys, for sweeps that come back to what they were at. Not for several threads at once. */
public final class Recent<K, V> {
    /** A sweep that exchanges a part of one point for that of another is at two points and between them. */
    private static final int KEPT = 4;

    private final Deque<Entry<K, V>> entries = new ArrayDeque<>(KEPT + 1);

    private record Entry<K, V>(K key, V value) {}

    public V at(K key, Supplier<V> made) {
        for (Iterator<Entry<K, V>> known = entries.iterator(); known.hasNext(); ) {
            Entry<K, V> entry = known.next();
            if (entry.key.equals(key)) {
                known.remove();
                entries.addFirst(entry);
                return entry.value;
            }
        }
        V value = made.get();
        entries.addFirst(new Entry<>(key, value));
        if (entries.size() > KEPT) {
            entries.removeLast();
        }
        return value;
    }
}
