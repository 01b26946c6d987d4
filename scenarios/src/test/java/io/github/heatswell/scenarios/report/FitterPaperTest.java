package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.place.Place;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.report.FitterPaper.Stage;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Site;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Regression: the steps whose absence hurts people or burns out elements stand in the list, and in the order of the work. */
class FitterPaperTest {

    private static final QuantityFormat SHOWN = QuantityFormat.ascii(UnitSystem.SI);

    private static List<String> steps(String stage) {
        return FitterPaper.general().stages(SHOWN).stream()
                .filter(found -> found.name().equals(stage))
                .map(Stage::steps)
                .findFirst()
                .orElseThrow();
    }

    /** The number of the one step that says all of this. */
    private static int place(List<String> steps, String... said) {
        List<Integer> found = IntStream.range(0, steps.size())
                .filter(i -> List.of(said).stream()
                        .allMatch(part -> steps.get(i).toLowerCase(Locale.ROOT).contains(part)))
                .boxed()
                .toList();
        assertEquals(1, found.size(), List.of(said) + " in " + found.size() + " of " + steps);
        return found.get(0);
    }

    /** Regression: by day a gauge showed the day's pressure, and the sheet, which knew that of the night alone, had the work stopped. */
    @Test
    void aSupplyThatIsHigherAtNightIsNoOtherSupplyByDay() {
        HotWaterSystem house = Catalogue.read("orchard-lodge-vessel")
                .with(List.of(
                        Change.of("supply.pressure=[{ at: 01:00, pressure: 5 bar }, { at: 05:00, pressure: 5 bar },"
                                + " { at: 07:00, pressure: 4.2 bar }, { at: 22:00, pressure: 4.2 bar }]"),
                        Change.of("vessel.precharge=3 bar")))
                .system();
        String sheet = FitterPaper.of(house, SHOWN).stages(SHOWN).toString();
        assertTrue(
                sheet.contains("The supply is described as 5 bar at night; 4.2 bar by day, and the charge is for"),
                sheet);
        assertFalse(sheet.contains("p to 0.2 bar more or less"), sheet);
    }

    /** Regression: a charge 0.2 bar below the supply was held against the supply itself: the work stopped, or the charge was lost. */
    @Test
    void theGaugeIsHeldAgainstTheSupplyAndNotAgainstTheCharge() {
        HotWaterSystem lodge = Catalogue.read("orchard-lodge-vessel").system();
        HotWaterSystem din = lodge.toBuilder()
                .vessel(lodge.vessel().orElseThrow().toBuilder()
                        .precharge(Pressure.gauge(4, PressureUnit.BAR))
                        .build())
                .build();
        RunResult run = Simulation.of(din, Duration.ofMinutes(1)).run();
        String before = FitterPaper.of(run, sized(run), FitterPaper.State.BOUGHT, SHOWN)
                .stages(SHOWN)
                .get(0)
                .steps()
                .toString();
        assertTrue(
                before.contains("It should show 4.2 bar. Up to 0.2 bar more or less, change the precharge below by"),
                before);
        assertTrue(before.indexOf("It should show") < before.indexOf("by hand to 4 bar"), before);
    }

    /** In the US a tyre is a tire. */
    @Test
    void theListIsSpelledAsWhereItsUnitsAreUsed() {
        for (UnitSystem units : UnitSystem.values()) {
            String list = FitterPaper.general()
                    .section(QuantityFormat.printed(units))
                    .blocks()
                    .toString();
            assertEquals(units != UnitSystem.US, list.contains("tyre gauge"), list);
            assertEquals(units == UnitSystem.US, list.contains("tire gauge"), list);
        }
    }

    /** An element that is switched on in air burns out. */
    @Test
    void theTankIsFilledAndBledBeforeAnyPower() {
        List<String> steps = steps("Filling and the first heat-up");
        int opened = place(steps, "open the vessel's isolating valve", "cold feed");
        int bled = place(steps, "before you turn on power or gas", "until no air comes");
        int heated = place(steps, "watch the first heat-up");
        assertTrue(opened < bled && bled < heated, steps.toString());
        List<String> yearly = steps("Every year");
        String reopened = yearly.get(place(yearly, "open every valve that was shut", "the vessel's included"));
        assertTrue(reopened.indexOf("until no air comes") < reopened.indexOf("switch the heater on"), reopened);
        assertTrue(reopened.indexOf("until no air comes") > 0, reopened);
    }

