package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.List;

/** Runs every command that writes or prints, one after another in one process, into the folder named first. */
final class EveryCommand {
    private EveryCommand() {}

    static List<List<Object>> lines(Path folder) {
        Path house = folder.resolve("house");
        Path made = folder.resolve("made");
        return List.of(
                List.of("generate", "--template", "--out", house),
                List.of("generate", "--houses", 1, "--climate", "--jobs", 20, "--out", made),
                List.of("check", house),
                List.of("compare", house, "--draws", 16, "--out", folder.resolve("report")),
                List.of("handout", house, "--out", folder.resolve("handout")),
                List.of("crewsheet", house, "--method", "full-flange", "--out", folder.resolve("crew")),
                List.of("explain", house, "--opening", "EXAMPLE/front/W1"),
                List.of("exposure", made.resolve("climate.csv"), "--out", folder.resolve("rain")),
                List.of("calibrate", made.resolve("jobs.csv"), "--out", folder.resolve("fitted")),
                List.of("callbacks", made, "--out", folder.resolve("callbacks")),
                List.of("assumptions", "--out", folder.resolve("shop")),
                List.of("completion", "bash"));
    }

    public static void main(String[] arguments) {
        for (List<Object> line : lines(Path.of(arguments[0]))) {
            Cli cli = Cli.run(line.toArray());
            if (cli.status() != 0) {
                System.err.println(line + ": " + cli.status() + " " + cli.err());
                System.exit(cli.status());
            }
        }
    }
}
