package weatherlap.reports.browser;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One headless Chromium with one page. Not for several threads. */
final class Browser implements AutoCloseable {
    private static final int PATIENCE_SECONDS = 60;
    private static final Pattern LISTENING = Pattern.compile("DevTools listening on (ws://\\S+)");

    private final Process process;
    private final Path profile;
    private final WebSocket socket;
    private final BlockingQueue<Map<String, Object>> messages;
    private final List<Map<String, Object>> events = new ArrayList<>();
    private String session = "";
    private int calls;

    private Browser(Process process, Path profile, WebSocket socket, BlockingQueue<Map<String, Object>> messages) {
        this.process = process;
        this.profile = profile;
        this.socket = socket;
        this.messages = messages;
    }

    static Browser open(Path chromium) throws IOException {
        Path profile = Files.createTempDirectory("chromium");
        Process process = new ProcessBuilder(
                        chromium.toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-background-networking",
                        "--disable-dev-shm-usage",
                        "--no-first-run",
                        "--disable-extensions",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + profile,
                        "about:blank")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        BlockingQueue<Map<String, Object>> messages = new LinkedBlockingQueue<>();
        WebSocket socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(address(process), new Receiver(messages))
                .join();
        Browser browser = new Browser(process, profile, socket, messages);
        String target = (String) browser.call("Target.createTarget", Map.of("url", "about:blank"))
                .get("targetId");
        browser.session = (String) browser.call("Target.attachToTarget", Map.of("targetId", target, "flatten", true))
                .get("sessionId");
        for (String domain : List.of("Page", "Runtime", "Log", "Network")) {
            browser.call(domain + ".enable", Map.of());
        }
        return browser;
    }

    private static URI address(Process process) throws IOException {
        BufferedReader errors = process.errorReader(StandardCharsets.UTF_8);
        for (String line = errors.readLine(); line != null; line = errors.readLine()) {
            Matcher found = LISTENING.matcher(line);
            if (found.find()) {
                Thread drain = new Thread(() -> errors.lines().forEach(rest -> {}));
                drain.setDaemon(true);
                drain.start();
                return URI.create(found.group(1));
            }
        }
        throw new IOException("Chromium ended before it listened");
    }

