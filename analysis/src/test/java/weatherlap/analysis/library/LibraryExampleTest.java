package weatherlap.analysis.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.lang.reflect.Executable;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.execution.LocalExecutionControlProvider;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.tables.HouseTable;
import weatherlap.analysis.tables.OpeningTable;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.climate.DemoClimate;
import weatherlap.datasets.portfolio.DemoPortfolio;
import weatherlap.datasets.portfolio.Portfolios;
import weatherlap.datasets.table.Loaded;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.run.Simulator;

/** The example of the README in a shell of Java, and the members that programs of others may rest on. */
class LibraryExampleTest {
    private static final List<Class<?>> STABLE = List.of(
            AssumptionTables.class,
            Loaded.class,
            Portfolios.class,
            DemoPortfolio.class,
            DemoClimate.class,
            RainClimate.class,
            Simulator.class,
            HouseChoice.class,
            HouseTable.class,
            OpeningTable.class,
            ResultTable.class);

    @Test
    void runsInTheShellAsItStands() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        int start = readme.indexOf("```java\n") + "```java\n".length();
        String out = run(readme.substring(start, readme.indexOf("```", start)));
        assertThat(out).contains("house_id", "price_usd", "G0001", "full_flange", "insert");
    }

    private static String run(String code) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream before = System.out;
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8)); // the shell runs in this process
        try (JShell shell = JShell.builder()
                .executionEngine(new LocalExecutionControlProvider(), null)
                .build()) {
            String classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
            Arrays.stream(classPath.split(java.io.File.pathSeparator)).forEach(shell::addToClasspath);
            for (String rest = code; !rest.isBlank(); ) {
                SourceCodeAnalysis.CompletionInfo next =
                        shell.sourceCodeAnalysis().analyzeCompletion(rest);
                for (SnippetEvent event : shell.eval(next.source())) {
                    assertThat(event.exception()).as(next.source()).isNull();
                    assertThat(event.status()).as(next.source()).isEqualTo(Snippet.Status.VALID);
                }
                rest = next.remaining();
            }
        } finally {
            System.setOut(before);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void stableMembersStay() throws IOException {
        try (InputStream in = LibraryExampleTest.class.getResourceAsStream("stable-signatures.txt")) {
            List<String> promised = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            assertThat(members()).containsAll(promised);
            assertThat(promised).hasSizeGreaterThan(STABLE.size());
        }
    }

    private static List<String> members() {
        return STABLE.stream()
                .flatMap(type -> Stream.concat(Arrays.stream(type.getConstructors()), Arrays.stream(type.getMethods())))
                .filter(member -> Modifier.isPublic(member.getModifiers()))
                .map(LibraryExampleTest::signature)
                .toList();
    }

    private static String signature(Executable member) {
        String returned = member instanceof java.lang.reflect.Method method
                ? method.getReturnType().getSimpleName() + " "
                : "new ";
        return member.getDeclaringClass().getName() + ": " + returned
                + member.getName().replaceAll(".*\\.", "")
                + Arrays.stream(member.getParameterTypes())
                        .map(Class::getSimpleName)
                        .collect(Collectors.joining(", ", "(", ")"));
    }
}
