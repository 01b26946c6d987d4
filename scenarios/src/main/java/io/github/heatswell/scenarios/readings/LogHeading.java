package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the name of a column says it holds. A name such as {@code pressure_bar} or {@code Time [s]} is taken as it stands; in one
 * that a person or a logger wrote, such as {@code CH1 Pressure PSI} or {@code Druck (bar)}, the words and units are looked for.
 *
 * @param quantity what the column holds
 * @param unit its unit, such as {@code bar abs}; empty if the name has none, or for a clock
 * @param guessed whether words were looked for
 */
record LogHeading(Quantity quantity, String unit, boolean guessed) {

    /** No name of a column known here comes near this length; the pattern would try a longer one for ever. */
    private static final int MAX_NAME = 100;

    private static final Pattern PLAIN = Pattern.compile(
            "(time|date|datetime|clock|pressure|temperature|temp|burner|heater)(?:[\\s_\\[(]+(.*?)[)\\]\\s]*)?");

    private static final Set<String> CLOCK = Set.of("date", "datetime", "clock");
    private static final Set<String> TIME_WORDS = set(
            "time datetime timestamp clock uhrzeit zeit zeitpunkt zeitstempel heure horodatage hora tijd tijdstip ora");
    private static final Set<String> ELAPSED_WORDS =
            set("elapsed duration dauer verstrichen laufzeit \u00e9coul\u00e9 dur\u00e9e transcurrido duur trascorso");
    private static final Set<String> DATE_WORDS = set("date datum day tag fecha data jour d\u00eda dia dag giorno");
    private static final Set<String> PRESSURE_WORDS =
            set("pressure press druck wasserdruck pression presi\u00f3n presion druk waterdruk pressione");
    private static final Set<String> TEMPERATURE_WORDS =
            set("temperature temp temperatur wassertemperatur temp\u00e9rature temperatura temperatuur");
    private static final Set<String> BURNER_WORDS =
            set("burner heater brenner heizung br\u00fbleur bruleur chaudi\u00e8re"
                    + " calentador quemador ketel brander bruciatore caldaia");
    private static final Set<String> NOTE_WORDS =
            set("note notes remark remarks comment comments event events observation observations bemerkung"
                    + " bemerkungen anmerkung notiz kommentar beobachtung ereignis remarque remarques commentaire nota notas"
                    + " comentario observaciones opmerking opmerkingen");
    private static final Set<String> UNIT_WORDS =
            set("unit units uom einheit einheiten unit\u00e9 unit\u00e9s unidad unidades eenheid unit\u00e0");
    private static final Set<String> ABSOLUTE =
            set("absolute abs absolut absolutdruck absolue absolu absoluta absoluut assoluta");
    /** What a sensor sends, which is no pressure yet. */
    private static final Set<String> VOLTAGE = set("mv mvolt millivolt millivolts volt volts voltage spannung tension");
    /** What a pressure between two places is called, which is none a gauge shows. */
    private static final Set<String> DIFFERENCE = Set.of("differential", "difference", "delta", "differenz");

    /** What a column may hold. */
    enum Quantity {
        TIME,
        DATE,
        PRESSURE,
        TEMPERATURE,
        BURNER,
        NOTE,
        /** The unit of another column. */
        UNIT,
        /** Whether something was seen, which the name of the column says. */
        SEEN
    }

    /** The unit of a time that runs in hours and minutes from the beginning of a log. */
    static final String ELAPSED = "elapsed";

    private static Set<String> set(String words) {
        return Set.of(words.split(" "));
    }

