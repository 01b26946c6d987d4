package io.github.heatswell.scenarios.readings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.diagnosis.Sighting;
import io.github.heatswell.units.PressureUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Regression: lists of readings as people type them, each with what it says or why it is refused. */
class PaperListTest {

    private static final double AIR = 101_325;

    @TempDir
    Path folder;

    private LogReader.LogFile read(String text, String unit) throws IOException {
        Path file = Files.writeString(folder.resolve("paper.txt"), text.replace("|", "\n"));
        return LogReader.read(file, AIR, new LogHints(Optional.ofNullable(unit), Optional.empty()));
    }

    /** A unit that files know is known on paper, in every spelling. */
    @ParameterizedTest
    @EnumSource(PressureUnit.class)
    void everyUnitIsReadInEverySpelling(PressureUnit unit) throws IOException {
        for (String spelling : unit.spellings()) {
            long first = Math.max(1, Math.min(99_000, Math.round(unit.fromSi(4e5))));
            String text = "10:00 %d %s|10:10 %d|10:20 %d".formatted(first, spelling, first + 1, first + 2);
            assertEquals(unit.toSi(first), read(text, null).log().gauge(0), 1e-6, text);
        }
    }

    /** Each list ends 1200 s after its first reading, at 4 bar to a thousandth (58 psi, 400 kPa). */
    @ParameterizedTest
    @CsvSource(delimiter = '!', quoteCharacter = '~', textBlock = """
            6:45 am 50 heater came on|6:55 am 55|7:05 am 58 dripping!psi!06:45 'heater came on' (the heater came on); 07:05 'dripping' (the relief pipe drips).
            6:45 am 50 psi heater came on|6:55 am 55|7:05 am 58 psi!!06:45 'heater came on'
            18:45 3,5 bar|18:55 3,6 bar|19:05 4,0 bar, tropft!!19:05 'tropft'
            Gauge in the basement, psi||6:45a.m. 50|6:55 a.m. 55|heater on|7:05 a.m. 58!!'heater on'
            11:50 am 50psi|11:55 52psi|12:10 58psi!!A time without am or pm was taken as the next such time
            23:50 - 350 kPa|00:00 - 360 kPa|0:10 - 400 kPa!!(kPa, as a gauge shows it)
            7 am: 50 psi|7:10 am: 55 psi|7:20 am: 58 psi!!Each line was read as a time and a pressure
            8.20pm 50 psi|8.30pm 55 psi|8.40 pm 58 psi dripping!!20:40 'dripping'
            6:45,50,heater on|6:55,55,|7:05,58,dripping!psi!06:45 'heater on' (the heater is on); 07:05 'dripping' (the
            6:45 am no reading|6:50 am 50 psi|7:00 am 51 psi|7:10 am 58 psi!!06:45 'no reading'
            Sat 6:30 am 50 psi|6:40 am about 55|Saturday 6:50 am 58 psi!!as a gauge shows it
            6:45 am 50 psi|about 6:55 55 drips again|7:05 am 58!!may be off by 4 psi more than the rest. Your notes on heater, relief pipe, vessel and tap, checked against every cause: 06:55 'drips again'
            6:45 am 50 psi nobody using water, gauge by the washer|6:55 55 gauge on laundry hose bib|7:05 am 58!!Your notes that no water was drawn, so that no draw explains what the gauge did then: 06:45 'nobody using water, gauge by the washer'. Your other notes, which do not affect the answer: 06:55 'gauge on laundry hose bib'
            Fri 11:50 pm 50 psi|midnight 52|Sat 12:10 am 58 psi!!as a gauge shows it
            11:50 am 50 psi|Noon 52 psi|12:10 pm 58 psi!!as a gauge shows it
            6:30 am 50 psi|6:40 am 55 psi or so, drip|6:50 am 58 psi!!may be off by 4 psi more than the rest. Your notes on heater, relief pipe, vessel and tap, checked against every cause: 06:40 'drip' (the
            6:30 am 50|6:40 am ~55|6:50 am 58ish!psi!may be off by 4 psi more
            6h45 3,5 bar Brenner an|6h55 3,6|7h05 4,0!!06:45 'Brenner an' (the heater is on)
            6.45 Uhr 3,5 bar|6.55 Uhr 3,6|7.05 Uhr 4,0!!Each line was read
            645am 50 psi|655am 55|705 am 58!!Each line was read
            0 min 50 psi|10 min 55|20 min 58 paper wet!!'paper wet' (water came since the paper was laid)
            6:45 am 64.7 psia|6:55 am 70|7:05 am 72.71!!(psi, absolute)
            50 psi at 6:45 am|55 psi at 6:55 am|58 psi at 7:05 am drips!!07:05 'drips' (the relief pipe drips)
            6:45 am 50 1/2 psi|6:55 am 55 and a half heater on|7:05 am 58 1/4" pipe drips!!06:55 'heater on' (the
            6:45 am not dripping yet 50 psi|6:55 am heater on, 55 psi|7:05 am dripping 58 psi!!06:45 'not dripping yet'
            6:45 am 50 psi|6:50 am 55|6:55 am valve set to 99 psi|7:05 am 58!!06:55 'valve set to 99 psi'
            6:45 am 50 psi|6:45 am - 6:52 ran 17 gallons|6:55 am 55|7:05 am 58!!water drawn between two readings: 06:52 'ran 17 gallons'.
            6:45 am 50 psi|6:50 to 6:52 am ran 17 gallons|6:55 am 55|7:05 am 58!!water drawn between two readings: 06:52 'ran 17 gallons'.
            3/1/2026 6:45 am 50 psi|3/1/2026 6:55 am 55 psi|3/1/2026 7:05 am 58 psi!!Each line was read
            """)
    void readsWhatPeopleType(String text, String unit, String understood) throws IOException {
        LogReader.LogFile file = read(text, unit);
        assertEquals(1200, file.log().end(), 1e-6, "digits of the text");
        assertEquals(4e5, file.log().gauge(file.log().count() - 1), 110, "58 psi are 3.9990 bar");
        assertTrue(file.understood().orElseThrow().contains(understood), file::toString);
    }

