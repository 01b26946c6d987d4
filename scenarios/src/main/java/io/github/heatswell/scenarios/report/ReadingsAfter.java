package io.github.heatswell.scenarios.report;

import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What the gauge of a changed house showed, held against its check sheet. */
public final class ReadingsAfter {

    private final List<Check.Reading> sheet;
    private final double relief;
    private final Optional<String> coldPeak;
    private final QuantityFormat shown;

    private ReadingsAfter(List<Check.Reading> sheet, double relief, Optional<String> coldPeak, QuantityFormat shown) {
        this.sheet = sheet;
        this.relief = relief;
        this.coldPeak = coldPeak;
        this.shown = shown;
    }

    /**
     * What the check sheet among the papers of a sizing says.
     *
     * @param answer the sizing, with the vessel that was bought
     * @param units the units of the answer
     * @return what readings are held against; empty where the sheet asks for none
     */
    public static Optional<ReadingsAfter> of(VesselAnswer answer, UnitSystem units) {
        SizingReport report = new SizingReport(answer, units);
        QuantityFormat shown = QuantityFormat.ascii(units);
        return Optional.of(report.check().readings())
                .filter(readings -> !readings.isEmpty())
                .map(readings -> new ReadingsAfter(
                        readings,
                        Limit.reliefSetGauge(answer.scenario().system()).orElse(Double.POSITIVE_INFINITY),
                        report.coldPeak(shown),
                        shown));
    }

    /**
     * When the gauge is to be read.
     *
     * @return the moments, in their order
     */
    public List<CheckSheet.Reading.Kind> moments() {
        return sheet.stream().map(Check.Reading::kind).toList();
    }

    /**
     * Whether a reading lies within what the sheet allows.
     *
     * @param moment when it was taken
     * @param gauge what the gauge showed (Pa, gauge)
     * @return true if it agrees
     */
    public boolean agrees(CheckSheet.Reading.Kind moment, double gauge) {
        return gauge >= line(moment).lowestGauge() && gauge <= line(moment).highestGauge();
    }

    /**
     * Whether all readings do.
     *
     * @param read what the gauge showed (Pa, gauge)
     * @return true if each agrees
     */
    public boolean agrees(Map<CheckSheet.Reading.Kind, Double> read) {
        return read.entrySet().stream().allMatch(one -> agrees(one.getKey(), one.getValue()));
    }

    /** How far (Pa) a reading lies above the highest that agrees, or, negative, below the lowest. */
    private double above(CheckSheet.Reading.Kind moment, double gauge) {
        Check.Reading line = line(moment);
        return gauge > line.highestGauge() ? gauge - line.highestGauge() : Math.min(0, gauge - line.lowestGauge());
    }

    private Check.Reading line(CheckSheet.Reading.Kind moment) {
        return sheet.stream().filter(one -> one.kind() == moment).findFirst().orElseThrow();
    }

    /**
     * What readings say: whether they agree, which do not, and what that means.
     *
     * @param read what the gauge showed (Pa, gauge), at least one of {@link #moments()}
     * @return whole sentences, in paragraphs
     */
    public List<String> answer(Map<CheckSheet.Reading.Kind, Double> read) {
        List<String> said = new ArrayList<>();
        double highest =
                read.values().stream().mapToDouble(gauge -> gauge).max().orElseThrow();
        if (highest > relief + tolerance(highest)) {
            said.add("The gauge read " + shown.pressure(highest)
                    + ", above the relief valve's set pressure. Turn the heater off and have" + " the valve replaced.");
        }
        Map<CheckSheet.Reading.Kind, Double> off = new EnumMap<>(CheckSheet.Reading.Kind.class);
        read.forEach((moment, gauge) -> {
            if (!agrees(moment, gauge)) {
                off.put(moment, above(moment, gauge));
            }
        });
        if (off.isEmpty()) {
            boolean peak = read.containsKey(CheckSheet.Reading.Kind.PEAK);
            said.add((read.size() == 1 ? "The reading agrees" : "All " + read.size() + " readings agree")
                    + " with the check sheet"
                    + (peak
                            ? ": after this draw the vessel takes up the expansion. Keep the sheet for the next check."
                            : ". But the highest reading of a heat-up, on which the answer depends, was not taken."));
            if (peak) {
                said.add(
                        "This check can miss a charge that is too low: so little water is heated that the readings may agree all"
                                + " the same. Have the charge read with the heater off and cool and the vessel's water side empty, or watch"
                                + " the next heat-up from cold: "
                                + coldPeak.orElse("if anything comes out of a relief valve,")
                                + " turn the heater off and find out why.");
            }
            return said;
        }
        said.add("Not yet as it should be: " + off.size() + " of " + read.size()
                + (read.size() == 1 ? " reading is" : " readings")
                + (read.size() == 1 ? "" : off.size() == 1 ? " is" : " are")
                + " off the check sheet.");
        off.forEach((moment, above) -> said.add(line(moment).when() + ": "
                + shown.pressure(read.get(moment)) + " is too " + (above > 0 ? "high" : "low") + "; "
                + shown.pressures(line(moment).lowestGauge(), line(moment).highestGauge()) + " agrees."));
        Narrative.offSheet(off, true).map(meaning -> meaning.text(shown)).ifPresent(said::add);
        return said;
    }

    /** How far (Pa) a gauge at a pressure is off: as far as the sheet allows at its peak. */
    private static double tolerance(double pressure) {
        return 0.05 * pressure;
    }

    /**
     * The readings that a diagnosis takes, as a file of readings on site.
     *
     * @param read what the gauge showed (Pa, gauge)
     * @return its lines, possibly none
     */
    public static String forDiagnosis(Map<CheckSheet.Reading.Kind, Double> read) {
        StringBuilder lines = new StringBuilder();
        read.forEach((moment, gauge) -> {
            boolean taken = Arrays.stream(SiteCheck.values())
                    .map(check -> check.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                    .anyMatch(moment.id()::equals);
            if (taken) {
                lines.append(moment.id()).append(": ").append(Math.round(gauge)).append(" Pa\n");
            }
        });
        return lines.toString();
    }
}
