package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.report.Report;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Exit statuses of the program. Where several apply, the highest is returned.
 */
public enum ExitStatus {
    /** Everything ran. */
    RAN(0, "everything ran"),
    /** A scenario or the command line is wrong. */
    BAD_INPUT(2, "a scenario or the command line is invalid; nothing was run or written"),
    /** People may be hurt: by what a run came to, by the house as described, or by what readings say. */
    HAZARD(3, "a hazard was found; the report starts with it"),
    /** Results could not be written. */
    NOT_WRITTEN(4, "results could not be written"),
    /** Something failed for a reason that is not in the scenario; what that was about is not written. */
    FAILED(5, "a run failed: a bug in Heatswell, or out of memory"),
    /** The balance of a run does not close: a wrong answer is worse than none. */
    OPEN_BALANCE(6, "a run's mass or energy balance does not close; do not rely on its figures");

    private final int code;
    private final String meaning;

    ExitStatus(int code, String meaning) {
        this.code = code;
        this.meaning = meaning;
    }

    /**
     * The number returned to the shell.
     *
     * @return 0 or 2 to 6
     */
    public int code() {
        return code;
    }

    /** The more serious of two. */
    ExitStatus and(ExitStatus other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** What a report says of itself. */
    static ExitStatus of(Report report) {
        return (report.isHazard() ? HAZARD : RAN).and(report.balances().close() ? RAN : OPEN_BALANCE);
    }

    /** Numbers and meanings, for the help text. */
    static Map<String, String> list() {
        Map<String, String> list = new LinkedHashMap<>();
        for (ExitStatus status : values()) {
            list.put(Integer.toString(status.code), status.meaning);
        }
        return list;
    }
}
