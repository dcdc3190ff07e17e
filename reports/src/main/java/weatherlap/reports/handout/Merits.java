package weatherlap.reports.handout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;

/** What speaks for each method at a house, a sentence a method. */
final class Merits {
    private static final double LEAST_GLASS_FT2 = 0.1;

    private Merits() {}

    /** The second of the two first, as a rule the smaller job; a method that nothing speaks for is left out. */
    static List<String> sentences(HouseResult house) {
        Map<Method, List<String>> merits = new EnumMap<>(Method.class);
        for (Method method : house.contrast().both()) {
            merits.put(
                    method,
                    of(house.method(method), house.method(house.contrast().other(method))));
        }
        return Stream.of(house.contrast().second(), house.contrast().first())
                .filter(method -> !merits.get(method).isEmpty())
                .map(method -> InWords.capital(method.inSentence()) + " " + InWords.list(merits.get(method)) + ".")
                .toList();
    }

    private static List<String> of(MethodResult own, MethodResult other) {
        List<String> merits = new ArrayList<>();
        double cheaper = other.priceUsd() - own.priceUsd();
        if (Math.round(cheaper / 10) > 0) {
            merits.add("costs " + Phrases.usd(cheaper) + " less");
        }
        int sooner = other.crewDays() - own.crewDays();
        if (sooner > 0) {
            merits.add("is done " + Numbers.count(sooner, "day", "days") + " sooner");
        }
        double more = own.glassFt2() - other.glassFt2();
        if (more > LEAST_GLASS_FT2) {
            merits.add("keeps " + Numbers.plain(more, 1) + " square feet more glass");
        }
        if (LeakRank.of(own, other) == LeakRank.LESS) {
            merits.add("has the lower chance of leak damage");
        }
        return merits;
    }
}
