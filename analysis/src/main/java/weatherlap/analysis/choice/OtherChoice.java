package weatherlap.analysis.choice;

import java.util.List;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.Simulator;

/**
 * What one house comes to when one choice of the scenario is taken otherwise while all else stays drawn as it was: authorities differ on
 * shelter, on what cold does to work, and on sealing the bottom flange; shops on how to price and
 * on what their warranty covers; crews in care.
 *
 * @param result of the house under the other choice
 */
public record OtherChoice(Choice choice, String word, HouseResult result) {
    private static final List<Choice> DISPUTED = List.of(
            Choice.SHELTER,
            Choice.SILL_FLANGE,
            Choice.WORKMANSHIP,
            Choice.COLD_CURVE,
            Choice.PRICING,
            Choice.WARRANTY_COVERS);

    /** Every word that the scenario could hold instead, choice by choice. */
    public static List<OtherChoice> of(Simulator simulator, House house) {
        Scenario scenario = simulator.assumptions().scenario();
        return DISPUTED.stream()
                .flatMap(choice -> choice.allowed().stream()
                        .filter(word -> !word.equals(scenario.choice(choice)))
                        .map(word -> new OtherChoice(
                                choice, word, simulator.withChoice(choice, word).simulate(house))))
                .toList();
    }

    /** As on the command line after {@code --set}. */
    public String setting() {
        return choice.key() + "=" + word;
    }
}
