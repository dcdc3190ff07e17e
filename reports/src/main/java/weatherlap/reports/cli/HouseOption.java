package weatherlap.reports.cli;

import picocli.CommandLine.Option;

/** The house that a sheet is for. */
final class HouseOption {
    @Option(
            names = "--house",
            paramLabel = "ID",
            description = "Key of the house, as in houses.csv; may be left out where there is only one.")
    private String house = "";

    /** Empty where the user names none. */
    String id() {
        return house;
    }
}
