package io.github.heatswell.scenarios.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What somebody types, separated from the words around what counts: {@code idk, maybe 80 psi} is {@code 80 psi}, in doubt. The one
 * grammar of interview, guide and readings.
 *
 * @param plain what counts, with numbers in digits, and {@code yes} or {@code no} for all that says no more than that; the text itself
 *     if nothing else is in it
 * @param doubt how sure it was said
 */
public record Spoken(String plain, Doubt doubt) {

    /** How sure something was said. */
    public enum Doubt {
        /** As it is. */
        NONE,
        /** Roughly, or as a guess. */
        GUESS,
        /** Nothing was said but that it is not known. */
        UNKNOWN
    }

    /** Says that it is not known. */
    private static final String IGNORANT =
            "(?:i |we )?(?:really |just )?(?:dunno|(?:don'?t|do not) know)(?: yet)?|idk|dk"
                    + "|(?:i'?m |i am )?(?:not (?:(?:really|quite|too|so|at all) )?sure|unsure)|(?:i have )?(?:no|not an?) (?:idea|clue)"
                    + "|(?:i )?(?:can'?t|cannot) (?:tell|say)|unknown|not[ -]known|who knows";

    private static final String HEDGE =
            "(?:i|i'?d) (?:think|guess|believe|suppose|say)|maybe|may be|might be|could be|should be|probably|perhaps|possibly"
                    + "|about|around|approximately|approx|roughly|circa|ca|some|like|guessing|(?:my )?guess(?: is)?|but|somewhere|near";

    private static final String FILLER =
            "h+m+|u+h+m*|u+m+|well|oh|okay|ok|(?:it|there)(?: is|'?s)(?: got)?|that'?s|we are|we'?re|there are|(?:it|i|we)(?:'?ve| has| have)(?: got)?(?! (?:no|not) )"
                    + "|mostly|mainly|usually|normally|(?:the |my |its )?(?:[a-z-]+ )?(?:t ?& ?p(?: valve)?|valve|tank|heater|burner|thermostat|regulator)(?: is)?(?=[ ,:]+~?\\d)|(?:the |my )?(?:label|tag|plate|gauge|dial|sticker) (?:says|said|reads|shows)"
                    + "|it (?:says|reads|shows)|set (?:to|at)|(?:it )?came (?:at|with) \\d+[^,;]*(?=[,;])|(?:and )?(?:i |we )?(?:have |had |'ve )?(?:then )?(?:turned|set|pumped|charged|brought|lowered|filled)(?: it| them)?(?: down| up| back)? (?:to|at)|between|only|just|an?|the|in|at(?= ?~?\\d)|(?:yes|yeah|yep)(?=\\W+(?:[a-z' ]+ )?~?\\d)";

    private static final Pattern FRONT = pattern("^(?:(?<not>" + IGNORANT + ")|(?<hedge>" + HEDGE + "|~)|(?:" + FILLER
            + "))(?:[\\s,;:.!\u2026-]+|(?<=~)|$)");

    /** What somebody tells before the only quantity; not what says that it is less, more or another. */
    private static final Pattern TOLD = pattern(
            "^(?!.*\\b(?:not|no|never|less|more|over|under|below|above|than|least|most|minus|or|if)\\b"
                    + "|.*n't\\b|.*\\d.*\\d+ ?(?:to|-) ?\\d)[a-z][a-z', ]*?[ ,:]+(?=\\d[\\d.,]* ?(?:psi|bars?|kpa|gal(?:lons?)?|l|lit(?:er|re)s?)\\b)");

    private static final Pattern BEHIND =
            pattern("(?:(?<=\\d)[ -]?ish\\b|(?<=[a-z])[ -]ish$)|\\?+$|[\\s,;:.(\u2026-]+(?:or (?:so|thereabouts)"
                    + "|give or take|more or less|if i (?:remember|recall)(?: right| correctly)?|" + HEDGE + "|"
                    + IGNORANT + ")[).]*$");

    /** What is said behind what counts and adds nothing to it. */
    private static final Pattern AFTER =
            pattern("[\\s,;]+(?:max(?:imum|\\.)?|mostly|mainly|usually|normally|please|thanks)$");
    /** What a number belongs to. */
    private static final Pattern THING =
            pattern("(?<=[a-z])\\s+(?:ones?|tank|heater|water|valve|vessel|unit|model|electric|gas)$");

    private static final Pattern PLACE = pattern(
            "\\s+(?:in|inside|at|on|by|near|behind)\\s+(?:the|my|our)(?:\\s+(?!and\\b|or\\b|but\\b|not\\b)[a-z]+){1,3}$");
    private static final Pattern YES =
            pattern("^(?:y|yes|yeah|yep|yup|sure(?: thing)?|of course|right|correct|go on|ok|okay)$");
    /** That nobody knows of one: no, where it is asked what was seen; not known, where it is asked what there is. */
    private static final String UNSEEN =
            "(?:no,? )?(?:not|none|nothing) (?:(?:that|as far as) )?(?:i|we) (?:know|am aware|'?m aware)(?: of)?";

    private static final Pattern NO =
            pattern("^(?:n|no|nope|nah|not really|none of (?:that|those|them)|" + UNSEEN + ")$");
    private static final Pattern UNKNOWN_OF = pattern("^" + UNSEEN + "$");

