package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.share;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.study.SampledPeaks;
import io.github.heatswell.study.StudyResult;
import java.util.List;
import java.util.stream.IntStream;

/** Result of many samples, in sentences. A share is said to be one of the samples. */
public final class SpreadStory {

    private static final int ENOUGH_FOR_TWENTIETHS = 40;

    /** A share (-) above this would read as all. */
    private static final double NEARLY_ALL = 0.995;

    private final SampledPeaks sampled;

    SpreadStory(SampledPeaks sampled) {
        this.sampled = sampled;
    }

    /** In how many samples a run ends in a hazard, if in any. */
    List<Alarm> alarms() {
        int ended = sampled.endedEarly();
        return ended == 0
                ? List.of()
                : List.of(Alarm.of(
                        Alarm.Level.HAZARD,
                        plain("In ")
                                .then(inWords(new StudyResult.Share(ended, sampled.count())))
                                .then(" the run ends in a hazard. What follows is not modelled.")));
    }

    Statement headline() {
        if (sampled.limitGauge().isPresent()) {
            return beyond(sampled.limitGauge().getAsDouble());
        }
        if ((sampled.reliefSetGauge().isEmpty() || sampled.reliefVaries()) && sampled.dripping() == 0) {
            return plain("Half of the peaks are at least ")
                    .then(gauge(sampled.quantileGauge(0.5)))
                    .then(", one in twenty at least ")
                    .then(gauge(sampled.quantileGauge(0.95)))
                    .then(sampled.endedEarly() == 0 ? "" : "; a run that reaches the test pressure ends there");
        }
        return dripping(new StudyResult.Share(sampled.dripping(), sampled.count()));
    }

    /** How the samples stand to the limit of a sizing (Pa, gauge), after those that drip. */
    private Statement beyond(double limit) {
        int above = above(limit);
        if (sampled.dripping() == 0) {
            return plain("The limit of ")
                    .then(gauge(limit))
                    .then(" is exceeded in ")
                    .then(inWords(new StudyResult.Share(above, sampled.count())))
                    .then(above > 0 && sampled.reliefSetGauge().isPresent() ? ", but no relief valve discharges" : "");
        }
        return dripping(new StudyResult.Share(sampled.dripping(), sampled.count()))
                .then("; the limit of ")
                .then(gauge(limit))
                .then(" is exceeded in " + (above == sampled.count() ? "all" : above + " of the " + sampled.count()));
    }

    /** In how many samples the peak passes a limit (Pa, gauge). */
    private int above(double limit) {
        return (int) IntStream.range(0, sampled.count())
                .filter(i -> Limit.passes(sampled.peakGauge(i), limit))
                .count();
    }

    /**
     * What samples found to be dangerous, each judged by its own values.
     *
     * @param ended how many runs ended in a hazard
     * @param first the hazards of the first sample that has some
     * @return whole sentences
     */
    public static Statement hazards(int ended, List<Finding> first) {
        return plain("The first of them: ")
                .then(Statement.joined(
                        " ", first.stream().map(Finding::sentence).toList()))
                .then(" Each sample is judged by its own values. " + (ended == 0 ? "None" : ended) + " of the runs "
                        + (ended > 1 ? "end" : "ends") + " in it.");
    }

    /**
     * In how many samples a relief valve discharges.
     *
     * @param share how many they are
     * @return a sentence without a full stop
     */
    public static Statement dripping(StudyResult.Share share) {
        return plain("A relief valve discharges in ").then(inWords(share));
    }

    /**
     * In how many samples the relief valve's set pressure is reached; where every sample has its own, in how many it discharges.
     *
     * @param sampled the peaks
     * @param set the set pressure (Pa, gauge)
     * @return the name of a line, such as {@code relief valve set, 7 bar: reached in 12 of 32 samples}
     */
    public static Statement reached(SampledPeaks sampled, double set) {
        if (sampled.reliefVaries()) {
            return plain("relief valve set, about ")
                    .then(gauge(set))
                    .then(": discharges in " + counted(sampled.dripping(), sampled.count()));
        }
        int reached = sampled.count() - sampled.countBelow(set);
        return plain("relief valve set, ").then(gauge(set)).then(": reached in " + counted(reached, sampled.count()));
    }

    /**
     * In how many samples the tank's working pressure is exceeded.
     *
     * @param sampled the peaks
     * @param limit the working pressure (Pa, gauge)
     * @return the name of a line, such as {@code working pressure, 10 bar: exceeded in none of 32 samples}
     */
    public static Statement exceeded(SampledPeaks sampled, double limit) {
        return above((sampled.isWorkingPressureAssumed() ? "assumed " : "") + "working pressure, ", sampled, limit);
    }

    /**
     * In how many samples the limit of a sizing is exceeded.
     *
     * @param sampled the peaks
     * @param limit the limit (Pa, gauge)
     * @return the name of a line, such as {@code limit of the sizing, 80 psi: exceeded in 4 of 32 samples}
     */
    public static Statement beyondLimit(SampledPeaks sampled, double limit) {
        return above("limit of the sizing, ", sampled, limit);
    }

    private static Statement above(String name, SampledPeaks sampled, double limit) {
        return plain(name)
                .then(gauge(limit))
                .then(": exceeded in " + counted(new SpreadStory(sampled).above(limit), sampled.count()));
    }

    private static String counted(int some, int all) {
        String of = some == 0 ? "none of " : some == all ? "all " : some + " of ";
        return of + all + " samples";
    }

    Statement facts() {
        boolean many = sampled.count() >= ENOUGH_FOR_TWENTIETHS;
        String subject = sampled.subject().strip();
        return plain((subject.isEmpty() ? "" : subject + " ") + (many ? "Nine in ten of the " : "The ")
                        + sampled.count() + " samples peak between ")
                .then(gauge(sampled.quantileGauge(many ? 0.05 : 0)))
                .then(" and ")
                .then(gauge(sampled.quantileGauge(many ? 0.95 : 1)))
                .then(
                        ". These are shares of the samples: they say no more about real houses than the ranges assumed for the inputs do.");
    }

    /**
     * So many samples, and how sure that share is.
     *
     * @param share how many they are
     * @return such as {@code 12 of 32 samples (38 %, give or take 8.6 %)}
     */
    public static Statement inWords(StudyResult.Share share) {
        if (share.of() > 0 && (share.count() == 0 || share.count() == share.of())) {
            String samples = share.of() + " samples (";
            String bound = share.count() == 0
                    ? "none of the " + samples + "so in at most about "
                    : "all " + samples + "so in ";
            double furthest = share.count() == 0 ? share.atMost() : share.atLeast();
            Statement far = furthest > NEARLY_ALL
                    ? plain(bound + "over 99 %")
                    : plain(share.count() == 0 ? bound : bound + "at least about ")
                            .then(share(furthest));
            return far.then(" of such houses, with 95 % confidence)");
        }
        return plain(share.count() + " of " + share.of() + " samples (")
                .then(
                        share.value() > NEARLY_ALL
                                ? plain("over 99 %")
                                : plain("").then(share(share.value())))
                .then(", give or take ")
                .then(share(share.standardError()))
                .then(")");
    }
}
