package io.github.heatswell.scenarios.interview;

import io.github.heatswell.place.Customs;
import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.interview.Answers.Answer;
import io.github.heatswell.scenarios.interview.Question.Unknown;
import io.github.heatswell.units.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Where the house is: asked first, since units and rules follow it. */
final class PlaceQuestion {

    static final String PLACE = "site.place";

    /**
     * States that took up the Uniform Plumbing Code, from memory, each with its postal abbreviation; the others, and the capital, are
     * taken to have the International one.
     */
    private static final String[] UPC = words("""
            alaska, ak, california, ca, hawaii, hi, idaho, id, iowa, ia, minnesota, mn, montana, mt,
            nebraska, ne, nevada, nv, new mexico, nm, north dakota, nd, oregon, or, south dakota, sd,
            washington, wa""");

    /** What is said of a state: its code is from memory, and not every state decides it for its cities. */
    static final String ASSUMED =
            "Assumed, not looked up: a state, county or city may have adopted another code. Ask the local authority which one"
                    + " applies: us-ipc or us-upc.";

    /** The same beside the place in a file, which does not keep in which words it was answered. */
    static final String TAKEN =
            "its code is assumed from the state or country named, not looked up: ask the local authority";

    /** The codes of the United States, of which a state has either. */
    private static final Set<String> US = Set.of("us-ipc", "us-upc");

    /** The abbreviation of Delaware is left out: it is that of Germany too. */
    private static final String[] OTHER_STATES = words("""
            alabama, al, arizona, az, arkansas, ar, colorado, co, connecticut, ct, delaware,
            district of columbia, dc, d.c, washington dc, washington d.c, florida, fl,
            georgia, ga, illinois, il, indiana, in, kansas, ks, kentucky, ky, louisiana, la, maine, me,
            maryland, md, massachusetts, ma, michigan, mi, mississippi, ms, missouri, mo, new hampshire, nh,
            new jersey, nj, new york, ny, north carolina, nc, ohio, oh, oklahoma, ok, pennsylvania, pa,
            rhode island, ri, south carolina, sc, tennessee, tn, texas, tx, utah, ut, vermont, vt,
            virginia, va, west virginia, wv, wisconsin, wi, wyoming, wy""");

    private static final String[] EUROPE = words("""
            europe, eu, din, austria, belgium, bulgaria, croatia, cyprus, czechia, denmark, estonia, finland,
            france, germany, greece, hungary, iceland, ireland, italy, latvia, lithuania, luxembourg, malta,
            netherlands, the netherlands, norway, poland, portugal, romania, slovakia, slovenia, spain, sweden,
            switzerland, belgique, belgi\u00eb, \u010desko, danmark, deutschland, espa\u00f1a, italia, magyarorsz\u00e1g,
            nederland, norge, \u00f6sterreich, polska, schweiz, suisse, suomi, sverige, svizzera""");

    private static final Question QUESTION = written();

    private PlaceQuestion() {}

    private static String[] words(String list) {
        return list.strip().split(",\\s+");
    }

    static Question question() {
        return QUESTION;
    }

    private static Question written() {
        return Question.about(
                        PLACE,
                        "Place",
                        AnswerKind.Word.of(Arrays.stream(Place.values())
                                        .filter(Place::isKnown)
                                        .map(Place::key)
                                        .toList())
                                .also("us-ipc", "ipc", "irc", "us", "usa", "united states", "america")
                                .also("us-ipc", OTHER_STATES)
                                .endingWith(OTHER_STATES)
                                .endingWith(UPC)
                                .also("us-upc", "upc")
                                .also("us-upc", UPC)
                                .also("uk", "united kingdom", "gb", "great britain", "britain", "england", "scotland")
                                .also("uk", "wales", "northern ireland")
                                .also("en", EUROPE)
                                .also("au-nz", "au", "nz", "australia", "new zealand")
                                .otherwise("; if it is a city, type its state or country too, such as Cleveland, Ohio"))
                .asks("Where is the house?")
                .find(
                        "a state or a country will do; us-ipc and us-upc are the US codes, en is Europe.",
                        "us-ipc is the International Plumbing or Residential Code, us-upc the Uniform Plumbing Code; a city or"
                                + " state may have changed either. If you only know that it is the US, us-ipc will do for now: the"
                                + " pressure limits used here are the same in both. Units, limits and sizes on sale follow the"
                                + " place.")
                .ifUnknown(Unknown.taken(Place.NOT_KNOWN.key(), "the rules of several places are compared"))
                .build();
    }

    /** Whether the code of an answer was only assumed, from the state in it or from the country. */
    static boolean isAssumed(String line, String place) {
        return hasCodes(place)
                && !Set.of("us-ipc", "us-upc", "ipc", "irc", "upc")
                        .contains(line.strip().toLowerCase(Locale.ROOT));
    }

    /** Whether a place is one of several codes that its country knows. */
    static boolean hasCodes(String place) {
        return US.contains(place);
    }

    /** The units asked for, or else those of the place, or else bar and litres; kilopascals once answers are given in them. */
    static UnitSystem units(Optional<UnitSystem> asked, Answers answers) {
        return asked.or(() -> answers.to(question())
                        .filter(Answer::known)
                        .flatMap(answer -> Place.of(answer.value()).customs())
                        .map(Customs::units))
                .orElse(UnitSystem.SI)
                .withPressuresOf(asked.isPresent() ? List.of(asked.get().pressure()) : answers.units());
    }
}
