package io.github.heatswell.scenarios.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.file.Sources;
import io.github.heatswell.scenarios.interview.Interview.Outcome.Ending;
import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.report.ReadingsAfter;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Contracts of the guide: which commands it runs, in which order, and where it carries on. */
class GuideTest {

    private static final List<String> WHOLE = List.of("", "log.csv", "", "", "18 L", "", "dk", "4 bar", "", "");

    @TempDir
    private Path folder;

    private Path house;
    private final List<String> ran = new ArrayList<>();
    private String said = "";

    @BeforeEach
    void aHouse() throws IOException {
        house = Files.writeString(folder.resolve("my-house.yaml"), "title: My house\n");
    }

    /** What the commands say comes next, by their names. */
    private final Map<String, NextStep> next = new HashMap<>();

    private Guide.Done done(int status, List<String> words) {
        return new Guide.Done(status, Optional.ofNullable(next.get(words.get(0))));
    }

    private Guide.Ending lead(int status, List<String> typed) throws IOException {
        StringWriter out = new StringWriter();
        String lines = typed.isEmpty() ? "" : String.join("\n", typed) + "\n";
        Guide.Ending ending =
                Guide.lead(house, Optional.of(UnitSystem.SI), new StringReader(lines), new PrintWriter(out), words -> {
                    ran.add(String.join(" ", words)
                            .replace(house.toString(), "HOUSE")
                            .replace(Path.of("heatswell-out", "my-house").toString(), "PAPERS"));
                    return done(status, words);
                });
        said = out.toString();
        return ending;
    }

    private static final List<String> JOB = List.of(
            "run HOUSE",
            "diagnose HOUSE --readings log.csv",
            "size HOUSE --out PAPERS",
            "run HOUSE --set vessel.volume=18 L --set vessel.precharge=4 bar +- 0.2 bar"
                    + " --set question=Does the relief valve stay shut after the change? --out PAPERS",
            "outlook HOUSE --set vessel.volume=18 L --set vessel.precharge=4 bar +- 0.2 bar");

    @Test
    void theJobIsDoneInOneSitting() throws IOException {
        next.put("outlook", NextStep.to("run"));
        Guide.Ending ending = lead(0, WHOLE);
        assertEquals(Ending.FINISHED, ending.ending());
        assertEquals(
                List.of(
                        "run",
                        house.toString(),
                        "--set",
                        "vessel.volume=18 L",
                        "--set",
                        "vessel.precharge=4 bar +- 0.2 bar"),
                ending.next());
        assertEquals(JOB, ran);
        assertTrue(said.contains("Step 1 of 7. ") && said.contains("Step 7 of 7. "), said);
        assertFalse(Files.exists(folder.resolve("my-house.guide.txt")));
        String end = said.replaceAll("\\s+", " ");
        assertTrue(
                end.contains("That is the whole job.")
                        && end.contains("enter it there: vessel.volume 18 L, vessel.precharge 4 bar +- 0.2 bar."),
                end);
        assertTrue(end.contains("The readings left the cause open. If the relief valve still drips"), end);
        said.lines().forEach(line -> assertTrue(line.length() <= 80, line));
    }

    /** The steps that ask speak in the units and words of the house, also when the guide is carried on. */
    @Test
    void aHouseInTheUsIsAskedInGallons() throws IOException {
        Files.writeString(house, Catalogue.text("orchard-lodge").replace("site:    {", "site:    { place: us-ipc,"));
        StringWriter out = new StringWriter();
        String lines = String.join("\n", "", "no", "", "", "2", "", "dk", "dk") + "\n";
        Guide.lead(
                house,
                Optional.empty(),
                new StringReader(lines),
                new PrintWriter(out),
                words -> new Guide.Done(0, Optional.empty()));
        String asked = out.toString().replaceAll("\\s+", " ");
        assertTrue(
                asked.contains("What is the volume of the expansion tank?") && asked.contains("such as 2 gal"), asked);
        assertTrue(asked.contains("Taken as gal, the unit of the example"), asked);
        assertTrue(asked.contains("a tire gauge") && asked.contains("such as 50 psi"), asked);
    }

