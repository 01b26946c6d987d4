package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Fields.amount;
import static io.github.heatswell.scenarios.file.Fields.pressure;
import static io.github.heatswell.scenarios.file.Fields.text;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.Site;
import io.github.heatswell.system.Start;
import java.util.List;
import java.util.stream.Stream;

/**
 * The format of a scenario file: every section and every key, in the order in which they are bound. A key whose typical
 * value depends on another stands behind it.
 */
final class Schema {

    static final String WORKING_PRESSURE = "tank.working-pressure";

    static final Section<Header.Draft, Header> HEADER = new Section<>(
            "",
            Header.Draft::new,
            Header.Draft::end,
            List.of(
                    text(
                            "title",
                            "heading of the results; the file's name if left out",
                            "My house",
                            120,
                            Header.Draft::title),
                    text(
                            "question",
                            "what the run is to answer",
                            "Why does the relief valve drip?",
                            1000,
                            Header.Draft::question),
                    text(
                            "expect",
                            "what is expected to come out",
                            "The valve drips on every heat-up.",
                            1000,
                            Header.Draft::expectation)));

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
                            .checkedAgainst("supply.pressure", "supply.arrangement", WORKING_PRESSURE)));

    static final Section<RunDraft, RunDraft.Run> RUN = new Section<>(
            "run",
            RunDraft::new,
            RunDraft::end,
            List.of(
                    new Field<>(
                                    "begins",
                                    "time of day at the start; midnight if left out",
                                    "06:00",
                                    Forms.clock(RunDraft::begins))
                            .leftOutFreely(),
                    new Field<>(
                                    "day",
                                    "day of the year at the start; 1 January if left out",
                                    "15 Jan",
                                    Forms.day(RunDraft::day))
                            .leftOutFreely(),
                    amount("duration", "how long to simulate", "4 h", Kind.DURATION, RunDraft::duration),
                    amount(
                                    "sample",
                                    "sampling interval of the trace; at most 20 million samples",
                                    "1 min",
                                    Kind.DURATION,
                                    RunDraft::sample)
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

    private Schema() {}

    /** The sections at the top of a file; that without a name holds keys that stand there themselves. */
    static List<Section<?, ?>> sections() {
        return SECTIONS;
    }

    /** Every section, also those inside others. */
    static List<Section<?, ?>> allSections() {
        return SECTIONS.stream().flatMap(Schema::withInner).toList();
    }

    /** Every key at the top of a file. */
    static List<String> topKeys() {
        return Stream.concat(
                        HEADER.keys().stream(),
                        SECTIONS.stream()
                                .flatMap(section ->
                                        section.name().isEmpty() ? section.keys().stream() : Stream.of(section.name())))
                .toList();
    }

    private static Stream<Section<?, ?>> withInner(Section<?, ?> section) {
        return Stream.concat(Stream.of(section), section.inner().stream().flatMap(Schema::withInner));
    }
}
