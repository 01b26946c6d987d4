package io.github.heatswell.scenarios.generated;

import io.github.heatswell.scenarios.generated.Part.Keyed;
import io.github.heatswell.scenarios.generated.Part.Plain;
import io.github.heatswell.scenarios.generated.Part.Quantity;
import io.github.heatswell.scenarios.generated.Part.Several;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Makes values agree that were drawn one by one, as the README says they must: a valve reseats below its set pressure, outages do not
 * overlap, a gas burner has no second element. Whatever rule is missing here is found by the test that every file is valid.
 */
final class Belongings {

    private static final double FREEZING = 273.15;
    private static final double DAY = 86_400;
    /** What a file takes if it does not say how hard the tank may be pressed (Pa). */
    private static final double USUAL_WORKING_PRESSURE = 10e5;

    private static final List<Material> PLASTICS =
            List.of(Material.PEX, Material.PE, Material.PPR, Material.PB, Material.PVCC);
    /** How much below a bound that is not allowed itself values stay (-). */
    private static final double BELOW = 0.995;

    private final Chance chance;
    private final Wildness wildness;
    private final Numbers numbers;
    private final Keyed file;

    Belongings(Chance chance, Wildness wildness, Numbers numbers, Keyed file) {
        this.chance = chance;
        this.wildness = wildness;
        this.numbers = numbers;
        this.file = file;
    }

    void agree() {
        tank(file.keyed("tank"));
        layeredHeight(file.keyed("tank"));
        inletMixing(file.keyed("tank"));
        heater(file.keyed("heater"));
        shape(file.keyed("tank"), file.keyed("heater").word("energy").equalsIgnoreCase("gas"));
        file.items("piping").forEach(this::pipe);
        run();
        supply(file.keyed("supply"));
        give(file.keyed("tank"));
        file.items("piping").forEach(this::stretch);
        relief(file.items("relief"));
        vessel(file.keyed("vessel"));
        vessels(file.items("vessels"));
        trappedAir();
        circulation();
        tankAir(file.keyed("tank"));
        draws();
        costs(file.keyed("costs"));
    }

    private void tank(Keyed tank) {
        boolean rigid = tank.word("material").equalsIgnoreCase("rigid");
        boolean plastic = isPlastic(tank);
        if (rigid) {
            tank.remove("diameter", "wall", "heads", "flue", "compliance", "expansion");
        }
        if (tank.has("compliance")) {
            tank.remove("diameter", "wall", "heads", "flue");
            return;
        }
        double diameter = tank.si("diameter", usualDiameter(tank.si("volume", 0)));
        if (plastic && !tank.has("wall") || !rigid && diameter / 350 > 0.05 || tank.si("wall", 0) > diameter / 10) {
            tank.put("wall", numbers.between(Format.single("tank.wall"), 0.2e-3, Math.min(50e-3, diameter / 10)));
        }
        if (plastic && tank.si("wall", 0) < diameter / 100) {
            // a thinner one might stretch too far
            tank.put(
                    "wall", numbers.between(Format.single("tank.wall"), diameter / 90, Math.min(50e-3, diameter / 10)));
        }
    }

    /** At most 60 % more room at the highest pressure. */
    private void give(Keyed tank) {
        double most = 0.6 * tank.si("volume", 0) / Math.max(12.5e5, highestPressure());
        if (tank.si("compliance", 0) > most) {
            tank.put("compliance", numbers.between(Format.single("tank.compliance"), most / 1000, most));
        }
    }

    /** The heads hold no more than the tank, and a flue is that of a gas heater and leaves water around it. */
    private void shape(Keyed tank, boolean gas) {
        double radius = tank.si("diameter", usualDiameter(tank.si("volume", 0))) / 2;
        double deepest = 0.99 * tank.si("volume", 0) / (4 * Math.PI / 3 * Math.pow(radius, 3));
        if (tank.has("heads") && deepest < 1 && tank.si("heads", 0) > deepest) {
            tank.remove("heads");
        }
        if (!gas || 2 * radius < 0.05) {
            tank.remove("flue");
        }
        if (tank.has("flue") && tank.si("flue", 0) > radius) {
            tank.put("flue", numbers.between(Format.single("tank.flue"), 0.02, Math.min(1, 0.99 * radius)));
        }
    }

    /** More than one layer. */
    private void inletMixing(Keyed tank) {
        int layers = tank.has("layers") ? Integer.parseInt(tank.word("layers")) : 1;
        if (layers == 1) {
            tank.remove("inlet-mixing");
        } else if (tank.has("inlet-mixing") && tank.si("inlet-mixing", 0) * layers < 1.1) {
            tank.put("inlet-mixing", numbers.between(Format.single("tank.inlet-mixing"), 1.1 / layers, 1));
        }
    }

