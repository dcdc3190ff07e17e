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
import weatherlap.reports.options.InputOptions;
import weatherlap.reports.options.MethodsOption;
import weatherlap.reports.options.OutputOptions;
import weatherlap.reports.options.SampleOption;

@Command(
        name = "breakeven",
        description = "Finds how far an assumption has to move before the other method is the better one.",
        footer = {
            "",
            "It reads all your houses into memory and runs as many as --houses says.",
            "",
            "NAME is a setting of scenario.toml, such as repair_cost_usd, or a row of another table:",
            "labour-steps/STEP (minutes), materials/ITEM (USD a package), wages/REGION/ROLE (USD an hour),",
            "units/METHOD/OPERATION (USD), units/price_list (times all prices), lap-faults/FAULT (share of the",
            "water let past). `weatherlap assumptions` writes these tables out. A group moves as one, as a",
            "multiple of its rates: labour-steps/all, labour-steps/METHOD (its own steps),",
            "materials/all, wages/all, lap-faults/existing, lap-faults/new. If NAME is a choice, such as",
            "workmanship or shelter, each of its words is tried.",
            "",
            "Examples:",
            "  weatherlap breakeven --vary repair_cost_usd --out breakeven",
            "  weatherlap breakeven my-houses --vary wages/national/carpenter --from 20 --to 120 --out breakeven",
            "  weatherlap breakeven --vary repair_cost_usd --vary horizon_years --out map",
            "  weatherlap breakeven --vary labour-steps/full_flange --vary workmanship --out map"
        })
final class BreakevenCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Mixin
    private InputOptions input;

    @Mixin
    private MethodsOption methods;

    @Option(
            names = "--vary",
            paramLabel = "NAME",
            required = true,
            description = "The assumption to vary. Give it twice to map two against each other.")
    private List<String> names;

    @Option(
            names = "--from",
            paramLabel = "VALUE",
            description =
                    "Low end of the range to search, in the unit of the first NAME (default: half its likely value, or"
                            + " the low end of its range if that is lower).")
    private Double from;

    @Option(
            names = "--to",
            paramLabel = "VALUE",
            description =
                    "High end of the range to search (default: twice the likely value, or the high end of its range if"
                            + " that is higher).")
    private Double to;

    @Mixin
    private final SampleOption sample = new SampleOption(100);

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        if (names.size() > 2) {
            throw new ParameterException(spec.commandLine(), "--vary may be given once or twice");
        }
        new BreakEvenSearch(
                        methods.in(input.paths()),
                        output.request(),
                        names,
                        optional(from),
                        optional(to),
                        sample.houses())
                .run(common.messages());
        return 0;
    }

    private static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
