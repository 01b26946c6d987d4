package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.place.Place;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The paper for whoever fits a vessel or looks after it: what to buy, what to do before, during and after, what to write down, and a
 * tag. Common practice, no source.
 */
final class FitterPaper {

    /** Two ordinary gauges on one pipe differ by no more than this (Pa): our own judgement, no source. */
    private static final double GAUGES_DIFFER = 0.2e5;

    /** The same (Pa) behind a reducing valve, whose usual lock-up rise of 0.3 bar may be missing: our own judgement, no source. */
    private static final double BEHIND_A_REDUCING_VALVE = 0.3e5;

    /** What water weighs, close enough for a bracket (kg/m3). */
    private static final double WATER_WEIGHS = 1000;

    /** Where more is asked of the work than is good practice everywhere; what the vessel and the pipe in the US need is said anyway. */
    private static final Map<Place, List<Topic>> ASKED =
            Map.of(Place.UK, List.of(Topic.VESSEL, Topic.DISCHARGE_PIPE), Place.EN, List.of(Topic.VESSEL));

    /** What is set where no report names a number. */
    private static final String STATIC = "the highest supply pressure at the vessel";

    private final Optional<HotWaterSystem> house;
    private final String charge;
    private final String fallen;
    private final Optional<Work> work;
    private final Optional<LoweredSupply> lowered;

    private FitterPaper(
            Optional<HotWaterSystem> house,
            String charge,
            String fallen,
            Optional<Work> work,
            Optional<LoweredSupply> lowered) {
        this.house = house;
        this.charge = charge;
        this.fallen = fallen;
        this.work = work;
        this.lowered = lowered;
    }

    /** Whose a vessel is. */
    enum State {
        /** It is in the house. */
        PRESENT,
        /** It is to be bought. */
        TO_BUY,
        /** It was bought, and is to be fitted. */
        BOUGHT
    }

