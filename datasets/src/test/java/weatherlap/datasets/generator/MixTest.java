package weatherlap.datasets.generator;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weatherlap.datasets.table.Problem;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Source;

class MixTest {
    private String bundled;

    @BeforeEach
    void load() throws IOException {
        try (var in = Mix.class.getResourceAsStream("new-york.csv")) {
            bundled = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void sharesThatDoNotAddUpAreNamed() {
        assertThat(errors("storeys,,2,0.62,", "storeys,,2,0.52,"))
                .containsExactly("mix.csv:storeys: the shares add up to 0.9 instead of 1");
    }

    @Test
    void namesAndValuesAreHeldToThoseThatAreKnown() {
        assertThat(errors("terrain,,urban,", "terrain,,city,"))
                .singleElement()
                .asString()
                .matches("mix.csv:\\d+:value: \"city\" is not one of open_sea_or_flat, farmland, suburban, urban");
        assertThat(errors("stain,,no,", "stian,,no,").get(0))
                .endsWith("\"stian\" is not a property; did you mean \"stain\"?");
        assertThat(errors("width_ft,storeys=1,32..40,", "width_ft,storeys=1,40..32,")
                        .get(0))
                .contains("\"40..32\" is not a whole number or a range such as 24..32 within 12 to 200");
        assertThat(errors("window_size,room=bath,24x24,", "window_size,room=bath,24x4,")
                        .get(0))
                .contains("is not a size such as 32x54");
    }

    @Test
    void aPropertyThatSomeHouseWouldLackIsNamed() {
        assertThat(errors("return_layers,,", "return_layers,storeys=1,"))
                .containsExactly("mix.csv:return_layers: does not say what is drawn where no given holds");
    }

    @Test
    void theFirstGroupThatHoldsIsDrawnFrom() {
        Mix mix = Mix.bundled(BundledMix.NEW_YORK);
        assertThat(mix.draw(Property.UNITS, Map.of(Property.ROOM, "bath"), 0.999))
                .isEqualTo("1");
        assertThat(mix.draw(Property.UNITS, Map.of(Property.ROOM, "living"), 0.999))
                .isEqualTo("3");
        assertThat(mix.draw(Property.UNITS, Map.of(Property.ROOM, "living"), 0.0))
                .isEqualTo("1");
    }

    private List<String> errors(String from, String to) {
        assertThat(bundled).contains(from);
        Problems problems = new Problems();
        Mix.read(Source.of("mix.csv", bundled.replace(from, to)), problems);
        return problems.errors().stream().map(Problem::toString).toList();
    }
}
