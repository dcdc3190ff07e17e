package weatherlap.reports.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.portfolio.PortfolioScan;
import weatherlap.datasets.portfolio.SortedPortfolio;
import weatherlap.reports.output.OutputFolder;

/** Reads a portfolio as {@code compare} does and prints how many houses came in rising order; for a process with little memory. */
final class SortInLittleMemory {
    private SortInLittleMemory() {}

    /** @param arguments the portfolio, the output folder */
    public static void main(String[] arguments) throws IOException {
        Path portfolio = Path.of(arguments[0]);
        try (OutputFolder folder = OutputFolder.open(Path.of(arguments[1]), false, List.of(portfolio));
                SortedPortfolio houses = SortedPortfolio.open(
                        portfolio,
                        PortfolioScan.of(portfolio),
                        Optional.of(AssumptionTables.bundled().assumptions()),
                        folder.scratch())) {
            int rising = 0;
            String last = "";
            while (houses.hasNext()) {
                String id = houses.next().id();
                rising += id.length() > last.length() || id.compareTo(last) > 0 ? 1 : 0;
                last = id;
            }
            System.out.println(rising + " houses, " + houses.errors().size() + " errors");
        }
    }
}
