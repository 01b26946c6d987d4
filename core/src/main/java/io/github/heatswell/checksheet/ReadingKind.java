package io.github.heatswell.checksheet;

/** The moments at which the gauge is read, in their order. */
public enum ReadingKind {
    /** Nothing heats and nothing flows: the static pressure of the supply. */
    COLD_STATIC("cold-static", "cold, nothing flowing"),
    /** The taps have just been closed after the draw. */
    AFTER_DRAW("after-draw", "as soon as the taps are closed"),
    /** A quarter of an hour after the taps were closed. */
    QUARTER_HOUR("after-15-min", "15 min after the taps were closed"),
    /** Half an hour after the taps were closed. */
    HALF_HOUR("after-30-min", "30 min after the taps were closed"),
    /** The highest pressure until the heater switches off. */
    PEAK("peak-after-draw", "highest while heating up after the draw"),
    /** Ten hours after the taps were closed, with none opened since. */
    NEXT_MORNING("morning-after-draw", "10 h after the taps were closed, none opened since");

    private final String id;
    private final String when;

    ReadingKind(String id, String when) {
        this.id = id;
        this.when = when;
    }

    /**
     * A short name for tables and files; in a file of readings the same name stands for the same reading.
     *
     * @return the name, in lower case without spaces
     */
    public String id() {
        return id;
    }

    /**
     * When the gauge is read.
     *
     * @return the moment in words
     */
    public String when() {
        return when;
    }
}
