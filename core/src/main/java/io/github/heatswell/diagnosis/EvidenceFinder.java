package io.github.heatswell.diagnosis;

import io.github.heatswell.result.Regime;
import java.util.ArrayList;
import java.util.List;

/** Goes through the parts of a log and looks where a hypothesis does worse than the best. */
final class EvidenceFinder {

    private final PressureLog log;
    private final Forecast best;

    EvidenceFinder(PressureLog log, Forecast best) {
        this.log = log;
        this.best = best;
    }

    List<Evidence> about(Forecast forecast) {
        List<Evidence> all = new ArrayList<>();
        for (LogPart part : LogPart.values()) {
            Evidence evidence = about(part, forecast);
            if (evidence.count() > 0) {
                all.add(evidence);
            }
        }
        return List.copyOf(all);
    }

    private Evidence about(LogPart part, Forecast forecast) {
        double from = Double.NaN;
        int count = 0;
        double difference = 0;
        double excess = 0;
        for (int i = 0; i < log.count(); i++) {
            if (part(i) == part) {
                from = count == 0 ? log.time(i) : from;
                count++;
                difference += forecast.gauge()[i] - log.gauge(i);
                excess += square(forecast, i) - square(best, i);
            }
        }
        return new Evidence(part, from, count, count == 0 ? 0 : difference / count, excess);
    }

    private double square(Forecast forecast, int i) {
        double residual = Target.robust((forecast.gauge()[i] - log.gauge(i)) / log.uncertainty());
        return residual * residual;
    }

    private LogPart part(int i) {
        Regime regime = best.regimes()[i];
        if (regime == Regime.RELIEVING) {
            return LogPart.VALVE_OPEN;
        }
        if (regime != Regime.SEALED) {
            return LogPart.AT_SUPPLY;
        }
        int next = Math.min(i + 1, log.count() - 1);
        int before = Math.max(i - 1, 0);
        return best.gauge()[next] > best.gauge()[before] ? LogPart.RISE : LogPart.FALL;
    }
}
