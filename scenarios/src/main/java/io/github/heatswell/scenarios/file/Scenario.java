package io.github.heatswell.scenarios.file;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.document.YamlTree;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A house and a run of it. Immutable.
 */
public final class Scenario {

    /** Fields by which a drip is cured. */
    private static final Pattern CURES = Pattern.compile("(?:vessels?|supply\\.reducing-valve)\\b.*");

    /** Fields that say something about a house, and do not change it. */
    private static final List<String> WORDS = List.of("title", "question", "expect", "units");

    private final String name;
    private final String title;
    private final String question;
    private final String expectation;
    private final List<String> notKnown;
    private final Origins origins;
    private final HotWaterSystem system;
    private final Run run;
    private final BiFunction<UnitSystem, Place, Costs> prices;
    private final Costs costs;
    private final Optional<UnitSystem> asked;
    private final UnitSystem units;
    private final Simulation simulation;
    private final Reading reading;

    /**
     * A scenario.
     *
     * @param name its short name, made safe
     * @param from what it says, complete
     * @param reading what was found out while it was read
     */
    Scenario(String name, Builder from, Reading reading) {
        this.name = ScenarioName.safe(name);
        title = from.title;
        question = from.question;
        expectation = from.expectation;
        notKnown = from.notKnown;
        origins = from.origins;
        system = from.system();
        run = from.run;
        simulation =
                Simulation.of(system, run.duration()).sampledEvery(run.sample()).withTolerance(run.tolerance());
        this.reading = reading;
        prices = from.prices;
        asked = from.asked;
        units = asked.orElseGet(() -> reading.units(system.site().place()));
        costs = prices.apply(units, system.site().place());
    }

    /**
     * A scenario made by a program.
     *
     * @param name its short name, which also names the folder of its results; made safe by {@link ScenarioName#safe}
     * @param title its heading
     * @param system what to simulate
     * @param duration for how long, above 0 to 36525 days
     * @param sample the distance of the samples, 1 s to the duration
     * @return the scenario, with nothing assumed and no text, so that it can be neither changed by {@link #with} nor written to a file
     * @throws IllegalArgumentException if duration or sample is outside its range
     */
    public static Scenario of(String name, String title, HotWaterSystem system, Duration duration, Duration sample) {
        Builder builder = new Builder();
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(duration, "duration");
        Objects.requireNonNull(sample, "sample");
        builder.title(Objects.requireNonNull(title, "title"));
        builder.system = Objects.requireNonNull(system, "system");
        builder.run(new Run(
                duration, sample, system.start().timeOfDay(), system.start().dayOfYear(), Run.TOLERANCE));
        return new Scenario(name, builder, Reading.nothing());
    }

    /**
     * The same scenario with other values for some of its fields, read anew: what is assumed may change with them. A
     * sampling that was not in the text is forgotten, and where vessel or reducing valve are changed against a drip that was seen, it
     * is asked whether the change stops it.
     *
     * @param changes the changes, made in order
     * @return the changed scenario
     * @throws InvalidScenarioException if the scenario is invalid with these changes; it lists everything that is wrong
     * @throws IllegalStateException if a program made the scenario: then there is no text to change
     */
    public Scenario with(List<Change> changes) {
        Objects.requireNonNull(changes, "changes")
                .forEach(change -> Objects.requireNonNull(change, "changes: one of them is null"));
        if (reading.origin().text().isEmpty()) {
            throw new IllegalStateException("a scenario built by a program has no fields to change");
        }
        return changes.isEmpty()
                ? this
                : ScenarioReader.read(name, reading.origin().changed(withQuestion(changes)));
    }

    /** With another vessel or supply setting the owner no longer sees what the question describes. */
    private List<Change> withQuestion(List<Change> changes) {
        boolean cure = changes.stream()
                .map(Change::field)
                .anyMatch(field -> CURES.matcher(field).matches());
        boolean open = changes.stream().noneMatch(change -> change.field().equals("question"));
        return Stream.concat(
                        changes.stream(),
                        Narrative.afterChange(cure && open ? question() : "")
                                .map(then -> new Change("question", then))
                                .stream())
                .toList();
    }

