package io.github.heatswell.scenarios.interview;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.diagnosis.Overpressure;
import io.github.heatswell.narrative.SizeAdvice.LowerSupply;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.report.BoughtVessel;
import io.github.heatswell.scenarios.report.ReadingsAfter;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A vessel that was bought for a house: whether it is as large as the sizing recommends, what its charge should be, and whether it is. It says nothing about a file that cannot be read; the commands of the guide then say why.
 */
final class NewVessel {

    private static final String VOLUME = NamedValue.VESSEL_VOLUME.field();
    private static final String PRECHARGE = NamedValue.PRECHARGE.field();

    /** The charge in whose place the right one is looked for. */
    private static final String ANY_CHARGE = "1 bar";

    private final Path house;
    private final QuantityFormat shown;
    private Sized sized;
    private VesselAnswer answer;

    NewVessel(Path house, UnitSystem units) {
        this.house = house;
        this.shown = QuantityFormat.ascii(units);
    }

    /** The lower supply that the sizing advises, as no size is enough at the present one; empty if it advises none. */
    Optional<LowerSupply> cure(Map<String, String> supply) {
        try {
            return Optional.of(answer(supply))
                    .filter(answer -> answer.recommended().isEmpty())
                    .flatMap(answer -> answer.supplies().cheapest());
        } catch (IOException | IllegalArgumentException | SimulationException unsized) {
            return Optional.empty();
        }
    }

    /** The sizing at a supply; the same as before while neither that nor the file changes. */
    private VesselAnswer answer(Map<String, String> supply) throws IOException {
        Sized now = new Sized(Files.readString(house), Map.copyOf(supply));
        if (!now.equals(sized)) {
            answer = VesselChoice.of(ScenarioReader.read(house).with(changes(supply)))
                    .build()
                    .answer();
            sized = now;
        }
        return answer;
    }

    /** What a sizing is about: the text of a file, and what is changed about the supply. */
    private record Sized(String text, Map<String, String> supply) {}

    private VesselAnswer bought(Map<String, String> supply, double volume) throws IOException {
        return VesselChoice.of(ScenarioReader.read(house).with(changes(supply)))
                .bought(NominalSize.of(VolumeUnit.LITRE.fromSi(volume), VolumeUnit.LITRE))
                .build()
                .answer();
    }

    private static List<Change> changes(Map<String, String> values) {
        return values.entrySet().stream()
                .map(entry -> new Change(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** Such as {@code the reducing valve set to 50 psi}. */
    String set(LowerSupply cure) {
        return (cure.supply().fitted() ? "a reducing valve fitted and set to " : "the reducing valve set to ")
                + shown.pressure(cure.supply().valve().gauge(atmosphere()));
    }

    /** The whole of a cure, in a sentence. */
    String told(LowerSupply cure) {
        return "At this supply no size on the list is enough. Have " + set(cure) + "; then a vessel of "
                + shown.volume(cure.volume()) + ", charged to "
                + shown.pressure(cure.precharge().gauge(atmosphere())) + ", is.";
    }

    /** From which pressure on (Pa, gauge) a gauge of the house shows a hazard; infinite where the file does not say. */
    double alarming() {
        try {
            return Overpressure.hazardFrom(ScenarioReader.read(house).system()).orElse(Double.POSITIVE_INFINITY);
        } catch (IOException | IllegalArgumentException unreadable) {
            return Double.POSITIVE_INFINITY;
        }
    }

    private double atmosphere() {
        try {
            return ScenarioReader.read(house).system().site().atmosphere();
        } catch (IOException | IllegalArgumentException unreadable) {
            throw new IllegalStateException(unreadable); // it was read to find the cure
        }
    }

    /** Why a volume is too small, or short of margin; empty if it is enough. */
    Optional<String> tooSmall(Map<String, String> supply, Map<String, String> vessel) {
        try {
            Optional<Scenario> fitted = fitted(vessel);
            if (fitted.isEmpty()) {
                return Optional.empty();
            }
            VesselAnswer answer = bought(supply, volume(fitted.get()));
            return BoughtVessel.told(answer, shown)
                    .filter(told -> answer.tooSmall().isPresent() || answer.lacksMargin())
                    .map(told -> told
                            + (answer.lacksMargin()
                                    ? " Exchange it if you can."
                                    : " Exchange it before anybody connects it."));
        } catch (IOException | IllegalArgumentException | SimulationException unsized) {
            return Optional.empty();
        }
    }

    /** Which size to buy, in a sentence; empty if none is recommended. */
    Optional<String> toBuy(Map<String, String> supply) {
        try {
            return answer(supply)
                    .recommended()
                    .map(wanted -> "The size to buy is " + shown.volume(wanted.volume()) + ", charged to "
                            + shown.pressure(wanted.precharge().gauge(atmosphere())) + "."
                            + supply.values().stream()
                                    .filter(set -> set.contains(" +- "))
                                    .map(set -> " That allows for a setting that is "
                                            + set.replaceAll(".* \\+- | }$", "")
                                            + " off: read it closely, and a smaller"
                                            + " one may do.")
                                    .findFirst()
                                    .orElse(""));
        } catch (IOException | IllegalArgumentException | SimulationException unsized) {
            return Optional.empty();
        }
    }

    /** The file of the house with the vessel, as text; empty if there is no such house, or it has several. */
    Optional<String> described(Map<String, String> vessel) {
        return fitted(vessel).map(Scenario::changedText);
    }

    /** What the vessel is to be charged to, in a sentence; empty if its plates or the supply allow no such charge. */
    Optional<String> target(Map<String, String> vessel) {
        return pumpTo(vessel)
                .map(
                        pressure -> "With its water side empty, charge it to " + pressure
                                + ", the highest supply pressure there with no water running; never above the pressure on its plate.");
    }

    /** Why the vessel must not be fitted by what its plate allows, with what to do; empty if nothing is known against it. */
    Optional<String> weak(Map<String, String> vessel) {
        return fitted(vessel)
                .map(Scenario::system)
                .flatMap(system -> system.vessel()
                        .flatMap(bought -> bought.body().rating())
                        .flatMap(rating -> BoughtVessel.weak(system, rating, shown)));
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

    /** Whether the house has this vessel alone, so that a sizing may be compared with it. */
    boolean isOne(Map<String, String> vessel) {
        return fitted(vessel).isPresent();
    }

    /** What readings of the house with this vessel are held against: the check sheet of its papers; empty if that asks for none. */
    Optional<ReadingsAfter> sheet(Map<String, String> supply, Map<String, String> vessel, UnitSystem units) {
        try {
            Optional<Scenario> fitted = fitted(vessel);
            return fitted.isEmpty() ? Optional.empty() : ReadingsAfter.of(bought(supply, volume(fitted.get())), units);
        } catch (IOException | IllegalArgumentException | SimulationException unchecked) {
            return Optional.empty();
        }
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
            return Optional.of(ScenarioReader.read(house).with(changes(all)))
                    .filter(scenario -> !scenario.system().hasSeveralVessels());
        } catch (IOException | IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }
}
