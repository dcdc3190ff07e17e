package weatherlap.reports.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A document of the project, as readers see it. */
record Document(Path file, String text) {
    /** The project's folder; tests run in that of their module. */
    static final Path ROOT = Path.of("..");

    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern CLASS_LINK = Pattern.compile("\\[`([^`]+)`\\]\\(([^)\\s]+\\.java)\\)");
    private static final Pattern CODE = Pattern.compile("`([^`\\n]+)`");

    /** @param name from the project's folder */
    static Document of(String name) throws IOException {
        Path file = ROOT.resolve(name);
        return new Document(file, Files.readString(file));
    }

    /** All pages in Markdown but those that the build makes. */
    static List<Document> all() throws IOException {
        try (Stream<Path> files = Files.walk(ROOT)) {
            List<String> names = files.filter(path -> path.toString().endsWith(".md"))
                    .map(ROOT::relativize)
                    .filter(path -> Stream.of("target", "node_modules", ".git")
                            .noneMatch(folder ->
                                    path.startsWith(folder) || path.toString().contains("/" + folder + "/")))
                    .map(Path::toString)
                    .sorted()
                    .toList();
            List<Document> documents = new java.util.ArrayList<>();
            for (String name : names) {
                documents.add(of(name));
            }
            return documents;
        }
    }

    /** What the links point to that stay in the project. */
    List<String> links() {
        return LINK.matcher(text)
                .results()
                .map(match -> match.group(1))
                .filter(link -> !link.contains("://") && !link.startsWith("#"))
                .toList();
    }

    /** Names between back quotes that link to Java files, by the link; one of them where several share it. */
    Map<String, String> classLinks() {
        return CLASS_LINK
                .matcher(text)
                .results()
                .collect(Collectors.toMap(match -> match.group(2), match -> match.group(1), (one, other) -> one));
    }

    /** Words between back quotes. */
    List<String> code() {
        return CODE.matcher(text).results().map(match -> match.group(1)).toList();
    }

    /** The fenced block after {@code ```name}. */
    String block(String name) {
        int begin = begin(name);
        return text.substring(begin, end(begin));
    }

    /** Puts other lines into the fenced block after {@code ```name}, in the file. */
    void rewrite(String name, String lines) throws IOException {
        int begin = begin(name);
        Files.writeString(file, text.substring(0, begin) + lines + text.substring(end(begin)));
    }

    private int begin(String name) {
        String fence = "```" + name + "\n";
        int fenced = text.indexOf(fence);
        if (fenced < 0) {
            throw new AssertionError(file + " has no block " + fence.strip());
        }
        return fenced + fence.length();
    }

    private int end(int begin) {
        return text.indexOf("```\n", begin);
    }
}
