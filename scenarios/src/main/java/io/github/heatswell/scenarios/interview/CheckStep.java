package io.github.heatswell.scenarios.interview;

import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.report.ReadingsAfter;
import io.github.heatswell.system.NamedValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The step after the work: papers for it, the readings of the check sheet, and what is left to do and to write down.
 */
final class CheckStep {

    /** What is asked of the house with its new vessel. */
    private static final String STAYS_SHUT = "Does the relief valve stay shut after the change?";

    private final Job job;

    CheckStep(Job job) {
        this.job = job;
    }

    /**
     * Does the valve stay shut, and what are the papers for the work? The gauge then tells whether the change did what it should; the
     * readings may come days later.
     */
    Way verify() throws OutputException {
        if (!job.known().containsKey(Job.PRINTED)) {
            print();
            if (job.status() != 0) {
                return Way.ON;
            }
            job.known().put(Job.PRINTED, "yes");
            job.remember();
        }
        Optional<ReadingsAfter> sheet = job.fitting().sheet(job.supply(), job.values(), job.units());
        if (sheet.isEmpty()) {
            return Way.ON;
        }
        job.blankLine();
        job.say("Once the vessel is fitted, print the check sheet in " + job.papers()
                + ", and read the gauge as it says.");
        CheckTalk talk = new CheckTalk(job.dialogue(), job.units(), sheet.get().moments());
        CheckTalk.Ending ending = talk.hold();
        if (ending != CheckTalk.Ending.DONE) {
            return ending == CheckTalk.Ending.LATER ? Way.LEFT : Way.ENDED;
        }
        if (talk.read().isEmpty()) {
            job.say("Without readings nobody knows whether the change worked. Take them when you can.");
            job.known().put(Job.UNREAD, "yes");
            return Way.ON;
        }
        job.known().remove(Job.UNREAD);
        job.blankLine();
        sheet.get().answer(talk.read()).forEach(job::say);
        return sheet.get().agrees(talk.read()) ? Way.ON : look(talk.read());
    }

    /** Readings that are off are what a diagnosis is for, as far as it takes them; the guide waits for what it says. */
    private Way look(Map<CheckSheet.Reading.Kind, Double> read) throws OutputException {
        String lines = ReadingsAfter.forDiagnosis(read);
        if (!lines.isEmpty()) {
            HouseFile list = new HouseFile(job.beside("-check.yaml"));
            list.write(lines);
            job.blankLine();
            job.say("Working out what these readings say about the cause takes a minute or two.");
            job.run("diagnose", "--readings", list.path().toString(), "--out", job.folder("-check"));
            job.pass();
        }
        job.blankLine();
        job.say("Put that right, read again, and type the new readings here: the guide picks up at this step.");
        return Way.LEFT;
    }

    private void print() {
        if (!job.fitting().isOne(job.values())) {
            job.run("run", "--set", "question=" + STAYS_SHUT, "--out", job.folder(""));
            return;
        }
        List<String> words = new ArrayList<>(List.of("size", job.house().toString()));
        job.supply().forEach((field, value) -> words.addAll(List.of("--set", field + "=" + value)));
        words.addAll(List.of("--bought", job.known().get(NamedValue.VESSEL_VOLUME.field())));
        Map.of("--rating", NamedValue.VESSEL_RATING.field(), "--charged", ReliefQuestions.PRECHARGE).entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .filter(read -> job.values().containsKey(read.getValue()))
                .forEach(read -> words.addAll(
                        List.of(read.getKey(), job.values().get(read.getValue()).replaceFirst(" \\+- .*", ""))));
        words.addAll(List.of("--out", job.folder("")));
        job.run(words);
        if (job.status() == 0) {
            job.blankLine();
            job.say(
                    "report.html now holds the papers for the work, in place of what the steps before wrote there: one tag, one"
                            + " sheet for the fitter, one check sheet.");
        }
    }

    /** What is left to do, and what to write down. */
    void close() throws OutputException {
        // a charge for a supply that is to be lowered is nothing to bring about
        Optional<String> wrong = job.known().containsKey(Job.CURE)
                ? Optional.empty()
                : job.fitting().wrongCharge(job.values());
        List<String> left = Stream.of(
                        Optional.ofNullable(job.known().get(Job.RECOMMENDED)),
                        Optional.ofNullable(job.known().get(Job.CURE)),
                        job.fitting().weak(job.values()),
                        wrong,
                        Optional.ofNullable(job.known().get(Job.UNREAD))
                                .map(any -> "Take the readings of the check sheet, and compare them with it."))
                .flatMap(Optional::stream)
                .toList();
        job.blankLine();
        job.say(left.isEmpty() ? "That is the whole job." : "Still to do: " + String.join(" ", left));
        job.found().flatMap(FoundCause::left).ifPresent(job::say);
        if (!job.known().containsKey(NamedValue.VESSEL_VOLUME.field())) {
            return;
        }
        HouseFile changed = new HouseFile(job.beside("-with-vessel.yaml"));
        Optional<String> text =
                changed.exists() ? Optional.empty() : job.fitting().described(job.values());
        if (text.isPresent()) {
            changed.write(text.get());
            job.describe(changed.path());
            job.say("The file " + changed.name() + " now describes the house with its new vessel"
                    + (wrong.isEmpty()
                            ? ""
                            : ", as it is charged at present: correct vessel.precharge in it after pumping")
                    + ". Use it from now on.");
            return;
        }
        job.say("The file " + job.house().getFileName()
                + " still describes the house as it was. Once the vessel is fitted, enter it there: "
                + job.values().entrySet().stream()
                        .filter(entry -> wrong.isEmpty() || !entry.getKey().equals(NamedValue.PRECHARGE.field()))
                        .map(entry -> entry.getKey() + " " + entry.getValue())
                        .collect(Collectors.joining(", "))
                + (wrong.isEmpty() ? "" : ", and as vessel.precharge what the gauge then shows") + ".");
    }
}