    /**
     * The house with certain values in place of the uncertain ones. May be asked by any number of threads.
     *
     * @param values a value for each of {@link #uncertain()}, in the unit it was written in
     * @return the house
     * @throws InvalidScenarioException if the house is invalid with these values
     * @throws IllegalArgumentException if there are more or fewer values than uncertain fields
     */
    public HotWaterSystem drawn(double... values) {
        if (Objects.requireNonNull(values, "values").length
                != reading.uncertain().size()) {
            throw new IllegalArgumentException(
                    "values: there must be " + reading.uncertain().size() + ", not " + values.length);
        }
        try {
            return values.length == 0 ? system : reading.house().apply(values);
        } catch (InvalidScenarioException e) {
            throw new InvalidScenarioException(reading.origin().source() + ", some values", e.faults());
        }
    }

    /**
     * The same scenario, sampled differently.
     *
     * @param sample the distance of the samples, 1 s to the duration of the run
     * @return the scenario with that interval
     * @throws IllegalArgumentException if the interval is outside its range or gives more than 20 million samples
     */
    public Scenario sampledEvery(Duration sample) {
        Run.conflict(run.duration(), Objects.requireNonNull(sample, "sample")).ifPresent(message -> {
            throw new IllegalArgumentException("sample: " + message);
        });
        Builder builder = copy();
        builder.run(run.sampledEvery(sample));
        return new Scenario(name, builder, reading.sampledEvery(sample));
    }

    /**
     * The same scenario for a reader who wants certain units: sizes on sale and prices that the text does not give are those of that
     * market, unless the place is known.
     *
     * @param units the unit system
     * @return the scenario with those units
     */
    public Scenario in(UnitSystem units) {
        if (Objects.requireNonNull(units, "units") == units()) {
            return this;
        }
        Builder builder = copy();
        builder.units(units);
        return new Scenario(name, builder, reading.in(units));
    }

    private Builder copy() {
        Builder builder = new Builder();
        builder.title(title);
        builder.question(question);
        builder.expectation(expectation);
        builder.notKnown(notKnown);
        builder.origins(origins);
        builder.asked = asked;
        builder.system = system;
        builder.run(run);
        builder.prices = prices;
        return builder;
    }

    /**
     * The run, ready to start.
     *
     * @return the simulation of the system for the duration, with these samples
     */
    public Simulation simulation() {
        return simulation;
    }

    /**
     * The short name.
     *
     * @return a name that is also a safe folder name
     */
    public String name() {
        return name;
    }

    /**
     * The heading of results.
     *
     * @return the title, or the name if none was given; a textbook run is marked as one, and that of a changed house names the house it
     *     was changed from
     */
    public String title() {
        String given = title.isEmpty() ? name : title;
        String plain = houseChangedSince("title") ? "\u201c" + given + "\u201d, with changes" : given;
        return system.tank().neverFails() ? plain + " (textbook run: the tank never fails)" : plain;
    }

    /**
     * What the run is to answer.
     *
     * @return the question, empty if none was given
     */
    public String question() {
        return question;
    }

    /**
     * What is expected to come out.
     *
     * @return the expectation; empty if none was given, or if the house was changed since, for which it was not meant
     */
    public String expectation() {
        return houseChangedSince("expect") ? "" : expectation;
    }

    /** Whether anything but words was changed since the text was read, and this field was not. */
    private boolean houseChangedSince(String field) {
        List<String> changed = changes().stream().map(Change::field).toList();
        return !changed.contains(field) && !WORDS.containsAll(changed);
    }

    /**
     * The units its owner uses.
     *
     * @return those asked for with {@link #in} or in the text, or else those of the place, or else the system that most quantities of the
     * text are written in; SI if a program
     *     made the scenario
     */
    public UnitSystem units() {
        return units;
    }

    /** {@return name and title: {@code orchard-lodge: Orchard Lodge}} */
    @Override
    public String toString() {
        return name + ": " + title;
    }

    /**
     * What is simulated.
     *
     * @return the system
     */
    public HotWaterSystem system() {
        return system;
    }

    /**
     * What water and vessels cost.
     *
     * @return the prices, invented where none were given
     */
    public Costs costs() {
        return costs;
    }

    /**
     * How long the run is.
     *
     * @return the duration
     */
    public Duration duration() {
        return run.duration();
    }

    /**
     * How finely the run is sampled.
     *
     * @return the distance of the samples
     */
    public Duration sample() {
        return run.sample();
    }

    /**
     * Everything that was filled in because the text did not give it.
     *
     * @return the assumptions, in the order of the format
     */
    public List<Assumption> assumptions() {
        return reading.assumptions();
    }

