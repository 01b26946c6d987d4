package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a note says that somebody saw of heater or relief pipe, in the words of several languages.
 *
 * @param seen what was seen
 * @param volume the water that was caught (m3), else 0
 */
record SeenNote(Seen seen, double volume) {

    /** What can be seen. */
    enum Seen {
        DRIPS("the relief pipe drips"),
        DRY("the relief pipe is dry"),
        PAPER_WET("water came since the paper was laid"),
        PAPER_DRY("no water came since the paper was laid"),
        CAME_ON("the heater came on"),
        WENT_OFF("the heater went off"),
        ON("the heater is on"),
        OFF("the heater is off"),
        CAUGHT("water caught since the log began, or since the last such note");

        private final String words;

        Seen(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    private static final Pattern DRIP =
            pattern("\\bdrip\\w*|trickl\\w*|\\bdribbl\\w*|discharg\\w*|weep(?:s|ing)|spit(?:s|ting)"
                    + "|\\b(?:valve|t&p|tpr|prv) (?:is |was |has )?(?:open(?:s|ed)?|leak\\w*|releas\\w*|lift\\w*|blew)"
                    + "|tropf\\w*|tr\u00f6pfel\\w*|(?:ventil|sicherheitsventil) (?:offen|\u00f6ffnet)|goutte\\w*|fuit|coule"
                    + "|gote\\w+|drupp\\w+|druipt|gocciol\\w+");
    private static final Pattern WET = pattern(
            "\\bwet\\b|\\bdamp\\b|\\bnass\\b|\\bna\u00df\\b|feucht|mouill\u00e9\\w*|mojad\\w+|\\bnat\\b|bagnat\\w+");
    private static final Pattern DRY =
            pattern("\\bdry\\b|trocken|\\bsec\\b|\\bs\u00e8che\\b|\\bsec[oa]\\b|\\bdroog\\b|asciutt\\w+");
    private static final Pattern NO_LONGER_DRY =
            pattern("(?:\\b(?:no longer|not|nicht(?: mehr)?)|n't) (?:dry|trocken)\\b(?! yet)");
    private static final Pattern PAPER = pattern("paper|tissue|towel|papier|papel|carta|tuch");
    private static final Pattern NOT = pattern(
            "\\b(?:no|nope|nah|nein|not|never|none|nothing|without|stop(?:s|ped)?|ended|over|kein\\w*|nicht|nichts|aufgeh\u00f6rt"
                    + "|pas|plus|sans|rien|sin|nada|geen|niet|non|senza)\\b|n't\\b");
    /** A question says nothing until it is answered. */
    private static final Pattern YES = pattern("\\b(?:yes|yep|yeah|ja|oui|s\u00ed)\\b");
    /** A tap that drips is no relief valve, nor is another house's. */
    private static final Pattern ELSEWHERE = pattern(
            "\\b(?:neighbou?r\\w*|next door|nachbar\\w*|voisin\\w*|vecin\\w*|tap|taps|faucet|shower|sink|wasserhahn|hahn|robinet|grifo|kraan|rubinetto)\\b");

    private static final Pattern HEATER =
            pattern("\\b(?:heaters?|burners?|boiler|elements?|flame|thermostat|furnace|gas|brenner|heizung|heizstab"
                    + "|kessel|therme|br\u00fbleur|bruleur|chaudi\u00e8re|chauffe-eau|chauffage|r\u00e9sistance|calentador|quemador|caldera|termo"
                    + "|ketel|brander|verwarming|bruciatore|caldaia|scaldabagno)\\b");
    private static final Pattern OFF = pattern(
            "\\b(?:off|out|stop(?:s|ped)?|shuts?|aus|ausgeschaltet|ausgegangen|gestoppt|\u00e9teint\\w*|arr\u00eat\\w*"
                    + "|apagad[oa]|apaga|uit|spent[oa])\\b");
    /** What is not off yet is on. */
    private static final Pattern NOT_OFF = pattern(
            "(?:\\b(?:not|never|no longer|nicht|niet)|n't) (?:(?:yet|been|gone?|going|turned|switch(?:ed)?|shut|click(?:ed)?|kick(?:ed)?|mehr) ){0,2}"
                    + "(?:off|out|stop(?:ped)?|aus|ausgegangen|uit)\\b");

    private static final Pattern ON = pattern(
            "\\b(?:on|lit|fir(?:es|ed|ing)|start(?:s|ed)?|runs|running|going(?! to)|heating|an|ein|l\u00e4uft|angesprungen|startet|heizt"
                    + "|allum\u00e9\\w*|marche|d\u00e9marre|encendid[oa]|enciende|aan|acces[oa])\\b");
    private static final Pattern HEATS =
            pattern("^\\W*(?:heats?|heating(?: up)?|heizt|aufheizen|chauffe|calienta|calentando|warmt op)\\W*$");
    private static final Pattern JUST = pattern(
            "\\b(?:came|comes|kick(?:s|ed)|turn(?:s|ed)|switch(?:es|ed)|went|goes|fire[sd]|lit|start(?:s|ed)?"
                    + "|stop(?:s|ped)?|shuts?|click(?:s|ed)|angesprungen|ausgegangen|springt|geht|ging|startet|gestoppt|d\u00e9marre|enciende|apaga)\\b");
    private static final Pattern CATCH =
            pattern("\\b(?:caught|collected|bucket|jug|aufgefangen|gesammelt|eimer|recueilli\\w*|recogid[oa]"
                    + "|opgevangen|raccolt[oa])\\b");
    private static final Pattern PARTS = Pattern.compile("[;,]\\s+|(?<!\\s)\\s++(?:and|und|et|y|en)\\s+");
    private static final Pattern AMOUNT = pattern("(?<![\\d.,])(\\d{1,4}(?:[.,]\\d{1,3})?)\\s?(fl oz|[a-z]+)\\b");

    private static Pattern pattern(String regex) {
        return Pattern.compile(
                regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);
    }

    /** The parts of a note, each of which is about one thing. */
    static Stream<String> parts(String note) {
        return PARTS.splitAsStream(note);
    }

    /** Whether a part says that something is not so. */
    static boolean isDenied(String part) {
        return NOT.matcher(part).find();
    }

    /** What a note says; nothing if it is about something else. */
    static List<SeenNote> of(String note) {
        List<SeenNote> all = new ArrayList<>();
        List<String> parts = parts(note)
                .filter(part -> CATCH.matcher(part).find() || !SpotNote.isAbout(part))
                .toList();
        for (String part : parts) {
            if (CATCH.matcher(part).find()) {
                caught(part, all);
            } else if (part.contains("?")
                    && !isDenied(part)
                    && !YES.matcher(part).find()) {
                continue;
            } else if (HEATS.matcher(part).find()) {
                all.add(new SeenNote(Seen.ON, 0));
            } else if (HEATER.matcher(part).find()) {
                heater(part, all);
            } else if (!ELSEWHERE.matcher(part).find()) {
                pipe(part, all);
            }
        }
        return List.copyOf(all);
    }

    private static void caught(String part, List<SeenNote> all) {
        Matcher amount = AMOUNT.matcher(part);
        while (amount.find()) {
            if (QuantityReader.isUnit(amount.group(2), Kind.VOLUME)) {
                var read = QuantityReader.read(amount.group(1).replace(',', '.') + " " + amount.group(2), Kind.VOLUME);
                all.add(new SeenNote(Seen.CAUGHT, read.unit().toSi(read.value())));
                return;
            }
        }
    }

    private static void heater(String part, List<SeenNote> all) {
        boolean just = JUST.matcher(part).find();
        boolean not = NOT.matcher(part.replaceAll("(?iu)stop\\w*", "")).find();
        if (NOT_OFF.matcher(part).find()) {
            all.add(new SeenNote(Seen.ON, 0));
        } else if (OFF.matcher(part).find()) {
            all.add(new SeenNote(just ? Seen.WENT_OFF : Seen.OFF, 0));
        } else if (ON.matcher(part).find()) {
            all.add(new SeenNote(not ? Seen.OFF : just ? Seen.CAME_ON : Seen.ON, 0));
        }
    }

    private static void pipe(String part, List<SeenNote> all) {
        boolean paper = PAPER.matcher(part).find();
        boolean not = NOT.matcher(part).find();
        boolean wet = DRIP.matcher(part).find() || WET.matcher(part).find();
        if (paper && NO_LONGER_DRY.matcher(part).find()) {
            all.add(new SeenNote(Seen.PAPER_WET, 0));
        } else if (wet && !not) {
            all.add(new SeenNote(paper ? Seen.PAPER_WET : Seen.DRIPS, 0));
        } else if (wet || DRY.matcher(part).find() && !not) {
            all.add(new SeenNote(paper ? Seen.PAPER_DRY : Seen.DRY, 0));
        }
    }
}