    /** Regression: what came more than half a day later was called earlier, and the sheet's own words for a row made a note of it. */
    @ParameterizedTest
    @CsvSource(delimiter = '!', quoteCharacter = '~', textBlock = """
            8 am 80 psi|8:30 am 85|10:30 pm 79!14.5
            8:00 80 psi|8:30 85|22:30 79!14.5
            22:00 80 psi|22:30 85|11:30 79!13.5
            8 am 80 psi|8:30 am 85|last thing at night 10:30 79!14.5
            8:00 80 psi|8:30 85|Last thing at night: 10:30 79!14.5
            8 am 80 psi|8:30 am 85|next morning 6:15 78!22.25
            8 am 80 psi|10 pm 85|In the morning, before anybody uses water 6:10 78!22.1667
            8 am 80 psi|10 pm 85|next day 6:10 78!22.1667
            """)
    void aTimeThatIsCertainIsNoEarlierOne(String text, double hours) throws IOException {
        LogReader.LogFile file = read(text, null);
        assertEquals(3, file.log().count());
        assertEquals(hours * 3_600, file.log().end(), 1, "digits of the text");
    }

    @Test
    void exclamationMarksAreNoPartOfAPressure() throws IOException {
        LogReader.LogFile file = read("7:05 am 77 psi|7:12 am 125|7:16 am 148!! dripping", null);
        assertEquals(PressureUnit.PSI.toSi(148), file.log().highest(), 1, "half a pascal is none on a gauge");
        assertEquals(1, file.log().sightings().size());
    }

    /** Regression: half a psi was lost, and stood in the note. */
    @ParameterizedTest
    @CsvSource(delimiter = '!', textBlock = """
            65 1/2!65.5
            65 1/2 psi heater on!65.5
            65-3/4!65.75
            65 and a half!65.5
            65 and a half psi, drips!65.5
            65 3/4 in pipe!65
            """)
    void halvesAndQuartersCount(String pressure, double psi) throws IOException {
        LogReader.LogFile file = read("6:45 am " + pressure + "|6:55 am 60|7:05 am 58", "psi");
        assertEquals(PressureUnit.PSI.toSi(psi), file.log().gauge(0), 1, "half a pascal is none on a gauge");
    }

