package io.github.heatswell.scenarios.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.document.Node.Scalar;
import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class YamlTreeTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            site:\\n\\taltitude: 3 m        | 2:1  | a tab stands here
            a: b: c                         | 1:5  | a colon with a blank behind it begins a value
            a:1\\nb: 2                     | 2:2  | a colon with a blank behind it begins a value
            a:\\n  b: 1\\n  c:2\\nd: 3     | 4:1  | is there a blank behind every colon?
            a: [1, 2                        | 1:9  | a comma or the closing bracket is missing
            a: {b: 1                        | 1:9  | a comma or the closing bracket is missing
            a: 'x                           | 1:4  | a quote is opened here and never closed
            a: "x                           | 1:4  | a quote is opened here and never closed
            a: 1\\nb: "x\\nc: 2\\n---\\nd: 3   | 2:4  | a quote is opened here and not closed before the line that begins with --- or ...
            a: "\\d"                        | 1:6  | a backslash between double quotes begins a character that has another name
            a: "\\x4"                       | 1:7  | a backslash between double quotes begins a character that has another name
            a: - b                          | 1:4  | a dash with a blank behind it begins an item of a list, and none can begin here
            a: ? b                          | 1:4  | a question mark with a blank behind it means something else in such files
            a: 'b' c                        | 1:8  | something stands behind a complete value; put the whole value in quotes
            a: >x\\n  b                     | 1:5  | the text behind | or > is not laid out as a block
            %YAML x\\n---\\na: 1             | 1:7  | a line that begins with % is for programs; remove it
            a: !<x 1                        | 1:7  | tags (!) are not used here; remove the mark, or put the text in quotes
            a: !e!x 1                       | 1:4  | tags (!) are not used here; remove the mark, or put the text in quotes
            a: & b                          | 1:5  | anchors (&) are not used here; put the text in quotes
            a: * b                          | 1:5  | references (*) are not used here; put the text in quotes
            a: % b                          | 1:4  | a value cannot begin with %; put it in quotes
            a: @x                           | 1:4  | a value cannot begin with @
            a: `x                           | 1:4  | a value cannot begin with `
            - 1                             | 1:1  | not of a list
            x                               | 1:1  | not of a single value
            # nothing                       | 1:1  | the file is empty
            a: &x 1                         | 1:4  | anchors (&) are not used
            a: *x                           | 1:4  | references (*) are not used
            a: !!str 1                      | 1:4  | tags (!) are not used
            a: !mine {}                     | 1:4  | tags (!) are not used
            a: 1\\na: 2                     | 2:1  | a: is given twice, first on line 1
            a: {b: 1, b: 2}                 | 1:11 | b: is given twice, first on line 1
            a:\\n  b: 1\\n c: 2             | 3:2  | this line begins in another column than those it belongs to; indent all of them alike
            ? [1]\\n: 2                     | 1:3  | a key must be a word, not a list
            a: 1\\n---\\nb: 1               | 2:1  | a second document begins here
            [[[[[[[[[[1]]]]]]]]]]           | 1:9  | this is nested too deeply
            a: ]                            | 1:4  | a value is missing before this
            a: 1\\u0007                     | 1:5  | a control character (U+0007) stands here
            """)
    void whatIsNotWantedIsRefusedWhereItStands(String text, String at, String message) {
        String source = text.replace("\\n", "\n").replace("\\t", "\t").replace("\\u0007", "\u0007");
        List<Fault> faults = faults(source);
        assertEquals(1, faults.size(), faults::toString);
        assertEquals(at, faults.get(0).at().toString(), faults::toString);
        assertTrue(faults.get(0).message().contains(message), faults::toString);
    }

    @Test
    void numbersSplitByAWrongCommaAreJoinedAgain() {
        Mapping root = root("a: { p: 4,2 bar, q: 3 }");
        Mapping inner = (Mapping) root.entries().get(0).value();
        assertEquals(2, inner.entries().size());
        assertEquals(
                new Scalar("4,2 bar", new Location(1, 9)),
                inner.entries().get(0).value());
    }

    @Test
    void valuesStayTextWhateverTheyLookLike() {
        for (String value : List.of("no", "1e5", "06:30", "null", "0x10", "2026-11-25", "~")) {
            assertEquals(value, ((Scalar) root("a: " + value).entries().get(0).value()).text());
        }
    }

    @Test
    void linesMayEndAsOnAnySystem() {
        for (String end : List.of("\n", "\r\n", "\r")) {
            Mapping root = root("a: 1" + end + "b:" + end + "  c: 2" + end);
            Mapping b = (Mapping) root.entries().get(1).value();
            assertEquals(new Location(3, 6), b.entries().get(0).value().at());
        }
    }

    @Test
    void hugeAndDeepTextsAreRefusedQuickly() {
        for (String bomb : List.of(
                "[".repeat(200_000), "{a: ".repeat(50_000), "- ".repeat(100_000), "a: '" + "x".repeat(200_000))) {
            assertTimeoutPreemptively(
                    Duration.ofSeconds(5), () -> assertEquals(1, faults(bomb).size()));
        }
    }

    @Test
    void placesCountCharactersNotUnits() {
        assertEquals(new Location(1, 4), Location.after("a\ud83d\ude00b"));
        assertEquals(new Location(2, 1), Location.after("a\r\n"));
        assertEquals(new Location(3, 2), Location.after("a\n\rb"));
    }

    private static List<Fault> faults(String text) {
        Faults faults = new Faults();
        YamlTree.of(text, faults);
        return faults.inOrder();
    }

    private static Mapping root(String text) {
        Faults faults = new Faults();
        Optional<Mapping> root = YamlTree.of(text, faults);
        assertTrue(faults.none(), () -> faults.inOrder().toString());
        return root.orElseThrow();
    }
}
