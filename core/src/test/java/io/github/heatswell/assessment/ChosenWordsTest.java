package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.FaultlessHouse.event;
import static io.github.heatswell.assessment.FaultlessHouse.guard;
import static io.github.heatswell.assessment.FaultlessHouse.house;
import static io.github.heatswell.assessment.FaultlessHouse.run;
import static io.github.heatswell.assessment.FaultlessHouse.supply;
import static io.github.heatswell.assessment.FaultlessHouse.unguarded;
import static io.github.heatswell.assessment.FaultlessHouse.valve;
import static io.github.heatswell.assessment.FaultlessHouse.vessel;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.place.Place;
import io.github.heatswell.result.Event;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.GasLaw;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Regression: which of its phrases a finding chooses, by what the house has or the run shows. */
class ChosenWordsTest {

    private static final Event OPENED = event(Event.Kind.RELIEF_OPENED, "T&P valve", 7);
    private static final Event HEATED_OPEN = FaultlessHouse.opened("T&P valve", 5, Event.OpeningCause.TEMPERATURE);

    static Stream<Arguments> phrases() {
        UnaryOperator<HotWaterSystem.Builder> leaking = h ->
                h.supply(supply(4).seatLeakage(0.1, FlowUnit.LITRE_PER_MINUTE).build());
        HotWaterSystem leaky = leaking.apply(house()).build();
        return Stream.of(
                said(
                        "check-valve-leaks",
                        () -> of(leaky),
                        "hides the expansion.",
                        "Have the check valve replaced. Watch"),
                said(
                        "check-valve-leaks",
                        () -> of(leaking.apply(house().withoutVessel()).build()),
                        "replaced, and expansion control provided first. "),
                said("check-valve-leaks", () -> Findings.of(run(leaky, 7, 60, OPENED)), "hides part of the expansion."),
                said("check-valve-leaks", () -> Findings.of(run(leaky, 5, 60, HEATED_OPEN)), "hides the expansion."),
                said(
                        "trapped-air",
                        () -> of(house().trappedAir(1, VolumeUnit.LITRE).build()),
                        "1 L of air in the piping cushions",
                        "Do not count on it: let the air out. "),
                said(
                        "trapped-air",
                        () -> of(airy(house().withoutVessel()).build()),
                        "0.5 L of air in the tank cushions",
                        "Do not count on it: provide expansion control, then run a hot tap until no air comes. "),
                said(
                        "trapped-air",
                        () -> of(airy(house().trappedAir(1, VolumeUnit.LITRE)).build()),
                        "1.5 L of air in tank and piping cushions"),
                said(
                        "vessel-above-supply",
                        () -> of(house().supply(supply(0.05).build())
                                .vessel(vessel(18, 0.05).build())
                                .build()),
                        "The supply is only at 0.05 bar: no precharge can be matched to that."),
                said(
                        "vessel-above-supply",
                        () -> of(house().supply(supply(2).build())
                                .vessel(vessel(18, 2).build())
                                .addVessel(vessel(8, 2)
                                        .height(25, LengthUnit.METRE)
                                        .build())
                                .build()),
                        "hardly reaches vessel 2, 25 m above it: no precharge"),
                said(
                        "precharge-unknown",
                        () -> Findings.of(Cases.chargeNotRead(4.5)),
                        "Assumed to be 4.5 bar, it would be above the 4 bar supply pressure there.",
                        "Turn the heater off and let it cool."),
                said(
                        "precharge-unknown",
                        () -> Findings.of(Cases.chargeNotRead(3.5)),
                        "Assumed to be 3.5 bar, it would be below the 4 bar supply pressure there."),
                said(
                        "precharge-above-static",
                        () -> charged(vessel(18, 4.5)),
                        ": it takes no water until the pressure"),
                said(
                        "precharge-above-static",
                        () -> charged(vessel(18, 4.5).condition(ExpansionVessel.Condition.ISOLATED)),
                        ": back in service it would take no water until the pressure"),
                said(
                        "precharge-below-static",
                        () -> charged(vessel(18, 3.5)),
                        // (4 - 3.5) / 5.01325 by Boyle's law
                        "below the 4 bar supply pressure there: 10 % of it is full of cold water"),
                said(
                        "precharge-below-static",
                        () -> of(house().supply(supply(4)
                                        .mains(MainsPressure.daily(Map.of(
                                                0.0, Pressure.gauge(4, BAR), 43_200.0, Pressure.gauge(4.8, BAR))))
                                        .build())
                                .vessel(vessel(18, 3.5).build())
                                .build()),
                        "below the 4 bar supply pressure there at its lowest: at least 10 % of it is full"),
                said(
                        "vessel-rated-below-relief",
                        () -> of(rated(house())),
                        "is rated for only 6 bar, and no relief valve opens before the pressure there reaches 7 bar.",
                        "rated for at least that."),
                said(
                        "vessel-rated-below-relief",
                        () -> of(rated(house().addReliefValve(valve(6, 5).build()))),
                        "and 'T&P valve' on the same water opens only when the pressure there reaches 7 bar.",
                        "rated for at least that: a valve set lower may fail."),
                said(
                        "peak-above-code-limit",
                        () -> Findings.of(run(house().build(), 5.6, 60)),
                        "above the 5.52 bar that US model codes allow in a building.",
                        "Have the precharge checked"),
                said(
                        "peak-above-code-limit",
                        () -> Findings.of(run(
                                PlaceFindingsTest.at(house(), Place.of("us-upc"))
                                        .build(),
                                5.6,
                                60)),
                        "that the rules here allow in a building."),
                said(
                        "peak-above-code-limit",
                        () -> Findings.of(
                                run(house().vessel(vessel(18, 3).build()).build(), 5.6, 60)),
                        "Have the precharge corrected"),
                said(
                        "peak-above-code-limit",
                        () -> Findings.of(run(
                                house().vessel(vessel(18, 4)
                                                .condition(ExpansionVessel.Condition.ISOLATED)
                                                .build())
                                        .build(),
                                5.6,
                                60)),
                        "Have the vessel fixed first"),
                said(
                        "peak-above-code-limit",
                        () -> Findings.of(run(two(vessel(18, 4)), 5.6, 60)),
                        "Have the precharge of every vessel checked"),
                said(
                        "peak-above-code-limit",
                        () -> Findings.of(run(two(vessel(18, 3)), 5.6, 60)),
                        "Have the precharge of vessel 2 corrected"),
                said(
                        "static-pressure-high",
                        () -> of(house().supply(supply(5.6).build()).build()),
                        "US model codes"),
                said("vessel-too-small", () -> charged(vessel(2, 4)), "Boyle's law for the gas"),
                said("vessel-too-small", () -> charged(vessel(2, 4).gasLaw(new Boyle())), "the law given for the gas"),
                // a litre a day are 365 L a year
                said(
                        "relief-water-loss",
                        () -> Findings.of(run(house().withoutVessel().build(), 7, 4, 60, 1, OPENED)),
                        "In 12 h the relief valves discharged 1 L in 1 opening;",
                        "compare: a day without a heat-up from cold discharges less."),
                said(
                        "relief-water-loss",
                        () -> Findings.of(run(drawn(house()), 5, 4, 60, 1)),
                        "discharged 1 L without opening; once a day, a year comes to 365 L.",
                        "for a day and compare. Keep the pipe open"),
                said(
                        "relief-water-loss",
                        () -> Findings.of(run(drawn(house().withoutVessel()), 7, 4, 60, 1, OPENED, OPENED)),
                        "in 2 openings; once a day, a year comes to 365 L, or less if the tank holds air."),
                said(
                        "relief-water-loss",
                        () -> Findings.of(run(drawn(airy(house().withoutVessel())), 7, 4, 60, 1, OPENED)),
                        "once a day, a year comes to 365 L."),
                said(
                        "relief-water-loss",
                        () -> Findings.of(run(house().build(), 5, 4, 105, 1)),
                        "Keep clear of the discharge pipe: what comes out may scald."),
                said(
                        "relief-water-loss",
                        () -> Findings.of(run(house().build(), 5, 4, 60, 1, HEATED_OPEN)),
                        "Keep clear of the discharge pipe"),
                said(
                        "relief-water-loss",
                        () -> Findings.of(run(house().build(), 5, 4, 60, 1, event(Event.Kind.CUT_OUT_TRIPPED, 5))),
                        "Keep clear of the discharge pipe"),
                said(
                        "expansion-control-missing",
                        () -> of(bare(21, house().build().tank())),
                        "the tank's working pressure of 10 bar is exceeded"),
                said(
                        "expansion-control-missing",
                        () -> of(bare(
                                21,
                                house().build().tank().toBuilder()
                                        .neverFails(true)
                                        .build())),
                        "'safety valve' opens at 21 bar"),
                said(
                        "temperature-relief-missing",
                        () -> of(PlaceFindingsTest.at(
                                        unguarded().addReliefValve(valve(7, 6).build()), Place.US_IPC)
                                .build()),
                        "Besides the thermostat only the cut-out guards against boiling."),
                said(
                        "temperature-relief-missing",
                        () -> of(PlaceFindingsTest.at(
                                        unguarded()
                                                .heater(FaultlessHouse.unmixed(60)
                                                        .build())
                                                .addReliefValve(valve(7, 6).build()),
                                        Place.US_IPC)
                                .build()),
                        "No cut-out is described either."),
                said(
                        "temperature-relief-missing",
                        () -> of(PlaceFindingsTest.at(
                                        unguarded()
                                                .addReliefValve(valve(7, 6)
                                                        .name("T&P valve")
                                                        .build()),
                                        Place.US_IPC)
                                .build()),
                        "and add it. If the plate names none, turn the heater off"),
                said(
                        "relief-set-above-tank",
                        () -> of(LimitsTest.withRelief(valve(10, 9).height(12, LengthUnit.METRE))
                                .build()),
                        // 10 bar and 12 m of water of 999.7 kg/m3, 1.18 bar
                        "No relief valve opens below 11.18 bar at the tank, which is rated for only 10 bar.",
                        "The valve's setting suits the tank; its height does not"),
                said(
                        "relief-set-above-tank",
                        () -> of(LimitsTest.withRelief(guard(11, 9)).build()),
                        "replaced by one set to the tank's working pressure or less."),
                said(
                        "relief-valve-chatters",
                        () -> Findings.of(
                                run(house().build(), 5, 60, event(Event.Kind.RELIEF_CHATTERS, "T&P valve", 5))),
                        "'T&P valve'"),
                said(
                        "tp-relief-set-high",
                        () -> of(LimitsTest.withRelief(guard(10.2, 9))
                                .addReliefValve(valve(7, 6).build())
                                .build()),
                        "'T&P valve'"));
    }

