package io.github.heatswell.scenarios.interview;

import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.file.Origin;
import io.github.heatswell.scenarios.interview.Answers.Answer;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.Uncertain;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.units.UnitSystem;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Writes answers down as a scenario file, with a comment on every line. */
final class ScenarioText {

    private static final String INDENT = "  ";
    /** By the question, the choice of the file that is only taken while it is not answered. */
    private static final Map<String, String> NOT_KNOWN = new TreeMap<>(Map.of(
            SupplyQuestions.ARRANGEMENT, NamedValue.ARRANGEMENT.field(),
            TankQuestions.MATERIAL, NamedValue.MATERIAL.field(),
            TankQuestions.ENERGY, NamedValue.ENERGY.field(),
            ReliefQuestions.OPENS_AT, NamedValue.SET_TEMPERATURE.field(),
            ReliefQuestions.OTHER_OPENS_AT, NamedValue.SET_TEMPERATURE.field(),
            ReliefQuestions.PRESENT, NamedValue.VESSEL.field()));

    /** Questions that say nothing about the house. */
    private static final Set<String> ABOUT = Set.of(SupplyQuestions.TITLE, UseQuestions.DRIP);

    /** The fields of questions that have none of their own name. */
    private static final Map<String, String> OTHER_FIELD = Map.of(
            SupplyQuestions.NIGHT, SupplyQuestions.PRESSURE,
            ReliefQuestions.OTHER_OPENS, ReliefQuestions.OPENS,
            ReliefQuestions.OTHER_OPENS_AT, ReliefQuestions.OPENS_AT,
            ReliefQuestions.PRESENT, NamedValue.VESSEL.field());

    private static final String EXPANSION_VALVE = "expansion valve";

    private static final List<String> SECTIONS = List.of("site", "supply", "tank", "heater", "relief", "vessel");

    private final Answers answers;
    private final Lines lines;
    private final List<Lines.Line> all;
    private final StringBuilder text = new StringBuilder();

    private ScenarioText(Answers answers, Lines lines) {
        this.answers = answers;
        this.lines = lines;
        this.all = lines.all();
    }

    /**
     * The file for some answers.
     *
     * @param answers any answers; what they leave open is missing in the file
     * @param units in which ranges are given
     */
    static String of(Answers answers, UnitSystem units) {
        return of(answers, units, Reach.AS_WRITTEN);
    }

    /** The same, with certain values in place of the uncertain ones. */
    static String of(Answers answers, UnitSystem units, Reach reach) {
        return new ScenarioText(answers, new Lines(answers, units, reach)).write();
    }

    private String write() {
        top();
        for (String section : SECTIONS) {
            section(section);
        }
        use();
        return text.toString();
    }

    private void top() {
        List<String> notKnown = NOT_KNOWN.entrySet().stream()
                .filter(entry -> answers.to(Questions.named(entry.getKey()))
                        .filter(answer -> !answer.known())
                        .isPresent())
                .map(Map.Entry::getValue)
                .distinct()
                .toList();
        if (!notKnown.isEmpty()) {
            comment("", "Nobody has checked these: what is said about them below is an assumption.");
            text.append("not-known: ").append(String.join(", ", notKnown)).append('\n');
        }
        origins();
        line(SupplyQuestions.TITLE).ifPresent(line -> {
            comment("", "Title of the results: " + line.comment() + ".");
            text.append("title: ").append(quoted(line.value())).append('\n');
        });
        Question drip = Questions.named(UseQuestions.DRIP);
        answers.to(drip).ifPresent(answer -> {
            comment("", answer.known() ? "What the owner sees: as answered." : "Not known whether it drips.");
            text.append("question: >-\n").append(Wrapped.lines(question(answer), INDENT, INDENT));
        });
    }

