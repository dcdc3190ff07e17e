package weatherlap.sim.geometry;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Product;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.explain.Basis;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.FrameMaterial;
import weatherlap.sim.house.Operation;

/** The bundled sightlines, with a scenario of the scalars that geometry reads. */
final class Bundled {
    /** Beside this module; the module that reads tables for the program stands above this one. */
    private static final Path SIGHTLINES =
            Path.of("../datasets/src/main/resources/weatherlap/datasets/assumptions/sightlines.csv");

    private static final Map<Scalar, Double> SCALARS = Map.ofEntries(
            Map.entry(Scalar.WALL_DEPTH_IN, 4.5),
            Map.entry(Scalar.SETBACK_IN, 0.875),
            Map.entry(Scalar.RETURN_THICKNESS_IN, 0.5),
            Map.entry(Scalar.ROUGH_GAP_IN, 0.5),
            Map.entry(Scalar.ORDER_STEP_IN, 0.125),
            Map.entry(Scalar.READING_TOLERANCE_IN, 0.125),
            Map.entry(Scalar.DIAGONAL_TOLERANCE_IN, 0.25),
            Map.entry(Scalar.MULL_POST_IN, 0.5),
            Map.entry(Scalar.FLANGE_SETBACK_IN, 1.375),
            Map.entry(Scalar.TRAVEL_LOSS_IN, 1.5),
            Map.entry(Scalar.HINGE_LOSS_IN, 3.0),
            Map.entry(Scalar.AWNING_OPEN_DEG, 45.0),
            Map.entry(Scalar.GLASS_BITE_IN, 0.5),
            Map.entry(Scalar.FASTENER_SPACING_IN, 4.0),
            Map.entry(Scalar.FASTENER_EDGE_IN, 2.0),
            Map.entry(Scalar.PANE_THICKNESS_MM, 3.0),
            Map.entry(Scalar.PANES, 2.0),
            Map.entry(Scalar.FRAME_LB_PER_FT, 1.5),
            Map.entry(Scalar.LIFT_LIMIT_LB, 51.0),
            Map.entry(Scalar.SEALANT_BEAD_IN, 0.375),
            Map.entry(Scalar.TAPE_TAIL_IN, 6.0),
            Map.entry(Scalar.TAPE_TAIL_JAMB_IN, 5.0),
            Map.entry(Scalar.TAPE_TAIL_HEAD_IN, 8.0),
            Map.entry(Scalar.COIL_STRETCH_OUT_IN, 6.0),
            Map.entry(Scalar.COIL_STRETCH_OUT_SILL_IN, 8.0),
            Map.entry(Scalar.COIL_TAIL_IN, 4.0),
            Map.entry(Scalar.FOAM_GAP_DEPTH_IN, 2.0),
            Map.entry(Scalar.FOAM_FILL, 0.33));

    /** New units of vinyl. */
    static final Assumptions ASSUMPTIONS =
            new Assumptions(List.of(), List.of(), List.of(), sightlines(), List.of(), List.of(), scenario());

    private Bundled() {}

    static Assumptions with(FrameMaterial newUnits) {
        return ASSUMPTIONS.with(ASSUMPTIONS
                .scenario()
                .with(Choice.NEW_UNIT_MATERIAL, newUnits.name().toLowerCase(Locale.ROOT)));
    }

    private static Scenario scenario() {
        Origin origin = new Origin("scenario.toml", "of the test", Basis.INVENTED, "");
        Map<Scalar, Setting> settings = new EnumMap<>(Scalar.class);
        for (Scalar scalar : Scalar.values()) {
            double value = SCALARS.getOrDefault(scalar, scalar.low());
            settings.put(scalar, new Setting(scalar, value, Optional.empty(), origin));
        }
        Map<Choice, String> choices = new EnumMap<>(Choice.class);
        for (Choice choice : Choice.values()) {
            choices.put(
                    choice,
                    choice.allowed().isEmpty() ? "any" : choice.allowed().get(0));
        }
        return new Scenario(settings, choices);
    }

    private static List<Sightline> sightlines() {
        try {
            return Files.readAllLines(SIGHTLINES).stream()
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .map(Bundled::sightline)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Sightline sightline(String[] cells) {
        double[] in = new double[10];
        for (int i = 0; i < in.length; i++) {
            in[i] = Double.parseDouble(cells[3 + i]);
        }
        String key = String.join("/", cells[0], cells[1], cells[2]);
        return new Sightline(
                Product.valueOf(cells[0].toUpperCase(Locale.ROOT)),
                FrameMaterial.valueOf(cells[1].toUpperCase(Locale.ROOT)),
                Operation.valueOf(cells[2].toUpperCase(Locale.ROOT)),
                in[0],
                in[1],
                in[2],
                in[3],
                in[4],
                in[5],
                in[6],
                in[7],
                in[8],
                in[9],
                new Origin("sightlines.csv", key, Basis.valueOf(cells[13].toUpperCase(Locale.ROOT)), cells[14]));
    }
}
