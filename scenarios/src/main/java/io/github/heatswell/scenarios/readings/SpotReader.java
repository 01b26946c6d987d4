package io.github.heatswell.scenarios.readings;

import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.diagnosis.SpotReading;
import io.github.heatswell.diagnosis.SpotReadings;
import io.github.heatswell.scenarios.document.Faults;
import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.SourceText;
import io.github.heatswell.scenarios.document.YamlTree;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Spoken;
import io.github.heatswell.units.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Reads what was read on site, in YAML: a name for each reading and its value with unit, such as {@code cold-static: 4.2 bar},
 * possibly with its standard uncertainty: {@code tyre-gauge: 2.9 bar +- 0.1 bar}, or as people say it: {@code about 61 psi}. The names are those of {@link SiteCheck} in lower case
 * with hyphens. Of the vessel {@code vessel-full: heavy} and {@code gas-valve: water} will do, as in a note.
 */
public final class SpotReader {

    private static final String EXAMPLE = "cold-static: 4.2 bar";

    private SpotReader() {}

    /**
     * Reads a file.
     *
     * @param file the file
     * @param atmosphere the absolute pressure (Pa) of the air at the gauge, for pressures given as absolute
     * @return the readings
     * @throws InvalidReadingsException if the file cannot be understood; the message lists every fault with its line
     * @throws IOException if the file cannot be read
     */
    public static SpotReadings read(Path file, double atmosphere) throws IOException {
        Faults faults = new Faults();
        SpotReadings readings = SpotReadings.none();
        Optional<Node.Mapping> tree = SourceText.of(file, faults)
                .flatMap(text ->
                        YamlTree.of(text, "it should contain readings, such as '" + EXAMPLE + "'", EXAMPLE, faults));
        if (tree.isPresent()) {
            for (Node.Entry entry : tree.get().entries()) {
                readings = with(readings, entry, atmosphere, faults);
            }
        }
        if (!faults.none()) {
            throw new InvalidReadingsException(faults.inOrder());
        }
        return readings;
    }

    private static SpotReadings with(SpotReadings readings, Node.Entry entry, double atmosphere, Faults faults) {
        String key = entry.key().text();
        Optional<SiteCheck> check = Arrays.stream(SiteCheck.values())
                .filter(c -> key(c).equals(key))
                .findFirst();
        if (check.isEmpty()) {
            faults.add(
                    entry.key().at(),
                    Printable.quote(key) + " is not a known reading; the readings are " + String.join(", ", keys())
                            + Nearest.hint(key, keys()));
            return readings;
        }
        if (!(entry.value() instanceof Node.Scalar value)) {
            faults.add(
                    entry.value().at(),
                    key + ": must be a number with a unit, not " + entry.value().kind());
            return readings;
        }
        try {
            return readings.with(
                    check.get(), reading(check.get(), WrittenLength.checked(value.text(), "value"), atmosphere));
        } catch (IllegalArgumentException wrong) {
            faults.add(value.at(), key + ": " + wrong.getMessage());
            return readings;
        }
    }

    private static List<String> keys() {
        return Arrays.stream(SiteCheck.values()).map(SpotReader::key).toList();
    }

    private static String key(SiteCheck check) {
        return check.limits().field();
    }

    private static SpotReading reading(SiteCheck check, String text, double atmosphere) {
        Optional<SpotNote> seen = SpotNote.of(key(check).replace('-', ' ').replace("full", "") + " " + text).stream()
                .filter(one -> check.unit().isEmpty() && one.check() == check)
                .findFirst();
        if (seen.isPresent()) {
            return new SpotReading(seen.get().value(), check.usualUncertainty());
        }
        if (check == SiteCheck.GAS_VALVE) {
            throw new IllegalArgumentException(
                    Printable.quote(text) + " is not known here; write water, or gas if nothing else comes");
        }
        String[] parts = Spoken.of(text).plain().split("±|\\+/?-", 2);
        double value = switch (check.unit()) {
            case "Pa" -> QuantityReader.pressure(parts[0].strip()).gauge(atmosphere);
            case "K" -> si(parts[0], Kind.TEMPERATURE);
            case "" -> si(parts[0], Kind.RATIO);
            default -> si(parts[0], Kind.VOLUME);
        };
        String reading = parts[0].strip();
        ReadingRange.of(check).checked(value, reading, "");
        if (parts.length == 1) {
            return new SpotReading(value, check.usualUncertainty());
        }
        double uncertainty = switch (check.unit()) {
            case "Pa" -> si(parts[1], Kind.PRESSURE);
            case "K" -> si(parts[1], Kind.TEMPERATURE_DIFFERENCE);
            case "" -> si(parts[1], Kind.RATIO);
            default -> si(parts[1], Kind.VOLUME);
        };
        refuseRough(check, uncertainty, parts[1].strip(), value, reading);
        return new SpotReading(value, uncertainty);
    }

    /** Refuses an uncertainty beside which the reading says nothing. */
    private static void refuseRough(SiteCheck check, double uncertainty, String text, double value, String reading) {
        if (!(uncertainty > 0)) {
            throw new IllegalArgumentException(
                    "the uncertainty " + Printable.quote(text) + " must be above 0; leave it out if there is none");
        }
        if (!(uncertainty <= check.largestUncertainty(value))) {
            throw new IllegalArgumentException("the uncertainty " + Printable.quote(text)
                    + " is too large beside the reading of " + Printable.quote(reading)
                    + " to be of use; repeat the reading more precisely, or leave it out");
        }
    }

    private static <U extends Unit> double si(String text, Kind<U> kind) {
        Amount<U> amount = QuantityReader.read(text.strip(), kind);
        return amount.unit().toSi(amount.value());
    }
}
