package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.diagnosis.BeyondLimit;
import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Overheat;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.SeparatingCheck;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.system.HotWaterSystem;
import java.util.Optional;
import java.util.Set;

/** What to read or log next. Immutable. */
final class NextReading {

    private static final Set<SiteCheck> HEATED = Set.of(
            SiteCheck.HEAT_UP_MAXIMUM,
            SiteCheck.NEXT_MORNING,
            SiteCheck.CAUGHT_VOLUME,
            SiteCheck.PEAK_AFTER_DRAW,
            SiteCheck.MORNING_AFTER_DRAW,
            SiteCheck.HOT_TAP);
    /** Readings this close (s) leave little between them. */
    private static final double CLOSE = 150;

    private final DiagnosisResult result;
    private final HotWaterSystem house;
    private final Optional<PressureLog> log;
    private final Set<SiteCheck> read;
    private final ReadingHazards hazards;

    /** After a diagnosis, with what was logged and read. */
    NextReading(
            DiagnosisResult result,
            HotWaterSystem house,
            Optional<PressureLog> log,
            Set<SiteCheck> read,
            ReadingHazards hazards) {
        this.result = result;
        this.house = house;
        this.log = log;
        this.read = read;
        this.hazards = hazards;
    }

    /**
     * In whole sentences, with who is to do it; empty if nothing is left to tell.
     *
     * @param asDescribed whether the readings are explained without any fault
     */
    Optional<Statement> words(boolean asDescribed) {
        if (hazards.isByReading()) {
            return Optional.of(hazards.stayOff());
        }
        if (result.beyond().stream().anyMatch(BeyondLimit::standsAlone)) {
            return Optional.of(plain(
                    "Next, look up the reading that stands alone. If it is right, leave the heater off and call a licensed"
                            + " professional; if it is a slip, correct it and diagnose again."));
        }
        if (hazards.hazard().isPresent()
                && result.check()
                        .filter(check -> HEATED.contains(check.check()))
                        .isPresent()) {
            return Optional.of(
                    plain("Next, leave the heater off and call a licensed professional: a surer answer would take"
                            + " heating."));
        }
        if (result.mayBeDeadGauge() && !asDescribed) {
            return Optional.of(otherGauge());
        }
        Optional<Statement> check = result.check().map(this::check);
        return result.misfit()
                ? Optional.of(plain(afresh()))
                : check.isPresent() || result.isDecided() || asDescribed
                        ? check
                        : Optional.of(suspected()
                                .map(name -> plain("Next, read the air valve of '" + name
                                        + "' with a tyre gauge, with the heater off and cold and the water side empty. Put the"
                                        + " reading into the description as its precharge, and diagnose again."))
                                .orElseGet(this::settling));
    }

    /** A gauge that may be dead shows the same whatever the pressure: no reading of it tells. */
    Statement otherGauge() {
        return plain(
                "Next, open the cock of the gauge, or screw another gauge onto a hose tap, and log a heat-up with every tap"
                        + " shut." + heating());
    }

    /** The reading that settles a number of theirs, where none tells the causes apart; of a seat, what paper shows. */
    private Statement settling() {
        if (!read.contains(SiteCheck.HOT_TAP) && hazards.asksForThermometer()) {
            return plain("Next, read " + SiteCheck.HOT_TAP.words()
                    + ", with a thermometer and not a hand, and diagnose again with it." + heating(SiteCheck.HOT_TAP));
        }
        String paper = result.alike().stream().noneMatch(fit -> fit.blames(Cause.RELIEF_SEAT_WEEPS))
                ? ""
                : " Lay dry paper under the outlet of the relief valve an hour after the heater went off: if it gets wet, that"
                        + " points to a leaking seat.";
        return plain(result.alike().size() > 1 ? "No single reading tells them apart. " : "")
                .then(result.unsettled(read)
                        .map(one -> plain("Next, read "
                                + one.settledBy().orElseThrow().words() + ", to settle the "
                                + one.parameter().words() + ", and diagnose again with it." + paper
                                + heating(one.settledBy().orElseThrow())))
                        .orElse(plain((paper.isEmpty() ? "" : paper.strip() + " ")
                                + "Leave it to a licensed professional.")));
    }

    /** Which of several vessels the likeliest cause is about. */
    private Optional<String> suspected() {
        return Optional.of(result.best().device())
                .filter(name -> house.hasSeveralVessels())
                .filter(house.vesselNames()::contains);
    }

    /** What to do where nothing explains the readings: another log, unless this one was as close as can be. */
    private String afresh() {
        boolean close = log.filter(one -> one.showsHeatUp() && one.end() < CLOSE * (one.count() - 1))
                .isPresent();
        return close
                ? "Next, read the plates of tank, heater and relief valve again and correct the description. Note every draw,"
                        + " and whether the tank was warm at the first reading."
                : "Next, log one heat-up of a cold tank with every tap shut, a reading every minute or two."
                        + heating();
    }

    private Statement check(SeparatingCheck check) {
        return plain((result.tested().size() == 1 ? "Next, to make sure, read " : "Next, to tell them apart, read ")
                        + check.check().words() + ": ")
                .then(reading(check.check(), check.expectedFirst()))
                .then(" if " + check.first().words() + ", ")
                .then(reading(check.check(), check.expectedSecond()))
                .then(" if " + check.second().words() + "." + heating(check.check()));
    }

    private static Measure reading(SiteCheck check, double value) {
        return switch (check.unit()) {
            case "Pa" -> Measure.gauge(value);
            case "K" -> Measure.temperature(value);
            case "" -> Measure.share(value);
            default -> Measure.volume(value);
        };
    }

    /** Who is to do a check that takes heating while somebody may come to harm by it; a sentence with a space before it, or nothing. */
    String heating(SiteCheck check) {
        return HEATED.contains(check) ? heating() : "";
    }

    private String heating() {
        if (hazards.hazard().isPresent()) {
            return " This takes heating, and there is a hazard: leave it to a licensed professional.";
        }
        return result.overheat()
                .map(hot -> " This takes heating: have the "
                        + (hot.exceeded() == Overheat.Device.THERMOSTAT ? "thermostat" : "mixing valve")
                        + " checked first.")
                .orElse("");
    }
}
