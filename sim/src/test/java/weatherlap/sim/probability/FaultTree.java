package weatherlap.sim.probability;

import java.util.Arrays;
import java.util.List;
import weatherlap.sim.Check;

/** A failure, as it follows from others. Events of the same name are the same event, wherever they stand. */
public sealed interface FaultTree {
    /**
     * A basic event, independent of every other name.
     *
     * @param probability 0 to 1
     */
    record Event(String name, double probability) implements FaultTree {
        public Event {
            Check.text("event name", name);
            Check.fraction("probability of " + name, probability);
        }
    }

    /** All inputs fail; true for none. */
    record And(List<FaultTree> inputs) implements FaultTree {
        public And {
            inputs = List.copyOf(inputs);
        }
    }

    /** Any input fails; false for none. */
    record Or(List<FaultTree> inputs) implements FaultTree {
        public Or {
            inputs = List.copyOf(inputs);
        }
    }

    /** At least {@code count} inputs fail, 0 ≤ count ≤ inputs. */
    record AtLeast(int count, List<FaultTree> inputs) implements FaultTree {
        public AtLeast {
            inputs = List.copyOf(inputs);
            Check.within("count of an at-least gate", count, 0, inputs.size());
        }
    }

    static FaultTree event(String name, double probability) {
        return new Event(name, probability);
    }

    static FaultTree and(FaultTree... inputs) {
        return new And(Arrays.asList(inputs));
    }

    static FaultTree or(FaultTree... inputs) {
        return new Or(Arrays.asList(inputs));
    }

    static FaultTree atLeast(int count, FaultTree... inputs) {
        return new AtLeast(count, Arrays.asList(inputs));
    }
}
