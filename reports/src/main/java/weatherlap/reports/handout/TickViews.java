package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import weatherlap.reports.format.Json;
import weatherlap.reports.handout.Ticks.Option;
import weatherlap.reports.handout.Ticks.Preset;
import weatherlap.reports.handout.Ticks.Row;
import weatherlap.reports.offer.Choices;
import weatherlap.reports.offer.LeakRank;
import weatherlap.reports.offer.Offer;
import weatherlap.reports.offer.OfferedPlan;
import weatherlap.reports.offer.TickRow;
import weatherlap.reports.offer.TickTable;
import weatherlap.reports.words.FamilyWords;
import weatherlap.reports.words.Phrases;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff.OpeningTakeoff;

/** Puts the rows to tick into words. */
record TickViews(TickTable table, Choices choices, Offer offer, WindowKinds kinds) {
    /** Words that the script of the page fills in. */
    private static final List<String> SCRIPT_WORDS =
            List.of("days.one", "days.many", "glass.less", "glass.more", "glass.same", "ft2", "to");

    static Ticks of(TickTable table, Choices choices, Offer offer, WindowKinds kinds, boolean priced) {
        return new TickViews(table, choices, offer, kinds).ticks(priced);
    }

    private Ticks ticks(boolean priced) {
        List<TickRow> all = table.walls().stream().flatMap(List::stream).toList();
        List<Method> first = ticked();
        List<Row> rows = new ArrayList<>();
        for (int r = 0; r < all.size(); r++) {
            rows.add(row("w" + r, all.get(r), first));
        }
        var terms = offer.prices().terms();
        return new Ticks(
                rows,
                choices.all().stream()
                        .filter(choice -> table.holds(choice.methods()))
                        .map(choice -> new Preset(offer.names().title(choice), values(all, choice)))
                        .toList(),
                table.together(),
                priced,
                terms.discount().isPresent() || terms.tax().isPresent(),
                house().id(),
                offer.crew(),
                offer.years(),
                Json.inPage(data()));
    }

    /** What is ticked at first: the family's own choice, or the one advised, where the rows can hold it. */
    private List<Method> ticked() {
        return choices.all().stream()
                .filter(choice -> choice.kind() == OfferedPlan.Kind.OWN || choice == choices.recommended())
                .map(OfferedPlan::methods)
                .filter(table::holds)
                .findFirst()
                .orElse(List.of());
    }

    private Row row(String name, TickRow row, List<Method> ticked) {
        List<OpeningTakeoff> windows = row.at().stream()
                .map(at -> choices.all().get(0).takeoff().openings().get(at))
                .toList();
        List<Option> options = new ArrayList<>();
        for (int m = 0; m < row.methods().size(); m++) {
            Method method = row.methods().get(m);
            boolean chosen = ticked.isEmpty() ? m == 0 : ticked.get(row.at().get(0)) == method;
            options.add(new Option(
                    Integer.toString(m),
                    words().name(method),
                    method.label(),
                    new Phrases(words()).ft2(row.glassFt2().get(m)),
                    chosen));
        }
        var frame = windows.get(0).opening().frame();
        return new Row(
                name,
                row.at().stream().map(kinds::mark).distinct().collect(Collectors.joining(", ")),
                Phrases.size(frame.widthIn(), frame.heightIn()),
                new Places(house(), Density.SCREEN, words()).of(windows),
                options);
    }

    private static String values(List<TickRow> rows, OfferedPlan choice) {
        return rows.stream()
                .map(row -> Integer.toString(
                        row.methods().indexOf(choice.methods().get(row.at().get(0)))))
                .collect(Collectors.joining(","));
    }

    private Map<String, Object> data() {
        Map<String, Object> data = new LinkedHashMap<>(table.data());
        Map<String, String> say = new LinkedHashMap<>();
        SCRIPT_WORDS.forEach(key -> say.put(key, words().of(key)));
        for (LeakRank rank : LeakRank.values()) {
            say.put(rank.name(), words().name(rank));
        }
        data.put("say", say);
        return data;
    }

    private House house() {
        return choices.choice().result().house();
    }

    private FamilyWords words() {
        return offer.words();
    }
}
