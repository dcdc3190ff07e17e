package weatherlap.reports.output;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class SafeNameTest {
    @Test
    void aPlainIdStaysAsItIs() {
        assertThat(SafeName.of("elm-12_a.1")).isEqualTo("elm-12_a.1");
    }

    @Test
    void idsThatDifferOnlyInCaseOrInWhatIsReplacedKeepApart() {
        assertThat(SafeName.of("H1")).startsWith("h1-").isNotEqualTo("h1");
        assertThat(SafeName.of("a/b")).startsWith("a_b-").isNotEqualTo(SafeName.of("a\\b"));
    }

    @Property
    void everyIdGivesANameThatStaysInItsFolder(@ForAll String id) {
        assertThat(SafeName.of(id)).matches("[a-z0-9_][a-z0-9._-]{0,80}").isNotIn("con", "nul", "aux", "prn");
    }

    @Test
    void aLongIdIsCut() {
        assertThat(SafeName.of("x".repeat(5000))).hasSizeLessThan(90);
        assertThat(SafeName.of("../../etc/passwd")).doesNotContain("/");
    }
}
