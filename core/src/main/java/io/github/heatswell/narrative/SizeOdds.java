package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.share;
import static io.github.heatswell.assessment.Measure.volume;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.study.SizeCertainty;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.system.NamedValue;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** How sure the size of a vessel is: in how many sampled houses it is enough, and what would make it surer. */
final class SizeOdds {

    private static final Statement THRESHOLD =
            plain("A size is recommended if it is enough in at least 90 % of them with that confidence.");

    private final SizingResult sizing;
    private final Optional<SizeCertainty> certainty;
    private final boolean several;

    SizeOdds(SizingResult sizing, Optional<SizeCertainty> certainty, boolean several) {
        this.sizing = sizing;
        this.certainty = certainty;
        this.several = several;
    }

    Statement between(double least, OptionalDouble most) {
        if (most.isPresent() && most.getAsDouble() == least) {
            return plain("").then(volume(least));
        }
        return most.isPresent()
                ? plain("between ").then(volume(least)).then(" and ").then(volume(most.getAsDouble()))
                : plain("anything from ")
                        .then(volume(least))
                        .then(" to more than ")
                        .then(volume(sizing.largest()))
                        .then(", the largest on the list");
    }

    Statement decides(SizeCertainty.Range range, SizeCertainty.Reading reading) {
        String check = reading.value().map(value -> value.check() + " first: ").orElse("Find this out first: ");
        String name = reading.value().map(NamedValue::words).orElse("the " + reading.name());
        boolean narrows = reading.least() != range.least() || !reading.most().equals(range.most());
        return narrows
                ? plain(check + name + " decides. If it is what this answer assumes, ")
                        .then(between(reading.least(), reading.most()))
                        .then(" is needed. Then size again.")
                : plain(check + name + " counts most, though no single reading decides. Then size again.");
    }

    /** In how many houses the limit is kept with what is recommended. */
    List<Statement> holds() {
        return certainty.flatMap(SizeCertainty::advised).stream()
                .flatMap(advised -> Stream.concat(
                        Stream.of(
                                plain("That" + held(advised) + houses())
                                        .then(bound(advised.above()))
                                        .then("."),
                                THRESHOLD),
                        missedByOne(advised).stream()))
                .toList();
    }

    /** The next smaller size, where a single house keeps it from being recommended. */
    private Optional<Statement> missedByOne(SizeCertainty.Tried advised) {
        List<SizeCertainty.Tried> tried = certainty.orElseThrow().tried();
        int before = tried.indexOf(advised) - 1;
        if (before < 0 || tried.get(before).volume() == 0) {
            return Optional.empty();
        }
        StudyResult.Share above = tried.get(before).above();
        StudyResult.Share oneLess = new StudyResult.Share(above.count() - 1, above.of());
        int held = above.of() - above.count();
        return new SizeCertainty.Tried(0, oneLess).holds()
                ? Optional.of(plain("The next smaller size, ")
                        .then(volume(tried.get(before).volume()))
                        .then(", misses that by one house: it is enough in " + held + ", and " + (held + 1)
                                + " are needed."))
                : Optional.empty();
    }

    /** How far all of the samples may be from all of the houses; a bound that is called "at least" is never rounded up. */
    private static Statement bound(StudyResult.Share above) {
        return plain("; with 95 % confidence, in at least ")
                .then(share(Math.floor(100 * (1 - above.atMost()) + 1e-9) / 100))
                .then(" of such houses");
    }

    static String held(SizeCertainty.Tried tried) {
        int of = tried.above().of();
        return " is enough in "
                + inWords(new StudyResult.Share(of - tried.above().count(), of));
    }

    /** In how many houses it is not kept with what the best estimates call for. */
    Optional<Statement> fails(String in) {
        return certainty
                .map(found -> found.bare().above())
                .map(above -> plain(
                        in + inWords(above) + houses() + " the pressure goes above that limit" + opening() + "."));
    }

    /** In how many of these houses a relief valve lets a drop out, which is what an owner sees; empty where nobody looked. */
    String opening() {
        return certainty
                .flatMap(SizeCertainty::opening)
                .map(opening -> opening.count() == 0
                        ? ", though no relief valve opens in any of them"
                        : ", and in " + opening.count() + " a relief valve opens")
                .orElse("");
    }

    String houses() {
        // without any vessel there is no charge to lose
        String loss = sizing.outcome() == SizingResult.Outcome.NONE_NEEDED && !several
                ? ")"
                : ", until a year after charging)";
        return (certainty.filter(SizeCertainty::usual).isPresent()
                        ? " (values varied by the usual tolerances"
                        : " (values varied within their ranges")
                + loss;
    }

    private static String inWords(StudyResult.Share share) {
        return (share.count() == share.of() ? "all " : share.count() + " of ") + share.of() + " sampled houses";
    }

    /** Whether more than one in ten houses within what is uncertain goes above the limit. */
    boolean doubtful() {
        return certainty.filter(found -> !found.bare().holds()).isPresent();
    }
}
