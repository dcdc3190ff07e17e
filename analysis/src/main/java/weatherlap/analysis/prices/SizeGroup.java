package weatherlap.analysis.prices;

/**
 * Windows told apart by their united inches, width and height of the frame together; houses by how many windows they have. The steps are
 * common practice, no source.
 *
 * @param order place among the others
 */
public record SizeGroup(int order, String label) implements Comparable<SizeGroup> {
    private static final int[] UNITED_INCHES = {60, 80, 100, 120};
    private static final int[] WINDOWS = {5, 10, 15, 20};

    static SizeGroup ofWindow(double widthIn, double heightIn) {
        return of(widthIn + heightIn, UNITED_INCHES, "united inches");
    }

    static SizeGroup ofHouse(int windows) {
        return of(windows, WINDOWS, "windows");
    }

    private static SizeGroup of(double size, int[] steps, String unit) {
        int step = 0;
        while (step < steps.length && size > steps[step]) {
            step++;
        }
        String label = step == 0
                ? "up to " + steps[0]
                : step == steps.length ? "over " + steps[step - 1] : "over " + steps[step - 1] + " to " + steps[step];
        return new SizeGroup(step, label + " " + unit);
    }

    @Override
    public int compareTo(SizeGroup other) {
        return Integer.compare(order, other.order);
    }
}