    /** Where a number was found, or what else there is to say of it. */
    private static final Pattern ASIDE = pattern(
            "(?<=[\\da-z\u00b0%])(?:[,;]\\s+[a-z(].*|\\s+(?:from|on|when|while|with|without|out of|according|says|now|today|(?:is|was) (?:all|what)|as shipped"
                    + "|(?:at|by|per|as|in) (?:the|its?|my|night|first|least|winter|summer))\\b.*)$");

    private static final Pattern SO = pattern("^i (?<not>(?:don'?t|do not) )?(?:think|guess|believe) so$");
    private static final Pattern END = pattern("[!\\s]+$|(?<=[a-z])\\.+$|[\u2026]+$");

    private static final List<String> SMALL = List.of(
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen");
    private static final List<String> TENS =
            List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");
    private static final Map<String, String> PARTS = Map.of("half", ".5", "quarter", ".25");
    private static final Pattern PART =
            pattern("^(?:(?<whole>\\d+) and )?(?:an? )?(?<part>half|quarter)(?:(?: of)? an?)?\\b(?= ?[a-z])");
    private static final Pattern WORDS = pattern("^[a-z]+(?:[ -][a-z]+)*");

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }

    /**
     * Parts what somebody types.
     *
     * @param line such as {@code about a 50 gal, I think}
     * @return such as {@code 50 gal}, a guess
     */
    public static Spoken of(String line) {
        String said = line.replace('\u2019', '\'').strip().replaceAll("\\s+", " ");
        boolean guessed = false;
        boolean ignorant = false;
        for (String before = ""; !before.equals(said); ) {
            before = said;
            said = END.matcher(said).replaceFirst("");
            Matcher so = SO.matcher(said);
            if (so.matches()) {
                return new Spoken(so.group("not") == null ? "yes" : "no", Doubt.GUESS);
            }
            Matcher front = FRONT.matcher(said);
            if (front.find()) {
                ignorant |= front.group("not") != null;
                guessed |= front.group("hedge") != null;
                said = said.substring(front.end());
                continue;
            }
            Matcher behind = BEHIND.matcher(said);
            if (behind.find()) {
                guessed = true;
                said = behind.replaceFirst("");
                continue;
            }
            said = AFTER.matcher(TOLD.matcher(said).replaceFirst("")).replaceFirst("");
            said = figures(said).orElse(said);
            said = Character.isDigit(said.isEmpty() ? ' ' : said.charAt(0))
                    ? THING.matcher(ASIDE.matcher(said).replaceFirst("")).replaceFirst("")
                    : said;
        }
        if (said.isEmpty()) {
            return new Spoken(
                    agreed(END.matcher(line.strip()).replaceFirst("")), ignorant ? Doubt.UNKNOWN : Doubt.NONE);
        }
        return new Spoken(agreed(said), guessed || ignorant ? Doubt.GUESS : Doubt.NONE);
    }

    /**
     * Whether somebody who is asked for a number says first that it is not known, and then none; or that none is known of.
     *
     * @param line such as {@code no clue, never touched it}, or {@code not that I know of}
     * @return true if there is nothing to take for a number, nor for none
     */
    public static boolean isWithoutNumber(String line) {
        String said = line.replace('\u2019', '\'').strip();
        Matcher front = FRONT.matcher(said);
        return UNKNOWN_OF.matcher(END.matcher(said).replaceFirst("")).matches()
                || front.find()
                        && front.group("not") != null
                        && !of(line).plain().matches("(?i).*\\d.*|no|none\\b.*");
    }

    /**
     * What is said without where it is.
     *
     * @param said such as {@code check valve in the meter}
     * @return such as {@code check valve}
     */
    public static String withoutPlace(String said) {
        return PLACE.matcher(said).replaceFirst("");
    }

    private static String agreed(String said) {
        return YES.matcher(said).matches() ? "yes" : NO.matcher(said).matches() ? "no" : said;
    }

    /** The text with the number it begins with in digits; empty if it begins with none in words. */
    private static Optional<String> figures(String said) {
        Matcher part = PART.matcher(said);
        if (part.find()) {
            String whole = part.group("whole") == null ? "0" : part.group("whole");
            return Optional.of(
                    whole + PARTS.get(part.group("part").toLowerCase(Locale.ROOT)) + said.substring(part.end()));
        }
        Matcher words = WORDS.matcher(said);
        if (!words.find()) {
            return Optional.empty();
        }
        List<String> numbers = new ArrayList<>();
        int number = 0;
        int end = 0;
        int at = 0;
        for (String word : words.group().toLowerCase(Locale.ROOT).split("[ -]")) {
            int small = SMALL.indexOf(word);
            int tens = TENS.indexOf(word);
            at += word.length() + 1;
            if (small >= 0) {
                number += small;
            } else if (tens >= 0) {
                number += 10 * (tens + 2);
            } else if (word.equals("hundred")) {
                number = 100 * Math.max(1, number);
            } else if (word.equals("and") && number >= 100) {
                continue;
            } else {
                break;
            }
            numbers.add(word);
            end = at - 1;
        }
        return numbers.isEmpty() ? Optional.empty() : Optional.of(number + said.substring(end));
    }
}
