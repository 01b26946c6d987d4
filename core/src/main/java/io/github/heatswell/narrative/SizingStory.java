package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.volume;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.place.Place;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.study.SizeCertainty;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a sizing found: the size to take, how sure that is, and what to do where no size will do. */
final class SizingStory {

    /** Less room than this share of the limit is why a vessel must be large: our own judgement. */
    private static final double SMALL_ROOM = 0.05;

    private static final String NONE_SURE = "No size on the list is sure to be enough in nine of ten such houses.";

    private final SizeAdvice advice;
    private final SizingResult sizing;
    private final HotWaterSystem house;
    private final Optional<SizeCertainty> certainty;
    private final SizeOdds odds;
    private final double atmosphere;

    SizingStory(SizeAdvice advice) {
        this.advice = advice;
        this.sizing = advice.sizing();
        this.house = advice.house();
        this.certainty = advice.certainty();
        this.odds = new SizeOdds(sizing, certainty, house.hasSeveralVessels());
        this.atmosphere = house.site().atmosphere();
    }

    /** The answer in sentences, the first without its full stop; a valve that cannot close goes first, since no vessel cures it. */
    List<Statement> sentences() {
        List<Statement> said = first();
        int first = said.size();
        answer(said);
        if (first > 0) {
            said.set(first, said.get(first).then("."));
        }
        return said;
    }

    /** What of several vessels is to be put right before a size counts, the first without its full stop; none where all are right. */
    List<Statement> first() {
        List<Statement> said = new ArrayList<>();
        VesselVerdict.outOfService(house).ifPresent(dead -> {
            said.add(dead);
            said.add(plain("Have that fixed first, then size again. What follows relies on the others alone."));
        });
        VesselVerdict.wronglyCharged(advice).ifPresent(charges -> {
            said.add(said.isEmpty() ? charges : charges.then("."));
            said.add(plain("Have that fixed first, then size again. What follows assumes the charges as they are."));
        });
        return said;
    }

    private void answer(List<Statement> said) {
        Optional<ReliefValve> stuck = advice.stuckOpen();
        if (stuck.isEmpty() && Findings.creeps(house)) {
            said.add(plain(
                    "No vessel cures this: the seat of the reducing valve leaks, and while nothing is drawn the pressure"
                            + " climbs until something gives"));
            said.add(plain(
                    "Have the valve cleaned or its seat replaced, then size again without supply.seat-leakage. What follows"
                            + " is for the leaking valve, which takes a larger vessel than a sound one."));
            followedBySize(said);
            return;
        }
        if (stuck.isEmpty()) {
            size(said);
            return;
        }
        said.add(plain(
                "No vessel cures this: '" + stuck.get().name() + "' is stuck open and runs whatever the pressure"));
        said.add(advice.kept()
                .map(present -> plain("Have it replaced first. The ")
                        .then(volume(present.volume()))
                        .then(" vessel of this house is large enough, so there is none to buy. After that:"))
                .orElse(plain("Have it replaced first; what follows applies after that.")));
        followedBySize(said);
    }

    private void followedBySize(List<Statement> said) {
        int first = said.size();
        size(said);
        said.set(first, said.get(first).then("."));
    }

    private void size(List<Statement> said) {
        switch (sizing.outcome()) {
            case NONE_NEEDED -> noneNeeded(said);
            case NO_VESSEL_CAN -> noVesselCan(said);
            default -> {
                if (certainty.flatMap(SizeCertainty::vague).isPresent()) {
                    tooVague(certainty.flatMap(SizeCertainty::vague).get(), said);
                } else if (advice.recommended().isPresent()) {
                    take(advice.recommended().get(), said);
                } else if (sizing.smallestOnSale().isPresent()) {
                    said.add(keeps(
                            "By the best estimates a", sizing.smallestOnSale().get()));
                    odds.fails("But in ").ifPresent(said::add);
                    said.add(instead());
                } else {
                    noneOnSale(said);
                }
            }
        }
    }

    private void noneNeeded(List<Statement> said) {
        said.add(plain((odds.doubtful() ? "By the best estimates no" : "No")
                        + (several()
                                ? " further vessel is needed: with the "
                                        + house.vessels().size() + " present"
                                : " vessel is needed: without one")
                        + " the peak of the worst heat-up stays within the limit of ")
                .then(limit()));
        if (odds.doubtful()) {
            odds.fails("But in ").ifPresent(said::add);
            said.add(instead());
        } else {
            said.addAll(odds.holds());
        }
        if (house.supply().reducingValve().isPresent() && !several()) {
            said.add(plain("That is the bypass of the reducing valve; " + bypass()));
        }
    }

