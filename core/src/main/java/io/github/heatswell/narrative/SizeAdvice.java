package io.github.heatswell.narrative;

import io.github.heatswell.sizing.SizedVessel;
import io.github.heatswell.sizing.SizingResult;
import java.util.Objects;
import java.util.Optional;

/**
 * Which of the sizes on sale to take, by whoever knows how sure the numbers of a sizing are.
 *
 * @param recommended the size to take, or empty if none is to be recommended
 * @param why what speaks for it and against smaller ones, in whole sentences; may be empty
 */
public record SizeAdvice(Optional<SizedVessel> recommended, String why) {

    /**
     * Checks that everything is there.
     *
     * @param recommended the size to take, or empty if none is to be recommended
     * @param why what speaks for it and against smaller ones; may be empty
     */
    public SizeAdvice {
        Objects.requireNonNull(recommended, "recommended");
        Objects.requireNonNull(why, "why");
    }

    /** The smallest size that is enough by the numbers given, where nothing is known of how sure they are. */
    public static SizeAdvice of(SizingResult result) {
        return new SizeAdvice(result.smallestOnSale(), "");
    }
}
