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
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A {@link RunRecord} read back.
 *
 * @param options what was asked of the run beside where its files lie, a word each, as {@code --paper=a4}; {@link #HERE} in one stands for the
 *     folder of the record; empty: the record is of a version that held none
 * @param settings as text, by name
 * @param inputs SHA-256 of each file read
 * @param outputs SHA-256 of each file written, beside {@code run.json} itself
 */
public record RunFile(
        String version,
        String command,
        Optional<List<String>> options,
        Map<String, String> settings,
        SortedMap<String, String> inputs,
        SortedMap<String, String> outputs) {
    /** Stands for the folder of the record. */
    public static final String HERE = "{report}";

    /** The options of a run whose own tables hold every change that was asked for. */
    public static final List<String> OWN_TABLES = List.of("--assumptions=" + HERE + "/assumptions");

    /** What to do about a file of a kind that is not named. */
    private static final Map<String, String> REMEDIES = Map.of(
            "portfolio", "name its folder",
            "climate", "name it with --climate",
            "site", "name its file with --site",
            "shop", "name its file with --shop",
            "since", "name its folder with --since");

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
        options = options.map(List::copyOf);
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
        Optional<List<String>> options = Optional.empty();
        try (JsonParser json = JSON.createParser(file.toFile())) {
            json.nextToken();
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                JsonToken begins = json.nextToken();
                if (name.equals("options") && begins == JsonToken.START_ARRAY) {
                    options = Optional.of(words(json));
                } else {
                    members.put(name, begins == JsonToken.START_OBJECT ? texts(json) : Map.of("", text(json)));
                }
            }
        } catch (JsonProcessingException | CharConversionException e) {
            return Optional.empty();
        }
        boolean ours = RunRecord.PROGRAM.equals(only(members, "program"));
        return ours
                ? Optional.of(new RunFile(
                        only(members, "version"),
                        only(members, "command"),
                        options,
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

    /** Why a run that read those files does not repeat this one, a line each; none: it does. */
    List<String> otherThan(Map<String, String> read) {
        Set<String> then = kinds(inputs.keySet());
        Set<String> now = kinds(read.keySet());
        return differing(read, inputs).stream()
                .map(name -> {
                    String kind = kind(name);
                    if (!now.contains(kind)) {
                        return missing(kind);
                    }
                    return then.contains(kind)
                            ? name + ": is not what the run read"
                            : RunRecord.FILE + ": the run read the bundled " + kind + "; name none";
                })
                .distinct()
                .toList();
    }

    /** That a file of the kind has to be named. */
    public String missing(String kind) {
        String which = settings.getOrDefault(kind, "");
        return RunRecord.FILE + ": the run read the " + kind + (which.isEmpty() ? "" : " " + which) + "; "
                + REMEDIES.getOrDefault(kind, "name the file");
    }

    /** Whether the run read a file of the kind. */
    public boolean readAny(String kind) {
        return kinds(inputs.keySet()).contains(kind);
    }

    private static Set<String> kinds(Set<String> names) {
        return names.stream().map(RunFile::kind).collect(Collectors.toSet());
    }

    private static String kind(String name) {
        return name.substring(0, Math.max(0, name.indexOf('/')));
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

    private static List<String> words(JsonParser json) throws IOException {
        List<String> words = new ArrayList<>();
        while (json.nextToken() != null && json.currentToken() != JsonToken.END_ARRAY) {
            words.add(text(json));
        }
        return words;
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
