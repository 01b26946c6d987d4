package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.FaultlessHouse.event;
import static io.github.heatswell.assessment.FaultlessHouse.grouped;
import static io.github.heatswell.assessment.FaultlessHouse.guard;
import static io.github.heatswell.assessment.FaultlessHouse.heater;
import static io.github.heatswell.assessment.FaultlessHouse.house;
import static io.github.heatswell.assessment.FaultlessHouse.opened;
import static io.github.heatswell.assessment.FaultlessHouse.reduced;
import static io.github.heatswell.assessment.FaultlessHouse.reducer;
import static io.github.heatswell.assessment.FaultlessHouse.run;
import static io.github.heatswell.assessment.FaultlessHouse.supply;
import static io.github.heatswell.assessment.FaultlessHouse.unguarded;
import static io.github.heatswell.assessment.FaultlessHouse.unmixed;
import static io.github.heatswell.assessment.FaultlessHouse.valve;
import static io.github.heatswell.assessment.FaultlessHouse.vessel;
import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.assessment.Doubts.Doubt;
import io.github.heatswell.place.Place;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.ExpansionVessel.Mounting;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** One case, at least, for every finding there is. */
final class Cases {

    private static final Map<String, Supplier<AssessmentContext>> ALL = new LinkedHashMap<>();

    static {
        devices();
        mixing();
        expansion();
        vessels();
        supplies();
        runs();
    }

    private Cases() {}

    /** By the id of the finding, a house or run that has it. */
    static Map<String, Supplier<List<Finding>>> all() {
        Map<String, Supplier<List<Finding>>> all = new LinkedHashMap<>();
        ALL.forEach((id, subject) -> all.put(id, () -> Findings.of(subject.get())));
        return all;
    }

    /** All these houses and runs. */
    static Stream<AssessmentContext> subjects() {
        return ALL.values().stream().map(Supplier::get);
    }

    static AssessmentContext of(HotWaterSystem house) {
        return new AssessmentContext(house, Optional.empty());
    }

    static AssessmentContext of(RunSummary run) {
        return new AssessmentContext(run.system(), Optional.of(run));
    }

    private static void devices() {
        changed(
                "thermostat-stuck",
                h -> h.heater(heater(60).thermostatStuck(true).build()));
        relief("relief-valve-blocked", valve(7, 6).fault(ReliefFault.blocked()));
        relief("relief-valve-stuck-open", valve(7, 6).fault(ReliefFault.stuckOpen(5, RatioUnit.PERCENT)));
        relief(
                "relief-valve-seat-leaks",
                valve(7, 6).fault(ReliefFault.leakingSeat(Pressure.gauge(3, BAR), 0.01, FlowUnit.LITRE_PER_MINUTE)));
        ALL.put("relief-valve-missing", () -> of(unguarded().build()));
        relief("temperature-relief-missing", valve(7, 6));
        relief("relief-set-above-tank", guard(11, 9));
        ALL.put(
                "tank-rating-unread",
                () -> of(unguarded()
                        .tank(FaultlessHouse.unread(10))
                        .addReliefValve(guard(10.34, 8.3).build())
                        .build()));
        ALL.put(
                "tp-relief-set-high",
                () -> of(unguarded()
                        .addReliefValve(guard(10.2, 9).build())
                        .addReliefValve(valve(7, 6).build())
                        .build()));
        ALL.put(
                "cut-out-missing",
                () -> of(PlaceFindingsTest.at(
                                house().heater(unmixed(60).withoutCutOut().build()), Place.UK)
                        .build()));
        relief("tp-relief-temperature-high", guard(7, 6).opensAt(100, TemperatureUnit.CELSIUS));
        relief(
                "set-point-above-relief",
                guard(7, 6).opensAt(60, TemperatureUnit.CELSIUS).reseatsAt(50, TemperatureUnit.CELSIUS));
        changed(
                "cut-out-above-relief",
                h -> h.heater(heater(60).cutOut(99, TemperatureUnit.CELSIUS).build()));
        relief("tp-relief-rating-low", guard(7, 6).ratedInput(2.9, PowerUnit.KILOWATT));
        changed("stored-too-cool", h -> h.heater(heater(55).build()));
        changed("scald-without-mixing-valve", h -> h.heater(unmixed(60).build()));
        changed(
                "mixing-valve-set-high",
                h -> h.heater(heater(60).mixedTo(52, TemperatureUnit.CELSIUS).build()));
    }

