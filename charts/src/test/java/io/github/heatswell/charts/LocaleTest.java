package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.charts.table.ComparisonTable;
import io.github.heatswell.charts.table.EventTable;
import io.github.heatswell.charts.table.TraceTable;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing that is written depends on the language of the machine. */
@Isolated("changes the language of the whole Java machine")
class LocaleTest {

    private final Locale before = Locale.getDefault();

    @AfterEach
    void restoreLanguage() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"fr-FR", "ar-EG-u-nu-arab", "tr-TR", "hi-IN-u-nu-deva"})
    void writesTheSameInAnyLanguage(String language) throws IOException {
        Locale.setDefault(Locale.ENGLISH);
        String expected = everything();
        Locale.setDefault(Locale.forLanguageTag(language));
        assertEquals(expected, everything());
    }

    @Test
    void keepsEnglishCapitalsInTurkey() {
        Locale.setDefault(Locale.forLanguageTag("tr-TR"));
        assertEquals("Is", Statement.plain("is").capitalised().text(UnitSystem.SI));
    }

    private static String everything() throws IOException {
        RunResult result = Gallery.dripping();
        StringBuilder out = new StringBuilder();
        for (UnitSystem units : UnitSystem.values()) {
            TraceTable.write(result, units, out);
            EventTable.write(result, units, out);
            ComparisonTable.write(List.of(new NamedRun("a", result)), units, out);
            Chart.of(result, units).writeSvg(out);
        }
        return out.toString();
    }
}