    /** What the comments say of where values come from, for the reports. */
    private void origins() {
        Map<Origin, Set<String>> fields = new EnumMap<>(Origin.class);
        all.stream()
                .filter(Lines.Line::given)
                .filter(line -> line.origin() != Origin.TYPICAL || !NOT_KNOWN.containsKey(line.path()))
                .filter(line -> !ABOUT.contains(line.path()))
                .filter(line -> !line.value().equals(Place.NOT_KNOWN.key()))
                .forEach(line -> fields.computeIfAbsent(line.origin(), kind -> new LinkedHashSet<>())
                        .add(OTHER_FIELD.getOrDefault(line.path(), line.path())));
        fields.remove(Origin.GIVEN);
        if (fields.isEmpty()) {
            return;
        }
        comment("", "Where values come from, if they were not simply given.");
        text.append("origins:\n");
        fields.forEach((kind, paths) ->
                text.append(Wrapped.lines(kind.key() + ": " + String.join(", ", paths), INDENT, INDENT + INDENT)));
    }

    private void section(String name) {
        List<Lines.Line> part = part(name).stream()
                .filter(line -> !line.path().equals(ReliefQuestions.PRESENT))
                .filter(line -> !line.path().equals(SupplyQuestions.NIGHT))
                .filter(line -> !line.path().equals(SupplyQuestions.BYPASS))
                .toList();
        vesselLeftOut(name);
        if (part.isEmpty()) {
            return;
        }
        text.append('\n');
        if (part.get(0).path().equals(ReliefQuestions.OPENS)
                && part.get(0).value().equals(AnswerKind.Quantity.NONE)) {
            comment("", "Answered: there is no relief valve. A heater without one can explode.");
            text.append("relief: []\n");
            return;
        }
        text.append(name).append(":\n");
        if (name.equals("relief")) {
            valves(part, part(ReliefQuestions.OTHER));
        } else {
            part.forEach(line -> entry(line, INDENT));
        }
    }

    private List<Lines.Line> part(String section) {
        return all.stream().filter(line -> line.section().equals(section)).toList();
    }

    /** A list of one valve, or of two that are told apart by name. */
    private void valves(List<Lines.Line> first, List<Lines.Line> other) {
        if (!answers.know(ReliefQuestions.OTHER_OPENS)) {
            for (int i = 0; i < first.size(); i++) {
                entry(first.get(i), INDENT + (i == 0 ? "- " : INDENT));
            }
            other.forEach(line -> entry(line, INDENT + INDENT));
            return;
        }
        String name = name(ReliefQuestions.OPENS_AT, ReliefQuestions.OTHER_OPENS_AT);
        String second = name(ReliefQuestions.OTHER_OPENS_AT, ReliefQuestions.OPENS_AT);
        valve(name, first);
        valve(name.equals(second) ? "other " + second : second, other);
    }

    private void valve(String name, List<Lines.Line> part) {
        text.append(INDENT).append("- name: ").append(name).append('\n');
        if (name.equals(EXPANSION_VALVE)) {
            comment(
                    INDENT + INDENT,
                    "No temperature, beside a T&P valve: taken as an expansion valve on the cold pipe.");
            text.append(INDENT).append(INDENT).append("kind: expansion-valve\n");
        }
        part.forEach(line -> entry(line, INDENT + INDENT));
    }

    /** What a valve is called, by its temperature and that of the other one. */
    private String name(String temperature, String others) {
        if (answers.know(temperature)) {
            return "T&P valve";
        }
        return answers.say(temperature, AnswerKind.Quantity.NONE) && answers.know(others)
                ? EXPANSION_VALVE
                : "relief valve";
    }

    private void vesselLeftOut(String name) {
        if (name.equals("vessel") && !answers.say(ReliefQuestions.PRESENT, "yes")) {
            line(ReliefQuestions.PRESENT).ifPresent(line -> {
                text.append('\n');
                comment("", "Expansion vessel: " + (line.comment().startsWith("not") ? line.comment() : "none") + ".");
            });
        }
    }

