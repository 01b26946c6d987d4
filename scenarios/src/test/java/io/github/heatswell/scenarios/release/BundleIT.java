package io.github.heatswell.scenarios.release;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The jar that holds the program with everything it needs is a copy of other people's work, and so must carry their notices and
 * licences. What it must carry is taken from the libraries that this build resolved, so a new one without an entry fails.
 */
class BundleIT {

    private static Jar bundle;
    private static String notice;

    @BeforeAll
    static void read() {
        bundle = Jar.read(Release.BUNDLE);
        notice = words(bundle.text("META-INF/NOTICE"));
    }

    static List<Library> foreign() throws IOException {
        return Release.module("scenarios").libraries().stream()
                .filter(library -> !library.own())
                .toList();
    }

    @Test
    void everyLibraryIsLookedAt() throws IOException {
        assertTrue(foreign().size() > 10, "libraries are found: " + foreign());
    }

    @Test
    void itStartsTheProgramAndIsNoOtherModule() throws IOException {
        assertEquals(
                "io.github.heatswell.scenarios.Heatswell", bundle.manifest().getValue("Main-Class"));
        assertEquals("io.github.heatswell.all", bundle.manifest().getValue("Automatic-Module-Name"));
        assertEquals(List.of(), bundle.ending("module-info.class"));
        assertEquals(Release.licence(), bundle.text("META-INF/licenses/Apache-2.0.txt"));
    }

    /** The notice names a library where it tells its version, and points to a licence that is there. */
    @ParameterizedTest
    @MethodSource("foreign")
    void theNoticeNamesEveryLibrary(Library library) {
        String section = sectionOf(library);
        assertTrue(section.contains(' ' + library.version() + " ("), library.version() + " is not in: " + section);
        String licence = section.replaceFirst("(?s).*?(META-INF/licenses/[\\w.-]+\\.txt).*", "$1");
        assertTrue(bundle.has(licence), licence + " of " + library + " is missing");
    }

    /** Section 4 (d) of the Apache License: the attributions of a library's own notice go along. */
    @ParameterizedTest
    @MethodSource("foreign")
    void theNoticeRepeatsTheirNotices(Library library) {
        Jar jar = Jar.read(library.jar());
        for (String name : jar.files().keySet()) {
            if (!name.matches("META-INF/NOTICE(\\.txt|\\.md)?")) {
                continue;
            }
            for (String paragraph : jar.text(name).split("\\n\\s*\\n")) {
                for (String attribution : attributions(paragraph)) {
                    assertTrue(words(sectionOf(library)).contains(attribution), library + ": " + attribution);
                }
            }
        }
    }

    /** Whatever a library says of its terms, beyond a copy of the Apache License, is in the jar word by word. */
    @ParameterizedTest
    @MethodSource("foreign")
    void theirLicencesAreThere(Library library) {
        Jar jar = Jar.read(library.jar());
        for (String name : jar.files().keySet()) {
            if (!name.matches("META-INF/[^/]*(LICEN[CS]E|COPYING)[^/]*")) {
                continue;
            }
            String licence = terms(jar.text(name));
            boolean found = bundle.files().keySet().stream()
                    .filter(file -> file.matches("META-INF/(licenses/)?[^/]*(LICENSE|\\.txt)"))
                    .anyMatch(file -> terms(bundle.text(file)).equals(licence));
            assertTrue(found, library + ": the text of " + name + " is missing");
        }
    }

    /** The notice says "They are unchanged"; it also says that there is nothing else. */
    @Test
    void theClassesAreTheirsUnchanged() throws IOException {
        Set<String> expected =
                new TreeSet<>(Jar.read(Release.module("scenarios").jar("")).ending(".class"));
        expected.remove("module-info.class");
        for (Library library : Release.module("scenarios").libraries()) {
            Jar jar = Jar.read(library.jar());
            for (String name : jar.ending(".class")) {
                if (!name.endsWith("module-info.class")) {
                    assertArrayEquals(jar.files().get(name), bundle.files().get(name), name);
                    assertTrue(expected.add(name), name + " comes from two libraries");
                }
            }
        }
        assertEquals(expected, new TreeSet<>(bundle.ending(".class")));
    }

    /** LGPL 2.1, section 6: the reader can get the source of JFreeChart and put a changed one in its place. */
    @Test
    void whoeverGetsItMayChangeTheChartLibrary() {
        assertTrue(bundle.text("META-INF/licenses/LGPL-2.1.txt").contains("Version 2.1, February 1999"));
        String section = notice.substring(notice.indexOf("JFreeChart"), notice.indexOf("Hipparchus"));
        assertTrue(section.contains(":sources") && section.contains("You may change JFreeChart"), section);
        assertFalse(notice.contains("${"), notice);
    }

    private static String sectionOf(Library library) {
        for (String section : bundle.text("META-INF/NOTICE").split("\\n\\s*\\n")) {
            String words = words(section);
            String named = "[(] ?" + library.group() + ":(.*[ ,])?" + library.artifact() + "[,)].*";
            if (words.matches(".*" + named)) {
                return section;
            }
        }
        throw new AssertionError("scenarios/src/bundle/NOTICE has no section of " + library.coordinates());
    }

    private static List<String> attributions(String paragraph) {
        if (paragraph.lines().anyMatch(line -> line.startsWith("This "))) {
            return List.of(words(paragraph.substring(paragraph.indexOf("This "))));
        }
        return paragraph
                .lines()
                .filter(line -> line.startsWith("Copyright "))
                .map(BundleIT::words)
                .toList();
    }

    private static String words(String text) {
        return text.replaceAll("\\s+", " ").trim();
    }

    /** Copies of the Apache License differ in layout, and in the brackets and the address of its appendix. */
    private static String terms(String licence) {
        return licence.replaceAll("[\\s\\[\\]{}]+", "").replace("https://", "http://");
    }
}
