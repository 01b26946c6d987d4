package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Input.ACCEPTANCE;
import static io.github.heatswell.assessment.Input.ARRANGEMENT;
import static io.github.heatswell.assessment.Input.BYPASS;
import static io.github.heatswell.assessment.Input.COLD;
import static io.github.heatswell.assessment.Input.CUT_OUT;
import static io.github.heatswell.assessment.Input.ENERGY;
import static io.github.heatswell.assessment.Input.HEATER_INPUT;
import static io.github.heatswell.assessment.Input.MATERIAL;
import static io.github.heatswell.assessment.Input.MIXED_TO;
import static io.github.heatswell.assessment.Input.PRECHARGE;
import static io.github.heatswell.assessment.Input.RATED_INPUT;
import static io.github.heatswell.assessment.Input.RESEAT_PRESSURE;
import static io.github.heatswell.assessment.Input.SET_POINT;
import static io.github.heatswell.assessment.Input.SET_PRESSURE;
import static io.github.heatswell.assessment.Input.SET_TEMPERATURE;
import static io.github.heatswell.assessment.Input.STATIC;
import static io.github.heatswell.assessment.Input.SUPPLY;
import static io.github.heatswell.assessment.Input.TANK_VOLUME;
import static io.github.heatswell.assessment.Input.UPPER_SET_POINT;
import static io.github.heatswell.assessment.Input.VESSEL;
import static io.github.heatswell.assessment.Input.VESSEL_RATING;
import static io.github.heatswell.assessment.Input.VESSEL_VOLUME;
import static io.github.heatswell.assessment.Input.WORKING_PRESSURE;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * On which values of a description a finding rests.
 *
 * @param inputs the values
 * @param compared whether it only compares them, so that it is open as long as one is not known; else a run shows it, or it holds
 *     whatever they are and only its numbers rest on them
 */
record Grounds(Set<Input> inputs, boolean compared) {

    /** These speak of what gives first: a relief valve that works, or the tank only if there is none. */
    private static final Set<String> FIRST_LIMIT = Set.of(
            "expansion-control-missing", "bypass-opens-too-late", "expansion-returns-to-street", "vessel-too-small");

    /** What can turn the answer whether a relief valve opens, and how high the pressure climbs. */
    static final Set<Input> DECIDING = EnumSet.of(
            ARRANGEMENT,
            SUPPLY,
            Input.REDUCED,
            COLD,
            TANK_VOLUME,
            SET_POINT,
            UPPER_SET_POINT,
            SET_PRESSURE,
            SET_TEMPERATURE,
            VESSEL,
            VESSEL_VOLUME,
            PRECHARGE);

    private static final Grounds NONE = new Grounds(Set.of(), false);

    private static final Map<String, Grounds> BY_FINDING = table();

    private static Map<String, Grounds> table() {
        Map<String, Grounds> all = new LinkedHashMap<>();
        compares(all, STATIC, "static-pressure-high", "static-pressure-low", "vessel-above-supply");
        compares(all, with(STATIC, SET_PRESSURE), "supply-opens-relief-valve", "supply-near-relief-set");
        compares(all, with(STATIC, SET_PRESSURE, RESEAT_PRESSURE), "relief-reseats-below-supply");
        compares(all, List.of(SET_PRESSURE, WORKING_PRESSURE), "relief-set-above-tank", "tp-relief-set-high");
        compares(all, List.of(SET_TEMPERATURE), "tp-relief-temperature-high");
        compares(all, List.of(RATED_INPUT, HEATER_INPUT), "tp-relief-rating-low");
        compares(
                all,
                List.of(ARRANGEMENT, VESSEL, SUPPLY, BYPASS, SET_PRESSURE, WORKING_PRESSURE),
                "bypass-opens-too-late",
                "expansion-returns-to-street");
        compares(all, List.of(SET_POINT, UPPER_SET_POINT, MIXED_TO), "stored-too-cool", "scald-without-mixing-valve");
        compares(all, List.of(MIXED_TO), "mixing-valve-set-high");
        compares(all, List.of(MIXED_TO, COLD), "mixing-valve-below-feed", "mixed-draw-below-feed");
        compares(all, with(STATIC, ACCEPTANCE), "precharge-above-static", "precharge-below-static");
        rests(all, with(STATIC, VESSEL, SET_PRESSURE, WORKING_PRESSURE), "expansion-control-missing");
        rests(all, List.of(SET_PRESSURE), "relief-valve-seat-leaks");
        rests(all, List.of(ARRANGEMENT), "check-valve-leaks");
        rests(all, List.of(SET_TEMPERATURE), "temperature-relief-missing");
        rests(all, List.of(VESSEL_VOLUME), "vessel-isolated", "vessel-waterlogged", "vessel-upstream-of-check");
        rests(all, STATIC, "reducing-valve-creeps");
        List<Input> heatUp =
                with(STATIC, VESSEL, COLD, TANK_VOLUME, MATERIAL, SET_POINT, UPPER_SET_POINT, SET_PRESSURE);
        rests(all, heatUp, "relief-valve-controls-expansion", "relief-water-loss");
        List<Input> cushioned = with(heatUp, VESSEL_VOLUME, PRECHARGE, ACCEPTANCE);
        compares(all, with(cushioned, WORKING_PRESSURE), "vessel-too-small");
        rests(all, cushioned, "vessel-bottomed-out", "peak-above-code-limit", "peak-near-relief");
        rests(all, with(cushioned, VESSEL_RATING), "vessel-rating-exceeded");
        rests(all, with(cushioned, WORKING_PRESSURE), "working-pressure-exceeded");
        List<Input> heat = with(heatUp, ENERGY, HEATER_INPUT, SET_TEMPERATURE, CUT_OUT, VESSEL_VOLUME, PRECHARGE);
        rests(
                all,
                heat,
                "test-pressure-reached",
                "vapour-forms",
                "relief-valve-chatters",
                "pressure-lost",
                "water-out-of-range",
                "water-hotter-than-boiling",
                "boiling-margin-small");
        rests(all, List.of(SET_TEMPERATURE, HEATER_INPUT), "relief-valve-opened-by-heat");
        rests(all, List.of(CUT_OUT, HEATER_INPUT), "cut-out-tripped");
        return Map.copyOf(all);
    }

    /** What a finding rests on; nothing for one that only repeats the description, or that speaks of what is not known itself. */
    static Grounds of(String id, AssessmentContext subject) {
        Grounds all = BY_FINDING.getOrDefault(id, NONE);
        return FIRST_LIMIT.contains(id) && subject.firstRelief().isPresent()
                ? new Grounds(all.without(WORKING_PRESSURE), all.compared)
                : all;
    }

    private Set<Input> without(Input one) {
        return inputs.stream().filter(input -> input != one).collect(Collectors.toSet());
    }

    private static List<Input> with(List<Input> some, Input... more) {
        Set<Input> all = EnumSet.copyOf(some);
        all.addAll(Arrays.asList(more));
        return List.copyOf(all);
    }

    private static void compares(Map<String, Grounds> all, List<Input> inputs, String... ids) {
        add(all, inputs, true, ids);
    }

    private static void rests(Map<String, Grounds> all, List<Input> inputs, String... ids) {
        add(all, inputs, false, ids);
    }

    private static void add(Map<String, Grounds> all, List<Input> inputs, boolean compared, String... ids) {
        for (String id : ids) {
            all.put(id, new Grounds(EnumSet.copyOf(inputs), compared));
        }
    }
}
