package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.List;
import weatherlap.charts.drawing.GlassSquares;
import weatherlap.reports.offer.ChoiceWords;
import weatherlap.reports.offer.Choices;
import weatherlap.reports.page.Figure;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Phrases;

/**
 * The glass of the whole house as squares, today and by each choice.
 *
 * @param note what a square stands for
 */
record Daylight(Figure squares, String note) {
    static Daylight of(Choices choices, ChoiceWords names) {
        FamilyWords words = names.words();
        Phrases phrases = new Phrases(words);
        double today = choices.all().get(0).glassTodayFt2();
        double square = GlassSquares.squareFt2(today);
        List<GlassSquares.Row> rows = new ArrayList<>();
        rows.add(new GlassSquares.Row(words.of("difference.today"), today));
        choices.all().forEach(choice -> rows.add(new GlassSquares.Row(names.title(choice), choice.glassFt2())));
        String told = choices.all().stream()
                .map(choice -> words.of("difference.rows.choice", names.title(choice), phrases.ft2(choice.glassFt2())))
                .reduce(words.of("difference.rows.today", phrases.ft2(today)), (a, b) -> a + " " + b);
        return new Daylight(
                Figure.of(new GlassSquares(words.of("difference.rows.title"), told, rows, square)),
                words.count(Math.round(square), "difference.squares"));
    }
}
