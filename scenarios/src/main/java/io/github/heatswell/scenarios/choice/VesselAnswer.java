package io.github.heatswell.scenarios.choice;

import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.narrative.Yardstick;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.sizing.SizingReconciliation;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.VesselFormula;
import io.github.heatswell.study.SizeCertainty;
import io.github.heatswell.units.Pressure;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Which vessel a house needs, and what it would change.
 *
 * @param scenario the house and its run
 * @param sizing the answer of the simulation
 * @param counted how much of the run counted beside the heat-up from a cold fill
 * @param formulas what published formulas say
 * @param asItIs the run of the house as it is
 * @param proposed the same run with the recommended vessel, or with the charge of the present one put right where it is large
 *     enough; empty if there is nothing to change
 * @param certainty in how many houses within what is uncertain the limit is kept; empty if nothing was recommended
 * @param supplies what the sizes would do at lower supplies; without columns where a lower supply is no answer
 * @param valves what relief valves would do in place of a vessel; none where nothing needs one
 * @param yardstick how the worst heat-up of the house as it is stands to the limit; empty where there is none
 * @param against the size that somebody else asks for; empty if nobody does
 * @param lowered the same answer about the house at the lower supply that is advised, with the vessel that goes with it; empty where no
 *     lower supply is advised
 * @param more the balances of the runs behind supplies and valves
 */
