package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.file.Scenario;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * A house as one file that simulates it in a browser: a page, its look, its script in modules, and the simulation compiled to script
 * and compressed, which a quick build leaves out. The page asks for nothing else.
 */
public final class LivePage {

    /** The modules of the script, each after those it uses. */
    static final List<String> MODULES =
            List.of("shapes", "house", "lab", "controls", "drawing", "trace", "words", "questions", "files", "main");

    private static final Pattern IMPORT = Pattern.compile("(?m)^import (.*) from '\\./(\\w+)\\.js';$");

    private static final Pattern EXPORT = Pattern.compile("(?m)^export (function|const) (\\w+)");

    private static final Pattern PLACE = Pattern.compile("\\{\\{(\\w+)}}");

    private final String engine;

    private LivePage(String engine) {
        this.engine = engine;
    }

    /**
     * The page of this build.
     *
     * @return the page; empty if the simulation was not compiled for it
     */
    public static Optional<LivePage> bundled() {
        return text("engine.js").map(LivePage::packed).map(LivePage::new);
    }

    /**
     * The page of a house.
     *
     * @param name what the file is to be called
     * @param scenario the house, as it was read or changed
     * @return the file
     * @throws IllegalArgumentException if the scenario was built by a program and so has no text
     */
    public ResultFile of(String name, Scenario scenario) {
        String house = scenario.changes().isEmpty() ? scenario.source() : scenario.changedText();
        if (house.isEmpty()) {
            throw new IllegalArgumentException("scenario: a page holds the text of a file, and this one has none");
        }
        String page = PLACE.matcher(part("page.html"))
                .replaceAll(found -> Matcher.quoteReplacement(content(found.group(1), scenario, house)));
        return ResultFile.ofText(name, out -> out.append(page));
    }

    private String content(String place, Scenario scenario, String house) {
        return switch (place) {
            case "style" -> part("page.css");
            case "script" -> "(() => {\n\"use strict\";\n" + script() + "})();";
            case "engine" -> engine;
            case "name" -> scenario.name();
            case "house" -> Html.escaped(house);
            case "version" -> Version.number();
            default -> throw new IllegalStateException("nothing is known of " + place);
        };
    }

    /** The modules one after the other in one script, as nothing is loaded from elsewhere; each keeps its names but for what it exports. */
    private static String script() {
        return MODULES.stream().map(LivePage::module).collect(Collectors.joining("\n"));
    }

    private static String module(String name) {
        String text = part(name + ".js");
        String exported =
                EXPORT.matcher(text).results().map(found -> found.group(2)).collect(Collectors.joining(", "));
        String body = EXPORT.matcher(IMPORT.matcher(text).replaceAll("const $1 = $2;"))
                .replaceAll("$1 $2");
        return "const " + name + " = (() => {\n" + body + "return { " + exported + " };\n})();";
    }

    /** A script in a quarter of its bytes, as letters that any page may hold. */
    private static String packed(String script) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (OutputStream out = new DeflaterOutputStream(packed, new Deflater(Deflater.BEST_COMPRESSION))) {
            out.write(script.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Base64.getEncoder().encodeToString(packed.toByteArray());
    }

    private static String part(String name) {
        return text(name).orElseThrow(() -> new IllegalStateException(name + " is missing"));
    }

    private static Optional<String> text(String name) {
        try (InputStream in = LivePage.class.getResourceAsStream("live/" + name)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
