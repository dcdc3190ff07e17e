package weatherlap.bundle;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/** Makes {@code reports/bundle/target/weatherlap-VERSION-SYSTEM.tar.gz} (zip on Windows) and, where Debian's tools are there, a {@code .deb}. */
public final class Bundle {
    private static final String NAME = "weatherlap";
    private static final String MAIN = OneModule.NAME + "/weatherlap.reports.Main";
    /**
     * For runs of seconds and a few minutes: the first compiler alone, early and with less put into one another, so that it has less to
     * compile; the collector that stops for the shortest time, with room for new objects in which a sheet is made without it, less of it where
     * there is less memory, of which it does not say anything; for what lasts room at once, since it goes through all of it before it asks for
     * more; no counters for tools that watch Java, which cost a tenth of a second; the archive of classes where it was made to lie, as in every Java
     * up to 16, since to move it costs another. By {@code weatherlap.launched} the program knows how to start itself again with both compilers for a longer run.
     */
    private static final List<String> FLAGS = List.of(
            "-XX:TieredStopAtLevel=1",
            "-XX:C1MaxInlineSize=20",
            "-XX:C1MaxInlineLevel=4",
            "-XX:Tier3InvocationThreshold=100",
            "-XX:Tier3MinInvocationThreshold=50",
            "-XX:Tier3CompileThreshold=1000",
            "-XX:Tier3BackEdgeThreshold=20000",
            "-XX:+UnlockDiagnosticVMOptions",
            "-XX:ArchiveRelocationMode=0",
            "-XX:+UseParallelGC",
            "-XX:MaxNewSize=400m",
            "-XX:InitialRAMPercentage=8",
            "-XX:-UsePerfData",
            "-Xlog:gc+ergo=off",
            "-Dweatherlap.launched=" + MAIN);

    private final Path root;
    private final String version;
    private final Path target;
    private final Path work;
    private final boolean isPackaged;

    private Bundle(Path root, String version, boolean isPackaged) {
        this.root = root;
        this.version = version;
        this.target = root.resolve("reports/bundle/target");
        this.work = target.resolve("work");
        this.isPackaged = isPackaged;
    }

    /**
     * Runs after the program is packaged.
     *
     * @param arguments the folder of the sources; the version; whether a package to install is wanted beside the archive
     */
    public static void main(String[] arguments) throws IOException {
        new Bundle(Path.of(arguments[0]).toRealPath(), arguments[1], Boolean.parseBoolean(arguments[2])).make();
    }

    private void make() throws IOException {
        Tools.delete(work);
        Files.createDirectories(work);
        Path program = root.resolve("reports/target/weatherlap.jar");
        List<Path> jars = withLibraries(program);
        Path module = OneModule.of(jars, work);
        Path runtime = runtime(module);
        ReadyClasses.of(List.of(runtime.resolve("bin").resolve("java").toString(), "-m", MAIN), module, work);
        Path licenses = work.resolve("licenses");
        Licenses.write(
                root,
                licenses,
                jars.subList(1, jars.size()),
                program.resolveSibling("lib").resolve("LICENCES.txt"));
        Path image = image(runtime, licenses);
        System.out.println("bundle: " + Archive.of(image, target.resolve(NAME + "-" + version + "-" + system())));
        if (isPackaged && hasDebianTools()) {
            install(image);
        }
        Tools.delete(work);
    }

    /** The jar and those that its manifest names, in the order of the class path. */
    private static List<Path> withLibraries(Path program) throws IOException {
        List<Path> jars = new ArrayList<>(List.of(program));
        try (JarFile jar = new JarFile(program.toFile())) {
            for (String library :
                    jar.getManifest().getMainAttributes().getValue("Class-Path").split(" ")) {
                jars.add(program.resolveSibling(library));
            }
        }
        return jars;
    }

    /** With what tells the compilers, after the houses of a long run, that the second is to compile nothing more. */
    private Path runtime(Path module) throws IOException {
        Path runtime = work.resolve("runtime");
        Tools.jdk(
                "jlink",
                List.of(
                        "--module-path",
                        module.toString(),
                        "--add-modules",
                        OneModule.NAME + ",jdk.management",
                        "--no-header-files",
                        "--no-man-pages",
                        "--output",
                        runtime.toString()));
        Files.writeString(
                runtime.resolve("conf").resolve("after-houses.json"), "[{match: \"*.*\", c2: {Exclude: true}}]\n");
        return runtime;
    }

    private Path image(Path runtime, Path licenses) throws IOException {
        Tools.delete(target.resolve(NAME));
        List<String> arguments = new ArrayList<>(List.of(
                "--type",
                "app-image",
                "--name",
                NAME,
                "--app-version",
                version,
                "--runtime-image",
                runtime.toString(),
                "--module",
                MAIN,
                "--dest",
                target.toString()));
        FLAGS.forEach(flag -> arguments.addAll(List.of("--java-options", flag)));
        if (isWindows()) {
            arguments.add("--win-console");
        }
        Tools.jdk("jpackage", arguments);
        Path image = target.resolve(isMac() ? NAME + ".app" : NAME);
        if (!isWindows() && !isMac()) {
            ShellLauncher.replace(image.resolve("bin").resolve(NAME), FLAGS, MAIN);
        }
        Files.move(licenses, (isMac() ? image.resolve("Contents") : image).resolve("licenses"));
        return image;
    }

    /** The package takes of an image only what the JDK itself puts there; so the texts of licenses go beside the program's own files. */
    private void install(Path image) throws IOException {
        Files.move(image.resolve("licenses"), image.resolve("lib/app/licenses"));
        String said = Tools.jdk(
                "jpackage",
                List.of(
                        "--type",
                        "deb",
                        "--name",
                        NAME,
                        "--app-version",
                        version,
                        "--app-image",
                        image.toString(),
                        "--license-file",
                        root.resolve("LICENSE").toString(),
                        "--description",
                        "Compares ways to replace the windows of standing houses",
                        "--vendor",
                        "Weatherlap",
                        "--linux-deb-maintainer",
                        "nobody@weatherlap.invalid",
                        "--resource-dir",
                        root.resolve("reports/bundle/src/main/jpackage").toString(),
                        "--dest",
                        target.toString()));
        System.out.println("bundle: a package for Debian beside it" + (said.isBlank() ? "" : "\n" + said.strip()));
    }

    private static boolean hasDebianTools() {
        return Stream.of("dpkg-deb", "fakeroot")
                .allMatch(tool -> Stream.of(System.getenv("PATH").split(File.pathSeparator))
                        .anyMatch(folder -> Files.isExecutable(Path.of(folder, tool))));
    }

    private static boolean isWindows() {
        return system().startsWith("windows");
    }

    private static boolean isMac() {
        return system().startsWith("mac");
    }

    private static String system() {
        return (System.getProperty("os.name") + "-" + System.getProperty("os.arch"))
                .toLowerCase(Locale.ROOT)
                .replaceAll("^(windows|mac)[^-]*", "$1");
    }
}
