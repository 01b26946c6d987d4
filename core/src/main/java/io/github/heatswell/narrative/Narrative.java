package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.temperature;
import static io.github.heatswell.assessment.Measure.time;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.checksheet.UncertainCheck;
import io.github.heatswell.narrative.Observer.Observed;
import io.github.heatswell.place.Place;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.study.SampledPeaks;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What was found, in sentences, the same for screen, page, picture, lesson and program. Immutable; its quantities are written
 * once the units are chosen ({@link Statement#text}). Pressures are gauge readings.
 *
 * @param alarms what may hurt somebody, limits passed, and that a run is not to be relied on, the gravest first
 * @param headline what was found, in one sentence without a full stop; a hazard before everything else
 * @param remarks what must be said besides, in whole sentences
 * @param facts what a reader needs in order to judge it, in whole sentences; may be empty
 * @param findings what rules found in the run or the house behind it, the gravest first
 */
public record Narrative(
        List<Alarm> alarms, Statement headline, List<Statement> remarks, Statement facts, List<Finding> findings) {

    /** A run of more days than this (s) is summarised day by day. */
    private static final double MANY_DAYS = 14.5 * 86_400;

    /**
     * Checks that everything is there and copies the lists.
     *
     * @param alarms what may hurt somebody, and limits passed, the gravest first
     * @param headline what was found
     * @param remarks what must be said besides
     * @param facts what a reader needs in order to judge it
     * @param findings what rules found
     */
    public Narrative {
        alarms = List.copyOf(alarms);
        Objects.requireNonNull(headline, "headline");
        remarks = List.copyOf(remarks);
        Objects.requireNonNull(facts, "facts");
        findings = List.copyOf(findings);
    }

    /**
     * What one run found of a house of which everything is known.
     *
     * @param run the run
     * @return the narrative; its remark tells how well the rise is known without a vessel
     */
    public static Narrative of(RunSummary run) {
        return of(run, Doubts.NONE);
    }

    /**
     * What one run found, such as {@code The relief valve opens after 10 min 16 s and discharges 3.14 L}.
     *
     * @param run the run
     * @param doubts what is not known of the house: no hazard is stated that rests on it alone
     * @return the narrative; its remark tells how well the rise is known without a vessel
     */
    public static Narrative of(RunSummary run, Doubts doubts) {
        return of(run, doubts, new RunHeadline(Objects.requireNonNull(run, "run")).sentence());
    }

    /**
     * What a run over weeks or years found: on how many days valves discharged water, and when most. A shorter run is told as
     * by {@link #of}.
     *
     * @param run the run
     * @param doubts what is not known of the house
     * @param relieved what all relief valves discharged on each day (m3)
     * @return the narrative
     */
    public static Narrative ofDays(RunSummary run, Doubts doubts, List<Double> relieved) {
        return of(run, doubts, new RunHeadline(Objects.requireNonNull(run, "run")).ofDays(relieved));
    }

    /**
     * Whether a run is summarised day by day ({@link #ofDays}): any longer than two weeks.
     *
     * @param run the run
     * @return true if it is so long
     */
    public static boolean isByDay(RunSummary run) {
        return run.end() > MANY_DAYS;
    }

    /**
     * The course of a run, for a reader who cannot see its picture.
     *
     * @param run the run
     * @return clauses on pressure, hottest water, relief valve and hazard, and a full stop
     */
    public static Statement course(RunSummary run) {
        return new RunHeadline(Objects.requireNonNull(run, "run")).course();
    }

    /**
     * The same, with what samples showed.
     *
     * @param run the run
     * @param observed what its samples showed
     * @return the narrative; its remarks tell where discharged water came from, and of draws that fell short
     */
    public Narrative with(RunSummary run, Observed observed) {
        List<Statement> all = new ArrayList<>(observed.remarks(run));
        all.addAll(remarks);
        return new Narrative(alarms, headline, all, facts, findings);
    }

    private static Narrative of(RunSummary run, Doubts doubts, Statement headline) {
        List<Finding> findings = Findings.of(run, doubts);
        List<Alarm> alarms = Alarm.of(run, findings);
        List<Statement> remarks = new ArrayList<>();
        if (alarms.isEmpty() && run.isUnfinished()) {
            remarks.add(Statement.of(
                    "The heat-up is not finished when the run ends after {}: by then the hottest water is at {}, and the heater is"
                            + " still on. Make the run longer to see the rest.",
                    time(run.end()),
                    temperature(run.extremes().highestTemperature().value())));
        }
        RiseBand.of(run)
                .map(band -> run.isUnfinished() ? band.untilOpening() : band.remark())
                .ifPresent(remarks::add);
        return new Narrative(alarms, headline.then(doubts.caveat()), remarks, Facts.of(run), findings);
    }

    /**
     * What several runs found when compared with each other, such as {@code Only “18 L vessel” keeps the relief valve shut; “no
     * vessel” discharges 3.14 L}.
     *
     * @param runs the runs, at least two
     * @return the narrative
     * @throws IllegalArgumentException if there are fewer than two runs
     */
    public static Narrative comparing(List<NamedSummary> runs) {
        return comparing(runs, Objects.requireNonNull(runs, "runs").size());
    }

    /**
     * What many runs found where a picture shows only some: those of the lowest and the highest peak, and others evenly between.
     *
     * @param runs all runs, at least two
     * @param shown how many of them are shown
     * @return the narrative
     * @throws IllegalArgumentException if there are fewer than two runs
     */
    public static Narrative comparing(List<NamedSummary> runs, int shown) {
        if (Objects.requireNonNull(runs, "runs").size() < 2) {
            throw new IllegalArgumentException("runs: a comparison needs at least 2, not " + runs.size());
        }
        Verdict verdict = new Verdict(runs);
        boolean some = shown < runs.size();
        Statement facts = plain(
                        some
                                ? "Shown are " + shown + " of " + runs.size()
                                        + " runs: those of the lowest and the highest peak, and others evenly between by their"
                                        + " peaks. "
                                : "")
                .then(Facts.common(runs));
        return new Narrative(
                verdict.hazards().stream()
                        .map(hazard -> Alarm.of(Alarm.Level.HAZARD, hazard))
                        .toList(),
                verdict.sentence().capitalised(),
                some ? List.of(verdict.peaks(shown)) : List.of(),
                facts,
                List.of());
    }

    /**
     * Which of several runs exceed the limit of a sizing in their worst heat-up, whether or not a valve drips.
     *
     * @param runs the runs
     * @param yardsticks how the worst heat-up of each stands to its limit, in the same order; empty where there is none
     * @return a sentence; empty if none does, or their limits differ
     */
    public static Optional<Statement> exceeded(List<NamedSummary> runs, List<Optional<Yardstick>> yardsticks) {
        return Yardstick.exceeded(runs, yardsticks);
    }

    /**
     * Reconciles runs with their worst heat-ups where the two are judged differently.
     *
     * @param runs the runs
     * @param yardsticks how the worst heat-up of each stands to its limit, in the same order; empty where there is none
     * @return a sentence; empty if all are judged alike
     */
    public static Optional<Statement> joined(List<NamedSummary> runs, List<Optional<Yardstick>> yardsticks) {
        return Yardstick.joined(runs, yardsticks);
    }

    /**
     * Answers, first with yes or no, whether the vessel of a house is good enough, or what an owner asks who sees a valve drip.
     *
     * @param question the question
     * @param run the run that answers it: whether a valve drips is what its totals say
     * @param doubts what is not known of the house; an answer that rests on it says so
     * @return whole sentences, such as {@code No: it is too small.}; empty if something else is asked
     */
    public static Optional<String> verdict(String question, RunSummary run, Doubts doubts) {
        return VesselVerdict.of(question, run, doubts)
                .or(() -> OwnersQuestion.of(question, run, doubts.caveat().isEmpty()));
    }

    /**
     * The question to ask of a house after its vessel or supply was changed: what was seen before no longer counts.
     *
     * @param question the question about the house as it was
     * @return the question; empty if nothing was seen to drip, so that the question stays
     */
    public static Optional<String> afterChange(String question) {
        return OwnersQuestion.afterChange(question);
    }

    /**
     * What to say where the owner sees a valve drip that stayed shut in a run: the discharge in the run and what it costs are
     * then not those of the house.
     *
     * @param question the question
     * @param run the run of the house as it is described
     * @return whole sentences; empty if the run drips too, or nothing of the kind is asked
     */
    public static Optional<Statement> unlikeSeen(String question, RunSummary run) {
        return OwnersQuestion.isUnlikeSeen(question, run)
                ? Optional.of(plain(
                        "You see the relief valve drip, but in the house as assumed here it stays shut. Something differs, perhaps"
                                + " a value that is not known. Unless readings have told the cause, look for that first ('heatswell diagnose'). Until then the cost"
                                + " of doing nothing is not known, and a vessel may not be the cure."))
                : Optional.empty();
    }

    /**
     * Whether the vessel that is there will do, before a sizing names another.
     *
     * @param question what is asked; if it is just that, the answer begins with yes or no
     * @param advice the sizing
     * @return a sentence or more; empty if there is no vessel
     */
    public static Optional<Statement> verdict(String question, SizeAdvice advice) {
        return VesselVerdict.of(question, advice);
    }

    /**
     * Warns that charging the present vessel is no cure, or that fitting one is none at the present supply.
     *
     * @param sizing what a sizing of the house found
     * @param house the house
     * @return the sentences; empty if it is large enough by the best estimates, if there are several, or if there is none and one on
     *     sale is enough
     */
    public static Optional<Statement> tooSmall(SizingResult sizing, HotWaterSystem house) {
        return VesselVerdict.tooSmall(sizing, house).or(() -> VesselVerdict.noneOnSale(sizing, house));
    }

    /**
     * What a map of peaks found: where the house stands, and where the valve drips.
     *
     * @param map the peaks
     * @return the narrative; its alarms are those of a closed house in which no relief valve works
     */
    public static Narrative of(PeakMap map) {
        MapStory story = new MapStory(Objects.requireNonNull(map, "map"));
        return new Narrative(story.alarms(), story.headline(), List.of(), story.facts(), List.of());
    }

    /**
     * What many samples of a house found.
     *
     * @param sampled the peaks
     * @return the narrative; its shares are those of the samples
     */
    public static Narrative of(SampledPeaks sampled) {
        SpreadStory story = new SpreadStory(Objects.requireNonNull(sampled, "sampled"));
        return new Narrative(story.alarms(), story.headline(), List.of(), story.facts(), List.of());
    }

    /**
     * What to bear in mind with a check sheet.
     *
     * @param check the sheet, with its ranges
     * @param house the house it is for
     * @param reseatVaries whether the reseat pressure of a relief valve is assumed, and varied
     * @return whole sentences
     */
    public static List<Statement> remarks(UncertainCheck check, HotWaterSystem house, boolean reseatVaries) {
        return new CheckStory(check, house).remarks(reseatVaries);
    }

    /**
     * Says in how many of the houses within the uncertainties a relief valve discharges in the check, where they differ.
     *
     * @param check the check, sampled
     * @param house the house that is checked
     * @return in how many of them a valve discharges, a whole sentence; empty if in all or in none
     */
    public static Optional<Statement> mixed(UncertainCheck check, HotWaterSystem house) {
        return new CheckStory(check, house).mixed();
    }

    /**
     * The facts of a run for a reader who has its remarks as well: without when its relief valve may open, which they tell.
     *
     * @param run the run
     * @return whole sentences
     */
    public static Statement factsBesideRemarks(RunSummary run) {
        return Facts.besideRemarks(run);
    }

    /**
     * What a single reading of the gauge shows that a sound relief valve and an honest gauge do not.
     *
     * @param house the house
     * @param gauge the reading (Pa, gauge), within the limits of {@link io.github.heatswell.diagnosis.SiteCheck#HEAT_UP_MAXIMUM}
     * @return whole sentences with what to do; empty if it is no hazard
     * @throws IllegalArgumentException if the reading is outside these limits
     */
    public static Optional<Statement> readingHazard(HotWaterSystem house, double gauge) {
        return ReadingHazards.ofOne(house, gauge);
    }

    /**
     * What readings that are off a check sheet mean, and where to look first: common practice, no source.
     *
     * @param off by how much (Pa, a difference) each of them lies above what agrees or, negative, below it; those that agree are left out
     * @param vessel whether an expansion vessel is fitted
     * @return whole sentences; empty if no reading is off
     */
    public static Optional<Statement> offSheet(Map<CheckSheet.Reading.Kind, Double> off, boolean vessel) {
        return CheckStory.meaning(off, vessel);
    }

    /**
     * Why a house must not be heated before something is put right.
     *
     * @param findings what rules found in it
     * @return a clause with its full stop, and what to do; empty if it may be heated
     */
    public static Optional<Statement> heatingForbidden(List<Finding> findings) {
        return CheckStory.heatingForbidden(findings);
    }

    /**
     * Why there is no check sheet for a house in which the check itself ends in a hazard.
     *
     * @param hazard the hazard
     * @return whole sentences
     */
    public static Statement checkEndsIn(Event hazard) {
        return CheckStory.endsIn(hazard);
    }

    /**
     * Whether a relief valve runs in the same way every day, whatever the vessel and the weather.
     *
     * @param house the house
     * @return true if one is stuck open, or the supply alone opens one
     */
    public static boolean runsEveryDay(HotWaterSystem house) {
        return ReliefWords.stuckOpen(house).isPresent() || PrechargeTarget.isSupplyTooHigh(house);
    }

    /**
     * When the relief valves discharge, in the few words of a table.
     *
     * @param run what the run found
     * @return such as {@code drips while the water heats}, or empty if none discharges anything
     */
    public static Optional<String> drips(RunSummary run) {
        return ReliefWords.when(run);
    }

    /**
     * What a relief valve did in a run.
     *
     * @param valve the valve
     * @param total what it discharged
     * @return such as {@code opened twice}, {@code stayed shut} or {@code which is blocked}
     */
    public static String did(ReliefValve valve, Totals.Relief total) {
        return ReliefWords.did(valve, total);
    }

    /**
     * Which vessel a house needs, how sure that is, and what to do where none will do.
     *
     * @param advice the sizing
     * @return the narrative; it has no alarms and no findings
     */
    public static Narrative of(SizeAdvice advice) {
        SizingStory story = new SizingStory(Objects.requireNonNull(advice, "advice"));
        List<Statement> said = story.sentences();
        return new Narrative(List.of(), said.get(0), said.subList(1, said.size()), story.facts(), List.of());
    }

    /**
     * That a valve made to take the expansion only did its work in a run, where the trade of the place leaves the expansion to it.
     *
     * @param run the run of the house as it is
     * @return what to do about the drip; empty where another valve discharged too, none did, or the place is another
     */
    public static Optional<Statement> normalDrip(RunSummary run) {
        HotWaterSystem house = run.system();
        Place place = house.site().place();
        List<ReliefValve> dripping = house.reliefValves().stream()
                .filter(valve -> run.openings(valve.name()).findAny().isPresent())
                .toList();
        boolean normal = (place == Place.AU_NZ || place == Place.EN)
                && run.hazard().isEmpty()
                && !dripping.isEmpty()
                && dripping.stream()
                        .allMatch(valve ->
                                valve.kind().takesExpansion() && valve.condition() == ReliefFault.Condition.SOUND);
        return normal
                ? Optional.of(plain("'" + dripping.get(0).name()
                        + "' is made to discharge the expansion: a drip at each heat-up that stops afterwards is its normal work,"
                        + " and nothing has to be bought for it. A vessel saves that water. What runs on long after the heater"
                        + " went off is not expansion. To fit a vessel that takes the expansion:"))
                : Optional.empty();
    }

    /**
     * What to put right on several vessels before a size counts: for every sheet that relies on that size.
     *
     * @param advice the sizing
     * @return the sentences; empty where there are no several, or all are right
     */
    public static Optional<Statement> first(SizeAdvice advice) {
        List<Statement> said = new SizingStory(Objects.requireNonNull(advice, "advice")).first();
        if (said.isEmpty()) {
            return Optional.empty();
        }
        said.set(0, said.get(0).then("."));
        return Optional.of(Statement.joined(" ", said));
    }

    /**
     * What the years will do to a house: when dripping begins, how sure that is, and when to check and pump.
     *
     * @param outlook the years ahead
     * @param house the house as it is today
     * @return the narrative; it has no findings
     */
    public static Narrative of(OutlookResult outlook, HotWaterSystem house) {
        OutlookStory story = new OutlookStory(Objects.requireNonNull(outlook, "outlook"), house);
        List<Statement> remarks = new ArrayList<>(story.outOfService().stream().toList());
        remarks.addAll(List.of(story.interval(), story.care()));
        story.passesCap().ifPresent(remarks::add);
        return of(story, remarks);
    }

    /**
     * The same for a house whose worst heat-up was held against the limit of a sizing.
     *
     * @param outlook the years ahead
     * @param house the house as it is today
     * @param yardstick the limit, and the worst heat-up today
     * @return the narrative; it has no findings
     */
    public static Narrative of(OutlookResult outlook, HotWaterSystem house, Yardstick yardstick) {
        OutlookStory story = new OutlookStory(Objects.requireNonNull(outlook, "outlook"), house);
        List<Statement> remarks = new ArrayList<>(story.outOfService().stream().toList());
        remarks.addAll(story.limit(yardstick));
        remarks.addAll(List.of(story.interval(), story.care()));
        return of(story, remarks);
    }

    private static Narrative of(OutlookStory story, List<Statement> remarks) {
        return new Narrative(story.alarm().stream().toList(), story.headline(), remarks, story.facts(), List.of());
    }

    /**
     * What can be said of a house without running it.
     *
     * @param house the house
     * @param doubts what is not known of it
     * @return its hazards, each with what to do
     */
    public static List<Alarm> alarms(HotWaterSystem house, Doubts doubts) {
        return Alarm.hazards(Findings.of(house, doubts));
    }

    /** {@return whether people may be hurt: whether one of the alarms is a hazard} */
    public boolean isHazard() {
        return hazard().isPresent();
    }

    /**
     * The remarks with their quantities written out.
     *
     * @param format the units and their characters
     * @return whole sentences
     */
    public List<String> remarkTexts(QuantityFormat format) {
        return remarks.stream().map(remark -> remark.text(format)).toList();
    }

    /** {@return the answer with all its remarks, in whole sentences} */
    public Statement answer() {
        return Statement.joined(
                " ",
                Stream.concat(Stream.of(headline.then(".")), remarks.stream()).toList());
    }

    /** {@return the gravest hazard: what happened or what is wrong, without what to do; empty without one} */
    public Optional<Statement> hazard() {
        return alarms.stream()
                .filter(alarm -> alarm.level() == Alarm.Level.HAZARD)
                .map(Alarm::what)
                .findFirst();
    }
}
