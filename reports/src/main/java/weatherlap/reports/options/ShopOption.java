package weatherlap.reports.options;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What the shop says of itself. */
public final class ShopOption {
    @Option(
            names = "--shop",
            paramLabel = "FILE",
            description = "Shop file, or its folder, as `weatherlap generate --template` writes it"
                    + " (default: shop.toml next to the houses, if there is one): name, license, logo,"
                    + " warranty, price terms, season.")
    private Path shop;

    public Optional<Path> path() {
        return Optional.ofNullable(shop);
    }
}
