package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Moments;
import io.github.heatswell.scenarios.file.Origin;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.quantity.ClockTime;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every value that went into an answer about a house, each with where it comes from. */
final class PageInputs {

    /** Sections that say nothing about the house: words about it, what is charted, prices, and what it is compared with. */
    private static final Pattern ABOUT =
            Pattern.compile("(title|question|expect|units|not-known|origins|costs|readings)(\\W.*)?|run\\.sample");

    private static final String PLACE = "site.place";

    private static final Map<String, String> PARTS = Map.of(
            "relief",
            "relief valve",
            "piping",
            "pipe",
            "draws",
            "draw",
            "lock-up-rise",
            "lock-up rise",
            "cut-out",
            "cut-out");

    private static final Pattern CLOCK = Pattern.compile("\\d{1,2}:\\d{2}");

    private PageInputs() {}

    /** The values given, those of a part of the house together, and then those filled in, each with its reason. */
    static List<Block> of(Scenario scenario, QuantityFormat shown) {
        Map<List<String>, List<String>> together = new LinkedHashMap<>();
        scenario.given().forEach((field, value) -> {
            if (!ABOUT.matcher(field).matches()) {
                String part = part(field);
                String rest = words(
                        field.substring(Math.min(field.length(), head(field).length() + 1)));
                together.computeIfAbsent(List.of(part, origin(field, scenario)), key -> new ArrayList<>())
                        .add((rest + " "
                                        + (field.equals(PLACE)
                                                ? scenario.system()
                                                        .site()
                                                        .place()
                                                        .title()
                                                : CLOCK.matcher(value).matches()
                                                        ? clock(value, scenario)
                                                        : field.startsWith("draws") ? use(value) : value(value, shown)))
                                .strip());
            }
        });
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Subheading("Given"));
        blocks.add(new Block.Items(
                together.entrySet().stream()
                        .map(part -> part.getKey().get(0) + ": " + String.join("; ", part.getValue())
                                + part.getKey().get(1))
                        .toList(),
                Block.ListKind.QUOTED_BULLETS));
        List<String> assumed = scenario.assumptions().stream()
                .filter(made -> !ABOUT.matcher(made.field()).matches())
                .map(made -> name(made.field()) + ": " + typical(made.value(), shown) + " ("
                        + PageWords.inUnits(made.basis(), shown) + ")")
                .toList();
        if (!assumed.isEmpty()) {
            blocks.add(new Block.Subheading("Typical values where none were given, each with its reason"));
            blocks.add(new Block.Items(assumed, Block.ListKind.BULLETS));
        }
        return blocks;
    }

    private static String origin(String field, Scenario scenario) {
        if (field.equals(PLACE) && !scenario.system().site().place().isKnown()) {
            return " (nobody said)";
        }
        Origin origin = scenario.origin(field);
        return origin == Origin.GIVEN ? "" : " (" + origin.words() + ")";
    }

    /** The section with its place in a list. */
    private static String head(String field) {
        int dot = field.indexOf('.');
        return dot < 0 ? field : field.substring(0, dot);
    }

    private static String part(String field) {
        return name(head(field));
    }

    /** A field in words, for a row of its own. */
    static String name(String field) {
        return PageWords.capitalised(words(field));
    }

    /** A field in words: {@code relief[0].full-lift} is relief valve 1, full lift. */
    private static String words(String field) {
        return Stream.of(field.split("\\."))
                .filter(key -> !key.isEmpty())
                .map(PageInputs::key)
                .collect(Collectors.joining(", "));
    }

    private static String key(String key) {
        int bracket = key.indexOf('[');
        String name = bracket < 0 ? key : key.substring(0, bracket);
        String number = bracket < 0 ? "" : " " + (1 + Integer.parseInt(key.substring(bracket + 1, key.indexOf(']'))));
        return PARTS.getOrDefault(name, name.replace('-', ' ')) + number;
    }

    /** A time of day as the place of the house tells it. */
    private static String clock(String value, Scenario scenario) {
        return Moments.of(scenario.system(), 0).clock(Math.round(ClockTime.read(value) / 60));
    }

    /** For whom a published profile stands, with its name. */
    private static String use(String profile) {
        return DrawProfile.people(profile)
                .map(people -> "for " + people + " (published day " + profile + ")")
                .orElse(profile);
    }

    /** A value in units of the reader, and a choice without its hyphens. */
    private static String value(String value, QuantityFormat shown) {
        return isChoice(value) ? choice(value) : PageWords.inUnits(value, shown);
    }

    /** The same of a value that nobody gave. */
    private static String typical(String value, QuantityFormat shown) {
        return isChoice(value) ? choice(value) : PageWords.typical(value, shown);
    }

    private static boolean isChoice(String value) {
        return value.chars().noneMatch(Character::isDigit);
    }

    private static String choice(String value) {
        return PageWords.asWritten(value).replace('-', ' ');
    }
}
