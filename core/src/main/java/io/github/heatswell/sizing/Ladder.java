package io.github.heatswell.sizing;

import io.github.heatswell.sizing.SizingReconciliation.Effect;
import io.github.heatswell.sizing.SizingReconciliation.Term;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Steps from the simulation to a formula, recording the volume lost at each step. */
final class Ladder {

    /** A modulus (Pa) high enough to be rigid. */
    private static final double UNYIELDING = 1e30;

    private final Search search = new Search();
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
        setup = setup.withColdFill(
                trial -> trial.changed(house -> house.tank(mixed(trial.house().tank()))));
        ladder.step(Effect.LAYERS, setup);
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
        ladder.step(Effect.PRECHARGE, setup.withRule(PrechargeRule.STATIC));
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
