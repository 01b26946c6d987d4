package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.Node.Entry;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.document.Node.Scalar;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.scenarios.file.Section.Place;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.quantity.Uncertain;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.system.InvalidDescriptionException;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Binds the keys of one section to its builder, one by one. A value that is missing or wrong is noted and replaced by a
 * sound one, so that the rest of the file can still be checked; a file with faults never becomes a scenario.
 *
 * @param <B> the builder
 * @param <T> the thing described
 */
final class SectionBinder<B, T> {

    /** The range of a pressure as its builder tells it. */
    private static final Pattern IN_BAR =
            Pattern.compile("\\S+ bar is outside the allowed range, (above )?(\\S+) bar to (\\S+) bar");

    /** What a builder calls the field, in front of what is wrong with it. */
    private static final Pattern PROPERTY = Pattern.compile("^[a-z][A-Za-z]*: ");

    private final Section<B, T> section;
    private final Place place;
    private final Map<String, Node> written;
    private final BindingState findings;
    private final B target;
    private final Map<String, String> given = new HashMap<>();
    private final List<BoundSection.Step<B>> steps = new ArrayList<>();

    /**
     * Prepares to bind.
     *
     * @param section the section
     * @param place where it stands
     * @param written its keys and values, known keys only
     * @param findings notes faults and assumptions
     */
    SectionBinder(Section<B, T> section, Place place, Map<String, Node> written, BindingState findings) {
        this.section = section;
        this.place = place;
        this.written = written;
        this.findings = findings;
        this.target = section.start().get();
    }

    /** A binder of a part of a file that should have keys of its own. */
    static <B, T> SectionBinder<B, T> of(Section<B, T> section, Place place, Node node, BindingState findings) {
        return new SectionBinder<>(section, place, keys(section, place, node, findings), findings);
    }

    private static Map<String, Node> keys(Section<?, ?> section, Place place, Node node, BindingState findings) {
        if (node instanceof Mapping mapping) {
            return known(mapping, section.keys(), place, findings);
        }
        findings.wrong(
                place.path(),
                place.at(),
                "needs keys and values, not " + node.kind() + "; its keys are " + String.join(", ", section.keys()));
        return Map.of();
    }

