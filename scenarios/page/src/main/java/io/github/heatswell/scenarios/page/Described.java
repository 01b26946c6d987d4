package io.github.heatswell.scenarios.page;

import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Locale;

/** A house as its owner described it, in numbers the page can draw: lengths in m, volumes in m3, gauge pressures in Pa, kelvin. */
final class Described {

    private final HotWaterSystem house;
    private final double air;

    private Described(HotWaterSystem house) {
        this.house = house;
        air = house.site().atmosphere();
    }

    static Values values(Scenario scenario) {
        Described one = new Described(scenario.system());
        return new Values()
                .with("name", scenario.name())
                .with("title", scenario.title())
                .with("question", scenario.question())
                .with("us", scenario.units() == UnitSystem.US)
                .with("supply", one.supply())
                .with("tank", one.tank())
                .with("heater", one.heater())
                .each("relief", one.house.reliefValves(), one::relief)
                .each("vessels", one.house.vessels(), one::vessel)
                .with("gaugeHeight", one.house.gaugeHeight())
                .with("limit", VesselChoice.of(scenario).build().target().gauge())
                .each("sizes", scenario.costs().vessels(), size -> new Values().with("volume", size.volume()));
    }

    private Values supply() {
        Values supply = new Values()
                .with("arrangement", word(house.supply().arrangement()))
                .with("constant", house.supply().mains().isConstant())
                .with("pressure", house.supplyAtStart().gauge(air))
                .with("mains", house.supply().mains().absolute(house.start().timeOfDay(), air) - air)
                .with("leaks", house.supply().seatLeakage() > 0)
                .each(
                        "timetable",
                        List.copyOf(house.supply().mains().entries().entrySet()),
                        entry -> new Values()
                                .with("at", entry.getKey())
                                .with("pressure", entry.getValue().gauge(air)));
        house.supply().reducingValve().ifPresent(valve -> {
            supply.with("set", valve.set().gauge(air));
            valve.bypassOpens().ifPresent(above -> supply.with("bypass", above));
        });
        return supply;
    }

    private Values tank() {
        Values tank = new Values();
        house.tank().builtHeight().ifPresent(height -> tank.with("height", height));
        house.tank().shell().material().ifPresent(material -> tank.with("material", material.name()));
        return tank.with("volume", house.tank().volume())
                .with("workingPressure", house.tank().workingPressure().gauge(air));
    }

    private Values heater() {
        return new Values()
                .with("gas", word(house.heater().energy()).equals("gas"))
                .with("energy", word(house.heater().energy()))
                .with("setPoint", house.heater().setPoint())
                .with("differential", house.heater().differential())
                .with("input", house.heater().input());
    }

    private Values relief(ReliefValve valve) {
        return new Values()
                .with("name", valve.name())
                .with("opens", valve.setPressure().gauge(air))
                .with("fullLift", valve.fullLiftPressure().gauge(air))
                .with("reseats", valve.reseatPressure().gauge(air))
                .with("height", valve.height())
                .with("onTank", valve.location() == ReliefValve.Location.TANK_TOP)
                .with("condition", word(valve.condition()));
    }

    private Values vessel(ExpansionVessel vessel) {
        return new Values()
                .with("name", vessel.name().orElse(""))
                .with("volume", vessel.volume())
                .with("inTank", vessel.isInTank())
                .with("precharge", vessel.precharge().gauge(air))
                .with("acceptance", vessel.acceptance())
                .with("height", vessel.height())
                .with("condition", word(vessel.condition()));
    }

    /** A constant as a file writes it. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
