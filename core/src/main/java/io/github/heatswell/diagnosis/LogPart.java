package io.github.heatswell.diagnosis;

/** A part of a log, by what goes on in the house that explains it best. */
public enum LogPart {
    /** The pressure is that of the supply: before the heat-up, and while water is drawn. */
    AT_SUPPLY("while the supply holds the pressure"),
    /** The system is shut in and the pressure rises. */
    RISE("the rise while the system is shut in"),
    /** A relief valve is open. */
    VALVE_OPEN("the time in which a relief valve is open"),
    /** The system is shut in and the pressure falls or rests. */
    FALL("the fall and the rest afterwards");

    private final String words;

    LogPart(String words) {
        this.words = words;
    }

    /**
     * The part in words.
     *
     * @return a description without full stop
     */
    public String words() {
        return words;
    }
}