    /** All plastics begin with a p, and no metal does. */
    private static boolean isPlastic(Keyed part) {
        return part.word("material").toLowerCase(java.util.Locale.ROOT).startsWith("p");
    }

    private void layeredHeight(Keyed tank) {
        if (tank.has("layers") && !tank.has("height")) {
            tank.put("height", numbers.drawn(Format.single("tank.height")));
        }
    }

    /** As files take it, to the ten millimetres. */
    private static double usualDiameter(double volume) {
        return Math.round(100 * Math.cbrt(4 * volume / (3 * Math.PI))) / 100.0;
    }

    private void heater(Keyed heater) {
        boolean gas = heater.word("energy").equalsIgnoreCase("gas");
        double lower = heater.si("height", 0);
        if (gas || lower > 0.9) {
            heater.remove("upper");
        }
        if (!heater.has("upper")) {
            heater.remove("simultaneous");
        }
        Keyed upper = heater.keyed("upper");
        if (heater.has("upper") && upper.si("height", 0) <= lower) {
            upper.put("height", numbers.between(Format.single("heater.upper.height"), lower + 0.01, 0.95));
        }
        differential(heater, "heater.differential");
        differential(upper, "heater.upper.differential");
        double hottest = Math.max(heater.si("set-point", 0), upper.si("set-point", 0));
        if (heater.has("cut-out") && heater.si("cut-out", 0) <= hottest) {
            heater.put(
                    "cut-out",
                    numbers.between(Format.single("heater.cut-out"), Math.max(hottest + 0.1, 323.15), 403.15));
        }
    }

    private void differential(Keyed element, String path) {
        double most = element.si("set-point", 400) - FREEZING;
        if (element.si("differential", 5) >= most) {
            element.put("differential", numbers.between(Format.single(path), 0.1, Math.min(40, BELOW * most)));
        }
    }

    private void pipe(Keyed pipe) {
        if (!isPlastic(pipe)) {
            pipe.remove("stiffness-at", "loaded-for");
        }
        double outside = pipe.si("outside-diameter", 0);
        double most = Math.min(20e-3, 0.48 * outside);
        if (pipe.si("wall", 0) > most) {
            pipe.put("wall", numbers.between(Format.single("piping[].wall"), 0.1e-3, most));
        }
    }

    /** A wall that the highest pressure would stretch too far is made thicker. */
    private void stretch(Keyed pipe) {
        if (!isPlastic(pipe)) {
            return;
        }
        PipeRun.Builder run = PipeRun.builder()
                .material(PLASTICS.stream()
                        .filter(plastic -> plastic.name().equalsIgnoreCase(pipe.word("material")))
                        .findAny()
                        .orElseThrow())
                .outsideDiameter(pipe.si("outside-diameter", 0), LengthUnit.METRE)
                .length(1, LengthUnit.METRE);
        if (pipe.has("stiffness-at")) {
            run.stiffnessAt(pipe.si("stiffness-at", 0), TemperatureUnit.KELVIN);
        }
        if (pipe.has("loaded-for")) {
            run.loadedFor(pipe.si("loaded-for", 0), DurationUnit.SECOND);
        }
        double wall = pipe.si("wall", 0);
        double grows = run.wall(wall, LengthUnit.METRE).build().compliance() * highestPressure();
        if (grows > 0.7) {
            pipe.put("wall", numbers.exactly(Format.single("piping[].wall"), wall * grows / 0.6));
        }
    }

    /** The highest pressure (Pa, gauge) that the supply or the tank is described to have. */
    private double highestPressure() {
        Keyed supply = file.keyed("supply");
        double highest = supply.keyed("reducing-valve").si("set", 0)
                + supply.keyed("reducing-valve").si("lock-up-rise", 0);
        if (!supply.has("reducing-valve")) {
            highest = supply.si("pressure", 0);
            for (Keyed entry : supply.items("pressure")) {
                highest = Math.max(highest, entry.si("pressure", 0));
            }
        }
        return Math.max(highest, file.keyed("tank").si("working-pressure", USUAL_WORKING_PRESSURE));
    }

    private void run() {
        Keyed run = file.keyed("run");
        boolean any = wildness == Wildness.WILD && chance.with(0.1);
        if (run.has("duration") && !any) {
            run.put("duration", numbers.between(Format.single("run.duration"), 600, 2 * DAY));
        }
        double duration = run.si("duration", DAY);
        if (run.has("sample")) {
            double least = Math.min(duration, Math.max(1, duration / 5000));
            run.put("sample", numbers.between(Format.single("run.sample"), least, Math.max(least, duration / 10)));
        }
    }

