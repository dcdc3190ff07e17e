package weatherlap.reports.cli;

import java.util.Iterator;
import picocli.CommandLine.Option;
import weatherlap.reports.page.Paper;

/** What a sheet is printed on. */
final class PaperOption {
    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            completionCandidates = Words.class,
            description = "Size of the paper: letter or a4. Else: letter.")
    private Paper paper = Paper.LETTER;

    Paper size() {
        return paper;
    }

    static final class Words implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return EnumWords.of(Paper.class).iterator();
        }
    }
}
