package weatherlap.reports.jobs;

import java.util.List;
import java.util.stream.Collectors;
import weatherlap.analysis.words.InWords;
import weatherlap.reports.inputs.BadInput;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;

/** Methods that a user names, against those that a house is open to. */
final class ClosedMethod {
    private ClosedMethod() {}

    /**
     * Those of the methods that the house is open to.
     *
     * @throws BadInput where it is open to none of them
     */
    static List<Method> open(List<Method> methods, House house) {
        List<Method> open = methods.stream()
                .filter(method -> method.isOpenTo(house.cladding()))
                .toList();
        if (open.isEmpty()) {
            String others =
                    Method.openTo(house.cladding()).stream().map(Method::word).collect(Collectors.joining(" or "));
            throw new BadInput(List.of("--method: " + methods.get(0).label() + " does not go with " + house.id()
                    + ": no flanged unit fits behind " + InWords.of(house.cladding()) + "; name " + others));
        }
        return open;
    }
}