    private void entry(Lines.Line line, String before) {
        String indent = before.replace("- ", "");
        boolean none = line.value().equals(AnswerKind.Quantity.NONE);
        comment(indent, Questions.named(line.path()).label() + ": " + (none ? "none, " : "") + line.comment() + ".");
        if (!line.given() || none && !line.path().equals(UseQuestions.CUT_OUT)) {
            return;
        }
        if (line.path().equals(SupplyQuestions.PRESSURE) && answers.know(SupplyQuestions.NIGHT)) {
            timetable(line.value(), line(SupplyQuestions.NIGHT).orElseThrow().value());
        } else if (line.path().equals(SupplyQuestions.ARRANGEMENT)) {
            text.append(before)
                    .append("arrangement: ")
                    .append(arrangement(line))
                    .append('\n');
        } else if (line.path().equals(SupplyQuestions.REDUCED)) {
            Optional<Lines.Line> way = line(SupplyQuestions.BYPASS);
            way.ifPresent(bypass -> comment(indent, "Its bypass: " + bypass.comment() + "."));
            text.append(before)
                    .append("reducing-valve: { set: ")
                    .append(line.value())
                    .append(way.filter(Lines.Line::given)
                            .map(bypass -> ", bypass-opens: " + bypass.value())
                            .orElse(""))
                    .append(" }\n");
        } else {
            text.append(before)
                    .append(line.key())
                    .append(": ")
                    .append(line.value())
                    .append('\n');
        }
    }

    private static String arrangement(Lines.Line line) {
        return line.value().equals("nothing") ? "direct" : line.value();
    }

    private void timetable(String day, String night) {
        comment(INDENT, "The hours of day and night are assumed. Each entry varies on its own.");
        text.append(INDENT).append("pressure:\n");
        text.append(time("01:00", night)).append(time("05:00", night));
        text.append(time("07:00", day)).append(time("22:00", day));
    }

    private static String time(String clock, String pressure) {
        return INDENT + INDENT + "- { at: " + clock + ", pressure: " + pressure + " }\n";
    }

    private void use() {
        line(UseQuestions.DRAWS).ifPresent(line -> {
            text.append('\n');
            if (!line.given() || line.value().equals(AnswerKind.Quantity.NONE)) {
                comment("", "Hot water is used: " + (line.given() ? "not at all" : line.comment()) + ".");
                return;
            }
            comment("", "Hot water is used: as answered, by a published profile.");
            text.append("draws: ").append(line.value()).append('\n');
            comment("", "One night to heat up from cold, then a whole day.");
            text.append("run: { begins: 22:00, duration: 26 h }\n");
        });
    }

    private Optional<Lines.Line> line(String id) {
        return lines.of(Questions.named(id));
    }

    private void comment(String indent, String sentence) {
        text.append(Wrapped.lines(sentence, indent + "# ", indent + "# "));
    }

    /** A quoted text without special characters. */
    private static String quoted(String value) {
        return '"' + value.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    /** The owner's observation, as the question for the run. */
    private static String question(Answer answer) {
        return switch (answer.value()) {
            case "no" -> "The relief valve is dry. Does the simulation agree?";
            case "heating" -> "The relief valve drips during heat-up. Is it thermal expansion?";
            case "night" -> "The relief valve drips at night. Is it the supply pressure, or thermal expansion?";
            case "both" ->
                "The relief valve drips during heat-up and at night. Is it the supply pressure, or thermal expansion?";
            case "always" -> "The relief valve drips all the time. Would an undamaged one drip?";
            default -> "What does the pressure do when the water is heated?";
        };
    }

    /** Which of the values a file stands for. */
    enum Reach {
        /** All of them: the file as its owner sees it. */
        AS_WRITTEN {
            @Override
            String of(Uncertain quantity, String text) {
                return text;
            }
        },
        /** The lowest. */
        LOW {
            @Override
            String of(Uncertain quantity, String text) {
                return quantity.at(quantity.distribution().low());
            }
        },
        /** The highest. */
        HIGH {
            @Override
            String of(Uncertain quantity, String text) {
                return quantity.at(quantity.distribution().high());
            }
        };

        abstract String of(Uncertain quantity, String text);

        /** The value itself, or the one value out of its spread. */
        String of(String text, Kind<?> kind) {
            return Uncertain.read(text, kind)
                    .map(quantity -> of(quantity, text))
                    .orElse(text);
        }
    }
}
