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
            site:\\n\\taltitude: 3 m        | 2:1  | this line is indented with a tab
            a: b: c                         | 1:5  | a colon followed by a space starts a value
            a:1\\nb: 2                     | 2:2  | a colon followed by a space starts a value
            a:\\n  b: 1\\n  c:2\\nd: 3     | 4:1  | is there a space after every colon?
            a: [1, 2                        | 1:9  | a comma or a closing bracket is missing
            a: {b: 1                        | 1:9  | a comma or a closing bracket is missing
            a: 'x                           | 1:4  | a quotation mark opens here and never closes
            a: "x                           | 1:4  | a quotation mark opens here and never closes
            a: 1\\nb: "x\\nc: 2\\n---\\nd: 3   | 2:4  | a quotation mark opens here and is not closed before the line that begins with --- or ...
            a: "\\d"                        | 1:6  | this is not a valid escape in double quotes
            a: "\\x4"                       | 1:7  | this is not a valid escape in double quotes
            a: - b                          | 1:4  | a dash followed by a space starts a list item, which is not possible here
            a: ? b                          | 1:4  | a question mark followed by a space has a special meaning in YAML
            a: 'b' c                        | 1:8  | there is extra text after a complete value; put the whole value in quotes
            a: >x\\n  b                     | 1:5  | the text after | or > is not a valid block
            %YAML x\\n---\\na: 1             | 1:7  | a line that begins with % is a YAML directive; remove it
            a: !<x 1                        | 1:7  | tags (!) are not supported; remove the mark, or put the text in quotes
            a: !e!x 1                       | 1:4  | tags (!) are not supported; remove the mark, or put the text in quotes
            a: & b                          | 1:5  | anchors (&) are not supported; put the text in quotes
            a: * b                          | 1:5  | references (*) are not supported; put the text in quotes
            a: % b                          | 1:4  | a value cannot begin with %; put it in quotes
            a: @x                           | 1:4  | a value cannot begin with @
            a: `x                           | 1:4  | a value cannot begin with `
            - 1                             | 1:1  | not of a list
            x                               | 1:1  | not of a single value
            # nothing                       | 1:1  | the file is empty
            a: &x 1                         | 1:4  | anchors (&) are not supported
            a: *x                           | 1:4  | references (*) are not supported
            a: !!str 1                      | 1:4  | tags (!) are not supported
            a: !mine {}                     | 1:4  | tags (!) are not supported
            a: 1\\na: 2                     | 2:1  | a: appears twice, first on line 1
            a: {b: 1, b: 2}                 | 1:11 | b: appears twice, first on line 1
            a:\\n  b: 1\\n c: 2             | 3:2  | this line is not indented like those it belongs with; indent them all the same
            ? [1]\\n: 2                     | 1:3  | a key must be a word, not a list
            a: 1\\n---\\nb: 1               | 2:1  | a second document begins here
            [[[[[[[[[[1]]]]]]]]]]           | 1:9  | this is nested too deeply
            a: ]                            | 1:4  | a value is missing before this
            a: 1\\u0007                     | 1:5  | a control character (U+0007) is here
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
