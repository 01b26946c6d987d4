package io.github.heatswell.scenarios.generated;

import io.github.heatswell.scenarios.file.FormatKey;
import io.github.heatswell.scenarios.file.FormatKey.Single;
import io.github.heatswell.scenarios.file.FormatRange;
import io.github.heatswell.scenarios.generated.Part.Keyed;
import io.github.heatswell.scenarios.generated.Part.Plain;
import io.github.heatswell.scenarios.generated.Part.Several;
import java.util.List;
import java.util.Locale;

/** Gives every key of the format a value by its form alone; what belongs together is seen to later. */
final class Sampler {

    private static final List<String> WORDS = List.of(
            "house",
            "by the brook",
            "T&P",
            "café",
            "30 °C",
            "it drips: why?",
            "# 7",
            "\"old\"",
            "o'clock",
            "{x}",
            "- no",
            "100 %",
            "a, b",
            "null",
            "<b>",
            "\\n",
            "5 bar",
            "ß",
            "日本");
    /** How often a part of a house is there that need not be. */
    private static final double PART_OF_A_HOUSE = 0.7;

    private static final int MAX_LIST = 5;
    private static final int MAX_DAY = 12;

    private final Chance chance;
    private final Wildness wildness;
    private final Numbers numbers;

    Sampler(Chance chance, Wildness wildness, Numbers numbers) {
        this.chance = chance;
        this.wildness = wildness;
        this.numbers = numbers;
    }

    /** Values for the needed keys, and for some of the others. */
    Keyed keyed(List<FormatKey> keys) {
        Keyed drawn = new Keyed();
        for (FormatKey key : keys) {
            boolean section = key.path().indexOf('.') < 0 && !key.inner().isEmpty();
            if (key.needed() || chance.with(section ? PART_OF_A_HOUSE : wildness.optional())) {
                drawn.put(key.name(), part(key));
            }
        }
        return drawn;
    }

    private Part part(FormatKey key) {
        boolean inner = !key.inner().isEmpty() && (key.single().isEmpty() || chance.with(0.5));
        if (!inner) {
            return single(key.single().orElseThrow());
        }
        return key.list() ? several(key) : keyed(key.inner());
    }

    private Several several(FormatKey key) {
        Several items = new Several();
        int number = chance.whole(1, key.name().equals("draws") ? MAX_DAY : MAX_LIST);
        for (int i = 0; i < number; i++) {
            items.items().add(keyed(key.inner()));
        }
        return items;
    }

    private Part single(Single single) {
        if (single.kind().isPresent()) {
            return numbers.drawn(single);
        }
        String words = single.words();
        if (words.startsWith("one of ")) {
            return new Plain(
                    cased(chance.of(List.of(words.substring("one of ".length()).split(", ")))));
        }
        if (words.startsWith("text of up to ")) {
            return new Plain(text(Integer.parseInt(words.replaceAll("\\D", ""))));
        }
        if (words.equals("whole number")) {
            FormatRange range = single.range().orElseThrow();
            int first = (int) range.low();
            int last = (int) range.high();
            return new Plain(Integer.toString(
                    chance.with(wildness.limits()) ? chance.of(List.of(first, last)) : chance.whole(first, last)));
        }
        if (words.equals("time of day")) {
            return new Plain(clock(chance.whole(0, 86_399), chance.with(0.2)));
        }
        if (words.startsWith("date ")) {
            return new Plain(chance.with(0.5) ? Integer.toString(chance.whole(1, 366)) : date());
        }
        if (words.startsWith("amount of money per ")) {
            return new Plain(money() + chance.of(List.of(" per m3", " per L", " per gal")));
        }
        if (words.startsWith("amount of money")) {
            return new Plain(money());
        }
        if (words.startsWith("one or more of ")) {
            String some = words.substring("one or more of ".length(), words.indexOf(", with commas"));
            return new Plain(chance.of(List.of(some.split(", "))));
        }
        if (words.startsWith("one or more fields")) {
            return new Plain(
                    chance.of(List.of("supply.pressure, tank.volume", "relief.opens", "vessel, supply.water")));
        }
        throw new IllegalStateException("nobody has said how to draw a " + words);
    }

    /** A time of day, with seconds if they count. */
    static String clock(int second, boolean seconds) {
        String minutes = String.format(Locale.ROOT, "%02d:%02d", second / 3600, second / 60 % 60);
        return seconds ? minutes + String.format(Locale.ROOT, ":%02d", second % 60) : minutes;
    }

    private String date() {
        String month =
                chance.of(List.of("Jan", "February", "mar", "APR", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Dec"));
        int day = chance.whole(1, 28);
        return chance.with(0.5) ? day + " " + month : month + " " + day;
    }

    private String money() {
        return chance.whole(0, 999) + (chance.with(0.5) ? "" : "." + chance.whole(10, 99));
    }

    private String cased(String word) {
        return chance.with(0.05) ? word.toUpperCase(Locale.ROOT) : word;
    }

    private String text(int longest) {
        StringBuilder text = new StringBuilder(chance.of(WORDS));
        int number = chance.whole(0, longest > 200 ? 30 : 8);
        for (int i = 0; i < number; i++) {
            text.append(' ').append(chance.of(WORDS));
        }
        String line = text.substring(0, Math.min(longest, text.length())).strip();
        return line.codePointCount(0, line.length()) == line.length() ? line : "house";
    }
}
