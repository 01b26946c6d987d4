package io.github.heatswell.assessment;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Unknown values of a description: assumed, given as a range, or never checked. A finding that rests on one says so. If it only
 * compares such values, it is a caution, unless it holds at both ends of every range.
 */
public final class Doubts {

    /**
     * A value of a description that nobody has read or measured.
     *
     * @param field the field, such as {@code relief[0].opens}
     * @param taken the value that stands in its place
     * @param range what it may be, such as {@code 6 bar to 10 bar}; empty if it is a usual value and no range is given
     * @param ends the lowest and the highest value it may have, as they would be written; empty if nobody knows
     */
    public record Doubt(String field, Statement taken, Optional<Statement> range, List<String> ends) {

        /**
         * Checks that everything is there and copies the list.
         *
         * @param field the field, such as {@code relief[0].opens}
         * @param taken the value that stands in its place
         * @param range what it may be; empty if it is a usual value and no range is given
         * @param ends the lowest and the highest value it may have, as they would be written; empty if nobody knows
         */
        public Doubt {
            Objects.requireNonNull(field, "field");
            Objects.requireNonNull(taken, "taken");
            Objects.requireNonNull(range, "range");
            ends = List.copyOf(Objects.requireNonNull(ends, "ends"));
        }

        /** A choice that is made because nobody has looked. */
        private static final Statement NOT_LOOKED_AT = Statement.plain("nobody has checked");

        /**
         * A choice that nobody has looked at.
         *
         * @param field the field, such as {@code supply.arrangement}
         * @param taken what is taken, such as {@code check-valve}
         * @return the doubt
         */
        public static Doubt ofChoice(String field, String taken) {
            return new Doubt(field, Statement.plain(taken), Optional.of(NOT_LOOKED_AT), List.of());
        }

        /** The value as a condition names it: {@code the supply pressure is 4.25 bar}. */
        Statement supposition() {
            return Statement.plain(name() + " is ").then(taken);
        }

        private String name() {
            return NamedValue.of(field).map(NamedValue::words).orElse(field);
        }

        /** The value as a sentence names it: {@code the supply pressure, taken as 4.25 bar (3 bar to 5.5 bar)}; of which valve, if told. */
        Statement words(String valve) {
            String name = valve.isEmpty() ? name() : name().replace("a relief valve", valve);
            if (range.isEmpty()) {
                return Statement.plain(name + ", assumed ").then(taken);
            }
            Statement known = Statement.plain(name + ", taken as ").then(taken);
            return range.get().equals(NOT_LOOKED_AT)
                    ? known
                    : known.then(" (").then(range.get()).then(")");
        }
    }

    /** Everything is known. */
    public static final Doubts NONE = new Doubts(List.of(), changes -> Optional.empty());

    /** A finding on more ranges than these is not looked at in all their corners, and taken to be open. */
    private static final int MAX_RANGES = 4;

    /** What stands behind an answer that rests on several values nobody knows. */
    public static final Statement AS_TAKEN = Statement.plain(", if the unknown values are as assumed");

    private static final Pattern OF_VALVE = Pattern.compile("relief\\[(\\d+)]");

    /** More values than these are not named behind an answer. */
    private static final int MAX_NAMED = 2;

    private final List<Doubt> all;
    private final Function<Map<String, String>, Optional<HotWaterSystem>> houses;

    private Doubts(List<Doubt> all, Function<Map<String, String>, Optional<HotWaterSystem>> houses) {
        this.all = List.copyOf(all);
        this.houses = houses;
    }

    /**
     * What is not known of a house.
     *
     * @param all the values
     * @param houses gives the house with other values, as they would be written, by their fields; empty if there is no such house
     * @return the doubts
     */
    public static Doubts of(List<Doubt> all, Function<Map<String, String>, Optional<HotWaterSystem>> houses) {
        return new Doubts(
                Objects.requireNonNull(all, "all").stream()
                        .filter(doubt -> NamedValue.of(doubt.field()).isPresent())
                        .toList(),
                Objects.requireNonNull(houses, "houses"));
    }

    /**
     * The same for a house in which some parts have been replaced by known ones.
     *
     * @param section the part, such as {@code vessel}
     * @return the doubts on all other parts
     */
    public Doubts without(String section) {
        return new Doubts(
                all.stream()
                        .filter(doubt ->
                                !doubt.field().equals(section) && !doubt.field().startsWith(section + "."))
                        .toList(),
                houses);
    }

    /**
     * The values given as a range that decide what a run comes to.
     *
     * @return a sentence such as {@code Not known: the supply pressure, taken as 4.25 bar (3 bar to 5.5 bar).}; empty if there is
     *     none
     */
    public Optional<Statement> sentence() {
        List<Doubt> ranges =
                all.stream().filter(doubt -> doubt.range().isPresent()).toList();
        return ranges.isEmpty()
                ? Optional.empty()
                : Optional.of(Statement.plain("Not known: ")
                        .then(list(ranges))
                        .then(". What follows assumes these values and may change with them."));
    }

