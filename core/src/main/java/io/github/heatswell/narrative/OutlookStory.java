package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.share;
import static io.github.heatswell.assessment.Measure.volume;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.ageing.OutlookCourse;
import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.result.Event;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What the years will do: when dripping begins, how sure that is, and when to check and pump. */
public final class OutlookStory {

    private static final int MONTHS = OutlookCourse.Month.MONTHS_OF_YEAR;
    private static final double PERCENT = 100;

    private final OutlookResult result;
    private final HotWaterSystem house;

    OutlookStory(OutlookResult result, HotWaterSystem house) {
        this.result = result;
        this.house = house;
    }

    /** When the valve begins to drip, as expected. */
    Statement headline() {
        OutlookCourse course = result.expected();
        Optional<OutlookCourse.Month> hazard = course.gravest().filter(OutlookCourse.Month::isHazard);
        if (hazard.isPresent()) {
            return plain("At the expected loss: "
                    + hazard.get().alarm().orElseThrow().description() + " in " + month(hazard.get()));
        }
        Optional<OutlookCourse.Month> first = course.firstDripping();
        if (first.isEmpty()) {
            String early = early(result.years());
            return plain((early.isEmpty() ? "No" : "At the expected loss no") + " relief valve drips within " + years()
                            + early)
                    .then(passing(cap()));
        }
        if (first.get().number() > 0) {
            return plain("A relief valve drips from " + month(first.get()) + ", once the precharge " + of())
                    .then(dripsBelow(first.get()))
                    .then(early(first.get().year()));
        }
        return plain(course.drippingAgain()
                .map(again -> "Too much precharge makes a relief valve drip now, too little from " + month(again))
                .orElse("A relief valve drips with today's precharge"
                        + (isUnderpumped() ? ", which is too low already" : "; loss of precharge is not the cause")));
    }

    /** Below which precharge it drips: the one that the care names too, unless something else than a valve decides that. */
    private Statement dripsBelow(OutlookCourse.Month first) {
        OptionalDouble lowest = result.limit().lowestGauge();
        return lowest.isPresent()
                        && lowest.getAsDouble() >= first.prechargeGauge()
                        && result.gravest().isEmpty()
                ? plain("is below ").then(gauge(lowest.getAsDouble()))
                : plain("is down to ").then(gauge(first.prechargeGauge()));
    }

    /** By when it drips in one of twenty houses that differ as this one is uncertain, if that is in an earlier year. */
    private String early(int beforeYear) {
        OptionalDouble early = result.onset().early();
        if (early.isEmpty() || (int) early.getAsDouble() >= beforeYear) {
            return "";
        }
        return "; one house in twenty drips by year " + ((int) early.getAsDouble() + 1);
    }

    /** The worst that happens in any of the courses of the present vessel, or nothing. */
    Optional<Alarm> alarm() {
        return result.gravest().map(month -> {
            Event.Kind kind = month.alarm().orElseThrow();
            boolean assumed = kind == Event.Kind.WORKING_PRESSURE_EXCEEDED
                    && !house.tank().workingPressureGiven();
            return Alarm.of(
                    month.isHazard() ? Alarm.Level.HAZARD : Alarm.Level.WARNING,
                    plain(kind.description() + " on the worst day of " + month(month) + loss(result, month) + ", with ")
                            .then(gauge(month.prechargeGauge()))
                            .then(" of precharge left" + in() + ". ")
                            .then(
                                    assumed
                                            ? plain("The working pressure is assumed: read the tank's plate.")
                                            : Alarm.meaning(kind, house))
                            .capitalised());
        });
    }

    /**
     * Which rate of precharge loss a month of an outlook belongs to.
     *
     * @param result the years ahead
     * @param month one of its months
     * @return such as {@code , at the fastest loss}; empty for the expected one
     */
    public static String loss(OutlookResult result, OutlookCourse.Month month) {
        if (result.expected().months().contains(month)) {
            return "";
        }
        return result.fast().months().contains(month) ? ", at the fastest loss" : ", at the slowest loss";
    }

    private OptionalDouble cap() {
        return SizingTarget.cap(house).map(PlaceRule::limit).orElse(OptionalDouble.empty());
    }

