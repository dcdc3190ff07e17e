package weatherlap.analysis.drivers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import weatherlap.analysis.sensitivity.PartialInformation.Worth;
import weatherlap.analysis.sensitivity.SobolIndices.Index;
import weatherlap.analysis.sensitivity.SobolIndices.Share;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scenario;

/** What the study of drivers says, for an analyst. */
public final class DriverWords {
    private static final int MEASURE = 3;

    private DriverWords() {}

    public static List<String> of(DriverStudy study) {
        List<String> words = new ArrayList<>();
        words.add(tables(study));
        choices(study).ifPresent(words::add);
        words.addAll(measure(study));
        words.add(estimator(study));
        words.add(RecordWords.of(
                study.factors(),
                study.information().worths(),
                study.information().nothingUsd()));
        return words;
    }

    /** What was not varied. */
    public static String held(Scenario scenario) {
        return "Shares and worths are those under the choices in force; for repairs within the warranty: warranty_covers = "
                + scenario.choice(Choice.WARRANTY_COVERS)
                + ". Each method is taken at every window, whatever limits let be built.";
    }

    private static String tables(DriverStudy study) {
        Predicate<Index> tells = index -> !small(index.total());
        List<Index> tables = study.rows().stream()
                .filter(row -> row.group() && row.outcome() == Outcome.COST_DIFFERENCE)
                .flatMap(row -> row.indices().stream())
                .sorted(Comparator.comparingDouble(
                        (Index index) -> -index.total().value()))
                .toList();
        String shares = tables.stream()
                .filter(tells)
                .map(index -> index.group() + " " + share(index.firstOrder()) + " by itself, " + share(index.total())
                        + " with what it does together with others")
                .collect(Collectors.joining("; "));
        String others = tables.stream().filter(tells.negate()).map(Index::group).collect(Collectors.joining(", "));
        Share together = study.indices().get(Outcome.COST_DIFFERENCE.ordinal()).together();
        return "Share of the variance of the cost difference, by table: " + shares
                + (others.isEmpty() ? "" : "; under 0.01 in all: " + others)
                + "; " + share(together) + " comes of several tables together, of none by itself.";
    }

    private static Optional<String> choices(DriverStudy study) {
        List<String> moved = study.rows().stream()
                .filter(row -> row.outcome() == Outcome.COST_DIFFERENCE
                        && !row.group()
                        && Choice.of(row.assumption()).isPresent()
                        && row.swing().width() >= 1)
                .sorted(Comparator.comparingDouble(row -> -row.swing().width()))
                .map(row -> String.format(
                        Locale.ROOT,
                        "%s moves it by $%,.0f (%s to %s)",
                        row.assumption(),
                        row.swing().width(),
                        row.lowValue(),
                        row.highValue()))
                .toList();
        return moved.isEmpty()
                ? Optional.empty()
                : Optional.of("What is chosen has no variance; with every number at its median "
                        + String.join(", ", moved) + " a house.");
    }

    /** Too little to be told from nothing at two digits. */
    private static boolean small(Share share) {
        return share.value() + share.error() < 0.01;
    }

    private static String share(Share share) {
        return small(share)
                ? "under 0.01"
                : String.format(Locale.ROOT, "%.2f \u00b1 %.2f", share.value(), Math.max(0.01, share.error()));
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
                "Shares after Jansen 1999, of the mean variance of a house's difference, on %d digitally shifted Sobol' sequences of %d"
                        + " points, each with a house of its own; errors are standard errors over the sequences and hold the"
                        + " choice of houses. Worth: expected value of partial perfect information by regression on %d points.",
                study.effort().design().replicates(),
                study.effort().design().points(),
                study.effort().informationPoints());
    }
}
