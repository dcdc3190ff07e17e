package weatherlap.reports.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.reports.format.Html;

class BlockTest {
    private static final TableView TABLE =
            TableView.of("a table").texts("name").row("cell").build();
    private static final Block.Table TABLE_BLOCK = Block.Table.of(TABLE);

    private static final String SVG = "<svg width=\"10\" height=\"10\" viewBox=\"0 0 10 10\"></svg>";

    /** One of each kind, each with a text of its own to find. */
    private static final List<Block> ALL = List.of(
            new Block.Headline("an answer"),
            new Block.Numbers(List.of(new Block.Numbers.Number("a side", "$5", "a number"))),
            new Block.Questions(List.of(new Block.Questions.Question("a question", "what follows"))),
            new Block.Dots(
                    new Figure("dots", "dots", "a picture of dots", SVG, ""),
                    SVG,
                    List.of(new Block.Dots.Spot("house-1", "a dot", 50, 50))),
            Block.Heading.of("a heading"),
            new Block.Paragraphs(List.of("a paragraph")),
            new Block.Points(List.of("a point")),
            TABLE_BLOCK,
            new Block.Picture(new Figure("name", "title", "a message", SVG, "a file")),
            new Block.Houses(
                    List.of(),
                    TableView.of("all houses").texts("name").row("cell").build()),
            new Block.Sources(List.of(new Trace("id", "a measure", "results", "measured", List.of()))),
            new Block.Kept(Block.Heading.of("a kept heading"), TABLE_BLOCK));

    private static final List<String> SHOWN = List.of(
            "an answer",
            "a side",
            "$5",
            "a number",
            "a question",
            "what follows",
            "a picture of dots",
            "a heading",
            "a paragraph",
            "a point",
            "a table",
            "a message",
            "a measure",
            "a kept heading");

    @ParameterizedTest
    @ValueSource(strings = {"report.jte", "reportsheet.jte"})
    void everyKindIsDrawnOnScreenAndOnPaper(String template) {
        String page = Html.render(
                template,
                new ReportPage(
                        "title",
                        "scope",
                        "",
                        List.of(new Section("id", "a section", "short", Section.Sheet.PLAIN, ALL))));
        assertThat(page).contains(SHOWN).contains("a section");
        assertThat(page.contains("all houses")).isEqualTo(template.equals("reportsheet.jte"));
        assertThat(page.contains("find-house")).isEqualTo(template.equals("report.jte"));
    }

    @Test
    void noKindIsLeftOut() {
        assertThat(ALL.stream().<Class<?>>map(Object::getClass).toList())
                .containsExactlyInAnyOrder(Block.class.getPermittedSubclasses());
    }
}
