package io.github.heatswell.diagnosis;

import io.github.heatswell.result.Balances;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Check after installation: do the readings agree with the plan?
 *
 * @param lines one line for each reading, in the order of {@link SiteCheck}
 * @param balances those of the runs behind it
 */
public record InstalledCheck(List<Line> lines, Balances balances) {

    private static final double TOLERATED = 2;

    /**
     * Copies the lines.
     *
     * @param lines one line for each reading, in the order of {@link SiteCheck}
     * @param balances those of the runs behind it
     */
    public InstalledCheck {
        lines = List.copyOf(Objects.requireNonNull(lines, "lines"));
        Objects.requireNonNull(balances, "balances");
    }

    /**
     * One reading against the plan.
     *
     * @param check what was read
     * @param planned what the planned system would show (in the SI unit of the check, pressures gauge)
     * @param reading what was read, with its uncertainty
     */
    public record Line(SiteCheck check, double planned, SpotReading reading) {
        /**
         * Deviation of the reading from the plan.
         *
         * @return reading minus plan, in units of the reading's uncertainty (-)
         */
        public double deviation() {
            return (reading.value() - planned) / reading.uncertainty();
        }

        /**
         * Whether the reading agrees with the plan.
         *
         * @return true if both lie no more than twice the uncertainty apart
         */
        public boolean agrees() {
            return Math.abs(deviation()) <= TOLERATED;
        }
    }

    /**
     * Compares readings with a plan.
     *
     * @param plan the system as planned
     * @param readings the check sheet
     * @return one line for each reading
     * @throws IllegalArgumentException if there are no readings
     */
    public static InstalledCheck of(HotWaterSystem plan, SpotReadings readings) {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(readings, "readings");
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("a check of the installation needs at least one reading");
        }
        Balances.Count count = new Balances.Count();
        Map<SiteCheck, Double> planned =
                new EnumMap<>(new Spots(plan, count).read(readings.all().keySet()));
        List<Line> lines = new ArrayList<>();
        readings.all().forEach((check, reading) -> lines.add(new Line(check, planned.get(check), reading)));
        return new InstalledCheck(lines, count.sum());
    }

    /**
     * Whether the system is installed as planned, as far as the readings show.
     *
     * @return true if every reading agrees
     */
    public boolean asPlanned() {
        return differences().isEmpty();
    }

    /**
     * What differs from the plan.
     *
     * @return the lines that do not agree, possibly none
     */
    public List<Line> differences() {
        return lines.stream().filter(line -> !line.agrees()).toList();
    }
}
