package weatherlap.reports.handout;

import java.util.List;
import java.util.Set;
import weatherlap.reports.handout.Handout.MethodColumn;
import weatherlap.reports.words.FamilyWords;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.method.Method;

/** What each method of the sheet is, and what it can and cannot do. */
record MethodLines(Cladding cladding, FamilyWords words) {
    /** A method a column, the same things told of each in the same order. */
    List<MethodColumn> columns(Set<Method> methods) {
        return methods.stream()
                .map(method -> new MethodColumn(
                        FamilyWords.capital(words.name(method)),
                        method.label(),
                        List.of(
                                words.name(method, method.takesSidingDown() ? "what" : "what." + behind()),
                                words.name(method, "mends." + behind()),
                                words.name(method, "keeps." + behind()),
                                words.name(method, "costs"))))
                .toList();
    }

    private String behind() {
        return cladding.inCourses() ? "siding" : "masonry";
    }
}
