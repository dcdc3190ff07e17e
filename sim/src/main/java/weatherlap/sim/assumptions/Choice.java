package weatherlap.sim.assumptions;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weatherlap.sim.method.Contrast;

/** The choices of a scenario that are words, not numbers. */
public enum Choice {
    /** Any region of wages.csv. */
    REGION(List.of(), "wages of a house that names no region"),
    /** As {@link Contrast} writes them. */
    METHODS(
            Contrast.all().stream().map(Contrast::word).toList(),
            "the two methods that a report sets side by side; differences are the first less the second"),
    WORKMANSHIP(List.of("careful", "typical", "hurried"), "how carefully the crew laps the new unit in"),
    COLD_CURVE(List.of("thomas_yiakoumis", "neca"), "how work slows in the cold; the two disagree below 30 °F"),
    PRICING(
            List.of("gross_margin", "overhead_and_net"),
            "price from cost by gross margin, or from cost and overhead by net profit"),
    SHELTER(
            List.of("hourly_overhang", "wall_factor"),
            "what keeps rain off a wall: its overhang, hour by hour, or the wall factor as published, which holds an average one"),
    NEW_UNIT_MATERIAL(List.of("vinyl", "wood", "aluminum", "steel"), "what the new units are made of"),
    SILL_FLANGE(List.of("open", "sealed"), "whether the bottom flange is left open to drain; authorities differ"),
    /** As {@link WarrantyCovers} has it. */
    WARRANTY_COVERS(
            List.of("own_work", "any_leak", "nothing"),
            "leaks that the shop mends at its own cost in the years of its warranty; own_work: of laps its crew made"),
    /** As {@link weatherlap.sim.random.Sampling} has it. */
    SAMPLING(
            List.of("sobol", "stratified", "plain"),
            "how the runs of the numbers are laid: even over several causes at once, even over each, or independent"),
    /** IRC 2018 R310.2.5. */
    ESCAPE_RULE(
            List.of("replacement_clause", "as_new"),
            "whether a way out that gets too small for a new window may stand in a replacement, or closes the method;"
                    + " ask the building official");

    private final List<String> values;
    private final String meaning;

    Choice(List<String> values, String meaning) {
        this.values = values;
        this.meaning = meaning;
    }

    /** Allowed words; empty: any text. */
    public List<String> allowed() {
        return values;
    }

    /** What a file stands for that was written before there was this choice. */
    public Optional<String> whenMissing() {
        return switch (this) {
            case METHODS, SAMPLING, WARRANTY_COVERS, ESCAPE_RULE -> Optional.of(values.get(0));
            case REGION, WORKMANSHIP, COLD_CURVE, PRICING, SHELTER, NEW_UNIT_MATERIAL, SILL_FLANGE -> Optional.empty();
        };
    }

    public String meaning() {
        return meaning;
    }

    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Choice> of(String key) {
        return Arrays.stream(values())
                .filter(choice -> choice.key().equals(key))
                .findFirst();
    }
}
