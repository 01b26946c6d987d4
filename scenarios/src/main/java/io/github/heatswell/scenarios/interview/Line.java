package io.github.heatswell.scenarios.interview;

/**
 * What a file says about one question.
 *
 * @param path the field
 * @param value what the file gives, with its uncertainty; empty if the field is left out
 * @param comment what the value rests on
 */
record Line(String path, String value, String comment) {

    /** The section of the file, or the field itself where it stands at the top. */
    String section() {
        int dot = path.indexOf('.');
        return dot < 0 ? path : path.substring(0, dot);
    }

    /** The key in its section. */
    String key() {
        return path.substring(path.indexOf('.') + 1);
    }

    boolean given() {
        return !value.isEmpty();
    }
}
