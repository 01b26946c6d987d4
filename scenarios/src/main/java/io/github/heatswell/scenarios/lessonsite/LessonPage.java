package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.finding.Statement;
import io.github.heatswell.scenarios.lesson.Formula;
import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.lesson.LessonRun;
import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.scenarios.markup.Svg;
import io.github.heatswell.source.Source;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.function.Consumer;

/** The page of one lesson. */
final class LessonPage {

    private final Frame frame;
    private final LessonRun run;
    private final Lesson lesson;
    private final Pictures pictures;

    private LessonPage(Frame frame, LessonRun run, Pictures pictures) {
        this.frame = frame;
        this.run = run;
        this.lesson = run.lesson();
        this.pictures = pictures;
    }

    static String of(Frame frame, LessonRun run, Pictures pictures) {
        LessonPage page = new LessonPage(frame, run, pictures);
        return frame.page(page.lesson.title(), page::links, page::content);
    }

    private void links(Html html) {
        List<Lesson> all = frame.lessons();
        int here = all.indexOf(lesson);
        Frame.link(html, "index.html", "All lessons");
        if (here > 0) {
            Frame.link(
                    html,
                    Frame.file(all.get(here - 1)),
                    "Before: " + all.get(here - 1).title());
        }
        if (here < all.size() - 1) {
            Frame.link(
                    html,
                    Frame.file(all.get(here + 1)),
                    "Next: " + all.get(here + 1).title());
        }
        Frame.link(html, Frame.worksheet(lesson), "Worksheet");
    }

    private void content(Html html) {
        html.leaf("h1", lesson.title());
        cautions(html);
        html.leaf("p", lesson.question(), "class", "answer");
        section(html, "Predict", this::prediction);
        html.open("details", "class", "look", "open", "open");
        html.leaf("summary", "Look, once you have predicted");
        section(html, "The picture", this::picture);
        section(html, "What to notice", this::notice);
        html.closeLine();
        section(html, "Why", this::why);
        section(html, "Try it yourself", this::trial);
        section(html, "Check", this::check);
        section(html, "Sources", this::sources);
    }

    private static void section(Html html, String title, Consumer<Html> inside) {
        html.open("section").leaf("h2", title);
        inside.accept(html);
        html.closeLine();
    }

    private void cautions(Html html) {
        for (String caution : lesson.cautions()) {
            html.open("div", "class", "alarm");
            html.open("p").leaf("strong", "CAUTION").text(caution).closeLine();
            html.closeLine();
        }
    }

    private void prediction(Html html) {
        html.leaf("p", lesson.prediction().question());
        html.open("ol", "type", "A");
        lesson.prediction().options().forEach(option -> html.leaf("li", option));
        html.closeLine();
    }

    private void picture(Html html) {
        figure(html, UnitSystem.SI, "si-only");
        figure(html, UnitSystem.US, "us-only");
        pictures.slider().ifPresent(slider -> slider.write(html));
    }

    private void figure(Html html, UnitSystem units, String shownWith) {
        String alternative = pictures.headline(units);
        html.open("figure", "class", shownWith);
        html.open("div", "class", "scroll", "tabindex", "0", "role", "group", "aria-label", "Picture, may be scrolled");
        html.picture(Svg.of(pictures.svg(units), alternative, shownWith + "-")).closeLine();
        html.leaf("figcaption", "Computed by Heatswell; the houses are invented.")
                .closeLine();
    }

    private void notice(Html html) {
        html.open("ul");
        for (Statement statement : run.notice()) {
            html.open("li");
            Quantity.write(html, statement);
            html.closeLine();
        }
        html.closeLine();
        html.leaf(
                "p",
                "So the answer to the prediction is: "
                        + lesson.prediction().options().get(run.outcome()));
    }

    private void why(Html html) {
        lesson.why().forEach(paragraph -> html.leaf("p", paragraph));
        Formula formula = lesson.formula();
        html.open("div", "class", "formula");
        html.open("p").leaf("code", formula.text()).closeLine();
        html.open("dl");
        for (Formula.Symbol symbol : formula.symbols()) {
            html.open("div")
                    .leaf("dt", symbol.letter())
                    .leaf("dd", symbol.meaning())
                    .closeLine();
        }
        html.closeLine();
        html.leaf("p", "From: " + words(formula.source()), "class", "quiet").closeLine();
    }

    private void trial(Html html) {
        html.leaf("p", lesson.tryIt().shows());
        html.leaf("p", "Type this where Heatswell is installed:");
        html.open("pre").leaf("code", lesson.tryIt().command()).closeLine();
        html.open("p").text("Or change the file ");
        html.leaf("a", Scenarios.file(lesson), "href", Scenarios.file(lesson));
        html.text(" and run it. The lines to change:").closeLine();
        html.open("ul");
        lesson.tryIt()
                .changes()
                .forEach(change ->
                        html.open("li").leaf("code", change.toString()).closeLine());
        html.closeLine();
    }

    private void check(Html html) {
        html.leaf("p", lesson.checkQuestion());
        html.open("details").leaf("summary", "Answer");
        html.leaf("p", lesson.checkAnswer()).closeLine();
    }

    private void sources(Html html) {
        html.open("ul");
        lesson.sources().forEach(source -> html.leaf("li", words(source)));
        html.closeLine();
    }

    private static String words(Source source) {
        return source.text()
                + switch (source.standing()) {
                    case SEEN -> " (the text itself was read)";
                    case SECOND_HAND -> " (read where somebody else quotes it)";
                    case FROM_MEMORY -> " (from memory, not checked against a copy)";
                    case GIVEN -> "";
                };
    }
}
