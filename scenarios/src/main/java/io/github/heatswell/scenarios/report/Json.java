package io.github.heatswell.scenarios.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.citation.Citation;
import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.result.Balances;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * An object of JSON: names with values, in the order given. Numbers are written for people to read: ten significant digits, and
 * no exponent where none is needed. Every number an answer gives to other programs is written here.
 */
final class Json {

    private static final MathContext DIGITS = new MathContext(10);
    private static final double MIN_PLAIN = 1e-6;
    private static final double MAX_PLAIN = 1e15;

    private final Map<String, Object> entries = new LinkedHashMap<>();

    /** What stands in every file about a scenario: its name, and the version of the program. */
    Json program(String scenario) {
        return with("scenario", scenario).with("heatswell_version", Version.number());
    }

    /**
     * Adds a value.
     *
     * @param name its name
     * @param value a text, a truth, a number that is known, a constant of an enum, an object, a list of objects, or an optional
     *     one of these, which is null if it is empty
     */
    Json with(String name, Object value) {
        entries.put(name, plain(value));
        return this;
    }

    private static Object plain(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.map(Json::plain).orElse(null);
        }
        return value instanceof Enum<?> constant ? constant.name().toLowerCase(Locale.ROOT) : value;
    }

    /** Adds a number; what is not known, never happens or has no end is null. */
    Json known(String name, double value) {
        return with(name, Double.isFinite(value) ? Optional.of(value) : Optional.empty());
    }

    Json known(String name, OptionalDouble value) {
        return known(name, value.orElse(Double.NaN));
    }

    /** Adds a list. */
    <T> Json each(String name, Iterable<T> values, Function<T, Json> objects) {
        List<Json> list = new ArrayList<>();
        values.forEach(value -> list.add(objects.apply(value)));
        return with(name, list);
    }

    /** Adds a pressure (Pa absolute) as gauge and absolute pressure, at an air pressure (Pa absolute). */
    Json pressure(String name, double absolute, double atmosphere) {
        return with(name + "_gauge_pa", absolute - atmosphere).with(name + "_absolute_pa", absolute);
    }

    /** Adds a source, and how far it was checked. */
    Json source(Citation source) {
        return with("source", source.text()).with("source_standing", source.standing());
    }

    /** Adds how many balances close. */
    Json balances(Balances balances) {
        return with(
                "balances",
                new Json()
                        .with("runs", balances.runs())
                        .with("open", balances.open())
                        .with(
                                "warning",
                                Alarm.open(balances, "this answer")
                                        .map(alarm -> alarm.text().text(UnitSystem.SI))
                                        .orElse("")));
    }

    /** Adds findings, their sentences in the units of the house, and once more in those of the US. */
    Json findings(List<Finding> findings, UnitSystem units) {
        return each(
                "findings",
                findings,
                finding -> new Json()
                        .with("id", finding.id())
                        .with("severity", finding.severity())
                        .with("sentence", finding.sentence().text(units))
                        .with("sentence_us", finding.sentence().text(UnitSystem.US))
                        .with("advice", finding.advice().text(units))
                        .with(
                                "ask",
                                finding.askAuthority()
                                        .map(ask -> ask.text(units))
                                        .orElse(""))
                        .with("found", finding.found().map(Json::measure))
                        .with("limit", finding.limit().map(Json::measure))
                        .with("basis", finding.authority().basis())
                        .source(finding.authority().source()));
    }

    private static Json measure(Measure measure) {
        return new Json().with("kind", measure.kind()).with("value", measure.value());
    }

    /** The object as a file of its own. */
    ResultFile file(String name) {
        return ResultFile.of(name, this::write);
    }

    /**
     * Writes the object.
     *
     * @param out takes UTF-8; left open at the end
     */
    void write(OutputStream out) throws IOException {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        try (JsonGenerator generator = new JsonFactory().createGenerator(out)) {
            generator
                    .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                    .setPrettyPrinter(new DefaultPrettyPrinter()
                            .withObjectIndenter(indenter)
                            .withArrayIndenter(indenter));
            write(this, generator);
            generator.writeRaw('\n');
        }
    }

    private static void write(Object value, JsonGenerator out) throws IOException {
        if (value == null) {
            out.writeNull();
        } else if (value instanceof Json object) {
            out.writeStartObject();
            for (Map.Entry<String, Object> entry : object.entries.entrySet()) {
                out.writeFieldName(entry.getKey());
                write(entry.getValue(), out);
            }
            out.writeEndObject();
        } else if (value instanceof List<?> list) {
            out.writeStartArray();
            for (Object item : list) {
                write(item, out);
            }
            out.writeEndArray();
        } else if (value instanceof Double number) {
            out.writeNumber(digits(number));
        } else if (value instanceof Boolean truth) {
            out.writeBoolean(truth);
        } else if (value instanceof Number count) {
            out.writeNumber(count.longValue());
        } else {
            out.writeString((String) value);
        }
    }

    /** JSON has no infinities; a run has none either, so this fails loudly if one should come up. */
    private static String digits(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        double size = Math.abs(value);
        return size == 0 || size >= MIN_PLAIN && size < MAX_PLAIN ? rounded.toPlainString() : rounded.toString();
    }
}
