package weatherlap.analysis.drivers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import weatherlap.analysis.sensitivity.PartialInformation.Worth;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scenario;

/** What the study of drivers says, for an analyst. */
public final class DriverWords {
    private static final int MEASURE = 3;

    private DriverWords() {}

    public static List<String> of(DriverStudy study) {
        List<String> words = new ArrayList<>();
        words.add(tables(study));
        words.addAll(measure(study));
        words.add(estimator(study));
        return words;
    }

    /** What was not varied. */
    public static String held(Scenario scenario) {
        return "Choices are not varied; in force for repairs within the warranty: warranty_covers = "
                + scenario.choice(Choice.WARRANTY_COVERS)
                + ". Each method is taken at every window, whatever limits let be built.";
    }

    private static String tables(DriverStudy study) {
        List<String> shares = study.rows().stream()
                .filter(row -> row.group()
                        && row.outcome() == Outcome.COST_DIFFERENCE
                        && row.indices().isPresent())
                .sorted(Comparator.comparingDouble(
                        (DriverRow row) -> -row.indices().orElseThrow().total()))
                .map(row -> String.format(
                        Locale.ROOT,
                        "%s %.2f \u00b1 %.2f",
                        row.assumption(),
                        row.indices().orElseThrow().total(),
                        row.indices().orElseThrow().totalError()))
                .toList();
        return "Total share of the variance of the cost difference, by table: " + String.join(", ", shares) + ".";
    }

    /** Which rates to measure next, and what that is worth. */
    private static List<String> measure(DriverStudy study) {
        InformationStudy information = study.information();
        List<Integer> worthy = information.worthMeasuring(MEASURE);
        List<String> words = new ArrayList<>();
        for (int rank = 0; rank < worthy.size(); rank++) {
            Factor factor = study.factors().get(worthy.get(rank));
            Worth worth = information.worths().get(worthy.get(rank));
            words.add(String.format(
                    Locale.ROOT,
                    "Measure next, %d: %s (%s). Knowing it is worth $%,.0f \u00b1 %,.0f a house.",
                    rank + 1,
                    factor.name(),
                    factor.meaning(),
                    worth.value(),
                    worth.error()));
        }
        words.add(String.format(
                Locale.ROOT,
                "%s Knowing everything is worth $%,.0f a house; columns of noise look worth up to $%,.1f.",
                worthy.size() == MEASURE
                        ? "No single value is worth more than these."
                        : worthy.isEmpty()
                                ? "No single value is worth more than noise: the choice would stay as it is."
                                : "No other value stands out of the noise.",
                information.everythingUsd(),
                information.nothingUsd()));
        return words;
    }

    private static String estimator(DriverStudy study) {
        return String.format(
                Locale.ROOT,
                "First order after Janon et al. 2014, total after Jansen 1999, on %d digitally shifted Sobol' sequences of %d points;"
                        + " errors are standard errors over the sequences, each with houses of its own, and hold the choice of houses. Worth: expected value of partial perfect information by"
                        + " regression on %d points.",
                study.effort().design().replicates(),
                study.effort().design().points(),
                study.effort().informationPoints());
    }
}
