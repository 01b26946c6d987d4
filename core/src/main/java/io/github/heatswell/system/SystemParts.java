package io.github.heatswell.system;

import java.util.ArrayList;
import java.util.List;

/** What a {@link HotWaterSystem} consists of, as its builder gathers it. The system keeps a copy that nothing changes. */
final class SystemParts {

    Site site;
    Supply supply;
    Tank tank;
    Heater heater;
    final List<PipeRun> piping = new ArrayList<>();
    final List<ReliefValve> reliefValves = new ArrayList<>();
    final List<ExpansionVessel> vessels = new ArrayList<>();
    Circulation circulation;
    Double trappedAir;
    final List<Leak> leaks = new ArrayList<>();
    DrawProfile draws = DrawProfile.none();
    double gaugeHeight;
    Start start = Start.coldFill();

    /** No piping, no relief valve, no vessel, and the cold fill as the start. */
    SystemParts() {}

    /** The same parts in lists of their own. */
    SystemParts(SystemParts from) {
        site = from.site;
        supply = from.supply;
        tank = from.tank;
        heater = from.heater;
        piping.addAll(from.piping);
        reliefValves.addAll(from.reliefValves);
        vessels.addAll(from.vessels);
        circulation = from.circulation;
        trappedAir = from.trappedAir;
        leaks.addAll(from.leaks);
        draws = from.draws;
        gaugeHeight = from.gaugeHeight;
        start = from.start;
    }

    /** Notes which of the parts that no system can lack are missing. */
    Requirements present() {
        return new Requirements()
                .present("site", site)
                .present("supply", supply)
                .present("tank", tank)
                .present("heater", heater);
    }
}
