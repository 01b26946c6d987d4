package io.github.heatswell.scenarios.readings;

import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.Sighting;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.diagnosis.SpotReading;
import io.github.heatswell.diagnosis.SpotReadings;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.TemperatureUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The notes beside the readings of a log, and what follows from them. */
final class LogNotes {

    /** So many notes are repeated in the answer. */
    private static final int MAX_REPEATED = 12;
    /** So many notes are kept that say something. */
    private static final int MAX_KEPT = 200;
    /** What begins by the clock on a wall began within so much time (s) before. */
    private static final double MINUTE = 60;

    private static final double DAY = 86_400;
    /** A tyre gauge that is this close (Pa) to the gauge of the water reads that; our own judgement. */
    private static final double SAME_PRESSURE = 0.15e5;

    /** A tap so hot (K) tells of the tank whenever it was read; our own judgement. */
    private static final double HOT = TemperatureUnit.CELSIUS.toSi(75);

    private final List<Note> notes = new ArrayList<>();
    private final List<String> others = new ArrayList<>();
    private final List<String> doubts = new ArrayList<>();
    private final List<String> waiting = new ArrayList<>();
    private final List<Double> drawn = new ArrayList<>();
    private boolean drawnSince;
    private double lastReading = Double.NaN;
    private long more;

    /**
     * A note that says something.
     *
     * @param before the last reading before it (s), or when it began
     * @param time when it was made (s)
     * @param clock its time as it was written, possibly empty
     * @param words what it says
     * @param seen what was seen, possibly nothing
     * @param spots what was read of vessel and tap, possibly nothing
     */
    private record Note(
            double before, double time, String clock, String words, List<SeenNote> seen, List<SpotNote> spots) {

        /** How it was taken, if as more than a note of water use. */
        String taken() {
            return Stream.concat(
                            seen.stream().map(one -> one.seen().words()),
                            spots.stream().map(SpotNote::words))
                    .collect(Collectors.joining(", "));
        }

        /** The same without something that is not used of it. */
        private Note without(SpotNote unused) {
            return new Note(
                    before,
                    time,
                    clock,
                    words,
                    seen,
                    spots.stream().filter(one -> one != unused).toList());
        }

        /** Whether it says that no water was drawn. */
        boolean saysNothingDrawn() {
            return DrawNote.of(words) == DrawNote.NOTHING_DRAWN;
        }

        String label() {
            return (clock.isEmpty() ? "" : clock + " ") + Printable.quote(words);
        }
    }

    /** Whether words say anything that counts. */
    static boolean saySomething(String words) {
        return DrawNote.of(words) != DrawNote.NONE
                || !SeenNote.of(words).isEmpty()
                || !SpotNote.of(words).isEmpty();
    }

    /** What words say that counts, in words. */
    static String meaning(String words) {
        String draw = switch (DrawNote.of(words)) {
            case NONE -> "";
            case BEFORE_THE_READING -> "water was drawn since the line before";
            case AFTER_THE_READING -> "water is drawn before the next line";
            case NOTHING_DRAWN -> "no water was drawn";
        };
        String all = Stream.of(
                        Stream.of(draw),
                        SeenNote.of(words).stream().map(one -> one.seen().words()),
                        SpotNote.of(words).stream().map(SpotNote::words))
                .flatMap(one -> one)
                .filter(one -> !one.isEmpty())
                .collect(Collectors.joining(", "));
        return all.isEmpty() ? "a note that does not affect the answer" : all;
    }

    /** A note without a time: of some time between the last reading and the next. */
    void untimed(String words) {
        drawnSince |= isDrawn(words);
        waiting.add(words);
    }

    /** A note with a time of its own (s), beside no reading. */
    void alone(double time, String label, String words) {
        drawnSince |= isDrawn(words);
        keep(Math.max(time - MINUTE, Double.isNaN(lastReading) ? time - MINUTE : lastReading), time, label, words);
    }

    private static boolean isDrawn(String words) {
        DrawNote draw = DrawNote.of(words);
        return draw == DrawNote.BEFORE_THE_READING || draw == DrawNote.AFTER_THE_READING;
    }

    /** Whether a reading (s) is one before which notes have water drawn. */
    boolean tellOfDraw(double time) {
        return drawn.stream().anyMatch(one -> Math.abs(one - time) < 1);
    }

