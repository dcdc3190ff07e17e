package weatherlap.reports.jobs;

import weatherlap.charts.Numbers;

/** Finds every problem of the tables; nothing is simulated, nothing is written. */
public record CheckInputs(InputPaths paths) {
    /** @throws BadInput with every problem found */
    public void run(Messages messages) {
        Inputs inputs = Inputs.read(paths);
        inputs.warnings().forEach(warning -> messages.note("warning: " + warning));
        int houses = inputs.portfolio().houses().size();
        int openings = inputs.portfolio().openingCount();
        int warnings = inputs.warnings().size();
        String whose = paths.portfolio().isPresent() ? "" : "the bundled demo, ";
        messages.result(whose + Numbers.count(houses, "house", "houses") + ", "
                + Numbers.count(openings, "opening", "openings") + ": nothing wrong"
                + (warnings == 0 ? "" : ", " + Numbers.count(warnings, "warning", "warnings")));
        paths.portfolio()
                .ifPresent(
                        folder -> messages.note("next: " + Next.command("compare", paths.words(), "--out", "report")));
    }
}
