package io.github.heatswell.scenarios.interview;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What there is to say of a vessel that was bought for a house: whether it is as large as the sizing recommends, what it is to be
 * charged to, and whether it is. Of a file that cannot be read there is nothing to say; the commands of the guide then say why.
 */
final class NewVessel {

    private static final String VOLUME = NamedValue.VESSEL_VOLUME.field();
    private static final String PRECHARGE = NamedValue.PRECHARGE.field();

    /** The charge in whose place the right one is looked for. */
    private static final String ANY_CHARGE = "1 bar";

    private final Path house;
    private final QuantityFormat shown;

    NewVessel(Path house, UnitSystem units) {
        this.house = house;
        this.shown = QuantityFormat.ascii(units);
    }

    /** Why a volume is less than the sizing recommends; empty if it is not, or nothing is recommended. */
    Optional<String> tooSmall(Map<String, String> vessel) {
        try {
            Optional<Scenario> fitted = fitted(vessel);
            return fitted.isEmpty()
                    ? Optional.empty()
                    : VesselChoice.of(ScenarioReader.read(house))
                            .build()
                            .answer()
                            .recommended()
                            .filter(wanted -> wanted.volume() > volume(fitted.get()) * (1 + 1e-9))
                            .map(wanted -> "The sizing recommends " + shown.volume(wanted.volume()) + ": "
                                    + shown.volume(volume(fitted.get()))
                                    + " leaves less room for what is not known exactly, and for the charge that is lost in a"
                                    + " year.");
        } catch (IOException | IllegalArgumentException | SimulationException unsized) {
            return Optional.empty();
        }
    }

    /** What the vessel is to be charged to, in a sentence; empty if its plates or the supply allow no such charge. */
    Optional<String> target(Map<String, String> vessel) {
        return pumpTo(vessel)
                .map(pressure -> "With its water side empty, charge it to " + pressure
                        + ", the most that the supply stands at there with no water running; never above its plate.");
    }

    /** What is wrong with the charge, with what to do; empty if nothing is. */
    Optional<String> wrongCharge(Map<String, String> vessel) {
        return fitted(vessel)
                .flatMap(scenario -> Findings.of(scenario.system()).stream()
                        .filter(finding -> finding.id().startsWith("precharge-"))
                        .map(finding -> finding.sentence().text(shown)
                                + pumpTo(vessel)
                                        .map(pressure -> " Bring it to " + pressure + ".")
                                        .orElse(""))
                        .findFirst());
    }

    private Optional<String> pumpTo(Map<String, String> vessel) {
        return fitted(vessel)
                .map(Scenario::system)
                .flatMap(PrechargeTarget::of)
                .filter(PrechargeTarget::isAllowed)
                .map(target -> shown.pressure(target.pumpToGauge()));
    }

    /** Whether the house has this vessel alone, so that a sizing may be held against it. */
    boolean isOne(Map<String, String> vessel) {
        return fitted(vessel).isPresent();
    }

    /** Whether water that expands cannot go back to the mains; true of a house that cannot be read. */
    boolean isClosed() {
        try {
            return ScenarioReader.read(house).system().supply().arrangement() != Supply.Arrangement.DIRECT;
        } catch (IOException | IllegalArgumentException unreadable) {
            return true;
        }
    }

    private static double volume(Scenario scenario) {
        return scenario.system().vessel().map(ExpansionVessel::volume).orElse(0.0);
    }

    /** The house with the vessel as far as it is known; empty if there is no such house, or it has several. */
    private Optional<Scenario> fitted(Map<String, String> vessel) {
        Map<String, String> all = new LinkedHashMap<>(Map.of(PRECHARGE, ANY_CHARGE));
        all.putAll(vessel);
        try {
            List<Change> changes = all.entrySet().stream()
                    .map(entry -> new Change(entry.getKey(), entry.getValue()))
                    .toList();
            return Optional.of(ScenarioReader.read(house).with(changes))
                    .filter(scenario -> !scenario.system().hasSeveralVessels());
        } catch (IOException | IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }
}
