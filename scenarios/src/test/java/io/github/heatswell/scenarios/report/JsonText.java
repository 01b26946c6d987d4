package io.github.heatswell.scenarios.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON into maps, lists, texts, numbers, truth values and null. */
final class JsonText {

    private JsonText() {}

    @SuppressWarnings("unchecked")
    static Map<String, Object> object(String text) throws IOException {
        JsonFactory factory = JsonFactory.builder()
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .build();
        try (JsonParser parser = factory.createParser(text)) {
            parser.nextToken();
            Object value = value(parser);
            if (parser.nextToken() != null) {
                throw new IOException("something follows the end");
            }
            return (Map<String, Object>) value;
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        switch (parser.currentToken()) {
            case START_OBJECT:
                Map<String, Object> object = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String name = parser.currentName();
                    parser.nextToken();
                    object.put(name, value(parser));
                }
                return object;
            case START_ARRAY:
                List<Object> array = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    array.add(value(parser));
                }
                return array;
            case VALUE_STRING:
                return parser.getText();
            case VALUE_TRUE, VALUE_FALSE:
                return parser.getBooleanValue();
            case VALUE_NULL:
                return null;
            default:
                return parser.getDoubleValue();
        }
    }
}
