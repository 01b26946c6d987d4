package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.time;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.study.UncertainHouse;
import io.github.heatswell.study.UncertainHouse.Quantity;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.Tank;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.LiquidWater;
import io.github.heatswell.water.Saturation;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * How well it is known when the relief valve of a house without a vessel opens in the first heat-up. The stiffest and the softest
 * house within the usual uncertainties of tank, plastic pipe and air ({@link Quantity}) have to warm to other temperatures until the
 * water that swells has no more room below the set pressure. These follow from the balance of volumes; the run's own opening sets
 * the scale of time.
 *
 * @param fastest mean rise of the stiffest house until the valve opens (Pa/K)
 * @param slowest of the softest (Pa/K)
 * @param earliest when the valve of the stiffest opens (s since the start of the run)
 * @param latest of the softest; infinite if the thermostat switches off before
 * @param less by what share less than the stiffest the softest has to discharge until the water is hot (-), beside what a valve lets
 *     out before it reseats: 0 for as much, 1 for nothing at all
 * @param held whether the valve, once open, held the pressure at its set pressure to the end of the run
 * @param causes what it depends on, in words
 */
record RiseBand(
        double fastest, double slowest, double earliest, double latest, double less, boolean held, String causes) {

    private static final Set<Quantity> STIFFNESS =
            Set.of(Quantity.TANK_STRETCH, Quantity.TANK_AIR, Quantity.PIPE_STRETCH);

    /** A run that warms the water by less than this (K) until the valve opens shows no rise. */
    private static final double MIN_WARMING = 0.5;

    /** The latest opening is at least this many times as late as the earliest, or nobody needs to know. */
    private static final double WIDE = 1.25;

    /** The amounts discharged are alike if they differ by less than this share; our own judgement. */
    private static final double ALIKE = 0.1;

    /** A peak above the pressure of the opening by more than this share of it is not the valve's; our own judgement. */
    private static final double HELD = 0.02;

    private static final String PEAK = ". The peak is unaffected: the valve's set pressure determines it.";

    /** Far above any set point (K). */
    private static final double HOTTEST = 400;

    private static final double STEP = 0.25;

    /** A time so close to a whole number of steps (-) is one. */
    private static final double EVEN = 1e-9;

    /** The band of a run; empty where no valve opens by expansion in an undisturbed first heat-up, or where all is known. */
    static Optional<RiseBand> of(RunSummary run) {
        UncertainHouse house = UncertainHouse.usual(run.system());
        boolean uncertain = house.quantities().stream().anyMatch(STIFFNESS::contains);
        return uncertain
                ? run.first(Event.Kind.RELIEF_OPENED)
                        .filter(opening -> isUndisturbed(run, opening))
                        .flatMap(opening -> between(run, opening, house))
                        .filter(band -> band.latest > WIDE * band.earliest)
                : Optional.empty();
    }

    private static boolean isUndisturbed(RunSummary run, Event opening) {
        HotWaterSystem system = run.system();
        boolean tight = system.leaks().isEmpty()
                && system.supply().seatLeakage() == 0
                && system.reliefValves().stream().allMatch(valve -> valve.condition() == ReliefFault.Condition.SOUND);
        boolean byPressure = opening.cause()
                .filter(cause -> cause == Event.OpeningCause.PRESSURE)
                .isPresent();
        return tight
                && byPressure
                && run.events().stream()
                        .filter(event -> event.time() < opening.time())
                        .allMatch(event -> switch (event.kind()) {
                            case HEATER_ON, SUPPLY_CLOSED, SUPPLY_OPENED, WORKING_PRESSURE_EXCEEDED -> true;
                            default -> false;
                        });
    }

    private static Optional<RiseBand> between(RunSummary run, Event opening, UncertainHouse house) {
        return Corners.of(run, opening, house).map(corners -> corners.band(run, opening, causes(house)));
    }

    /** How the pressure may rise until the valve opens, for a picture; empty where there is no band. */
    static List<UncertainRise.Instant> course(RunSummary run) {
        return of(run).flatMap(band -> run.first(Event.Kind.RELIEF_OPENED)
                        .flatMap(opening -> Corners.of(run, opening, UncertainHouse.usual(run.system()))
                                .map(corners -> corners.course(run, opening.pressureAbsolute(), band))))
                .orElse(List.of());
    }

    /**
     * The stiffest and the softest house, and how the run's own warming carries over to them.
     *
     * @param stiff the stiffest
     * @param soft the softest
     * @param start the temperature at the start (K)
     * @param on when the heater comes on (s)
     * @param scale by how much more the run warms until the valve opens than follows from volumes (-)
     * @param perKelvin how long it takes for that (s/K)
     */
    private record Corners(Room stiff, Room soft, double start, double on, double scale, double perKelvin) {

        private static final int INSTANTS = 48;

        static Optional<Corners> of(RunSummary run, Event opening, UncertainHouse house) {
            double start =
                    run.system().start().waterTemperature().orElse(run.system().coldAtStart());
            double on = run.first(Event.Kind.HEATER_ON).map(Event::time).orElse(0.0);
            double warming = opening.waterTemperature() - start;
            double expected = new Room(house.described(), start).opensAt(opening.pressureAbsolute()) - start;
            if (warming < MIN_WARMING || expected < MIN_WARMING) {
                return Optional.empty();
            }
            return Optional.of(new Corners(
                    new Room(corner(house, false), start),
                    new Room(corner(house, true), start),
                    start,
                    on,
                    warming / expected,
                    (opening.time() - on) / warming));
        }

        RiseBand band(RunSummary run, Event opening, String causes) {
            double early = scale * (stiff.opensAt(opening.pressureAbsolute()) - start);
            double late = scale * (soft.opensAt(opening.pressureAbsolute()) - start);
            double rise = opening.pressureAbsolute() - stiff.closed;
            boolean never = start + late > run.system().heater().setPoint();
            double end = start + (run.system().heater().setPoint() - start) / scale;
            double most = stiff.spills(end, opening.pressureAbsolute());
            double least = Math.max(0, soft.spills(end, opening.pressureAbsolute()));
            return new RiseBand(
                    rise / (early - scale * stiff.shrinks()),
                    rise / (late - scale * soft.shrinks()),
                    on + early * perKelvin,
                    never ? Double.POSITIVE_INFINITY : on + late * perKelvin,
                    most > 0 ? 1 - least / most : 0,
                    run.extremes().highestPressure().value() <= (1 + HELD) * opening.pressureAbsolute(),
                    causes);
        }

        List<UncertainRise.Instant> course(RunSummary run, double opens, RiseBand band) {
            double from = on + scale * Math.min(stiff.shrinks(), soft.shrinks()) * perKelvin;
            double off = on + (run.system().heater().setPoint() - start) * perKelvin;
            double to = Math.min(run.end(), Math.min(off, band.latest));
            DoubleStream even = IntStream.rangeClosed(0, INSTANTS).mapToDouble(i -> from + (to - from) * i / INSTANTS);
            return DoubleStream.concat(even, DoubleStream.of(Math.min(to, band.earliest)))
                    .sorted()
                    .mapToObj(time -> {
                        double temperature = start + (time - on) / perKelvin / scale;
                        return new UncertainRise.Instant(
                                time, soft.pressureAt(temperature, opens), stiff.pressureAt(temperature, opens));
                    })
                    .toList();
        }
    }

    private static String causes(UncertainHouse house) {
        boolean tank = house.quantities().contains(Quantity.TANK_STRETCH);
        boolean pipes = house.quantities().contains(Quantity.PIPE_STRETCH);
        boolean air = house.quantities().contains(Quantity.TANK_AIR);
        String stretch = tank && pipes
                ? "how far tank and plastic pipe stretch"
                : tank ? "how far the tank stretches" : pipes ? "how far plastic pipe stretches" : "";
        String held = !air ? "" : tank && !pipes ? "how much air it holds" : "how much air the tank holds";
        return stretch + (stretch.isEmpty() || held.isEmpty() ? "" : " and ") + held;
    }

    private static HotWaterSystem corner(UncertainHouse house, boolean soft) {
        double[] values = house.quantities().stream()
                .mapToDouble(quantity -> {
                    boolean moves = STIFFNESS.contains(quantity);
                    boolean even = quantity.usual().onlyLimitsKnown();
                    double low = even ? quantity.usual().low() : -quantity.expanded();
                    double high = even ? quantity.usual().high() : quantity.expanded();
                    return !moves ? 0 : soft ? high : low;
                })
                .toArray();
        return house.moved(values);
    }

    /** What is uncertain, how far, and what holds all the same. */
    Statement remark() {
        if (!held) {
            return untilOpening();
        }
        if (latest == Double.POSITIVE_INFINITY) {
            return opening()
                    .then(
                            ". Where it opens, its set pressure determines the peak; the more tank and air yield, the less it discharges.");
        }
        return less < ALIKE
                ? untilOpening()
                        .then(
                                " The amount discharged in the first heat-up barely changes: it depends mainly on how much"
                                        + " water is heated and how hot it gets.")
                : untilOpening().then(" But the more tank and air yield, the less it discharges in the first heat-up.");
    }

    /** The same without the amount, of which a run tells nothing that ends before its heat-up does. */
    Statement untilOpening() {
        return opening()
                .then(
                        !held
                                ? ". It does not hold the pressure at its set pressure."
                                : latest < Double.POSITIVE_INFINITY
                                        ? PEAK
                                        : ". Where it opens, its set pressure determines the peak.");
    }

    private Statement opening() {
        Statement rise = plain("Without a working vessel, how fast the pressure rises is uncertain. Depending on "
                        + causes + ", it is ")
                .then(slope(slowest))
                .then(" to ")
                .then(slope(fastest))
                .then(", and the relief valve opens ");
        return rise.then(when());
    }

    /** The same for the subtitle of a picture. */
    Statement brief() {
        return plain(" Depending on " + causes + ", it opens ")
                .then(when())
                .then(held && latest < Double.POSITIVE_INFINITY ? "; the peak stays the same." : ".");
    }

    private Statement when() {
        return latest < Double.POSITIVE_INFINITY
                ? plain("after ").then(from(earliest)).then(" to ").then(to(latest))
                : plain("after ").then(from(earliest)).then(" or not at all");
    }

    /** Nobody needs the seconds of a time that may be twice as long; the band rounded is never narrower. */
    private static double step(double seconds) {
        return seconds < 10 ? 1 : seconds < 180 ? 10 : 60;
    }

    private static Measure from(double seconds) {
        double step = step(seconds);
        return time(step * Math.floor(seconds / step + EVEN));
    }

    private static Measure to(double seconds) {
        double step = step(seconds);
        return time(step * Math.ceil(seconds / step - EVEN));
    }

    private static Measure slope(double value) {
        return new Measure(Measure.Kind.PRESSURE_PER_DEGREE, value);
    }

    /**
     * What a closed house has room for: shell, pipes and air against the water that swells, in the tank and in a loop whose pump
     * runs. Without a draw, hot branches and a loop at rest keep the temperature of the room, and only yield to pressure.
     */
    private static final class Room {
        private final LiquidWater water = GibbsPolynomialWater.instance();
        private final LiquidWater.State state = new LiquidWater.State();
        private final HotWaterSystem house;
        private final Tank tank;
        private final double start;
        private final double gas;
        /** The pipes whose water warms with that of the tank, */
        private final List<PipeRun> warming;
        /** which is that of the room for so much (-), and that of the tank for the rest. */
        private final double coolness;
        /** The pressure (Pa, absolute) from which it rises, */
        private final double closed;
        /** the temperature (K) from which the water swells more than the tank, */
        private final double from;
        /** and what the tank then holds (kg). */
        private final double mass;

        Room(HotWaterSystem house, double start) {
            this.house = house;
            this.start = start;
            tank = house.tank();
            double atmosphere = house.site().atmosphere();
            double fill = house.supplyAtStart().absolute(atmosphere);
            closed = house.start().pressure().map(p -> p.absolute(atmosphere)).orElse(fill);
            double cold = house.coldAtStart();
            gas = tank.air().orElse(0) * (fill - vapour(cold)) / cold;
            warming = house.circulation()
                            .filter(pump -> pump.runs(house.start().timeOfDay()))
                            .isPresent()
                    ? house.piping(PipeRun.Carries.LOOP)
                    : List.of();
            coolness = warming.isEmpty() ? 0 : coolness();
            double turn = start;
            while (held(turn + STEP, closed) > held(turn, closed)) {
                turn += STEP;
            }
            from = turn;
            mass = held(from, closed);
        }

        /** Of a loop in balance: what it takes from the tank is lost to the room. */
        private double coolness() {
            water.evaluate(start, closed, state);
            double carried = house.circulation().orElseThrow().flow() * state.density() * state.heatCapacity();
            double lost = warming.stream().mapToDouble(PipeRun::heatLoss).sum();
            return lost / (carried + lost);
        }

        private static double vapour(double temperature) {
            return Saturation.pressureAbsolute(Math.max(temperature, 273.15));
        }

        /** Water that fits into the tank, and into a loop whose pump runs (kg). */
        private double held(double temperature, double p) {
            double loop = 0;
            double inLoop = temperature + coolness * (house.site().roomTemperature() - temperature);
            for (PipeRun pipe : warming) {
                water.evaluate(inLoop, p, state);
                double stretch =
                        3 * pipe.material().linearExpansion() * (inLoop - start) + pipe.compliance() * (p - closed);
                loop += state.density() * pipe.volume() * (1 + stretch);
            }
            water.evaluate(temperature, p, state);
            double shell = tank.volume() * (1 + tank.shell().thermalGrowth() * (temperature - start))
                    + tank.compliance() * (p - closed);
            return loop + state.density() * (shell - gas * temperature / (p - vapour(temperature)));
        }

        /** By how much (K) the water warms before it swells more than the tank. */
        double shrinks() {
            return from - start;
        }

        /** What has no room (kg) once it has warmed to a temperature (K) at a pressure (Pa, absolute); below 0 while there is room. */
        double spills(double temperature, double p) {
            return mass - held(temperature, p) - beside(p);
        }

        /** The temperature (K) at which it is full at a pressure (Pa, absolute). */
        double opensAt(double p) {
            double beside = beside(p);
            double low = from;
            double high = HOTTEST;
            for (int i = 0; i < 50; i++) {
                double middle = (low + high) / 2;
                if (held(middle, p) + beside > mass) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return low;
        }

        /** The pressure (Pa, absolute) at a temperature (K), up to a highest one. */
        double pressureAt(double temperature, double highest) {
            double low = closed;
            double high = highest;
            for (int i = 0; i < 40; i++) {
                double middle = (low + high) / 2;
                if (temperature > from && spills(temperature, middle) > 0) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return temperature > from && spills(temperature, highest) > 0 ? highest : low;
        }

        /** What the other pipes and air in them make room for (kg) up to a pressure (Pa, absolute). */
        private double beside(double p) {
            double pipes = 0;
            for (PipeRun pipe : house.piping()) {
                if (warming.contains(pipe)) {
                    continue;
                }
                water.evaluate(house.coldAtStart(), p, state);
                pipes += state.density() * pipe.volume() * (pipe.compliance() + state.compressibility()) * (p - closed);
            }
            return pipes + state.density() * house.trappedAir().orElse(0) * (1 - closed / p);
        }
    }
}