    /** What the vessel should be and hold is said where it is asked for, and again at the end as long as it is not so. */
    @ParameterizedTest
    @CsvSource({"70 psi, 70 psi, false", "70 psi, 64 psi, true"})
    void aWrongVesselIsSaidBeforeTheJobIsDone(String first, String second, boolean right) throws IOException {
        Files.writeString(house, "title: My house\n" + Sources.REDUCED);
        StringWriter out = new StringWriter();
        String lines = String.join("\n", "", "no", "", "", "2 gal", "", "dk", first, second, "", "skip", "") + "\n";
        Guide.Ending ending = Guide.lead(
                house,
                Optional.empty(),
                new StringReader(lines),
                new PrintWriter(out),
                words -> new Guide.Done(0, Optional.empty()));
        String all = out.toString().replaceAll("\\s+", " ");
        assertEquals(Ending.FINISHED, ending.ending(), all);
        assertTrue(all.contains("charge it to 64 psi, the highest supply pressure there"), all);
        assertTrue(all.contains("Bring it to 64 psi."), all);
        String end = all.substring(all.indexOf("Step 7 of 7."));
        assertTrue(end.contains("that was bought is too small"), end);
        String charging = all.substring(all.indexOf("Step 5 of 7."), all.indexOf("Step 6 of 7."));
        assertFalse(charging.contains("that was bought is too small"), "the step before said so: " + charging);
        assertEquals(!right, end.contains("Bring it to 64 psi."), end);
        assertEquals(!right, end.contains("correct vessel.precharge in it after pumping"), end);
        assertTrue(withVessel().contains("precharge: " + second + " +- 3 psi"), withVessel());
        assertFalse(end.contains("The readings left"), end);
        out.toString().lines().forEach(line -> assertTrue(line.length() <= 80, line));
    }

    /** Regression: the setting of a valve that is fitted only now was told as "4 psi } off". */
    @Test
    void howFarASettingMayBeOffIsSaidInWords() throws IOException {
        String closed = Sources.REDUCED
                .replace("arrangement: reducing-valve", "arrangement: check-valve")
                .replace("pressure: 85 psi", "pressure: 80 psi")
                .replace("  reducing-valve: { set: 60 psi }\n", "");
        Files.writeString(house, "title: My house\n" + closed);
        lead(0, List.of("", "no", "", "", "52 psi", "quit"));
        assertTrue(flat().contains("allows for a setting that is 4 psi off: "), said);
    }

    /** Regression: whoever had the valve lowered, as advised, was told to charge the vessel to the old supply. */
    @Test
    void theCureThatIsAdvisedIsCarriedOut() throws IOException {
        Files.writeString(
                house,
                "title: My house\n"
                        + Sources.REDUCED
                                .replace("pressure: 85 psi", "pressure: 105 psi")
                                .replace("set: 60 psi", "set: 75 psi"));
        assertEquals(Ending.LEFT, lead(0, List.of("", "no", "", "", "none")).ending());
        assertTrue(flat().contains("Have that done first"), said);
        ran.clear();
        next.put("outlook", NextStep.to("run"));
        Guide.Ending ending = lead(
                0,
                List.of("50 psi", "1 gal", "back", "3 gal", "", "back", "3 gal", "", "dk", "54.4 psi", "", "skip", ""));
        String all = flat();
        assertEquals(Ending.FINISHED, ending.ending(), all);
        assertTrue(all.contains("The sizing says to have the reducing valve set to "), all);
        assertTrue(all.indexOf("The size to buy is") < all.indexOf("What is the volume of the"), all);
        assertTrue(all.contains("of 3.79 L that was bought is too small: the pressure would go to "), all);
        assertTrue(all.contains(", over the limit of ") && all.contains("before anybody connects it"), all);
        assertTrue(all.contains("charge it to 54 psi") || all.contains("charge it to 3.75 bar"), all);
        assertFalse(all.contains("79 psi") || all.contains("5.47 bar"), all);
        assertTrue(withVessel().contains("set: 50 psi +- 4 psi"), withVessel());
        assertEquals(
                List.of("run", house.resolveSibling("my-house-with-vessel.yaml").toString()), ending.next());
        assertTrue(
                ran.get(ran.size() - 1)
                        .equals(
                                "outlook HOUSE --set supply.reducing-valve.set=50 psi +- 4 psi --set vessel.volume=3 gal"
                                        + " --set vessel.precharge=54.4 psi +- 3 psi"),
                ran.toString());
        assertTrue(
                ran.stream()
                        .anyMatch(one -> one.startsWith(
                                "size HOUSE --set supply.reducing-valve.set=50 psi +- 4 psi --bought 3 gal")),
                ran.toString());
    }