    /** What the rules say of a bypass where the house stands. */
    private String bypass() {
        Place place = house.site().place();
        if (place.demand(Topic.BYPASS).filter(PlaceRule::requires).isPresent()) {
            return "the rules here ask for expansion control behind it all the same.";
        }
        return place.isKnown()
                ? "no rule on that was read for this place, so ask the local authority whether it will do."
                : "US model codes ask for expansion control behind it all the same, so ask the local authority.";
    }

    private void take(SizingResult.Vessel vessel, List<Statement> said) {
        said.add(keeps(isMore(vessel) ? "Even a" : "A", vessel));
        said.addAll(odds.holds());
        if (!odds.doubtful()) {
            return;
        }
        StudyResult.Share above = certainty.orElseThrow().bare().above();
        String in = (above.count() == above.of() ? "all " : above.count() + " of ") + above.of()
                + " sampled houses the pressure goes above the limit within a year of charging" + odds.opening() + ".";
        said.add(sizing.smallestOnSale()
                .map(bare -> plain("By the best estimates alone, ")
                        .then(volume(bare.volume()))
                        .then(" would do, ")
                        .then(margin(bare))
                        .then(" below the limit. But in " + in))
                .orElse(plain("In " + in)));
    }

    /** Whether the house has more than it takes. */
    private boolean isMore(SizingResult.Vessel wanted) {
        return advice.kept()
                .filter(present -> advice.stuckOpen().isEmpty() && present.volume() > wanted.volume() * (1 + 1e-9))
                .isPresent();
    }

    /** Between which sizes the answer lies, what to find out first, and which size is on the safe side. */
    private void tooVague(SizeCertainty.Range range, List<Statement> said) {
        said.add(plain("Too little is known about this house to name one size: it may take ")
                .then(odds.between(range.least(), range.most())));
        range.reading().map(reading -> odds.decides(range, reading)).ifPresent(said::add);
        advice.recommended()
                .ifPresentOrElse(
                        vessel -> {
                            said.add(keeps("Until then, the safe choice is a", vessel, " that")
                                    .then("."));
                            odds.holds().forEach(said::add);
                        },
                        () -> {
                            said.add(plain(NONE_SURE));
                            lower().ifPresent(said::add);
                        });
    }

    private Statement keeps(String article, SizingResult.Vessel vessel) {
        return keeps(article, vessel, "");
    }

    private Statement keeps(String article, SizingResult.Vessel vessel, String that) {
        return plain(one(article) + " vessel of ")
                .then(volume(vessel.volume()))
                .then(beside() + ", precharged to ")
                .then(gauge(vessel.precharge(), atmosphere))
                .then("," + that + " keeps the peak of the worst heat-up at ")
                .then(gauge(vessel.peakAbsolute() - atmosphere))
                .then(", ")
                .then(margin(vessel))
                .then(" below the limit of ")
                .then(limit());
    }

    /** What to do where the best estimates are not to be trusted. */
    private Statement instead() {
        return advice.recommended()
                .map(vessel -> plain(one("A") + " vessel of ")
                        .then(volume(vessel.volume()))
                        .then(", precharged to ")
                        .then(gauge(vessel.precharge(), atmosphere))
                        .then(","
                                + certainty
                                        .flatMap(SizeCertainty::advised)
                                        .map(SizeOdds::held)
                                        .orElse("")
                                + "."))
                .orElseGet(() -> plain(NONE_SURE + " ")
                        .then(lower().orElse(plain(
                                "Find out more about the house first, above all the supply pressure, or have"
                                        + " that pressure lowered."))));
    }

    /** Whether the vessel is one more. */
    private boolean several() {
        return house.hasSeveralVessels();
    }

    /** What ends in an article, which says where the vessel is one more. */
    private String one(String article) {
        String before = article.substring(0, article.length() - 1);
        return several() ? before + (article.endsWith("A") ? "One" : "one") + " more" : article;
    }

    private String beside() {
        return several() ? " beside the " + house.vessels().size() + " present" : "";
    }

    /** What can be had comes first; a size that is not on sale says only why. */
    private void noneOnSale(List<Statement> said) {
        SizingResult.Vessel least = sizing.smallest().orElseThrow();
        said.add(plain("No " + (several() ? "one more " : "") + "vessel on the list" + beside()
                        + " is large enough to stay within the limit of ")
                .then(limit())
                .then(" at the present supply"));
        said.add(lower().orElseGet(this::lowered));
        double room = sizing.target().gauge() - sizing.supplyStatic().gauge(atmosphere);
        Statement size = plain("As it is, it would take a vessel of at least ").then(volume(least.volume()));
        said.add(
                room < SMALL_ROOM * sizing.target().gauge()
                        ? size.then(", because the supply at its highest leaves only ")
                                .then(new Measure(Measure.Kind.PRESSURE_DIFFERENCE, room))
                                .then(" below the limit.")
                        : size.then(", or several side by side with that combined volume."));
    }

