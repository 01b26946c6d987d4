package io.github.heatswell.scenarios.choice;

import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.scenarios.report.SizingReport;
import io.github.heatswell.units.UnitSystem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The words of a sizing's page, which has what its screen leaves out. */
final class SizingPage {

    private SizingPage() {}

    static String words(VesselAnswer answer, UnitSystem units) {
        ByteArrayOutputStream page = new ByteArrayOutputStream();
        for (ResultFile file : SizingReport.answer(answer, units).files()) {
            if (file.name().equals("report.html")) {
                try {
                    file.writeTo(page);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        }
        return page.toString(StandardCharsets.UTF_8)
                .replaceAll("(?s)<(style|script)\\b.*?</\\1>|<[^>]*>", " ")
                .replaceAll("[\\s\\u00a0\\u202f]+", " ");
    }
}
