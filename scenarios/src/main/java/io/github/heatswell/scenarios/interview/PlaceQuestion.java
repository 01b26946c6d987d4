package io.github.heatswell.scenarios.interview;

import io.github.heatswell.place.Customs;
import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.interview.Answers.Answer;
import io.github.heatswell.scenarios.interview.Question.Unknown;
import io.github.heatswell.units.UnitSystem;
import java.util.Arrays;
import java.util.Optional;

/** Where the house stands: asked first, since units and rules follow it. */
final class PlaceQuestion {

    static final String PLACE = "site.place";

    private PlaceQuestion() {}

    static Question question() {
        return Question.about(
                        PLACE,
                        "Place",
                        AnswerKind.Word.of(Arrays.stream(Place.values())
                                        .filter(Place::isKnown)
                                        .map(Place::key)
                                        .toList())
                                .also("us-ipc", "ipc", "irc")
                                .also("us-upc", "upc")
                                .also("uk", "united kingdom", "gb", "great britain", "england", "scotland", "wales")
                                .also("en", "europe", "eu", "din", "germany", "austria", "france")
                                .also("au-nz", "au", "nz", "australia", "new zealand"))
                .asks("Whose plumbing code holds where the house stands?")
                .find(
                        "us-ipc and us-upc are the US codes (ask the building department); en is Europe.",
                        "us-ipc is the International Plumbing or Residential Code, us-upc the Uniform Plumbing Code; a city or"
                                + " state may have changed either. If you only know that it is the US, us-ipc will do for now: the"
                                + " pressure limits asked here are the same in both. Units, limits and sizes on sale follow the"
                                + " place.")
                .ifUnknown(Unknown.taken(Place.NOT_KNOWN.key(), "the rules of several places are compared"))
                .build();
    }

    /** The units asked for, or else those of the place, or else bar and litres. */
    static UnitSystem units(Optional<UnitSystem> asked, Answers answers) {
        return asked.or(() -> answers.to(question())
                        .filter(Answer::known)
                        .flatMap(answer -> Place.of(answer.value()).customs())
                        .map(Customs::units))
                .orElse(UnitSystem.SI);
    }
}