    private static void mixing() {
        Supply warm = supply(4).water(38, TemperatureUnit.CELSIUS).build();
        Draw cool = Draw.ofVolume(36_000, 20, VolumeUnit.LITRE, 10, FlowUnit.LITRE_PER_MINUTE)
                .mixedTo(35, TemperatureUnit.CELSIUS);
        changed("mixed-draw-below-feed", h -> h.supply(warm).draws(DrawProfile.of("one tap", List.of(cool))));
        changed(
                "mixing-valve-below-feed",
                h -> h.supply(warm)
                        .heater(heater(60).mixedTo(35, TemperatureUnit.CELSIUS).build()));
    }

    private static void expansion() {
        changed("expansion-control-missing", HotWaterSystem.Builder::withoutVessel);
        changed(
                "expansion-returns-to-mains",
                h -> h.supply(supply(4).arrangement(Supply.Arrangement.DIRECT).build()));
        changed(
                "bypass-opens-too-late",
                h -> h.withoutVessel()
                        .supply(reduced(6.9, reducer(4).bypassOpens(0.2, BAR)).build()));
        changed(
                "check-valve-leaks",
                h -> h.supply(
                        supply(4).seatLeakage(0.1, FlowUnit.LITRE_PER_MINUTE).build()));
        ALL.put("expansion-valve-provided", () -> of(grouped(6, 5).build()));
        ALL.put(
                "expansion-valve-missing",
                () -> of(PlaceFindingsTest.at(house(), Place.UK).build()));
        ALL.put("expansion-valve-opens-late", () -> of(grouped(7, 6).build()));
        ALL.put(
                "expansion-valve-works",
                () -> of(run(grouped(6, 5).build(), 6, 4, 60, 1, event(Event.Kind.RELIEF_OPENED, "safety group", 6))));
        changed("trapped-air", h -> h.trappedAir(1, VolumeUnit.LITRE));
        changed(
                "dripping-hides-expansion",
                h -> h.addLeak(Leak.of(0.02, FlowUnit.LITRE_PER_MINUTE, Pressure.gauge(4, BAR))));
        changed("hot-branch-cools", h -> h.addPipe(FaultlessHouse.hotBranch(8)));
        changed("circulation-returns-cool", h -> FaultlessHouse.addLoop(h, 0.5, 0));
        changed("circulation-rests-long", h -> FaultlessHouse.addLoop(h, 10, 9));
        changed("frost-likely", h -> h.site(FaultlessHouse.site(-15)));
        changed("hot-branch-long", h -> h.addPipe(FaultlessHouse.hotBranch(10)));
    }

    private static void vessels() {
        vesselCase("vessel-isolated", vessel(18, 4).condition(ExpansionVessel.Condition.ISOLATED));
        vesselCase("vessel-waterlogged", vessel(18, 4).condition(ExpansionVessel.Condition.WATERLOGGED));
        vesselCase("vessel-upstream-of-check", vessel(18, 4).condition(ExpansionVessel.Condition.UPSTREAM_OF_CHECK));
        vesselCase("vessel-too-small", vessel(2, 4));
        vesselCase("precharge-above-static", vessel(18, 4.5));
        vesselCase("precharge-below-static", vessel(18, 3.5));
        ALL.put("precharge-unknown", () -> chargeNotRead(3));
        changed(
                "vessel-above-supply",
                h -> h.supply(supply(2).build())
                        .vessel(vessel(18, 2).height(25, LengthUnit.METRE).build()));
        ExpansionVessel.Builder heavy =
                vessel(18, 4).emptyMass(6, MassUnit.KILOGRAM).length(0.5, LengthUnit.METRE);
        vesselCase("vessel-unsupported", heavy.build().toBuilder().mounting(Mounting.HORIZONTAL));
        vesselCase("vessel-weight", heavy.build().toBuilder().mounting(Mounting.UPRIGHT));
        vesselCase("vessel-rated-below-relief", vessel(18, 4).rating(Pressure.gauge(6, BAR)));
        vesselCase("vessel-charged-above-plate", vessel(18, 7.5).rating(Pressure.gauge(7, BAR)));
        vesselCase("vessel-rating-exceeded", vessel(18, 3.9).rating(Pressure.gauge(3.95, BAR)));
    }

    private static void supplies() {
        changed("static-pressure-high", h -> h.supply(supply(5.6).build()));
        changed(
                "static-pressure-low",
                h -> h.withoutVessel().supply(supply(0.03).build()));
        changed(
                "reducing-valve-creeps",
                h -> h.supply(reduced(6, reducer(4))
                        .seatLeakage(0.1, FlowUnit.LITRE_PER_MINUTE)
                        .build()));
        changed("supply-opens-relief-valve", h -> h.supply(supply(7).build()));
        changed("relief-reseats-below-supply", h -> h.supply(supply(6).build()));
        changed("supply-near-relief-set", h -> h.supply(supply(5.7).build()));
    }