    /**
     * A vessel and its settings.
     *
     * @param name what it is called, after a blank, where there are several; else empty
     * @param house the house with it
     * @param vessel the vessel
     * @param chargeGauge what it is to be charged to (Pa, gauge)
     * @param supplyGauge highest static supply pressure, with no water running (Pa, gauge)
     * @param state whose it is
     * @param limitGauge what a heat-up must stay below (Pa, gauge); empty where none was sized for
     * @param coldPeakGauge the highest pressure of a heat-up from cold with it (Pa, gauge); empty where none was run
     */
    private record Work(
            String name,
            HotWaterSystem house,
            ExpansionVessel vessel,
            double chargeGauge,
            double supplyGauge,
            State state,
            OptionalDouble limitGauge,
            OptionalDouble coldPeakGauge) {

        private boolean isNew() {
            return state != State.PRESENT;
        }

        /** A vessel that is there, with the charge by the rule of the findings; empty if it has failed or none is allowed. */
        private static Optional<Work> present(HotWaterSystem house, int index) {
            ExpansionVessel vessel = house.vessels().get(index);
            return PrechargeTarget.of(house, index)
                    .filter(target -> target.isAllowed() && vessel.condition() != ExpansionVessel.Condition.WATERLOGGED)
                    .map(target -> new Work(
                            house.hasSeveralVessels()
                                    ? " \u201c" + house.vesselNames().get(index) + "\u201d"
                                    : "",
                            house,
                            vessel,
                            target.pumpToGauge(),
                            target.pumpToGauge() + house.head(vessel.height()),
                            State.PRESENT,
                            OptionalDouble.empty(),
                            OptionalDouble.empty()));
        }

        /** Each of the vessels that are there, or the new one alone. */
        private List<Work> each() {
            return isNew() || !house.hasSeveralVessels()
                    ? List.of(this)
                    : IntStream.range(0, house.vessels().size())
                            .boxed()
                            .flatMap(index -> present(house, index).stream())
                            .toList();
        }

        private String charge(QuantityFormat shown) {
            return shown.pressure(chargeGauge);
        }

        /** The supply without flow; where it differs by the hour, which of its pressures is meant, and the lowest. */
        private String supply(QuantityFormat shown) {
            return swing().map(swing -> shown.pressure(supplyGauge) + " " + swing.high() + "; "
                            + shown.pressure(swing.lowestGauge()) + " " + swing.low())
                    .orElse(shown.pressure(supplyGauge));
        }

        private Optional<Swing> swing() {
            return Swing.of(house).filter(swing -> supplyGauge - swing.lowestGauge() > GAUGES_DIFFER);
        }

        private String never(QuantityFormat shown) {
            return limitGauge.stream()
                    .mapToObj(limit -> ", never above " + shown.pressure(limit))
                    .findFirst()
                    .orElse("");
        }

        private Optional<String> coldPeak(QuantityFormat shown) {
            return coldPeakGauge.stream().mapToObj(shown::pressure).findFirst();
        }

        /** What to buy, in words. */
        private Block toBuy(Optional<LoweredSupply> lowered, QuantityFormat shown) {
            Optional<ReliefValve> last = Limit.lastRelief(house);
            double relief = last.map(
                            valve -> valve.setPressure().gauge(house.site().atmosphere()))
                    .orElse(0.0);
            String stands = Optional.of(house.site().place()).filter(Place::isKnown).stream()
                    .flatMap(place -> place.limits(Topic.VESSEL).stream())
                    .mapToDouble(rule -> rule.limit().orElseThrow())
                    .filter(plate -> plate > relief)
                    .mapToObj(shown::pressure)
                    .findFirst()
                    .map(plate -> plate + ", as the rule on vessels below asks")
                    .or(() -> last.map(valve -> valveSet(valve, shown)))
                    .map(plate -> " and rated for at least " + plate)
                    .orElse("");
            String volume = shown.volume(vessel.volume());
            List<String> things = new ArrayList<>(
                    List.of(
                            (state == State.BOUGHT
                                            ? "Bought already: the expansion vessel of " + volume + ". Read that it is"
                                            : "One expansion vessel of " + volume + " or the next size up,")
                                    + " suitable for drinking water"
                                    + stands + ". Its plate must allow a precharge of " + charge(shown) + ".",
                            (house.site().place() == Place.EN
                                            ? "A fitting that leads the cold water through the vessel"
                                            : "A tee for the cold pipe")
                                    + ", in the size of that pipe, and fittings for the vessel's thread: usually"
                                    + (shown.units().isMetric() ? " G 3/4" : " 3/4 in")
                                    + ", but read its plate or papers before you buy.",
                            "A bracket or a floor stand. Full of water, the vessel weighs up to "
                                    + shown.weight(vessel.volume() * WATER_WEIGHS) + " more than empty.",
                            "A tyre gauge and a hand pump for the precharge, and a pressure gauge for a drain cock or hose tap."));
            lowered.filter(LoweredSupply::isFitted)
                    .ifPresent(supply ->
                            things.add("A pressure reducing valve for drinking water, in the size of the pipe, that"
                                    + " can be set to " + supply.valve(shown) + "."));
            return new Block.Items(things, Block.ListKind.TICKS);
        }

        /** What was found when the work was done. */
        private Block asLeft(Optional<LoweredSupply> lowered, QuantityFormat shown) {
            List<Block.Blanks.Line> lines = new ArrayList<>();
            lowered.ifPresent(supply ->
                    lines.add(new Block.Blanks.Line("Reducing valve, at a trickle", supply.valve(shown), true)));
            each().forEach(one -> lines.add(new Block.Blanks.Line(
                    isNew() ? "Precharge, not yet connected" : "Precharge" + one.name + ", with the water side drained",
                    one.charge(shown),
                    true)));
            lines.addAll(List.of(
                    new Block.Blanks.Line("Supply, cold, no water running", supply(shown), true),
                    new Block.Blanks.Line(
                            "Thermostat set at",
                            shown.temperature(house.heater().setPoint()),
                            true)));
            coldPeak(shown)
                    .ifPresent(peak -> lines.add(
                            new Block.Blanks.Line("Peak of the first heat-up", "about " + peak + never(shown), true)));
            if (coldPeakGauge.isPresent() || isNew()) {
                boolean several = house.reliefValves().size() > 1;
                lines.add(new Block.Blanks.Line(
                        (several ? "Relief valves" : "Relief valve") + " meanwhile",
                        several ? "stay shut" : "stays shut",
                        true));
            }
            lines.add(Block.Blanks.Line.open(isNew() ? "Fitted by, and the date" : "Set by, and the date"));
            return new Block.Blanks("As left: what should be, and what was read", lines, false);
        }

        /** A tag for the vessel, which has a name where there are several. */
        private Block tag(QuantityFormat shown) {
            return new Block.Blanks(
                    "Expansion vessel" + name + ": cut out and tie to it",
                    List.of(
                            new Block.Blanks.Line("Volume", shown.volume(vessel.volume()), false),
                            new Block.Blanks.Line("Precharge to be", charge(shown), false),
                            new Block.Blanks.Line(
                                    "Thermostat",
                                    shown.temperature(house.heater().setPoint()),
                                    false),
                            new Block.Blanks.Line(
                                    house.supply().reducingValve().isPresent()
                                            ? "Supply at rest, with lock-up"
                                            : "Supply at rest",
                                    supply(shown),
                                    false),
                            // the next man pumps to what was set, not to what was worked out before a gauge was read
                            Block.Blanks.Line.open("Precharge as set; by whom"),
                            Block.Blanks.Line.open("Charged on; next check")),
                    true);
        }

        /** What no test by pump may reach. */
        private String testedBelow(QuantityFormat shown) {
            return Limit.firstRelief(house)
                    .map(valve -> " and below " + valveSet(valve, shown))
                    .orElse("");
        }

        /** What the plate of a relief valve says, wherever the valve sits, and which that is. */
        private String valveSet(ReliefValve valve, QuantityFormat shown) {
            return shown.pressure(valve.setPressure().gauge(house.site().atmosphere())) + ", the set pressure of "
                    + (house.reliefValves().size() == 1 ? "the relief valve" : quoted(valve));
        }
    }

