package io.github.heatswell.scenarios.choice;

import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.study.SampleFailedException;
import io.github.heatswell.study.Share;
import io.github.heatswell.study.Study;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.system.HotWaterSystem;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Share of uncertain houses whose worst heat-up exceeds the limit: with the vessel that the best estimates call for
 * and, if that share exceeds {@link #HOLDS}, with larger vessels on sale until the smallest that passes is found.
 *
 * @param usual whether the description gives no uncertain value, so that the usual ones were taken
 * @param tried the vessels looked at, the smallest first; a volume of 0 stands for none
 * @param balances those of the runs behind it
 */
public record SizeCertainty(boolean usual, List<Tried> tried, Balances balances) {

    /** A vessel passes if at most this share (-) of the houses exceeds the limit; own judgement. */
    public static final double HOLDS = 0.1;

    /** Enough to tell one in ten from three in ten; each is one heat-up. */
    private static final int SAMPLES = 64;

    /**
     * One vessel.
     *
     * @param volume its volume (m3), 0 for none
     * @param above how many of the houses go above the limit with it
     */
    public record Tried(double volume, Share above) {

        /**
         * Whether the vessel keeps the limit in nine of ten houses.
         *
         * @return true if it does
         */
        public boolean holds() {
            return above.value() <= HOLDS;
        }
    }

    /**
     * Copies the list.
     *
     * @param usual whether the usual uncertainties were taken
     * @param tried the vessels looked at
     * @param balances those of the runs behind it
     */
    public SizeCertainty {
        Objects.requireNonNull(balances, "balances");
        tried = List.copyOf(Objects.requireNonNull(tried, "tried"));
    }

    /**
     * The smallest vessel looked at that holds.
     *
     * @return the vessel, or empty if none does
     */
    public Optional<Tried> advised() {
        return tried.stream().filter(Tried::holds).findFirst();
    }

    /**
     * What the best estimates call for: the smallest vessel on sale that is enough by them, or none.
     *
     * @return the smallest looked at
     */
    public Tried bare() {
        return tried.get(0);
    }

    /**
     * What was found of a size.
     *
     * @param volume its volume (m3)
     * @return it, or empty if it was not looked at
     */
    public Optional<Tried> at(double volume) {
        return tried.stream().filter(one -> one.volume() == volume).findFirst();
    }

    /** Looks at one vessel; the same samples for each. */
    static Tried look(VariedHouse varied, double volume, double limit, BalanceCount count) {
        Study.Builder study = Study.builder()
                .outputs(List.of("peak of the worst heat-up (Pa gauge)"))
                .model(values -> new double[] {peak(varied, values, count)})
                .samples(SAMPLES);
        varied.inputs().forEach(input -> study.input(input.name(), input.input().distribution()));
        StudyResult result = study.build().run();
        return new Tried(volume, result.spread(0).above(limit));
    }

    private static double peak(VariedHouse varied, double[] values, BalanceCount count) {
        try {
            HotWaterSystem house = varied.house().apply(values);
            return VesselSizing.worstPeak(house, count);
        } catch (IllegalArgumentException refused) {
            throw new SampleFailedException(refused.getMessage(), refused);
        }
    }
}