    /**
     * Regression: nobody asked what the gauge showed after the change. The readings may come another day, in one line or one by one; those
     * that are off are named with what they mean, and the guide waits.
     */
    @Test
    void theReadingsAfterTheChangeAreHeldAgainstTheSheet() throws IOException {
        Files.writeString(house, "title: My house\n" + Sources.REDUCED);
        lead(0, List.of("", "no", "", "", "6 gal", "", "150 psi max", "came at 40, pumped it to 64 psi", "", "later"));
        assertTrue(flat().contains("Stopped at step 6 of 7."), said);
        assertTrue(ran.toString().contains("--charged 64 psi --rating 150 psi"), said);
        ran.clear();
        ReadingsAfter sheet = ReadingsAfter.of(
                        VesselChoice.of(ScenarioReader.read(house))
                                .bought(NominalSize.of(6, VolumeUnit.US_GALLON))
                                .build()
                                .answer(),
                        UnitSystem.SI)
                .orElseThrow();
        List<String> right = sheet.moments().stream()
                .map(moment -> IntStream.rangeClosed(400, 900)
                        .filter(kilopascal -> sheet.agrees(moment, 1e3 * kilopascal))
                        .mapToObj(kilopascal -> kilopascal + " kPa")
                        .findFirst()
                        .orElseThrow())
                .toList();
        List<String> high = new ArrayList<>(right);
        high.set(4, "about 8.9 bar");
        assertEquals(Ending.LEFT, lead(0, List.of(String.join(", ", high))).ending());
        assertEquals(
                List.of("diagnose HOUSE"),
                ran.stream().map(one -> one.substring(0, 14)).toList(),
                "neither run nor size again");
        assertTrue(flat().contains("1 of 6 readings is off the check sheet."), said);
        assertTrue(flat().contains("Highest while heating up after the draw: 8.9 bar is too high; "), said);
        assertTrue(flat().contains("The vessel takes too little water."), said);
        List<String> later = new ArrayList<>(List.of("4,2 apples"));
        later.addAll(right);
        later.addAll(List.of("", ""));
        assertEquals(Ending.FINISHED, lead(0, later).ending());
        assertTrue(flat().contains("All 6 readings agree with the check sheet"), said);
        assertTrue(flat().contains("This check can miss a charge that is too low"), said);
        assertTrue(
                flat().matches(
                                ".*watch the next heat-up from cold: expect about [0-9.]+ bar\\. If the pressure climbs above [0-9.]+ bar, the limit, .*"),
                said);
    }

    /** The file of the house with its vessel, which the guide leaves behind. */
    private String withVessel() throws IOException {
        return Files.readString(house.resolveSibling("my-house-with-vessel.yaml"));
    }

    /** What was read off roughly is uncertain, and stays so where a vessel is bought for it; who has none is told which to buy. */
    @Test
    void whoHasNoVesselYetIsToldWhichToBuy() throws IOException {
        Files.writeString(
                house,
                "title: My house\n"
                        + Sources.REDUCED
                                .replace("pressure: 85 psi", "pressure: 105 psi")
                                .replace("set: 60 psi", "set: 75 psi"));
        assertEquals(
                Ending.LEFT,
                lead(0, List.of("", "no", "", "", "60 psi or so", "dk")).ending());
        assertTrue(flat().contains("60 psi +- 9 psi (a guess)"), said);
        assertTrue(flat().contains("The size to buy is"), said);
        assertTrue(flat().contains("a setting that is 9 psi off: read it closely, and a smaller one may do."), said);
        assertEquals(Ending.LEFT, lead(0, List.of("quit")).ending());
        assertFalse(flat().contains("The sizing says to have"), "it is kept: " + said);
    }

