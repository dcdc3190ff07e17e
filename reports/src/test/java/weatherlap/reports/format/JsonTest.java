package weatherlap.reports.format;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JsonTest {
    @Test
    void keepsTheOrderAndWritesNumbersWithoutExponents() {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("b", 1e-5);
        value.put("a", List.of(1, 2.5, true, "</script>\u2028", Collections.emptyMap()));
        value.put("none", null);
        assertThat(new String(TestTables.bytes(Json.of(value)), UTF_8)).isEqualTo("""
                {
                  "b" : 0.00001,
                  "a" : [
                    1,
                    2.5,
                    true,
                    "</script>\u2028",
                    { }
                  ],
                  "none" : null
                }
                """);
    }

    @Test
    void refusesWhatJsonCannotSay() {
        assertThatThrownBy(() -> TestTables.bytes(Json.of(List.of(Double.NaN))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TestTables.bytes(Json.of(new Object()))).isInstanceOf(IllegalArgumentException.class);
    }
}
