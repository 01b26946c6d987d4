package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.citation.Citation;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * One idea, shown by runs. Immutable.
 */
public final class Lesson {

    private static final Pattern KEBAB = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

    private final String id;
    private final String title;
    private final String question;
    private final Prediction prediction;
    private final List<LessonCase> cases;
    private final List<Claim> notice;
    private final List<Claim> why;
    private final Formula formula;
    private final TryIt tryIt;
    private final String checkQuestion;
    private final Claim checkAnswer;
    private final List<Citation> sources;
    private final List<String> cautions;
    private final List<String> cautionsAfter;
    private final List<Expectation> expected;
    private final Optional<LessonSlider> slider;
    private final List<WorksheetRow> worksheet;

    Lesson(LessonBuilder from) {
        id = from.id;
        if (!KEBAB.matcher(id).matches()) {
            throw new IllegalArgumentException("'" + id + "' is no id of a lesson; write such as 'closing-the-system'");
        }
        title = Texts.require("the title", from.title);
        question = Texts.require("the question", from.question);
        prediction = Objects.requireNonNull(from.prediction, "prediction");
        cases = List.copyOf(from.cases);
        notice = List.copyOf(from.notice);
        why = List.copyOf(from.why);
        formula = Objects.requireNonNull(from.formula, "formula");
        tryIt = Objects.requireNonNull(from.tryIt, "tryIt");
        checkQuestion = Texts.require("the check question", from.checkQuestion);
        checkAnswer = Objects.requireNonNull(from.checkAnswer, "checkAnswer");
        sources = List.copyOf(from.sources);
        cautions = List.copyOf(Texts.require("the cautions", from.cautions, 0, Integer.MAX_VALUE));
        cautionsAfter =
                List.copyOf(Texts.require("the cautions beside the outcome", from.cautionsAfter, 0, Integer.MAX_VALUE));
        expected = List.copyOf(from.expected);
        slider = Optional.ofNullable(from.slider);
        worksheet = List.copyOf(from.worksheet);
        checkCounts();
    }

    private void checkCounts() {
        Texts.requireCount("the sentences to notice", notice.size(), 1, Integer.MAX_VALUE);
        Texts.requireCount("the paragraphs of why", why.size(), 1, Integer.MAX_VALUE);
        Texts.requireCount("the cases", cases.size(), 1, 4);
        Texts.requireCount("the sources", sources.size(), 1, Integer.MAX_VALUE);
        Texts.requireCount("the expectations", expected.size(), 1, Integer.MAX_VALUE);
        if (tryIt.caseIndex() < 0 || tryIt.caseIndex() >= cases.size()) {
            throw new IllegalArgumentException("what to try changes case " + tryIt.caseIndex() + ", but there are only "
                    + cases.size() + ", counted from 0");
        }
        slider.ifPresent(moved -> {
            if (moved.caseIndex() < 0 || moved.caseIndex() >= cases.size()) {
                throw new IllegalArgumentException("the slider moves case " + moved.caseIndex()
                        + ", but there are only " + cases.size() + ", counted from 0");
            }
        });
    }

    /**
     * Starts a lesson.
     *
     * @param id a short name in small letters, digits and hyphens, such as {@code closing-the-system}
     * @param title its heading
     * @return a builder to describe the rest
     */
    public static LessonBuilder builder(String id, String title) {
        return new LessonBuilder(id, title);
    }

    /**
     * The short name.
     *
     * @return the id, in small letters, digits and hyphens
     */
    public String id() {
        return id;
    }

    /**
     * The heading.
     *
     * @return the title
     */
    public String title() {
        return title;
    }

    /**
     * What the reader wonders.
     *
     * @return the question
     */
    public String question() {
        return question;
    }

    /**
     * What to predict before looking.
     *
     * @return the prediction
     */
    public Prediction prediction() {
        return prediction;
    }

    /**
     * The houses that are compared.
     *
     * @return one to four cases
     */
    public List<LessonCase> cases() {
        return cases;
    }

    /**
     * What to notice, worked out from the runs.
     *
     * @return one or more claims
     */
    public List<Claim> notice() {
        return notice;
    }

    /**
     * Why it is so, in plain words.
     *
     * @return one or more paragraphs
     */
    public List<Claim> why() {
        return why;
    }

    /**
     * The formula that matters.
     *
     * @return the formula
     */
    public Formula formula() {
        return formula;
    }

    /**
     * What to try oneself.
     *
     * @return the trial
     */
    public TryIt tryIt() {
        return tryIt;
    }

    /**
     * A question to see whether it was understood.
     *
     * @return the question
     */
    public String checkQuestion() {
        return checkQuestion;
    }

    /**
     * The answer to the check question.
     *
     * @return the answer
     */
    public Claim checkAnswer() {
        return checkAnswer;
    }

    /**
     * Where the facts come from, and how far that was checked.
     *
     * @return one or more sources
     */
    public List<Citation> sources() {
        return sources;
    }

    /**
     * Everything the lesson says of its runs: what to notice, why, the replies to wrong predictions and the answer to the
     * question.
     *
     * @return the claims, in the order of the page
     */
    public List<Claim> claims() {
        List<Claim> all = new ArrayList<>();
        prediction.options().forEach(option -> option.reply().ifPresent(all::add));
        all.addAll(notice);
        all.addAll(why);
        all.add(checkAnswer);
        return List.copyOf(all);
    }

    /**
     * What not to touch, and who decides.
     *
     * @return the cautions, shown before anything to try; possibly none
     */
    public List<String> cautions() {
        return cautions;
    }

    /**
     * The cautions that would tell the outcome of the prediction, to be shown with it.
     *
     * @return the cautions, in their order; none is shown before the prediction
     */
    public List<String> cautionsAfter() {
        return cautionsAfter;
    }

    /**
     * What the runs must show.
     *
     * @return one or more expectations
     */
    public List<Expectation> expected() {
        return expected;
    }

    /**
     * A field to move.
     *
     * @return the slider, if there is one
     */
    public Optional<LessonSlider> slider() {
        return slider;
    }

    /**
     * The readings to fill in.
     *
     * @return the readings; possibly none
     */
    public List<WorksheetRow> worksheet() {
        return worksheet;
    }
}
