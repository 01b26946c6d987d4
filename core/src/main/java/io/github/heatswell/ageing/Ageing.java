package io.github.heatswell.ageing;

import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** One house on the worst day of each month, as it ages. It counts its runs, and is immutable otherwise. */
final class Ageing {

    private static final int MONTHS = OutlookCourse.Month.MONTHS_OF_YEAR;
    private static final double DAY = 86_400;
    /** A zero precharge cannot be described; this one (Pa, gauge) is as good as none. */
    private static final double MIN_PRECHARGE = 1000;

    private final HotWaterSystem house;
    /** Place of the vessel by whose precharge the house is looked after. */
    private final int leading;

    private final Duration run;
    private final Seasons seasons;
    private final Balances.Count count;

    Ageing(HotWaterSystem house, Duration run, double mainsSwing, Balances.Count count) {
        this.house = house;
        this.run = run;
        this.count = count;
        leading = PrechargeTarget.leading(house).orElse(0);
        seasons = new Seasons(house, mainsSwing);
    }

    ExpansionVessel vessel() {
        return house.vessels().get(leading);
    }

    /** The precharge at first (Pa, gauge), as it reads at the temperature at which it was set. */
    double prechargeGauge() {
        return prechargeGauge(vessel());
    }

    private double prechargeGauge(ExpansionVessel vessel) {
        return Math.max(MIN_PRECHARGE, vessel.precharge().gauge(house.site().atmosphere()));
    }

    /** The precharge the vessel should have. */
    PrechargeTarget target() {
        return PrechargeTarget.of(house, leading).orElseThrow();
    }

    /** The static pressure at the vessel for most of the day (Pa, gauge). */
    double staticGauge() {
        return seasons.staticAt(vessel());
    }

    /** What is left of each vessel's precharge (Pa, gauge) after some years. */
    private double[] left(PrechargeLoss loss, double years) {
        return house.vessels().stream()
                .mapToDouble(one -> loss.left(prechargeGauge(one), seasons.staticAt(one), years))
                .toArray();
    }

    /** The same once the leading vessel has a precharge (Pa, gauge): the others have lost for as long. */
    private double[] beside(double precharge, PrechargeLoss loss) {
        double years = loss.yearly() > 0 ? loss.yearsUntil(prechargeGauge(), precharge, staticGauge()) : 0;
        double[] left = left(loss, years);
        left[leading] = precharge;
        return left;
    }

    /** The precharge (Pa, gauge) each vessel is pumped to: its own target, but for the leading one this one. */
    private double[] pumped(double precharge) {
        double[] to = IntStream.range(0, house.vessels().size())
                .mapToDouble(i -> PrechargeTarget.of(house, i)
                        .filter(PrechargeTarget::isAllowed)
                        .map(PrechargeTarget::pumpToGauge)
                        .orElse(prechargeGauge(house.vessels().get(i))))
                .toArray();
        to[leading] = precharge;
        return to;
    }

    /** The worst day of a month with a leading vessel of some volume (m3), as all have lost precharge since the start. */
    OutlookCourse.Month month(int number, double volume, PrechargeLoss loss) {
        double years = seasons.yearsUntil(number);
        double[] left = left(loss, years);
        RunSummary found = run(seasons.worstDay(number), volume, left);
        return new OutlookCourse.Month(
                number,
                years,
                seasons.dayOfYear(number),
                left[leading],
                found.peak().value(),
                found.totals().relieved() / Math.max(1, found.end() / DAY),
                alarm(found));
    }

    /**
     * When dripping begins, without looking at every month: a vessel that does not drip at once drips because its charge
     * has become too low, so the first month that does lies in the year up to the first coldest one that does.
     */
    OptionalDouble firstDripping(int years, PrechargeLoss loss) {
        if (drips(0, loss)) {
            return OptionalDouble.of(seasons.yearsUntil(0));
        }
        int from = 1;
        for (int month = seasons.coldestMonth(); month < years * MONTHS; month += MONTHS) {
            if (drips(month, loss)) {
                return firstDripping(from, month + 1, loss);
            }
            from = month + 1;
        }
        return firstDripping(from, years * MONTHS, loss);
    }

    private OptionalDouble firstDripping(int from, int to, PrechargeLoss loss) {
        for (int month = from; month < to; month++) {
            if (drips(month, loss)) {
                return OptionalDouble.of(seasons.yearsUntil(month));
            }
        }
        return OptionalDouble.empty();
    }

    private boolean drips(int month, PrechargeLoss loss) {
        return month(month, vessel().volume(), loss).drips();
    }

    /**
     * Whether the worst day of a year stays dry and within the tank's working pressure with this charge (Pa, gauge) of the leading
     * vessel, and with what a loss has left the others by then.
     */
    boolean isSoundAt(double precharge, PrechargeLoss loss) {
        RunSummary found = run(seasons.worstDay(seasons.coldestMonth()), vessel().volume(), beside(precharge, loss));
        return found.totals().relieved() == 0 && alarm(found).isEmpty();
    }

    /** The hazard in which the worst day of any month ends with this charge (Pa, gauge), the earliest month's first. */
    Optional<Event.Kind> hazardAt(double precharge) {
        return IntStream.range(0, MONTHS)
                .mapToObj(month -> alarm(run(seasons.worstDay(month), vessel().volume(), pumped(precharge))))
                .flatMap(Optional::stream)
                .filter(Event.Kind::endsRun)
                .findFirst();
    }

    private static Optional<Event.Kind> alarm(RunSummary found) {
        return found.events().stream()
                .map(Event::kind)
                .filter(kind -> kind.endsRun() || kind == Event.Kind.WORKING_PRESSURE_EXCEEDED)
                .reduce((first, second) -> second.endsRun() ? second : first);
    }

    private RunSummary run(HotWaterSystem worstDay, double volume, double[] precharges) {
        HotWaterSystem.Builder aged = worstDay.toBuilder();
        for (int i = 0; i < precharges.length; i++) {
            double size = i == leading ? volume : house.vessels().get(i).volume();
            Pressure left = Pressure.gauge(Math.max(MIN_PRECHARGE, precharges[i]), PressureUnit.PASCAL);
            aged.changeVessel(
                    i,
                    one -> one.toBuilder()
                            .volume(size, VolumeUnit.CUBIC_METRE)
                            .precharge(left)
                            .build());
        }
        return count.add(Simulation.of(aged.build(), run).summary());
    }
}
