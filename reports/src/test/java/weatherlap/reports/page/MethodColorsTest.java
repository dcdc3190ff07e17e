package weatherlap.reports.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.method.Method;

/** A method has one color on every sheet, whichever column of a pair it stands in. */
class MethodColorsTest {
    @ParameterizedTest
    @EnumSource(Method.class)
    void eachMethodHasItsOwn(Method method) {
        String text = Tone.valueOf(method.name() + "_TEXT").hex();
        String tint = Tone.valueOf(method.name() + "_TINT").hex();
        String rule = "." + method.label() + " { color: " + text + "; }";
        assertThat(List.of(Style.handoutScreen(), Style.handoutSheet(Paper.LETTER, 9, 90, "")))
                .allMatch(css -> css.contains(rule), rule);
        assertThat(Style.crewSheet("letter"))
                .contains("." + method.name() + " .figures span { background-color: " + tint + "; }");
    }
}
