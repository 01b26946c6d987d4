package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.NamedValue;
import java.util.function.Consumer;

/**
 * The precharge of the vessel against the static supply pressure. The charge changes with the temperature of the gas
 * as the absolute pressure does (Gay-Lussac), so it is brought to the temperature the vessel stands in first.
 */
final class PrechargeRule implements Rule {

    /** How exactly a hand-held gauge can be read (Pa); common practice, no source. */
    private static final double READING = 0.1e5;
    /** A charge this far (Pa) out of its band is far off; our own judgement. */
    private static final double FAR_OFF = 1e5;

    /** A vessel higher than this above the drain cock (m) is said to be so; our own judgement. */
    private static final double CLEARLY_ABOVE = 1;

    private static final String EMPTY =
            "Turn the heater off and let it cool. Close the vessel's isolating valve or, if it has none, shut the cold feed, and drain"
                    + " its water side; leave the drain open. ";

    private static final String BACK =
            "Before the heater goes back on, close the drain, open the valve again, fill the tank and run a hot tap until no air"
                    + " comes.";

    private static final String EMPTY_TANK =
            "Turn the heater off and let it cool. Shut the cold feed, open a hot tap and empty the tank through its drain cock; leave"
                    + " the drain open. Wait until the empty tank is as warm as the room. ";

    private static final String BACK_IN_TANK =
            "Before the heater goes back on, close the drain, fill the tank and run a hot tap until no air comes.";

    /** Where the supply stands above what vessel or tank are made for. */
    private static final String LOWER_SUPPLY =
            "Do not charge the vessel to the supply pressure of {}: the vessel or the tank is rated for only {}. Turn the"
                    + " heater off and let it cool. Have the supply pressure lowered by a reducing valve, then the precharge set"
                    + " to match it.";

