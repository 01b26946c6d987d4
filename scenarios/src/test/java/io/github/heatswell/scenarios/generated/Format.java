package io.github.heatswell.scenarios.generated;

import io.github.heatswell.scenarios.file.FormatKey;
import io.github.heatswell.scenarios.file.FormatKey.Single;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The keys of the format, to be looked up by their paths. */
final class Format {

    static final List<FormatKey> TOP = FormatKey.top();

    private static final Map<String, FormatKey> BY_PATH =
            FormatKey.all().stream().collect(Collectors.toMap(FormatKey::path, Function.identity()));

    private Format() {}

    /** How the value of a key is written. */
    static Single single(String path) {
        FormatKey key = BY_PATH.get(path);
        if (key == null) {
            throw new IllegalArgumentException("the format has no " + path);
        }
        return key.single().orElseThrow();
    }
}
