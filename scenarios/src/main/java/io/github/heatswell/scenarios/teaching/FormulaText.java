package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.scenarios.report.Html;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Formulas in plain text as a page shows them: with Greek letters, and with what follows an underscore set lower. */
final class FormulaText {

    private static final Pattern WORD = Pattern.compile("([A-Za-z]+)(?:_([A-Za-z0-9]+))?");
    private static final Map<String, String> GREEK =
            Map.of("alpha", "\u03b1", "beta", "\u03b2", "kappa", "\u03ba", "nu", "\u03bd", "rho", "\u03c1");

    private FormulaText() {}

    static void write(Html html, String formula) {
        Matcher word = WORD.matcher(formula);
        int from = 0;
        while (word.find()) {
            html.text(signs(formula.substring(from, word.start())));
            html.text(GREEK.getOrDefault(word.group(1), word.group(1)));
            if (word.group(2) != null) {
                html.open("sub").text(word.group(2)).close();
            }
            from = word.end();
        }
        html.text(signs(formula.substring(from)));
    }

    private static String signs(String text) {
        return text.replace("<=", "\u2264").replace(" - ", " \u2212 ");
    }
}
