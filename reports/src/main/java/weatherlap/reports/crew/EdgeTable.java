package weatherlap.reports.crew;

import java.util.List;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Inches;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.page.TableView;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.geometry.Capping;
import weatherlap.sim.geometry.CutBack;
import weatherlap.sim.geometry.Fastening;
import weatherlap.sim.geometry.Fastening.Turn;
import weatherlap.sim.geometry.Flashing;
import weatherlap.sim.geometry.OpeningGeometry;
import weatherlap.sim.geometry.OrderSize;

/** What is cut, taped and screwed around a flanged unit, joined and trimmed around one without a flange, or bent around an insert. */
final class EdgeTable {
    private EdgeTable() {}

    static TableView flanged(List<Window> windows) {
        TableView.Builder table = TableView.of(
                        "Cut back the returns; strips of tape, tails included; screws at corners + middles of jambs + middles of head and sill + the rest")
                .texts("No.")
                .numbers("Cut off", "Sill board", "Jambs, 2 of", "Head")
                .texts("Layers", "Saw depth")
                .numbers("Return left", "Sill strip", "Jamb strips, 2 of", "Head strip")
                .texts("Screws");
        windows.forEach(window -> table.row(flanged(window).toArray(String[]::new)));
        return table.build();
    }

    private static List<String> flanged(Window window) {
        OpeningGeometry geometry = window.takeoff().geometry();
        CutBack cut = geometry.cutBack().orElseThrow();
        Flashing tape = geometry.flashing();
        List<String> cells = new java.util.ArrayList<>(List.of(window.mark()));
        if (cut.pieces().isEmpty()) {
            cells.addAll(List.of("nothing", "", "", "", "", ""));
        } else {
            cells.addAll(List.of(
                    Inches.text(cut.cutIn()),
                    piece(cut, "sill board"),
                    piece(cut, "left jamb"),
                    piece(cut, "head"),
                    cut.layers() + " "
                            + InWords.of(window.takeoff().opening().inside().finish()),
                    Inches.text(cut.sawDepthIn())));
        }
        cells.add(Inches.text(cut.depthLeftIn()));
        cells.add(Inches.text(tape.sillIn()));
        cells.add(Inches.text(tape.jambIn()));
        cells.add(Inches.text(tape.headIn()));
        cells.add(screws(geometry.fasteners()));
        return cells;
    }

    private static String piece(CutBack cut, String name) {
        return cut.pieces().stream()
                .filter(piece -> piece.tradeName().equals(name))
                .map(piece -> Inches.text(piece.lengthIn()))
                .findFirst()
                .orElseThrow();
    }

    static String screws(List<Fastening.Fastener> fasteners) {
        return turn(fasteners, Turn.CORNER)
                + " + " + turn(fasteners, Turn.MIDDLE_OF_JAMB)
                + " + " + turn(fasteners, Turn.MIDDLE_OF_HEAD_OR_SILL)
                + " + " + turn(fasteners, Turn.THE_REST)
                + " = " + fasteners.size();
    }

    private static long turn(List<Fastening.Fastener> fasteners, Turn turn) {
        return fasteners.stream().filter(screw -> screw.turn() == turn).count();
    }

    /** Joint, sill pan and trim of units that are set to the rough opening without a flange. */
    static TableView joined(List<Window> windows, Scenario scenario) {
        TableView.Builder table = TableView.of(
                        "Joint around each unit, sill pan and trim over the joint; the pan is turned up "
                                + Inches.text(scenario.value(Scalar.TAPE_TAIL_IN)) + " at both jambs")
                .texts("No.")
                .numbers(
                        "Joint at each jamb",
                        "Joint at head and sill",
                        "Sill pan",
                        "Trim at jambs, 2 of",
                        "Trim at head and sill")
                .texts("Inside");
        for (Window window : windows) {
            OrderSize order = window.takeoff().geometry().order();
            table.row(
                    window.mark(),
                    Inches.text((order.openingWidthIn() - order.overallWidthIn()) / 2),
                    Inches.text((order.openingHeightIn() - order.heightIn()) / 2),
                    Inches.text(order.openingWidthIn() + 2 * scenario.value(Scalar.TAPE_TAIL_IN)),
                    Inches.text(order.openingHeightIn()),
                    Inches.text(order.openingWidthIn()),
                    InWords.of(window.takeoff().opening().inside().finish()));
        }
        return table.build();
    }

    static TableView capped(List<Window> windows, Scenario scenario) {
        String stretch = "; stretch-out " + Inches.text(scenario.value(Scalar.COIL_STRETCH_OUT_IN))
                + " at head and legs, " + Inches.text(scenario.value(Scalar.COIL_STRETCH_OUT_SILL_IN)) + " at the sill";
        TableView.Builder table = TableView.of("Capping over the old frame, tails included" + stretch)
                .texts("No.")
                .numbers("Sill piece", "Legs, 2 of", "Head piece", "Coil")
                .texts("Old frame that stays", "Inside");
        for (Window window : windows) {
            Capping capping = window.takeoff().geometry().capping();
            table.row(
                    window.mark(),
                    Inches.text(capping.sillIn()),
                    Inches.text(capping.jambIn()),
                    Inches.text(capping.headIn()),
                    Numbers.plain(Units.squareInchesToSquareFeet(capping.areaIn2()), 1) + " ft²",
                    InWords.of(window.takeoff().opening().frame().material()) + ", "
                            + switch (window.takeoff().opening().frame().condition()) {
                                case SOUND -> "sound";
                                case WORN -> "worn: level and pack the sill";
                                case ROTTEN -> "ROTTEN: mend it first, or do not set an insert";
                                case UNKNOWN -> "not looked at: probe sill and corners";
                            },
                    InWords.of(window.takeoff().opening().inside().finish()));
        }
        return table.build();
    }
}
