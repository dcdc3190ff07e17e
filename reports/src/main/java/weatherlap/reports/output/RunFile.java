package weatherlap.reports.output;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.CharConversionException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A {@link RunRecord} read back.
 *
 * @param settings as text, by name
 * @param inputs SHA-256 of each file read
 * @param outputs SHA-256 of each file written, beside {@code run.json} itself
 */
public record RunFile(
        String version,
        String command,
        Map<String, String> settings,
        SortedMap<String, String> inputs,
        SortedMap<String, String> outputs) {
    /** No name, digest or setting of ours is longer. */
    private static final int LONGEST = 20_000;

    private static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(20)
                    .maxStringLength(LONGEST)
                    .maxNameLength(LONGEST)
                    .maxDocumentLength(50_000_000)
                    .build())
            .build();

    public RunFile {
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
        inputs = Collections.unmodifiableSortedMap(new TreeMap<>(inputs));
        outputs = Collections.unmodifiableSortedMap(new TreeMap<>(outputs));
    }

    /** The record in a file; empty where there is none, or none of this program. Links are not followed. */
    public static Optional<RunFile> read(Path file) throws IOException {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        Map<String, Map<String, String>> members = new LinkedHashMap<>();
        try (JsonParser json = JSON.createParser(file.toFile())) {
            json.nextToken();
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                members.put(name, json.nextToken() == JsonToken.START_OBJECT ? texts(json) : Map.of("", text(json)));
            }
        } catch (JsonProcessingException | CharConversionException e) {
            return Optional.empty();
        }
        boolean ours = RunRecord.PROGRAM.equals(only(members, "program"));
        return ours
                ? Optional.of(new RunFile(
                        only(members, "version"),
                        only(members, "command"),
                        members.getOrDefault("settings", Map.of()),
                        new TreeMap<>(members.getOrDefault("inputs_sha256", Map.of())),
                        new TreeMap<>(members.getOrDefault("outputs_sha256", Map.of()))))
                : Optional.empty();
    }

    /** Names of which two runs hold other values, or only one holds any, in order. */
    public static List<String> differing(Map<String, String> one, Map<String, String> other) {
        TreeSet<String> names = new TreeSet<>(one.keySet());
        names.addAll(other.keySet());
        names.removeIf(name -> one.getOrDefault(name, "").equals(other.getOrDefault(name, "")));
        return List.copyOf(names);
    }

    private static String only(Map<String, Map<String, String>> members, String name) {
        return members.getOrDefault(name, Map.of()).getOrDefault("", "");
    }

    private static Map<String, String> texts(JsonParser json) throws IOException {
        Map<String, String> texts = new LinkedHashMap<>();
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String name = json.currentName();
            json.nextToken();
            texts.put(name, text(json));
        }
        return texts;
    }

    /** A number, text or truth as it stands; nothing of lists and objects. */
    private static String text(JsonParser json) throws IOException {
        if (json.currentToken() != null && json.currentToken().isScalarValue()) {
            return json.getText();
        }
        json.skipChildren();
        return "";
    }
}
