package io.github.heatswell.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What one part of the readings says about a hypothesis, relative to the best one.
 *
 * @param part which part
 * @param check which reading on site; empty for a part of the log
 * @param from when it begins (s)
 * @param count how many readings it has
 * @param meanDifference mean of forecast minus log over the part (Pa); 0 where no pressure of the log is meant
 * @param excess excess of the part's sum of squares over the best hypothesis (-); each unit makes the hypothesis less
 *     likely by a factor of 1.6
 * @param missed whether the hypothesis misses the part by more than the uncertainty of the readings, whatever others do
 */
public record Evidence(
        Part part,
        Optional<SiteCheck> check,
        double from,
        int count,
        double meanDifference,
        double excess,
        boolean missed) {

    private static final double TELLING = 6;

    /**
     * Checks that the part is there.
     *
     * @param part which part
     * @param check which reading on site; empty for a part of the log
     * @param from when it begins (s)
     * @param count how many readings it has
     * @param meanDifference mean of forecast minus log over the part (Pa); 0 where no pressure of the log is meant
     * @param excess excess of the part's sum of squares over the best hypothesis (-)
     * @param missed whether the hypothesis misses the part by more than the uncertainty of the readings
     */
    public Evidence {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(check, "check");
    }

    /**
     * What it is about.
     *
     * @return the part or the reading in words, without full stop
     */
    public String words() {
        return check.map(SiteCheck::words).orElse(part.words());
    }

    /** A part of the readings, and when it begins (s). */
    record About(Part part, Optional<SiteCheck> check, double from) {

        static About of(Part part, double from) {
            return new About(part, Optional.empty(), from);
        }
    }

    /**
     * Whether this part speaks against the hypothesis.
     *
     * @return true if the part alone makes it twenty times less likely than the best, or is missed
     */
    public boolean against() {
        return excess > TELLING || missed;
    }

    /** Whether the gauge alone says it, or somebody who saw what it must show: not a second kind of evidence. */
    boolean isOfGauge() {
        return check.map(SiteCheck::byLoggedGauge)
                .orElseGet(() -> part != Part.TEMPERATURES && part != Part.FIRST_BURN && part != Part.SEEN_DISCHARGE);
    }

    /** Goes through the parts of a log and looks where a hypothesis does worse than the best. */
    static final class Finder {

        private final Target target;
        private final PressureLog log;
        private final double[] ofBest;
        private final double[] othersOfBest;

        Finder(Target target, Forecaster.Forecast best) {
            this.target = target;
            log = target.log();
            ofBest = log == null ? new double[0] : target.squares(best);
            othersOfBest = target.ofOthers(best);
        }

        /** About a forecast that leaves some readings unexplained. */
        List<Evidence> about(Forecaster.Forecast forecast, List<Misfit.Stray> strays) {
            double[] squares = log == null ? new double[0] : target.squares(forecast);
            List<Evidence> all = new ArrayList<>();
            for (Part part : log == null ? new Part[0] : Part.values()) {
                Evidence evidence = about(part, forecast, squares, strays);
                if (evidence.count() > 0) {
                    all.add(evidence);
                }
            }
            all.addAll(others(forecast));
            return List.copyOf(all);
        }

        /** About what was read and seen besides the pressures of the log. */
        private List<Evidence> others(Forecaster.Forecast forecast) {
            List<About> abouts = target.others();
            double[] residuals = target.ofOthers(forecast);
            Map<String, Evidence> found = new LinkedHashMap<>();
            for (int i = 0; i < residuals.length; i++) {
                About about = abouts.get(i);
                double square = residuals[i] * residuals[i];
                double excess = square - othersOfBest[i] * othersOfBest[i];
                boolean missed = square > 1 + Misfit.MORE_THAN_SCATTER * Math.sqrt(2);
                found.merge(
                        about.part + about.check.map(SiteCheck::name).orElse(""),
                        new Evidence(about.part, about.check, about.from, 1, 0, excess, missed),
                        (one, other) -> new Evidence(
                                one.part,
                                one.check,
                                Math.min(one.from, other.from),
                                one.count + other.count,
                                0,
                                one.excess + other.excess,
                                one.missed || other.missed));
            }
            return List.copyOf(found.values());
        }

        private Evidence about(Part part, Forecaster.Forecast forecast, double[] squares, List<Misfit.Stray> strays) {
            double from = Double.NaN;
            int count = 0;
            double difference = 0;
            double excess = 0;
            double sum = 0;
            double residuals = 0;
            boolean stray = false;
            for (int i = 0; i < log.count(); i++) {
                if (part(forecast, i) == part) {
                    from = count == 0 ? log.time(i) : from;
                    count++;
                    difference += forecast.gauge()[i] - log.gauge(i);
                    excess += squares[i] - ofBest[i];
                    sum += squares[i];
                    residuals += target.share(i);
                    double time = log.time(i);
                    stray |= strays.stream().anyMatch(one -> one.time() == time);
                }
            }
            boolean missed = stray || sum > residuals + Misfit.MORE_THAN_SCATTER * Math.sqrt(2 * residuals);
            return new Evidence(
                    part, Optional.empty(), from, count, count == 0 ? 0 : difference / count, excess, missed);
        }

        /** What goes on at a reading in the run of the hypothesis itself: in another's a valve may be open that is shut in this. */
        private Part part(Forecaster.Forecast forecast, int i) {
            return switch (forecast.regimes().apply(i)) {
                case RELIEVING -> Part.VALVE_OPEN;
                case FED, FILLING, RETURNED, UNSEALED -> Part.AT_SUPPLY;
                case SEALED -> {
                    int next = Math.min(i + 1, log.count() - 1);
                    int before = Math.max(i - 1, 0);
                    yield forecast.gauge()[next] > forecast.gauge()[before] ? Part.RISE : Part.FALL;
                }
            };
        }
    }

    /**
     * A part of the readings. Parts of a log are named by what happens at its readings in the run of the hypothesis, which need
     * not be what happened in the house.
     */
    public enum Part {
        /** The pressure is that of the supply, or is refilled to it: before the heat-up, and while water is drawn. */
        AT_SUPPLY("while the supply holds the pressure"),
        /** The system is shut in and the pressure rises. */
        RISE("the rise while the system is shut in"),
        /** A relief valve is open. */
        VALVE_OPEN("while a relief valve is open"),
        /** The system is shut in and the pressure falls or rests. */
        FALL("the fall and the rest after it"),
        /** The temperatures that were logged with the pressures. */
        TEMPERATURES("the temperatures of the log"),
        /** How long the heater ran at first, by its column. */
        FIRST_BURN("how long the heater ran at first"),
        /** When somebody saw the heater on or off. */
        SEEN_HEATER("when the heater was seen on or off"),
        /** When somebody saw the relief pipe drip or dry, or caught water. */
        SEEN_DISCHARGE("what was seen of the relief pipe"),
        /** That nobody drew water for a time; no cause has a draw then. */
        SEEN_TAPS("the time when no water was drawn"),
        /** A reading on site. */
        ON_SITE("the readings on site");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        /**
         * The part in words.
         *
         * @return a description without full stop
         */
        public String words() {
            return words;
        }
    }
}
