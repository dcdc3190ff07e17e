package weatherlap.charts.report;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;

/** Moves labels on a line apart so that none covers another. */
final class Spacing {

    private Spacing() {}

    /**
     * Places for labels, as near to where they are wanted as their order and their sizes allow.
     *
     * @param wanted middle of each label, px
     * @param sizes size of each label along the line, px
     * @param low start of the line, px; high: its end. A line too short for all is overrun at its end.
     * @return the middles, in the order of the arguments
     */
    static double[] apart(double[] wanted, double[] sizes, double low, double high) {
        Integer[] order = IntStream.range(0, wanted.length).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparingDouble(i -> wanted[i]));
        Deque<Run> runs = new ArrayDeque<>();
        for (int i : order) {
            Run run = new Run(List.of(i), sizes[i], wanted[i] - sizes[i] / 2).within(low, high);
            while (!runs.isEmpty() && runs.peekLast().end() > run.start()) {
                run = runs.pollLast().joined(run).within(low, high);
            }
            runs.addLast(run);
        }
        double[] placed = new double[wanted.length];
        for (Run run : runs) {
            double start = run.start();
            for (int i : run.labels()) {
                placed[i] = start + sizes[i] / 2;
                start += sizes[i];
            }
        }
        return placed;
    }

    /** Labels that touch, from where the first starts. */
    private record Run(List<Integer> labels, double size, double start) {
        double end() {
            return start + size;
        }

        Run within(double low, double high) {
            return new Run(labels, size, Math.max(low, Math.min(start, high - size)));
        }

        /** With another after it, at the mean of where their labels would start if they were alone. */
        Run joined(Run next) {
            List<Integer> all = new ArrayList<>(labels);
            all.addAll(next.labels);
            double mean = (start * labels.size() + (next.start - size) * next.labels.size()) / all.size();
            return new Run(all, size + next.size, mean);
        }
    }
}
