package weatherlap.reports.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.reports.handout.HandoutFiles;
import weatherlap.reports.jobs.Compare;
import weatherlap.reports.output.OutputRequest;

/** The numbers of a report lead to the files, columns and rows that they come from, and these are there. */
class TraceTest {
    @TempDir
    static Path folder;

    private static String page;

    @BeforeAll
    static void compare() throws IOException {
        new Compare(HandoutFiles.hostile(folder.resolve("in")), new OutputRequest(folder.resolve("out"), false), 1)
                .run(HandoutFiles.SILENT);
        page = Files.readString(folder.resolve("out/report.html"));
    }

    private static Set<String> found(String pattern) {
        return Pattern.compile(pattern)
                .matcher(page)
                .results()
                .map((MatchResult result) -> result.group(1))
                .collect(Collectors.toSet());
    }

    @Test
    void everyLinkLeadsSomewhereInThePage() {
        assertThat(found("href=\"#([^\"]*)\"")).hasSizeGreaterThan(60).isSubsetOf(found(" id=\"([^\"]*)\""));
    }

    @Test
    void eachMeasureOfTheAnswerLeadsToRowsWithABasis() {
        assertThat(found("<th scope=\"row\" class=\"t\"><a href=\"#(from-[a-z]+)\">"))
                .containsExactlyInAnyOrder("from-price", "from-labour", "from-glass", "from-leaks", "from-horizon");
        for (String table :
                List.of("labour-steps.csv", "materials.csv", "units.csv", "sightlines.csv", "lap-faults.csv")) {
            assertThat(page).contains("<strong>" + table + "</strong> <a href=\"#row-");
        }
    }

    @Test
    void theFilesHaveTheColumnsThatAreNamed() throws IOException {
        String trace = page.substring(page.indexOf("id=\"trace\""), page.indexOf("id=\"assumptions\""));
        Set<String> written = Set.copyOf(List.of((header("houses.csv") + "," + header("openings.csv")).split(",")));
        Set<String> named = Pattern.compile("<strong>Results</strong>(.*?)<strong>")
                .matcher(trace)
                .results()
                .flatMap(results -> Pattern.compile("\\b[a-z0-9]+(_[a-z0-9]+)+\\b")
                        .matcher(results.group(1))
                        .results())
                .map(MatchResult::group)
                .collect(Collectors.toSet());
        assertThat(named).hasSizeGreaterThan(10).isSubsetOf(written);
    }

    private static String header(String file) throws IOException {
        return Files.readAllLines(folder.resolve("out").resolve(file)).get(0);
    }
}
