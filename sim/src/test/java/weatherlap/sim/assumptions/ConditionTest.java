package weatherlap.sim.assumptions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConditionTest {
    private static final Facts FACTS = Facts.of(Map.of(
            Fact.CLADDING, "stucco",
            Fact.YEAR_BUILT, "1955",
            Fact.EXISTING_MATERIAL, "vinyl"));

    @ParameterizedTest
    @CsvSource({
        "'', true",
        "cladding=stucco, true",
        "cladding=brick_veneer|stucco & year_built>=1955, true",
        "year_built>=1956, false",
        "year_built<1956, true",
        "year_built<1955, false",
        "cladding!=stucco, false",
        "cladding!=stucco or existing_material=vinyl, true",
        "cladding!=stucco or existing_material=vinyl & year_built<1955, false",
        "existing_material!=wood & year_built>=1955 or year_built>=1980, true",
    })
    void holds(String text, boolean expected) {
        assertThat(Condition.parse(text, Fact.ofLaps()).holds(FACTS)).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "room>=bath",
                "year_built>=1955|1960",
                "year_built<19",
                "cladding=stucco or",
                "or cladding=stucco",
                "cladding==stucco",
                "storey=1"
            })
    void refuses(String text) {
        assertThatIllegalArgumentException().isThrownBy(() -> Condition.parse(text, Fact.ofLaps()));
    }
}
