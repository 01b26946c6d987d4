package io.github.heatswell.scenarios.wording;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Finds the known word that a misspelt one most likely means.
 */
public final class Nearest {

    /** Longer words are not worth comparing; no known word comes near this length. */
    private static final int MAX_LENGTH = 60;

    private static final Pattern MARKS = Pattern.compile("[-_\\s]");

    private Nearest() {}

    /**
     * Finds the closest word. Case and the marks between words do not count; up to a third of the letters may differ.
     *
     * @param word the word as written
     * @param known the words it could stand for
     * @return the closest known word, the first of several equally close ones, or empty if none is close
     */
    public static Optional<String> to(String word, Collection<String> known) {
        String written = bare(word);
        if (written.isEmpty() || written.length() > MAX_LENGTH) {
            return Optional.empty();
        }
        String best = null;
        int bestDistance = Integer.MAX_VALUE;
        for (String candidate : known) {
            String bare = bare(candidate);
            int distance = distance(written, bare);
            if (distance < bestDistance && 3 * distance <= Math.max(3, Math.min(written.length(), bare.length()))) {
                best = candidate;
                bestDistance = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    /**
     * The closest word as the end of a message.
     *
     * @param word the word as written
     * @param known the words it could stand for
     * @return {@code ; did you mean ...?}, or the empty string if no known word is close
     */
    public static String hint(String word, Collection<String> known) {
        return to(word, known).map(near -> "; did you mean " + near + "?").orElse("");
    }

    private static String bare(String word) {
        return MARKS.matcher(word.toLowerCase(Locale.ROOT)).replaceAll("");
    }

    /** Letters to add, drop, change or swap with their neighbour to get from one word to the other. */
    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int step(int[][] d, String a, String b, int i, int j) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int least = Math.min(d[i - 1][j - 1] + (same ? 0 : 1), 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
    }
}
