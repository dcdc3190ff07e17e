package weatherlap.analysis.words;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import weatherlap.sim.code.CodeCheck;
import weatherlap.sim.code.CodeRule;
import weatherlap.sim.code.Finding;

/** What a check of the residential code found, as a sentence without its section. */
public final class CodeFindings implements Finding {
    /** Where a replacement is relieved of R310.2; a flag still. */
    public static final String REPLACEMENT_RELIEF =
            "R310.2.5 relieves a replacement window that is the maker's largest standard size"
                    + " to fit the existing frame or rough opening, works as the old one did or opens as far, and comes with no"
                    + " change of occupancy. Places amend it: ask the local building official, who decides.";

    private CodeFindings() {}

    public static String of(CodeCheck check) {
        return check.told().to(new CodeFindings());
    }

    @Override
    public String escape(
            boolean sillKnown, List<Shortfall> shortfalls, double widthIn, double heightIn, double areaFt2) {
        String measures = text("net clear opening %.1f × %.1f in., %.2f ft²", widthIn, heightIn, areaFt2);
        if (!shortfalls.isEmpty()) {
            return "too small for escape: "
                    + shortfalls.stream().map(CodeFindings::shortfall).collect(Collectors.joining("; ")) + " ("
                    + measures + ")";
        }
        return "large enough for escape" + (sillKnown ? "" : " if its sill is low enough, which was not measured")
                + ": " + measures;
    }

    private static String shortfall(Shortfall by) {
        return switch (by.measure()) {
            case AREA_FT2 -> text("area %.2f of %.1f ft²", by.found(), by.limit());
            case HEIGHT_IN -> text("height %.1f of %.0f in.", by.found(), by.limit());
            case WIDTH_IN -> text("width %.1f of %.0f in.", by.found(), by.limit());
            case SILL_OVER_FLOOR_IN -> text("sill %.1f in. over the floor, %.0f allowed", by.found(), by.limit());
        };
    }

    @Override
    public String share(CodeRule rule, double areaFt2, double floorFt2, double neededShare) {
        return text(
                "%s %.2f ft², %.1f%% of the floor (%.0f%% asked)",
                rule == CodeRule.LIGHT ? "glass" : "openable area",
                areaFt2,
                100 * (areaFt2 / floorFt2),
                100 * neededShare);
    }

    @Override
    public String largeLowLite(double areaFt2, double bottomOverFloorIn) {
        return text(
                "a lite of %.1f ft², %.0f in. over the floor, needs safety glazing if people walk within 36 in. of it",
                areaFt2, bottomOverFloorIn);
    }

    @Override
    public String noLargeLowLite() {
        return "no lite is large and low enough to need safety glazing by this rule";
    }

    @Override
    public String roomGlazing(CodeRule rule, OptionalDouble overFloorIn, boolean low) {
        String where = rule == CodeRule.WET_GLAZING
                ? "within 60 in. of a tub or shower"
                : "within 36 in. of steps or a landing, or 60 in. of the foot of the stair";
        if (overFloorIn.isEmpty()) {
            return "needs safety glazing if it is low and " + where + "; its height was not measured";
        }
        return text("glass %.0f in. over the floor", overFloorIn.getAsDouble())
                + (low ? " needs safety glazing if it is " + where : "");
    }

    @Override
    public String fall(boolean low, double overFloorIn, double overGradeIn) {
        return text("opens %.0f in. over the floor, %.0f in. over grade", overFloorIn, overGradeIn)
                + (low ? ": it may let no 4 in. sphere pass, or needs a guard or opening limiter" : "");
    }

    @Override
    public String doesNotOpen() {
        return "does not open";
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
