package io.github.heatswell.simulation;

import io.github.heatswell.system.Circulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Supply;
import java.util.List;
import java.util.Optional;

/**
 * Everything that happens at known times. The integration is split at them, so they need no event detection.
 */
final class Schedule {

    private static final double DAY = 86_400;

    private final Supply supply;
    private final double atmosphere;
    private final double clockStart;
    private final int firstDay;
    private final List<Draw> draws;
    private final double[] mainsTimes;
    private final List<Supply.Outage> outages;
    private final Optional<Circulation> circulation;
    private final double constantMains;
    private final double constantCold;

    Schedule(HotWaterSystem system) {
        supply = system.supply();
        atmosphere = system.site().atmosphere();
        clockStart = system.start().timeOfDay();
        firstDay = system.start().dayOfYear();
        draws = system.draws().draws();
        outages = supply.outages();
        circulation = system.circulation();
        constantMains = supply.mains().absolute(clockStart, atmosphere);
        constantCold = supply.water().on(1);
        mainsTimes = supply.mains().isConstant()
                ? new double[0]
                : supply.mains().entries().keySet().stream()
                        .mapToDouble(Double::doubleValue)
                        .toArray();
    }

    /** The pressure of the mains (Pa, absolute) at a time (s since the start of the run). */
    double mains(double time) {
        if (mainsTimes.length == 0) {
            return constantMains;
        }
        return supply.mains().absolute(clockStart + time, atmosphere);
    }

    /** Cold water temperature (K) at a time (s since the start of the run), linear from midnight to midnight. */
    double cold(double time) {
        if (supply.water().isConstant()) {
            return constantCold;
        }
        double clock = clockStart + time;
        double day = Math.floor(clock / DAY);
        double from = supply.water().on(firstDay + day);
        double to = supply.water().on(firstDay + day + 1);
        return from + (to - from) * (clock / DAY - day);
    }

    /** The next draw that begins after a time (s since the start of the run), and when. */
    Optional<Start> nextDraw(double time) {
        if (draws.isEmpty()) {
            return Optional.empty();
        }
        double clock = clockStart + time;
        double midnight = DAY * Math.floor(clock / DAY);
        for (Draw draw : draws) {
            if (midnight + draw.timeOfDay() > clock) {
                return Optional.of(new Start(midnight + draw.timeOfDay() - clockStart, draw));
            }
        }
        return Optional.of(new Start(midnight + DAY + draws.get(0).timeOfDay() - clockStart, draws.get(0)));
    }

    /**
     * A draw and when it begins.
     *
     * @param time since the start of the run (s)
     * @param draw the draw
     */
    record Start(double time, Draw draw) {}

    /** What holds from a time on (s since the start of the run), with a draw that runs until a known time or null. */
    Conditions from(double time, Draw running, double drawEnds) {
        double until = Math.min(nextOutageChange(time), nextClockChange(time));
        if (running != null) {
            until = Math.min(until, drawEnds);
        }
        Optional<Start> next = nextDraw(time);
        if (next.isPresent()) {
            until = Math.min(until, next.get().time());
        }
        double span = Math.min(until - time, DAY);
        double middle = time + span / 2;
        double quarter = span / 4;
        // the timetables are linear between two changes, so two inner points give the rate without touching the ends
        double mainsRate =
                mainsTimes.length == 0 ? 0 : (mains(middle + quarter) - mains(middle - quarter)) / (2 * quarter);
        double coldRate =
                supply.water().isConstant() ? 0 : (cold(middle + quarter) - cold(middle - quarter)) / (2 * quarter);
        return new Conditions(until, mainsRate, coldRate, supplyOpen(time), running, pumping(time));
    }

    private boolean pumping(double time) {
        if (circulation.isEmpty()) {
            return false;
        }
        double clock = clockStart + time;
        return circulation.get().runs(clock - DAY * Math.floor(clock / DAY));
    }

    private boolean supplyOpen(double time) {
        for (Supply.Outage outage : outages) {
            if (time >= outage.from() && time < outage.to()) {
                return false;
            }
        }
        return true;
    }

    private double nextOutageChange(double time) {
        double next = Double.POSITIVE_INFINITY;
        for (Supply.Outage outage : outages) {
            if (outage.from() > time) {
                next = Math.min(next, outage.from());
            } else if (outage.to() > time) {
                next = Math.min(next, outage.to());
            }
        }
        return next;
    }

    private double nextClockChange(double time) {
        double clock = clockStart + time;
        double midnight = DAY * Math.floor(clock / DAY);
        double next = Double.POSITIVE_INFINITY;
        if (!supply.water().isConstant()) {
            next = midnight + DAY - clockStart;
        }
        for (double mainsTime : mainsTimes) {
            next = Math.min(next, next(midnight + mainsTime, clock));
        }
        if (circulation.isPresent()) {
            for (Circulation.Hours hours : circulation.get().hours()) {
                next = Math.min(
                        next, Math.min(next(midnight + hours.from(), clock), next(midnight + hours.to(), clock)));
            }
        }
        return next;
    }

    /** When (s since the start of the run) a time of the day comes next. */
    private double next(double today, double clock) {
        return (today > clock ? today : today + DAY) - clockStart;
    }

    /**
     * Boundary conditions of one segment: rates of mains pressure and cold temperature, whether the supply is open, the
     * running draw, and whether a pump runs.
     *
     * @param until when a condition changes (s since the start of the run)
     * @param mainsRate how fast the mains pressure changes (Pa/s)
     * @param coldRate how fast the cold temperature changes (K/s)
     * @param supplyOpen whether the supply is open
     * @param draw the running draw, or null
     * @param pumping whether the pump of a circulation loop runs
     */
    record Conditions(
            double until, double mainsRate, double coldRate, boolean supplyOpen, Draw draw, boolean pumping) {}
}
