package io.github.heatswell.scenarios.spread;

import io.github.heatswell.scenarios.file.Assumption;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.UncertainField;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.study.Distribution;
import io.github.heatswell.study.HouseDay;
import io.github.heatswell.study.Study;
import io.github.heatswell.study.UncertainHouse;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The house of a scenario and what may be different about it: the uncertain values of the scenario, or, where it has none,
 * how well such values are usually known.
 *
 * @param inputs what differs
 * @param usual whether the scenario gives no uncertain value, so that the usual ones were taken: common practice, no source
 * @param house makes a house from a value of every input, each in the unit of its input; for any number of threads;
 *     refuses values that do not go together by an {@link IllegalArgumentException}
 */
public record VariedHouse(List<Input> inputs, boolean usual, Function<double[], HotWaterSystem> house) {

    private static final double MIN_RESEAT = 0.7;
    private static final double MAX_RESEAT = 0.95;

    /**
     * Copies the inputs.
     *
     * @param inputs what differs
     * @param usual whether the usual uncertainties were taken
     * @param house makes a house from a value of every input, each in the unit of its input
     */
    public VariedHouse {
        inputs = List.copyOf(inputs);
    }

    /**
     * The house of a scenario.
     *
     * @param scenario the scenario
     * @return what may be different about it
     */
    public static VariedHouse of(Scenario scenario) {
        return scenario.uncertain().isEmpty() ? usual(scenario.system()) : given(scenario);
    }

    /**
     * The house of a scenario with another vessel, whose numbers are taken as exact unless the usual uncertainties are
     * taken.
     *
     * @param scenario the scenario
     * @param vessel the vessel put in
     * @return what may be different about it
     */
    public static VariedHouse with(Scenario scenario, ExpansionVessel vessel) {
        return with(scenario, house -> house.toBuilder().fitVessel(vessel).build());
    }

    /**
     * The house of a scenario after some work on it. What the work puts in is as uncertain as usual if the usual uncertainties are
     * taken, and else exact.
     *
     * @param scenario the scenario
     * @param fitted what the work makes of any of its houses
     * @return what may be different about it
     */
    public static VariedHouse with(Scenario scenario, UnaryOperator<HotWaterSystem> fitted) {
        if (scenario.uncertain().isEmpty()) {
            return usual(fitted.apply(scenario.system()));
        }
        VariedHouse given = given(scenario);
        return new VariedHouse(given.inputs(), false, given.house().andThen(fitted));
    }

    /** What a reseat pressure that nobody gave is called among the inputs. */
    public static final String ASSUMED_RESEAT = "relief valve's reseat pressure, share of its set pressure";

    /**
     * The same where relief valves whose reseat pressure was assumed close again anywhere in the common range, all at the same share
     * of their set pressures: 70 to 95 %, common practice without a source.
     *
     * @param scenario whose house it is
     * @return this, with one more input if a reseat pressure was assumed
     */
    public VariedHouse withAssumedReseats(Scenario scenario) {
        Set<String> assumed = new HashSet<>();
        List<ReliefValve> valves = scenario.system().reliefValves();
        for (int i = 0; i < valves.size(); i++) {
            String field = "relief[" + i + "].reseats";
            if (scenario.assumptions().stream().anyMatch(made -> made.field().equals(field))) {
                assumed.add(valves.get(i).name());
            }
        }
        if (assumed.isEmpty()) {
            return this;
        }
        return and(
                new Input(
                        new Study.Input(ASSUMED_RESEAT, Distribution.between(MIN_RESEAT, MAX_RESEAT)),
                        "",
                        "70 % to 95 %"),
                (made, share) -> reseating(made, assumed, share));
    }

    /**
     * The same where the share of the vessel that water can fill, and how far a reducing valve stands above its setting without
     * flow, lie anywhere between their usual ends where nobody has read or measured them: our own judgement, no source.
     *
     * @param scenario whose house it is
     * @return this, with one more input for each of them that was assumed
     */
    public VariedHouse withUnread(Scenario scenario) {
        VariedHouse varied = withUnreadLockUp(scenario);
        for (Assumption assumed : scenario.assumptions()) {
            if (assumed.field().equals(NamedValue.ACCEPTANCE.field())) {
                varied = varied.and(
                        between(assumed, "", text -> si(QuantityReader.read(text, Kind.RATIO))),
                        (house, share) -> house.toBuilder()
                                .changeVessel(vessel -> vessel.toBuilder()
                                        .acceptance(share, RatioUnit.ONE)
                                        .build())
                                .followSupply()
                                .build());
            }
        }
        return varied;
    }

    /**
     * The same where nobody has measured how far a reducing valve stands above its setting without flow.
     *
     * @param scenario whose house it is
     * @return this, with one more input if that was assumed
     */
    public VariedHouse withUnreadLockUp(Scenario scenario) {
        return scenario.assumptions().stream()
                .filter(assumed -> assumed.field().equals(NamedValue.LOCK_UP.field()))
                .findFirst()
                .map(assumed -> and(
                        between(assumed, "Pa", text -> si(QuantityReader.read(text, Kind.PRESSURE))),
                        (house, pascal) -> house.toBuilder()
                                .changeSupply(supply -> supply.toBuilder()
                                        .reducingValve(supply.reducingValve().orElseThrow().toBuilder()
                                                .lockUpRise(pascal, PressureUnit.PASCAL)
                                                .build())
                                        .build())
                                .followSupply()
                                .build()))
                .orElse(this);
    }

