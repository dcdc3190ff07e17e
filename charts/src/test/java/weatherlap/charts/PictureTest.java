package weatherlap.charts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weatherlap.charts.kit.Fonts;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Picture;

/** What holds for every picture, with data as a report has them and with data that nobody hopes for. */
class PictureTest {

    @BeforeAll
    static void install() {
        Fonts.install();
    }

    static List<Picture> usual() {
        return Stream.of(Samples.all(), DrawingSamples.all())
                .flatMap(List::stream)
                .toList();
    }

    static List<Picture> every() {
        return Stream.of(usual(), Oddities.all()).flatMap(List::stream).toList();
    }

    @ParameterizedTest
    @MethodSource("every")
    void isSelfContainedSvgOfItsSize(Picture picture) {
        String svg = picture.svg();
        Svg read = Svg.parse(svg);

        assertThat(read.root().getAttribute("width")).isEqualTo("" + picture.widthPx());
        assertThat(read.root().getAttribute("height")).isEqualTo("" + picture.heightPx());
        assertThat(read.root().getAttribute("viewBox"))
                .isEqualTo("0 0 " + picture.widthPx() + " " + picture.heightPx());
        assertThat(svg).doesNotContain(" id=", "href", "url(", "NaN", "Infinity", "<image", "<script");
    }

    @ParameterizedTest
    @MethodSource("every")
    void saysInWordsWhatItShows(Picture picture) {
        Svg read = Svg.parse(picture.svg());

        assertThat(read.root().getElementsByTagNameNS("*", "desc").item(0).getTextContent())
                .isEqualTo(Lettering.clean(picture.message()));
        assertThat(picture.message()).endsWith(".").doesNotContain("NaN", "null");
        assertThat(picture.name()).matches("[a-z]+(-[a-z]+)*");
    }

    @ParameterizedTest
    @MethodSource("usual")
    void isTheSameToTheByteInEveryLocale(Picture picture) {
        String once = picture.svg();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(picture.svg()).isEqualTo(once);
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @MethodSource("every")
    void keepsAllTextInsideThePicture(Picture picture) {
        Rectangle2D page = new Rectangle2D.Double(-1, 0, picture.widthPx() + 2.0, picture.heightPx());

        assertThat(Svg.parse(picture.svg()).labels())
                .allSatisfy(label ->
                        assertThat(page.contains(label.box())).as("%s", label).isTrue());
    }

    /** A name cut short on a sheet that a family signs is a name left out. */
    @ParameterizedTest
    @MethodSource("usual")
    void cutsNoUsualName(Picture picture) {
        assertThat(Svg.parse(picture.svg()).labels())
                .noneMatch(label -> label.text().endsWith(Lettering.CUT));
    }

    @ParameterizedTest
    @MethodSource("every")
    void writesNoTextOverAnother(Picture picture) {
        List<Svg.Label> labels = Svg.parse(picture.svg()).labels();

        for (int i = 0; i < labels.size(); i++) {
            for (int k = i + 1; k < labels.size(); k++) {
                Rectangle2D both =
                        labels.get(i).box().createIntersection(labels.get(k).box());
                assertThat(both.getWidth() > 1.5 && both.getHeight() > 3)
                        .as("%s over %s", labels.get(i), labels.get(k))
                        .isFalse();
            }
        }
    }
}
