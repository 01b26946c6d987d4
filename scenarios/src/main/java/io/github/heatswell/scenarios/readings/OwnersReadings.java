package io.github.heatswell.scenarios.readings;

import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.diagnosis.SpotReading;
import io.github.heatswell.diagnosis.SpotReadings;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All readings of an owner.
 *
 * @param log the log of a gauge, if there is one
 * @param spots readings on site, possibly none
 * @param units the unit system of the log; empty without a log
 * @param understood how columns of the log were understood whose names are none of those documented, as whole sentences
 * @param doubts what may not be meant as it was understood, as whole sentences
 * @param remarks what was odd about the log
 */
public record OwnersReadings(
        Optional<PressureLog> log,
        SpotReadings spots,
        Optional<UnitSystem> units,
        Optional<String> understood,
        List<String> doubts,
        List<String> remarks) {

    /**
     * Copies the remarks.
     *
     * @param log the log of a gauge, if there is one
     * @param spots readings on site, possibly none
     * @param units the unit system of the log; empty without a log
     * @param understood how columns of the log were understood whose names are none of those documented, as whole sentences
     * @param doubts what may not be meant as it was understood, as whole sentences
     * @param remarks what was odd about the log
     */
    public OwnersReadings {
        Objects.requireNonNull(log, "log");
        Objects.requireNonNull(spots, "spots");
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(understood, "understood");
        doubts = List.copyOf(doubts);
        remarks = List.copyOf(remarks);
    }

    /**
     * No readings yet.
     *
     * @return nothing read
     */
    public static OwnersReadings none() {
        return new OwnersReadings(
                Optional.empty(), SpotReadings.none(), Optional.empty(), Optional.empty(), List.of(), List.of());
    }

    /**
     * The same with the readings of one more file: what ends in .yaml or .yml holds readings on site, anything else is a log.
     *
     * @param file the file
     * @param atmosphere the pressure of the air at the site (Pa, absolute)
     * @return all readings
     * @throws InvalidReadingsException if the file makes no sense; it lists what is wrong with lines and columns
     * @throws IllegalArgumentException if it is a second log
     * @throws IOException if the file cannot be read
     */
    public OwnersReadings with(Path file, double atmosphere) throws IOException {
        return with(file, atmosphere, LogHints.NONE);
    }

    /**
     * The same, where a person adds to what a log says.
     *
     * @param file the file
     * @param atmosphere the pressure of the air at the site (Pa, absolute)
     * @param hints what the file of a log does not say, or says wrongly
     * @return all readings
     * @throws InvalidReadingsException if the file makes no sense; it lists what is wrong with lines and columns
     * @throws IllegalArgumentException if it is a second log
     * @throws IOException if the file cannot be read
     */
    public OwnersReadings with(Path file, double atmosphere, LogHints hints) throws IOException {
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(".yaml") && !name.endsWith(".yml")) {
            if (log.isPresent()) {
                throw new IllegalArgumentException("a second log was given; one diagnosis takes one log");
            }
            LogReader.LogFile read = LogReader.read(file, atmosphere, hints);
            return new OwnersReadings(
                    Optional.of(read.log()),
                    and(read.spots()),
                    Optional.of(read.units()),
                    read.understood(),
                    read.doubts(),
                    read.remarks());
        }
        return new OwnersReadings(log, and(SpotReader.read(file, atmosphere)), units, understood, doubts, remarks);
    }

    private SpotReadings and(SpotReadings others) {
        SpotReadings more = spots;
        for (Map.Entry<SiteCheck, SpotReading> reading : others.all().entrySet()) {
            more = more.with(reading.getKey(), reading.getValue());
        }
        return more;
    }

    /**
     * The same with what somebody saw of vessel or tap, said as in a note beside a reading: {@code vessel heavy}, {@code water at the
     * gas valve}, {@code tyre gauge 40 psi}, {@code hot tap 58 C}.
     *
     * @param note the words
     * @return all readings
     * @throws IllegalArgumentException if it says nothing about the kind, or has more than 500 characters
     */
    public OwnersReadings noted(String note) {
        SpotReadings more = spots;
        List<SpotNote> said = SpotNote.of(WrittenLength.checked(note, "note"));
        for (SpotNote one : said) {
            more = more.with(one.check(), one.value());
        }
        if (said.isEmpty()) {
            throw new IllegalArgumentException(
                    Printable.quote(note)
                            + " is not understood; write what you saw at the vessel or tap, such as 'vessel heavy', 'water at the"
                            + " gas valve',"
                            + " 'tyre gauge 40 psi' or 'hot tap 130 F', and put anything else with its time into the list of readings");
        }
        String taken = "You say " + Printable.quote(note) + ", taken as this: "
                + said.stream().map(SpotNote::words).collect(Collectors.joining("; ")) + ".";
        return new OwnersReadings(
                log,
                more,
                units,
                Optional.of(understood.map(before -> before + " ").orElse("") + taken),
                doubts,
                remarks);
    }

    /**
     * The same with one more doubt about how the log was understood.
     *
     * @param doubt a whole sentence
     * @return all readings
     */
    public OwnersReadings doubted(String doubt) {
        return new OwnersReadings(
                log,
                spots,
                units,
                understood,
                Stream.concat(doubts.stream(), Stream.of(doubt)).toList(),
                remarks);
    }

    /**
     * The same with one more remark about the log.
     *
     * @param remark a sentence without capital and point
     * @return all readings
     */
    public OwnersReadings remarked(String remark) {
        return new OwnersReadings(
                log,
                spots,
                units,
                understood,
                doubts,
                Stream.concat(remarks.stream(), Stream.of(remark)).toList());
    }
}
