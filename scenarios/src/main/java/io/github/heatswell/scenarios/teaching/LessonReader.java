package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.result.Channel;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.teaching.Fields.Wrong;
import io.github.heatswell.scenarios.teaching.Lesson.Claim;
import io.github.heatswell.scenarios.teaching.Lesson.Formula;
import io.github.heatswell.scenarios.teaching.Lesson.House;
import io.github.heatswell.scenarios.teaching.Lesson.Option;
import io.github.heatswell.scenarios.teaching.Lesson.Prediction;
import io.github.heatswell.scenarios.teaching.Lesson.Reading;
import io.github.heatswell.scenarios.teaching.Lesson.TryIt;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads a lesson from its text. */
final class LessonReader {

    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final Pattern WORD = Pattern.compile("\\w+");
    private static final int MANY = Integer.MAX_VALUE;

    private final Map<String, String> cautions;
    private final Map<String, Citation> sources;
    private final Map<String, House> houses = new LinkedHashMap<>();
    private final Map<String, Scenario> others = new LinkedHashMap<>();
    private final Map<String, Expression> figures = new LinkedHashMap<>();
    private Expression.Names names;

    private LessonReader(Map<String, String> cautions, Map<String, Citation> sources) {
        this.cautions = cautions;
        this.sources = sources;
    }