    private void supply(Keyed supply) {
        String arrangement = supply.word("arrangement").toLowerCase(java.util.Locale.ROOT);
        boolean reducing = arrangement.equals("reducing-valve");
        if (!reducing) {
            supply.remove("reducing-valve");
        } else if (!supply.has("reducing-valve")) {
            Keyed valve = new Keyed();
            valve.put("set", numbers.drawn(Format.single("supply.reducing-valve.set")));
            supply.put("reducing-valve", valve);
        }
        if (arrangement.equals("direct")) {
            supply.remove("seat-leakage");
        }
        if (supply.has("shut-off")) {
            supply.put("shut-off", outages());
        }
        if (!reducing) {
            below(supply, "pressure", "supply.pressure", testPressure());
            supply.items("pressure")
                    .forEach(entry -> below(entry, "pressure", "supply.pressure[].pressure", testPressure()));
        }
        Set<String> times = new TreeSet<>();
        supply.items("pressure").forEach(entry -> entry.put("at", new Plain(otherTime(times))));
    }

    private String otherTime(Set<String> taken) {
        String time;
        do {
            time = Sampler.clock(chance.whole(0, 86_399), chance.with(0.2));
        } while (!taken.add(time.length() == 5 ? time + ":00" : time));
        return time;
    }

    private double testPressure() {
        return 2 * file.keyed("tank").si("working-pressure", USUAL_WORKING_PRESSURE);
    }

    /** Puts a pressure above 0 below another if it is not. */
    private void below(Keyed part, String key, String path, double bound) {
        if (part.quantity(key).isPresent() && part.si(key, 0) >= BELOW * bound) {
            part.put(key, numbers.between(Format.single(path), 0.05 * bound, BELOW * bound));
        }
    }

    private Several outages() {
        Several outages = new Several();
        double duration = Math.min(2 * DAY, file.keyed("run").si("duration", DAY));
        double from = chance.between(0, duration / 2);
        int number = chance.whole(0, 3);
        for (int i = 0; i < number; i++) {
            Keyed outage = new Keyed();
            Quantity begin = numbers.between(Format.single("supply.shut-off[].from"), from, 1.2 * from);
            double least = 1.05 * begin.si() + 1;
            Quantity end = numbers.between(Format.single("supply.shut-off[].to"), least, least + duration / 4);
            outage.put("from", begin);
            outage.put("to", end);
            outages.items().add(outage);
            from = 1.02 * end.si() + 1;
        }
        return outages;
    }

    private void relief(List<Keyed> valves) {
        for (int i = 0; i < valves.size(); i++) {
            Keyed valve = valves.get(i);
            if (valves.size() > 1) {
                String name = valve.has("name") ? valve.word("name") : "valve";
                valve.put("name", new Plain((i + 1) + " " + name.substring(0, Math.min(50, name.length()))));
            }
            pressures(valve);
            temperatures(valve);
            fault(valve);
        }
    }

    private void pressures(Keyed valve) {
        double setPressure = valve.si("opens", 0);
        if (valve.has("full-lift") && valve.si("full-lift", 0) < setPressure) {
            valve.put(
                    "full-lift",
                    chance.with(0.2)
                            ? valve.quantity("opens").orElseThrow()
                            : numbers.between(
                                    Format.single("relief[].full-lift"), 1.001 * setPressure, 1.1 * setPressure));
        }
        below(valve, "reseats", "relief[].reseats", setPressure);
    }

    private void temperatures(Keyed valve) {
        if (!valve.has("opens-at")) {
            valve.remove("reseats-at", "rated-input");
            inlet(valve);
            return;
        }
        valve.remove("kind");
        double setPressure = valve.si("opens-at", 0);
        if (valve.has("reseats-at") && valve.si("reseats-at", 0) >= setPressure - 0.05) {
            valve.put("reseats-at", numbers.between(Format.single("relief[].reseats-at"), 313.15, setPressure - 0.05));
        }
        if (valve.has("location")) {
            valve.put("location", new Plain("tank-top"));
        }
    }

    /** A safety group has a check valve, which may contradict the supply. */
    private void inlet(Keyed valve) {
        if (valve.has("kind")) {
            valve.put("kind", new Plain(chance.with(0.5) ? "expansion-valve" : "relief-valve"));
            valve.remove("location");
        }
    }

