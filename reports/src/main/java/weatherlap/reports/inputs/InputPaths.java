package weatherlap.reports.inputs;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a user names as input; what is not named is bundled with the program.
 *
 * @param portfolio folder
 * @param assumptions folder
 * @param climate files, read as one record, or words of bundled records; empty: that of the site, else the invented one
 * @param site file or folder of the site; empty: that beside the portfolio, where there is one
 * @param shop file or folder of the shop; empty: that beside the portfolio, where there is one
 * @param changes of scalars and choices, each NAME=VALUE, in order
 * @param called what results call the portfolio; empty: the name of its folder
 */
public record InputPaths(
        Optional<Path> portfolio,
        Optional<Path> assumptions,
        List<Path> climate,
        Optional<Path> site,
        Optional<Path> shop,
        List<String> changes,
        Optional<String> called) {
    public InputPaths {
        climate = List.copyOf(climate);
        changes = List.copyOf(changes);
    }

    /** A folder or a workbook stands for the table in it. */
    public static Path table(Path named, String file) {
        return Files.exists(named.resolve(file)) ? named.resolve(file) : named;
    }

    /** With the portfolio called after its folder. */
    public InputPaths(
            Optional<Path> portfolio,
            Optional<Path> assumptions,
            List<Path> climate,
            Optional<Path> site,
            Optional<Path> shop,
            List<String> changes) {
        this(portfolio, assumptions, climate, site, shop, changes, Optional.empty());
    }

    /** With no shop named. */
    public InputPaths(
            Optional<Path> portfolio,
            Optional<Path> assumptions,
            List<Path> climate,
            Optional<Path> site,
            List<String> changes) {
        this(portfolio, assumptions, climate, site, Optional.empty(), changes);
    }

    /** With at most one weather file, no site and no shop named. */
    public InputPaths(
            Optional<Path> portfolio, Optional<Path> assumptions, Optional<Path> climate, List<String> changes) {
        this(portfolio, assumptions, climate.stream().toList(), Optional.empty(), changes);
    }

    /** The same with the shop that is named, if any. */
    public InputPaths withShop(Optional<Path> named) {
        return new InputPaths(portfolio, assumptions, climate, site, named, changes, called);
    }

    /** The same, the portfolio called by a name of its own, if any. */
    public InputPaths called(Optional<String> name) {
        return new InputPaths(portfolio, assumptions, climate, site, shop, changes, name);
    }

    /** The same with other assumptions. */
    public InputPaths with(Optional<Path> otherAssumptions, List<String> otherChanges) {
        return new InputPaths(portfolio, otherAssumptions, climate, site, shop, otherChanges, called);
    }

    /** With more changes of scalars and choices. */
    public InputPaths with(Stream<String> more) {
        return with(assumptions, Stream.concat(changes.stream(), more).toList());
    }

    /** They as words of a command line. */
    public List<Object> words() {
        List<Object> words = new ArrayList<>(portfolio.stream().toList());
        assumptions.ifPresent(folder -> words.addAll(List.of("--assumptions", folder)));
        climate.forEach(file -> words.addAll(List.of("--climate", file)));
        site.ifPresent(file -> words.addAll(List.of("--site", file)));
        shop.ifPresent(file -> words.addAll(List.of("--shop", file)));
        changes.forEach(change -> words.addAll(List.of("--set", change)));
        called.ifPresent(name -> words.addAll(List.of("--called", name)));
        return words;
    }

    /** All that are named. */
    public List<Path> named() {
        return Stream.of(portfolio.stream(), assumptions.stream(), climate.stream(), site.stream(), shop.stream())
                .flatMap(paths -> paths)
                .toList();
    }
}
