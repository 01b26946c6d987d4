package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Field.amount;
import static io.github.heatswell.scenarios.file.Field.pressure;
import static io.github.heatswell.scenarios.file.Field.text;
import static io.github.heatswell.scenarios.file.Field.word;

import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.Price;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Site;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;

/**
 * The format of a scenario file: every section and every key, in the order in which they are bound. A key whose typical
 * value depends on another stands behind it.
 */
final class Schema {

    static final Section<Scenario.Builder, Scenario.Builder> HEADER = new Section<>(
            "",
            Scenario.Builder::new,
            scenario -> scenario,
            () -> List.of(
                    text(
                            "title",
                            "heading of the results; the file's name if left out",
                            "My house",
                            120,
                            Scenario.Builder::title),
                    text(
                            "question",
                            "what the run is to answer",
                            "Why does the relief valve drip?",
                            1000,
                            Scenario.Builder::question),
                    text(
                            "expect",
                            "the outcome you expect",
                            "The valve drips on every heat-up.",
                            1000,
                            Scenario.Builder::expectation),
                    word(
                                    "units",
                                    "units of the answers; if left out, those of the place, or else those of most quantities"
                                            + " here",
                                    "us",
                                    Words.of(UnitSystem.values()),
                                    Scenario.Builder::units)
                            .leftOutFreely(),
                    new Field<Scenario.Builder>(
                                    "not-known",
                                    "choices that nobody has checked: what the file says about them is an assumption, and findings"
                                            + " say so",
                                    "vessel, tank.material",
                                    Form.words(DoubtsOf.CHOICES, Scenario.Builder::notKnown))
                            .leftOutFreely()));

    static final Section<Site.Builder, Site> SITE = new Section<>(
            "site",
            Site::builder,
            Site.Builder::build,
            () -> List.of(
                    amount(
                                    "altitude",
                                    "height above sea level, which determines the air pressure",
                                    "310 m",
                                    Kind.LENGTH,
                                    Site.Builder::altitude)
                            .typically("0 m", "sea level; gauge pressures hardly depend on it"),
                    amount(
                                    "room",
                                    "air temperature around tank and vessel",
                                    "17 degC",
                                    Kind.TEMPERATURE,
                                    Site.Builder::room)
                            .typically("20 degC", "a heated room"),
                    word(
                                    "place",
                                    "whose rules apply; also decides units, currency and sizes on sale. If left out, it is not known"
                                            + " and the rules of several places are compared",
                                    "uk",
                                    Words.of(Place.values()),
                                    Site.Builder::place)
                            .leftOutFreely()));

    static final Section<Start.Builder, Start> START = new Section<>(
            "start",
            Start::builder,
            Start.Builder::build,
            () -> List.of(
                    amount(
                                    "water",
                                    "water temperature in the tank at the start; that of the supply if left out",
                                    "40 degC",
                                    Kind.TEMPERATURE,
                                    Start.Builder::water)
                            .leftOutFreely(),
                    pressure(
                                    "pressure",
                                    "pressure at the start; that of the supply if left out",
                                    "4.2 bar",
                                    Start.Builder::pressure)
                            .leftOutFreely()
                            .checkedAgainst(
                                    "supply.pressure", "supply.arrangement", "tank.working-pressure", "run.begins")));

    static final Section<Run.Builder, Run> RUN = new Section<>(
            "run",
            Run.Builder::new,
            Run.Builder::build,
            () -> List.of(
                    new Field<>(
                                    "begins",
                                    "time of day at the start; midnight if left out",
                                    "06:00",
                                    Form.clock(Run.Builder::begins))
                            .leftOutFreely(),
                    new Field<>(
                                    "day",
                                    "day of the year at the start; 1 January if left out",
                                    "15 Jan",
                                    Form.day(Run.Builder::day))
                            .leftOutFreely(),
                    amount(
                                    "duration",
                                    "how long to simulate; decades take minutes, and progress is shown",
                                    "4 h",
                                    Kind.DURATION,
                                    Run.Builder::duration)
                            .typically("24 h", "the first heat-up and some cycles"),
                    amount(
                                    "sample",
                                    "sampling interval of the trace; at most 20 million samples",
                                    "1 min",
                                    Kind.DURATION,
                                    Run.Builder::sample)
                            .typically(Typical.of(
                                            "1 min; 1 h in runs above 60 d",
                                            "fine enough for the charts; never longer than the run")
                                    .from(given -> Typical.Run.sample(given.get("duration")), "duration"))
                            .checkedAgainst("duration"),
                    word(
                                    "tolerance",
                                    "how closely the equations are integrated: the relative tolerance of a step, to study how"
                                            + " results converge; 1e-8 if left out",
                                    "1e-9",
                                    Words.tolerances(),
                                    Run.Builder::tolerance)
                            .leftOutFreely()));

