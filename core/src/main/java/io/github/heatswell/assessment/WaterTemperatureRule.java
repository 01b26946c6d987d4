package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.temperature;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.citation.Citation;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;

/** Water stored too cool to kill legionella, and water hot enough at the taps to scald. */
final class WaterTemperatureRule implements Rule {

    /** Beside these the heater is to be off, and nobody is told to set it hotter. */
    static final Set<String> HEATER_OFF = Set.of(
            "thermostat-stuck",
            "cut-out-tripped",
            "relief-valve-opened-by-heat",
            "water-hotter-than-boiling",
            "boiling-margin-small",
            "vapour-forms",
            "test-pressure-reached",
            "water-out-of-range",
            "water-freezes",
            "pressure-lost",
            "relief-valve-chatters",
            "relief-valve-blocked",
            "relief-valve-missing",
            "relief-set-above-tank",
            "set-point-above-relief",
            "tp-relief-rating-low");

    /** The least storage temperature (K). */
    static final double STORED = TemperatureUnit.CELSIUS.toSi(60);
    /** 120 degF are 48.9 degC: where the published burn times end with five minutes. */
    private static final double DELIVERED = TemperatureUnit.CELSIUS.toSi(49);
    /** Rounding of temperatures (K). */
    private static final double EQUAL = 1e-6;
    /** Water stored hotter than {@link #STORED} by more than this (K) is hotter than it need be: our own judgement. */
    private static final double HOTTER = 5;
    /** A run that ended this far (K) below the set point shows no tap at its hottest. */
    private static final double HEATED_THROUGH = 1;

    /** So much hotter (K) than its thermostat is set may short draws make the top of a gas-heated tank: 30 degF, {@link Codes#STACKING}. */
    private static final double STACKED = TemperatureDifferenceUnit.FAHRENHEIT_DEGREE.toSi(30);

