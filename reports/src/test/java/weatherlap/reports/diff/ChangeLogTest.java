package weatherlap.reports.diff;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ChangeLogTest {
    private static final String LOG = """
            # Guide

            - results change because this is no log

            ## Change log

            ### 0.3.0, 2031-01-02

            - results change because walls
              know their cladding.
            - A new command.

            ### 0.2.0, 2030-01-02

            - results change because rain falls.

            ### 0.1.0, 2029-01-02

            - results change because of nothing.
            """;

    @Test
    void quotesReasonsSinceAVersion() {
        assertThat(ChangeLog.since("0.2.0", LOG)).containsExactly("results change because walls know their cladding.");
        assertThat(ChangeLog.since("0.1.0", LOG))
                .containsExactly(
                        "results change because walls know their cladding.", "results change because rain falls.");
        assertThat(ChangeLog.since("0.3.0", LOG)).isEmpty();
    }

    @Test
    void theProgramBringsItsOwnLog() {
        assertThat(ChangeLog.since("0.1.0", ChangeLog.bundled()))
                .isNotEmpty()
                .allMatch(reason -> reason.startsWith("results change because"));
    }
}