    private static final Section<Origins.Builder, Origins> ORIGINS = new Section<>(
            "origins",
            Origins.Builder::new,
            Origins.Builder::build,
            () -> List.of(
                    origin(
                            "guessed",
                            "values given roughly or as a guess, and a place taken from a state or a country: findings count them"
                                    + " as not known",
                            "supply.pressure",
                            Origins.Builder::guessed),
                    origin(
                            "typical",
                            "values that were not given: typical ones, filled in by an interview",
                            "supply.water",
                            Origins.Builder::typical),
                    origin(
                            "usual-accuracy",
                            "values that were given, whose +- is the usual error of such readings",
                            "tank.volume",
                            Origins.Builder::usualAccuracy)));

    private static final int MAX_SIZES = 200;

    private static final Section<Costs.Size, Costs.Size> VESSEL = new Section<>(
            "vessels",
            Costs.Size::new,
            size -> size,
            () -> List.of(
                    amount("volume", "size on sale", "12 L", Kind.VOLUME, Costs.Size::volume),
                    new Field<>(
                                    "price",
                                    "price, in the currency; unknown if left out",
                                    "52.50",
                                    Form.price("amount of money without a currency sign", Price::of, Costs.Size::price))
                            .leftOutFreely()));

    static final Section<Costs.Builder, Costs.Builder> COSTS = new Section<>(
            "costs",
            Costs.Builder::new,
            costs -> costs,
            () -> List.of(
                    new Field<>(
                                    "currency",
                                    "currency of the prices; if left out, that of the place, or EUR, or USD in a file in US units",
                                    "EUR",
                                    Form.text(8, Costs.Builder::currency))
                            .leftOutFreely(),
                    new Field<>(
                                    "water",
                                    "price of cold water including sewage; if left out, an invented one",
                                    "4.50 per m3",
                                    Form.price(
                                            "amount of money per m3, per L or per gal",
                                            Price::perVolume,
                                            Costs.Builder::water))
                            .leftOutFreely(),
                    Field.of(
                                    "vessels",
                                    "expansion vessels on sale; if left out, the common sizes at invented prices",
                                    "[{ volume: 12 L, price: 52.50 }]",
                                    Nested.list(VESSEL, MAX_SIZES, Costs.Builder::vessels))
                            .leftOutFreely()));

    private static final List<Section<?, ?>> SECTIONS = List.of(
            SITE,
            SupplySections.SUPPLY,
            TankSections.TANK,
            TankSections.HEATER,
            TankSections.PIPE,
            ReliefSections.RELIEF,
            VesselSections.VESSEL,
            UseSections.EXTRAS,
            START,
            RUN,
            COSTS,
            ORIGINS);

    /** A whole file. */
    static final Section<Scenario.Builder, Scenario.Builder> SCENARIO =
            new Section<>("", Scenario.Builder::new, Scenario.Builder::complete, Schema::fields);

    private Schema() {}