    /** The first year in which the pressure exceeds a limit (Pa, gauge). */
    private Optional<Integer> yearAbove(double limit) {
        return IntStream.range(0, result.years())
                .filter(year -> Limit.passes(result.expected().highestInYear(year), limit))
                .boxed()
                .findFirst();
    }

    /** How soon the pressure exceeds a limit (Pa, gauge) that it exceeds in a year. */
    private String when(int year, double limit) {
        return Limit.passes(result.expected().months().get(0).peakGauge(), limit)
                ? " from the first month on"
                : " from year " + (year + 1) + " on";
    }

    /** That a valve which stays shut is not all. */
    private Statement passing(OptionalDouble cap) {
        return cap.isEmpty()
                ? plain("")
                : yearAbove(cap.getAsDouble())
                        .map(year -> plain(", but the pressure exceeds the limit of ")
                                .then(gauge(cap.getAsDouble()))
                                .then(when(year, cap.getAsDouble())))
                        .orElse(plain(""));
    }

    /** When the pressure first exceeds the limit to which vessels are sized, and how that of the worst heat-up stands to it today. */
    List<Statement> limit(Yardstick yardstick) {
        List<Statement> said = new ArrayList<>();
        yearAbove(yardstick.limitGauge())
                .map(year -> plain("The pressure exceeds ")
                        .then(gauge(yardstick.limitGauge()))
                        .then(", the limit that 'heatswell size' works to," + when(year, yardstick.limitGauge()) + "."))
                .ifPresent(said::add);
        double today = result.expected().months().get(0).peakGauge();
        yardstick.joined("The first day", today).ifPresent(said::add);
        yardstick.prechargeThatKeeps().ifPresent(said::add);
        return said;
    }

    /** When the pressure first exceeds the cap to which vessels are sized, or nothing. */
    Optional<Statement> passesCap() {
        OptionalDouble rule = cap();
        if (rule.isEmpty()) {
            return Optional.empty();
        }
        double cap = rule.getAsDouble();
        return yearAbove(cap)
                .map(year -> plain("The pressure exceeds ")
                        .then(gauge(cap))
                        .then(when(year, cap) + ". That is the cap of "
                                + (house.site().place().isKnown() ? "the rules here" : "a model code (UPC 608.2)")
                                + " that 'heatswell size' works to unless told otherwise."));
    }

    /** Which of several vessels have no part in this, or nothing. */
    Optional<Statement> outOfService() {
        return VesselVerdict.outOfService(house)
                .map(dead -> dead.then(". Have that fixed first; what follows relies on the others alone."));
    }

    /** How sure that is. */
    Statement interval() {
        OutlookResult.DripOnset onset = result.onset();
        if (house.reliefValves().stream().noneMatch(ReliefValve::relieves)) {
            return plain("There is no working relief valve that could drip, and none to save the tank.");
        }
        String sampled = "Of " + onset.withinYears().of() + " simulated houses within the uncertainties, ";
        if (onset.withinYears().count() == 0) {
            return plain(sampled + "none drips within " + years() + "; with 95 % confidence, at most ")
                    .then(share(onset.withinYears().atMost()))
                    .then(" of such houses do.");
        }
        if (onset.late().isPresent() && isAtOnce(onset.late().getAsDouble())) {
            return plain(sampled + "at least nineteen in twenty drip right away.");
        }
        String part = onset.withinYears().count() == onset.withinYears().of()
                ? "all"
                : Math.round(PERCENT * onset.withinYears().value()) + " %";
        boolean halfAtOnce =
                onset.middle().isPresent() && isAtOnce(onset.middle().getAsDouble());
        List<String> reached = Stream.of(
                        halfAtOnce ? Optional.<String>empty() : by("one in twenty", onset.early()),
                        by("half", onset.middle()),
                        by("all but one in twenty", onset.late()))
                .flatMap(Optional::stream)
                .toList();
        return plain(sampled + part + " start to drip within " + years()
                + (reached.isEmpty() ? "" : ": " + String.join(", ", reached)) + "."
                + (onset.late().isEmpty() ? " The rest stay dry that long." : ""));
    }

    private boolean several() {
        return house.hasSeveralVessels();
    }