    private String flat() {
        return said.replaceAll("\\s+", " ");
    }

    /** A list of readings without a unit is no dead end: the guide asks which it is, and takes that of the house from who does not know. */
    @ParameterizedTest
    @CsvSource({"psi, psi", "dk, bar"})
    void theUnitOfAListIsAskedFor(String typed, String taken) throws IOException {
        Path list = Files.writeString(folder.resolve("list.txt"), "6:45 am 61\n7:05 am 96\n");
        lead(0, List.of("", list.toString(), typed, "quit"));
        assertTrue(flat().contains("Which unit does the gauge show?"), said);
        assertEquals("diagnose HOUSE --readings " + list + " --pressure-unit " + taken, ran.get(1));
    }

    /** Regression: 193 for 139 was taken without a question, called a hazard, and nobody said where it could be corrected. */
    @Test
    void aReadingBeyondTheReliefValveIsAskedAboutAndCanBeCorrected() throws IOException {
        Files.writeString(house, """
                supply: { arrangement: check-valve, pressure: 60 psi }
                tank: { volume: 40 gal, material: steel }
                heater: { energy: gas, input: 11.2 kW, set-point: 58 degC }
                relief: [{ opens: 150 psi }]
                """);
        lead(0, List.of("", "quit"));
        lead(3, List.of("paper", "6:50 am 61 psi", "7:01 193", "back", "7:01 139", "7:03 193", "8:10 147", "done"));
        String asked = "193 psi (more than the relief valve should let it rise to: is it right? Type back";
        assertEquals(2, flat().split(Pattern.quote(asked), -1).length - 1, said);
        assertFalse(flat().contains("139 psi (more"), said);
        assertTrue(
                flat().replaceAll(" ?\\S*my-house-readings.txt", " FILE")
                        .contains("If a reading was written down wrong, correct it in FILE: start the guide again, type"
                                + " paper, and take lines back with back. Fix this first."),
                said);
    }

    /** Readings on paper are typed into the guide, which keeps them beside the house's file. */
    @Test
    void readingsOnPaperAreTypedIn() throws IOException {
        assertEquals(Ending.LEFT, lead(0, List.of("", "paper", "quit")).ending());
        lead(0, List.of("paper", "6:45 am 61 psi", "7:05 am 96 drips", "7:25 am 99", "done", "quit"));
        Path list = folder.resolve("my-house-readings.txt");
        assertEquals("diagnose HOUSE --readings " + list, ran.get(1));
        assertEquals("6:45 am 61 psi\n7:05 am 96 drips\n7:25 am 99\n", Files.readString(list));
        assertTrue(flat().contains("-> 7:05 am, 96 psi; 'drips': the relief pipe drips"), said);
        assertTrue(flat().contains("Comparing every cause with the readings takes a minute or two."), said);
    }

    /** Regression: whoever had readings said yes, or typed the first of them, and was told that there is no such file. */
    @ParameterizedTest
    @CsvSource({"'yes, on paper', true", "yes on paper, true", "i wrote them on paper, true", "6:45 am 61 psi, false"})
    void readingsAreTypedInHoweverThatIsSaid(String first, boolean said) throws IOException {
        List<String> lines = new ArrayList<>(List.of("", first));
        if (said) {
            lines.add("6:45 am 61 psi");
        }
        lines.addAll(List.of("7:05 am 96 drips", "7:25 am 99", "done", "quit"));
        lead(0, lines);
        Path list = folder.resolve("my-house-readings.txt");
        assertEquals("diagnose HOUSE --readings " + list, ran.get(1));
        assertEquals("6:45 am 61 psi\n7:05 am 96 drips\n7:25 am 99\n", Files.readString(list));
        assertTrue(flat().contains("They are kept in"), this.said);
    }