    /**
     * A supply that differs by the hour.
     *
     * @param lowestGauge its lowest static pressure (Pa, gauge)
     * @param low when it is lowest
     * @param high when it is highest
     */
    private record Swing(double lowestGauge, String low, String high) {

        private static final double MORNING = 6 * 3600;
        private static final double EVENING = 22 * 3600;

        static Optional<Swing> of(HotWaterSystem house) {
            double air = house.site().atmosphere();
            NavigableMap<Double, Pressure> mains = house.supply().mains().entries();
            Comparator<Double> rising =
                    Comparator.comparingDouble(time -> house.supply().staticAbsolute(time, air));
            double lowest = mains.keySet().stream().min(rising).orElseThrow();
            double highest = mains.keySet().stream().max(rising).orElseThrow();
            boolean told = isNight(highest) != isNight(lowest);
            return mains.size() < 2
                    ? Optional.empty()
                    : Optional.of(new Swing(
                            house.supply().staticAbsolute(lowest, air) - air,
                            told ? by(lowest) : "at its lowest",
                            told ? by(highest) : "at its highest"));
        }

        private static boolean isNight(double time) {
            return time < MORNING || time >= EVENING;
        }

        private static String by(double time) {
            return isNight(time) ? "at night" : "by day";
        }
    }

    /** The paper for no house in particular. */
    static FitterPaper general() {
        return new FitterPaper(Optional.empty(), STATIC, "has fallen", Optional.empty(), Optional.empty());
    }

    /**
     * The paper for a house as it is, with the charge by the rule of the findings, and the settings of its vessel; without a vessel that
     * takes that charge, in words.
     */
    static FitterPaper of(HotWaterSystem house, QuantityFormat shown) {
        return PrechargeTarget.of(house)
                .filter(PrechargeTarget::isAllowed)
                .map(target -> new FitterPaper(
                        Optional.of(house),
                        shown.pressure(target.pumpToGauge()),
                        fallen(target, shown),
                        house.vessel()
                                .flatMap(vessel ->
                                        Work.present(house, house.vessels().indexOf(vessel))),
                        Optional.empty()))
                .orElseGet(() -> new FitterPaper(
                        Optional.of(house), STATIC, general().fallen, Optional.empty(), Optional.empty()));
    }

    private static String fallen(PrechargeTarget target, QuantityFormat shown) {
        return "reads less than " + shown.pressure(target.tooLowGauge());
    }

    /**
     * The paper for a vessel that is to be fitted or to be charged anew, with what to buy, what to write down, and a tag.
     *
     * @param run a run of the house with the vessel as its last; its peak is told if it begins cold
     * @param sizing for which supply, and within which limit
     * @param state whose vessel it is
     * @param shown the units
     */
    static FitterPaper of(RunResult run, SizingResult sizing, State state, QuantityFormat shown) {
        HotWaterSystem house = run.system();
        ExpansionVessel vessel = house.vessels().get(house.vessels().size() - 1);
        double charge = vessel.precharge().gauge(house.site().atmosphere());
        return new FitterPaper(
                Optional.of(house),
                shown.pressure(charge),
                of(house, shown).fallen,
                Optional.of(new Work(
                        "",
                        house,
                        vessel,
                        charge,
                        sizing.supplyStatic().gauge(house.site().atmosphere()),
                        state,
                        OptionalDouble.of(sizing.target().gauge()),
                        coldPeakGauge(run))),
                Optional.empty());
    }