    private static void runs() {
        HotWaterSystem sound = house().build();
        HotWaterSystem bare = house().withoutVessel().build();
        ALL.put(
                "relief-valve-controls-expansion",
                () -> of(run(bare, 7, 60, event(Event.Kind.RELIEF_OPENED, "T&P valve", 7))));
        ALL.put(
                "relief-valve-opened-by-heat",
                () -> of(run(sound, 6, 99, opened("T&P valve", 5, Event.OpeningCause.TEMPERATURE))));
        HotWaterSystem surging = house().supply(supply(4)
                        .mains(MainsPressure.daily(Map.of(
                                0.0, Pressure.gauge(4, BAR),
                                3_540.0, Pressure.gauge(4, BAR),
                                3_600.0, Pressure.gauge(5, BAR),
                                3_660.0, Pressure.gauge(4, BAR))))
                        .build())
                .build();
        ALL.put("surge-trapped", () -> of(run(surging, 5, 60, event(Event.Kind.SUPPLY_CLOSED, 5))));
        ALL.put("heater-never-heats", () -> of(run(startingAt(60), 4, 60)));
        HotWaterSystem textbook = house().tank(
                        FaultlessHouse.tank(10).toBuilder().neverFails(true).build())
                .build();
        ALL.put("textbook-run", () -> of(run(textbook, 12, 60)));
        ALL.put("textbook-run-beyond-test-pressure", () -> of(run(textbook, 59, 60)));
        ALL.put("vessel-bottomed-out", () -> of(run(sound, 5.4, 60, event(Event.Kind.VESSEL_BOTTOMED_OUT, 5.4))));
        ALL.put("working-pressure-exceeded", () -> of(run(sound, 12, 60)));
        ALL.put("peak-above-code-limit", () -> of(run(sound, 5.6, 60)));
        ALL.put("peak-near-relief", () -> of(run(sound, 6.2, 60)));
        ALL.put("boiling-margin-small", () -> of(run(sound, 5, 0.1, 95, 0)));
        ALL.put("water-hotter-than-boiling", () -> of(run(sound, 5, 105)));
        ALL.put("cut-out-tripped", () -> of(run(sound, 5, 95, event(Event.Kind.CUT_OUT_TRIPPED, 5))));
        ALL.put("relief-water-loss", () -> of(run(sound, 5, 4, 60, 1)));
        hazard("test-pressure-reached", Event.Kind.TEST_PRESSURE_REACHED, 20);
        hazard("vapour-forms", Event.Kind.VAPOUR_FORMS, 4);
        hazard("relief-valve-chatters", Event.Kind.RELIEF_CHATTERS, 5);
        hazard("pressure-lost", Event.Kind.ATMOSPHERE_REACHED, 5);
        hazard("water-out-of-range", Event.Kind.WATER_OUT_OF_RANGE, 5);
        hazard("water-freezes", Event.Kind.WATER_FREEZES, 5);
    }

    /** A house whose precharge nobody has read, with one taken in its place. */
    static AssessmentContext chargeNotRead(double bar) {
        Doubt doubt = new Doubt("vessel.precharge", Statement.plain("not read"), Optional.empty(), List.of());
        return new AssessmentContext(
                house().vessel(vessel(18, bar).build()).build(),
                Optional.empty(),
                Doubts.of(List.of(doubt), changes -> Optional.empty()));
    }

    /** Whose thermostat switches on below 56 degC. */
    static HotWaterSystem startingAt(double celsius) {
        return house().start(
                        Start.builder().water(celsius, TemperatureUnit.CELSIUS).build())
                .build();
    }

    private static void hazard(String id, Event.Kind kind, double peakBar) {
        HotWaterSystem sound = house().build();
        ALL.put(id, () -> of(run(sound, peakBar, 60, event(kind, "T&P valve", peakBar))));
    }

    private static void changed(String id, Consumer<HotWaterSystem.Builder> change) {
        ALL.put(id, () -> {
            HotWaterSystem.Builder house = house();
            change.accept(house);
            return of(house.build());
        });
    }

    private static void relief(String id, ReliefValve.Builder valve) {
        ALL.put(id, () -> of(unguarded().addReliefValve(valve.build()).build()));
    }

    private static void vesselCase(String id, ExpansionVessel.Builder vessel) {
        changed(id, h -> h.vessel(vessel.build()));
    }
}
