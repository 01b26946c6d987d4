package io.github.heatswell.scenarios.file;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Doubts.Doubt;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Unknowns of a scenario: values that were filled in or given as a range. A reading with an accuracy counts as known. */
final class DoubtsOf {

    private static final Map<Kind<?>, Measure.Kind> MEASURED = Map.of(
            Kind.PRESSURE, Measure.Kind.GAUGE_PRESSURE,
            Kind.TEMPERATURE, Measure.Kind.TEMPERATURE,
            Kind.VOLUME, Measure.Kind.VOLUME,
            Kind.POWER, Measure.Kind.POWER,
            Kind.RATIO, Measure.Kind.SHARE);

    /** Choices that may be taken because nobody has looked. */
    static final Set<String> CHOICES = Arrays.stream(NamedValue.values())
            .filter(NamedValue::isChoice)
            .map(NamedValue::field)
            .collect(Collectors.toCollection(TreeSet::new));

    private DoubtsOf() {}

    static Doubts scenario(Scenario scenario) {
        List<Doubt> all = new ArrayList<>();
        scenario.uncertain().stream()
                .filter(field -> isRange(field) || isGuessed(scenario, field.field()))
                .forEach(field -> all.add(new Doubt(
                        field.field(),
                        measured(field.field(), field.centre()),
                        Optional.of(range(field)),
                        List.of(field.low(), field.high()))));
        scenario.assumptions()
                .forEach(assumed -> all.add(new Doubt(
                        assumed.field(),
                        measured(assumed.field(), assumed.value()),
                        Optional.empty(),
                        assumed.range())));
        Set<String> choices = new TreeSet<>(scenario.notKnown());
        CHOICES.stream().filter(field -> isGuessed(scenario, field)).forEach(choices::add);
        Set<String> spread =
                scenario.uncertain().stream().map(UncertainField::field).collect(Collectors.toSet());
        scenario.given().forEach((field, value) -> {
            boolean plain =
                    NamedValue.of(field).filter(named -> !named.isChoice()).isPresent() && !spread.contains(field);
            if (plain && isGuessed(scenario, field)) {
                all.add(new Doubt(field, measured(field, value), Optional.empty(), List.of()));
            }
        });
        choices.forEach(field ->
                all.add(Doubt.ofChoice(field, taken(NamedValue.of(field).orElseThrow(), scenario.system()))));
        return Doubts.of(all, values -> house(scenario, values));
    }

    /** What it may be, as its owner was told: of a guess with a +- no more than that. */
    private static Statement range(UncertainField field) {
        double centre = field.distribution().centre();
        double half = field.distribution().expanded();
        return measured(field.field(), half > 0 ? field.at(centre - half) : field.low())
                .then(" to ")
                .then(measured(field.field(), half > 0 ? field.at(centre + half) : field.high()));
    }

    /** A value of a field, which reads in any units; as it was written if it is not of a kind that findings speak of. */
    static Statement measured(String field, String value) {
        return Schema.field(field)
                .flatMap(Field::form)
                .flatMap(Form::kind)
                .filter(MEASURED::containsKey)
                .flatMap(kind -> si(value, kind).map(si -> Statement.of("{}", new Measure(MEASURED.get(kind), si))))
                .orElseGet(() -> Statement.plain(value));
    }

    /** The value in SI units; empty if it is no gauge pressure or other plain quantity. */
    private static Optional<Double> si(String value, Kind<?> kind) {
        try {
            Amount<?> amount = QuantityReader.read(value, kind);
            return Optional.of(amount.unit().toSi(amount.value()));
        } catch (IllegalArgumentException another) {
            return Optional.empty();
        }
    }

    /** What a house takes for a choice, as a sentence says it. */
    private static String taken(NamedValue choice, HotWaterSystem house) {
        return switch (choice) {
            case ARRANGEMENT ->
                switch (house.supply().arrangement()) {
                    case CHECK_VALVE -> "a check valve";
                    case REDUCING_VALVE -> "a reducing valve";
                    default -> "an open connection";
                };
            case MATERIAL ->
                house.tank()
                        .shell()
                        .material()
                        .map(material -> material.name().replace('-', ' '))
                        .orElse("described");
            case ENERGY -> house.heater().energy() == Heater.Energy.GAS ? "gas" : "electricity";
            case VESSEL -> house.vessel().isPresent() ? "present" : "missing";
            case SET_TEMPERATURE ->
                house.reliefValves().stream()
                                .anyMatch(valve -> valve.setTemperature().isPresent())
                        ? "described"
                        : "none";
            default -> "described";
        };
    }

    private static boolean isGuessed(Scenario scenario, String field) {
        return scenario.origin(field) == Origin.GUESSED;
    }

    private static boolean isRange(UncertainField field) {
        return field.text().toLowerCase(Locale.ROOT).contains(" to ");
    }

    private static Optional<HotWaterSystem> house(Scenario scenario, Map<String, String> values) {
        List<Change> changes = values.entrySet().stream()
                .map(value -> new Change(value.getKey(), value.getValue()))
                .toList();
        try {
            return Optional.of(scenario.with(changes).system());
        } catch (InvalidScenarioException e) {
            return Optional.empty();
        }
    }
}