    /** Nobody cuts a pipe that is under pressure, and a reducing valve is set once water can run. */
    @Test
    void aReducingValveIsFittedOnceThePipeIsEmpty() {
        Pressure set = Pressure.gauge(3, PressureUnit.BAR);
        for (boolean fitted : new boolean[] {true, false}) {
            FitterPaper paper = FitterPaper.general()
                    .at(Optional.of(new LoweredSupply(new SizeAdvice.Setting(set, set, fitted), 101_325)));
            List<String> before = paper.stages(SHOWN).get(0).steps();
            String all = before.toString();
            assertEquals(fitted, all.contains("Have the reducing valve fitted on the cold feed"), all);
            assertEquals(!fitted, all.contains("the reducing valve set to 3 bar, read with"), all);
            int emptied = place(before, "drain the pipe that is to be cut");
            if (fitted) {
                assertTrue(place(before, "have the reducing valve fitted") > emptied, all);
                List<String> filling = paper.stages(SHOWN).get(2).steps();
                int bled = place(filling, "until no air comes");
                assertEquals(bled + 1, place(filling, "set to 3 bar, read with a little water running"));
            }
        }
    }

    /** A vessel behind a valve that stayed shut is no vessel. */
    @Test
    void theIsolatingValveIsOpenedAgainAfterCharging() {
        List<String> yearly = steps("Every year");
        assertTrue(
                place(yearly, "pump it up") < place(yearly, "open every valve that was shut", "the vessel's included"));
        place(steps("The place"), "no valve between the vessel and the heater");
    }

    /** Whoever pumps does so by hand, and stays below what the vessel is made for. */
    @Test
    void chargingIsByHandAndBelowThePlate() {
        for (List<String> steps : List.of(steps("Before the work"), steps("Every year"))) {
            place(steps, "hand", "never above the pressure on the vessel's plate");
        }
        assertFalse(steps("Before the work").toString().contains("more or less"), "than what, nobody can say here");
        for (Stage stage : FitterPaper.general().stages(SHOWN)) {
            stage.steps().forEach(step -> assertTrue(!step.contains("compressor"), step));
        }
    }

    /** Regression: where nothing is bought, nothing is on a list to buy, and the vessel that is there has its form and its tag. */
    @Test
    void theVesselThatIsThereHasItsSettingsAndATag() {
        for (UnitSystem units : UnitSystem.values()) {
            QuantityFormat shown = QuantityFormat.printed(units);
            HotWaterSystem house = Catalogue.read("orchard-lodge-lost-charge").system();
            List<Block> blocks = FitterPaper.of(house, shown).section(shown).blocks();
            String charge = shown.pressure(420_000);
            Block.Blanks form = (Block.Blanks) blocks.get(blocks.size() - 2);
            assertEquals(
                    "Precharge, with the water side drained",
                    form.lines().get(0).name());
            assertEquals(charge, form.lines().get(0).value());
            Block.Blanks tag = (Block.Blanks) blocks.get(blocks.size() - 1);
            assertTrue(tag.cut());
            assertEquals(
                    List.of(
                            shown.volume(house.vessel().orElseThrow().volume()),
                            charge,
                            shown.temperature(house.heater().setPoint()),
                            charge,
                            "",
                            ""),
                    tag.lines().stream().map(Block.Blanks.Line::value).toList());
            assertTrue(blocks.stream()
                    .noneMatch(block -> block instanceof Block.Subheading head
                            && head.text().equals("What to buy")));
        }
        HotWaterSystem none = Catalogue.read("orchard-lodge").system();
        assertTrue(FitterPaper.of(none, SHOWN)
                .section(SHOWN)
                .blocks()
                .get(0)
                .toString()
                .contains("heatswell size"));
    }

    /** Regression: a vessel that is in the house was read and pumped up before the heater was off and its water side drained. */
    @Test
    void theVesselThatIsThereIsReadOnlyOnceItsWaterSideIsDrained() {
        HotWaterSystem house = Catalogue.read("orchard-lodge-lost-charge").system();
        List<String> before = FitterPaper.of(house, SHOWN).stages(SHOWN).get(0).steps();
        List<Integer> order = List.of(
                place(
                        before,
                        "heater off, open and close a hot tap",
                        "it should show 4.2 bar",
                        "up to 0.2 bar more or less"),
                place(before, "turn the heater off", "let it cool", "shut the cold feed"),
                place(before, "open a drain", "leave it open"),
                place(before, "if water comes", "diaphragm has failed", "do not pump"),
                place(before, "tyre gauge", "by hand to 4.2 bar"),
                place(before, "if it has fallen", "close the drain"));
        assertEquals(order.stream().sorted().toList(), order);
        String all = before.toString();
        assertTrue(!all.contains("to be cut") && !all.contains("is connected"), all);
    }

