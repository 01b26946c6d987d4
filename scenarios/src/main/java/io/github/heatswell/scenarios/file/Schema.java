package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Field.amount;
import static io.github.heatswell.scenarios.file.Field.pressure;
import static io.github.heatswell.scenarios.file.Field.text;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Site;
import io.github.heatswell.system.Start;
import java.util.ArrayList;
import java.util.List;
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
            List.of(
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
                            "what is expected to come out",
                            "The valve drips on every heat-up.",
                            1000,
                            Scenario.Builder::expectation),
                    new Field<Scenario.Builder>(
                                    "not-known",
                                    "choices that nobody has looked at: what the file says of them is only taken, and findings"
                                            + " say so",
                                    "vessel, tank.material",
                                    Form.words(DoubtsOf.CHOICES, Scenario.Builder::notKnown))
                            .leftOutFreely()));

    static final Section<Site.Builder, Site> SITE = new Section<>(
            "site",
            Site::builder,
            Site.Builder::build,
            List.of(
                    amount(
                            "altitude",
                            "height above sea level, which determines the air pressure",
                            "310 m",
                            Kind.LENGTH,
                            Site.Builder::altitude),
                    amount(
                            "room",
                            "air temperature around tank and vessel",
                            "17 degC",
                            Kind.TEMPERATURE,
                            Site.Builder::room)));

    static final Section<Start.Builder, Start> START = new Section<>(
            "start",
            Start::builder,
            Start.Builder::build,
            List.of(
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
            List.of(
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
                    amount("duration", "how long to simulate", "4 h", Kind.DURATION, Run.Builder::duration),
                    amount(
                                    "sample",
                                    "sampling interval of the trace; at most 20 million samples",
                                    "1 min",
                                    Kind.DURATION,
                                    Run.Builder::sample)
                            .checkedAgainst("duration")));

    private static final List<Section<?, ?>> SECTIONS = List.of(
            SITE,
            SupplySections.SUPPLY,
            TankSections.TANK,
            HeaterSections.HEATER,
            TankSections.PIPE,
            ReliefSections.RELIEF,
            VesselSections.VESSEL,
            UseSections.EXTRAS,
            START,
            RUN,
            CostsSections.COSTS);

    /** A whole file. */
    static final Section<Scenario.Builder, Scenario.Builder> SCENARIO =
            new Section<>("", Scenario.Builder::new, Scenario.Builder::complete, fields());

    private Schema() {}

    private static List<Field<Scenario.Builder>> fields() {
        List<Field<Scenario.Builder>> fields = new ArrayList<>(HEADER.fields());
        fields.add(part(SITE, HotWaterSystem.Builder::site));
        fields.add(part(SupplySections.SUPPLY, HotWaterSystem.Builder::supply));
        fields.add(part(TankSections.TANK, HotWaterSystem.Builder::tank));
        fields.add(part(HeaterSections.HEATER, HotWaterSystem.Builder::heater));
        fields.add(parts(TankSections.PIPE, TankSections.MAX_PIPES, HotWaterSystem.Builder::addPipe));
        fields.add(parts(ReliefSections.RELIEF, ReliefSections.MAX_VALVES, HotWaterSystem.Builder::addReliefValve));
        fields.add(part(VesselSections.VESSEL, HotWaterSystem.Builder::vessel).leftOutFreely());
        fields.addAll(UseSections.EXTRAS.fields());
        fields.add(part(START, HotWaterSystem.Builder::start));
        fields.add(Field.part(Nested.one(RUN, Scenario.Builder::run).atTop()));
        fields.add(Field.part(
                        Nested.one(CostsSections.COSTS, Scenario.Builder::costs).atTop())
                .leftOutFreely());
        return fields;
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

    /**
     * The related fields.
     *
     * @param path a field, such as {@code relief[0].reseats}
     * @return the paths of the fields it is checked against, such as {@code relief[0].opens}
     */
    static List<String> related(String path) {
        int dot = path.lastIndexOf('.');
        String place = path.substring(0, Math.max(0, dot));
        String section = place.replaceAll("\\[\\d+]", "");
        String key = path.substring(dot + 1);
        return allSections().stream()
                .filter(candidate -> candidate.name().equals(section))
                .flatMap(candidate -> candidate.fields().stream())
                .filter(field -> field.key().equals(key))
                .flatMap(field -> field.related().stream())
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