    /** Regression: notes of hot-water use changed nothing in the answer. Each is about the time before its reading, or the next. */
    @ParameterizedTest
    @CsvSource(delimiter = '!', textBlock = """
            after dishes!BEFORE_THE_READING
            showered!BEFORE_THE_READING
            shower!BEFORE_THE_READING
            ran the tap!BEFORE_THE_READING
            Bath, dripping stopped!NONE
            someone had a bath!BEFORE_THE_READING
            hot water used!BEFORE_THE_READING
            faucet running!BEFORE_THE_READING
            ran 17 gallons!BEFORE_THE_READING
            used about 60 L!BEFORE_THE_READING
            valve ran 2 gallons!NONE
            before shower!AFTER_THE_READING
            no showers, no laundry!NONE
            wife wants a shower later!NONE
            maybe a bath!NONE
            nobody ran the tap!NOTHING_DRAWN
            nobody used water 1-5 am!NOTHING_DRAWN
            no water used since!NOTHING_DRAWN
            all taps shut!NOTHING_DRAWN
            kein Wasser gezapft!NOTHING_DRAWN
            we used hot water!BEFORE_THE_READING
            dripping into the tub!NONE
            heater came on!NONE
            in the bathroom!NONE
            """)
    void notesOfHotWaterUseAreUnderstood(String note, DrawNote draw) {
        assertEquals(draw, DrawNote.of(note));
    }

    /** What notes say of heater, relief pipe and vessel, and what they do not. */
    @ParameterizedTest
    @CsvSource(delimiter = '!', textBlock = """
            heater came on!CAME_ON
            burner off!OFF
            water off, burner going!ON
            burner going out!OFF
            gas valve going to be replaced!
            Brenner springt an!CAME_ON
            Heizung aus!OFF
            br\u00fbleur allum\u00e9!ON
            thermostat clicked off!WENT_OFF
            heater not on!OFF
            dripping!DRIPS
            dripping stopped!DRY
            tropft nicht mehr!DRY
            goutte!DRIPS
            no drip!DRY
            dripping? nope!DRY
            dripping? yes!DRIPS
            dripping?!
            heater on?!
            neighbour's valve is dripping!
            neighbor's T&P valve opened!
            heater not off yet!ON
            burner hasn't gone off!ON
            Heizung nicht aus!ON
            heater off no drip!OFF
            paper wet!PAPER_WET
            Papier trocken!PAPER_DRY
            paper no longer dry!PAPER_WET
            paper not dry yet!
            vessel doesn't feel heavy!
            caught 0.4 gal!CAUGHT
            2,8 L aufgefangen!CAUGHT
            water came out of the gas valve!
            vessel heavy!
            dripping, burner off!DRIPS OFF
            relief valve discharging steam!DRIPS
            faucet dripping!
            pressure dropping!
            went to bed!
            """)
    void notesOfHeaterPipeAndVesselAreUnderstood(String note, String seen) {
        assertEquals(
                seen == null ? "" : seen,
                SeenNote.of(note).stream().map(one -> one.seen().name()).collect(Collectors.joining(" ")));
    }

