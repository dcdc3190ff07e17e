package weatherlap.reports.cli;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import weatherlap.reports.jobs.BreakEvenSearch;

@Command(
        name = "breakeven",
        description = "Finds the value of an assumption at which the preferred method changes.",
        footer = {
            "",
            "NAME is a scalar of scenario.toml (glass_value_usd_per_ft2_year), labour-steps/STEP, materials/ITEM,",
            "lap-faults/FAULT, units/price_list, units/METHOD/OPERATION or wages/REGION/ROLE.",
            "Without --houses 100 are simulated.",
            "",
            "Examples:",
            "  weatherlap breakeven --vary repair_cost_usd --out breakeven",
            "  weatherlap breakeven my-houses --vary wages/national/carpenter --from 20 --to 120 --out breakeven",
            "  weatherlap breakeven --vary repair_cost_usd --vary horizon_years --out map"
        })
final class BreakevenCommand implements Callable<Integer> {
    private static final int HOUSES = 100;

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Mixin
    private InputOptions input;

    @Option(
            names = "--vary",
            paramLabel = "NAME",
            required = true,
            description = "What to vary; twice for a map of two.")
    private List<String> names;

    @Option(names = "--from", paramLabel = "VALUE", description = "Low end of the range of the first name.")
    private Double from;

    @Option(names = "--to", paramLabel = "VALUE", description = "High end of it.")
    private Double to;

    @Mixin
    private SampleOption sample;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        if (names.size() > 2) {
            throw new ParameterException(spec.commandLine(), "--vary may be given once or twice");
        }
        int houses = sample.houses(HOUSES);
        new BreakEvenSearch(input.paths(), output.request(), names, optional(from), optional(to), houses)
                .run(common.messages());
        return 0;
    }

    private static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