    /** What the items of a list describe; nothing if there are more of them than there may be. */
    static <T> List<BoundSection<?, T>> list(
            Section<?, T> section, int most, Place place, Items items, BindingState findings) {
        int number = items.items().size();
        if (number > most) {
            findings.wrong(place.path(), place.at(), "has " + number + " items; up to " + most + " are allowed");
            return List.of();
        }
        List<BoundSection<?, T>> things = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            Node item = items.items().get(i);
            Place part = new Place(place.path() + "[" + i + "]", item.at());
            findings.stands(part.path(), item.at());
            things.add(of(section, part, item, findings).bind());
        }
        requireDistinctNames(things, findings);
        return things;
    }

    /** Results tell things apart by their names; what has no name, or none that was understood, is let off. */
    private static <T> void requireDistinctNames(List<BoundSection<?, T>> things, BindingState findings) {
        Map<String, String> seen = new HashMap<>();
        for (BoundSection<?, T> thing : things) {
            String name = thing.given().get("name");
            String first =
                    name == null ? null : seen.putIfAbsent(name, thing.place().path());
            if (first != null) {
                String path = thing.place().of("name");
                findings.wrong(
                        path,
                        findings.place(path),
                        "'" + name + "' is the name of " + first
                                + " too; every valve needs its own name in the results");
            }
        }
    }

    /** Binds every key and ends the builder; if it cannot be ended, the section's example takes its place. */
    BoundSection<B, T> bind() {
        section.fields().forEach(this::bind);
        return new BoundSection<>(section, place, end(), given, steps);
    }

    private T end() {
        try {
            return section.end().apply(target);
        } catch (InvalidDescriptionException e) {
            return standIn(e.problems());
        }
    }

    private T standIn(List<InvalidDescriptionException.Problem> problems) {
        problems.forEach(this::note);
        findings.unsound(place.path());
        return section.example();
    }

    private void bind(Field<B> field) {
        String path = place.of(field.key());
        Optional<String> excluded = field.excludedBy(present());
        Node node = written.get(field.key());
        if (field.isPart()
                && (node != null
                        || field.required() && !field.nested().orElseThrow().list())) {
            takeParts(field, path, field.nested().orElseThrow(), Optional.ofNullable(node));
            return;
        }
        if (node != null && excluded.isPresent()) {
            findings.wrong(path, findings.place(path), excluded.get());
        } else if (node != null) {
            bindWritten(field, path, node);
        } else if (excluded.isEmpty() && !findings.isUnsound(path)) {
            fillIn(field, path);
        }
        if (excluded.isEmpty() && findings.isUnsound(path) && !field.isPart() && othersNeed(field)) {
            field.bindExample(target);
        }
    }

    /** Whether the section cannot be completed without the field, or other keys were left out for its sake. */
    private boolean othersNeed(Field<B> field) {
        return field.required() || section.fields().stream().anyMatch(other -> other.givesWayTo(field.key()));
    }

    private void bindWritten(Field<B> field, String path, Node node) {
        Optional<Nested<B, ?>> nested = field.nested().filter(parts -> parts.fits(node));
        if (nested.isPresent()) {
            takeParts(field, path, nested.get(), Optional.of(node));
        } else if (field.form().isPresent()
                && node instanceof Scalar scalar
                && !scalar.text().isEmpty()) {
            take(field, field.form().get(), path, scalar.text(), scalar.at(), "");
        } else {
            findings.wrong(
                    path,
                    findings.place(path),
                    field.nested()
                            .filter(Nested::list)
                            .flatMap(list -> Nested.itemNamed(path, node))
                            .orElseGet(() -> "needs " + field.shapes() + ", not " + node.kind()
                                    + "; write, for example, '" + sample(field) + "'"));
        }
    }

    private <I> void takeParts(Field<B> field, String path, Nested<B, I> nested, Optional<Node> node) {
        try {
            nested.bind(target, node, new Place(path, findings.place(path)), findings)
                    .ifPresent(parts -> steps.add(BoundSection.Step.inner(field.key(), nested, parts)));
            given.put(field.key(), "");
        } catch (IllegalArgumentException e) {
            findings.wrong(path, findings.place(path), complaint(field, "", e.getMessage()));
        }
    }

    private void fillIn(Field<B> field, String path) {
        if (!field.neededBeside(present())) {
            return;
        }
        Optional<Typical> typical = field.typical();
        if (typical.isEmpty()) {
            missing(field, path);
        } else if (typical.get().needs().stream().anyMatch(key -> findings.isUnsound(place.of(key)))) {
            findings.unsound(path);
        } else {
            typical.get().needs().stream()
                    .filter(key -> key.contains("."))
                    .forEach(key -> findings.written(key).ifPresent(value -> given.put(key, value)));
            Optional<String> text = typical.get().text(given);
            text.ifPresentOrElse(value -> assume(field, path, value, typical.get()), () -> missing(field, path));
        }
    }

    /** Every key that stands there, also if its value is no good, with the values known so far. */
    private Map<String, String> present() {
        Map<String, String> present = new HashMap<>();
        written.keySet().forEach(key -> present.put(key, ""));
        present.putAll(given);
        return present;
    }

    private void assume(Field<B> field, String path, String value, Typical typical) {
        findings.assume(path, value, typical);
        Optional<Form<B>> form = field.assumed();
        String remark = " (assumed, because the file does not give it)";
        if (form.isPresent() && take(field, form.get(), path, value, place.at(), remark) && follows(typical)) {
            steps.set(steps.size() - 1, BoundSection.Step.derived(field.key(), form.get(), typical));
        }
    }

    /** Whether a typical value follows from an uncertain one. */
    private boolean follows(Typical typical) {
        return steps.stream().anyMatch(step -> step.varies() && typical.needs().contains(step.key()));
    }

    /** Hands a value to the builder, or notes what is wrong with it; returns whether it is sound. */
    private boolean take(Field<B> field, Form<B> form, String path, String text, Location at, String remark) {
        try {
            given.put(field.key(), bound(field.key(), form, path, text));
            return true;
        } catch (IllegalArgumentException e) {
            findings.wrong(path, at, complaint(field, text, e.getMessage()) + remark);
            return false;
        }
    }

    /** Hands a value to the builder and returns it; of an uncertain one the best estimate, after both ends were tried. */
    private String bound(String key, Form<B> form, String path, String text) {
        Optional<Uncertain> uncertain = form.kind().flatMap(kind -> Uncertain.read(text, kind));
        if (uncertain.isEmpty()) {
            Consumer<B> setter = form.read(text);
            setter.accept(target);
            steps.add(BoundSection.Step.fixed(key, setter));
            return text;
        }
        if (path.startsWith("run.")) {
            throw new IllegalArgumentException("is a choice of words and cannot be uncertain; write one value");
        }
        UncertainField spread = UncertainField.of(path, text, uncertain.get());
        form.bind(target, spread.low());
        form.bind(target, spread.high());
        form.bind(target, uncertain.get().centre());
        steps.add(BoundSection.Step.uncertain(key, form, spread, findings.uncertain(spread)));
        return uncertain.get().centre();
    }

    private void missing(Field<B> field, String path) {
        findings.wrong(
                path,
                place.at(),
                place.at().inText()
                        ? "is missing; write, for example, '" + sample(field) + "'"
                        : "is missing; give it too, on the command line such as --set '" + path + "="
                                + inUnitsOfChange(offered(field)) + "'");
    }

    /** The field's example; but a precharge follows the supply of this house. */
    private String offered(Field<B> field) {
        return Optional.of(field.key())
                .filter(NamedValue.PRECHARGE.key()::equals)
                .flatMap(key -> Stream.of("supply.reducing-valve.set", "supply.pressure")
                        .filter(supply -> !findings.isUnsound(supply))
                        .flatMap(supply -> findings.written(supply).stream())
                        .findFirst())
                .map(supply -> Uncertain.read(supply, Kind.PRESSURE)
                        .map(Uncertain::centre)
                        .orElse(supply))
                .orElseGet(field::example);
    }

    /** An example in the units of what a change brought with it. */
    private String inUnitsOfChange(String example) {
        boolean us = written.values().stream()
                .filter(Scalar.class::isInstance)
                .flatMap(node -> QuantityReader.units(((Scalar) node).text()).stream())
                .anyMatch(unit -> unit == VolumeUnit.US_GALLON || unit == PressureUnit.PSI);
        List<Unit> unit = QuantityReader.units(example);
        if (us && unit.equals(List.of(PressureUnit.BAR))) {
            return round(
                    PressureUnit.PSI.fromSi(QuantityReader.pressure(example).gauge(0)), 5, PressureUnit.PSI);
        }
        if (us && unit.equals(List.of(VolumeUnit.LITRE))) {
            double litres = QuantityReader.read(example, Kind.VOLUME).value();
            return round(VolumeUnit.US_GALLON.fromSi(VolumeUnit.LITRE.toSi(litres)), 0.5, VolumeUnit.US_GALLON);
        }
        return example;
    }

    /** A number as people would give it, such as {@code 60 psi}: a multiple of a step, and never none. */
    private static String round(double number, double step, Unit unit) {
        return QuantityFormat.ascii(UnitSystem.US).given(step * Math.max(1, Math.round(number / step)), unit, 4);
    }

    private static String sample(Field<?> field) {
        return field.key() + ": " + field.example();
    }

    /** The builder's message without the field it begins with, and with the value as written if it shows another. */
    private static String complaint(Field<?> field, String text, String message) {
        String bare = inUnitOf(text, bare(message));
        boolean converted = bare.contains("allowed range") && !unspaced(bare).contains(unspaced(text));
        return converted ? bare + " (written as " + text.strip().replaceAll("\\s+", " ") + ")" : bare;
    }

    /** What a builder says of a pressure, which keeps no unit, in the unit of the text. */
    private static String inUnitOf(String text, String bare) {
        List<Unit> units = QuantityReader.units(text);
        Matcher range = IN_BAR.matcher(bare);
        if (!range.matches() || units.size() != 1 || units.get(0) == PressureUnit.BAR) {
            return bare;
        }
        Limits limits = new Limits("", bar(range.group(2)), range.group(1) == null, bar(range.group(3)));
        Unit unit = units.get(0);
        return limits.complaint(unit.fromSi(QuantityReader.pressure(text).value()), unit);
    }

    private static double bar(String number) {
        return PressureUnit.BAR.toSi(Double.parseDouble(number));
    }

    /** A builder's message without its own name of the field, with which it begins. */
    static String bare(String message) {
        return PROPERTY.matcher(message).replaceFirst("");
    }

    private static String unspaced(String text) {
        return text.replaceAll("\\s+", "").toLowerCase(Locale.ROOT);
    }

    private void note(InvalidDescriptionException.Problem problem) {
        findings.note(new InvalidDescriptionException.Problem(place.of(problem.field()), problem.message()));
    }

    /** The known keys with their values; every other key is noted as a fault. */
    private static Map<String, Node> known(Mapping mapping, List<String> known, Place place, BindingState findings) {
        Map<String, Node> found = new LinkedHashMap<>();
        for (Entry entry : mapping.entries()) {
            String key = key(entry);
            if (known.contains(key)) {
                found.put(key, entry.value());
                findings.stands(place.of(key), position(entry));
            }
        }
        for (Entry entry : mapping.entries()) {
            if (!known.contains(key(entry)) && findings.crowded()) {
                findings.oneMore();
            } else if (!known.contains(key(entry))) {
                Optional<String> meant = Nearest.to(key(entry), known);
                unknown(entry.key(), meant, known, place, findings);
                // What was meant is then not missing as well.
                meant.filter(near -> !found.containsKey(near)).ifPresent(near -> findings.unsound(place.of(near)));
            }
        }
        return found;
    }

    /** A value is pointed at itself; a section by its key, below which it may begin lines later. */
    private static Location position(Entry entry) {
        return entry.value() instanceof Scalar scalar && !scalar.text().isEmpty()
                ? scalar.at()
                : entry.key().at();
    }

    private static void unknown(
            Scalar key, Optional<String> meant, List<String> known, Place place, BindingState findings) {
        findings.wrong(
                place.of(Printable.line(shortened(key.text()))), key.at(), explanation(key.text(), meant, known));
    }

    private static String explanation(String key, Optional<String> meant, List<String> known) {
        if (key.indexOf(':') > 0) {
            return "is not a key; put a space after the colon";
        }
        return "is not a known key here; "
                + meant.map(near -> "did you mean " + near + "?")
                        .orElse("the known keys are " + String.join(", ", known));
    }

    private static String shortened(String key) {
        return key.length() > 40 ? key.substring(0, 40) + "..." : key;
    }

    private static String key(Entry entry) {
        return entry.key().text();
    }
}
