package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.about;
import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.temperature;
import static io.github.heatswell.assessment.Measure.volume;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.checksheet.CheckSheet.Reading.Kind;
import io.github.heatswell.checksheet.UncertainCheck;
import io.github.heatswell.result.Event;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What to bear in mind with a check sheet. */
final class CheckStory {

    /** A supply that differs by less (Pa) differs by no more than two ordinary gauges: our own judgement. */
    private static final double HOUR_DIFFERS = 0.2e5;

    private static final String STUCK_OPEN = "relief-valve-stuck-open";

    private final UncertainCheck check;
    private final HotWaterSystem house;
    private final double air;

    CheckStory(UncertainCheck check, HotWaterSystem house) {
        this.check = check;
        this.house = house;
        this.air = house.site().atmosphere();
    }

    /** Why a house must not be heated before something is put right; empty if it may be. */
    static Optional<Statement> heatingForbidden(List<Finding> findings) {
        if (findings.stream().anyMatch(finding -> finding.severity() == Finding.Severity.HAZARD)) {
            return Optional.of(
                    plain("this house has a hazard, named at the top. Leave the heater off and call a licensed"
                            + " professional."));
        }
        return findings.stream()
                .filter(finding -> finding.id().equals(STUCK_OPEN))
                .findFirst()
                .map(finding ->
                        plain("the heater must stay off until this is fixed: ").then(finding.sentence()));
    }

    /** Why no check sheet is given of a house in which the check itself ends in a hazard. */
    static Statement endsIn(Event hazard) {
        return plain("in the simulation the check itself ends in a hazard, "
                + hazard.kind().description()
                + ". Leave the heater off and call a licensed professional.");
    }

    /** What the first of the readings that count most, above (Pa) or below what agrees, means; empty if none is off. Common practice, no source. */
    static Optional<Statement> meaning(Map<Kind, Double> off, boolean vessel) {
        if (off.isEmpty()) {
            return Optional.empty();
        }
        if (off.containsKey(Kind.COLD_STATIC)) {
            return Optional.of(plain(
                    "The supply comes first, for all the other readings move with it. Check the reducing valve, or"
                            + " correct the supply in the description. "
                            + (vessel ? "Then charge the vessel to what the gauge shows cold, and read" : "Then read")
                            + " again."));
        }
        double heated = Stream.of(Kind.PEAK, Kind.HALF_HOUR, Kind.QUARTER_HOUR)
                .filter(off::containsKey)
                .mapToDouble(off::get)
                .findFirst()
                .orElse(0);
        if (heated > 0) {
            return Optional.of(plain(
                    vessel
                            ? "The vessel takes too little water. See that its valve stands open. With the heater off and its water"
                                    + " side empty, check its charge with a tyre gauge. If both are right, the vessel is too small."
                            : "The pressure rises further than described. Compare the relief valve's plate with the description,"
                                    + " and have a valve that opens too late replaced."));
        }
        if (heated < 0) {
            return Optional.of(
                    plain("The water expands less than it should, or finds a way out. See that the heater came on and"
                            + " went off, and that no tap was opened. Then look for a leak, and at the check valve."));
        }
        if (off.containsKey(Kind.NEXT_MORNING)) {
            return Optional.of(plain(
                    off.get(Kind.NEXT_MORNING) > 0
                            ? "The pressure stayed up. The heater may have come on again in the night; if not, the reducing valve"
                                    + " does not close tight."
                            : "Water was lost in the night: at a tap, at a leak, or back through the check valve."));
        }
        return Optional.of(plain("It was read too early or too late, or the supply changed. Read it again."));
    }

    List<Statement> remarks(boolean reseatVaries) {
        CheckSheet sheet = check.sheet();
        List<Statement> remarks = new ArrayList<>();
        List<Statement> vessels = house.vessels().stream()
                .map(vessel -> plain("a vessel of ")
                        .then(volume(vessel.volume()))
                        .then(", charged to ")
                        .then(gauge(vessel.precharge(), air)))
                .toList();
        remarks.add(
                vessels.isEmpty()
                        ? plain("This sheet is for the house without an expansion vessel.")
                        : plain("This sheet is for the house with ")
                                .then(Statement.joined(", and ", vessels))
                                .then("."));
        charge().ifPresent(remarks::add);
        byTheHour().ifPresent(remarks::add);
        Measure dial = gauge(check.gauge().span());
        remarks.add(plain("Use a gauge that reads from 0 to ").then(dial).then(" or the next usual range."));
        if (isAboveWorkingPressure(sheet)) {
            remarks.add(plain(
                    "In this check a reading above the tank's working pressure is expected. Ask a licensed professional"
                            + " before the heater is used."));
        }
        if (!sheet.heatUp().finished()) {
            remarks.add(
                    plain(
                            "The heater is not expected to cycle after the draw, so the highest reading is that of the whole ten hours."));
        }
        remarks.add(plain("The hottest water is expected to reach ")
                .then(temperature(sheet.heatUp().hottest()))
                .then("; take care when it is drawn."));
        remarks.add(drips(sheet.drips()));
        mixed().ifPresent(remarks::add);
        remarks.add(range(reseatVaries));
        return remarks;
    }

