package weatherlap.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static weatherlap.sim.method.Method.FULL_FLANGE;
import static weatherlap.sim.method.Method.FULL_FRAME;
import static weatherlap.sim.method.Method.INSERT;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;

class PlanLineTest {
    private static final House HOUSE = DemoPortfolio.load().houses().stream()
            .filter(house -> house.id().equals("gable"))
            .findFirst()
            .orElseThrow();

    private static final int OPENINGS = HOUSE.openingCount();

    @Test
    void oneMethodIsThatOfAllOpenings() {
        assertThat(PlanLine.parse("full-flange", HOUSE)).isEqualTo(Collections.nCopies(OPENINGS, FULL_FLANGE));
        assertThat(PlanLine.of(HOUSE, Collections.nCopies(OPENINGS, INSERT))).isEqualTo("insert");
    }

    @Test
    void anOpeningThatIsNamedGetsItsOwn() {
        var wall = HOUSE.elevations().stream()
                .filter(e -> !e.openings().isEmpty())
                .findFirst()
                .orElseThrow();
        String named = wall.id() + "/" + wall.openings().get(0).id();
        List<Method> methods = PlanLine.parse("insert, " + named + "=full_frame", HOUSE);
        assertThat(methods.get(0)).isEqualTo(FULL_FRAME);
        assertThat(methods.subList(1, OPENINGS)).containsOnly(INSERT);
        assertThat(PlanLine.of(HOUSE, methods)).isEqualTo("insert," + named + "=full_frame");
    }

    @Test
    void whatIsWrittenIsReadAsTheSame() {
        Random random = new Random(7);
        for (House house : DemoPortfolio.load().houses()) {
            List<Method> methods = Stream.generate(() -> Method.values()[random.nextInt(3)])
                    .limit(house.openingCount())
                    .toList();
            assertThat(PlanLine.parse(PlanLine.of(house, methods), house)).isEqualTo(methods);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "new                 | must be full_flange, full_frame or insert",
                "''                  | must be full_flange, full_frame or insert",
                "insert,full_frame   | two methods for all openings",
                "insert,W99=insert   | no opening \"W99\"; there are",
            })
    void whatCannotBeMeantIsRefused(String line, String why) {
        assertThatThrownBy(() -> PlanLine.parse(line, HOUSE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(why);
    }

    @Test
    void openingsLeftOutAndNamedTwiceAreNamed() {
        String all = PlanLine.of(HOUSE, Collections.nCopies(OPENINGS, INSERT));
        var wall = HOUSE.elevations().stream()
                .filter(e -> !e.openings().isEmpty())
                .findFirst()
                .orElseThrow();
        String named = wall.id() + "/" + wall.openings().get(0).id();
        assertThatThrownBy(() -> PlanLine.parse(named + "=insert", HOUSE)).hasMessageContaining("no method for ");
        assertThatThrownBy(() -> PlanLine.parse(all + "," + named + "=insert," + named + "=insert", HOUSE))
                .hasMessageContaining("named twice");
    }
}
