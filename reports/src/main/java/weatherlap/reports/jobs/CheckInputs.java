package weatherlap.reports.jobs;

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
        messages.result(whose + houses + (houses == 1 ? " house, " : " houses, ") + openings
                + (openings == 1 ? " opening: " : " openings: ") + "nothing wrong"
                + (warnings == 0 ? "" : ", " + warnings + (warnings == 1 ? " warning" : " warnings")));
        paths.portfolio()
                .ifPresent(folder -> messages.note("next: " + Next.command("compare", folder, "--out", "report")));
    }
}
