package weatherlap.reports.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import weatherlap.reports.jobs.CheckInputs;
import weatherlap.reports.options.InputOptions;
import weatherlap.reports.options.ShopOption;

@Command(
        name = "check",
        description = "Finds every mistake in your tables at once. Writes nothing.",
        footer = {
            "",
            "Examples:",
            "  weatherlap check my-houses",
            "  weatherlap check my-houses --assumptions my-assumptions"
        })
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Mixin
    private InputOptions input;

    @Mixin
    private ShopOption shop;

    @Override
    public Integer call() {
        new CheckInputs(input.paths().withShop(shop.path())).run(common.messages());
        return 0;
    }
}