    private boolean isAboveWorkingPressure(CheckSheet sheet) {
        double highest = sheet.readings().stream()
                .mapToDouble(CheckSheet.Reading::expectedGauge)
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
        return house.tank().workingPressureGiven()
                && Limit.passes(highest, house.tank().workingPressure().gauge(air));
    }

    /** That some of the houses within what is uncertain drip in the check and others do not; empty where all do the same. */
    Optional<Statement> mixed() {
        int dripping = check.dripping().count();
        return Optional.of(dripping)
                .filter(some -> some > 0 && some < check.dripping().of())
                .map(some -> plain("After the check's draw of ")
                        .then(volume(check.sheet().procedure().amount()))
                        .then(", a relief valve discharges in " + some + " of "
                                + check.dripping().of()
                                + " houses that differ from this one within the uncertainties."));
    }

    private Statement range(boolean reseatVaries) {
        return plain(
                        "The range covers nine in ten of " + check.result().completed()
                                + " simulated houses within the uncertainties of this house, and the error of a dial gauge that reads to ")
                .then(gauge(check.gauge().span()))
                .then(" (class 1.6 of EN 837-1)."
                        + (reseatVaries
                                ? " The reseat pressure is assumed, and varied from 70 % to 95 % of the set"
                                        + " pressure."
                                : "")
                        + " Other assumptions, such as the heat loss, were not varied. If a reading is outside its range,"
                        + " find out why before"
                        + " you change anything.");
    }

    /** What the vessel should be charged to, by the rule of the findings, if it is not and the supply is to stay. */
    private Optional<Statement> charge() {
        return PrechargeTarget.of(house)
                .filter(target -> house.vessels().size() == 1)
                .filter(PrechargeTarget::isAllowed)
                .filter(target -> !PrechargeTarget.maySupplyComeDown(house))
                .filter(target -> !PrechargeTarget.isMet(house, Doubts.NONE))
                .map(target -> plain("The vessel should be charged to ")
                        .then(gauge(target.pumpToGauge()))
                        .then("; once it is, this sheet no longer applies and a new run is needed."));
    }

    /** With which supply the check begins, where that differs by the hour: by day a gauge shows less than at night. */
    private Optional<Statement> byTheHour() {
        DoubleSummaryStatistics supply = house.supply().mains().entries().keySet().stream()
                .mapToDouble(time -> house.supply().staticAbsolute(time, air) - air)
                .summaryStatistics();
        double start = house.supply().staticAbsolute(house.start().timeOfDay(), air) - air;
        return supply.getMax() - supply.getMin() > HOUR_DIFFERS
                ? Optional.of(plain("The supply differs by the hour, from ")
                        .then(gauge(supply.getMin()))
                        .then(" to ")
                        .then(gauge(supply.getMax()))
                        .then(". This sheet begins with ")
                        .then(gauge(start))
                        .then(": begin at an hour at which the gauge shows that, cold and with no water running."))
                : Optional.empty();
    }

    private static Statement drips(CheckSheet.Drips drips) {
        if (!drips.expected()) {
            return plain(
                    "No relief valve is expected to discharge after the draw. The heat-up of the cold tank before it"
                            + " expands more water, so a valve may drip then.");
        }
        Statement volume = plain("Relief valves are expected to discharge ")
                .then(volume(drips.volume()))
                .then(" between closing the taps and the next morning");
        Statement first = drips.firstAfter().isPresent()
                ? volume.then(", first after about ")
                        .then(about(drips.firstAfter().getAsDouble()))
                : volume;
        return first.then(drips.whenCold() > 0 ? "; one runs even while the house is cold and at rest." : ".");
    }
}
