package io.github.heatswell.assessment;

/**
 * How much a finding matters, the gravest first.
 */
public enum Severity {
    /** People may be hurt: act before the heater is used again. */
    HAZARD,
    /** Something is broken, missing or wrong, and has to be put right. */
    FAULT,
    /** It works, but without the margin it should have, or it hides something. */
    CAUTION,
    /** Worth knowing; nothing has to be done. */
    NOTE
}