    private void fault(Keyed valve) {
        if (!(valve.values().get("fault") instanceof Keyed fault)) {
            return;
        }
        if (chance.with(0.5)) {
            fault.remove("leaks-from", "leakage");
            fault.put("stuck-open", numbers.drawn(Format.single("relief[].fault.stuck-open")));
        } else {
            fault.remove("stuck-open");
            fault.put("leakage", numbers.drawn(Format.single("relief[].fault.leakage")));
            fault.put("leaks-from", numbers.drawn(Format.single("relief[].fault.leaks-from")));
            below(fault, "leaks-from", "relief[].fault.leaks-from", valve.si("opens", 0));
        }
    }

    private void vessel(Keyed vessel) {
        double working = file.keyed("tank").si("working-pressure", USUAL_WORKING_PRESSURE);
        if (vessel.si("precharge", 0) > working) {
            vessel.put(
                    "precharge",
                    chance.with(0.2)
                            ? numbers.exactly(Format.single("vessel.precharge"), working)
                            : numbers.between(Format.single("vessel.precharge"), 0.02 * working, BELOW * working));
        }
        if (vessel.word("location").equalsIgnoreCase("in-tank")) {
            vessel.remove("temperature");
            double top = file.keyed("tank").si("height", 30);
            if (vessel.si("height", 0) < 0 || vessel.si("height", 0) > top) {
                vessel.put("height", numbers.between(Format.single("vessel.height"), 0.01 * top, BELOW * top));
            }
        }
    }

    /** Further vessels, each with a name of its own. */
    private void vessels(List<Keyed> vessels) {
        for (int i = 0; i < vessels.size(); i++) {
            vessel(vessels.get(i));
            vessels.get(i).put("name", new Plain("further " + (i + 1)));
        }
    }

    private void trappedAir() {
        double room = 0;
        for (Keyed pipe : file.items("piping")) {
            if (pipe.has("carries") && !pipe.word("carries").equalsIgnoreCase("cold")) {
                continue;
            }
            pipe.remove("insulation");
            double inside = pipe.si("outside-diameter", 0) - 2 * pipe.si("wall", 0);
            room += Math.PI / 4 * inside * inside * pipe.si("length", 0);
        }
        if (room <= 0) {
            file.remove("trapped-air");
        } else if (file.si("trapped-air", 0) > BELOW * room) {
            file.put("trapped-air", numbers.between(Format.single("trapped-air"), 0.01 * room, BELOW * room));
        }
    }

    /** A loop has pipes and a pump, or neither. */
    private void circulation() {
        List<Keyed> loop = file.items("piping").stream()
                .filter(pipe -> pipe.has("carries") && pipe.word("carries").equalsIgnoreCase("loop"))
                .toList();
        if (!file.has("circulation")) {
            loop.forEach(pipe -> pipe.put("carries", new Plain("hot")));
        } else if (loop.isEmpty()) {
            file.remove("circulation");
        }
        for (Keyed hours : file.keyed("circulation").items("pump")) {
            if (clock(hours.word("from")).equals(clock(hours.word("to")))) {
                hours.put("to", new Plain(hours.word("from").startsWith("12") ? "13:00" : "12:00"));
            }
        }
    }

    /** A time of day with its seconds. */
    private static String clock(String time) {
        return time.length() > 5 ? time : time + ":00";
    }

    /** At most a third of the highest layer, were it at the pressure of the air of the highest site, and the supply at 25 bar. */
    private void tankAir(Keyed tank) {
        double most = 0.3
                * tank.si("volume", 0)
                / (tank.has("layers") ? Integer.parseInt(tank.word("layers")) : 1)
                * 0.5
                / 26;
        if (tank.has("air") && tank.si("air", 0) > most) {
            tank.put("air", numbers.between(Format.single("tank.air"), most / 100, most));
        }
    }

    /** Every draw ends before the next begins. */
    private void draws() {
        List<Keyed> draws = new ArrayList<>(file.items("draws"));
        double room = Math.floor(DAY / Math.max(1, draws.size()));
        for (int i = 0; i < draws.size(); i++) {
            Keyed draw = draws.get(i);
            int second = (int) (i * room + chance.between(0, room / 4));
            draw.put("at", new Plain(Sampler.clock(second, true)));
            boolean heat = draw.has("energy") && chance.with(0.5);
            draw.remove(heat ? "volume" : "energy");
            if (!heat) {
                double most = 0.7 * room * draw.si("flow", 0);
                below(draw, "volume", "draws[].volume", most);
            }
        }
    }

    private void costs(Keyed costs) {
        if (costs.has("vessels") && costs.items("vessels").isEmpty()) {
            costs.remove("vessels");
        }
    }
}