    private static final String EXPANDS =
            "Hotter water expands more: an expansion vessel must be sized for that first.";
    private static final String ASK = "Ask the local authority how hot the water at the taps may be.";

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        double stored = subject.house.heater().setPoint();
        OptionalDouble mixed = subject.house.heater().mixedTo();
        if (stored < STORED - EQUAL) {
            found.accept(cool(subject, temperature(stored), mixed.isPresent()));
        }
        double set = subject.highestSetPoint();
        double hottest = subject.hottest().orElse(Double.NEGATIVE_INFINITY);
        boolean seen = hottest > set - HEATED_THROUGH;
        double delivered = Math.min(seen ? hottest : set, mixed.orElse(Double.POSITIVE_INFINITY));
        double limit = subject.hasLimit(Topic.TAP_TEMPERATURE)
                ? subject.limits(Topic.TAP_TEMPERATURE).get(0).limit().orElseThrow()
                : DELIVERED;
        if (delivered > limit + EQUAL) {
            found.accept(
                    mixed.isPresent()
                            ? mixedTooHot(subject, delivered, limit)
                            : subject.overheats()
                                    ? runaway(subject, delivered, limit, seen)
                                    : unmixed(subject, delivered, limit, seen));
        }
    }

    private static CandidateFinding cool(AssessmentContext subject, Measure stored, boolean mixed) {
        Measure limit = temperature(STORED);
        boolean foreign = subject.place.isKnown()
                && subject.place.rules(Topic.STORAGE_TEMPERATURE).isEmpty();
        Statement kills = Statement.of("The water is stored at {}, below the {} that kills legionella.", stored, limit);
        String ask = "Ask the local authority or the manufacturer what storage temperature it requires";
        Finding.Draft draft = Finding.draft("stored-too-cool", Severity.CAUTION)
                .compares(NamedValue.SET_POINT, NamedValue.UPPER_SET_POINT, NamedValue.MIXED_TO)
                .neverBeside(HEATER_OFF)
                .says(
                        foreign
                                ? kills.then(
                                                " None of the rules read for this place requires it; the figure is British. ")
                                        .then(Burns.by(STORED))
                                : kills)
                .found(stored)
                .limit(limit)
                .advises(
                        (foreign ? ask + ", before you change anything. Go on only if that is {} or more. " : "")
                                + (mixed
                                        ? "Set the thermostat to {}, and measure at the nearest tap whether the mixing valve"
                                                + " keeps it from scalding. "
                                        : "Have a mixing valve fitted first, so that the taps do not scald, and only then set"
                                                + " the thermostat to {}. ")
                                + EXPANDS,
                        foreign ? new Measure[] {limit, limit} : new Measure[] {limit});
        return (foreign ? draft : draft.asks(ask + "."))
                .by(
                        subject.place.demand(Topic.STORAGE_TEMPERATURE).isPresent() // it leaves that open
                                ? Codes.LEGIONELLA
                                : subject.by(Topic.STORAGE_TEMPERATURE, Codes.LEGIONELLA));
    }

    private static CandidateFinding unmixed(AssessmentContext subject, double delivered, double limit, boolean seen) {
        String measure =
                "Measure at the nearest hot tap. If it is above {}, have a mixing valve fitted at the tank's hot outlet;"
                        + " storing it below {} is no substitute.";
        Finding.Draft scald = scald(subject, delivered, limit, seen, stacked(subject));
        return (delivered > STORED + HOTTER + EQUAL
                        ? scald.advises(
                                "Turn the thermostat down to {}: killing legionella takes no hotter water. " + measure,
                                temperature(STORED),
                                temperature(limit),
                                temperature(STORED))
                        : scald.advises(measure, temperature(limit), temperature(STORED)))
                .asks(ASK)
                .by(
                        subject.house.heater().energy() == Heater.Energy.GAS
                                ? and(authority(subject), "; stacking: ", Codes.STACKING)
                                : authority(subject));
    }

    /** No mixing valve is the remedy for a heater that does not stop. */
    private static CandidateFinding runaway(AssessmentContext subject, double delivered, double limit, boolean seen) {
        return scald(subject, delivered, limit, seen, plain(""))
                .advises("Open no hot tap until the heater is off and the water has cooled.")
                .asks(ASK)
                .by(authority(subject));
    }

    /** What short draws one after the other do to the top of a tank with a burner below it, and to a valve that opens on temperature there. */
    private static Statement stacked(AssessmentContext subject) {
        if (subject.house.heater().energy() != Heater.Energy.GAS) {
            return plain("");
        }
        double top = subject.highestSetPoint() + STACKED;
        Statement hotter = Statement.of(
                " Repeated short draws can heat the top of a gas-fired tank to {} (stacking)", temperature(top));
        OptionalDouble opens = subject.house.reliefValves().stream()
                .map(ReliefValve::setTemperature)
                .flatMapToDouble(OptionalDouble::stream)
                .min();
        return opens.isPresent() && top >= opens.getAsDouble()
                ? hotter.then(Statement.of(
                        ", where a temperature and pressure relief valve of {} opens on temperature.",
                        temperature(opens.getAsDouble())))
                : hotter.then(".");
    }

    /** Whether steam may come out of a tap with no defect at all, by the set point alone or with short draws on top of it. */
    static boolean mayFlash(AssessmentContext subject) {
        boolean stacks = subject.house.heater().energy() == Heater.Energy.GAS;
        return subject.highestSetPoint() + (stacks ? STACKED : 0) > BoilingRule.boilsInTheOpen(subject);
    }

    private static Finding.Draft scald(
            AssessmentContext subject, double delivered, double limit, boolean seen, Statement stacked) {
        String water = seen
                ? "The water reaches {} in the run, and no mixing valve is described"
                : "The heater is set to {}, and no mixing valve is described";
        return Finding.draft("scald-without-mixing-valve", mayFlash(subject) ? Severity.FAULT : Severity.CAUTION)
                .compares(NamedValue.SET_POINT, NamedValue.UPPER_SET_POINT, NamedValue.MIXED_TO)
                .says(Statement.of(water + ". ", temperature(delivered))
                        .then(Burns.by(delivered))
                        .then(stacked))
                .found(temperature(delivered))
                .limit(temperature(limit));
    }

    private static CandidateFinding mixedTooHot(AssessmentContext subject, double delivered, double limit) {
        return Finding.draft("mixing-valve-set-high", Severity.CAUTION)
                .compares(NamedValue.MIXED_TO)
                .says(Statement.of("The mixing valve delivers {} to the taps. ", temperature(delivered))
                        .then(Burns.by(delivered)))
                .found(temperature(delivered))
                .limit(temperature(limit))
                .advises("Have the mixing valve set to {} or less, and measure at the nearest tap.", temperature(limit))
                .asks(ASK)
                .by(authority(subject));
    }

    /** What limits the water at the taps here, and whose the burn times are. */
    private static Authority authority(AssessmentContext subject) {
        if (!subject.hasLimit(Topic.TAP_TEMPERATURE)) {
            return Codes.BURNS;
        }
        return and(subject.by(Topic.TAP_TEMPERATURE, Codes.BURNS), "; burn times: ", Codes.BURNS);
    }

    private static Authority and(Authority first, String of, Authority second) {
        return new Authority(
                first.basis(),
                new Citation(first.source().text() + of + second.source().text(), Citation.Standing.SECOND_HAND));
    }

    /**
     * How soon hot water burns an adult's skin badly: the wording of the US Consumer Product Safety Commission on tap water
     * (document 5098, seen quoted). Between two of its points both times are told, never one between them.
     *
     * @param temperature a temperature of the source (K)
     * @param seconds the time the source gives for it (s)
     */
    private record Burns(double temperature, double seconds) {

        private static final List<Burns> TABLE = List.of(at(120, 300), at(130, 30), at(140, 6), at(150, 2));

        /** Temperatures closer than this (K) read the same. */
        private static final double SAME = 0.05;

        private static Burns at(double fahrenheit, double seconds) {
            return new Burns(TemperatureUnit.FAHRENHEIT.toSi(fahrenheit), seconds);
        }

        /** How soon water of a temperature (K) burns: a sentence, which for water cooler than the first point gives no time. */
        static Statement by(double kelvin) {
            List<Burns> reached = TABLE.stream()
                    .takeWhile(point -> point.temperature <= kelvin + SAME)
                    .toList();
            if (reached.isEmpty()) {
                return Statement.plain("That is hotter than the rules here allow.");
            }
            Burns last = reached.get(reached.size() - 1);
            Statement time = Statement.of("{}", Measure.time(last.seconds));
            if (kelvin > last.temperature + SAME) {
                time = (reached.size() < TABLE.size()
                                ? Statement.of("{} to ", Measure.time(TABLE.get(reached.size()).seconds))
                                : Statement.plain("under "))
                        .then(time);
            }
            return Statement.of("Water at {} burns an adult badly in ", Measure.temperature(kelvin))
                    .then(time)
                    .then(", and a child sooner.");
        }
    }
}
