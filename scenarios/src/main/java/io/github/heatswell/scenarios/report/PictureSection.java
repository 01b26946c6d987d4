package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.scenarios.markup.Svg;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;

/** The picture, and the numbers it shows. */
final class PictureSection {

    private PictureSection() {}

    static void write(Html html, ReportContent content, QuantityFormat shown) {
        List<Illustration> pictures = content.pictures();
        if (pictures.isEmpty() && content.figures().isEmpty()) {
            return;
        }
        html.open("section").leaf("h2", pictures.isEmpty() ? "The numbers" : "The picture");
        for (int i = 0; i < pictures.size(); i++) {
            picture(html, pictures.get(i), i + 1);
        }
        content.figures().forEach(grid -> Tables.grid(html, grid));
        html.closeLine();
    }

    private static void picture(Html html, Illustration picture, int number) {
        html.leaf("p", "On a narrow screen the picture scrolls sideways.", "class", "hint");
        html.open("figure");
        html.open("div", "class", "scroll", "role", "region", "tabindex", "0", "aria-label", "Picture " + number);
        html.picture(Svg.of(picture.svg(), picture.alternative(), "p" + number + "-"))
                .closeLine();
        if (!picture.caption().isBlank()) {
            html.leaf("figcaption", picture.caption(), "dir", "auto");
        }
        html.closeLine();
    }
}
