package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.file.Assumption;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A scenario with one value that nobody has read, and the same with that value elsewhere.
 *
 * @param field the value
 * @param scenario the scenario in which it is a range, or assumed
 * @param ends the scenario with other values in its place
 */
record UnreadValue(String field, Scenario scenario, List<Scenario> ends) {

    private static final Pattern QUANTITY = Pattern.compile("([0-9.]+) (.*)");

    /** All values of a scenario that can be made a range, and all that are assumed. */
    static List<UnreadValue> of(Scenario scenario) {
        List<UnreadValue> all = new ArrayList<>();
        given(scenario.system()).forEach((field, quantity) -> {
            String low = scaled(quantity, 0.9).orElseThrow();
            String high = scaled(quantity, 1.1).orElseThrow();
            changed(scenario, field, low + " to " + high)
                    .ifPresent(range -> add(all, field, range, List.of(low, high)));
        });
        for (Assumption assumed : scenario.assumptions()) {
            List<String> ends = new ArrayList<>();
            scaled(assumed.value(), 0.9).ifPresent(ends::add);
            scaled(assumed.value(), 1.1).ifPresent(ends::add);
            if (!assumed.field().startsWith("run.") && !assumed.field().startsWith("site.")) {
                add(all, assumed.field(), scenario, ends);
            }
        }
        return all;
    }

    private static void add(List<UnreadValue> all, String field, Scenario scenario, List<String> ends) {
        List<Scenario> moved = ends.stream()
                .flatMap(end -> changed(scenario, field, end).stream())
                .toList();
        if (!moved.isEmpty()) {
            all.add(new UnreadValue(field, scenario, moved));
        }
    }

    private static Map<String, String> given(HotWaterSystem house) {
        double air = house.site().atmosphere();
        Map<String, String> values = new LinkedHashMap<>();
        if (house.supply().mains().isConstant()) {
            values.put(
                    "supply.pressure",
                    bar(house.supply()
                            .mains()
                            .entries()
                            .values()
                            .iterator()
                            .next()
                            .gauge(air)));
        }
        house.supply()
                .reducingValve()
                .ifPresent(valve ->
                        values.put("supply.reducing-valve.set", bar(valve.set().gauge(air))));
        values.put("tank.volume", text(1e3 * house.tank().volume(), "L"));
        values.put("heater.set-point", text(house.heater().setPoint() - 273.15, "degC"));
        for (int i = 0; i < house.reliefValves().size(); i++) {
            values.put(
                    "relief[" + i + "].opens",
                    bar(house.reliefValves().get(i).setPressure().gauge(air)));
        }
        house.vessel().ifPresent(vessel -> {
            values.put("vessel.volume", text(1e3 * vessel.volume(), "L"));
            values.put("vessel.precharge", bar(vessel.precharge().gauge(air)));
        });
        return values;
    }

    private static String bar(double pascal) {
        return text(pascal / 1e5, "bar");
    }

    private static String text(double value, String unit) {
        return String.format(Locale.ROOT, "%.5f %s", value, unit);
    }

    private static Optional<String> scaled(String quantity, double by) {
        Matcher parts = QUANTITY.matcher(quantity);
        return parts.matches()
                ? Optional.of(text(by * Double.parseDouble(parts.group(1)), parts.group(2)))
                : Optional.empty();
    }

    private static Optional<Scenario> changed(Scenario scenario, String field, String value) {
        try {
            return Optional.of(scenario.with(List.of(Change.of(field + "=" + value))));
        } catch (InvalidScenarioException impossible) {
            return Optional.empty();
        }
    }
}