    /** Regression: of several vessels only the first had a line and a tag. */
    @Test
    void eachOfSeveralVesselsHasItsLineAndItsTag() {
        HotWaterSystem house = Catalogue.read("orchard-lodge-two-vessels").system();
        List<Block.Blanks> forms = FitterPaper.of(house, SHOWN).section(SHOWN).blocks().stream()
                .filter(Block.Blanks.class::isInstance)
                .map(Block.Blanks.class::cast)
                .toList();
        assertEquals(3, forms.size());
        for (int i = 0; i < 2; i++) {
            String name = "\u201c" + house.vesselNames().get(i) + "\u201d";
            String charge =
                    SHOWN.pressure(PrechargeTarget.of(house, i).orElseThrow().pumpToGauge());
            assertEquals(
                    new Block.Blanks.Line("Precharge " + name + ", with the water side drained", charge, true),
                    forms.get(0).lines().get(i));
            assertTrue(forms.get(i + 1).caption().contains(name), forms.toString());
            assertEquals(charge, forms.get(i + 1).lines().get(1).value());
        }
    }

    /** Contract: the list names the charge by the one rule there is, and none that a plate forbids. */
    @Test
    void theChargeIsThatOfTheFindings() {
        QuantityFormat shown = QuantityFormat.ascii(UnitSystem.SI);
        for (String name : List.of("orchard-lodge-lost-charge", "mill-cottage-small-vessel", "beacon-tower")) {
            HotWaterSystem house = Catalogue.read(name).system();
            String charge =
                    shown.pressure(PrechargeTarget.of(house).orElseThrow().pumpToGauge());
            for (String stage : List.of("Before the work", "Every year")) {
                List<String> steps = FitterPaper.of(house, shown).stages(shown).stream()
                        .filter(found -> found.name().equals(stage))
                        .map(Stage::steps)
                        .findFirst()
                        .orElseThrow();
                place(steps, "hand", "to " + charge + ", never above");
            }
        }
        HotWaterSystem weak = Catalogue.read("orchard-lodge-vessel").system();
        HotWaterSystem plate = weak.toBuilder()
                .vessel(weak.vessel().orElseThrow().toBuilder()
                        .rating(Pressure.gauge(3, PressureUnit.BAR))
                        .build())
                .build();
        FitterPaper.of(plate, shown)
                .stages(shown)
                .forEach(stage -> stage.steps().forEach(step -> assertTrue(!step.contains("4.2 bar"), step)));
    }

    /** Regression: the first heat-up is from cold, and goes higher than the check sheet, which heats a part of the water. */
    @Test
    void theFirstHeatUpIsHeldAgainstTheRunFromCold() {
        QuantityFormat shown = QuantityFormat.ascii(UnitSystem.US);
        RunResult run = Simulation.of(Catalogue.read("orchard-lodge-vessel").system(), Duration.ofHours(4))
                .run();
        List<String> steps = FitterPaper.of(run, sized(run), FitterPaper.State.TO_BUY, shown).stages(shown).stream()
                .flatMap(stage -> stage.steps().stream())
                .toList();
        place(steps, "from cold", "expect about " + shown.pressure(run.peak().value()));
        place(steps, "climbs above " + shown.pressure(sized(run).target().gauge()) + ", the limit,");
    }

    private static SizingResult sized(RunResult run) {
        return VesselSizing.builder(
                        run.system(),
                        SizingTarget.builder(run.system())
                                .vesselRating(Pressure.gauge(10, PressureUnit.BAR))
                                .build())
                .precharge(VesselSizing.Precharge.STATIC)
                .build()
                .size();
    }

    /** Regression: what had been bought stood on the list of what to buy. */
    @Test
    void whatWasBoughtIsNotBoughtAgain() {
        RunResult run = Simulation.of(Catalogue.read("orchard-lodge-vessel").system(), Duration.ofHours(4))
                .run();
        Block.Items shopping =
                FitterPaper.of(run, sized(run), FitterPaper.State.BOUGHT, SHOWN).section(SHOWN).blocks().stream()
                        .filter(Block.Items.class::isInstance)
                        .map(Block.Items.class::cast)
                        .findFirst()
                        .orElseThrow();
        assertTrue(
                shopping.texts().get(0).startsWith("Bought already"),
                shopping.texts().get(0));
    }