    /** Loads a file in a window so wide; what was seen before is forgotten. */
    void load(Path file, int widthPx) {
        events.clear();
        call(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", widthPx, "height", 900, "deviceScaleFactor", 1, "mobile", widthPx < 700));
        call("Page.navigate", Map.of("url", file.toUri().toString()));
        await("Page.loadEventFired");
    }

    /** The value of an expression, a promise waited for: text, number, truth or nothing. */
    Object value(String expression) {
        Map<String, Object> answer =
                call("Runtime.evaluate", Map.of("expression", expression, "returnByValue", true, "awaitPromise", true));
        if (answer.containsKey("exceptionDetails")) {
            throw new AssertionError(answer.get("exceptionDetails").toString());
        }
        return map(answer.get("result")).get("value");
    }

    /** Addresses asked for since the page was loaded, without those that hold their data. */
    List<String> requests() {
        value("0"); // what was sent before this answer has arrived
        return events.stream()
                .filter(event -> "Network.requestWillBeSent".equals(event.get("method")))
                .map(event ->
                        (String) map(map(event.get("params")).get("request")).get("url"))
                .filter(url -> !url.startsWith("data:"))
                .toList();
    }

    /** What the console holds of errors and what the page threw. */
    List<String> errors() {
        value("0");
        return events.stream()
                .filter(event -> {
                    Map<String, Object> parameters = map(event.getOrDefault("params", Map.of()));
                    return switch ((String) event.get("method")) {
                        case "Runtime.exceptionThrown" -> true;
                        case "Runtime.consoleAPICalled" -> "error".equals(parameters.get("type"));
                        case "Log.entryAdded" ->
                            "error".equals(map(parameters.get("entry")).get("level"));
                        default -> false;
                    };
                })
                .map(Object::toString)
                .toList();
    }

    /** As it would be printed, a PDF. */
    byte[] print() {
        return Base64.getDecoder().decode((String)
                call("Page.printToPDF", Map.of("preferCSSPageSize", true)).get("data"));
    }

    /** The whole page as a PNG. */
    byte[] picture() {
        return Base64.getDecoder().decode((String) call("Page.captureScreenshot", Map.of("captureBeyondViewport", true))
                .get("data"));
    }

    /** Presses and lets go of a key that has no sign, such as ArrowRight. */
    void key(String name, int code) {
        for (String type : List.of("keyDown", "keyUp")) {
            call(
                    "Input.dispatchKeyEvent",
                    Map.of("type", type, "key", name, "code", name, "windowsVirtualKeyCode", code));
        }
    }

    /** Touches the middle of the first element of a selector, which is scrolled to, and lets go. */
    void tap(String selector) {
        String box = "document.querySelector('" + selector + "').getBoundingClientRect()";
        value("document.querySelector('" + selector + "').scrollIntoView({block: 'center'}); 0");
        int x = ((Double) value("Math.round(" + box + ".x + " + box + ".width / 2)")).intValue();
        int y = ((Double) value("Math.round(" + box + ".y + " + box + ".height / 2)")).intValue();
        call("Input.dispatchTouchEvent", Map.of("type", "touchStart", "touchPoints", List.of(Map.of("x", x, "y", y))));
        call("Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
    }

    private Map<String, Object> call(String method, Map<String, Object> parameters) {
        int id = ++calls;
        Map<String, Object> request = new LinkedHashMap<>();
        request.put("id", id);
        request.put("method", method);
        request.put("params", parameters);
        if (!session.isEmpty()) {
            request.put("sessionId", session);
        }
        socket.sendText(json(request), true).join();
        while (true) {
            Map<String, Object> message = next(method);
            if (!message.containsKey("id")) {
                events.add(message);
            } else if (((Number) message.get("id")).intValue() == id) {
                if (message.containsKey("error")) {
                    throw new IllegalStateException(method + ": " + message.get("error"));
                }
                return map(message.get("result"));
            }
        }
    }

    private void await(String event) {
        while (events.stream().noneMatch(seen -> event.equals(seen.get("method")))) {
            events.add(next(event));
        }
    }

    private Map<String, Object> next(String waitingFor) {
        try {
            Map<String, Object> message = messages.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
            if (message == null) {
                throw new IllegalStateException("Chromium does not answer: " + waitingFor);
            }
            return message;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() throws IOException {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        socket.abort();
        process.onExit().join();
        try (var files = Files.walk(profile)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        }
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value) {
        return (Map<String, Object>) value;
    }

    private static String json(Map<String, Object> request) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            write(json, request);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void write(JsonGenerator json, Object value) throws IOException {
        if (value instanceof Map<?, ?> object) {
            json.writeStartObject();
            for (Map.Entry<?, ?> member : object.entrySet()) {
                json.writeFieldName((String) member.getKey());
                write(json, member.getValue());
            }
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object item : list) {
                write(json, item);
            }
            json.writeEndArray();
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value instanceof Integer number) {
            json.writeNumber(number);
        } else {
            json.writeString((String) value);
        }
    }

    /** Puts whole messages into a queue. */
    private static final class Receiver implements WebSocket.Listener {
        private final BlockingQueue<Map<String, Object>> messages;
        private final StringBuilder text = new StringBuilder();

        Receiver(BlockingQueue<Map<String, Object>> messages) {
            this.messages = messages;
        }

        @Override
        public CompletionStage<?> onText(WebSocket socket, CharSequence part, boolean last) {
            text.append(part);
            if (last) {
                try (JsonParser json = new JsonFactory().createParser(text.toString())) {
                    json.nextToken();
                    messages.add(map(read(json)));
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
                text.setLength(0);
            }
            socket.request(1);
            return null;
        }

        private static Object read(JsonParser json) throws IOException {
            return switch (json.currentToken()) {
                case START_OBJECT -> {
                    Map<String, Object> object = new LinkedHashMap<>();
                    while (json.nextToken() == JsonToken.FIELD_NAME) {
                        String name = json.currentName();
                        json.nextToken();
                        object.put(name, read(json));
                    }
                    yield object;
                }
                case START_ARRAY -> {
                    List<Object> array = new ArrayList<>();
                    while (json.nextToken() != JsonToken.END_ARRAY) {
                        array.add(read(json));
                    }
                    yield array;
                }
                case VALUE_TRUE -> true;
                case VALUE_FALSE -> false;
                case VALUE_NULL -> null;
                case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> json.getDoubleValue();
                default -> json.getText();
            };
        }
    }
}
