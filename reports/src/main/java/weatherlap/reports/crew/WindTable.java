package weatherlap.reports.crew;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.page.TableView;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.geometry.OrderSize;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;
import weatherlap.sim.wind.DesignWind;
import weatherlap.sim.wind.RequiredRating;

/** The wind that each unit must be rated for, to order by. */
final class WindTable {
    private WindTable() {}

    /** Empty where the wind of the site is not known. */
    static Optional<TableView> of(HouseTakeoff takeoff, List<Window> windows, Optional<DesignWind> wind) {
        return wind.map(known -> of(takeoff, windows, known));
    }

    private static TableView of(HouseTakeoff takeoff, List<Window> windows, DesignWind wind) {
        TableView.Builder table = TableView.of("Wind rating to order: "
                        + Numbers.plain(wind.speedMph(), 0) + " mph, exposure " + wind.exposure()
                        + " (ASCE 7, low buildings). Glass for this wind is not ruled on: ask the unit's maker")
                .texts(
                        "No.",
                        "Window",
                        "Where",
                        "One unit",
                        "Inward",
                        "Outward",
                        "DP at least",
                        "Water test",
                        "Stated");
        windows.forEach(window -> table.row(row(takeoff, window, wind)));
        return table.build();
    }

    private static String[] row(HouseTakeoff takeoff, Window window, DesignWind wind) {
        Optional<RequiredRating> required = rating(takeoff, window.takeoff(), wind);
        if (required.isEmpty()) {
            String why = window.takeoff().geometry().order().fits()
                    ? "taller than the method for low buildings reaches"
                    : "none fits";
            return new String[] {window.mark(), window.name(), why, "", "", "", "", "", ""};
        }
        RequiredRating rating = required.get();
        return new String[] {
            window.mark(),
            window.name(),
            rating.nearCorner() ? "near a corner (zone 5)" : "field of the wall (zone 4)",
            Numbers.plain(rating.areaFt2(), 1) + " ft²",
            psf(rating.inwardPsf()),
            psf(rating.outwardPsf()),
            Integer.toString(rating.gradePsf()),
            Numbers.plain(rating.waterPsf(), 2) + " psf",
            stated(takeoff, window, rating)
        };
    }

    private static Optional<RequiredRating> rating(HouseTakeoff takeoff, OpeningTakeoff opening, DesignWind wind) {
        OrderSize order = opening.geometry().order();
        return order.fits()
                ? RequiredRating.of(
                        wind,
                        takeoff.house(),
                        opening.elevation(),
                        opening.opening(),
                        order.widthIn(),
                        order.heightIn(),
                        takeoff.work().assumptions().scenario())
                : Optional.empty();
    }

    private static String stated(HouseTakeoff takeoff, Window window, RequiredRating rating) {
        Assumptions assumptions = takeoff.work().assumptions();
        OptionalDouble stated = assumptions
                .unitPrice(window.method(), window.takeoff().opening().newOperation())
                .ratingPsf();
        if (stated.isEmpty()) {
            return "not known: ask";
        }
        String grade = "DP " + Numbers.plain(stated.getAsDouble(), 0);
        return stated.getAsDouble() < rating.gradePsf() ? "TOO LOW: " + grade : grade;
    }

    private static String psf(double value) {
        return Numbers.plain(value, 1) + " psf";
    }
}
