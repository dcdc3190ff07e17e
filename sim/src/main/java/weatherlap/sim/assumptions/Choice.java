package weatherlap.sim.assumptions;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weatherlap.sim.method.Contrast;

/** The choices of a scenario that are words, not numbers. */
public enum Choice {
    /** Where wages are looked up for a house that names no region; any region of wages.csv. */
    REGION(List.of()),
    /** The two methods that a run sets side by side, as {@link Contrast} writes them. */
    METHODS(Contrast.all().stream().map(Contrast::word).toList()),
    WORKMANSHIP(List.of("careful", "typical", "hurried")),
    /** Curve of productivity over temperature. */
    COLD_CURVE(List.of("thomas_yiakoumis", "neca")),
    /** Price from cost by gross margin, or from cost and overhead by net profit. */
    PRICING(List.of("gross_margin", "overhead_and_net")),
    /** Overhang hour by hour over a bare wall, or the wall factor as published, which holds an average overhang. */
    SHELTER(List.of("hourly_overhang", "wall_factor")),
    NEW_UNIT_MATERIAL(List.of("vinyl", "wood", "aluminum", "steel")),
    /** Whether the bottom flange is left open to drain; authorities differ. */
    SILL_FLANGE(List.of("open", "sealed")),
    /** Whose leaks the shop mends within the warranty; as {@link WarrantyCovers} has it. */
    WARRANTY_COVERS(List.of("own_work", "any_leak", "nothing")),
    /** How the draws of a cause are laid over (0, 1); as {@link weatherlap.sim.random.Sampling} has it. */
    SAMPLING(List.of("sobol", "stratified", "plain")),
    /** Whether a replacement that lets out less than the code asks of new windows may stand (IRC 2018 R310.2.5) or closes a method. */
    ESCAPE_RULE(List.of("replacement_clause", "as_new"));

    private final List<String> values;

    Choice(List<String> values) {
        this.values = values;
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

    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Choice> of(String key) {
        return Arrays.stream(values())
                .filter(choice -> choice.key().equals(key))
                .findFirst();
    }
}
