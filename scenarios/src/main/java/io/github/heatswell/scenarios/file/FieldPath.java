package io.github.heatswell.scenarios.file;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The way from the top of a file to a field: keys, and numbers of items in lists.
 *
 * @param steps the steps, at least one
 */
record FieldPath(List<Step> steps) {

    /** No field of a scenario lies so deep. */
    private static final int MAX_LEVELS = 8;

    private static final Pattern PART = Pattern.compile("([A-Za-z][A-Za-z0-9-]*)(?:\\[(\\d{1,4})])?");

    FieldPath {
        steps = List.copyOf(steps);
    }

    /** One step on the way. */
    sealed interface Step {}

    /** To the value of a key. */
    record Key(String name) implements Step {}

    /** To an item of a list, 0 being the first. */
    record Item(int index) implements Step {}

    /**
     * Reads a path.
     *
     * @throws IllegalArgumentException if it is none
     */
    static FieldPath of(String text) {
        if (text.chars().filter(c -> c == '.').count() >= MAX_LEVELS) {
            throw new IllegalArgumentException(
                    "has more levels than any field; write a field like tank.volume or relief[0].opens");
        }
        List<Step> steps = new ArrayList<>();
        for (String part : text.split("\\.", -1)) {
            Matcher matcher = PART.matcher(part);
            if (!matcher.matches()) {
                throw new IllegalArgumentException("is not a field; write a field like tank.volume or relief[0].opens");
            }
            steps.add(new Key(matcher.group(1)));
            if (matcher.group(2) != null) {
                steps.add(new Item(Integer.parseInt(matcher.group(2))));
            }
        }
        return new FieldPath(steps);
    }
}
