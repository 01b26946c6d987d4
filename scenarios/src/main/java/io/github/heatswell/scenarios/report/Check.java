package io.github.heatswell.scenarios.report;

import io.github.heatswell.checksheet.CheckProcedure;
import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.checksheet.UncertainCheck;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How the owner checks the house with a gauge, and what it should read.
 *
 * @param steps the procedure in plain words, in its order
 * @param readings the lines of the check sheet, in the order of time; none if there is nothing to read
 * @param remarks what to bear in mind, or why there is nothing to read
 * @param mixed that a relief valve discharges in the check in some of the houses within what is uncertain; empty if in all or none
 */
record Check(List<String> steps, List<Reading> readings, List<String> remarks, Optional<String> mixed) {

    /** The readings that a diagnosis takes, under the names of their kinds. */
    private static final Set<CheckSheet.Reading.Kind> READ_BACK = Set.of(
            CheckSheet.Reading.Kind.COLD_STATIC, CheckSheet.Reading.Kind.PEAK, CheckSheet.Reading.Kind.NEXT_MORNING);

    /** Enough for the fifth and the ninety-fifth percentile to be right to a tenth of the band or so. */
    private static final int SAMPLES = 128;

    Check {
        steps = List.copyOf(steps);
        readings = List.copyOf(readings);
        remarks = List.copyOf(remarks);
    }

    /**
     * What a gauge should read at some moment.
     *
     * @param kind the moment
     * @param when the moment in words
     * @param expectedGauge what the gauge should read (Pa, gauge)
     * @param lowestGauge the lowest reading that agrees with that (Pa, gauge)
     * @param highestGauge the highest reading that agrees with that (Pa, gauge)
     * @param note what to mind, possibly nothing
     */
    record Reading(
            CheckSheet.Reading.Kind kind,
            String when,
            double expectedGauge,
            double lowestGauge,
            double highestGauge,
            String note) {}

    /** What the gauge should read, and when, with room for what it does read; empty if there is nothing to read. */
    Optional<Document.Section> section(QuantityFormat shown) {
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        List<Block> blocks = new ArrayList<>();
        if (!steps.isEmpty()) {
            blocks.add(new Block.Items(steps, Block.ListKind.STEPS));
        }
        blocks.add(new Block.CheckSheet(readings.stream()
                .map(reading -> new Block.CheckSheet.Line(
                        reading.when(),
                        reading.note(),
                        shown.pressure(reading.expectedGauge()),
                        "agrees: " + shown.pressures(reading.lowestGauge(), reading.highestGauge())))
                .toList()));
        blocks.addAll(remarked());
        return Optional.of(new Document.Section("What the gauge should read, and when", Document.Form.PAPER, blocks));
    }

    /** Why there is nothing to read, for the sheet with the answer; nothing where there is. */
    List<Block> reasons() {
        return readings.isEmpty() ? remarked().stream().map(Block::onPage).toList() : List.of();
    }

    private List<Block> remarked() {
        return remarks.stream()
                .<Block>map(remark -> new Block.Paragraph(remark, Block.Tone.QUOTING))
                .toList();
    }

    /** What may be different about a house that is checked: what its scenario says or is usual, and what nobody has read. */
    static VariedHouse unread(VariedHouse varied, Scenario scenario) {
        return varied.withAssumedReseats(scenario).withUnreadLockUp(scenario);
    }

    /**
     * The check of a house.
     *
     * @param house the house as described
     * @param varied what may be different about it
     * @param notBefore why the house must not be heated before something is put right; empty if it may be
     * @param count counts the runs it takes
     * @param shown the units
     */
    static Check of(
            HotWaterSystem house,
            VariedHouse varied,
            Optional<String> notBefore,
            Balances.Count count,
            QuantityFormat shown) {
        return new Simulated(house, varied, count, shown).check(notBefore);
    }

    /** Why no check is given of a house that must not be heated. */
    static Check refused(String why) {
        return none("There is no check sheet: the check needs a heat-up, and " + why);
    }

    private static Check none(String reason) {
        return new Check(List.of(), List.of(), List.of(reason), Optional.empty());
    }

    /** The check of a house as it is simulated. */
    private record Simulated(HotWaterSystem house, VariedHouse varied, Balances.Count count, QuantityFormat shown) {

        private Check check(Optional<String> notBefore) {
            if (notBefore.isPresent()) {
                return refused(notBefore.get());
            }
            CheckProcedure procedure = CheckProcedure.of(house);
            try {
                CheckSheet sheet = procedure.simulate(house);
                count.add(sheet.balances());
                return sheet.hazard()
                        .map(event -> none("There is no check sheet: "
                                + Narrative.checkEndsIn(event).text(shown)))
                        .orElseGet(() -> sheet(procedure, sheet));
            } catch (SimulationException e) {
                return none("There is no check sheet: the check could not be simulated.");
            }
        }

        private Check sheet(CheckProcedure procedure, CheckSheet sheet) {
            List<String> steps = procedure.steps(shown);
            StudyResult samples = UncertainCheck.study(
                            procedure,
                            varied.inputs().stream()
                                    .map(VariedHouse.Input::input)
                                    .toList(),
                            varied.house())
                    .samples(SAMPLES)
                    .build()
                    .run();
            UncertainCheck check =
                    new UncertainCheck(sheet, UncertainCheck.gaugeFor(sheet, house, samples, shown.units()), samples);
            count.add(check.sampled());
            return new Check(
                    steps,
                    check.readings().stream()
                            .map(read -> reading(read, check.gauge().error()))
                            .toList(),
                    remarks(check),
                    Narrative.mixed(check, house).map(said -> said.text(shown)));
        }

        private Check.Reading reading(UncertainCheck.ToleratedReading tolerated, double error) {
            CheckSheet.Reading expected = tolerated.reading();
            double minutes = Math.rint(expected.time() / 60);
            String note = expected.kind() == CheckSheet.Reading.Kind.PEAK && minutes > 0
                    ? "expected about " + shown.time(60 * minutes) + " after the taps were closed"
                    : "";
            Optional<String> key = READ_BACK.contains(expected.kind())
                    ? Optional.of("for diagnose: " + expected.kind().id())
                    : Optional.empty();
            boolean sampled = tolerated.samples() > 0;
            double gauge = expected.expectedGauge();
            return new Check.Reading(
                    expected.kind(),
                    PageWords.capitalised(expected.when()),
                    gauge,
                    sampled ? tolerated.lowest() : gauge - error,
                    sampled ? tolerated.highest() : gauge + error,
                    Stream.concat(Stream.of(note).filter(said -> !said.isEmpty()), key.stream())
                            .collect(Collectors.joining("; ")));
        }

        private List<String> remarks(UncertainCheck check) {
            return Narrative.remarks(check, house, reseatAssumed()).stream()
                    .map(remark -> remark.text(shown))
                    .toList();
        }

        private boolean reseatAssumed() {
            return varied.inputs().stream().anyMatch(input -> input.name().equals(VariedHouse.ASSUMED_RESEAT));
        }
    }
}
