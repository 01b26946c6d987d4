package io.github.heatswell.scenarios.output;

import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.scenarios.report.Check;
import io.github.heatswell.scenarios.report.Reading;
import io.github.heatswell.scenarios.wording.Shown;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.verification.CheckProcedure;
import io.github.heatswell.verification.CheckSheet;
import io.github.heatswell.verification.PressureGauge;
import io.github.heatswell.verification.ReadingKind;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The check sheet of the printed report: what a gauge should read, with the tolerance of the gauge alone. */
final class PageCheck {

    private static final PressureGauge GAUGE = PressureGauge.dial();

    private final HotWaterSystem house;
    private final Shown shown;

    private PageCheck(HotWaterSystem house, Shown shown) {
        this.house = house;
        this.shown = shown;
    }

    /**
     * The check of a house.
     *
     * @param hazard whether people may be hurt where the house is heated
     */
    static Check of(HotWaterSystem house, boolean hazard, Shown shown) {
        return new PageCheck(house, shown).check(hazard);
    }

    private Check check(boolean hazard) {
        if (hazard) {
            return none(
                    "No check sheet is given: it takes heating, and this house has a hazard, named at the top. Leave the"
                            + " heater off and call a licensed professional.");
        }
        CheckProcedure procedure = CheckProcedure.of(house);
        try {
            CheckSheet sheet = procedure.simulate(house);
            return sheet.hazard()
                    .map(event -> none("No check sheet is given: in the simulation the check itself ends in a hazard, "
                            + event.kind().description() + ". Leave the heater off and call a licensed professional."))
                    .orElseGet(() -> sheet(procedure, sheet));
        } catch (SimulationException e) {
            return none("No check sheet is given: the check could not be simulated.");
        }
    }

    private static Check none(String reason) {
        return new Check(List.of(), List.of(), List.of(reason));
    }

    private Check sheet(CheckProcedure procedure, CheckSheet sheet) {
        List<String> steps = procedure.steps().stream()
                .map(step -> PageWords.volumesInBoth(step, shown))
                .toList();
        return new Check(steps, sheet.readings().stream().map(this::reading).toList(), remarks(sheet));
    }

    private Reading reading(io.github.heatswell.verification.Reading expected) {
        double gauge = expected.expectedGauge();
        double minutes = Math.rint(expected.time() / 60);
        String note = expected.kind() == ReadingKind.PEAK && minutes > 0
                ? "expected about " + Shown.time(60 * minutes) + " after the taps were closed"
                : "";
        return new Reading(
                PageWords.capitalised(expected.when()),
                OptionalDouble.of(gauge),
                OptionalDouble.of(gauge - GAUGE.error()),
                OptionalDouble.of(gauge + GAUGE.error()),
                note);
    }

    private List<String> remarks(CheckSheet sheet) {
        List<String> remarks = new ArrayList<>();
        double highest = sheet.readings().stream()
                .mapToDouble(io.github.heatswell.verification.Reading::expectedGauge)
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
        if (highest > house.tank().workingPressure().gauge(house.site().atmosphere())) {
            remarks.add(
                    "A reading above the tank's working pressure is expected. Ask a licensed professional before the"
                            + " heater is used.");
        }
        if (!sheet.heatUp().finished()) {
            remarks.add(
                    "The heater is not expected to come on and off again after the draw; the highest reading is that of"
                            + " the whole ten hours.");
        }
        remarks.add("The hottest water is expected to reach "
                + shown.temperature(sheet.heatUp().hottest()) + "; take care when it is drawn.");
        remarks.add(drips(sheet.drips()));
        remarks.add("The readings are those of a house exactly as described; the range is that of a dial gauge of "
                + shown.pressure(GAUGE.span())
                + ", class 1.6 of EN 837-1, alone. A reading outside means that something"
                + " is not as described: find out what before anything is changed.");
        return remarks;
    }

    private String drips(CheckSheet.Drips drips) {
        if (!drips.expected()) {
            return "No relief valve is expected to give off water.";
        }
        String volume = "Relief valves are expected to give off " + shown.volume(drips.volume())
                + " from the closing of the taps to the next morning";
        String first = drips.firstAfter().isPresent()
                ? ", first after " + Shown.time(drips.firstAfter().getAsDouble())
                : "";
        return volume + first + (drips.whenCold() > 0 ? "; one runs even while the house is cold and at rest." : ".");
    }
}
