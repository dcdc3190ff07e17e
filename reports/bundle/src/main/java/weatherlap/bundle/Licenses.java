package weatherlap.bundle;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/** The texts that must go with the libraries: from the jars themselves; for those that hold none, by the license that their makers state. */
final class Licenses {
    private final Path root;
    private final Path target;
    private final List<String> stated;

    private Licenses(Path root, Path target, List<String> stated) {
        this.root = root;
        this.target = target;
        this.stated = stated;
    }

    /**
     * Writes them all.
     *
     * @param root of the sources of the program
     * @param stated the list of libraries with their licenses
     * @throws IllegalStateException if a library would go without a text
     */
    static void write(Path root, Path target, List<Path> libraries, Path stated) throws IOException {
        Files.createDirectories(target);
        Files.copy(root.resolve("LICENSE"), target.resolve("LICENSE"));
        Files.copy(root.resolve("reports/bundle/src/main/licenses/READ-ME-FIRST.txt"), target.resolve("READ-ME-FIRST.txt"));
        Files.copy(stated, target.resolve("LIBRARIES.txt"));
        Licenses licenses = new Licenses(root, target, Files.readAllLines(stated));
        for (Path library : libraries) {
            licenses.write(library);
        }
        Path sources = Files.createDirectories(target.resolve("sources"));
        try (Stream<Path> jars = Files.list(root.resolve("reports/bundle/target/sources"))) {
            for (Path jar : jars.toList()) {
                Files.copy(jar, sources.resolve(jar.getFileName()));
            }
        }
    }

    private void write(Path library) throws IOException {
        String name = library.getFileName().toString().replaceFirst("\\.jar$", "");
        Path folder = Files.createDirectories(target.resolve(name));
        List<String> found = new ArrayList<>();
        try (JarFile jar = new JarFile(library.toFile())) {
            for (JarEntry entry : Collections.list(jar.entries())) {
                String file = entry.getName().substring(entry.getName().lastIndexOf('/') + 1);
                if (!isText(file)) {
                    continue;
                }
                try (InputStream in = jar.getInputStream(entry)) {
                    Files.copy(in, folder.resolve(file));
                }
                found.add(file);
            }
        }
        boolean isOwn = OneModule.isOwn(library);
        if (!isOwn
                && found.stream()
                        .noneMatch(file -> file.toLowerCase(Locale.ROOT).startsWith("licen"))) {
            Files.copy(textFor(name), folder.resolve("LICENSE.txt"));
        }
        if (isOwn && found.isEmpty()) {
            Files.delete(folder);
        }
    }

    private static boolean isText(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        return !name.endsWith(".class") && (name.startsWith("license") || name.startsWith("notice"));
    }

    private Path textFor(String name) {
        String bare = name.replaceFirst("-[0-9][^-]*.*$", "");
        Path own = root.resolve("reports/bundle/src/main/licenses").resolve(bare + ".txt");
        if (Files.exists(own)) {
            return own;
        }
        boolean isApache =
                stated.stream().anyMatch(line -> line.contains("(Apache-2.0)") && line.contains(":" + bare + ":"));
        if (isApache) {
            return root.resolve("LICENSE");
        }
        throw new IllegalStateException("no text of the license of " + name + "; put it into reports/bundle/src/main/licenses");
    }
}
