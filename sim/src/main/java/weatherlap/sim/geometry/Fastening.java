package weatherlap.sim.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Screws along a nailing flange: ⌊(L − 2e)/s⌋ + 1 on a side of length L, from e short of one corner to e short of the other, about s apart
 * (as the unit maker asks; the holes stand every 4 to 6 in.). They are driven corners first, then the middles of the jambs, then the middles of
 * head and sill, with a look at the reveal before every other hole is filled (common practice, no source).
 *
 * @param widthIn of the unit
 * @param heightIn of the unit
 * @param spacingIn s
 * @param edgeIn e
 */
public record Fastening(double widthIn, double heightIn, double spacingIn, double edgeIn) {
    private static final Turn[] TURNS = Turn.values();
    private static final Side[] SIDES = Side.values();

    /** Side of a unit that a screw stands at. */
    public enum Side {
        LEFT,
        RIGHT,
        HEAD,
        SILL
    }

    /** When a screw is driven. */
    public enum Turn {
        CORNER,
        MIDDLE_OF_JAMB,
        MIDDLE_OF_HEAD_OR_SILL,
        THE_REST
    }

    /**
     * One screw.
     *
     * @param order from 1
     * @param xIn from the unit's left edge
     * @param yIn from the unit's lower edge
     */
    public record Fastener(int order, Turn turn, Side side, double xIn, double yIn) {}

    /** Screws along one side, 1 or more; a side too short for two takes one in its middle. */
    private int count(double sideIn) {
        return sideIn < 2 * edgeIn ? 1 : (int) Math.floor((sideIn - 2 * edgeIn) / spacingIn + 1e-9) + 1;
    }

    /** Of all screws. */
    public int count() {
        return 2 * (count(widthIn) + count(heightIn));
    }

    /** Every screw of a flanged unit, in the order they are driven. */
    public List<Fastener> screws() {
        List<Fastener> screws = new ArrayList<>();
        for (Turn turn : TURNS) {
            for (Side side : SIDES) {
                boolean upright = side == Side.LEFT || side == Side.RIGHT;
                double sideIn = upright ? heightIn : widthIn;
                int count = count(sideIn);
                for (int k = 0; k < count; k++) {
                    if (turn(upright, k, count) == turn) {
                        double along = count == 1 ? sideIn / 2 : edgeIn + k * (sideIn - 2 * edgeIn) / (count - 1);
                        double xIn = upright ? (side == Side.LEFT ? 0 : widthIn) : along;
                        double yIn = upright ? along : (side == Side.SILL ? 0 : heightIn);
                        screws.add(new Fastener(screws.size() + 1, turn, side, xIn, yIn));
                    }
                }
            }
        }
        return List.copyOf(screws);
    }

    private static Turn turn(boolean upright, int k, int count) {
        if (count > 1 && (k == 0 || k == count - 1)) {
            return Turn.CORNER;
        }
        if (k == count / 2) {
            return upright ? Turn.MIDDLE_OF_JAMB : Turn.MIDDLE_OF_HEAD_OR_SILL;
        }
        return Turn.THE_REST;
    }
}
