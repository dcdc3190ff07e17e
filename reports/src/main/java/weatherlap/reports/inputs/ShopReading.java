package weatherlap.reports.inputs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.shop.Shop;
import weatherlap.datasets.shop.ShopFile;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.workbook.Beside;
import weatherlap.reports.output.Checksum;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

/** What a run reads of the shop. */
public final class ShopReading {
    private ShopReading() {}

    /** The shop file that is named, or that stands beside the tables of the portfolio. */
    public static Optional<Path> file(InputPaths paths) {
        return paths.shop().or(() -> paths.portfolio()
                .map(folder -> Beside.of(folder).resolve(ShopFile.FILE))
                .filter(Files::exists));
    }

    public static Loaded<ShopFile> read(InputPaths paths) {
        return file(paths).map(ShopFile::read).orElseGet(() -> Loaded.of(ShopFile.NONE));
    }

    /** The years that the shop's warranty names, where those that its prices are made with are not among them. */
    static Optional<String> otherWarranty(Shop shop, Scenario scenario) {
        int priced = scenario.whole(Scalar.WARRANTY_YEARS);
        Set<Integer> named = shop.terms().warrantyYears();
        return named.isEmpty() || named.contains(priced)
                ? Optional.empty()
                : Optional.of(ShopFile.FILE + ":warranty: it names "
                        + named.stream().map(Object::toString).collect(Collectors.joining(" and "))
                        + (named.equals(Set.of(1)) ? " year" : " years") + ", but prices hold leak repairs for "
                        + Numbers.count(priced, "year", "years")
                        + " (warranty_years); if they should go by your words, add --set warranty_years="
                        + named.iterator().next());
    }

    /** SHA-256 of what was read, by kind and name. */
    public static SortedMap<String, String> checksums(ShopFile shop) {
        SortedMap<String, String> sums = new TreeMap<>();
        shop.read().forEach((name, source) -> {
            try {
                sums.put("shop/" + name, Checksum.of(source));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        return sums;
    }
}