    private void noVesselCan(List<Statement> said) {
        said.add(plain("No " + (several() ? "further " : "")
                        + "vessel of any size can keep the peak within the limit of ")
                .then(limit()));
        said.add(plain("The supply is at ")
                .then(gauge(sizing.supplyStatic(), atmosphere))
                .then(" and leaves no room for the water to expand."));
        if (advice.lower().isPresent()) {
            said.add(lower().orElseThrow());
            return;
        }
        said.add(lowered());
    }

    /** What a lower supply would do by the best estimates alone. */
    private Statement lowered() {
        return sizing.lowerSupplyTo()
                .map(lower -> plain("Lower the supply first, with a reducing valve, to ")
                        .then(new Measure(Measure.Kind.HIGHEST_SETTING, lower.gauge(atmosphere)))
                        .then(" or less with no water running; by the best estimates a vessel of ")
                        .then(volume(sizing.largest()))
                        .then(", precharged to match, is then enough."))
                .orElse(plain(
                        "No lower supply pressure was found at which the largest size on the list is enough by the"
                                + " best estimates."));
    }

    /** The cheapest way with a lower supply. */
    private Optional<Statement> lower() {
        return advice.lower()
                .map(found -> plain("The cheapest way that works: have ")
                        .then(
                                found.supply().fitted()
                                        ? "a reducing valve fitted and set to "
                                        : "the reducing valve set to ")
                        .then(gauge(found.supply().valve(), atmosphere))
                        .then(" (")
                        .then(gauge(found.supply().standing(), atmosphere))
                        .then(" with no water running). Then ")
                        .then(
                                found.owned()
                                        ? vessel(found)
                                        : plain("a vessel of ").then(volume(found.volume())))
                        .then(", precharged to ")
                        .then(gauge(found.precharge(), atmosphere))
                        .then(owned(found))
                        .then(", stays within the limit in nine of ten sampled houses"
                                + found.price()
                                        .map(price -> (!found.supply().fitted()
                                                        ? ". The vessel costs "
                                                        : found.owned()
                                                                ? ". The valve costs "
                                                                : ". Valve and vessel together cost ")
                                                + Decimals.fixed(price.amount().doubleValue(), 2) + " "
                                                + price.currency())
                                        .orElse(", with nothing to buy")
                                + "."));
    }

    private static Statement vessel(SizeAdvice.LowerSupply found) {
        return plain("the ").then(volume(found.volume())).then(" vessel of this house");
    }

    private Statement owned(SizeAdvice.LowerSupply found) {
        return house.vessel()
                .filter(vessel -> found.owned())
                .map(vessel -> plain(" instead of ").then(gauge(vessel.precharge(), atmosphere)))
                .orElse(plain(""));
    }

    /** What the picture needs besides: the limit, the smallest vessel, and why the size to take is the one. */
    Statement facts() {
        Statement facts = plain("The peak of the worst heat-up must stay below ")
                .then(limit())
                .then(": " + advice.name(sizing.target().ruling()) + ". ");
        if (sizing.smallest().isPresent()) {
            facts = facts.then("The smallest vessel that does it" + beside() + " has ")
                    .then(volume(sizing.smallest().get().volume()))
                    .then(", precharged to ")
                    .then(gauge(sizing.smallest().get().precharge(), atmosphere))
                    .then(". ");
        }
        return facts.then(why())
                .then(
                        "Each mark is one simulation: round ones are enough by the best estimates, hollow squares are not.");
    }

    /** What speaks for the size to take, and against the smallest; empty where nothing is uncertain. */
    private Statement why() {
        if (!odds.doubtful()) {
            return certainty
                    .flatMap(SizeCertainty::advised)
                    .map(size -> plain("The size to take, ")
                            .then(volume(size.volume()))
                            .then("," + SizeOdds.held(size) + odds.houses() + ". "))
                    .orElse(plain(""));
        }
        Statement bare = sizing.smallestOnSale()
                .map(vessel -> plain("").then(volume(vessel.volume())))
                .orElse(plain("no vessel"));
        Statement advised = certainty
                .flatMap(SizeCertainty::advised)
                .map(tried -> plain(" ").then(volume(tried.volume())).then(SizeOdds.held(tried) + ". "))
                .orElse(plain(" " + NONE_SURE + " "));
        return plain("By the best estimates ")
                .then(bare)
                .then(" is enough; ")
                .then(odds.fails("but in ").orElseThrow())
                .then(advised);
    }

    private static Measure margin(SizingResult.Vessel vessel) {
        return new Measure(Measure.Kind.PRESSURE_DIFFERENCE, vessel.margin());
    }

    private Measure limit() {
        return gauge(sizing.target().gauge());
    }
}
