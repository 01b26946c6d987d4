package io.github.heatswell.scenarios.interview;

/** Whether a step of the guide is done, or how it ends. */
enum Way {
    /** Done: the next step follows. */
    ON,
    /** Left by the person, who comes back later. */
    LEFT,
    /** Back to the step before. */
    BACK,
    /** Nothing more is typed. */
    ENDED,
    /** The whole job is done, whatever steps are left. */
    DONE;

    static Way of(Interviewer.Ending ending) {
        return switch (ending) {
            case FINISHED -> ON;
            case LEFT -> LEFT;
            case BACK -> BACK;
            case ENDED -> ENDED;
        };
    }
}