    /** A reading (s), with a note or an empty one. */
    void reading(double time, String label, String words) {
        double before = Double.isNaN(lastReading) ? time : lastReading;
        waiting.forEach(one -> keep(before, time, "", one));
        waiting.clear();
        DrawNote draw = words.isEmpty() ? DrawNote.NONE : DrawNote.of(words);
        if (drawnSince || draw == DrawNote.BEFORE_THE_READING) {
            drawn.add(time);
        }
        drawnSince = draw == DrawNote.AFTER_THE_READING;
        if (!words.isEmpty()) {
            keep(before, time, label, words);
        }
        lastReading = time;
    }

    private void keep(double before, double time, String label, String words) {
        List<SeenNote> seen = SeenNote.of(words);
        String clock = label.replaceFirst("(:\\d\\d):00$", "$1");
        List<SpotNote> spots = SpotNote.of(words);
        Note note = new Note(before, time, clock, words, seen, spots);
        if (SpotNote.tellsOfSpitting(words)) {
            doubts.add(note.label()
                    + " may mean air or steam. Hold a thermometer, not a hand, under the hot tap: if the water is"
                    + " hotter than the thermostat is set to, turn the heater off and have it looked at.");
        }
        if (seen.isEmpty() && spots.isEmpty() && DrawNote.of(words) == DrawNote.NONE) {
            more += others.size() < MAX_REPEATED ? 0 : 1;
            if (others.size() < MAX_REPEATED) {
                others.add(note.label());
            }
        } else if (notes.size() < MAX_KEPT) {
            notes.add(note);
        }
    }

    /** A log whose first reading was at a time (s), with what its notes say. */
    PressureLog in(PressureLog log, double first) {
        waiting.forEach(one -> keep(lastReading, lastReading, "", one));
        waiting.clear();
        boolean[] marks = new boolean[log.count()];
        for (double time : drawn) {
            int i = 0;
            while (i < marks.length - 1 && log.time(i) < time - first) {
                i++;
            }
            marks[i] = true;
        }
        return log.drawn(marks).seen(sightings(first, log.timeOfDay()));
    }

    /** What was read of vessel and tap, with what is not used of it. */
    SpotReadings spots(PressureLog log, double first) {
        SpotReadings spots = SpotReadings.none();
        int highest = 0;
        for (int i = 1; i < log.count(); i++) {
            highest = log.gauge(i) > log.gauge(highest) ? i : highest;
        }
        for (Note note : List.copyOf(notes)) {
            for (SpotNote one : note.spots) {
                boolean tap = one.check() == SiteCheck.HOT_TAP;
                SpotReading before = spots.all().get(one.check());
                if (tap && one.value() < HOT && note.time - first < log.time(highest)) {
                    doubts.add(note.label() + " counts only once the tank has heated up: read the tap again then.");
                    notes.replaceAll(kept -> kept == note ? kept.without(one) : kept);
                } else if (one.check() == SiteCheck.TYRE_GAUGE && isOfWater(one.value(), log, note.time - first)) {
                    doubts.add(note.label()
                            + " is what the water's own gauge reads: with water under pressure in the vessel, a tyre gauge shows"
                            + " that pressure, not the precharge. It was not used; read again with the water side relieved"
                            + " and empty.");
                    notes.replaceAll(kept -> kept == note ? kept.without(one) : kept);
                } else if (!tap || before == null || before.value() < one.value()) {
                    spots = spots.with(one.check(), one.value());
                }
            }
        }
        return spots;
    }

    /** Whether the gauge of the water shows about as much at that time (s of the log). */
    private static boolean isOfWater(double pascal, PressureLog log, double time) {
        int i = 0;
        while (i < log.count() - 1 && log.time(i + 1) <= time) {
            i++;
        }
        return Math.abs(log.gauge(i) - pascal) < SAME_PRESSURE;
    }

    /** What was noted and is not used, in whole sentences. */
    List<String> doubts() {
        return doubts;
    }

    /** The time in which a note says that no water was drawn: the hours that it names, else since the reading before. */
    private static Sighting shut(Note note, double time, double before, OptionalDouble timeOfDay) {
        Optional<double[]> hours = timeOfDay.isPresent() ? DrawNote.hours(note.words) : Optional.empty();
        if (hours.isEmpty()) {
            return Sighting.of(Sighting.Kind.TAPS_SHUT, Math.min(before, time), time);
        }
        // of the days that the log is of, the one whose hours end last before the note; else the next
        double length = (hours.get()[1] - hours.get()[0] + DAY) % DAY;
        double until = hours.get()[1] - timeOfDay.getAsDouble();
        until += DAY * Math.max(Math.floor((time - until) / DAY), until < 0 ? 1 : 0);
        return Sighting.of(Sighting.Kind.TAPS_SHUT, until - length, until);
    }

