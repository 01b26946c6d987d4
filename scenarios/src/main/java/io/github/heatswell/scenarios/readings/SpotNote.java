package io.github.heatswell.scenarios.readings;

import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a note says of a vessel or a tap, which holds whenever it was seen, in the words of several languages.
 *
 * @param check which reading it is
 * @param value the reading, in the SI unit of the check
 * @param words how it was taken
 */
record SpotNote(SiteCheck check, double value, String words) {

    /** How full a vessel is that is called heavy or dull (-), and one called light or hollow; our own judgement. */
    private static final double HEAVILY = 0.9;

    private static final double LIGHTLY = 0.1;

    private static final Pattern GAS_VALVE = pattern(
            "\\b(?:gas|air|schrader|tyre|tire|fill|charging)[ -]valve\\b|valve (?:core|pin|stem)"
                    + "|gasventil|f\u00fcllventil|luftventil|valve de gonflage|v\u00e1lvula de (?:gas|aire)|gasventiel");
    private static final Pattern WATER = pattern("\\bwater|\\bwet\\b|wasser|\\bnass\\b|\\beau\\b|\\bagua\\b|acqua");
    private static final Pattern GAS =
            pattern("\\b(?:only|just|nothing but|nur|que|solo|alleen|gas|air|luft)\\b|hiss|\\bdry\\b|trocken");
    private static final Pattern VESSEL = pattern(
            "\\b(?:vessel|(?:expansion|small|little) tank|gef\u00e4\u00df|gefaess|mag|vase|vaso|(?:expansie)?vat)\\b|ausdehnungsgef\\w+");
    private static final Pattern HEAVY = pattern(
            "\\b(?:heavy|dull|thuds?|waterlogged|full|schwer|dumpf|voll|lourd|plein|pesad[oa]|llen[oa]|zwaar|vol|pesante|pieno)\\b");
    private static final Pattern LIGHT = pattern(
            "\\b(?:light|hollow|rings?|empty|leicht|hohl|leer|l\u00e9ger|creux|vide|liger[oa]|huec[oa]|leeg|licht|leggero|vuoto)\\b");
    private static final Pattern PERCENT = pattern("(\\d{1,3})\\s?%");
    private static final Pattern TYRE_GAUGE = pattern(
            "\\b(?:tyre|tire)[ -]?(?:pressure )?gauge\\b|\\b(?:pre-?charge|air charge|vordruck|reifenf\u00fcller\\w*"
                    + "|prégonflage|precarga|voordruk|precarica)\\b");
    private static final Pattern TAP = pattern(
            "\\b(?:tap|faucet|hot water|wasserhahn|hahn|zapfstelle|warmwasser|robinet|eau chaude|grifo|agua caliente|kraan|rubinetto)\\b");
    private static final Pattern COLD = pattern("\\b(?:cold|kalt\\w*|froide?|fr\u00eda|koud|fredd[ao])\\b");
    /** Water that boils in the open, wherever it comes out, but for what steams in a kitchen or a bath. */
    private static final Pattern STEAM = pattern(
            "\\b(?:steam(?:s|ing)?|boil(?:s|ing)|dampf|dampft|kocht|kochend\\w*|siedet|vapeur|bout|bouillante?|vapor|hierve|hirviendo"
                    + "|stoom|kookt|vapore|bolle)\\b");

    private static final Pattern HARMLESS = pattern(
            "shower|\\bbath|mirror|window|kettle|\\biron|cook|\\b(?:pan|pot|tea|coffee)\\b|dusch|spiegel|douche|ducha|doccia");
    private static final Pattern SPITS =
            pattern("\\b(?:spit(?:s|ting)?|sputter\\w*|splutter\\w*|spuckt|crache|escupe)\\b");
    private static final double BOILING = TemperatureUnit.CELSIUS.toSi(100);
    private static final double HOTTEST = SiteCheck.HOT_TAP.limits().high();
    /** A tap above that, up to this (K), boils by a thermometer that is off; beyond, the number is a slip. */
    private static final double MEANT = TemperatureUnit.CELSIUS.toSi(130);

    private static final String STEAMS = "water that boils, about 100 degC (212 degF) at the hot tap";

    private static final Pattern AMOUNT =
            pattern("(?<![\\d.,])(\\d{1,3}(?:[.,]\\d{1,2})?)\\s?(\u00b0\\s?[cf]\\b|\\p{L}+)");

    private static Pattern pattern(String regex) {
        return Pattern.compile(
                regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);
    }