    /** Regression: whoever has no gauge was told that there is no such file. */
    @Test
    void withoutAGaugeTheDescriptionIsUsed() throws IOException {
        lead(0, List.of("", "no gauge", "quit"));
        assertEquals(List.of("run HOUSE"), ran, said);
        assertFalse(flat().contains("Comparing"), said);
    }

    /** Back leads to the question before it, also from the first one of a step; what is not known is not shown as a range. */
    @Test
    void backGoesBackOneQuestion() throws IOException {
        lead(
                0,
                List.of(
                        "", "back", "no", "", "", "81 L", "", "back", "81 L", "", "dk", "back", "18 L", "", "dk",
                        "dk"));
        assertTrue(flat().contains("This is the first question."), said);
        assertTrue(flat().contains("-> not known Come back when you know"), said);
        lead(0, List.of("back", "12 L", "", "dk", "4 bar", "", ""));
        assertEquals(
                "outlook HOUSE --set vessel.volume=12 L --set vessel.precharge=4 bar +- 0.2 bar",
                ran.get(ran.size() - 1));
    }

    /** What "I don't know" leads to is said as it is: the guide writes nothing into the file. */
    @Test
    void theGuideSaysWhatNotKnowingLeadsTo() throws IOException {
        lead(0, List.of("", "?", "no", "", "", "?", "quit"));
        assertTrue(flat().contains("type dk: the guide uses the description of the house."), said);
        assertTrue(flat().contains("type dk and come back when you do."), said);
        assertFalse(flat().contains("The file then says"), said);
    }

    /** Whoever leaves, at any question, carries on there; no command is run twice. */
    @Test
    void itCanBeLeftAnywhereAndCarriedOn() throws IOException {
        for (int cut = 0; cut < WHOLE.size(); cut++) {
            ran.clear();
            List<String> first = new ArrayList<>(WHOLE.subList(0, cut));
            first.add("quit");
            assertEquals(Ending.LEFT, lead(0, first).ending());
            int from = WHOLE.get(cut).isEmpty() ? cut + 1 : cut;
            assertEquals(
                    Ending.FINISHED, lead(0, WHOLE.subList(from, WHOLE.size())).ending());
            assertEquals(JOB, ran, "left at " + cut);
        }
    }

    /** What the readings were found to say decides what the guide says and does from there on, also when it is taken up again. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            AS_DESCRIBED      | check-valve | agree with the description of the  | size HOUSE --out PAPERS | -
            RELIEF_SEAT_WEEPS | check-valve | water cannot flow back to the mains | size HOUSE --out PAPERS | The relief valve is worn
            RELIEF_SEAT_WEEPS | direct      | Once that is fixed, the job is    | -          | -
            SUPPLY_PRESSURE   | check-valve | a reducing valve comes before any  | hold       | -
            VESSEL_ISOLATED   | check-valve | valve opened first                 | hold       | -
            """)
    void theCauseLeadsOn(Cause cause, String feed, String told, String then, String left) throws IOException {
        Files.writeString(
                house, Catalogue.text("orchard-lodge").replace("arrangement: check-valve", "arrangement: " + feed));
        next.put("diagnose", new NextStep("run", List.of(), 0, Optional.of(cause)));
        Guide.Ending first = lead(0, List.of("", "log.csv, tap.yaml", "quit"));
        String all = said.replaceAll("\\s+", " ");
        assertTrue(all.contains(told), all);
        assertEquals(
                List.of("run HOUSE", "diagnose HOUSE --readings log.csv --readings tap.yaml"),
                ran,
                "both files are read");
        assertEquals(then.equals("-") ? Ending.FINISHED : Ending.LEFT, first.ending());
        ran.clear();
        if (then.equals("hold")) {
            lead(0, List.of());
            assertTrue(said.contains("Step 2 of 7"), said);
        } else if (!then.equals("-")) {
            List<String> rest = new ArrayList<>(WHOLE.subList(3, WHOLE.size()));
            rest.add(rest.size() - 1, "skip");
            lead(0, left.equals("-") ? List.of("quit") : rest);
            assertEquals(then, ran.get(0));
            if (!left.equals("-")) {
                assertTrue(said.replaceAll("\\s+", " ").contains(left), said);
                assertTrue(
                        ran.stream()
                                .anyMatch(one -> one.startsWith("size HOUSE --bought 18 L --charged ")
                                        && one.endsWith(" --out PAPERS")),
                        "all steps write their papers into one folder, so that there is one tag and one check sheet");
                assertFalse(ran.toString().contains("heatswell-out"), ran.toString());
            }
        }
    }

    /** What every cause that is left calls for is said, also where the readings do not settle which it is. */
    @Test
    void anOpenCauseThatCallsForAVesselIsNoDeadEnd() throws IOException {
        next.put("diagnose", NextStep.to("size"));
        lead(0, List.of("", "log.csv", "quit"));
        assertTrue(flat().contains("But whichever it is, the heated water has nowhere to go."), said);
        assertFalse(flat().contains("helps only if"), said);
        assertFalse(flat().contains("leave the cause open"), "the diagnosis may have called one likely: " + said);
        lead(0, WHOLE.subList(3, WHOLE.size()));
        assertTrue(flat().contains("The readings did not settle the cause."), said);
    }