    /** Whether the vessel that is watched has lost its charge before the look ahead begins. */
    private boolean isUnderpumped() {
        return PrechargeTarget.of(house, leading())
                .filter(target -> target.isAllowed() && today() < target.tooLowGauge())
                .isPresent();
    }

    /** The charge of that vessel today (Pa, gauge). */
    private double today() {
        ExpansionVessel vessel = house.vessels().get(leading());
        double air = house.site().atmosphere();
        return vessel.chargeAbsolute(air, house.site().roomTemperature(), house.gasAtRest(vessel)) - air;
    }

    private int leading() {
        return PrechargeTarget.leading(house).orElseThrow();
    }

    private String name(int vessel) {
        return "“" + house.vesselNames().get(vessel) + "”";
    }

    private String of() {
        return several() ? "of " + name(leading()) + " " : "";
    }

    private String in() {
        return several() ? " in " + name(leading()) : "";
    }

    /** To what the other vessels that work are pumped at the same time. */
    private Statement others() {
        List<Statement> told = IntStream.range(0, house.vessels().size())
                .filter(i -> i != leading())
                .filter(i -> house.vessels().get(i).condition() == ExpansionVessel.Condition.SOUND)
                .boxed()
                .flatMap(i -> PrechargeTarget.of(house, i).filter(PrechargeTarget::isAllowed).stream()
                        .map(target -> plain(name(i) + " to ").then(gauge(target.pumpToGauge()))))
                .toList();
        return told.isEmpty()
                ? plain("")
                : plain(" At the same time, pump ")
                        .then(Statement.joined(", ", told))
                        .then(".");
    }

    private static boolean isAtOnce(double years) {
        return years * MONTHS < 1;
    }

    private static Optional<String> by(String share, OptionalDouble time) {
        return time.isEmpty()
                ? Optional.empty()
                : Optional.of(share + (isAtOnce(time.getAsDouble()) ? " at once" : " by " + after(time.getAsDouble())));
    }

    /** When to check and when to pump. */
    Statement care() {
        OutlookResult.ChargeLimit limit = result.limit();
        PrechargeTarget target = PrechargeTarget.of(house, leading()).orElseThrow();
        Optional<ReliefValve> stuck = ReliefWords.stuckOpen(house);
        if (stuck.isPresent()) {
            return plain(
                    "No precharge helps while '" + stuck.get().name() + "' is stuck open. Have it replaced first.");
        }
        if (target.isBeyondPlate()) {
            return plain("Do not charge the vessel to the supply pressure of ")
                    .then(gauge(target.pumpToGauge()))
                    .then(": the vessel or the tank is rated for only ")
                    .then(gauge(target.mostGauge()))
                    .then(". Have the supply pressure lowered by a reducing valve first,"
                            + " then the precharge set to match it.");
        }
        if (target.afterSupply()) {
            return plain(
                    "No precharge helps while the supply alone opens a relief valve. Have the supply pressure lowered by a"
                            + " reducing valve first, then the precharge set to match it.");
        }
        if (limit.hazardWhenPumped().isPresent()) {
            return plain("Do not pump the vessel up to ")
                    .then(gauge(target.pumpToGauge()))
                    .then(
                            ", the precharge that matches the supply: the worst day of a month would end in a hazard with it ("
                                    + limit.hazardWhenPumped().get().description()
                                    + "). Ask a licensed professional what has to change first.");
        }
        if (limit.rechargeBelowGauge().isEmpty() && Findings.creeps(house)) {
            return plain(
                    "No precharge helps while the seat of the reducing valve leaks: what leaks in must get out. Have the"
                            + " valve cleaned or its seat replaced first.");
        }
        if (limit.rechargeBelowGauge().isEmpty() && isUnderpumped()) {
            return plain("Today's precharge" + in() + " is ")
                    .then(gauge(today()))
                    .then(", but ")
                    .then(gauge(target.pumpToGauge()))
                    .then(
                            " would match the supply. First let 'heatswell size' say whether the vessel will do with that, or"
                                    + " which one will; then look ahead again.");
        }
        if (limit.rechargeBelowGauge().isEmpty()) {
            return plain(
                    "Topping up the precharge does not help here. First find a vessel and precharge that do: 'heatswell size'"
                            + " proposes them.");
        }
        double after = limit.rechargeAfter().getAsDouble();
        double lowest = limit.lowestGauge().getAsDouble();
        String expected = after > 0 && after <= result.years() ? ", which is expected after " + after(after) : "";
        Statement care = plain((several() ? "Check the precharge of every vessel every " : "Check the precharge every ")
                        + every(result.checkEvery().orElseThrow())
                        + (several()
                                ? ", with the vessels drained. Pump " + name(leading()) + " up to "
                                : ", with the vessel drained. Pump it up to "))
                .then(gauge(limit.pumpToGauge().getAsDouble()))
                .then(" when it reads less than ")
                .then(gauge(limit.rechargeBelowGauge().getAsDouble()))
                .then((after == 0 ? ", as it does now" : expected) + ".")
                .then(others());
        care = care.then(underpumped(target, limit));
        if (lowest == 0) {
            return care.then(" Even without any precharge the worst day stays dry.");
        }
        return care.then(" Below ")
                .then(gauge(lowest))
                .then(
                        result.gravest().isPresent()
                                ? ", the valve drips on the worst day, or the pressure exceeds the tank's working pressure."
                                : " the valve drips on the worst day.");
    }