    /** What a note says, part by part; nothing if it is about something else. */
    static List<SpotNote> of(String note) {
        return SeenNote.parts(note).flatMap(part -> ofPart(part).stream()).toList();
    }

    /** Whether a part of a note is about any of these. */
    static boolean isAbout(String part) {
        return ofPart(part).filter(one -> !one.words.equals(STEAMS)).isPresent()
                || GAS_VALVE.matcher(part).find();
    }

    /** Whether a tap spits, from air or from steam, with no temperature given. */
    static boolean tellsOfSpitting(String note) {
        return TAP.matcher(note).find() && SPITS.matcher(note).find() && of(note).isEmpty();
    }

    private static Optional<SpotNote> ofPart(String part) {
        return Stream.of(gasValve(part), tyreGauge(part), tap(part), vessel(part), steam(part))
                .flatMap(Optional::stream)
                .filter(one -> one.check.limits().contains(one.value))
                .findFirst();
    }

    private static Optional<SpotNote> gasValve(String part) {
        String besides = GAS_VALVE.matcher(part).replaceAll(" ");
        boolean wet = WATER.matcher(besides).find();
        if (besides.equals(part) || !wet && !GAS.matcher(besides).find()) {
            return Optional.empty();
        }
        return Optional.of(
                wet && !SeenNote.isDenied(part)
                        ? new SpotNote(SiteCheck.GAS_VALVE, 1, "water at the vessel's air valve")
                        : new SpotNote(SiteCheck.GAS_VALVE, 0, "nothing but gas at the vessel's air valve"));
    }

    private static Optional<SpotNote> tyreGauge(String part) {
        return TYRE_GAUGE.matcher(part).find()
                ? amount(part, Kind.PRESSURE).stream()
                        .mapToObj(pascal -> new SpotNote(
                                SiteCheck.TYRE_GAUGE,
                                pascal,
                                "the vessel's precharge, if read with its water side empty"))
                        .findFirst()
                : Optional.empty();
    }

    private static Optional<SpotNote> tap(String part) {
        return TAP.matcher(part).find() && !COLD.matcher(part).find()
                ? amount(part, Kind.TEMPERATURE).stream()
                        .mapToObj(kelvin -> new SpotNote(
                                SiteCheck.HOT_TAP,
                                kelvin > MEANT ? kelvin : Math.min(kelvin, HOTTEST),
                                "the hot tap after a heat-up"))
                        .findFirst()
                : Optional.empty();
    }

    private static Optional<SpotNote> steam(String part) {
        return STEAM.matcher(part).find() && !HARMLESS.matcher(part).find() && !SeenNote.isDenied(part)
                ? Optional.of(new SpotNote(SiteCheck.HOT_TAP, BOILING, STEAMS))
                : Optional.empty();
    }

    private static Optional<SpotNote> vessel(String part) {
        if (!VESSEL.matcher(part).find()) {
            return Optional.empty();
        }
        Matcher percent = PERCENT.matcher(part);
        boolean heavy = HEAVY.matcher(part).find();
        if (percent.find() && heavy) {
            return Optional.of(new SpotNote(
                    SiteCheck.VESSEL_FULL,
                    Integer.parseInt(percent.group(1)) / 100.0,
                    "that much of the vessel is taken to be water"));
        }
        boolean light = LIGHT.matcher(part).find();
        // what is not heavy need not be light
        if (heavy == light || SeenNote.isDenied(part)) {
            return Optional.empty();
        }
        return Optional.of(
                heavy
                        ? new SpotNote(SiteCheck.VESSEL_FULL, HEAVILY, "the vessel is taken to be nearly full of water")
                        : new SpotNote(SiteCheck.VESSEL_FULL, LIGHTLY, "the vessel is taken to hold almost no water"));
    }

    /** The first amount of a kind in a text (SI; pressures gauge). */
    private static OptionalDouble amount(String part, Kind<?> kind) {
        Matcher amount = AMOUNT.matcher(part);
        while (amount.find()) {
            String unit = amount.group(2).replace(" ", "");
            if (QuantityReader.isUnit(unit, kind)) {
                String text = amount.group(1).replace(',', '.') + " " + unit;
                if (kind != Kind.PRESSURE) {
                    var read = QuantityReader.read(text, kind);
                    return OptionalDouble.of(read.unit().toSi(read.value()));
                }
                Pressure pressure = QuantityReader.pressure(text);
                return pressure.reference() == Pressure.Reference.GAUGE
                        ? OptionalDouble.of(pressure.value())
                        : OptionalDouble.empty();
            }
        }
        return OptionalDouble.empty();
    }
}