    /**
     * Reads a lesson.
     *
     * @param id its short name
     * @param text its text
     * @param cautions cautions that it may name
     * @param sources sources that it may name
     * @throws IllegalArgumentException if it is no lesson; the message names the lesson, the line and the column
     */
    static Lesson read(String id, String text, Map<String, String> cautions, Map<String, Citation> sources) {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException(
                    Printable.quote(id) + " is no id of a lesson; write such as 'closing-the-system'");
        }
        try {
            return new LessonReader(cautions, sources).lesson(id, Fields.of(text));
        } catch (Wrong e) {
            throw new IllegalArgumentException(id + ":" + e.getMessage(), e);
        }
    }

    private Lesson lesson(String id, Fields from) {
        houses(from);
        TryIt tryIt = tryIt(from.inside("try"));
        Fields ask = from.inside("ask");
        Lesson lesson = new Lesson(
                id,
                from.text("title"),
                from.value("aim").map(node -> Fields.text(node, "aim")).orElse(""),
                from.text("question"),
                from.list("cautions", 1, MANY, this::caution),
                from.list("cautions-after", 0, MANY, this::caution),
                List.copyOf(houses.values()),
                Map.copyOf(others),
                prediction(from.inside("predict")),
                from.list("notice", 1, MANY, this::claim),
                from.list("why", 1, MANY, this::claim),
                formula(from.inside("formula")),
                tryIt,
                ask.text("question"),
                claim(ask, "answer"),
                from.list("sources", 1, MANY, this::source),
                from.list("expect", 1, MANY, this::claim),
                from.value("slider").map(node -> slider(Fields.of(node, "slider"))),
                from.list("readings", 0, MANY, this::reading));
        from.done();
        return lesson;
    }

    /** Everything that expressions may name, which must be known before the first is read. */
    private void houses(Fields from) {
        from.named("houses").forEach((name, node) -> houses.put(name, house(name, Fields.of(node, name))));
        if (houses.isEmpty() || houses.size() > 4) {
            throw new Wrong(from.at(), "houses: must be 1 to 4, not " + houses.size());
        }
        from.named("others").forEach((name, node) -> {
            Fields other = Fields.of(node, name);
            others.put(name, changed(other, one(other, "of").scenario()));
            other.done();
        });
        Fields tried = from.inside("try");
        others.put(Lesson.TRIED, changed(tried, one(tried, "house").scenario()));
        Map<String, Scenario> all = new LinkedHashMap<>(others);
        houses.forEach((name, house) -> all.put(name, house.scenario()));
        names = new Expression.Names(all.keySet(), figures);
        from.named("figures")
                .forEach((name, node) ->
                        figures.put(name, Fields.read(node, name, text -> Expression.of(text, names))));
    }

    private House house(String name, Fields from) {
        House house = new House(
                name,
                from.text("label"),
                changed(from, from.read("scenario", Catalogue::read)),
                from.value("shows")
                        .map(node -> Fields.read(node, "shows", text -> Fields.constant(Channel.class, text)))
                        .orElse(Channel.GAUGE_READING));
        from.done();
        return house;
    }

    private static Scenario changed(Fields from, Scenario scenario) {
        Node set = from.value("set").orElse(null);
        try {
            return set == null ? scenario : scenario.with(changes(from));
        } catch (IllegalArgumentException e) {
            throw new Wrong(set.at(), "set: " + e.getMessage());
        }
    }

    private static List<Change> changes(Fields from) {
        return from.texts("set", 1).stream().map(Change::of).toList();
    }

    private House one(Fields from, String key) {
        return known(from.need(key), "house of this lesson", houses);
    }

    private static <T> T known(Node node, String what, Map<String, T> known) {
        String name = Fields.text(node, what);
        return Optional.ofNullable(known.get(name))
                .orElseThrow(() -> new Wrong(
                        node.at(),
                        Printable.quote(name) + " is no " + what + "; there are " + String.join(", ", known.keySet())
                                + Nearest.hint(name, known.keySet())));
    }

    /** One of the shared cautions by its name, or one of the lesson's own in words. */
    private String caution(Node node) {
        String text = Fields.text(node, "a caution");
        return text.contains(" ") ? text : known(node, "shared caution", cautions);
    }

    /** One of the shared sources by its name, or one of the lesson's own. */
    private Citation source(Node node) {
        return node instanceof Mapping ? citation(Fields.of(node, "source")) : known(node, "shared source", sources);
    }

    static Citation citation(Fields from) {
        Citation citation = new Citation(
                from.text("text"), from.read("standing", text -> Fields.constant(Citation.Standing.class, text)));
        from.done();
        return citation;
    }

    private Prediction prediction(Fields from) {
        Prediction prediction = new Prediction(
                from.text("question"), from.list("options", 3, 4, node -> option(Fields.of(node, "option"))));
        from.done();
        return prediction;
    }

    private Option option(Fields from) {
        String text = from.text("say");
        Optional<Expression> when = expression(from, "when");
        boolean replied = from.value("reply").isPresent();
        Optional<Claim> reply = replied ? Optional.of(claim(from, "reply")) : Optional.empty();
        from.done();
        return new Option(text, when, reply);
    }

    private Claim claim(Node node) {
        return claim(Fields.of(node, "a sentence and its check"), "say");
    }

    private Claim claim(Fields from, String key) {
        Claim claim = new Claim(template(from.need(key), key), expression(from, "check"));
        from.done();
        return claim;
    }

    private Lesson.Template template(Node node, String what) {
        return Fields.read(node, what, text -> Lesson.Template.of(text, names));
    }

    private Optional<Expression> expression(Fields from, String key) {
        return from.value(key).map(node -> Fields.read(node, key, text -> Expression.of(text, names)));
    }

    private Formula formula(Fields from) {
        String text = from.text("text");
        Map<String, Lesson.Template> symbols = new LinkedHashMap<>();
        from.named("symbols").forEach((letter, node) -> {
            if (!text.contains(letter)) {
                throw new Wrong(node.at(), Printable.quote(letter) + " is explained but not used in '" + text + "'");
            }
            symbols.put(letter, template(node, letter));
        });
        Formula formula = new Formula(text, symbols, source(from.need("source")));
        from.done();
        return formula;
    }

    private TryIt tryIt(Fields from) {
        House house = one(from, "house");
        List<Change> changes = changes(from);
        return new TryIt(house, changes, claim(from, "shows"));
    }

    private LessonSlider slider(Fields from) {
        LessonSlider slider = new LessonSlider(
                one(from, "house"),
                from.text("label"),
                from.text("with"),
                from.texts("fields", 1),
                from.texts("values", 2),
                from.value("unit").map(node -> Fields.text(node, "unit")).orElse(""));
        from.done();
        return slider;
    }

    private Reading reading(Node node) {
        Fields from = Fields.of(node, "reading");
        String what = from.text("what");
        Expression answer = from.read("answer", this::measured);
        House read = from.read("answer", this::firstNamed);
        from.done();
        return new Reading(what, read, answer);
    }

    private Expression measured(String text) {
        Expression answer = Expression.of(text, names);
        if (answer.kind().isEmpty()) {
            throw new IllegalArgumentException("a reading must be a measure, such as gaugeAt(house, 1 h)");
        }
        return answer;
    }

    private House firstNamed(String text) {
        return WORD.matcher(text)
                .results()
                .map(word -> houses.get(word.group()))
                .filter(Objects::nonNull)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("a reading must be of a house that is shown"));
    }
}
