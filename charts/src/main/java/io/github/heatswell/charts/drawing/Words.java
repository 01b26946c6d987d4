package io.github.heatswell.charts.drawing;

import java.awt.Font;

/**
 * Words in one font.
 *
 * @param text the words
 * @param font the font
 * @param startsLine whether they begin a new line
 */
record Words(String text, Font font, boolean startsLine) {

    static Words plain(String text) {
        return new Words(text, Type.LABEL, false);
    }

    static Words strong(String text) {
        return new Words(text, Type.LABEL_STRONG, false);
    }

    Words onNewLine() {
        return new Words(text, font, true);
    }
}
