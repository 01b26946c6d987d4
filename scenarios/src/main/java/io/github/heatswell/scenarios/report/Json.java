package io.github.heatswell.scenarios.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Writes JSON with numbers a person can read: ten significant digits, and no exponent where none is needed.
 */
final class Json implements AutoCloseable {

    private static final MathContext DIGITS = new MathContext(10);
    private static final double MIN_PLAIN = 1e-6;
    private static final double MAX_PLAIN = 1e15;

    private final JsonGenerator generator;

    /**
     * Starts writing.
     *
     * @param out takes UTF-8; left open at the end
     */
    Json(OutputStream out) throws IOException {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        generator = new JsonFactory()
                .createGenerator(out)
                .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                .setPrettyPrinter(
                        new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
    }

    /** Writes the inside of an object or an array. */
    @FunctionalInterface
    interface Inside {
        void write() throws IOException;
    }

    Json object(Inside inside) throws IOException {
        generator.writeStartObject();
        inside.write();
        generator.writeEndObject();
        return this;
    }

    Json object(String name, Inside inside) throws IOException {
        generator.writeFieldName(name);
        return object(inside);
    }

    Json array(String name, Inside inside) throws IOException {
        generator.writeArrayFieldStart(name);
        inside.write();
        generator.writeEndArray();
        return this;
    }

    Json text(String name, String value) throws IOException {
        generator.writeStringField(name, value);
        return this;
    }

    Json flag(String name, boolean value) throws IOException {
        generator.writeBooleanField(name, value);
        return this;
    }

    Json nothing(String name) throws IOException {
        generator.writeNullField(name);
        return this;
    }

    Json count(String name, long value) throws IOException {
        generator.writeNumberField(name, value);
        return this;
    }

    Json number(String name, double value) throws IOException {
        generator.writeFieldName(name);
        generator.writeNumber(digits(value));
        return this;
    }

    /** JSON has no infinities; a run has none either, so this fails loudly if one should come up. */
    private static String digits(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        double size = Math.abs(value);
        return size == 0 || size >= MIN_PLAIN && size < MAX_PLAIN ? rounded.toPlainString() : rounded.toString();
    }

    @Override
    public void close() throws IOException {
        generator.writeRaw('\n');
        generator.close();
    }
}