    /** Which precharge the trade calls too low, whatever the vessel can do with less. */
    private static Statement underpumped(PrechargeTarget target, OutlookResult.ChargeLimit limit) {
        double recharge = limit.rechargeBelowGauge().orElseThrow();
        return recharge > target.tooLowGauge()
                ? plain(" By trade custom it counts as underpumped below ")
                        .then(gauge(target.tooLowGauge()))
                        .then(".")
                : plain(" By trade custom that counts as underpumped.");
    }

    /**
     * Where the loss of precharge in an outlook comes from.
     *
     * @param range how much is lost
     * @return whole sentences
     */
    public static Statement basis(PrechargeLoss.Range range) {
        Statement rate = plain("The vessel is assumed to lose ")
                .then(share(range.expected().yearly()))
                .then(" of its gauge pressure a year");
        Statement between = range.slow().equals(range.fast())
                ? rate
                : rate.then(" (possible range ")
                        .then(share(range.slow().yearly()))
                        .then(" to ")
                        .then(share(range.fast().yearly()))
                        .then(")");
        return between.then(
                        ". The supply keeps the gas at its pressure, so the precharge falls by about the same amount every year")
                .then(
                        range.equals(PrechargeLoss.Range.usual())
                                ? ". The basis is weak: " + PrechargeLoss.SOURCE.text()
                                        + ". No source was checked for it. Better: measure the precharge of the drained vessel twice, a year apart."
                                : ". This rate was given.");
    }

    /** The vessel and how it loses precharge. */
    Statement facts() {
        OutlookCourse course = result.expected();
        Statement loses = (several()
                        ? plain(house.vessels().size() + " vessels, " + name(leading()))
                        : plain("").then(volume(course.vesselVolume())).then(" vessel,"))
                .then(" charged to ")
                .then(gauge(course.months().get(0).prechargeGauge()))
                .then(several() ? ", each losing " : ", losing ")
                .then(share(course.loss().yearly()))
                .then(" of its gauge pressure a year");
        Statement band = result.slow().loss().equals(result.fast().loss())
                ? loses
                : loses.then(" (band: ")
                        .then(share(result.slow().loss().yearly()))
                        .then(" to ")
                        .then(share(result.fast().loss().yearly()))
                        .then(")");
        return band.then(". Each point is the worst day of its month.");
    }

    /**
     * A month of an outlook.
     *
     * @param month the month
     * @return such as {@code November of year 7}
     */
    public static String month(OutlookCourse.Month month) {
        return Moments.monthOf(month.dayOfYear()) + " of year " + (month.year() + 1);
    }

    private String years() {
        return result.years() == 1 ? "a year" : result.years() + " years";
    }

    /** A time from now, to the month. */
    private static String after(double years) {
        long months = Math.round(years * MONTHS);
        if (months < 2 * MONTHS) {
            return months == 1 ? "a month" : months + " months";
        }
        return Decimals.atMost(years, 1) + " years";
    }

    private static String every(double years) {
        long months = Math.max(1, (long) Math.floor(years * MONTHS));
        return months >= MONTHS ? "year" : months == 1 ? "month" : months + " months";
    }
}
