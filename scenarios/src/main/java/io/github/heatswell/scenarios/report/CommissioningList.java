package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to do when a vessel is fitted, before, during and after. Common practice, no source. */
final class CommissioningList {

    /** What is set where no report names a number. */
    private static final String STATIC = "the highest pressure the supply stands at where the vessel is";

    private final String charge;
    private final String fallen;
    private final Optional<String> coldPeak;

    private CommissioningList(String charge, String fallen, Optional<String> coldPeak) {
        this.charge = charge;
        this.fallen = fallen;
        this.coldPeak = coldPeak;
    }

    private CommissioningList(String charge, String fallen) {
        this(charge, fallen, Optional.empty());
    }

    /** The list for no house in particular. */
    static CommissioningList general() {
        return new CommissioningList(STATIC, "has fallen");
    }

    /** The list for a house, with the charge by the rule of the findings; without a vessel that takes it, in words. */
    static CommissioningList of(HotWaterSystem house, QuantityFormat shown) {
        return PrechargeTarget.of(house)
                .filter(PrechargeTarget::isAllowed)
                .map(target -> new CommissioningList(
                        shown.pressure(target.pumpToGauge()),
                        "reads less than " + shown.pressure(target.tooLowGauge())))
                .orElseGet(CommissioningList::general);
    }

    /** The list for the house of a run and its vessel, with the peak of the run if that begins cold. */
    static CommissioningList of(RunResult run, QuantityFormat shown) {
        HotWaterSystem house = run.system();
        Pressure precharge = house.vessels().get(house.vessels().size() - 1).precharge();
        boolean cold = house.start().waterTemperature().isEmpty();
        return new CommissioningList(
                shown.pressure(precharge.gauge(house.site().atmosphere())),
                of(house, shown).fallen,
                cold ? Optional.of(shown.pressure(run.peak().value())) : Optional.empty());
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
                "Fitter's checklist, in working order. It is common practice, drawn from no standard: the maker's"
                        + " instructions and local code come first.",
                Block.Tone.PLAIN));
        for (Stage stage : stages()) {
            blocks.add(new Block.Subheading(stage.name()));
            blocks.add(new Block.Items(
                    stage.steps().stream().map(shown.units()::spelled).toList(), Block.ListKind.TICKS));
        }
        return new Document.Section("Fitting the expansion vessel, to tick off", Document.Form.SHEET, blocks);
    }

    List<Stage> stages() {
        return List.of(
                new Stage("Before the work", before()),
                new Stage("The place", place()),
                new Stage("Filling and the first heat-up", firstHeat()),
                new Stage("Every year", everyYear()));
    }

    private List<String> before() {
        return List.of(
                "Ask the authority whether the work needs a permit, and who may do it. Gas and electrical work is done by"
                        + " a person licensed for it.",
                "Vessel, fittings and hose are made for drinking water and for the working pressure of the system.",
                "Before the vessel is connected, read its precharge with a tyre gauge. Set it with a hand pump to "
                        + charge
                        + ", never above the pressure on the vessel's plate, or let gas out. If a gauge"
                        + " beside it reads otherwise, cold and with no water running, that decides. Then put the valve cap"
                        + " back on.",
                "Turn the heater off, close its gas or switch off its supply, and let it cool. Shut the cold feed and"
                        + " relieve the pressure at a hot tap, slowly: what comes out may scald.");
    }

    private static List<String> place() {
        return List.of(
                "The vessel sits on the cold pipe between heater and feed, downstream of every check valve, reducing valve"
                        + " and backflow preventer.",
                "No valve stands between vessel and heater that somebody could shut unnoticed. If the maker asks for one,"
                        + " its handle is taken off or it is sealed open, and labelled.",
                "The relief valve stays as it is: same place, same setting, same size, its outlet open and leading where"
                        + " it cannot injure anyone. Never plug or cap it, or replace it with a smaller one.",
                "The vessel is carried by a bracket or stands on the floor; full of water it is heavy, and the pipe alone"
                        + " does not hold it.",
                "There is room to reach its gas valve with a gauge.");
    }

    private List<String> firstHeat() {
        return List.of(
                "Open the vessel's isolating valve, if it has one. Then open the cold feed slowly, with a hot tap open.",
                "Before any power or gas: run the hot tap until no air comes, then close it. An element that is switched"
                        + " on in air burns out.",
                "Look at every joint for leaks, cold and under full pressure; look again when it is hot.",
                "Before the heater is switched on: the tank is full, the relief valve's lever has been tried as its maker"
                        + " says, and whoever tries it stands clear of the outlet.",
                "Watch the first heat-up from cold to the end. The check sheet does not hold for it: there only a part of the"
                        + " water is heated. "
                        + coldPeak.map(peak ->
                                        "Expect " + peak + " at most. If the pressure climbs clearly beyond that, or"
                                                + " the relief valve opens,")
                                .orElse("If the relief valve opens,")
                        + " turn the heater off and find out why.",
                "Write the precharge and the date on the vessel.");
    }

    private List<String> everyYear() {
        return List.of(
                "With the heater off and cool, shut the cold feed and let the water side of the vessel empty itself at a"
                        + " tap. A precharge read against water says nothing.",
                "Read the precharge with the tyre gauge. If it " + fallen + ", pump it up by hand to "
                        + charge
                        + ", never above the pressure on the vessel's plate. If water comes from the gas valve, the diaphragm has failed: have the vessel"
                        + " replaced.",
                "Open every valve that was shut, the vessel's too. Run a hot tap until no air comes, and only then switch"
                        + " the heater on.",
                "Have the relief valve tried as its maker says. If it does not close again, have it replaced by one set no"
                        + " higher than the pressure on the tank's plate, with a capacity of at least the heater's input.");
    }
}