    /** Where a relief valve opens at the supply's own pressure. */
    private static final String SUPPLY_FIRST =
            "Leave the precharge as it is for now: the supply alone opens the relief valve, and no precharge changes that. Turn"
                    + " the heater off and let it cool. Have the supply pressure lowered by a reducing valve, then the precharge"
                    + " set to match it.";

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        subject.house.vessels().stream()
                .filter(vessel -> vessel.condition() != ExpansionVessel.Condition.WATERLOGGED)
                .forEach(vessel -> look(subject, vessel, found));
    }

    private static void look(AssessmentContext subject, ExpansionVessel vessel, Consumer<CandidateFinding> found) {
        if (subject.isOutOfReach(vessel)) {
            found.accept(outOfReach(subject, vessel));
            return;
        }
        boolean wrong = isWrong(subject, vessel);
        boolean first = subject.house.vessel().filter(vessel::equals).isPresent();
        if (wrong && first && subject.prechargeIsUnknown()) {
            found.accept(unknown(subject, vessel));
        } else if (tooHigh(subject, vessel)) {
            found.accept(above(subject, vessel));
        } else if (tooLow(subject, vessel)) {
            found.accept(below(subject, vessel));
        }
    }

    /** Whether the charge lies out of its band. */
    static boolean isWrong(AssessmentContext subject, ExpansionVessel vessel) {
        return tooHigh(subject, vessel) || tooLow(subject, vessel);
    }

    private static boolean tooHigh(AssessmentContext subject, ExpansionVessel vessel) {
        return Rule.exceeds(charge(subject, vessel), highest(subject, vessel) + READING);
    }

    private static boolean tooLow(AssessmentContext subject, ExpansionVessel vessel) {
        return Rule.exceeds(PrechargeTarget.of(subject, vessel).tooLowGauge(), charge(subject, vessel));
    }

    /** The highest static supply pressure (Pa, gauge) at the vessel. */
    private static double highest(AssessmentContext subject, ExpansionVessel vessel) {
        return PrechargeTarget.of(subject, vessel).pumpToGauge();
    }

    private static double lowest(AssessmentContext subject, ExpansionVessel vessel) {
        return subject.lowestStatic() - subject.lift(vessel.height());
    }

    /** The charge (Pa, gauge) at the temperature the vessel stands in, in a tank at that of its cold fill. */
    static double charge(AssessmentContext subject, ExpansionVessel vessel) {
        double room = subject.house.site().roomTemperature();
        double around = subject.house.gasAtRest(vessel);
        return vessel.chargeAbsolute(subject.atmosphere, room, around) - subject.atmosphere;
    }

    /** Whether the charge is so far off that it has to be put right before the size can be judged. */
    static boolean farOff(AssessmentContext subject, ExpansionVessel vessel) {
        double charge = charge(subject, vessel);
        double lift = subject.lift(vessel.height());
        return Rule.exceeds(charge, subject.highestStatic() - lift + FAR_OFF)
                || Rule.exceeds(subject.lowestStatic() - lift - FAR_OFF, charge);
    }

    /** No charge matches a supply that does not rise to the vessel. */
    private static CandidateFinding outOfReach(AssessmentContext subject, ExpansionVessel vessel) {
        Measure supply = gauge(subject.lowestStatic());
        Finding.Draft draft =
                Finding.draft("vessel-above-supply", Severity.FAULT).compares(Deciding.STATIC);
        String comma = subject.hasSeveralVessels() ? "," : "";
        draft = vessel.height() > CLEARLY_ABOVE
                ? draft.says(
                        "The supply, {} at the drain cock, hardly reaches " + subject.called(vessel) + comma
                                + " {} above it: no precharge can be matched to that, and air may be drawn in there.",
                        supply,
                        new Measure(Measure.Kind.LENGTH, vessel.height()))
                : draft.says(
                        "The supply is only at {}: no precharge"
                                + (subject.hasSeveralVessels() ? " of " + subject.called(vessel) : "")
                                + " can be matched to that.",
                        supply);
        return draft.found(supply)
                .limit(gauge(subject.leastAt(vessel)))
                .advisesWork(
                        "Check the height of the vessel and the supply pressure in the description. If both are right, have"
                                + " the vessel moved down beside the tank, or the supply corrected.")
                .by(Authority.computed("weight of the water between the drain cock and the vessel"));
    }

    /** Nothing was measured, so nothing is wrong yet. */
    private static CandidateFinding unknown(AssessmentContext subject, ExpansionVessel vessel) {
        double charge = charge(subject, vessel);
        boolean high = tooHigh(subject, vessel);
        double supply = high ? highest(subject, vessel) : lowest(subject, vessel);
        String measure = (vessel.isInTank()
                        ? EMPTY_TANK + "Then measure"
                        : "Turn the heater off and let it cool. Close the vessel's isolating valve, if it has one, drain its water"
                                + " side and measure")
                + " the precharge with a tyre gauge";
        String again = " Then run again with that reading. " + back(vessel);
        Finding.Draft draft = Finding.draft("precharge-unknown", Severity.CAUTION)
                .says(
                        "The precharge of " + subject.called(vessel)
                                + " is not known. Assumed to be {}, it would be " + (high ? "above" : "below")
                                + " the {} supply pressure there.",
                        gauge(charge),
                        gauge(supply))
                .found(gauge(charge))
                .limit(gauge(supply));
        return (PrechargeTarget.of(subject, vessel).afterSupply()
                        ? draft.advises(measure + "." + again)
                        : draft.advises(
                                measure + ": it should show " + reading(vessel) + "." + again, shown(subject, vessel)))
                .by(Codes.PRECHARGE);
    }

    private static CandidateFinding above(AssessmentContext subject, ExpansionVessel vessel) {
        double charge = charge(subject, vessel);
        double high = highest(subject, vessel);
        String effect = works(vessel)
                ? ", above the {} supply pressure there: it takes no water until the pressure has climbed by {}."
                : ", above the {} supply pressure there: back in service it would take no water until the pressure has"
                        + " climbed by {}.";
        Finding.Draft draft = draft("precharge-above-static", charge - high)
                .says(
                        Rule.sentence(subject.called(vessel)) + " is charged to {}" + note(subject, vessel) + effect,
                        gauge(charge),
                        gauge(high),
                        new Measure(Measure.Kind.PRESSURE_DIFFERENCE, charge - high))
                .found(gauge(charge))
                .limit(gauge(high));
        return (waitsForSupply(subject, vessel)
                        ? lowerSupply(subject, vessel, draft)
                        : draft.advises(
                                supplyFirst(subject) + empty(vessel)
                                        + "Let air out at the vessel's air valve until a tyre gauge shows "
                                        + reading(vessel)
                                        + ". " + back(vessel),
                                shown(subject, vessel)))
                .by(Codes.PRECHARGE);
    }

    private static CandidateFinding below(AssessmentContext subject, ExpansionVessel vessel) {
        double charge = charge(subject, vessel);
        double lowest = lowest(subject, vessel);
        double gas = vessel.gasShare(charge + subject.atmosphere, lowest + subject.atmosphere, 1);
        double full = Math.min(vessel.acceptance(), 1 - gas);
        boolean varies = Rule.exceeds(highest(subject, vessel), lowest);
        String least = varies ? "at least " : "";
        String effect = ", below the {} supply pressure there"
                + (varies ? " at its lowest" : "")
                + (works(vessel)
                        ? ": " + least + "{} of it is full of cold water before any is heated."
                        : ": back in service, " + least + "{} of it would be full of cold water before any is heated.");
        Finding.Draft draft = draft("precharge-below-static", lowest - charge)
                .says(
                        Rule.sentence(subject.called(vessel)) + " is charged to {}" + note(subject, vessel) + effect,
                        gauge(charge),
                        gauge(lowest),
                        Measure.share(full))
                .found(gauge(charge))
                .limit(gauge(PrechargeTarget.of(subject, vessel).tooLowGauge()));
        return (waitsForSupply(subject, vessel)
                        ? lowerSupply(subject, vessel, draft)
                        : draft.advises(
                                supplyFirst(subject) + empty(vessel)
                                        + "Pump it up by hand until a tyre gauge shows " + reading(vessel)
                                        + ", never above the pressure on the vessel's plate. If it does not hold, have it"
                                        + " replaced. " + back(vessel),
                                shown(subject, vessel)))
                .by(Codes.PRECHARGE);
    }

    /** A vessel in the tank has no valve and no drain of its own. */
    private static String empty(ExpansionVessel vessel) {
        return vessel.isInTank() ? EMPTY_TANK : EMPTY;
    }

    private static String back(ExpansionVessel vessel) {
        return vessel.isInTank() ? BACK_IN_TANK : BACK;
    }

    /** The places of what a tyre gauge has to show: in a tank with the temperature at which it does. */
    private static String reading(ExpansionVessel vessel) {
        return vessel.isInTank() ? "{} with the gas at {}" : "{}";
    }

    /** That reading: the gas of a vessel in an empty tank is as warm as the room, and has the charge it should have in cold water. */
    private static Measure[] shown(AssessmentContext subject, ExpansionVessel vessel) {
        double charge = highest(subject, vessel);
        if (!vessel.isInTank()) {
            return new Measure[] {gauge(charge)};
        }
        double room = subject.house.site().roomTemperature();
        double warm = (charge + subject.atmosphere) * room / subject.house.gasAtRest(vessel) - subject.atmosphere;
        return new Measure[] {gauge(warm), Measure.temperature(room)};
    }

    private static boolean waitsForSupply(AssessmentContext subject, ExpansionVessel vessel) {
        return !PrechargeTarget.of(subject, vessel).isAllowed();
    }

    private static Finding.Draft lowerSupply(AssessmentContext subject, ExpansionVessel vessel, Finding.Draft draft) {
        PrechargeTarget target = PrechargeTarget.of(subject, vessel);
        return target.isBeyondPlate()
                ? draft.advises(LOWER_SUPPLY, gauge(target.pumpToGauge()), gauge(target.mostGauge()))
                : draft.advises(SUPPLY_FIRST);
    }

    private static boolean works(ExpansionVessel vessel) {
        return vessel.condition() == ExpansionVessel.Condition.SOUND;
    }

    /** The charge follows the supply, so a supply that is to be lowered comes first, and a vessel that stays is the one to charge. */
    private static String supplyFirst(AssessmentContext subject) {
        if (new Remedy(subject).isTooSmall()) {
            return "Even with the right charge, this vessel is too small at the present supply. Before its charge is corrected, let"
                    + " 'heatswell size' name vessel and supply: the precharge has to match that supply. ";
        }
        return PrechargeTarget.maySupplyComeDown(subject)
                ? "If the supply pressure is to be lowered, do that first: the precharge has to match it. "
                : "";
    }

    private static Finding.Draft draft(String id, double off) {
        return Finding.draft(id, Rule.exceeds(off, FAR_OFF) ? Severity.FAULT : Severity.CAUTION)
                .compares(Deciding.STATIC, NamedValue.ACCEPTANCE, NamedValue.COLD);
    }

    private static String note(AssessmentContext subject, ExpansionVessel vessel) {
        double difference = charge(subject, vessel) - vessel.precharge().gauge(subject.atmosphere);
        return Math.abs(difference) < SAME
                ? ""
                : " at the temperature of the " + (vessel.isInTank() ? "cold water" : "air") + " around it";
    }
}
