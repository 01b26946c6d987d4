package io.github.heatswell.finding;

import static io.github.heatswell.finding.Measure.gauge;

import io.github.heatswell.plant.ExpansionVessel;
import java.util.function.Consumer;

/**
 * The charge of the vessel against the pressure the supply stands at. The charge changes with the temperature of the gas
 * as the absolute pressure does (Gay-Lussac), so it is brought to the temperature the vessel stands in first.
 */
final class PrechargeRule implements Rule {

    /** How exactly a hand-held gauge can be read (Pa); common practice, no source. */
    private static final double READING = 0.1e5;
    /** How far below the supply a charge may lie (Pa): 0.2 bar to 0.3 bar by the trade page, and the reading. */
    private static final double ALLOWED_BELOW = 0.4e5;
    /** A charge this far (Pa) out of its band is far off; own judgement. */
    private static final double FAR_OFF = 1e5;

    @Override
    public void look(Case subject, Consumer<Finding> found) {
        if (!subject.open()) {
            subject.soundVessel().ifPresent(vessel -> look(subject, vessel, found));
        }
    }

    private static void look(Case subject, ExpansionVessel vessel, Consumer<Finding> found) {
        double charge = charge(subject, vessel);
        double low = subject.lowestStatic() - subject.lift(vessel.height()) - ALLOWED_BELOW;
        double high = subject.highestStatic() - subject.lift(vessel.height());
        if (charge > high + READING + SAME) {
            found.accept(above(subject, vessel, charge, high));
        } else if (charge < low - SAME) {
            found.accept(below(subject, vessel, charge, low));
        }
    }

    /** The charge (Pa, gauge) at the temperature the vessel stands in. */
    static double charge(Case subject, ExpansionVessel vessel) {
        double room = subject.house.site().roomTemperature();
        double ratio = vessel.temperature().orElse(room) / vessel.chargedAt().orElse(room);
        return vessel.precharge().absolute(subject.atmosphere) * ratio - subject.atmosphere;
    }

    /** Whether the charge is so far off that it has to be put right before the size can be judged. */
    static boolean farOff(Case subject, ExpansionVessel vessel) {
        double charge = charge(subject, vessel);
        double lift = subject.lift(vessel.height());
        return charge > subject.highestStatic() - lift + FAR_OFF + SAME
                || charge < subject.lowestStatic() - lift - FAR_OFF - SAME;
    }

    private static Finding above(Case subject, ExpansionVessel vessel, double charge, double high) {
        return draft("precharge-above-static", charge - high)
                .says(
                        "The vessel is charged to {}" + note(subject, vessel)
                                + ", above the {} the supply stands at there, so it takes no water until the pressure has"
                                + " climbed by {}.",
                        gauge(charge),
                        gauge(high),
                        new Measure(Measure.Kind.PRESSURE_DIFFERENCE, charge - high))
                .found(gauge(charge))
                .limit(gauge(high))
                .advises(
                        "Turn the heater off and let it cool, cut the vessel off and drain its water side, then let gas"
                                + " out until a tyre gauge shows {}.",
                        gauge(high))
                .by(Codes.PRECHARGE);
    }

    private static Finding below(Case subject, ExpansionVessel vessel, double charge, double low) {
        double lowest = low + ALLOWED_BELOW;
        double full = Math.min(vessel.acceptance(), 1 - (charge + subject.atmosphere) / (lowest + subject.atmosphere));
        return draft("precharge-below-static", lowest - charge)
                .says(
                        "The vessel is charged to {}" + note(subject, vessel)
                                + ", below the {} the supply stands at there, so {} of it is full of cold water before any"
                                + " is heated.",
                        gauge(charge),
                        gauge(lowest),
                        Measure.share(full))
                .found(gauge(charge))
                .limit(gauge(low))
                .advises(
                        "Turn the heater off and let it cool, cut the vessel off and drain its water side, then pump it up"
                                + " until a tyre gauge shows {}. If it does not hold, have it replaced.",
                        gauge(lowest))
                .by(Codes.PRECHARGE);
    }

    private static Finding.Draft draft(String id, double off) {
        return Finding.draft(id, off > FAR_OFF + SAME ? Severity.FAULT : Severity.CAUTION);
    }

    private static String note(Case subject, ExpansionVessel vessel) {
        double difference = charge(subject, vessel) - vessel.precharge().gauge(subject.atmosphere);
        return Math.abs(difference) < SAME ? "" : " at the temperature it stands in";
    }
}
