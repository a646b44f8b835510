package org.coachskin.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.Source;
import org.jspecify.annotations.Nullable;

/** A tree of maps, lists, text, numbers and truth values, written as JSON. */
final class Json {

    /** Version of the schema of everything that is written. */
    static final String SCHEMA = "2";

    private Json() {}

    /** Returns an object that starts with the version of the schema and the kind of answer. */
    static Map<String, Object> answer(String kind) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", SCHEMA);
        json.put("kind", kind);
        json.put("units", "SI: m, kg, s, N, Pa, K; shares and reserves without a unit");
        return json;
    }

    /** Returns where a number comes from, as an object. */
    static Map<String, Object> source(Source source) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("work", source.work());
        json.put("place", source.place());
        json.put("standing", source.standing().words());
        return json;
    }

    /** Returns the tree as text. A number that is not finite becomes {@code null}. */
    static String text(Map<String, Object> tree) {
        StringWriter text = new StringWriter();
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(
                    new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines));
            write(json, tree);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    private static void write(JsonGenerator json, @Nullable Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                json.writeFieldName(String.valueOf(entry.getKey()));
                write(json, entry.getValue());
            }
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object entry : list) {
                write(json, entry);
            }
            json.writeEndArray();
        } else if (value instanceof Integer number) {
            json.writeNumber(number);
        } else if (value instanceof Double number && Double.isFinite(number)) {
            json.writeNumber(number);
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value instanceof String words) {
            json.writeString(words);
        } else {
            json.writeNull();
        }
    }
}
