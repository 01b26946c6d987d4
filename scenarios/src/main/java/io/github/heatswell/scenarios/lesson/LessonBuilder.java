package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.citation.Citation;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/**
 * Describes a lesson. Everything must be given but cautions, slider and readings.
 */
public final class LessonBuilder {

    final String id;
    final String title;
    final List<Citation> sources = new ArrayList<>();
    final List<String> cautions = new ArrayList<>();
    final List<String> cautionsAfter = new ArrayList<>();
    final List<Expectation> expected = new ArrayList<>();
    final List<WorksheetRow> worksheet = new ArrayList<>();
    String question;
    Prediction prediction;
    List<LessonCase> cases = List.of();
    List<Claim> notice = List.of();
    List<Claim> why = List.of();
    Formula formula;
    TryIt tryIt;
    String checkQuestion;
    Claim checkAnswer;
    LessonSlider slider;

    LessonBuilder(String id, String title) {
        this.id = Objects.requireNonNull(id, "id");
        this.title = title;
    }

    /**
     * What the reader wonders.
     *
     * @param words the question
     * @return this builder
     */
    public LessonBuilder question(String words) {
        question = words;
        return this;
    }

    /**
     * What to predict before looking.
     *
     * @param words what will happen
     * @param outcome which of the options the run shows, counted from 0
     * @param options three or four answers to choose from
     * @return this builder
     * @throws IllegalArgumentException if the question is blank, or there are fewer than three options or more than four
     */
    public LessonBuilder prediction(String words, ToIntFunction<LessonRun> outcome, Prediction.Option... options) {
        prediction = new Prediction(words, List.of(options), outcome);
        return this;
    }

    /**
     * The houses that are compared.
     *
     * @param compared one to four cases
     * @return this builder
     */
    public LessonBuilder compare(LessonCase... compared) {
        cases = List.of(compared);
        return this;
    }

    /**
     * What to notice.
     *
     * @param claims one or more, worked out from the runs
     * @return this builder
     */
    public LessonBuilder notice(Claim... claims) {
        notice = List.of(claims);
        return this;
    }

    /**
     * Why it is so, in plain words.
     *
     * @param paragraphs one or more
     * @return this builder
     */
    public LessonBuilder why(Claim... paragraphs) {
        why = List.of(paragraphs);
        return this;
    }

    /**
     * The formula that matters.
     *
     * @param value the formula
     * @return this builder
     */
    public LessonBuilder formula(Formula value) {
        formula = value;
        return this;
    }

    /**
     * What to try oneself.
     *
     * @param value the trial
     * @return this builder
     */
    public LessonBuilder tryIt(TryIt value) {
        tryIt = value;
        return this;
    }

    /**
     * A question to see whether it was understood.
     *
     * @param words the question
     * @param answer its answer
     * @return this builder
     */
    public LessonBuilder check(String words, Claim answer) {
        checkQuestion = words;
        checkAnswer = answer;
        return this;
    }

    /**
     * Where a fact comes from; may be called again.
     *
     * @param text the publication with its place
     * @param standing how far it was checked
     * @return this builder
     */
    public LessonBuilder source(String text, Citation.Standing standing) {
        sources.add(new Citation(text, standing));
        return this;
    }

    /**
     * Where facts come from; may be called again.
     *
     * @param more one or more sources
     * @return this builder
     */
    public LessonBuilder sources(Citation... more) {
        sources.addAll(List.of(more));
        return this;
    }

    /**
     * What not to touch, and who decides; may be called again.
     *
     * @param text the caution
     * @return this builder
     */
    public LessonBuilder caution(String text) {
        cautions.add(text);
        return this;
    }

    /**
     * A caution that would tell the outcome, and so is shown with it; may be called again. What is shown before must still
     * be caution enough.
     *
     * @param text the caution
     * @return this builder
     */
    public LessonBuilder cautionAfter(String text) {
        cautionsAfter.add(text);
        return this;
    }

    /**
     * What the runs must show; may be called again.
     *
     * @param description what must be so, as a sentence
     * @param holds whether it is so in a run
     * @return this builder
     */
    public LessonBuilder expect(String description, Predicate<LessonRun> holds) {
        expected.add(new Expectation(description, holds));
        return this;
    }

    /**
     * A field to move; none if never called.
     *
     * @param value the slider
     * @return this builder
     */
    public LessonBuilder slider(LessonSlider value) {
        slider = value;
        return this;
    }

    /**
     * A reading to fill in; may be called again.
     *
     * @param label what to read off
     * @param kind what it measures
     * @param answer the right answer from the run, in the SI unit of the kind; a pressure as a gauge shows it
     * @return this builder
     */
    public LessonBuilder reading(String label, Measure.Kind kind, ToDoubleFunction<LessonRun> answer) {
        worksheet.add(new WorksheetRow(label, kind, answer));
        return this;
    }

    /**
     * The finished lesson.
     *
     * @return the lesson
     * @throws IllegalArgumentException if a text is missing, the id is not in small letters, digits and hyphens, there are
     *     no cases, sources or expectations, or the slider moves a case that is not there
     * @throws NullPointerException if prediction, formula, trial or the answer to the check question is missing
     */
    public Lesson build() {
        return new Lesson(this);
    }
}
