package weatherlap.reports.crew;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Inches;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.page.TableView;
import weatherlap.sim.geometry.OpeningGeometry;
import weatherlap.sim.geometry.OrderSize;
import weatherlap.sim.geometry.Squareness;
import weatherlap.sim.geometry.UnitWeight;
import weatherlap.sim.method.Method;

/** Sizes to order, out-of-square notes, weights. */
final class SizeTable {
    private SizeTable() {}

    /** @param method of all the windows */
    static TableView of(List<Window> windows, Method method, boolean mixedHouse) {
        boolean inRoughOpening = !method.keepsOldFrame();
        TableView.Builder table = TableView.of((mixedHouse ? InWords.capital(method.label()) + ": sizes" : "Sizes")
                        + " to order, width × height"
                        + (inRoughOpening ? "; check each against the rough opening once the old unit is out" : ""))
                .texts(
                        "No.",
                        "Window",
                        "New unit",
                        "Order each",
                        inRoughOpening ? "Rough opening" : "Inside the old frame",
                        "Tape readings, largest less smallest",
                        "Weight of a lift",
                        "Lift");
        windows.forEach(window -> table.row(row(window)));
        return table.build();
    }

    private static String[] row(Window window) {
        OpeningGeometry geometry = window.takeoff().geometry();
        OrderSize order = geometry.order();
        boolean fits = order.fits();
        return new String[] {
            window.mark(),
            window.name(),
            unit(window, order),
            fits ? size(order.widthIn(), order.heightIn()) + overall(order) : "none fits",
            size(order.openingWidthIn(), order.openingHeightIn()),
            readings(window, order.squareness()),
            fits ? weight(geometry.weight()) : "",
            fits ? lift(geometry.weight().lift()) : ""
        };
    }

    /** 2 × double hung; color white. */
    private static String unit(Window window, OrderSize order) {
        String job = JobFacts.of(window);
        return (order.units() > 1 ? order.units() + " × " : "")
                + InWords.of(window.takeoff().opening().newOperation())
                + (job.isEmpty() ? "" : "; " + job);
    }

    static String size(double widthIn, double heightIn) {
        return Inches.text(widthIn) + " × " + Inches.text(heightIn);
    }

    private static String overall(OrderSize order) {
        return order.units() > 1 ? ", " + Inches.text(order.overallWidthIn()) + " over all" : "";
    }

    private static String readings(Window window, Squareness square) {
        if (window.takeoff().opening().readings().isEmpty()) {
            return "not taken: measure before ordering";
        }
        List<String> apart = new ArrayList<>();
        apart.add("widths " + Inches.text(square.widthSpreadIn()));
        apart.add("heights " + Inches.text(square.heightSpreadIn()));
        square.diagonalDifferenceIn().ifPresent(in -> apart.add("diagonals " + Inches.text(in)));
        String lean = square.outOfPlumbIn() > 0 ? ", jambs lean " + Inches.text(square.outOfPlumbIn()) : "";
        return (square.withinTolerance() ? "square enough: " : "OUT OF SQUARE: ") + String.join(", ", apart) + lean;
    }

    private static String weight(UnitWeight weight) {
        return (weight.pieces() > 1 ? weight.pieces() + " × " : "") + Numbers.plain(weight.totalLb(), 0) + " lb";
    }

    private static String lift(UnitWeight.Lift lift) {
        return switch (lift) {
            case ONE_PERSON -> "one person";
            case TWO_PEOPLE -> "two people";
            case MORE_OR_A_MACHINE -> "three or a machine";
        };
    }
}
