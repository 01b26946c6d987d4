package io.github.heatswell.scenarios.interview;

import io.github.heatswell.narrative.SizeAdvice.LowerSupply;
import io.github.heatswell.scenarios.interview.Question.Choice;
import io.github.heatswell.scenarios.interview.Question.Unknown;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.system.NamedValue;
import java.util.List;
import java.util.Optional;

/** The steps that ask for the vessel that was bought: the supply it is for, its size, its plate and its charge. */
final class PurchaseStep {

    private static final Question RATING = Question.about(
                    NamedValue.VESSEL_RATING.field(),
                    "Made for",
                    AnswerKind.Quantity.of(Kind.PRESSURE, new Choice("10 bar", "150 psi")))
            .asks("What working pressure is that vessel rated for?")
            .find(
                    "its plate, as the maximum working pressure.",
                    "It must be at least the set pressure of the relief valve. If the plate does not say, ask the seller.")
            .ifUnknown(Unknown.leftOut("the plate must be read before the vessel is fitted"))
            .build();

    private final Job job;

    PurchaseStep(Job job) {
        this.job = job;
    }

    /** The lower supply that the sizing advises comes first: size and charge are for it. Then the vessel that was bought. */
    Way buy() {
        for (int asked = 0; asked < Interviewer.PATIENCE; asked++) {
            Way way = lower();
            if (way != Way.ON) {
                return way;
            }
            boolean lowered = job.isLowered();
            job.fitting().toBuy(job.supply()).ifPresent(job::say);
            way = job.ask(Questions.named(ReliefQuestions.VOLUME));
            if (way == Way.BACK && lowered) {
                job.known().keySet().removeAll(Job.SUPPLY);
                continue;
            }
            if (way == Way.ON) {
                job.known().remove(Job.RECOMMENDED);
                // the size on its label is the one it is sold by
                job.known()
                        .computeIfPresent(ReliefQuestions.VOLUME, (field, value) -> value.replaceFirst(" \\+- .*", ""));
                job.fitting().tooSmall(job.supply(), job.values()).ifPresent(said -> {
                    job.known().put(Job.RECOMMENDED, said);
                    job.say(said);
                });
                job.known().keySet().removeAll(List.of(RATING.id(), Job.PRINTED));
            }
            return way;
        }
        return Way.ENDED;
    }

    /** What the plate of the vessel allows; asked once, unless that is too little: no such vessel goes on to be charged. */
    private Way plate() throws OutputException {
        if (job.known().containsKey(RATING.id())) {
            return Way.ON;
        }
        Way way = job.heard(RATING);
        if (way == Way.ON) {
            String value = job.answer(RATING).orElse("");
            job.known().put(RATING.id(), value.isEmpty() ? Job.NOT_READ : value);
            Optional<String> weak = job.fitting().weak(job.values());
            if (weak.isPresent()) {
                job.known().remove(RATING.id());
                job.say(weak.get() + " The guide will pick up here.");
                return Way.LEFT;
            }
            job.remember();
        }
        return way;
    }

    /** Asks whether the supply was lowered, where the sizing advises it; what was read then holds from there on. */
    private Way lower() {
        if (job.isLowered()) {
            return Way.ON;
        }
        job.known().remove(Job.CURE);
        Optional<LowerSupply> cure = job.fitting().cure(job.supply());
        if (cure.isEmpty()) {
            return Way.ON;
        }
        Question question = Question.about(
                        "lowered",
                        "Reducing valve set to",
                        AnswerKind.Quantity.of(Kind.PRESSURE, new Choice("3.5 bar", "50 psi"))
                                .orNone("if that is not done yet"))
                .asks("The sizing says to have " + job.fitting().set(cure.get())
                        + ". Is that done, and what does a gauge downstream of it read?")
                .find(
                        "read the gauge while a little water runs.",
                        "The size and charge of the vessel depend on this pressure. If you leave the valve as it is, type its"
                                + " present setting.")
                .offBy(SupplyQuestions.GAUGE)
                .ifUnknown(Unknown.leftOut("the guide waits until it is"))
                .build();
        Way way = job.heard(question);
        if (way != Way.ON) {
            return way;
        }
        String value = job.written(question);
        if (value.isEmpty() || value.equals(AnswerKind.Quantity.NONE)) {
            job.say(
                    "Have that done first: the size and charge of the vessel depend on it. The guide will pick up here.");
            return Way.LEFT;
        }
        if (cure.get().supply().fitted()) {
            job.known().put(SupplyQuestions.ARRANGEMENT, "reducing-valve");
            job.known().put("supply.reducing-valve", "{ set: " + value + " }");
        } else {
            job.known().put(SupplyQuestions.REDUCED, value);
        }
        job.fitting().cure(job.supply()).map(job.fitting()::told).ifPresent(said -> {
            job.known().put(Job.CURE, said);
            job.say(said);
        });
        return Way.ON;
    }

    /** Its charge: what it should be comes first, and a wrong one is asked for again, unless it is given twice. */
    Way charge() throws OutputException {
        Way plate = plate();
        if (plate != Way.ON) {
            return plate;
        }
        job.known().remove(Job.PRINTED);
        job.fitting().target(job.values()).ifPresent(job::say);
        Question question = Questions.named(ReliefQuestions.PRECHARGE);
        String before = "";
        for (int asked = 0; asked < Interviewer.PATIENCE; asked++) {
            Way way = job.ask(question);
            Optional<String> wrong = way == Way.ON ? job.fitting().wrongCharge(job.values()) : Optional.empty();
            if (wrong.isEmpty() || job.known().get(question.id()).equals(before)) {
                return way;
            }
            before = job.known().get(question.id());
            job.say(wrong.get() + " Then type what the gauge shows. To go on with this charge, type it again.");
        }
        return Way.ENDED;
    }
}