    /** Regression: after readings up to the relief valve, size said that it stays shut in the house as assumed, and asked for readings. */
    @Test
    void theSizeGoesOnFromAVesselThatReadingsSpeakAgainst() throws IOException {
        Change full = new Change("vessel.condition", "waterlogged");
        next.put("diagnose", new NextStep("size", List.of(full)));
        lead(0, List.of("", "log.csv", "quit"));
        assertTrue(flat().contains("does not work as it should. Press the pin of its air valve first"), said);
        ran.clear();
        lead(0, List.of("quit"));
        assertEquals(List.of("size HOUSE --set vessel.condition=waterlogged --out PAPERS"), ran);
        next.put("diagnose", new NextStep("size", List.of(full), 0, Optional.of(Cause.VESSEL_WATERLOGGED)));
        ran.clear();
        lead(0, List.of("back", "log.csv", "", "quit"));
        assertEquals("size HOUSE --set vessel.condition=waterlogged --out PAPERS", ran.get(ran.size() - 1));
    }

    /** Regression: readings at rest told the setting to a few psi, and the size still allowed for the guess of the interview. */
    @Test
    void theSizeGoesOnFromWhatTheGaugeShowedAtRest() throws IOException {
        Change set = new Change("supply.reducing-valve.set", "4.1 bar +- 0.3 bar");
        next.put("diagnose", new NextStep("run", List.of(set)));
        lead(0, List.of("", "log.csv", "quit"));
        assertTrue(flat().contains("set to 4.1 bar, give or take 0.3 bar: that goes with your readings"), said);
        ran.clear();
        lead(0, List.of("quit"));
        assertEquals(List.of("size HOUSE --set " + set + " --out PAPERS"), ran);
        ran.clear();
        lead(0, List.of("back", "log.csv", "", "quit"));
        assertTrue(
                ran.stream().filter(line -> line.startsWith("diagnose")).noneMatch(line -> line.contains(set.field())),
                ran::toString);
        assertTrue(
                ran.toString().contains("diagnose HOUSE"), "mended readings are compared with the description: " + ran);
        ran.clear();
        lead(0, List.of("back", "no", "", "quit"));
        assertEquals("size HOUSE --out PAPERS", ran.get(ran.size() - 1), "without readings, nothing is known of it");
    }

    /** Regression: a charge that was typed one question early was swallowed, and the guide went on. */
    @Test
    void whatIsTypedTooEarlyIsNotSwallowed() throws IOException {
        lead(0, List.of("60", "quit"));
        assertTrue(flat().contains("Ignored: nothing was asked."), said);
        assertFalse(said.contains("Step 2 of 7."), said);
    }

