package io.github.heatswell.assessment;

import io.github.heatswell.citation.Citation;
import java.util.Objects;

/**
 * On what a finding stands.
 *
 * @param basis what kind of authority it is
 * @param source the publication with its section, or what was reckoned, and how far it was checked
 */
public record Authority(Basis basis, Citation source) {

    /** What kind of authority it is. */
    public enum Basis {
        /** A standard, a model code or an official guide. */
        CODE,
        /** What the trade does or advises. */
        PRACTICE,
        /** Reckoned from the description or taken from the run. */
        COMPUTATION
    }

    /**
     * Checks that both parts are there.
     *
     * @param basis what kind of authority it is
     * @param source the publication with its section, or what was reckoned, and how far it was checked
     */
    public Authority {
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(source, "source");
    }

    static Authority code(String text, Citation.Standing standing) {
        return new Authority(Basis.CODE, new Citation(text, standing));
    }

    static Authority practice(String text, Citation.Standing standing) {
        return new Authority(Basis.PRACTICE, new Citation(text, standing));
    }

    static Authority computed(String text) {
        return new Authority(Basis.COMPUTATION, new Citation(text, Citation.Standing.GIVEN));
    }
}
