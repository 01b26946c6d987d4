package io.github.heatswell.diagnosis;

import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.VolumeUnit;
import java.util.Locale;

/**
 * A reading that can be taken on site with simple means: a gauge, a measuring jug and a watch. Most need
 * only household items.
 */
public enum SiteCheck {
    /** What the gauge shows right after water was drawn, with the heater off (Pa, gauge). */
    COLD_STATIC(
            "the gauge right after cold water was drawn, with the heater off", "Pa", 0.1e5, 1, Range.SUPPLY_OR_CHARGE),
    /** The highest reading while the tank is heated from cold, by a maximum pointer or by watching (Pa, gauge). */
    HEAT_UP_MAXIMUM(
            "the highest reading of the gauge while the tank heats up from cold", "Pa", 0.15e5, 2, Range.HEATED),
    /** What the gauge shows twelve hours after the heat-up began, no water drawn in between (Pa, gauge). */
    NEXT_MORNING(
            "the gauge twelve hours after the heat-up from cold began, with no water drawn in between",
            "Pa",
            0.1e5,
            3,
            Range.HEATED),
    /** Discharge of the relief pipe while the tank is heated from cold, up to twelve hours after the start (m3). */
    CAUGHT_VOLUME(
            "the water that comes out of the relief pipe in the twelve hours after a heat-up from cold began, with no water drawn",
            "m3",
            0.1e-3,
            3,
            Range.CAUGHT),
    /** The peak of the check sheet: the highest reading after a part of the tank was drawn, until the heater is off (Pa, gauge). */
    PEAK_AFTER_DRAW(
            "the highest reading of the gauge while the tank heats up after the draw of the check sheet",
            "Pa",
            0.15e5,
            5,
            Range.HEATED),
    /** The next morning of the check sheet: ten hours after that draw, with no tap opened since (Pa, gauge). */
    MORNING_AFTER_DRAW(
            "the gauge 10 h after the taps were closed, with the draw of the check sheet",
            "Pa",
            0.1e5,
            5,
            Range.HEATED),
    /** The temperature of the water at the nearest hot tap after a heat-up, behind the mixing valve if there is one (K). */
    HOT_TAP("the temperature of the water at the nearest hot tap after a heat-up", "K", 2, 1, Range.TEMPERATURE),
    /** What the water meter counts in an hour with every tap shut and the heater off (m3). */
    METER_AT_REST(
            "what the water meter counts in an hour with every tap shut and the heater off",
            "m3",
            0.1e-3,
            2,
            Range.METERED),
    /** What a tyre gauge shows at the vessel's air valve with the heater cold and the water side empty (Pa, gauge). */
    TYRE_GAUGE(
            "a tyre gauge at the air valve of the vessel, heater off and cold, water side relieved and empty",
            "Pa",
            0.1e5,
            4,
            Range.SUPPLY_OR_CHARGE),
    /**
     * Which share of the vessel is full of water while the supply's pressure stands in it, by its weight or by tapping along it (-): dull
     * where water is, hollow where gas is. Of several vessels, the fullest.
     */
    VESSEL_FULL(
            "how much of the vessel is full of water, by its weight or by tapping along it", "", 0.25, 3, Range.SHARE),
    /**
     * What comes out of the vessel's air valve while its pin is pressed for a moment: 1 for water, 0 for gas alone (-). Its usual
     * uncertainty makes a cause that is at odds with it a hundred times less likely, for whoever looks takes condensation for more now
     * and then.
     */
    GAS_VALVE(
            "what comes out of the vessel's air valve while its pin is pressed for a moment",
            "",
            0.324,
            2,
            Range.SHARE);

    /** More than this share of a reading (-) may not be uncertain. */
    private static final double MAX_SHARE = 0.5;

    private final String words;
    private final String unit;
    private final double uncertainty;
    private final int effort;
    private final Range range;

    SiteCheck(String words, String unit, double uncertainty, int effort, Range range) {
        this.words = words;
        this.unit = unit;
        this.uncertainty = uncertainty;
        this.effort = effort;
        this.range = range;
    }

    /**
     * What to read.
     *
     * @return the reading in words, without article at the end or full stop
     */
    public String words() {
        return words;
    }

    /**
     * The SI unit of the reading; pressures are gauge.
     *
     * @return the unit, empty for a share
     */
    public String unit() {
        return unit;
    }

    /**
     * The standard uncertainty taken for a reading that comes without one: what careful reading of household instruments
     * gives, common practice, no source.
     *
     * @return the uncertainty (in the {@link #unit() unit} of the check; of a pressure, a difference)
     */
    public double usualUncertainty() {
        return uncertainty;
    }

    /**
     * The range a reading can have, so that a typing error is caught. The limits are beyond what a house has; no
     * source.
     *
     * @return the range (in the {@link #unit() unit} of the check; pressures are gauge), under the name that files of
     *     readings have for the check, such as {@code cold-static}
     */
    public Limits limits() {
        Unit unit = range.unit;
        return Limits.between(name().toLowerCase(Locale.ROOT).replace('_', '-'), unit.toSi(0), unit.toSi(range.high));
    }

    /**
     * The unit in which the {@link #limits() limits} are round numbers.
     *
     * @return bar, degC, L or %
     */
    public Unit customaryUnit() {
        return range.unit;
    }

    /**
     * The largest standard uncertainty at which a reading is still useful: half of what is read, and of small
     * readings 0.5 bar, 10 K, 1 L or half a vessel. Common practice, no source.
     *
     * @param value the reading (in the {@link #unit() unit} of the check; pressures are gauge)
     * @return the uncertainty (in the same unit; of a pressure or a temperature, a difference), above 0
     */
    public double largestUncertainty(double value) {
        double aboveZero = range.unit instanceof TemperatureUnit ? 0 : value;
        return Math.max(range.rough * range.unit.factor(), MAX_SHARE * aboveZero);
    }

    /**
     * Whether it is read at an expansion vessel, so that it means nothing in a house without one.
     *
     * @return true for its charge, its weight and what comes out of its air valve
     */
    public boolean isOfVessel() {
        return this == TYRE_GAUGE || this == VESSEL_FULL || this == GAS_VALVE;
    }

    /** Whether the check sheet tells how to take it, with its draw: {@link io.github.heatswell.checksheet.CheckProcedure}. */
    boolean afterDraw() {
        return this == PEAK_AFTER_DRAW || this == MORNING_AFTER_DRAW;
    }

    /** Whether the gauge in the water shows it, with the same error as in a log. */
    boolean byLoggedGauge() {
        return unit.equals("Pa") && this != TYRE_GAUGE;
    }

    /** How much work the check is, 1 being the least. */
    int effort() {
        return effort;
    }

    /** What a reading of a kind can be, and how rough a small one may be, in the unit in which these are round numbers. */
    private enum Range {
        SUPPLY_OR_CHARGE(25, PressureUnit.BAR, 0.5),
        HEATED(50, PressureUnit.BAR, 0.5),
        TEMPERATURE(110, TemperatureUnit.CELSIUS, 10),
        CAUGHT(1_000, VolumeUnit.LITRE, 1),
        METERED(2_000, VolumeUnit.LITRE, 1),
        SHARE(100, RatioUnit.PERCENT, 50);

        private final double high;
        private final Unit unit;
        private final double rough;

        Range(double high, Unit unit, double rough) {
            this.high = high;
            this.unit = unit;
            this.rough = rough;
        }
    }
}
