package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Field.amount;
import static io.github.heatswell.scenarios.file.Field.pressure;
import static io.github.heatswell.scenarios.file.Field.word;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.SupplyTemperature;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Cold feed: its keys, and those of its parts. */
final class SupplySections {

    /** One every five minutes, and some more. */
    private static final int MAX_TIMES = 300;

    private static final int MAX_OUTAGES = 100;

    private static final Section<Entry, Entry> MAINS = new Section<>(
            "supply.pressure",
            Entry::new,
            entry -> entry,
            () -> List.of(
                    new Field<>("at", "time of day", "06:00", Form.clock(Entry::at)),
                    pressure(
                            "pressure",
                            "pressure at that time; interpolated linearly between times",
                            "4.2 bar",
                            Entry::pressure)));

    private static final Section<SupplyTemperature.SeasonsBuilder, SupplyTemperature> SEASONS = new Section<>(
            "supply.water",
            SupplyTemperature::seasons,
            SupplyTemperature.SeasonsBuilder::build,
            () -> List.of(
                    amount(
                            "annual-mean",
                            "mean annual air temperature, from which the water's seasons follow",
                            "10 degC",
                            Kind.TEMPERATURE,
                            SupplyTemperature.SeasonsBuilder::annualMean),
                    amount(
                            "monthly-swing",
                            "mean air temperature of the warmest month minus that of the coldest",
                            "18 K",
                            Kind.TEMPERATURE_DIFFERENCE,
                            SupplyTemperature.SeasonsBuilder::monthlySwing),
                    word(
                                    "hemisphere",
                                    "hemisphere; north if left out",
                                    "north",
                                    Words.hemispheres(),
                                    SupplyTemperature.SeasonsBuilder::southern)
                            .leftOutFreely()));

    private static final Section<ReducingValve.Builder, ReducingValve> REDUCING_VALVE = new Section<>(
            "supply.reducing-valve",
            ReducingValve::builder,
            ReducingValve.Builder::build,
            () -> List.of(
                    pressure(
                            NamedValue.REDUCED.key(),
                            "outlet pressure it is set to",
                            "3.5 bar",
                            ReducingValve.Builder::set),
                    amount(
                                    NamedValue.LOCK_UP.key(),
                                    "how far above its set pressure it closes tight",
                                    "0.3 bar",
                                    Kind.PRESSURE,
                                    ReducingValve.Builder::lockUpRise)
                            .typically(Typical.of("0.3 bar", "a small valve with an undamaged seat")
                                    .between("0 bar", "0.6 bar")),
                    amount(
                                    "droop",
                                    "how far the outlet pressure falls at the rated flow",
                                    "0.7 bar",
                                    Kind.PRESSURE,
                                    ReducingValve.Builder::droop)
                            .typically("0.7 bar", "a small valve at its rated flow"),
                    amount(
                                    "rated-flow",
                                    "flow at which the droop is stated",
                                    "20 L/min",
                                    Kind.FLOW,
                                    ReducingValve.Builder::ratedFlow)
                            .typically("20 L/min", "a valve for one household"),
                    new Field<>(
                                    NamedValue.BYPASS.key(),
                                    "how far the house pressure must exceed the mains before the bypass opens; none without a"
                                            + " bypass",
                                    "0.2 bar",
                                    Form.<ReducingValve.Builder, PressureUnit>amount(
                                                    Kind.PRESSURE, ReducingValve.Builder::bypassOpens)
                                            .orNone(valve -> {}))
                            .typically(Change.NONE, "many valves have no bypass; ask the manufacturer of this one")));

    private static final Section<Supply.Outage.Builder, Supply.Outage> SHUT_OFF = new Section<>(
            "supply.shut-off",
            Supply.Outage::builder,
            Supply.Outage.Builder::build,
            () -> List.of(
                    amount("from", "since the start of the run", "2 h", Kind.DURATION, Supply.Outage.Builder::from),
                    amount(
                                    "to",
                                    "since the start of the run, later than from",
                                    "3 h",
                                    Kind.DURATION,
                                    Supply.Outage.Builder::to)
                            .checkedAgainst("from")));

    static final Section<Supply.Builder, Supply> SUPPLY = new Section<>(
            "supply",
            Supply::builder,
            Supply.Builder::build,
            () -> List.of(
                    word(
                            NamedValue.ARRANGEMENT.key(),
                            "direct: water can flow back to the mains; check-valve (or backflow-preventer): it"
                                    + " cannot; reducing-valve: it cannot either, unless a bypass opens",
                            "check-valve",
                            Words.arrangements(),
                            Supply.Builder::arrangement),
                    pressure(
                                    NamedValue.SUPPLY.key(),
                                    "static mains pressure, or a timetable over the day",
                                    "4.2 bar",
                                    Supply.Builder::pressure)
                            .or(Nested.list(MAINS, MAX_TIMES, (supply, entries) -> supply.mains(timetable(entries))))
                            .checkedAgainst("tank.working-pressure", "arrangement"),
                    amount(
                                    NamedValue.COLD.key(),
                                    "cold-water temperature, or its seasons",
                                    "9 degC",
                                    Kind.TEMPERATURE,
                                    (Supply.Builder supply, double value, TemperatureUnit unit) ->
                                            supply.water(value, unit))
                            .typically("10 degC", "mains water for most of the year in a temperate climate")
                            .or(Nested.one(SEASONS, (supply, seasons) -> supply.water(seasons))),
                    amount(
                                    "seat-leakage",
                                    "leakage through the closed valve at a pressure difference of 1 bar; none if"
                                            + " left out",
                                    "5 mL/min",
                                    Kind.FLOW,
                                    Supply.Builder::seatLeakage)
                            .leftOutFreely()
                            .checkedAgainst("arrangement"),
                    Field.of(
                                    "reducing-valve",
                                    "only with that arrangement",
                                    "{ set: 3.5 bar }",
                                    Nested.one(REDUCING_VALVE, Supply.Builder::reducingValve))
                            .needed(
                                    "with that arrangement",
                                    given -> Form.folded(given.getOrDefault("arrangement", ""))
                                            .equals("reducing-valve"))
                            .checkedAgainst("arrangement"),
                    Field.of(
                                    "shut-off",
                                    "when the supply is shut off",
                                    "[{ from: 2 h, to: 3 h }]",
                                    Nested.list(
                                            SHUT_OFF,
                                            MAX_OUTAGES,
                                            (Supply.Builder supply, List<Supply.Outage> outages) ->
                                                    outages.forEach(supply::addOutage)))
                            .leftOutFreely()));

    private SupplySections() {}

    /** Between its times the pressure goes evenly from one to the next. */
    private static MainsPressure timetable(List<Entry> entries) {
        Map<Double, Pressure> times = new TreeMap<>();
        for (Entry entry : entries) {
            if (times.put(entry.at, entry.pressure) != null) {
                throw new IllegalArgumentException("gives two pressures for the same time of day");
            }
        }
        if (times.isEmpty()) {
            throw new IllegalArgumentException("is an empty timetable; give at least one time with a pressure");
        }
        return MainsPressure.daily(times);
    }

    /** Takes one line of a timetable of the mains' pressure. */
    private static final class Entry {
        private double at;
        private Pressure pressure;

        void at(double secondsSinceMidnight) {
            at = secondsSinceMidnight;
        }

        void pressure(Pressure value) {
            MainsPressure.constant(value);
            pressure = value;
        }
    }
}
