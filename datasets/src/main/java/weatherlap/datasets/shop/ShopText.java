package weatherlap.datasets.shop;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import weatherlap.datasets.table.CellType;
import weatherlap.datasets.table.TomlTable;

/** Reads the entries of {@code shop.toml}. */
record ShopText(TomlTable shop, ShopFolder folder) {
    private static final List<String> KEYS = List.of(
            "name",
            "phone",
            "license",
            "address",
            "logo",
            "warranty",
            "price_holds_days",
            "round_price_to_usd",
            "deposit_pct",
            "discount",
            "tax",
            "season");
    private static final List<String> RATE_KEYS = List.of("label", "pct");
    private static final List<String> SEASON_KEYS = List.of("crews", "weeks", "days_a_week", "jobs_waiting");
    private static final CellType.Number PERCENT = new CellType.Number("percent", 0, false, 100, false);

    /** What is wrong is reported; a shop is made all the same, to find more. */
    Shop read() {
        shop.knowOnly(KEYS);
        return new Shop(letterhead(), terms(), season());
    }

    private Letterhead letterhead() {
        return new Letterhead(
                shop.text("name", 100),
                shop.text("phone", 40),
                shop.text("license", 60),
                shop.text("address", 300),
                shop.text("logo", 200).flatMap(folder::logo));
    }

    private Terms terms() {
        return new Terms(
                shop.text("warranty", 2000),
                shop.whole("price_holds_days", new CellType.Whole(1, 365)),
                shop.number("round_price_to_usd", new CellType.Number("USD", 0.01, false, 10_000, false)),
                rate("discount"),
                rate("tax"),
                share(shop.number("deposit_pct", PERCENT)));
    }

    private Optional<Terms.Rate> rate(String key) {
        return shop.table(key).flatMap(table -> {
            table.knowOnly(RATE_KEYS);
            Optional<String> label = table.text("label", 60);
            OptionalDouble share = share(table.number("pct", PERCENT));
            RATE_KEYS.stream()
                    .filter(needed -> !table.node().has(needed))
                    .forEach(needed -> table.error(needed, "is missing; a price line needs label and pct"));
            return label.isPresent() && share.isPresent()
                    ? Optional.of(new Terms.Rate(label.get(), share.getAsDouble()))
                    : Optional.empty();
        });
    }

    private static OptionalDouble share(OptionalDouble percent) {
        return percent.isPresent() ? OptionalDouble.of(percent.getAsDouble() / 100) : percent;
    }

    private OwnSeason season() {
        return shop.table("season")
                .map(table -> {
                    table.knowOnly(SEASON_KEYS);
                    return new OwnSeason(
                            table.whole("crews", new CellType.Whole(1, 100)),
                            table.number("weeks", new CellType.Number("weeks", 1, false, 53, false)),
                            table.number("days_a_week", new CellType.Number("days", 1, false, 7, false)),
                            table.whole("jobs_waiting", new CellType.Whole(1, 2000)));
                })
                .orElse(OwnSeason.UNKNOWN);
    }
}
