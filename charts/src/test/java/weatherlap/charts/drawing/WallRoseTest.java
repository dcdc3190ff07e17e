package weatherlap.charts.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import weatherlap.charts.Samples;
import weatherlap.charts.Svg;

class WallRoseTest {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

    @Test
    void theFourSidesAreLettered() {
        assertThat(Svg.parse(Samples.wallRose().svg()).texts()).containsExactlyInAnyOrder("N", "E", "S", "W");
    }

    /** A wall that faces east has its bar upright at the right rim: 52 px from the middle at 78 px. */
    @Test
    void aBarStandsAtTheRimSquareToTheWayTheWallFaces() {
        String svg = new WallRose(List.of(), List.of(90.0)).svg();
        List<Double> bar = numbers(svg, "<line[^>]*>", "x1", "x2", "y1", "y2");
        assertThat(bar.get(0)).isCloseTo(130, Offset.offset(0.01)).isEqualTo(bar.get(1), Offset.offset(0.01));
        assertThat((bar.get(2) + bar.get(3)) / 2).isCloseTo(78, Offset.offset(0.01));
    }

    /** Half the rain of the wettest side reaches half as far out: 26 px right of the middle. */
    @Test
    void raysAreAsLongAsTheirRain() {
        String svg = new WallRose(
                        List.of(new WallRose.Ray(0, 10), new WallRose.Ray(90, 5), new WallRose.Ray(180, 10)), List.of())
                .svg();
        MatchResult path = Pattern.compile("<path[^>]* d=\"([^\"]*)\"")
                .matcher(svg)
                .results()
                .findFirst()
                .orElseThrow();
        List<Double> points = NUMBER.matcher(path.group(1))
                .results()
                .map(number -> Double.parseDouble(number.group()))
                .toList();
        assertThat(points.subList(0, 6))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 0.01 ? 0 : a.compareTo(b))
                .containsExactly(78.0, 26.0, 104.0, 78.0, 78.0, 130.0);
    }

    @Test
    void bearingsAndRainAreChecked() {
        assertThatThrownBy(() -> new WallRose.Ray(360, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new WallRose.Ray(0, -1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<Double> numbers(String svg, String tag, String... attributes) {
        String found = Pattern.compile(tag)
                .matcher(svg)
                .results()
                .findFirst()
                .orElseThrow()
                .group();
        return List.of(attributes).stream()
                .map(name -> Pattern.compile(" " + name + "=\"([^\"]*)\"")
                        .matcher(found)
                        .results()
                        .findFirst()
                        .orElseThrow()
                        .group(1))
                .map(Double::parseDouble)
                .toList();
    }
}
