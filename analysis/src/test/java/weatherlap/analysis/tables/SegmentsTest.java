package weatherlap.analysis.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weatherlap.analysis.tables.HandmadeResults.house;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.method.Method;

class SegmentsTest {
    private final Comparison compared = HandmadeResults.compared(
            house("a", Cladding.VINYL_SIDING, 350, -200),
            house("b", Cladding.VINYL_SIDING, 10, 100),
            house("c", Cladding.STUCCO, 180, 400));
    private final Segments segments = compared.segments();

    @Test
    void sumsUpEachSegment() {
        List<Share> claddings = segments.bySegment().get(Segmentation.CLADDING);
        assertThat(claddings).extracting(Share::label).containsExactly("vinyl siding", "stucco");
        Share vinyl = claddings.get(0);
        assertThat(vinyl.houses()).isEqualTo(2);
        assertThat(vinyl.housesForFirst()).isEqualTo(1);
        assertThat(vinyl.differencePerOpeningUsd()).isEqualTo(-50, within(1e-9));
        assertThat(vinyl.of(Method.INSERT).glassLostPct()).isEqualTo(20, within(1e-9));
        assertThat(segments.bySegment().get(Segmentation.BEARING))
                .extracting(Share::label)
                .containsExactly("north", "south");
    }

    @ParameterizedTest
    @EnumSource
    void thePartsMakeTheWhole(Segmentation segmentation) {
        List<Share> parts = segments.bySegment().get(segmentation);
        assertThat(parts.stream().mapToInt(Share::openings).sum())
                .isEqualTo(segments.whole().openings());
        assertThat(parts.stream()
                        .mapToDouble(p -> p.of(Method.INSERT).horizonCostUsd())
                        .sum())
                .isEqualTo(segments.whole().of(Method.INSERT).horizonCostUsd(), within(1e-6));
    }

    @Test
    void tablesHaveARowForEachMethod() {
        assertThat(segments.table().rows()).isEqualTo(2 * (1 + 2 + 1 + 1 + 2 + 1));
        assertThat(HouseTable.of(compared.shown()).rows()).isEqualTo(6);
        assertThat(ElevationTable.of(compared.shown()).rows()).isEqualTo(6);
        ResultTable openings = OpeningTable.of(compared.shown());
        assertThat(openings.text(1, "leak_causes")).isEqualTo("f1 0.1200");
        assertThat(openings.text(1, "code_flags")).isEqualTo("egress");
        assertThat(openings.number(1, openings.layout().column("glass_lost_pct")))
                .hasValue(20);
    }
}