    /** What a name says; empty if nothing that is known here. */
    static Optional<LogHeading> of(String name) {
        String lower = Normalizer.normalize(name.strip(), Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
        if (lower.length() > MAX_NAME) {
            return Optional.empty();
        }
        Matcher parts = PLAIN.matcher(lower);
        Optional<LogHeading> plain = parts.matches()
                ? Optional.of(plain(
                        parts.group(1),
                        parts.group(2) == null ? "" : parts.group(2).strip()))
                : Optional.empty();
        return plain.filter(LogHeading::isWhole)
                .or(() -> words(lower).filter(found -> plain.isEmpty() || found.isWhole()))
                .or(() -> plain.filter(found -> !isVoltage(lower.replace('_', ' '))));
    }

    private static LogHeading plain(String word, String unit) {
        return switch (word) {
            case "pressure" -> new LogHeading(Quantity.PRESSURE, unit.replace('_', ' '), false);
            case "temperature", "temp" -> new LogHeading(Quantity.TEMPERATURE, unit, false);
            case "burner", "heater" -> new LogHeading(Quantity.BURNER, unit, false);
            case "date" -> new LogHeading(Quantity.DATE, "", false);
            default -> new LogHeading(Quantity.TIME, CLOCK.contains(word) ? "" : unit, false);
        };
    }

    /** Whether the unit is one. */
    private boolean isWhole() {
        return switch (quantity) {
            case PRESSURE -> isPressure(unit);
            case TEMPERATURE -> is(unit, Kind.TEMPERATURE);
            case TIME -> unit.isEmpty() || ELAPSED.equals(unit) || is(unit, Kind.DURATION);
            case BURNER -> unit.isEmpty();
            case DATE, NOTE, UNIT, SEEN -> true;
        };
    }

    private static Optional<LogHeading> words(String lower) {
        List<String> words = Arrays.stream(lower.split("[^\\p{L}\\p{N}°%]+"))
                .filter(word -> !word.isEmpty())
                .toList();
        boolean pressure = words.stream().anyMatch(PRESSURE_WORDS::contains) || has(words, ABSOLUTE);
        Optional<String> ofPressure =
                words.stream().filter(LogHeading::isPressure).findFirst();
        Optional<String> ofTemperature = words.stream()
                .filter(word -> has(words, TEMPERATURE_WORDS) || word.length() > 1)
                .filter(word -> is(word, Kind.TEMPERATURE))
                .findFirst();
        if (has(words, DIFFERENCE) || has(words, VOLTAGE)) {
            return Optional.empty();
        }
        if (has(words, NOTE_WORDS)) {
            return Optional.of(new LogHeading(Quantity.NOTE, "", false));
        }
        if (has(words, UNIT_WORDS)) {
            return Optional.of(new LogHeading(Quantity.UNIT, "", true));
        }
        if (ofPressure.isPresent() && !has(words, TEMPERATURE_WORDS)) {
            String unit = ofPressure.get() + (has(words, ABSOLUTE) ? " abs" : "");
            return Optional.of(new LogHeading(Quantity.PRESSURE, unit, true)).filter(LogHeading::isWhole);
        }
        if (ofTemperature.isPresent() && !pressure) {
            return Optional.of(new LogHeading(Quantity.TEMPERATURE, ofTemperature.get(), true));
        }
        if (pressure || has(words, TEMPERATURE_WORDS)) {
            return Optional.of(new LogHeading(pressure ? Quantity.PRESSURE : Quantity.TEMPERATURE, "", true));
        }
        return timeOrBurner(words);
    }

    private static Optional<LogHeading> timeOrBurner(List<String> words) {
        Optional<String> unit =
                words.stream().filter(word -> is(word, Kind.DURATION)).findFirst();
        if (has(words, ELAPSED_WORDS)) {
            return Optional.of(new LogHeading(Quantity.TIME, unit.orElse(ELAPSED), true));
        }
        if (words.size() == 1 && unit.isPresent() && words.get(0).length() > 1) {
            return Optional.of(new LogHeading(Quantity.TIME, unit.get(), true));
        }
        if (has(words, TIME_WORDS)) {
            // a name such as time_s or time_fortnight has nothing but a unit behind the word
            boolean unknown = unit.isEmpty() && words.size() == 2 && "time".equals(words.get(0));
            return unknown && !Set.of("utc", "gmt", "local").contains(words.get(1))
                    ? Optional.empty()
                    : Optional.of(new LogHeading(Quantity.TIME, has(words, DATE_WORDS) ? "" : unit.orElse(""), true));
        }
        if (has(words, DATE_WORDS)) {
            return Optional.of(new LogHeading(Quantity.DATE, "", true));
        }
        if (has(words, BURNER_WORDS) && words.size() == 1) {
            return Optional.of(new LogHeading(Quantity.BURNER, "", true));
        }
        String name = String.join(" ", words);
        boolean seen = SeenNote.of(name).stream().anyMatch(one -> one.seen() == SeenNote.Seen.DRIPS)
                || DrawNote.of(name) != DrawNote.NONE;
        return seen ? Optional.of(new LogHeading(Quantity.SEEN, "", true)) : Optional.empty();
    }

    private static boolean has(List<String> words, Set<String> some) {
        return words.stream().anyMatch(some::contains);
    }

    /** Whether a name is of what a sensor sends before it is made a pressure. */
    static boolean isVoltage(String name) {
        return has(List.of(name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")), VOLTAGE);
    }

    static boolean isPressure(String unit) {
        return is(unit, Kind.PRESSURE);
    }

    static boolean is(String unit, Kind<?> kind) {
        return !unit.isEmpty() && QuantityReader.isUnit(unit, kind);
    }
}
