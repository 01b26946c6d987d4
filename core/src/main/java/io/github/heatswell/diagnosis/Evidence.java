package io.github.heatswell.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Evidence of one part of the log about a hypothesis, relative to the best one.
 *
 * @param part which part
 * @param from when it is first met (s)
 * @param count how many readings it has
 * @param meanDifference mean of forecast minus log over the part (Pa)
 * @param excess excess of the part's sum of squares over the best hypothesis (-); each unit makes the hypothesis less
 *     likely by a factor of 1.6
 * @param missed whether the hypothesis misses the part by more than the uncertainty of the readings, whatever others do
 */
public record Evidence(Part part, double from, int count, double meanDifference, double excess, boolean missed) {

    private static final double TELLING = 6;

    /**
     * Checks that the part is there.
     *
     * @param part which part
     * @param from when it is first met (s)
     * @param count how many readings it has
     * @param meanDifference mean of forecast minus log over the part (Pa)
     * @param excess excess of the part's sum of squares over the best hypothesis (-)
     * @param missed whether the hypothesis misses the part by more than the uncertainty of the readings
     */
    public Evidence {
        Objects.requireNonNull(part, "part");
    }

    /**
     * Whether this part speaks against the hypothesis.
     *
     * @return true if the part alone makes it twenty times less likely than the best, or is missed
     */
    public boolean against() {
        return excess > TELLING || missed;
    }

    /** Goes through the parts of a log and looks where a hypothesis does worse than the best. */
    static final class Finder {

        private final Target target;
        private final PressureLog log;
        private final double[] ofBest;

        Finder(Target target, Forecaster.Forecast best) {
            this.target = target;
            log = target.log();
            ofBest = target.squares(best);
        }

        /** About a forecast that leaves some readings unexplained. */
        List<Evidence> about(Forecaster.Forecast forecast, List<Misfit.Stray> strays) {
            double[] squares = target.squares(forecast);
            List<Evidence> all = new ArrayList<>();
            for (Part part : Part.values()) {
                Evidence evidence = about(part, forecast, squares, strays);
                if (evidence.count() > 0) {
                    all.add(evidence);
                }
            }
            return List.copyOf(all);
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
            return new Evidence(part, from, count, count == 0 ? 0 : difference / count, excess, missed);
        }

        /** What goes on at a reading in the run of the hypothesis itself: in another's a valve may be open that is shut in this. */
        private Part part(Forecaster.Forecast forecast, int i) {
            return switch (forecast.regimes()[i]) {
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

    /** A part of a log, by what goes on at its readings in the run of the hypothesis, which need not be what went on in the house. */
    public enum Part {
        /** The pressure is that of the supply, or is refilled to it: before the heat-up, and while water is drawn. */
        AT_SUPPLY("while the supply holds the pressure"),
        /** The system is shut in and the pressure rises. */
        RISE("the rise while the system is shut in"),
        /** A relief valve is open. */
        VALVE_OPEN("the time in which a relief valve is open"),
        /** The system is shut in and the pressure falls or rests. */
        FALL("the fall and the rest afterwards");

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