    /** What notes say of vessel and tap, each with its number. */
    @ParameterizedTest
    @CsvSource(delimiter = '!', textBlock = """
            water came out of the gas valve!GAS_VALVE 1.0
            gas valve: only air!GAS_VALVE 0.0
            Luftventil: kein Wasser!GAS_VALVE 0.0
            expansion tank heavy!VESSEL_FULL 0.9
            vessel sounds hollow!VESSEL_FULL 0.1
            Ausdehnungsgef\u00e4\u00df klingt dumpf!VESSEL_FULL 0.9
            vessel not heavy!
            vessel doesn't feel heavy!
            vessel 60 % full!VESSEL_FULL 0.6
            tire gauge 30 psi!TYRE_GAUGE 206843
            Vordruck 2,5 bar!TYRE_GAUGE 250000
            hot tap 131 F!HOT_TAP 328
            Warmwasser 55 \u00b0C!HOT_TAP 328
            dripping, vessel heavy!VESSEL_FULL 0.9
            cold tap 12 C!
            hot tap 600 F!
            hot tap 240 F!HOT_TAP 383
            steam from tap!HOT_TAP 373
            T&P valve blows steam!HOT_TAP 373
            aus dem Hahn kommt Dampf!HOT_TAP 373
            no steam!
            bathroom mirror full of steam!
            kettle boiling!
            boiler on!
            tap spits!
            tank full!
            heater gas valve open!
            precharge unknown!
            """)
    void notesOfVesselAndTapAreNumbers(String note, String read) {
        assertEquals(
                read == null ? "" : read,
                SpotNote.of(note).stream()
                        .map(one ->
                                one.check() + " " + (one.value() > 1 ? (double) Math.round(one.value()) : one.value()))
                        .collect(Collectors.joining(" "))
                        .replaceAll("(\\d{3,})\\.0", "$1"));
    }

    /** Water in a vessel, its charge and its temperature are read whatever the gauge shows, and what cannot be meant so is said. */
    @Test
    void vesselAndTapAreReadingsOnSite() throws IOException {
        LogReader.LogFile file = read(
                "vessel heavy|6:40 am 50 psi tyre gauge 50 psi|6:45 am 60 hot tap 90 F|6:50 am 78|6:55 am 70 hot tap 131 F|7:05 am 70"
                        + " tire gauge 12 psi",
                null);
        assertEquals(
                "{HOT_TAP=328, TYRE_GAUGE=82737, VESSEL_FULL=1}",
                file.spots().all().entrySet().stream()
                        .map(one ->
                                one.getKey() + "=" + Math.round(one.getValue().value()))
                        .collect(Collectors.joining(", ", "{", "}")));
        assertTrue(file.doubts().get(0).startsWith("06:40 'tyre gauge 50 psi' is what the water's own gauge reads"));
        assertTrue(file.doubts().get(1).startsWith("06:45 'hot tap 90 F' counts only once the tank has heated up"));
        String understood = file.understood().orElseThrow();
        assertTrue(understood.contains("'vessel heavy' (the vessel is taken to be nearly full of water)"), understood);
        assertFalse(understood.contains("50 psi'"), "what counts for nothing is not checked against every cause");
        assertFalse(understood.contains("90 F'"), "what counts for nothing is not checked against every cause");
    }

    /** The hours that a note names, or the time since the reading before; of a night that is still to come, that one. */
    @ParameterizedTest
    @CsvSource(delimiter = '!', textBlock = """
            nobody used water 1-5 am|10 pm 50 psi|6 am 60 psi|6:30 am 60 psi!10800!25200
            10 pm 50 psi|6 am 60 psi nobody used water 1 am to 5 am|6:30 am 60 psi!10800!25200
            22:00 3,5 bar|6:00 3,6 bar kein Wasser gezapft|6:30 3,7 bar!0!28800
            """)
    void noWaterDrawnIsOfATime(String text, double from, double until) throws IOException {
        LogReader.LogFile file = read(text, null);
        assertEquals(
                List.of(Sighting.of(Sighting.Kind.TAPS_SHUT, from, until)),
                file.log().sightings());
        assertTrue(file.understood().orElseThrow().contains("Your notes that no water was drawn"), file::toString);
    }

    @Test
    void notesAlikeAreToldTogether() throws IOException {
        String understood = read("6:40 am 50 psi|6:45 am 60 dripping|6:50 am 61 dripping|6:55 am 61", null)
                .understood()
                .orElseThrow();
        assertTrue(understood.endsWith("every cause: 06:45, 06:50 'dripping' (the relief pipe drips)."), understood);
    }