    private List<Sighting> sightings(double first, OptionalDouble timeOfDay) {
        List<Sighting> all = new ArrayList<>();
        double paper = Double.NaN;
        double jug = 0;
        for (Note note : notes) {
            double time = note.time - first;
            double before = note.before - first;
            if (note.saysNothingDrawn()) {
                all.add(shut(note, time, before, timeOfDay));
            }
            for (SeenNote one : note.seen) {
                double laid = Double.isNaN(paper) ? before : paper;
                switch (one.seen()) {
                    case DRIPS -> all.add(Sighting.of(Sighting.Kind.DRIPS, time, time));
                    case DRY -> all.add(Sighting.of(Sighting.Kind.DRY, time, time));
                    case ON -> all.add(Sighting.of(Sighting.Kind.HEATER_ON, time, time));
                    case OFF -> all.add(Sighting.of(Sighting.Kind.HEATER_OFF, time, time));
                    case CAME_ON -> change(all, Sighting.Kind.HEATER_OFF, Sighting.Kind.HEATER_ON, before, time);
                    case WENT_OFF -> change(all, Sighting.Kind.HEATER_ON, Sighting.Kind.HEATER_OFF, before, time);
                    case PAPER_WET -> all.add(Sighting.of(Sighting.Kind.DRIPS, laid, time));
                    case PAPER_DRY -> all.add(Sighting.of(Sighting.Kind.DRY, laid, time));
                    case CAUGHT -> {
                        all.add(new Sighting(Sighting.Kind.CAUGHT, Math.min(jug, time), time, one.volume()));
                        jug = time;
                    }
                }
                boolean ofPaper = one.seen() == SeenNote.Seen.PAPER_WET || one.seen() == SeenNote.Seen.PAPER_DRY;
                paper = ofPaper ? time : paper;
            }
        }
        return all;
    }

    private static void change(List<Sighting> all, Sighting.Kind from, Sighting.Kind to, double before, double time) {
        if (before < time) {
            all.add(Sighting.of(from, before, before));
        }
        all.add(Sighting.of(to, time, time));
    }

    /** How the notes were understood, in whole sentences; nothing if there are none. */
    Stream<String> understood() {
        return Stream.of(
                        said(
                                "Your notes of water use, taken as water drawn between two readings: ",
                                notes.stream()
                                        .filter(note -> note.taken().isEmpty() && isDrawn(note.words))
                                        .map(Note::label)
                                        .toList(),
                                0),
                        said(
                                "Your notes that no water was drawn, so that no draw explains what the gauge did then: ",
                                notes.stream()
                                        .filter(Note::saysNothingDrawn)
                                        .map(Note::label)
                                        .toList(),
                                0),
                        said(
                                "Your notes on heater, relief pipe, vessel and tap, checked against every cause: ",
                                taken(),
                                0),
                        said(
                                "Your " + (notes.isEmpty() ? "" : "other ") + "notes, which do not affect the answer: ",
                                others,
                                more))
                .filter(one -> !one.isEmpty());
    }

    /** The notes that count, with how each was taken; those alike together. */
    private List<String> taken() {
        Map<String, List<Note>> alike = new LinkedHashMap<>();
        notes.stream()
                .filter(note -> !note.taken().isEmpty())
                .forEach(note -> alike.computeIfAbsent(note.words, any -> new ArrayList<>())
                        .add(note));
        return alike.values().stream()
                .map(all -> all.stream()
                                .limit(all.size() - 1L)
                                .map(Note::clock)
                                .filter(clock -> !clock.isEmpty())
                                .map(clock -> clock + ", ")
                                .collect(Collectors.joining())
                        + all.get(all.size() - 1).label() + " ("
                        + all.get(0).taken()
                        + ")")
                .toList();
    }

    private static String said(String about, List<String> all, long more) {
        List<String> shown = all.subList(0, Math.min(MAX_REPEATED, all.size()));
        long left = all.size() - shown.size() + more;
        return all.isEmpty() ? "" : about + String.join("; ", shown) + (left > 0 ? "; and " + left + " more." : ".");
    }
}
