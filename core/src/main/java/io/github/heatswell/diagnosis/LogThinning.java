package io.github.heatswell.diagnosis;

/** Takes from a long log what a diagnosis can use: its first days, and not more readings than tell something. */
final class LogThinning {

    private static final double LONGEST = 2 * 86_400.0;
    private static final int MOST = 3_000;

    private final PressureLog log;

    LogThinning(PressureLog log) {
        this.log = log;
    }

    PressureLog thinned() {
        int within = 0;
        while (within < log.count() && log.time(within) <= LONGEST) {
            within++;
        }
        int stride = (within + MOST - 1) / MOST;
        return within == log.count() && stride == 1 || within < 3 ? log : every(stride, (within + stride - 1) / stride);
    }

    private PressureLog every(int stride, int count) {
        double[] times = new double[count];
        double[] gauge = new double[count];
        double[] temperature = new double[count];
        boolean[] burner = new boolean[count];
        for (int i = 0; i < count; i++) {
            times[i] = log.time(i * stride);
            gauge[i] = log.gauge(i * stride);
            temperature[i] = log.temperature(i * stride).orElse(Double.NaN);
            burner[i] = log.burnerOn(i * stride);
        }
        PressureLog.Builder builder = PressureLog.builder(times, gauge).uncertainty(log.uncertainty());
        log.timeOfDay().ifPresent(builder::timeOfDay);
        if (log.hasTemperature()) {
            builder.temperature(temperature);
        }
        return log.hasBurner() ? builder.burner(burner).build() : builder.build();
    }
}
