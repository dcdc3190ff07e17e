package weatherlap.charts.kit;

/** The same quantity for both methods. */
public record Pair<T>(T fullFlange, T insert) {

    public T of(MethodStyle method) {
        return switch (method) {
            case FULL_FLANGE -> fullFlange;
            case INSERT -> insert;
        };
    }
}
