package io.github.heatswell.scenarios.interview;

/** The steps of the guide, in their order. */
enum Step {
    DRIP("The drip: does this house drip, and how much?"),
    CAUSE("The cause: what do gauge readings say?"),
    SIZE("The size: which vessel, and what charge?"),
    BUY("The vessel: which one did you buy?"),
    CHARGE("The charge: what is it pumped up to?"),
    VERIFY("The check: does the gauge read what it should now?"),
    KEEP("The years: when should the charge be checked?");

    private final String title;

    Step(String title) {
        this.title = title;
    }

    /** What it asks. */
    String title() {
        return title;
    }

    /** How far along the job it is, such as 2 of 7. */
    String count() {
        return ordinal() + 1 + " of " + values().length;
    }
}
