package weatherlap.reports.format;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Map;
import weatherlap.analysis.words.Decimals;

/**
 * JSON as UTF-8, two spaces deep, members in the order of the map they come in, so that the same values give the same bytes.
 * Values are maps, collections, texts, truths, null, whole numbers, {@link BigDecimal} and finite doubles.
 *
 * @see "RFC 8259"
 */
public final class Json {
    private static final JsonFactory FACTORY = new JsonFactory();

    private Json() {}

    /** @throws IllegalArgumentException at writing, for a value that is not finite or of no JSON kind */
    public static Content of(Object value) {
        return out -> {
            DefaultIndenter indent = new DefaultIndenter("  ", "\n");
            DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
            printer.indentObjectsWith(indent);
            printer.indentArraysWith(indent);
            try (JsonGenerator json = FACTORY.createGenerator(out)) {
                json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
                json.setPrettyPrinter(printer);
                write(json, value);
                json.writeRaw('\n');
            }
        };
    }

    /** The same on one line, safe to stand in a page within a script element of no scripting language. */
    public static String inPage(Object value) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            write(json, value);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().replace("<", "\\u003c").replace("&", "\\u0026");
    }

    private static void write(JsonGenerator json, Object value) throws IOException {
        if (value == null) {
            json.writeNull();
        } else if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (Map.Entry<?, ?> member : map.entrySet()) {
                json.writeFieldName(member.getKey().toString());
                write(json, member.getValue());
            }
            json.writeEndObject();
        } else if (value instanceof Collection<?> items) {
            json.writeStartArray();
            for (Object item : items) {
                write(json, item);
            }
            json.writeEndArray();
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value instanceof Number number) {
            writeNumber(json, number);
        } else if (value instanceof CharSequence || value instanceof Enum<?>) {
            json.writeString(value.toString());
        } else {
            throw new IllegalArgumentException(
                    "JSON has no form for a " + value.getClass().getName() + ".");
        }
    }

    private static void writeNumber(JsonGenerator json, Number number) throws IOException {
        if (number instanceof BigDecimal decimal) {
            json.writeNumber(decimal.toPlainString());
        } else if (number instanceof Integer || number instanceof Long) {
            json.writeNumber(number.longValue());
        } else {
            json.writeNumber(Decimals.plain(number.doubleValue()));
        }
    }
}