    /**
     * All uncertain fields. The scenario's own run uses the best estimates.
     *
     * @return the uncertain fields, in the order of the format
     */
    public List<UncertainField> uncertain() {
        return reading.uncertain();
    }

    /**
     * The choices that nobody has looked at.
     *
     * @return their fields, such as {@code supply.arrangement}
     */
    public List<String> notKnown() {
        return notKnown;
    }

    /**
     * Where a value comes from.
     *
     * @param field a field that the file or a change gives, such as {@code relief[0].opens}
     * @return the origin, as far as the file says so
     */
    public Origin origin(String field) {
        if (changes().stream().map(Change::field).anyMatch(field::equals)) {
            return Origin.CHANGED;
        }
        String named = NamedValue.of(field).map(NamedValue::field).orElse(field);
        if (notKnown.contains(named)) {
            return Origin.NOT_KNOWN;
        }
        Origin said = origins.of(field);
        return said == Origin.GIVEN
                        && uncertain().stream().map(UncertainField::field).anyMatch(field::equals)
                ? Origin.RANGE
                : said;
    }

    /**
     * Unknowns of the house: values that were filled in, given as a range, or guessed.
     *
     * @return what findings must not assume to be known
     */
    public Doubts doubts() {
        return DoubtsOf.scenario(this);
    }

    /**
     * What was changed since the text was read.
     *
     * @return the changes in the order they were made
     */
    public List<Change> changes() {
        return reading.origin().changes();
    }

    /**
     * Every value that the text gives once all changes are made.
     *
     * @return the values as a file would write them, by their fields, such as {@code relief[0].opens}; none if a program made the
     *     scenario
     */
    public Map<String, String> given() {
        return reading.given();
    }

    /**
     * What the scenario says once all changes are made, with the sampling and the units it was given, without the comments of its
     * text.
     *
     * @return a text that reads back as this scenario, empty if a program made it
     */
    public String changedText() {
        return reading.tree().entries().isEmpty() ? "" : YamlTree.text(reading.tree());
    }

    /**
     * The text the scenario was read from.
     *
     * @return the text, empty if a program made the scenario
     */
    public String source() {
        return reading.origin().text();
    }

    /**
     * What a command line names to read this scenario again, in the folder of its file: the file or the bundled scenario, what was
     * changed but for the question asked, and the units, where they are said.
     *
     * @return the words of a command line; none if a program made the scenario
     */
    public List<String> words() {
        String from = reading.origin().source();
        if (from.isEmpty()) {
            return List.of();
        }
        List<String> words =
                new ArrayList<>(List.of(from.substring(1 + Math.max(from.lastIndexOf('/'), from.lastIndexOf('\\')))));
        changes().stream()
                .filter(change -> !change.field().equals("question"))
                .forEach(change -> words.addAll(List.of("--set", change.toString())));
        Optional.ofNullable(given().get("units")).ifPresent(said -> words.addAll(List.of("--units", said)));
        return List.copyOf(words);
    }

    /** Takes a scenario key by key, as a file has them. */
    static final class Builder {
        private final HotWaterSystem.Builder house = HotWaterSystem.builder();
        private String title = "";
        private String question = "";
        private String expectation = "";
        private Optional<UnitSystem> asked = Optional.empty();
        private List<String> notKnown = List.of();
        private Origins origins = Origins.NONE;
        private Run run;
        private BiFunction<UnitSystem, Place, Costs> prices = Costs::invented;
        private HotWaterSystem system;

        void title(String value) {
            title = value;
        }

        void question(String value) {
            question = value;
        }

        void expectation(String value) {
            expectation = value;
        }

        void units(UnitSystem value) {
            asked = Optional.of(value);
        }

        void notKnown(List<String> fields) {
            notKnown = List.copyOf(fields);
        }

        void origins(Origins value) {
            origins = value;
        }

        /** The house, whose keys stand among those of the scenario. */
        HotWaterSystem.Builder house() {
            return house;
        }

        void run(Run value) {
            run = value;
        }

        void costs(Costs.Builder value) {
            prices = value::build;
        }

        /**
         * Puts everything together.
         *
         * @throws InvalidDescriptionException if the parts of the house do not go together
         */
        Builder complete() {
            system = house.changeStart(run::beginning).build();
            return this;
        }

        /** The house; complete once everything was put together. */
        HotWaterSystem system() {
            return system;
        }
    }
}
