package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Estimate;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.Misfit;
import io.github.heatswell.diagnosis.Parameter;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What stands behind a verdict on readings: the causes it is about, what they assume, and what none explains. Immutable. */
final class FitDetails {

    private static final int MAX_NAMED = 3;

    /** Weights are about equal down to this share of the greatest; our own judgement. */
    private static final double ABOUT_EQUAL = 0.9;

    /** An assumed reseat pressure so much (share of the set pressure) from what fits decides something; our own judgement. */
    private static final double DECIDES = 0.05;
    /** Less water (m3) is no draw. */
    private static final double MIN_DRAW = 0.5e-3;

    private final DiagnosisResult result;
    private final HotWaterSystem house;
    private final Conclusion conclusion;

    FitDetails(DiagnosisResult result, HotWaterSystem house, Conclusion conclusion) {
        this.result = result;
        this.house = house;
        this.conclusion = conclusion;
    }

    /** Whole sentences, possibly none. */
    Statement words() {
        List<Statement> all = new ArrayList<>();
        List<HypothesisFit> tested = result.tested();
        if (conclusion.isUnmoved()) {
            return plain("");
        }
        if (conclusion.isAsDescribed() && conclusion.isWithoutHeatUp()) {
            all.add(plain("They show no heat-up, so they say nothing about one."));
        }
        if (result.isUnexplained()) {
            all.add(plain(closest(tested)));
            result.best()
                    .misfit()
                    .filter(misfit -> misfit.systematic() > misfit.tolerated())
                    .ifPresent(misfit -> all.add(plain("Over a stretch of the log it is at least ")
                            .then(new Measure(Measure.Kind.PRESSURE_DIFFERENCE, misfit.systematic()))
                            .then(" off.")));
            all.add(plain(
                    "A value in the description may be wrong, water may have been drawn without a note, or the cause may be one not"
                            + " considered here."));
        } else if (!conclusion.isAsDescribed() && !conclusion.isSettled()) {
            boolean named = conclusion.isLikely() || result.misfit();
            List<HypothesisFit> others = named ? tested.subList(1, tested.size()) : tested;
            String said = named
                    ? result.misfit() ? "These come about as close: " : "These would explain the readings too: "
                    : tested.size() == 1 ? "The likeliest is this: " : "The likeliest are these: ";
            others.stream().findFirst().ifPresent(any -> all.add(plain(said + named(others) + ".")));
        }
        strays().ifPresent(all::add);
        if (!result.isUnexplained() && conclusion.isAsDescribed() && tested.size() > 1) {
            all.add(plain((conclusion.isLikely()
                            ? "They would not show a slight case of one of these: "
                            : "These would explain the readings too: ")
                    + named(tested.stream()
                            .filter(fit -> fit.cause() != Cause.AS_DESCRIBED)
                            .toList()) + "."));
        }
        List<HypothesisFit> untested = result.untested();
        if (!untested.isEmpty()) {
            all.add(plain("Not tested by these readings: " + named(untested) + "."));
        }
        reseat().ifPresent(all::add);
        drawn().ifPresent(all::add);
        return Statement.joined(" ", all);
    }

    private static String closest(List<HypothesisFit> tested) {
        List<HypothesisFit> alike = tested.stream()
                .filter(fit -> fit.weight() >= ABOUT_EQUAL * tested.get(0).weight())
                .toList();
        if (alike.size() > 1) {
            return "These fit best, about equally: " + named(alike) + ".";
        }
        return tested.get(0).cause() == Cause.AS_DESCRIBED
                ? "The house as described fits best."
                : "Best fit: " + name(tested.get(0)) + ".";
    }

    /** The reseat pressure that was only assumed, where the likeliest cause rests on another. */
    private Optional<Statement> reseat() {
        HypothesisFit best = result.best();
        if (house.reliefValves().isEmpty()
                || best.own().stream().anyMatch(own -> own.parameter() == Parameter.RESEAT_SHARE)) {
            return Optional.empty();
        }
        double atmosphere = house.site().atmosphere();
        ReliefValve valve = house.reliefValves().get(0);
        double assumed =
                valve.reseatPressure().gauge(atmosphere) / valve.setPressure().gauge(atmosphere);
        return best.estimate(Parameter.RESEAT_SHARE)
                .map(Estimate::value)
                .filter(share -> Math.abs(share - assumed) > DECIDES)
                .map(share -> plain("The best fit depends on a reseat pressure that nobody looked up: assumed ")
                        .then(new Measure(Measure.Kind.SHARE, assumed))
                        .then(" of the set pressure, fitted as ")
                        .then(new Measure(Measure.Kind.SHARE, share))
                        .then(" here. If the manufacturer gives it, add it to the file as reseats."));
    }

    /** How much water was drawn in the best explanation, as far as the log notes or shows that it was. */
    private Optional<Statement> drawn() {
        List<Estimate> draws = result.best().estimates().stream()
                .filter(one -> one.parameter().isDrawn() && one.value() > MIN_DRAW)
                .toList();
        double all = draws.stream().mapToDouble(Estimate::value).sum();
        return draws.isEmpty()
                ? Optional.empty()
                : Optional.of(plain(
                                "This assumes that water was drawn where the pressure fell to the supply's or your notes say so: about ")
                        .then(Measure.volume(all))
                        .then(" in all."));
    }

    /** The readings that even the best explanation does not explain. */
    private Optional<Statement> strays() {
        return result.best()
                .misfit()
                .filter(misfit -> !misfit.strays().isEmpty())
                .map(FitDetails::strays);
    }

    private static Statement strays(Misfit misfit) {
        Optional<Misfit.Stray> highest =
                misfit.strays().stream().filter(Misfit.Stray::highest).findFirst();
        if (highest.isPresent()) {
            return plain("The highest reading that was used is not explained: ").then(missed(highest.get()));
        }
        int number = misfit.strays().size();
        Misfit.Stray worst =
                Collections.max(misfit.strays(), Comparator.comparingDouble(stray -> Math.abs(stray.above())));
        return plain(
                        number == 1
                                ? "One of " + misfit.readings() + " readings is not explained: "
                                : number + " of " + misfit.readings()
                                        + " readings are not explained. The furthest off: ")
                .then(missed(worst));
    }

    /** Which reading, what was read, and what was expected. */
    private static Statement missed(Misfit.Stray stray) {
        return (stray.time() == 0
                        ? plain("at first")
                        : plain("").then(Measure.time(stray.time())).then(" after the first reading"))
                .then(", the gauge showed ")
                .then(Measure.gauge(stray.read()))
                .then(", where ")
                .then(Measure.gauge(stray.expected()))
                .then(" was expected.");
    }

    private static String named(List<HypothesisFit> fits) {
        // a single one more is named: its name is hardly longer than "one other"
        int named = fits.size() == MAX_NAMED + 1 ? fits.size() : MAX_NAMED;
        String causes = fits.stream().limit(named).map(FitDetails::name).collect(Collectors.joining("; "));
        return causes + (fits.size() > named ? "; and " + (fits.size() - named) + " others" : "");
    }

    /** Where causes are listed, the house without a fault is one of them. */
    private static String name(HypothesisFit fit) {
        return fit.cause() == Cause.AS_DESCRIBED ? "the house as described" : fit.inWords();
    }
}
