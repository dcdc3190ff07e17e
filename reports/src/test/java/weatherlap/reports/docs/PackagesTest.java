package weatherlap.reports.docs;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The diagram of packages in DEVELOPERS.md is what the compiled classes import. Where it is not, the failure shows the new one, and
 * {@code -Dpackages.rewrite=true} writes it.
 *
 * <p>A package stands above those that use it. It names those that it uses itself, without those that they bring along.
 */
class PackagesTest {
    private static final List<String> MODULES = List.of("sim", "datasets", "analysis", "charts", "reports");

    @Test
    void theDiagramIsThatOfTheCode() throws IOException {
        Map<String, SortedSet<String>> uses = uses(new ClassFileImporter()
                .withImportOption(new DoNotIncludeTests())
                .withImportOption(location -> !location.contains("-tests.jar"))
                .importPackages("weatherlap"));
        Document document = Document.of("DEVELOPERS.md");
        if (Boolean.getBoolean("packages.rewrite")) {
            document.rewrite("packages", diagram(uses));
        } else {
            assertThat(document.block("packages")).isEqualTo(diagram(uses));
        }
    }

    @Test
    void whatOthersBringAlongIsLeftOut() {
        Map<String, SortedSet<String>> uses = new TreeMap<>(Map.of(
                "sim.a", new TreeSet<>(),
                "sim.b", new TreeSet<>(Set.of("sim.a")),
                "datasets.c", new TreeSet<>(Set.of("sim.a", "sim.b"))));
        assertThat(diagram(uses)).isEqualTo("""
                sim
                    a
                    b               a
                datasets
                    c               sim.b
                """);
    }

    private static Map<String, SortedSet<String>> uses(JavaClasses classes) {
        Map<String, SortedSet<String>> uses = new TreeMap<>();
        for (JavaClass from : classes) {
            SortedSet<String> used = uses.computeIfAbsent(name(from), key -> new TreeSet<>());
            from.getDirectDependenciesFromSelf().stream()
                    .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                    .filter(to -> to.getPackageName().startsWith("weatherlap."))
                    .map(PackagesTest::name)
                    .filter(to -> !to.equals(name(from)))
                    .forEach(used::add);
        }
        return uses;
    }

    /** Without {@code weatherlap.}; the module's own package counts as one named like the module. */
    private static String name(JavaClass type) {
        return type.getPackageName().substring("weatherlap.".length());
    }

    private static String diagram(Map<String, SortedSet<String>> uses) {
        Map<String, Set<String>> reached = new TreeMap<>();
        uses.keySet().forEach(name -> reach(name, uses, reached));
        StringBuilder text = new StringBuilder();
        for (String module : MODULES) {
            List<String> packages = uses.keySet().stream()
                    .filter(name -> (name + ".").startsWith(module + "."))
                    .sorted(Comparator.comparingInt((String name) -> depth(name, uses, module))
                            .thenComparing(Comparator.naturalOrder()))
                    .toList();
            text.append(packages.isEmpty() ? "" : module + "\n");
            for (String name : packages) {
                String shown = uses.get(name).stream()
                        .filter(used -> uses.get(name).stream()
                                .noneMatch(other -> !other.equals(used)
                                        && reached.getOrDefault(other, Set.of()).contains(used)))
                        .sorted(Comparator.comparing((String used) -> !used.startsWith(module + "."))
                                .thenComparing(Comparator.naturalOrder()))
                        .map(used -> within(used, module))
                        .collect(Collectors.joining(", "));
                text.append("    %-16s%s".formatted(within(name, module), shown).stripTrailing())
                        .append('\n');
            }
        }
        return text.toString();
    }

    private static String within(String name, String module) {
        return name.startsWith(module + ".") ? name.substring(module.length() + 1) : name;
    }

    /** All that a package uses, however far away. */
    private static Set<String> reach(
            String name, Map<String, SortedSet<String>> uses, Map<String, Set<String>> reached) {
        Set<String> known = reached.get(name);
        if (known != null) {
            return known;
        }
        Set<String> all = new TreeSet<>();
        reached.put(name, all);
        for (String used : uses.getOrDefault(name, new TreeSet<>())) {
            all.add(used);
            all.addAll(reach(used, uses, reached));
        }
        return all;
    }

    /** Steps from the package down to one that uses no other of its module. */
    private static int depth(String name, Map<String, SortedSet<String>> uses, String module) {
        return uses.get(name).stream()
                .filter(used -> used.startsWith(module + ".") && !Objects.equals(used, name))
                .mapToInt(used -> 1 + depth(used, uses, module))
                .max()
                .orElse(0);
    }
}