    private static Arguments said(String id, Supplier<List<Finding>> found, String... phrases) {
        return Arguments.of(id, found, List.of(phrases));
    }

    @ParameterizedTest(name = "{0}: {2}")
    @MethodSource("phrases")
    void aFindingSaysWhatThisHouseHas(String id, Supplier<List<Finding>> found, List<String> phrases) {
        Finding finding = LimitsTest.only(found.get(), id);
        String text =
                finding.sentence().text(UnitSystem.SI) + " " + finding.advice().text(UnitSystem.SI) + " "
                        + finding.authority().source().text();
        phrases.forEach(phrase -> assertTrue(text.replace('\u00a0', ' ').contains(phrase), text));
    }

    private static List<Finding> of(HotWaterSystem house) {
        return Findings.of(house);
    }

    private static List<Finding> charged(ExpansionVessel.Builder vessel) {
        return of(house().vessel(vessel.build()).build());
    }

    private static HotWaterSystem rated(HotWaterSystem.Builder house) {
        return house.vessel(vessel(18, 4).rating(Pressure.gauge(6, BAR)).build())
                .build();
    }

    private static HotWaterSystem two(ExpansionVessel.Builder second) {
        return house().addVessel(second.build()).build();
    }

    private static HotWaterSystem.Builder airy(HotWaterSystem.Builder house) {
        return house.changeTank(
                tank -> tank.toBuilder().air(0.5, VolumeUnit.LITRE).build());
    }

    /** Nothing but a relief valve of this set pressure. */
    private static HotWaterSystem bare(double bar, Tank tank) {
        return unguarded()
                .withoutVessel()
                .tank(tank)
                .addReliefValve(valve(bar, 6).build())
                .build();
    }

    /** Warm as it begins, with a bucket of hot water a day. */
    private static HotWaterSystem drawn(HotWaterSystem.Builder house) {
        return house.start(Start.builder().water(60, TemperatureUnit.CELSIUS).build())
                .draws(DrawProfile.of(
                        "a bucket",
                        List.of(Draw.ofVolume(36_000, 10, VolumeUnit.LITRE, 10, FlowUnit.LITRE_PER_MINUTE))))
                .build();
    }

    private record Boyle() implements GasLaw {
        @Override
        public double pressure(double charge, double share, double warmth) {
            return charge * warmth / share;
        }

        @Override
        public double byShare(double charge, double share, double warmth) {
            return -charge * warmth / (share * share);
        }

        @Override
        public double byWarmth(double charge, double share, double warmth) {
            return charge / share;
        }
    }
}