    /** The same with one more input, whose value changes the house. */
    private VariedHouse and(Input one, BiFunction<HotWaterSystem, Double, HotWaterSystem> change) {
        List<Input> more = new ArrayList<>(inputs);
        more.add(one);
        int own = inputs.size();
        return new VariedHouse(
                more, usual, values -> change.apply(house.apply(Arrays.copyOf(values, own)), values[own]));
    }

    private static Input between(Assumption assumed, String unit, ToDoubleFunction<String> si) {
        String low = assumed.range().get(0);
        String high = assumed.range().get(1);
        Distribution between = Distribution.between(si.applyAsDouble(low), si.applyAsDouble(high));
        return new Input(new Study.Input(assumed.field(), between), unit, low + " to " + high);
    }

    private static double si(Amount<?> amount) {
        return amount.unit().toSi(amount.value());
    }

    private static HotWaterSystem reseating(HotWaterSystem house, Set<String> names, double share) {
        double air = house.site().atmosphere();
        return house.toBuilder()
                .changeReliefValves(valve -> names.contains(valve.name())
                        ? valve.toBuilder()
                                .reseatPressure(Pressure.gauge(
                                        share * valve.setPressure().gauge(air), PressureUnit.PASCAL))
                                .build()
                        : valve)
                .build();
    }

    /** The model of a scenario; plates count as read unless nothing but their limits is known, as of {@code 7 bar to 10 bar}. */
    HouseDay day(Scenario scenario) {
        HouseDay day = HouseDay.of(house, scenario.duration());
        return inputs.stream().anyMatch(Input::isUnreadPlate) ? day : day.withPlatesOf(scenario.system());
    }

    private static VariedHouse given(Scenario scenario) {
        List<Input> inputs = new ArrayList<>();
        for (UncertainField field : scenario.uncertain()) {
            inputs.add(new Input(field.input(), field.unit(), field.text()));
        }
        return new VariedHouse(inputs, false, scenario::drawn);
    }

    private static VariedHouse usual(HotWaterSystem described) {
        UncertainHouse house = UncertainHouse.usual(described);
        List<Input> inputs = new ArrayList<>();
        for (int i = 0; i < house.quantities().size(); i++) {
            UncertainHouse.Quantity quantity = house.quantities().get(i);
            inputs.add(new Input(house.inputs().get(i), quantity.unit(), amount(quantity)));
        }
        return new VariedHouse(inputs, true, house::moved);
    }

    private static String amount(UncertainHouse.Quantity quantity) {
        Distribution usual = quantity.usual();
        return usual.onlyLimitsKnown()
                ? amount(quantity, usual.low()) + " to " + amount(quantity, usual.high())
                : "+- " + amount(quantity, quantity.expanded());
    }

    private static String amount(UncertainHouse.Quantity quantity, double value) {
        QuantityFormat shown = QuantityFormat.ascii(UnitSystem.SI);
        return switch (quantity.unit()) {
            case "Pa" -> shown.pressureDifference(value);
            case "K" -> shown.temperatureDifference(value);
            default -> shown.share(value);
        };
    }

    /**
     * An input that differs from sample to sample.
     *
     * @param input its name and its spread
     * @param unit the unit of its values
     * @param words what is known of it, in words
     */
    public record Input(Study.Input input, String unit, String words) {

        /** Section, place in its list, and key of a field. */
        private static final Pattern PATH = Pattern.compile("([a-z.-]+?)(?:\\[(\\d+)])?\\.([a-z-]+)");

        /** What readers call sections whose names are plural, or not words of theirs. */
        private static final Map<String, String> PARTS = Map.of(
                "piping", "pipe", "relief", "relief valve", "draws", "draw", "leaks", "leak", "upper", "upper element");

        /**
         * Checks that everything is there.
         *
         * @param input its name and its spread
         * @param unit the unit of its values
         * @param words what is known of it, in words
         */
        public Input {
            Objects.requireNonNull(input, "input");
            Objects.requireNonNull(unit, "unit");
            Objects.requireNonNull(words, "words");
        }

        /** Whether the pressure on the plate of a relief valve or of the tank is not known. */
        private boolean isUnreadPlate() {
            return input.distribution().onlyLimitsKnown()
                    && NamedValue.of(name())
                            .filter(NamedValue::isPressureOnPlate)
                            .isPresent();
        }

        /**
         * What readers call it.
         *
         * @return the name in words, such as {@code set pressure of relief valve 2}
         */
        public String label() {
            Matcher path = PATH.matcher(name());
            if (!path.matches()) {
                return name();
            }
            String number = path.group(2) == null ? "" : " " + (Integer.parseInt(path.group(2)) + 1);
            String section =
                    path.group(1).substring(path.group(1).lastIndexOf('.') + 1).replace('-', ' ');
            return NamedValue.of(name())
                    .map(value -> number.isEmpty()
                            ? value.label()
                            : value.words().replaceFirst("^the ", "").replace("a relief valve", "relief valve")
                                    + number)
                    .orElse(path.group(3).replace('-', ' ') + " of " + PARTS.getOrDefault(section, section) + number);
        }

        /**
         * What it is called.
         *
         * @return the name, such as {@code supply.pressure}
         */
        public String name() {
            return input.name();
        }
    }
}
