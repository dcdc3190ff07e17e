package weatherlap.reports;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.Serializable;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.charts.kit.Fonts;
import weatherlap.charts.kit.TemporaryFolder;

/** What each module may use. The imports of the compiled classes are held against it. */
@AnalyzeClasses(
        packages = "weatherlap",
        importOptions = {DoNotIncludeTests.class, ArchitectureTest.NoTestJars.class})
class ArchitectureTest {
    /** Another module's tests come as a jar where the build packs them, as a folder where it does not. */
    static final class NoTestJars implements ImportOption {
        @Override
        public boolean includes(Location location) {
            return !location.contains("-tests.jar");
        }
    }

    private static final List<String> MODULES = List.of("sim", "datasets", "analysis", "charts", "reports");

    /** Names of the methods of {@link java.nio.file.Files} that change the file system. */
    private static final Set<String> FILES_THAT_WRITE = Set.of(
            "write",
            "writeString",
            "newBufferedWriter",
            "newOutputStream",
            "newByteChannel",
            "copy",
            "move",
            "delete",
            "deleteIfExists",
            "createFile",
            "createDirectory",
            "createDirectories",
            "createTempFile",
            "createTempDirectory",
            "createLink",
            "createSymbolicLink");

    private static final Set<String> CLOCKS = Set.of(
            "java.time.Instant",
            "java.time.LocalDate",
            "java.time.LocalTime",
            "java.time.LocalDateTime",
            "java.time.OffsetDateTime",
            "java.time.ZonedDateTime",
            "java.time.Year",
            "java.time.YearMonth");

    /** Its first table looks through all classes of the program for readers and writers: a tenth of a short run. */
    @ArchTest
    static final ArchRule NO_TABLESAW_TABLE_WHILE_READING_AND_WRITING = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("weatherlap.analysis.tables.ResultTable")
            .and()
            .resideOutsideOfPackage("weatherlap.reports.diff..")
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("tech.tablesaw.api.Table");

    @ArchTest
    static void allModulesAreSeen(JavaClasses classes) {
        assertThat(classes.size()).isGreaterThanOrEqualTo(5);
        assertThat(MODULES).allSatisfy(module -> assertThat(classes)
                .as("classes of %s", module)
                .anyMatch(c -> (c.getPackageName() + ".").startsWith("weatherlap." + module + ".")));
    }

    @ArchTest
    static final ArchRule modules_use_only_those_below = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("weatherlap..")
            .withOptionalLayers(true)
            .layer("sim")
            .definedBy("weatherlap.sim..")
            .layer("datasets")
            .definedBy("weatherlap.datasets..")
            .layer("analysis")
            .definedBy("weatherlap.analysis..")
            .layer("charts")
            .definedBy("weatherlap.charts..")
            .layer("reports")
            .definedBy("weatherlap.reports..")
            .whereLayer("sim")
            .mayNotAccessAnyLayer()
            .whereLayer("datasets")
            .mayOnlyAccessLayers("sim")
            .whereLayer("analysis")
            .mayOnlyAccessLayers("sim", "datasets")
            .whereLayer("charts")
            .mayOnlyAccessLayers("sim", "analysis")
            .whereLayer("reports")
            .mayOnlyAccessLayers("sim", "datasets", "analysis", "charts")
            .ensureAllClassesAreContainedInArchitecture();

    @ArchTest
    static final ArchRule packages_form_no_circle =
            slices().matching("weatherlap.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule sim_is_plain_java_with_commons = noClasses()
            .that()
            .resideInAPackage("weatherlap.sim..")
            .should()
            .dependOnClassesThat(resideOutsideOfPackages(
                            "weatherlap.sim..",
                            "java.lang..",
                            "java.math..",
                            "java.text..",
                            "java.time..",
                            "java.util..",
                            "org.apache.commons.math3..",
                            "org.apache.commons.rng..",
                            "org.apache.commons.statistics..")
                    .and(describe(
                            "are not the mark of what may be sent",
                            (JavaClass c) -> !c.isEquivalentTo(Serializable.class))));

    @ArchTest
    static final ArchRule only_reports_writes_files = noClasses()
            .that()
            .resideOutsideOfPackage("weatherlap.reports..")
            .and(describe(
                    "lay no fonts out for Java2D",
                    (JavaClass c) -> !c.isEquivalentTo(Fonts.class) && !c.isEquivalentTo(TemporaryFolder.class)))
            .should()
            .callCodeUnitWhere(target(writesFiles()));

    @ArchTest
    static final ArchRule only_reports_prints = noClasses()
            .that()
            .resideOutsideOfPackage("weatherlap.reports..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(Throwable.class, "printStackTrace");

    @ArchTest
    static final ArchRule sim_draws_only_from_named_streams = noClasses()
            .that()
            .resideInAPackage("weatherlap.sim..")
            .should()
            .callMethod(Math.class, "random")
            .orShould()
            .callMethod(StrictMath.class, "random")
            .orShould()
            .dependOnClassesThat(assignableTo(java.util.Random.class))
            .orShould()
            .dependOnClassesThat(assignableTo(java.util.SplittableRandom.class))
            .orShould()
            .callMethod(java.util.UUID.class, "randomUUID");

    @ArchTest
    static final ArchRule sim_reads_no_clock =
            noClasses().that().resideInAPackage("weatherlap.sim..").should().callCodeUnitWhere(target(readsTheClock()));

    /** The rules that look for a call by its name would pass for ever if the name were wrong: each must name a method. */
    @ArchTest
    static void namesOfForbiddenMethodsExist(JavaClasses classes) {
        Set<String> methods = Stream.of(java.nio.file.Files.class.getMethods())
                .map(java.lang.reflect.Method::getName)
                .collect(Collectors.toSet());
        assertThat(methods).containsAll(FILES_THAT_WRITE);
        assertThat(CLOCKS).allSatisfy(name -> assertThat(Class.forName(name).getMethod("now"))
                .isNotNull());
    }

    private static DescribedPredicate<CodeUnitCallTarget> writesFiles() {
        return describe("write files", target -> switch (target.getOwner().getName()) {
            case "java.nio.file.Files" -> FILES_THAT_WRITE.contains(target.getName());
            case "java.io.FileWriter", "java.io.FileOutputStream", "java.io.RandomAccessFile" -> true;
            case "java.io.PrintWriter", "java.io.PrintStream" ->
                target.getName().equals("<init>")
                        && Set.of("java.io.File", "java.lang.String")
                                .contains(target.getRawParameterTypes().get(0).getName());
            case "java.io.File" ->
                Set.of("createNewFile", "createTempFile", "delete", "mkdir", "mkdirs", "renameTo")
                        .contains(target.getName());
            default -> false;
        });
    }

    private static DescribedPredicate<CodeUnitCallTarget> readsTheClock() {
        return describe("read the clock", target -> {
            String owner = target.getOwner().getName();
            String name = target.getName();
            return switch (owner) {
                case "java.lang.System" ->
                    Set.of("currentTimeMillis", "nanoTime").contains(name);
                case "java.util.Date", "java.util.GregorianCalendar" -> name.equals("<init>");
                case "java.time.Clock" -> true;
                default -> CLOCKS.contains(owner) && name.equals("now");
            };
        });
    }
}
