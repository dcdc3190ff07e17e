package weatherlap.reports.jobs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.format.Content;
import weatherlap.reports.format.Html;
import weatherlap.reports.inputs.BadInput;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.SafeName;
import weatherlap.reports.page.SheetIndex;
import weatherlap.sim.house.House;

/**
 * A sheet for every house of a portfolio, in a folder a house, and a page that lists them. A house that can have none says why there.
 *
 * @param name of a sheet's files, without their ending
 * @param title of the page
 */
record SheetFolder(String name, String title, Inputs inputs) {
    /** Where the files of one sheet go. */
    @FunctionalInterface
    interface Files {
        /** @param name of a file, in the folder of the sheet */
        void write(String name, Content content) throws IOException;
    }

    /** Writes the sheet of one house. Called from several threads. */
    @FunctionalInterface
    interface OneSheet {
        /** @throws BadInput where the house can have none */
        void write(House house, Files files) throws IOException;
    }

    void write(OutputFolder folder, OneSheet sheet, Messages messages) throws IOException {
        List<House> houses = inputs.portfolio().houses();
        Map<String, String> without = new ConcurrentHashMap<>();
        try (Messages.Progress progress = messages.progress(title, houses.size())) {
            houses.parallelStream().forEach(house -> {
                without.putAll(one(folder, sheet, house));
                progress.step();
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        List<SheetIndex.Entry> entries = houses.stream()
                .map(house -> entry(house, without.get(house.id())))
                .toList();
        SheetIndex index = new SheetIndex(
                title,
                inputs.name() + ", " + Numbers.count(houses.size() - without.size(), "house", "houses"),
                entries);
        folder.write("index.html", Content.of(Html.render("sheetindex.jte", index)));
        messages.warn(new TreeMap<>(without)
                .entrySet().stream()
                        .map(house -> "no sheet for " + house.getKey() + ": " + house.getValue())
                        .toList());
    }

    /** The house and why it has no sheet; nothing where it has one. */
    private static Map<String, String> one(OutputFolder folder, OneSheet sheet, House house) {
        try {
            sheet.write(house, (file, content) -> folder.write(SafeName.of(house.id()) + "/" + file, content));
            return Map.of();
        } catch (BadInput e) {
            return Map.of(house.id(), String.join("; ", e.problems()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private SheetIndex.Entry entry(House house, String why) {
        return new SheetIndex.Entry(
                house.id(),
                house.label(),
                house.openingCount(),
                why == null ? SafeName.of(house.id()) + "/" + name : "",
                why == null ? "" : why);
    }

    /** Where the page is. */
    static String where(OutputRequest output) {
        return output.folder() + "; open " + output.folder().resolve("index.html");
    }
}
