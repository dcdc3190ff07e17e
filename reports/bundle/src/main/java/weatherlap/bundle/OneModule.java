package weatherlap.bundle;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.lang.module.ModuleFinder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.zip.ZipFile;

/**
 * All jars as one open module. Of a file that stands in several, the first counts, as on a class path; classes of packages that the
 * runtime has itself are left out, as on a class path too.
 */
final class OneModule {
    static final String NAME = "weatherlap";
    private static final String SERVICES = "META-INF/services/";

    private final Path classes;
    private final Set<String> ofTheRuntime = ModuleFinder.ofSystem().findAll().stream()
            .flatMap(module -> module.descriptor().packages().stream())
            .collect(Collectors.toUnmodifiableSet());
    private final Map<String, Set<String>> services = new TreeMap<>();

    private OneModule(Path classes) {
        this.classes = classes;
    }

    /** The folder of the module. The modules of the JDK that it needs are found by {@code jdeps}, not listed here. */
    static Path of(List<Path> jars, Path work) throws IOException {
        OneModule module = new OneModule(work.resolve(NAME));
        for (Path jar : jars) {
            module.take(jar);
        }
        Path source = work.resolve("module-info.java");
        Files.writeString(source, module.declaration(needed(jars)));
        String folder = module.classes.toString();
        Tools.jdk("javac", List.of("--patch-module", NAME + "=" + folder, "-d", folder, source.toString()));
        return module.classes;
    }

    private static String needed(List<Path> jars) {
        List<String> arguments = new ArrayList<>(List.of(
                "--print-module-deps",
                "--ignore-missing-deps", // what a library could use, were it there
                "--recursive",
                "--multi-release",
                String.valueOf(Runtime.version().feature()),
                "--class-path",
                jars.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator))));
        jars.stream().filter(OneModule::isOwn).map(Path::toString).forEach(arguments::add);
        String[] lines = Tools.jdk("jdeps", arguments).strip().split("\\R");
        return lines[lines.length - 1]; // above it stand warnings of packages that the JDK has too
    }

    static boolean isOwn(Path jar) {
        return jar.getFileName().toString().startsWith(NAME);
    }

    private void take(Path jar) throws IOException {
        try (JarFile file = new JarFile(jar.toFile(), false, ZipFile.OPEN_READ, Runtime.version())) {
            for (JarEntry entry : file.versionedStream().toList()) {
                if (entry.isDirectory() || isLeftOut(entry.getName())) {
                    continue;
                }
                if (entry.getName().startsWith(SERVICES)) {
                    note(entry.getName().substring(SERVICES.length()), file, entry);
                }
                Path target = classes.resolve(entry.getName());
                if (!Files.exists(target)) {
                    Files.createDirectories(target.getParent());
                    try (InputStream in = file.getInputStream(entry)) {
                        Files.copy(in, target);
                    }
                }
            }
        }
    }

    private boolean isLeftOut(String name) {
        int end = name.lastIndexOf('/');
        return name.endsWith("module-info.class")
                || name.startsWith("META-INF/maven/")
                || name.equals("META-INF/INDEX.LIST")
                || (end > 0 && ofTheRuntime.contains(name.substring(0, end).replace('/', '.')));
    }

    private void note(String service, JarFile file, JarEntry entry) throws IOException {
        if (service.contains("/")) {
            return; // a folder that only looks like a service
        }
        try (InputStream in = file.getInputStream(entry)) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> line.replaceFirst("#.*", "").strip())
                    .filter(line -> !line.isEmpty())
                    .forEach(services.computeIfAbsent(service, any -> new LinkedHashSet<>())::add);
        }
    }

    private String declaration(String needed) throws IOException {
        StringBuilder text = new StringBuilder("open module " + NAME + " {\n");
        for (String module : needed.split(",")) {
            text.append("    requires ").append(module).append(";\n");
        }
        // a package that is exported makes the module one of those that a start without a named module loads
        text.append("    exports weatherlap.reports;\n");
        for (String service : ServiceUses.in(classes)) {
            text.append("    uses ").append(service).append(";\n");
        }
        services.forEach((service, providers) -> text.append("    provides ")
                .append(service)
                .append(" with ")
                .append(String.join(", ", providers))
                .append(";\n"));
        return text.append("}\n").toString();
    }
}
