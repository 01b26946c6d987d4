package io.github.heatswell.scenarios.fuzz;

import io.github.heatswell.scenarios.generated.Chance;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Makes files from texts: one thing, or up to four, go wrong with the text, and now and then its encoding. */
final class Mutations {

    private static final int MOST = 4;

    private final List<Mutation> mutations;

    Mutations(List<Mutation> ofItsKind) {
        mutations = new ArrayList<>(TextMutations.ALL);
        mutations.addAll(ofItsKind);
    }

    /** A file made from the text. */
    byte[] of(String text, Chance chance) {
        String changed = text;
        for (int i = chance.oneIn(2) ? 0 : chance.below(MOST); i >= 0; i--) {
            changed = chance.of(mutations).of(changed, chance);
        }
        return encoded(changed, chance);
    }

    private static byte[] encoded(String text, Chance chance) {
        byte[] plain = text.getBytes(StandardCharsets.UTF_8);
        return switch (chance.below(60)) {
            case 0 -> text.getBytes(StandardCharsets.UTF_16);
            case 1 -> text.getBytes(StandardCharsets.ISO_8859_1);
            case 2 -> Arrays.copyOf(plain, chance.below(plain.length + 1));
            case 3 -> Arrays.copyOf(plain, plain.length + 1 + chance.below(20));
            case 4 -> ("\ufeff" + text).getBytes(StandardCharsets.UTF_8);
            case 5, 6 -> flipped(plain, chance);
            default -> plain;
        };
    }

    private static byte[] flipped(byte[] bytes, Chance chance) {
        for (int i = chance.below(MOST); i >= 0 && bytes.length > 0; i--) {
            bytes[chance.below(bytes.length)] = (byte) chance.below(256);
        }
        return bytes;
    }
}
