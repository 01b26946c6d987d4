package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.fault.Location;

/**
 * Where a section stands.
 *
 * @param path the section as messages name it, such as {@code relief[0]}; empty for the top of the file
 * @param at where to point if something is missing in it
 */
record Place(String path, Location at) {

    /** The path of one of its keys. */
    String of(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }
}
