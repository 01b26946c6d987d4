package io.github.heatswell.scenarios.choice;

import io.github.heatswell.place.Customs;
import io.github.heatswell.scenarios.choice.VesselAnswer.FormulaAnswer;
import io.github.heatswell.sizing.SizingReconciliation;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.VesselFormula;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.UnitSystem;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** The published formulas beside a sizing: in the US those of European standards are nobody's rule. */
final class Formulas {

    private static final String HANDBOOK = "handbook, diaphragm tank";
    private static final String DIN = "DIN 4807-5, drinking water";
    private static final String EN = "EN 12828, heating systems";
    private static final String NO_VALVE = "it needs the set pressure of a relief valve, and the scenario has none";

    private final HotWaterSystem house;
    private final VesselSizing sizing;
    private final SizingResult found;

    Formulas(HotWaterSystem house, VesselSizing sizing, SizingResult found) {
        this.house = house;
        this.sizing = sizing;
        this.found = found;
    }

    List<FormulaAnswer> all() {
        double atmosphere = house.site().atmosphere();
        if (house.hasSeveralVessels()) {
            return Stream.of(HANDBOOK, DIN, EN)
                    .map(name -> FormulaAnswer.without(
                            name, "does not apply: it knows one vessel, and this is one more beside others"))
                    .toList();
        }
        if (found.supplyStatic().absolute(atmosphere) >= found.target().absolute()) {
            return Stream.of(HANDBOOK, DIN, EN)
                    .map(name -> FormulaAnswer.without(
                            name, "does not apply: the supply pressure is not below the" + " limit"))
                    .toList();
        }
        boolean american = house.site()
                .place()
                .customs()
                .map(Customs::units)
                .filter(UnitSystem.US::equals)
                .isPresent();
        return american ? List.of(handbook()) : List.of(handbook(), din(), en());
    }

    private FormulaAnswer handbook() {
        double expansion = house.tank().shell().thermalGrowth() / 3;
        return guarded(
                HANDBOOK, () -> FormulaAnswer.of(HANDBOOK, SizingReconciliation.fromHandbook(sizing, expansion)));
    }

    private FormulaAnswer din() {
        return lowest().map(valve ->
                        guarded(DIN, () -> FormulaAnswer.of(DIN, SizingReconciliation.fromDin(sizing, valve))))
                .orElse(FormulaAnswer.without(DIN, NO_VALVE));
    }

    private FormulaAnswer en() {
        return lowest().map(valve -> guarded(EN, () -> en(valve))).orElse(FormulaAnswer.without(EN, NO_VALVE));
    }

    private FormulaAnswer en(ReliefValve valve) {
        double atmosphere = house.site().atmosphere();
        VesselFormula formula = VesselFormula.enHeating(
                house.tank().volume(),
                hottest(),
                found.supplyStatic().gauge(atmosphere),
                valve.setPressure().gauge(atmosphere));
        return new FormulaAnswer(
                EN,
                Optional.of(formula.size()),
                Optional.empty(),
                "made for closed heating systems, with a reserve of water that a hot-water tank does not need");
    }

    private double hottest() {
        return house.heater().elements().stream()
                .map(Element::setPoint)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private Optional<ReliefValve> lowest() {
        double atmosphere = house.site().atmosphere();
        return house.reliefValves().stream()
                .min(Comparator.comparingDouble(valve -> valve.setPressure().gauge(atmosphere)));
    }

    /** Reports inputs outside a formula's range instead of hiding them. */
    private static FormulaAnswer guarded(String name, Supplier<FormulaAnswer> answer) {
        try {
            return answer.get();
        } catch (IllegalArgumentException e) {
            return FormulaAnswer.without(name, "does not apply: " + e.getMessage());
        }
    }
}
