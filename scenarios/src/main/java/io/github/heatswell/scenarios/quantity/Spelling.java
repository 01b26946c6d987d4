package io.github.heatswell.scenarios.quantity;

import io.github.heatswell.units.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Finds a unit by one of its spellings: exactly as it stands, and otherwise without regard to case and blanks if that
 * leaves but one unit.
 */
final class Spelling {

    private Spelling() {}

    static <U extends Unit> Optional<U> find(String text, List<U> units) {
        Optional<U> exact = only(text, units, Spelling::unspaced);
        return exact.isPresent()
                ? exact
                : only(text, units, spelling -> unspaced(spelling).toLowerCase(Locale.ROOT));
    }

    private static <U extends Unit> Optional<U> only(String text, List<U> units, UnaryOperator<String> form) {
        String wanted = form.apply(text);
        List<U> matching = units.stream()
                .filter(unit -> unit.spellings().stream().map(form).anyMatch(wanted::equals))
                .toList();
        return matching.size() == 1 ? Optional.of(matching.get(0)) : Optional.empty();
    }

    private static String unspaced(String text) {
        return text.replace(" ", "");
    }
}
