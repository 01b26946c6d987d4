package io.github.heatswell.scenarios.report;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Colours of a style sheet, and how well one is seen on another. */
public final class StyleColours {

    private StyleColours() {}

    /**
     * The colours that a style sheet gives a property.
     *
     * @param css the style sheet
     * @param property a pattern for the beginning of the property's name
     * @return the colours, such as {@code #17506b}
     */
    public static Set<String> of(String css, String property) {
        Set<String> colours = new TreeSet<>();
        Pattern.compile(property + "[a-z-]*:[^;]*?(#[0-9a-f]{6})")
                .matcher(css)
                .results()
                .forEach(match -> colours.add(match.group(1)));
        return colours;
    }

    /**
     * The contrast ratio of WCAG 2.1.
     *
     * @param one a colour, such as {@code #17506b}
     * @param other another
     * @return the ratio, 1 to 21
     */
    public static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        int rgb = Integer.parseInt(colour.substring(1), 16);
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