    private static List<Field<Scenario.Builder>> fields() {
        List<Field<Scenario.Builder>> fields = new ArrayList<>(HEADER.fields());
        fields.add(part(SITE, HotWaterSystem.Builder::site));
        fields.add(part(SupplySections.SUPPLY, HotWaterSystem.Builder::supply));
        fields.add(part(TankSections.TANK, HotWaterSystem.Builder::tank));
        fields.add(part(TankSections.HEATER, HotWaterSystem.Builder::heater));
        fields.add(parts(TankSections.PIPE, TankSections.MAX_PIPES, HotWaterSystem.Builder::addPipe)
                .typically("[]", "no piping: pipes would only soften the system, so pressures err on the high side"));
        fields.add(parts(ReliefSections.RELIEF, ReliefSections.MAX_VALVES, HotWaterSystem.Builder::addReliefValve)
                .typically("[]", "no relief valve: none is described"));
        fields.add(part(VesselSections.VESSEL, HotWaterSystem.Builder::vessel).leftOutFreely());
        fields.addAll(UseSections.EXTRAS.fields());
        fields.add(part(START, HotWaterSystem.Builder::start));
        fields.add(Field.part(Nested.one(RUN, Scenario.Builder::run).atTop()));
        fields.add(
                Field.part(Nested.one(COSTS, Scenario.Builder::costs).atTop()).leftOutFreely());
        fields.add(Field.part(Nested.one(ORIGINS, Scenario.Builder::origins).atTop())
                .leftOutFreely());
        return fields;
    }

    private static Field<Origins.Builder> origin(
            String key, String meaning, String example, BiConsumer<Origins.Builder, List<String>> setter) {
        return new Field<>(key, meaning, example, Form.words(Origins.FIELDS, "one or more fields", setter))
                .leftOutFreely();
    }

    private static <T> Field<Scenario.Builder> part(
            Section<?, T> section, BiConsumer<HotWaterSystem.Builder, T> setter) {
        return Field.part(
                Nested.<Scenario.Builder, T>one(section, (scenario, value) -> setter.accept(scenario.house(), value))
                        .atTop());
    }

    private static <T> Field<Scenario.Builder> parts(
            Section<?, T> section, int most, BiConsumer<HotWaterSystem.Builder, T> setter) {
        return Field.part(Nested.<Scenario.Builder, T>list(
                        section,
                        most,
                        (scenario, values) -> values.forEach(value -> setter.accept(scenario.house(), value)))
                .atTop());
    }

    /** The sections at the top of a file; that without a name holds keys that stand there themselves. */
    static List<Section<?, ?>> sections() {
        return SECTIONS;
    }

    /** Every section, also those inside others. */
    static List<Section<?, ?>> allSections() {
        return SECTIONS.stream().flatMap(Schema::withInner).toList();
    }

    private static Stream<Section<?, ?>> withInner(Section<?, ?> section) {
        return Stream.concat(Stream.of(section), section.inner().stream().flatMap(Schema::withInner));
    }

    /** The field that a path leads to, such as {@code relief[0].reseats}. */
    static Optional<Field<?>> field(String path) {
        Optional<Section<?, ?>> section = Optional.of(SCENARIO);
        Optional<Field<?>> found = Optional.empty();
        for (String key : path.replaceAll("\\[\\d+]", "").split("\\.", -1)) {
            found = section.flatMap(keys -> keys.field(key));
            section = found.flatMap(Field::nested).map(Nested::section);
        }
        return found;
    }

    /** The typical values by the fields that may be left out because of them, in the order of the format. */
    static Map<String, Typical> typical() {
        Map<String, Typical> all = new LinkedHashMap<>();
        for (Section<?, ?> section : allSections()) {
            field(section.name()).flatMap(Field::typical).ifPresent(typical -> all.put(section.name(), typical));
            section.fields()
                    .forEach(field -> field.typical().ifPresent(typical -> all.put(section.of(field.key()), typical)));
        }
        return all;
    }

    /**
     * The related fields.
     *
     * @param path a field, such as {@code relief[0].reseats}
     * @return the paths of the fields it is checked against, such as {@code relief[0].opens}
     */
    static List<String> related(String path) {
        String place = path.substring(0, Math.max(0, path.lastIndexOf('.')));
        return field(path).map(Field::related).orElse(List.of()).stream()
                .map(other -> path(place, other))
                .toList();
    }

    private static String path(String place, String other) {
        if (other.startsWith("../")) {
            return place.substring(0, place.lastIndexOf('.') + 1) + other.substring("../".length());
        }
        return other.contains(".") || place.isEmpty() ? other : place + "." + other;
    }
}
