package weatherlap.reports.output;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * {@code run.json}: what a run depended on and what it wrote, enough to repeat it and to see whether a folder is ours to replace.
 *
 * @param version of the program
 * @param command such as compare
 * @param settings what decided the result, such as seed and draws, in the order to show; numbers, texts, truths
 * @param inputs SHA-256 of each file read, by a name that holds no path of this machine
 */
public record RunRecord(
        String version, String command, Map<String, Object> settings, SortedMap<String, String> inputs) {
    /** Name of the file. */
    public static final String FILE = "run.json";

    static final String PROGRAM = "weatherlap";

    public RunRecord {
        settings = new LinkedHashMap<>(settings);
        inputs = new TreeMap<>(inputs);
    }

    Map<String, Object> toJson(List<String> options, SortedMap<String, String> outputs) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("program", PROGRAM);
        json.put("version", version);
        json.put("command", command);
        json.put("options", options);
        json.put("settings", settings);
        json.put("inputs_sha256", inputs);
        json.put("outputs_sha256", outputs);
        return json;
    }
}
