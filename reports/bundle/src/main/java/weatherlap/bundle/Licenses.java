package weatherlap.bundle;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/** The texts that must go with the libraries: from the jars themselves; for those that hold none, by the license that their makers state. */
final class Licenses {
    /** Words that stand in the text of a license itself, and not where a file only names it. */
    private static final Map<String, String> WORDS = Map.of(
            "Apache-2.0", "TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION",
            "LGPL-2.1", "GNU LESSER GENERAL PUBLIC LICENSE TERMS AND CONDITIONS",
            "MIT", "Permission is hereby granted, free of charge",
            "BSD", "Redistribution and use in source and binary forms",
            "Unicode", "UNICODE LICENSE",
            "The SAX License", "I hereby abandon any property rights to SAX",
            "The W3C License", "SOFTWARE NOTICE AND LICENSE");

    private final Path root;
    private final Path texts;
    private final Path target;
    private final List<String> stated;

    private Licenses(Path root, Path target, List<String> stated) {
        this.root = root;
        this.texts = root.resolve("reports/bundle/src/main/licenses");
        this.target = target;
        this.stated = stated;
    }

    /**
     * Writes them all.
     *
     * @param root of the sources of the program
     * @param stated the list of libraries with their licenses
     * @throws IllegalStateException if a library would go without the text of a license that it is under
     */
    static void write(Path root, Path target, List<Path> libraries, Path stated) throws IOException {
        Files.createDirectories(target);
        Licenses licenses = new Licenses(root, target, Files.readAllLines(stated));
        Files.copy(root.resolve("LICENSE"), target.resolve("LICENSE"));
        Files.copy(licenses.texts.resolve("READ-ME-FIRST.txt"), target.resolve("READ-ME-FIRST.txt"));
        Files.copy(stated, target.resolve("LIBRARIES.txt"));
        for (Path library : libraries) {
            licenses.write(library);
        }
    }

    private void write(Path library) throws IOException {
        if (OneModule.isOwn(library)) {
            copy(library, "/fonts/", target.resolve("fonts"));
            return;
        }
        String name = library.getFileName().toString().replaceFirst("\\.jar$", "");
        Path folder = Files.createDirectories(target.resolve(name));
        copy(library, "", folder);
        String bare = name.replaceFirst("-[0-9][^-]*.*$", "");
        for (String license : licensesOf(bare)) {
            if (!holds(folder, license)) {
                Files.copy(textFor(bare, license), folder.resolve(license + ".txt"));
                require(holds(folder, license), "no text of the license " + license + " of " + name);
            }
            if (license.startsWith("LGPL")) {
                String source = name + "-sources.jar";
                Path sources = Files.createDirectories(target.resolve("sources"));
                Files.copy(root.resolve("reports/bundle/target/sources").resolve(source), sources.resolve(source));
            }
        }
    }

    /** The texts in a jar whose paths hold the words {@code place}. */
    private static void copy(Path library, String place, Path folder) throws IOException {
        try (JarFile jar = new JarFile(library.toFile())) {
            for (JarEntry entry : Collections.list(jar.entries())) {
                String path = entry.getName();
                String file = path.substring(path.lastIndexOf('/') + 1);
                if (isText(file) && path.contains(place)) {
                    Files.createDirectories(folder);
                    try (InputStream in = jar.getInputStream(entry)) {
                        Files.copy(in, folder.resolve(file));
                    }
                }
            }
        }
    }

    private static boolean isText(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        return !name.endsWith(".class") && (name.contains("license") || name.contains("notice"));
    }

    /** The licenses that the list states for a library, by the words in its first brackets. */
    private List<String> licensesOf(String bare) {
        List<String> licenses = stated.stream()
                .filter(line -> line.contains(":" + bare + ":"))
                .flatMap(line -> WORDS.keySet().stream().filter(license -> line.contains("(" + license + ")")))
                .toList();
        require(!licenses.isEmpty(), "no license is known of " + bare);
        return licenses;
    }

    private static boolean holds(Path folder, String license) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                String text =
                        Files.readString(file, StandardCharsets.ISO_8859_1).replaceAll("\\s+", " ");
                if (text.contains(WORDS.get(license))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A text of the library's own, with the names of its makers; else the one that stands for all under that license. */
    private Path textFor(String bare, String license) {
        Path own = texts.resolve(bare + ".txt");
        if (Files.exists(own)) {
            return own;
        }
        Path common = license.equals("Apache-2.0") ? root.resolve("LICENSE") : texts.resolve(license + ".txt");
        require(Files.exists(common), "no text of the license of " + bare + "; put it into " + own);
        return common;
    }

    private static void require(boolean isSo, String otherwise) {
        if (!isSo) {
            throw new IllegalStateException(otherwise);
        }
    }
}
