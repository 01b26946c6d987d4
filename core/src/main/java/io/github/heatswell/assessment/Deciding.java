package io.github.heatswell.assessment;

import static io.github.heatswell.system.NamedValue.ACCEPTANCE;
import static io.github.heatswell.system.NamedValue.ARRANGEMENT;
import static io.github.heatswell.system.NamedValue.BYPASS;
import static io.github.heatswell.system.NamedValue.COLD;
import static io.github.heatswell.system.NamedValue.CUT_OUT;
import static io.github.heatswell.system.NamedValue.ENERGY;
import static io.github.heatswell.system.NamedValue.HEATER_INPUT;
import static io.github.heatswell.system.NamedValue.LOCK_UP;
import static io.github.heatswell.system.NamedValue.MATERIAL;
import static io.github.heatswell.system.NamedValue.PRECHARGE;
import static io.github.heatswell.system.NamedValue.REDUCED;
import static io.github.heatswell.system.NamedValue.SET_POINT;
import static io.github.heatswell.system.NamedValue.SET_PRESSURE;
import static io.github.heatswell.system.NamedValue.SET_TEMPERATURE;
import static io.github.heatswell.system.NamedValue.SUPPLY;
import static io.github.heatswell.system.NamedValue.TANK_VOLUME;
import static io.github.heatswell.system.NamedValue.UPPER_SET_POINT;
import static io.github.heatswell.system.NamedValue.VESSEL;
import static io.github.heatswell.system.NamedValue.VESSEL_VOLUME;

import io.github.heatswell.system.NamedValue;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The values of a house that together decide what happens in it, so that a finding rests on all of them. */
final class Deciding {

    /** What decides how high the supply stands. */
    static final Set<NamedValue> STATIC = with(EnumSet.of(ARRANGEMENT, SUPPLY, REDUCED), LOCK_UP);

    /** What decides how far a heat-up drives the pressure of a house without a vessel. */
    static final Set<NamedValue> HEAT_UP =
            with(STATIC, BYPASS, VESSEL, COLD, TANK_VOLUME, MATERIAL, SET_POINT, UPPER_SET_POINT, SET_PRESSURE);

    /** The same with a vessel. */
    static final Set<NamedValue> CUSHIONED = with(HEAT_UP, VESSEL_VOLUME, PRECHARGE, ACCEPTANCE);

    /** What decides how hot the water gets, and what a run comes to with it. */
    static final Set<NamedValue> HEAT =
            with(HEAT_UP, ENERGY, HEATER_INPUT, SET_TEMPERATURE, CUT_OUT, VESSEL_VOLUME, PRECHARGE);

    /** What can turn the answer whether a relief valve opens, and how high the pressure climbs. */
    static final Set<NamedValue> ANSWER = with(
            EnumSet.of(ARRANGEMENT),
            SUPPLY,
            REDUCED,
            COLD,
            TANK_VOLUME,
            SET_POINT,
            UPPER_SET_POINT,
            SET_PRESSURE,
            SET_TEMPERATURE,
            VESSEL,
            VESSEL_VOLUME,
            PRECHARGE);

    private static Set<NamedValue> with(Set<NamedValue> some, NamedValue... more) {
        Set<NamedValue> all = EnumSet.copyOf(some);
        all.addAll(List.of(more));
        return Collections.unmodifiableSet(all);
    }

    private Deciding() {}
}