    /** Contract: the fitter buys, sets, writes down and tags the vessel of the run, and reads the charge as one number throughout. */
    @Test
    void whatIsBoughtWrittenDownAndTaggedIsTheVesselOfTheRun() {
        RunResult run = Simulation.of(Catalogue.read("orchard-lodge-vessel").system(), Duration.ofHours(4))
                .run();
        SizingResult sizing = sized(run);
        for (UnitSystem units : UnitSystem.values()) {
            QuantityFormat shown = QuantityFormat.printed(units);
            ExpansionVessel vessel = run.system().vessel().orElseThrow();
            String volume = shown.volume(vessel.volume());
            String charge =
                    shown.pressure(vessel.precharge().gauge(run.system().site().atmosphere()));
            List<Block> blocks = FitterPaper.of(run, sizing, FitterPaper.State.TO_BUY, shown)
                    .section(shown)
                    .blocks();
            Block.Items shopping = (Block.Items) blocks.stream()
                    .filter(Block.Items.class::isInstance)
                    .findFirst()
                    .orElseThrow();
            place(
                    shopping.texts(),
                    "one expansion vessel of " + volume.toLowerCase(Locale.ROOT),
                    "precharge of " + charge.toLowerCase(Locale.ROOT));
            List<Block.Blanks> forms = blocks.stream()
                    .filter(Block.Blanks.class::isInstance)
                    .map(Block.Blanks.class::cast)
                    .toList();
            assertEquals(
                    List.of(false, true), forms.stream().map(Block.Blanks::cut).toList());
            assertEquals(
                    List.of(
                            new Block.Blanks.Line("Volume", volume, false),
                            new Block.Blanks.Line("Precharge to be", charge, false),
                            new Block.Blanks.Line(
                                    "Thermostat",
                                    shown.temperature(run.system().heater().setPoint()),
                                    false),
                            new Block.Blanks.Line(
                                    run.system().supply().reducingValve().isPresent()
                                            ? "Supply at rest, with lock-up"
                                            : "Supply at rest",
                                    shown.pressure(sizing.supplyStatic()
                                            .gauge(run.system().site().atmosphere())),
                                    false),
                            new Block.Blanks.Line("Precharge as set; by whom", "", true),
                            new Block.Blanks.Line("Charged on; next check", "", true)),
                    forms.get(1).lines());
            assertEquals(charge, forms.get(0).lines().get(0).value());
            assertTrue(forms.get(0).lines().stream().allMatch(Block.Blanks.Line::room));
        }
        assertTrue(FitterPaper.general().section(QuantityFormat.printed(UnitSystem.SI)).blocks().stream()
                .noneMatch(Block.Blanks.class::isInstance));
    }

    /**
     * Regression: of two valves none was named, a valve of the T&P's pressure passed for the expansion valve's successor, and a UK sheet
     * spoke of pans and earthquakes, but not of the tundish.
     */
    @Test
    void aSheetForTwoValvesSaysWhichIsMeant() {
        HotWaterSystem lodge = Catalogue.read("orchard-lodge-lost-charge").system();
        HotWaterSystem.Builder two = lodge.toBuilder().withoutReliefValves();
        for (double bar : new double[] {6, 9}) {
            two.addReliefValve(ReliefValve.builder()
                    .name(bar < 7 ? "expansion valve" : "T&P valve")
                    .setPressure(Pressure.gauge(bar, PressureUnit.BAR))
                    .fullLiftPressure(Pressure.gauge(1.1 * bar, PressureUnit.BAR))
                    .reseatPressure(Pressure.gauge(0.8 * bar, PressureUnit.BAR))
                    .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                    .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                    .build());
        }
        HotWaterSystem uk = two.site(Site.builder()
                        .altitude(0, LengthUnit.METRE)
                        .room(15, TemperatureUnit.CELSIUS)
                        .place(Place.UK)
                        .build())
                .build();
        List<Block> blocks = FitterPaper.of(uk, SHOWN).section(SHOWN).blocks();
        String said = blocks.toString();
        assertFalse(said.contains("he relief valve"), said);
        assertTrue(said.contains("below 6 bar, the set pressure of \u201cexpansion valve\u201d"), said);
        List<String> all = FitterPaper.of(uk, SHOWN).stages(SHOWN).stream()
                .flatMap(stage -> stage.steps().stream())
                .toList();
        place(all, "\u201cexpansion valve\u201d (6 bar) and \u201ct&p valve\u201d (9 bar) stay as they are");
        place(all, "like for like", "set to the same pressure, never higher", "opens on temperature", "heater's input");
        assertFalse(said.contains("no higher than the pressure on the tank's plate"), said);
        place(all, "discharge pipe: to the tundish", "300 mm", "fall 1:200");
        place(all, "upright, fed from below");
        place(all, "building control notice");
        place(all, "commissioning record");
        assertFalse(said.contains("earthquake") || said.contains("pan with"), said);
        boolean gas = uk.heater().energy() == Heater.Energy.GAS;
        assertEquals(gas, said.contains("Relight"), said);
        assertEquals(!gas, said.contains("burns out"), said);
    }

    /** Cold and off before the work; no valve plugged, capped or exchanged for a smaller one. */
    @Test
    void theHeaterIsOffAndTheReliefStaysAsItIs() {
        place(steps("Before the work"), "turn the heater off", "let it cool", "relieve the pressure");
        place(
                steps("Before the work"),
                "turn the heater off",
                "boiler, and its motorised valve",
                "charge out of an old vessel");
        place(steps("The place"), "relief valve stays as it is", "never plug or cap it");
        place(steps("Every year"), "no higher than the pressure on the tank's plate", "at least the heater's input");
    }
}