    @Test
    void notesOfHotWaterUseAreOfTheTimeBetweenTwoReadings() throws IOException {
        LogReader.LogFile file =
                read("6:40 am 50 psi|6:45 am 60 heater on|6:50 shower|6:55 am 50|7 am 58 before bath|7:05 40", null);
        assertEquals(
                "Your notes of water use, taken as water drawn between two readings: 06:50 'shower'; 07:00"
                        + " 'before bath'. Your notes on heater, relief pipe, vessel and tap, checked against every cause: 06:45"
                        + " 'heater on' (the"
                        + " heater is on).",
                file.understood().orElseThrow().replaceFirst(".*(?=Your notes of water)", ""));
    }

    /** A unit is never guessed, and what is no reading is not taken for one. */
    @ParameterizedTest
    @CsvSource(delimiter = '!', quoteCharacter = '~', textBlock = """
            6:45 am 78|7:00 am 80|7:10 am 102!!1:1: the pressures have no unit; a highest reading of 102 only makes sense in psi
            6:45 am 4.2|7:00 am 5|7:10 am 6.9!!a highest reading of 6.9 only makes sense in bar
            6:45 am 25|7:00 am 25|7:10 am 25!!look at the gauge
            6:45 am 78 psi|7:00 am 5 bar|7:10 am 102!!2:1: pressures are in psi before and in bar here
            6:45 am 78 psi|7:00 am 80|7:10 am 102!bar!its unit, psi, and another was given beside it, bar
            12:30 60 psi|1:00 62 psi|1:30 64 psi!!2:1: this time is earlier than the one before
            6:45 am 78 psi|7:00 am 120F|7:10 am 80!!2:1: '120F' is not a pressure
            6:45 am 78 psi|79 psi|7:10 am 80!!2:1: '79 psi' is not a time of day
            6:45 am 78 psi|13:00 pm 79 psi|7:10 am 80!!with am or pm, hours run from 1 to 12
            Sat 6:45 am 78 psi|Sun 7:00 am 80|7:10 am 80!!2:1: this reading is not within a day of the one before; write the date
            6:45 am 78 psi|7:16 am 80|7:10 am 80!!3:1: this time is earlier
            8 am 78 psi|next day 9 am 80|7:10 am 80!!2:1: this reading is not within a day
            Sat 6:45 am 78 psi|Mon 5:00 am 80|7:10 am 80!!2:1: this time is earlier
            6:45 am 78 psi|6:55 -5 psi|7:10 am 80!!2:1: '-5 psi' begins with a dash
            6:45 am 78 psi|7:00 am 80!!only 2 readings
            when,differential bar|6:45,1|7:00,2|7:10,3!!must name the columns
            """)
    void refusesWhatIsOpen(String text, String unit, String message) {
        InvalidReadingsException refused = assertThrows(InvalidReadingsException.class, () -> read(text, unit));
        assertTrue(refused.getMessage().contains(message), refused.getMessage());
        assertFalse(refused.getMessage().contains("--"), "a program has no options: " + refused.getMessage());
        assertEquals(message.matches(".*no unit.*|a highest.*|look at.*"), refused.isUnitMissing());
    }

    @Test
    void theUnitAskedForServesATableThatNamesNone() throws IOException {
        LogReader.LogFile file = read("time_min,pressure|0,58|10,58|20,58", "psi");
        assertEquals(4e5, file.log().gauge(0), 110, "58 psi are 3.9990 bar");
        InvalidReadingsException refused =
                assertThrows(InvalidReadingsException.class, () -> read("time_min,pressure|0,58|10,58|20,58", null));
        assertTrue(refused.isUnitMissing());
        assertFalse(refused.getMessage().contains("--"), refused.getMessage());
    }

    @Test
    void manyNotesAreCounted() throws IOException {
        StringBuilder text = new StringBuilder();
        for (int i = 10; i < 40; i++) {
            text.append("6:").append(i).append(" 58 psi drip ").append(i).append('\n');
        }
        String understood = read(text.toString(), null).understood().orElseThrow();
        assertTrue(understood.contains("06:10 'drip 10'"), understood);
        assertFalse(understood.contains("06:39 'drip 39'"), understood);
        assertTrue(understood.endsWith("; and 18 more."), understood);
    }
}