public record VesselAnswer(
        Scenario scenario,
        SizingResult sizing,
        Duration counted,
        List<FormulaAnswer> formulas,
        RunResult asItIs,
        Optional<RunResult> proposed,
        Optional<SizeCertainty> certainty,
        SupplyTable supplies,
        List<DischargingValve> valves,
        Optional<Yardstick> yardstick,
        Optional<Against> against,
        Optional<VesselAnswer> lowered,
        Balances more) {

    /**
     * Checks that everything is there and copies the formulas.
     *
     * @param scenario the house and its run
     * @param sizing the answer of the simulation
     * @param counted how much of the run counted beside the heat-up from a cold fill
     * @param formulas what published formulas say
     * @param asItIs the run of the house as it is
     * @param proposed the same run with the recommended vessel; empty if none is recommended
     * @param certainty in how many houses within what is uncertain the limit is kept; empty if nothing was recommended
     * @param supplies what the sizes would do at lower supplies
     * @param valves what relief valves would do in place of a vessel
     * @param yardstick how the worst heat-up of the house as it is stands to the limit
     * @param against the size that somebody else asks for
     * @param lowered the same answer about the house at the lower supply that is advised
     * @param more the balances of the runs behind supplies and valves
     */
    public VesselAnswer {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(sizing, "sizing");
        Objects.requireNonNull(counted, "counted");
        formulas = List.copyOf(formulas);
        Objects.requireNonNull(asItIs, "asItIs");
        Objects.requireNonNull(proposed, "proposed");
        Objects.requireNonNull(certainty, "certainty");
        Objects.requireNonNull(supplies, "supplies");
        valves = List.copyOf(valves);
        Objects.requireNonNull(yardstick, "yardstick");
        Objects.requireNonNull(against, "against");
        Objects.requireNonNull(lowered, "lowered");
        Objects.requireNonNull(more, "more");
    }

    /**
     * A size that somebody else asks for, by whatever rule.
     *
     * @param vessel what it would do
     * @param bought the run of the house with it, if it was bought; empty if it is only asked for
     * @param tried in how many of the sampled houses it passes the limit; empty if they could not be sampled
     * @param charged what it was found charged to; empty if nobody read it
     */
    public record Against(
            SizingResult.Vessel vessel,
            Optional<RunResult> bought,
            Optional<SizeCertainty.Tried> tried,
            Optional<Pressure> charged) {

        /**
         * Checks that everything is there.
         *
         * @param vessel what it would do
         * @param bought the run of the house with it, if it was bought
         * @param tried in how many of the sampled houses it passes the limit
         * @param charged what it was found charged to
         */
        public Against {
            Objects.requireNonNull(vessel, "vessel");
            Objects.requireNonNull(bought, "bought");
            Objects.requireNonNull(tried, "tried");
            Objects.requireNonNull(charged, "charged");
        }
    }

    /**
     * The run of the house with the vessel that was bought.
     *
     * @return the run; empty if none was, or if it is too small
     */
    public Optional<RunResult> bought() {
        return tooSmall().isPresent() ? Optional.empty() : against.flatMap(Against::bought);
    }

    /**
     * The vessel that was bought, where it is not enough.
     *
     * @return it, if it exceeds the limit
     */
    public Optional<Against> tooSmall() {
        return against.filter(other -> other.bought().isPresent())
                .filter(other -> !other.vessel().suffices());
    }

    /**
     * Whether the vessel that was bought keeps the limit by the best estimates alone.
     *
     * @return true if it is not too small, and in too few of the sampled houses enough
     */
    public boolean lacksMargin() {
        return bought().isPresent()
                && against.flatMap(Against::tried)
                        .filter(tried -> !tried.holds())
                        .isPresent();
    }

    /**
     * What the papers for the work are about: the house as it is, or at the lower supply that is advised.
     *
     * @return this answer, or the one at the lower supply
     */
    public VesselAnswer forTheWork() {
        return lowered.orElse(this);
    }

    /**
     * The size to take, the same in every report, file and picture: the smallest on sale that keeps the limit in nine of ten houses
     * within what is uncertain, or, where nothing is uncertain, the smallest that keeps it.
     *
     * @return the vessel, or empty if none is needed, or none on sale is enough or sure enough
     */
    public Optional<SizingResult.Vessel> recommended() {
        return advice().recommended();
    }

    /**
     * Which size to take, for whoever tells or draws it.
     *
     * @return the sizing, and how sure it is
     */
    public SizeAdvice advice() {
        return new SizeAdvice(sizing, scenario.system(), certainty, supplies.cheapest(), scenario.doubts());
    }

    /**
     * What the relief valves of the house as it is would discharge in a year.
     *
     * @return the water of a year; empty if the run is not normal life
     */
    public Optional<YearlyWater> waterAsItIs() {
        return YearlyWater.ofNormalLife(asItIs.summary(), scenario.doubts());
    }

    /**
     * What they would discharge with the proposed vessel.
     *
     * @return the water of a year; empty if no vessel is proposed, if the run with it is not normal life, or if a valve is stuck open,
     *     which no vessel changes
     */
    public Optional<YearlyWater> waterProposed() {
        return advice().stuckOpen().isPresent()
                ? Optional.empty()
                : proposed.flatMap(run -> YearlyWater.ofNormalLife(
                        run.summary(), scenario.doubts().without("vessel")));
    }

    /**
     * The balances of all runs behind the answer: those of the search, of the formulas' differences and of the uncertain
     * houses, the run as it is and that with the vessel.
     *
     * @return how many there are, and how many do not close
     */
    public Balances balances() {
        Balances.Count all = new Balances.Count();
        all.add(sizing.balances());
        formulas.stream().flatMap(formula -> formula.differences().stream()).forEach(some -> all.add(some.balances()));
        all.add(asItIs);
        proposed.ifPresent(all::add);
        against.flatMap(Against::bought).ifPresent(all::add);
        lowered.ifPresent(some -> all.add(some.balances()));
        certainty.ifPresent(some -> all.add(some.balances()));
        yardstick.map(Yardstick::balances).ifPresent(all::add);
        all.add(more);
        return all.sum();
    }

    /**
     * Result of a published formula for a house.
     *
     * @param name what the formula is called
     * @param result what it says; empty if it does not apply
     * @param differences why the simulated volume differs, effect by effect; empty if unknown
     * @param remark why the formula does not apply, or what to bear in mind; may be empty
     */
    public record FormulaAnswer(
            String name,
            Optional<VesselFormula.Result> result,
            Optional<SizingReconciliation> differences,
            String remark) {

        /**
         * Checks that everything is there.
         *
         * @param name what the formula is called
         * @param result what it says; empty if it does not apply
         * @param differences why the simulated volume differs, effect by effect; empty if unknown
         * @param remark why the formula does not apply, or what to bear in mind; may be empty
         */
        public FormulaAnswer {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(result, "result");
            Objects.requireNonNull(differences, "differences");
            Objects.requireNonNull(remark, "remark");
        }

        static FormulaAnswer of(String name, SizingReconciliation differences) {
            return new FormulaAnswer(name, Optional.of(differences.formula()), Optional.of(differences), "");
        }

        static FormulaAnswer without(String name, String remark) {
            return new FormulaAnswer(name, Optional.empty(), Optional.empty(), remark);
        }
    }
}