    /** The peak (Pa, gauge) of a run that begins cold; empty for any other. */
    static OptionalDouble coldPeakGauge(RunResult run) {
        return run.system().start().waterTemperature().isEmpty()
                ? OptionalDouble.of(run.peak().value())
                : OptionalDouble.empty();
    }

    /**
     * Steps that belong together.
     *
     * @param name what they are about
     * @param steps what to do, in order
     */
    record Stage(String name, List<String> steps) {}

    /** How a vessel is fitted and looked after, to be ticked off. */
    Document.Section section(QuantityFormat shown) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(
                (house.filter(one -> one.vessels().isEmpty()).isPresent()
                                ? "'heatswell size' finds the size and its precharge; its report has them in this list. "
                                : "")
                        + "In the order of the work. Common practice, no standard: the manufacturer's instructions and local"
                        + " code come first.",
                Block.Tone.PLAIN));
        work.filter(Work::isNew).ifPresent(vessel -> {
            blocks.add(new Block.Subheading("What to buy"));
            blocks.add(vessel.toBuy(lowered, shown));
        });
        for (Stage stage : stages(shown)) {
            blocks.add(new Block.Subheading(stage.name()));
            blocks.add(new Block.Items(
                    stage.steps().stream().map(shown.units()::spelled).toList(), Block.ListKind.TICKS));
        }
        work.ifPresent(vessel -> {
            blocks.add(vessel.asLeft(lowered, shown));
            vessel.each().forEach(one -> blocks.add(one.tag(shown)));
        });
        return new Document.Section("For the fitter: the expansion vessel", Document.Form.PAPER, blocks);
    }

    /** What to do, in the order of the work. */
    List<Stage> stages(QuantityFormat shown) {
        return List.of(
                new Stage("Before the work", before(shown)),
                new Stage("The place", place(shown)),
                new Stage("Filling and the first heat-up", firstHeat(shown)),
                new Stage("Every year", everyYear(shown)));
    }

    /** The paper for a vessel that goes with a lower supply, which comes first. */
    FitterPaper at(Optional<LoweredSupply> supply) {
        return new FitterPaper(house, charge, fallen, work, supply);
    }

    private List<String> before(QuantityFormat shown) {
        boolean recharged = work.filter(vessel -> !vessel.isNew()).isPresent();
        boolean cut = !recharged || lowered.filter(LoweredSupply::isFitted).isPresent();
        List<String> steps = new ArrayList<>();
        steps.add(
                isIn(Place.UK)
                        ? "Give building control notice of the work before it begins, or leave that to an installer registered to"
                                + " certify it. Ask which applies here, and who may do the work."
                        : "Ask the local authority whether the work needs a permit or must be notified, and who may do it."
                                + " Gas and electrical work is for licensed people.");
        steps.add(
                "Use only fittings and hose that are suitable for drinking water and rated for the working pressure of the system.");
        // a valve yet to be fitted is read once it is set
        work.filter(vessel -> lowered.filter(LoweredSupply::isFitted).isEmpty())
                .ifPresent(vessel -> steps.add(supplied(vessel, shown)));
        steps.add("Turn the heater off, shut off its gas or power"
                + (heatedBy(Heater.Energy.ELECTRIC) ? " (of a boiler's coil: the boiler, and its motorised valve)" : "")
                + ", and let it cool. Shut the cold feed and"
                + " relieve the pressure at a hot tap, slowly: what comes out may scald."
                + (cut ? " Then drain the pipe that is to be cut, and clean any strainer in it." : "")
                + (recharged
                        ? ""
                        : " Let the charge out of an old vessel by its air valve. Full of water, it is heavy."));
        if (recharged) {
            steps.add(
                    "Open a drain on the vessel's side of the cold feed and leave it open until the vessel is charged. A precharge"
                            + " read against water pressure tells you nothing.");
            steps.add(
                    "Press the pin of the vessel's air valve. If water comes, the diaphragm has failed: have the vessel replaced,"
                            + " and do not pump it up.");
            steps.add("Read its precharge with a tyre gauge. " + pump());
            steps.add(
                    "Read it again after a quarter of an hour. If it has fallen, the vessel does not hold its charge: have the air valve"
                            + " and the vessel checked. If it holds, close the drain.");
        }
        if (!recharged) {
            steps.add("Before the vessel is connected, read its precharge with a tyre gauge. " + pump());
        }
        lowered.filter(supply -> !supply.isFitted())
                .ifPresent(supply -> steps.add(2, "Have " + supply.set(shown) + setting(supply, shown)));
        lowered.filter(LoweredSupply::isFitted)
                .ifPresent(supply ->
                        steps.add("Have the reducing valve fitted on the cold feed, upstream of the vessel and of"
                                + " every safety group, relief valve and mixing valve."));
        return steps;
    }

    private String pump() {
        return "Pump it up by hand to " + charge + ", never above the pressure on the vessel's plate, or let some out.";
    }

    /**
     * What the supply must be for the charge to hold, read where nothing that was heated can stand above it; by day, of a supply that is
     * higher at night, that is no other supply.
     */
    private String supplied(Work vessel, QuantityFormat shown) {
        String near = shown.pressureDifference(
                house.flatMap(one -> one.supply().reducingValve()).isPresent()
                        ? BEHIND_A_REDUCING_VALVE
                        : GAUGES_DIFFER);
        return "With the heater off, open and close a hot tap, and read a gauge on the cold pipe to the heater, no water running. "
                + (vessel.swing().isPresent()
                        ? "The supply is described as " + vessel.supply(shown)
                                + ", and the charge is for the highest. If the gauge" + " shows more than " + near
                                + " above that, or below the lowest,"
                        : "It should show " + vessel.supply(shown) + ". Up to " + near
                                + " more or less, change the precharge below by as" + " much. Further off,")
                + " stop: this sheet is for another supply.";
    }

    private static String setting(LoweredSupply supply, QuantityFormat shown) {
        return ", read with a little water running. A gauge downstream of it should then show " + supply.standing(shown)
                + ": the precharge is for that supply.";
    }

    private boolean isIn(Place place) {
        return house.filter(one -> one.site().place() == place).isPresent();
    }

    private boolean hasSeveralValves() {
        return house.filter(one -> one.reliefValves().size() > 1).isPresent();
    }

    private static String quoted(ReliefValve valve) {
        return "\u201c" + valve.name() + "\u201d";
    }

    /** Every valve by its name and what it is set to, or the only one. */
    private String valves(QuantityFormat shown) {
        return house.filter(one -> hasSeveralValves())
                .map(one -> one.reliefValves().stream()
                        .map(valve -> quoted(valve) + " ("
                                + shown.pressure(
                                        valve.setPressure().gauge(one.site().atmosphere())) + ")")
                        .collect(Collectors.joining(" and ")))
                .orElse("the relief valve");
    }

    /** What the rules of the place were read to ask of the work, each with its clause. */
    private List<String> asked(QuantityFormat shown) {
        return house.stream()
                .map(one -> one.site().place())
                .flatMap(place -> ASKED.getOrDefault(place, List.of()).stream()
                        .flatMap(topic -> place.rules(topic).stream().limit(1))
                        .filter(PlaceRule::isRead)
                        .map(rule -> PageWords.capitalised(rule.topic().label()) + ": "
                                + PageWords.typeset(rule.words(), shown) + " [" + rule.cited() + "]."))
                .toList();
    }

    private List<String> place(QuantityFormat shown) {
        boolean several = hasSeveralValves();
        List<String> steps = new ArrayList<>(List.of(
                "The vessel goes on the cold pipe between heater and feed, in place of any old one, and downstream of every check valve,"
                        + " reducing valve and backflow preventer.",
                "Put no valve between the vessel and the heater that somebody could shut unnoticed. If the manufacturer asks for one,"
                        + " take off its handle or seal it open, labelled.",
                several
                        ? PageWords.capitalised(valves(shown))
                                + " stay as they are: same place, same setting, same size, the"
                                + " outlets open and leading where they cannot injure anyone. Never plug or cap one, or replace it"
                                + " with a smaller one."
                        : "The relief valve stays as it is: same place, same setting, same size, its outlet open and leading where"
                                + " it cannot injure anyone. Never plug or cap it, or replace it with a smaller one.",
                "Hang the vessel on its bracket or stand it on the floor: the pipe alone must not carry it.",
                "Leave room to reach its air valve with a gauge. Choose a place where nothing can freeze: not the vessel, the cold pipe or the"
                        + " outlet of " + (several ? "a" : "the") + " relief valve."));
        steps.addAll(asked(shown));
        if (!isIn(Place.UK)) {
            steps.add(
                    "Where a leak would do harm, put a pan with a drain under the heater. Where earthquakes are likely, strap heater and"
                            + " vessel as local code says.");
        }
        steps.add("Pipes that bang when a tap is shut need a shock arrester near that tap: the vessel is not one.");
        return steps;
    }

    private List<String> firstHeat(QuantityFormat shown) {
        List<String> steps = new ArrayList<>(List.of(
                "Open the vessel's isolating valve, if it has one. Then open the cold feed slowly, with a hot tap open.",
                "Before you turn on power or gas, run the hot tap until no air comes, then close it."
                        + (heatedBy(Heater.Energy.ELECTRIC) ? " An electric element burns out in air." : "")
                        + (heatedBy(Heater.Energy.GAS) ? " Relight a gas heater as its label says." : ""),
                "Test every joint for leaks, cold, at "
                        + work.map(vessel -> "the supply's " + vessel.supply(shown))
                                .orElse("the pressure of the supply")
                        + ", and look again when it is hot. Keep any pump test below the pressure on every plate"
                        + work.map(vessel -> vessel.testedBelow(shown)).orElse("") + ".",
                "Have " + (hasSeveralValves() ? "each" : "the")
                        + " relief valve tested as its manufacturer says, by somebody who stands"
                        + " clear of the outlet. One that still drips when all is cold has a worn or dirty seat, as after years of"
                        + " dripping: have it replaced like for like.",
                "Watch the first heat-up from cold to the end. The check sheet is not for this one: it is for a heat-up of only"
                        + " part of the water. "
                        + work.flatMap(vessel -> vessel.coldPeak(shown))
                                .map(peak -> "Expect about " + peak + ". If the pressure climbs above "
                                        + work.get().limitGauge().stream()
                                                .mapToObj(limit -> shown.pressure(limit) + ", the limit,")
                                                .findFirst()
                                                .orElse("that")
                                        + " or " + (hasSeveralValves() ? "a" : "the") + " relief valve opens,")
                                .orElse("If " + (hasSeveralValves() ? "a" : "the") + " relief valve opens,")
                        + " turn the heater off and find out why.",
                "Write the precharge and the date on the vessel."
                        + (isIn(Place.UK)
                                ? " Enter what was set and read in the cylinder's commissioning record, and leave it with the user."
                                : "")));
        lowered.filter(LoweredSupply::isFitted)
                .ifPresent(supply ->
                        steps.add(2, "Have the reducing valve set to " + supply.valve(shown) + setting(supply, shown)));
        return steps;
    }

    private List<String> everyYear(QuantityFormat shown) {
        return List.of(
                "With the heater off and cool, shut the cold feed and drain the vessel's water side at a tap. A"
                        + " precharge read against water pressure tells you nothing.",
                "Read the precharge with the tyre gauge. If it " + fallen + ", pump it up by hand to "
                        + charge
                        + ", never above the pressure on the vessel's plate. If water comes from the air valve, the diaphragm has"
                        + " failed: have the vessel"
                        + " replaced.",
                "Open every valve that was shut, the vessel's included. Run a hot tap until no air comes, and only then switch"
                        + " the heater on.",
                (hasSeveralValves()
                                ? "Have " + valves(shown)
                                        + " tested as their manufacturers say. If one does not close again, have it"
                                        + " replaced like for like: the same kind, set to the same pressure, never higher. One that also"
                                        + " opens on temperature must have a capacity of at least the heater's input. Hard"
                                : "Have the relief valve tested as its manufacturer says. If it does not close again, have it replaced"
                                        + " with one set to the same pressure, no higher than the pressure on the tank's plate, with a"
                                        + " capacity of at least the heater's input. Hard")
                        + " water leaves scale on the seat: where the water is hard, have it checked more often.");
    }

    /** Whether the heater may be of that kind: of no house in particular, each may. */
    private boolean heatedBy(Heater.Energy energy) {
        return house.filter(one -> one.heater().energy() != energy).isEmpty();
    }
}