    /** The plate of the vessel is read where it is bought. */
    @Test
    void thePlateOfTheVesselIsAskedFor() throws IOException {
        Files.writeString(house, Catalogue.text("orchard-lodge"));
        lead(0, List.of("", "no", "", "", "24 L", "", "10 bar", "4.2 bar", "", "skip", ""));
        assertFalse(flat().contains("Do not fit"), said);
        assertTrue(withVessel().contains("rating: 10 bar"), withVessel());
        assertTrue(ran.get(ran.size() - 1).contains(" --set vessel.rating=10 bar"), ran.toString());
    }

    /** Regression: a vessel for a heating system was taken, charged and had its papers printed. A better one may be typed after it. */
    @ParameterizedTest
    @ValueSource(strings = {"3 bar", "6 bar"})
    void aVesselMadeForLessThanTheReliefValveIsNotFitted(String rating) throws IOException {
        Files.writeString(house, Catalogue.text("orchard-lodge"));
        assertEquals(
                Ending.LEFT,
                lead(0, List.of("", "no", "", "", "24 L", "", rating)).ending());
        assertTrue(flat().contains("Do not fit a vessel rated for only " + rating + ": "), said);
        assertTrue(flat().contains("Get one rated for at least 7 bar."), said);
        assertFalse(flat().contains("charge it to"), said);
        lead(0, List.of("10 bar", "quit"));
        assertTrue(flat().contains("charge it to 4.2 bar"), said);
    }

    /** Whoever begins anew is asked everything again, also after a pause. */
    @Test
    void itCanBeBegunAnew() throws IOException {
        lead(0, List.of("", "log.csv", "", "", "18 L", "", "dk", "quit"));
        ran.clear();
        assertEquals(
                Ending.LEFT,
                lead(0, List.of("4 bar", "new", "", "no", "", "", "dk")).ending());
        assertEquals(List.of("run HOUSE", "size HOUSE --out PAPERS"), ran, said);
        assertTrue(said.contains("Come back when you know"), said);
        assertTrue(said.contains("Stopped at step 4 of 7. Everything is saved"), said);
    }

    /** A house that needs no vessel, or has the right one, is not led to a shop. */
    @Test
    void whereNothingIsToBeBoughtTheGuideSaysSo() throws IOException {
        next.put("size", NextStep.to("spread"));
        assertEquals(Ending.FINISHED, lead(0, List.of("", "no", "")).ending());
        assertTrue(said.contains("No vessel is needed. That is the whole job."), said);
        ran.clear();
        next.put("size", NextStep.to("outlook"));
        assertEquals(Ending.FINISHED, lead(0, List.of("", "no", "", "")).ending());
        assertEquals(List.of("run HOUSE", "size HOUSE --out PAPERS", "outlook HOUSE"), ran);
    }

    @Test
    void whatMustBePutRightHoldsItsStep() throws IOException {
        assertEquals(new Guide.Ending(Ending.LEFT, 3, List.of()), lead(3, WHOLE));
        assertEquals(new Guide.Ending(Ending.LEFT, 3, List.of()), lead(3, WHOLE));
        assertEquals(List.of("run HOUSE", "run HOUSE"), ran);
        assertTrue(said.contains("Fix this first"), said);
    }

    @Test
    void withoutReadingsTheHouseIsTakenAsDescribed() throws IOException {
        assertEquals(Ending.LEFT, lead(0, List.of("", "no", "", "", "dk")).ending());
        assertEquals(List.of("run HOUSE", "size HOUSE --out PAPERS"), ran);
        assertTrue(said.contains("Come back when you know"), said);
        assertEquals(Ending.ENDED, lead(0, List.of("18 gal")).ending());
        assertTrue(said.startsWith("\nStep 4 of 7. "), said);
    }

    @Test
    void aHouseThatIsNotDescribedIsDescribedFirst() throws IOException {
        Files.delete(house);
        List<String> typed = new ArrayList<>(Answering.si());
        typed.add("quit");
        assertEquals(Ending.LEFT, lead(0, typed).ending());
        assertEquals(List.of("run HOUSE"), ran);
        assertTrue(Files.readString(house).contains("Orchard lodge"));
    }
}