    /**
     * The usual values that stand for what nobody has read or measured and that decide how far a heat-up drives the pressure.
     *
     * @return sentences that name them and say how to find them out; empty if there is none
     */
    public Optional<Statement> assumed() {
        List<Doubt> usual =
                of(Deciding.CUSHIONED).filter(doubt -> doubt.range().isEmpty()).toList();
        return usual.isEmpty()
                ? Optional.empty()
                : Optional.of(Statement.plain("This relies on values nobody has measured: ")
                        .then(list(usual))
                        .then(". A different value may change this answer. " + checks(usual)));
    }

    /**
     * A few words behind an answer that rests on values given as a range, or on a choice that nobody has looked at.
     *
     * @return such as {@code , if the supply pressure is 4.25 bar}; empty if nothing of the kind could change the answer
     */
    public Statement caveat() {
        List<Doubt> deciding =
                of(Deciding.ANSWER).filter(doubt -> doubt.range().isPresent()).toList();
        return deciding.size() > MAX_NAMED
                ? AS_TAKEN
                : deciding.isEmpty()
                        ? Statement.plain("")
                        : Statement.plain(", if ")
                                .then(Statement.joined(
                                        " and ",
                                        deciding.stream()
                                                .map(Doubt::supposition)
                                                .toList()));
    }

    boolean has(NamedValue value) {
        return of(Set.of(value)).findAny().isPresent();
    }

    private Stream<Doubt> of(Set<NamedValue> values) {
        return all.stream()
                .filter(doubt ->
                        NamedValue.of(doubt.field()).filter(values::contains).isPresent());
    }

    /** A finding as it stands once what it rests on has been looked at. */
    Finding weighed(CandidateFinding found) {
        Finding finding = found.finding();
        List<Doubt> doubts = of(found.inputs())
                .filter(doubt -> found.valve().isEmpty() || isOf(found.valve().get(), doubt))
                .toList();
        if (doubts.isEmpty()) {
            return finding;
        }
        Statement sentence = finding.sentence()
                .then(" Not confirmed on site: ")
                .then(list(doubts))
                .then(".");
        boolean decided = doubts.stream()
                .noneMatch(doubt -> NamedValue.of(doubt.field())
                        .filter(Doubts::isAnotherHouse)
                        .isPresent());
        boolean fault = finding.severity() == Severity.FAULT;
        boolean open = (found.compared() && finding.severity().compareTo(Severity.FAULT) <= 0 || !decided && fault)
                && !holdsThroughout(finding, doubts);
        return new Finding(
                finding.id(),
                open ? Severity.CAUTION : finding.severity(),
                sentence,
                finding.found(),
                finding.limit(),
                open ? finding.advice().after(checks(doubts) + " Go on only if that confirms it. ") : finding.advice(),
                finding.authority(),
                finding.askAuthority());
    }

    /** Whether a value belongs to the relief valve of a name, or to none. */
    private boolean isOf(String name, Doubt doubt) {
        return !OF_VALVE.matcher(doubt.field()).lookingAt()
                || houses.apply(Map.of())
                        .filter(house -> !valve(doubt.field(), house).equals("'" + name + "'"))
                        .isEmpty();
    }

    private Statement list(List<Doubt> doubts) {
        Optional<HotWaterSystem> house =
                houses.apply(Map.of()).filter(known -> known.reliefValves().size() > 1);
        return Statement.joined(
                "; ",
                doubts.stream()
                        .map(doubt -> doubt.words(
                                house.map(known -> valve(doubt.field(), known)).orElse("")))
                        .distinct()
                        .toList());
    }

    /** The name of the relief valve a field such as {@code relief[0].opens} is of, quoted; empty for any other field. */
    private static String valve(String field, HotWaterSystem house) {
        Matcher place = OF_VALVE.matcher(field);
        return place.lookingAt()
                ? "'"
                        + house.reliefValves()
                                .get(Integer.parseInt(place.group(1)))
                                .name() + "'"
                : "";
    }

    /** Another house, not another number: whatever a run shows, it stays open with these. */
    private static boolean isAnotherHouse(NamedValue value) {
        return value == NamedValue.ARRANGEMENT || value == NamedValue.VESSEL;
    }

    private static String checks(List<Doubt> doubts) {
        Set<String> checks = doubts.stream()
                .flatMap(doubt -> NamedValue.of(doubt.field()).stream())
                .map(NamedValue::check)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return String.join(". ", checks) + ".";
    }

    /** Whether the house has the finding whatever its values are within their ranges. */
    private boolean holdsThroughout(Finding finding, List<Doubt> doubts) {
        if (doubts.size() > MAX_RANGES
                || doubts.stream().anyMatch(doubt -> doubt.ends().isEmpty())) {
            return false;
        }
        return corners(doubts).stream()
                .allMatch(corner -> houses.apply(corner)
                        .filter(house -> Findings.of(house).stream()
                                .anyMatch(other -> other.id().equals(finding.id())
                                        && other.severity().compareTo(finding.severity()) <= 0))
                        .isPresent());
    }

    private static List<Map<String, String>> corners(List<Doubt> doubts) {
        List<Map<String, String>> corners = List.of(Map.of());
        for (Doubt doubt : doubts) {
            List<Map<String, String>> more = new ArrayList<>();
            for (Map<String, String> corner : corners) {
                for (String end : doubt.ends()) {
                    Map<String, String> next = new LinkedHashMap<>(corner);
                    next.put(doubt.field(), end);
                    more.add(next);
                }
            }
            corners = more;
        }
        return corners;
    }
}
