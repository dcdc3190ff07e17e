package weatherlap.sim.geometry;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Operation;

/**
 * Glass and clear opening of a unit as trees, down to tape readings and table rows. The lites of an opening are equal, and so are its
 * units, so that one of them times their number is all.
 */
public final class Explanation {
    private static final Amount FT2_PER_IN2 =
            Amount.given("square feet in a square inch", Units.squareInchesToSquareFeet(1), "ft²/in²");

    private final Scenario scenario;
    private final Opening opening;
    private final Glass glass;
    private final ClearOpening clear;
    private final Sightline row;
    private final Operation operation;
    private final String unit;
    private final Amount unitWidth;
    private final Amount unitHeight;

    private Explanation(
            OpeningGeometry geometry, Assumptions assumptions, Glass glass, ClearOpening clear, boolean existing) {
        this.scenario = assumptions.scenario();
        this.opening = geometry.opening();
        this.glass = glass;
        this.clear = clear;
        this.unit = existing ? "old unit" : "new unit";
        this.operation = existing ? opening.operation() : opening.newOperation();
        Sightline old = assumptions.existingSightline(opening);
        this.row = existing ? old : geometry.order().sightline();
        if (existing) {
            this.unitWidth = OrderAmounts.cell(
                    Amount.given("frame width", opening.frame().widthIn(), "in."), opening.units(), scenario);
            this.unitHeight = Amount.given("frame height", opening.frame().heightIn(), "in.");
        } else {
            OrderAmounts order = OrderAmounts.of(
                    opening,
                    geometry.method(),
                    row,
                    assumptions,
                    geometry.order().squareness());
            this.unitWidth = order.width();
            this.unitHeight = order.height();
        }
    }

    /** Of the unit that stands. */
    public static Explanation existing(OpeningGeometry geometry, Assumptions assumptions) {
        return new Explanation(geometry, assumptions, geometry.existing(), geometry.existingClear(), true);
    }

    /** Of the unit that the method puts in. */
    public static Explanation replaced(OpeningGeometry geometry, Assumptions assumptions) {
        return new Explanation(geometry, assumptions, geometry.replaced(), geometry.clear(), false);
    }

    /** Glass that one method loses against the unit that stands, ft². */
    public static Amount glassLost(OpeningGeometry geometry, Assumptions assumptions) {
        return Amount.difference(
                "glass lost, " + geometry.method().label(),
                "ft²",
                existing(geometry, assumptions).glass(),
                replaced(geometry, assumptions).glass());
    }

    /** Visible glass of the whole opening, ft². */
    public Amount glass() {
        if (glass.lites().isEmpty()) {
            return Amount.given("visible glass, " + unit + ": it is smaller than its rails", 0, "ft²");
        }
        return Amount.product(
                "visible glass, " + unit,
                "ft²",
                List.of(
                        liteWidth(),
                        liteHeight(),
                        Amount.given("lites", glass.lites().size(), ""),
                        FT2_PER_IN2));
    }

    /** Net clear opening of one unit, ft². */
    public Amount clearArea() {
        if (!clear.opens()) {
            return Amount.given("net clear opening: the unit does not open", 0, "ft²");
        }
        return Amount.product("net clear opening", "ft²", List.of(clearWidth(), clearHeight(), FT2_PER_IN2));
    }

    /** Net clear width of one unit that opens, in. */
    Amount clearWidth() {
        return switch (operation) {
            case DOUBLE_HUNG, SINGLE_HUNG, AWNING, PICTURE -> insideWidth("clear width: inside of the frame");
            case CASEMENT ->
                Amount.difference(
                        "clear width",
                        "in.",
                        insideWidth("inside of the frame"),
                        scenario.amount(Scalar.HINGE_LOSS_IN));
            case SLIDER ->
                Amount.difference(
                        "clear width",
                        "in.",
                        Amount.sum("sash pushed open", "in.", List.of(liteWidth(), part("stile", row.stileIn()))),
                        scenario.amount(Scalar.TRAVEL_LOSS_IN));
        };
    }

    /** Net clear height of one unit that opens, in. */
    Amount clearHeight() {
        return switch (operation) {
            case DOUBLE_HUNG, SINGLE_HUNG ->
                Amount.difference(
                        "clear height",
                        "in.",
                        Amount.sum("lower sash raised", "in.", List.of(liteHeight(), thinnerRail())),
                        scenario.amount(Scalar.TRAVEL_LOSS_IN));
            case AWNING ->
                Amount.formula(
                        "clear height: min(H, 2 H sin(angle/2))",
                        clear.heightIn(),
                        "in.",
                        List.of(insideHeight("inside of the frame"), scenario.amount(Scalar.AWNING_OPEN_DEG)));
            case SLIDER, CASEMENT, PICTURE -> insideHeight("clear height: inside of the frame");
        };
    }

    private Amount liteWidth() {
        List<Amount> hidden = new ArrayList<>(jambs());
        hidden.add(part("left stile", row.stileIn()));
        hidden.add(part("right stile", row.stileIn()));
        boolean sideBySide = Lites.count(operation) == 2 && !Lites.stacked(operation);
        if (sideBySide) {
            hidden.add(part("meeting stile", row.meetingRailIn()));
        }
        return shared("width of a lite", unitWidth, hidden, sideBySide);
    }

    private Amount liteHeight() {
        List<Amount> hidden = new ArrayList<>(headAndSill());
        hidden.add(part("top rail", row.topRailIn()));
        hidden.add(part("bottom rail", row.bottomRailIn()));
        if (Lites.stacked(operation)) {
            hidden.add(part("meeting rail", row.meetingRailIn()));
        }
        return shared("height of a lite", unitHeight, hidden, Lites.stacked(operation));
    }

    private static Amount shared(String name, Amount unit, List<Amount> hidden, boolean byTwo) {
        Amount shown = Amount.difference(
                byTwo ? "shown by both lites" : name, "in.", unit, Amount.sum("hidden", "in.", hidden));
        return byTwo ? Amount.product(name, "in.", List.of(shown, Amount.given("share of one lite", 0.5, ""))) : shown;
    }

    private Amount insideWidth(String name) {
        return Amount.difference(name, "in.", unitWidth, Amount.sum("jambs", "in.", jambs()));
    }

    private Amount insideHeight(String name) {
        return Amount.difference(name, "in.", unitHeight, Amount.sum("head and sill", "in.", headAndSill()));
    }

    private List<Amount> jambs() {
        return List.of(part("left jamb", row.jambIn()), part("right jamb", row.jambIn()));
    }

    private List<Amount> headAndSill() {
        return List.of(part("head", row.headIn()), part("sill", row.sillIn()));
    }

    private Amount thinnerRail() {
        return row.topRailIn() <= row.bottomRailIn()
                ? part("top rail", row.topRailIn())
                : part("bottom rail", row.bottomRailIn());
    }

    private Amount part(String name, double valueIn) {
        return Amount.given(name, valueIn, "in.", row.origin());
    }
}
