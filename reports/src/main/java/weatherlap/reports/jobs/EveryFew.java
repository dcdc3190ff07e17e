package weatherlap.reports.jobs;

import java.util.Iterator;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import weatherlap.sim.house.House;

/** Houses as they come, every few of them kept in mind: what is asked of those alone need not wait until their order is known again. */
final class EveryFew implements Iterator<House> {
    private final Iterator<House> houses;
    private final int step;
    private final Set<String> kept = ConcurrentHashMap.newKeySet();
    private int next;

    /** @param step 1 or more: each so many'th, the first among them */
    EveryFew(Iterator<House> houses, int step) {
        this.houses = houses;
        this.step = step;
    }

    @Override
    public boolean hasNext() {
        return houses.hasNext();
    }

    @Override
    public House next() {
        House house = houses.next();
        if (next++ % step == 0) {
            kept.add(house.id());
        }
        return house;
    }

    /** Whether a house that came is one of them; on any thread. */
    boolean has(House house) {
        return kept.contains(house.id());
    }
}
