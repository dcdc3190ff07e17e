package weatherlap.analysis.exposure;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import weatherlap.sim.rain.DrivingRainRose;
import weatherlap.sim.rain.DrivingRainRose.Row;

/**
 * Where ISO 15927-3 and ASHRAE 160 disagree on which walls are wetter, in words. A bearing counts as disputed when its two places differ
 * by a tenth of the bearings or more (judgement).
 */
public final class RankWords {
    private static final double DISPUTED = 0.1;
    private static final int NAMED = 3;

    private RankWords() {}

    /** One sentence or two. */
    public static String of(DrivingRainRose rose) {
        Row iso = first(rose, Comparator.comparingDouble(Row::isoRank));
        Row ashrae = first(rose, Comparator.comparingDouble(Row::ashraeRank));
        String top = iso.bearingDeg() == ashrae.bearingDeg()
                ? text("Both hold walls that face %.0f degrees the wettest", iso.bearingDeg())
                : text(
                        "ISO 15927-3 holds walls that face %.0f degrees the wettest, ASHRAE 160 those that face %.0f",
                        iso.bearingDeg(), ashrae.bearingDeg());
        return top + text(" (rank correlation of the bearings %.3f). ", rose.spearman()) + disputed(rose);
    }

    private static String disputed(DrivingRainRose rose) {
        List<Row> apart = rose.disagreements(DISPUTED * rose.rows().size());
        if (apart.isEmpty()) {
            return text(
                    "No bearing is ranked %.0f places of %d or more apart.",
                    Math.ceil(DISPUTED * rose.rows().size()), rose.rows().size());
        }
        String named = apart.stream()
                .limit(NAMED)
                .map(row -> text(
                        "%.0f degrees (place %.0f by ISO 15927-3, %.0f by ASHRAE 160)",
                        row.bearingDeg(), row.isoRank(), row.ashraeRank()))
                .reduce((a, b) -> a + ", " + b)
                .orElseThrow();
        return text(
                "They disagree most on %s of %d bearings%s.", named, rose.rows().size(), rest(apart.size()));
    }

    private static String rest(int apart) {
        return apart > NAMED ? text(", and on %d more", apart - NAMED) : "";
    }

    private static Row first(DrivingRainRose rose, Comparator<Row> order) {
        return rose.rows().stream().min(order).orElseThrow();
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
