package io.github.heatswell.sizing;

import io.github.heatswell.result.Balances;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Why a formula and the simulation call for different vessel sizes: named terms whose sum is exactly the difference.
 *
 * <p>Effects are switched off one at a time, in the order of {@link Effect}, and stay off; each time the smallest
 * vessel for the same target is recomputed, and the change is the term. Because effects interact, another order would
 * give other terms with the same sum. A house that needs no vessel counts as volume 0.
 *
 * @param formula what the formula says
 * @param simulated the smallest volume by simulation (m3), 0 if none is needed
 * @param terms what each effect adds, in the order they were switched off; their sum is {@code simulated} less the
 *     volume of the formula, to rounding
 * @param balances those of all runs behind it
 */
public record SizingReconciliation(
        VesselFormula.Result formula, double simulated, List<Term> terms, Balances balances) {

    /**
     * Copies the terms.
     *
     * @param formula what the formula says
     * @param simulated the smallest volume by simulation (m3), 0 if none is needed
     * @param terms what each effect adds, in the order they were switched off; their sum is {@code simulated} less the
     *     volume of the formula, to rounding
     * @param balances those of all runs behind it
     */
    public SizingReconciliation {
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(balances, "balances");
        terms = List.copyOf(Objects.requireNonNull(terms, "terms"));
    }

    /** Effects that a formula lacks or treats differently, in the order of switching off. */
    public enum Effect {
        /** Draws, layers, mains and seasons of the run as given, beyond a cold fill. */
        COURSE_OF_THE_RUN("course of the run as given"),
        /** Water that flows back to the mains through an open connection or a bypass. */
        WAY_BACK("return flow to the mains"),
        /** Layers of different temperature in the tank. */
        LAYERS("layers in the tank"),
        /** A law of the vessel's gas other than that of an ideal gas. */
        GAS_LAW("law of the gas"),
        /** Gas that warms under compression, or was charged at a different temperature. */
        GAS_TEMPERATURE("temperature of the gas"),
        /** The diaphragm's acceptance limit. */
        ACCEPTANCE_LIMIT("acceptance limit"),
        /** The compliance of the piping and of the water in it. */
        PIPING("compliance of the piping"),
        /** The compliance of the tank. */
        TANK_COMPLIANCE("compliance of the tank"),
        /** The vessel's height above or below the tank's drain cock. */
        VESSEL_HEIGHT("height of the vessel"),
        /** A precharge below the static supply pressure. */
        PRECHARGE("precharge below the supply"),
        /** The temperature actually reached, and the tolerance of the simulation; normally negligible. */
        TEMPERATURE_REACHED("temperature reached, and tolerance"),
        /** The water's compressibility. */
        WATER_COMPRESSIBILITY("compressibility of the water"),
        /** The volume of cold water entering the vessel, versus the excess hot water. */
        COLD_VOLUME("cold instead of hot volume"),
        /** The tank's thermal growth, versus the formula's. */
        TANK_GROWTH("thermal growth of the tank"),
        /** The highest pressure of the formula, against the target. */
        MAX_PRESSURE("target instead of the formula's highest pressure"),
        /** The water's expansion by the formula's table, versus real water from the actual temperature. */
        TABLED_EXPANSION("actual instead of tabulated expansion of the water"),
        /** The precharge and the round air pressure of 1 bar in the formula. */
        FORM("precharge and air pressure as used by the formula");

        private final String description;

        Effect(String description) {
            this.description = description;
        }

        /**
         * The effect in words.
         *
         * @return a short description in lower case
         */
        public String description() {
            return description;
        }
    }

    /**
     * Contribution of one effect.
     *
     * @param effect the effect
     * @param volume its contribution to the vessel (m3), negative if it makes it smaller
     */
    public record Term(Effect effect, double volume) {

        /**
         * Checks that the effect is there.
         *
         * @param effect the effect
         * @param volume its contribution to the vessel (m3), negative if it makes it smaller
         */
        public Term {
            Objects.requireNonNull(effect, "effect");
        }
    }

    /**
     * Contribution of one effect.
     *
     * @param effect the effect
     * @return its contribution to the vessel (m3), 0 if none
     */
    public double of(Effect effect) {
        Objects.requireNonNull(effect, "effect");
        return terms.stream()
                .filter(term -> term.effect() == effect)
                .mapToDouble(Term::volume)
                .sum();
    }

    /**
     * Compares with {@link VesselFormula#handbookDiaphragm the diaphragm tank of the handbook}: P1 the static pressure
     * of the supply, P2 the target, water of the tank alone with its true specific volumes at P1.
     *
     * @param sizing the sizing
     * @param linearExpansion the tank's linear expansion in the formula (1/K), 0 to neglect it as rules of thumb do
     * @return the terms
     * @throws IllegalArgumentException if the static pressure is not below the target, if the set point is not above
     *     the cold water, or if an intermediate case would need more than 5 m3
     * @throws io.github.heatswell.simulation.SimulationException if the equations could not be integrated
     */
    public static SizingReconciliation fromHandbook(VesselSizing sizing, double linearExpansion) {
        Ladder ladder = Ladder.of(Objects.requireNonNull(sizing, "sizing").setup());
        HandCalculation book = ladder.book();
        VesselFormula.Result formula = VesselFormula.handbookDiaphragm(
                        book.growth(linearExpansion), book.fill(), book.highest())
                .size();
        ladder.step(Effect.TANK_GROWTH, formula.volume());
        return ladder.end(formula);
    }

    /**
     * Compares with {@link VesselFormula#dinDrinkingWater the vessel for drinking water}: pa the static pressure of the
     * supply, psv the lowest set pressure of the relief valves.
     *
     * @param sizing the sizing
     * @param valve the relief valve that gives psv
     * @return the terms
     * @throws IllegalArgumentException if the static pressure is not below the target and below 0.8 psv, if the set
     *     point is not above the cold water or is above 80 degC, or if an intermediate case would need more than 5 m3
     * @throws io.github.heatswell.simulation.SimulationException if the equations could not be integrated
     */
    public static SizingReconciliation fromDin(VesselSizing sizing, ReliefValve valve) {
        Objects.requireNonNull(valve, "valve");
        SizingProblem setup = Objects.requireNonNull(sizing, "sizing").setup();
        double atmosphere = setup.atmosphere();
        double psv = valve.setPressure().gauge(atmosphere);
        HandCalculation book = HandCalculation.of(setup);
        VesselFormula.Result formula = VesselFormula.dinDrinkingWater(
                        book.tank(), book.hot(), book.fill() - atmosphere, psv)
                .size();
        double highest = DinDrinkingWater.highestGauge(psv) + atmosphere;
        Ladder ladder = Ladder.of(setup);
        ladder.step(
                Effect.TANK_GROWTH, book.hotVolume(0) / VesselFormula.acceptanceFactor(book.fill(), book.highest()));
        double factor = VesselFormula.acceptanceFactor(book.fill(), highest);
        ladder.step(Effect.MAX_PRESSURE, book.hotVolume(0) / factor);
        ladder.step(Effect.TABLED_EXPANSION, DinDrinkingWater.share(book.hot()) * book.tank() / factor);
        ladder.step(Effect.FORM, formula.volume());
        return ladder.end(formula);
    }

    /** Steps from the simulation to a formula, recording the volume lost at each step. */
    private static final class Ladder {

        /** A modulus (Pa) high enough to be rigid. */
        private static final double UNYIELDING = 1e30;

        private final VesselSearch search = new VesselSearch();
        private final List<Term> terms = new ArrayList<>();
        private final HandCalculation book;
        private final double top;
        private double now;

        private Ladder(SizingProblem setup) {
            book = HandCalculation.of(setup);
            top = needed(setup);
            now = top;
        }

        /** Steps down to the vessel for the hot water too much, from where formulas part. */
        static Ladder of(SizingProblem full) {
            Ladder ladder = new Ladder(full);
            SizingProblem setup = full.withColdFill(trial -> trial);
            ladder.step(Effect.COURSE_OF_THE_RUN, setup);
            double fill = setup.staticAbsolute();
            setup = setup.withColdFill(trial -> trial.behindCheckValve(fill));
            ladder.step(Effect.WAY_BACK, setup);
            setup = setup.withColdFill(trial ->
                    trial.changed(house -> house.tank(mixed(trial.house().tank()))));
            ladder.step(Effect.LAYERS, setup);
            if (setup.type().pattern().gasLaw().isPresent()) {
                setup = setup.withType(setup.type().ideal());
                ladder.step(Effect.GAS_LAW, setup);
            }
            setup = setup.withType(setup.type().isothermal());
            ladder.step(Effect.GAS_TEMPERATURE, setup);
            setup = setup.withType(setup.type().unlimited());
            ladder.step(Effect.ACCEPTANCE_LIMIT, setup);
            setup = setup.withColdFill(HeatUpCase::withoutPiping);
            ladder.step(Effect.PIPING, setup);
            setup = setup.withColdFill(trial ->
                    trial.changed(house -> house.tank(unyielding(trial.house().tank()))));
            ladder.step(Effect.TANK_COMPLIANCE, setup);
            setup = setup.withType(setup.type().level());
            ladder.step(Effect.VESSEL_HEIGHT, setup);
            ladder.step(Effect.PRECHARGE, setup.withRule(VesselSizing.Precharge.STATIC));
            ladder.step(Effect.TEMPERATURE_REACHED, ladder.book.byMass());
            ladder.step(Effect.WATER_COMPRESSIBILITY, ladder.book.incompressible());
            ladder.step(Effect.COLD_VOLUME, ladder.book.byHotVolume());
            return ladder;
        }

        HandCalculation book() {
            return book;
        }

        /** Notes what the vessel (m3) is without an effect. */
        void step(Effect effect, double without) {
            terms.add(new Term(effect, now - without));
            now = without;
        }

        private void step(Effect effect, SizingProblem without) {
            step(effect, needed(without));
        }

        SizingReconciliation end(VesselFormula.Result formula) {
            return new SizingReconciliation(formula, top, terms, search.balances());
        }

        private double needed(SizingProblem setup) {
            OptionalDouble found = search.smallest(setup);
            return found.orElseThrow(() -> new IllegalArgumentException(
                    "target: no vessel up to 5 m3 meets it in every case compared; lower the supply pressure first"));
        }

        private static Tank mixed(Tank tank) {
            return tank.toBuilder().layers(1).build();
        }

        /** The same tank, with thermal expansion but rigid under pressure. */
        private static Tank unyielding(Tank tank) {
            Material material =
                    new Material("unyielding", UNYIELDING, 0.3, tank.shell().thermalGrowth() / 3);
            return tank.toBuilder()
                    .shell(Shell.cylinder(material, 0.5, 0.05, LengthUnit.METRE))
                    .build();
        }
    }
}
