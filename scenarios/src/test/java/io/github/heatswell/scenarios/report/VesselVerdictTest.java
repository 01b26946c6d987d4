package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Regression: a question whether the vessel is good enough is answered by its first word. */
class VesselVerdictTest {

    private static Scenario asking(String question, Change... changes) {
        List<Change> all = new ArrayList<>(List.of(changes));
        all.add(new Change("question", question));
        return Catalogue.read("orchard-lodge-vessel").with(all);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Is the 12 L vessel charged to 40 psi good enough?           | true",
                "Will this expansion tank be enough for the new heater?      | true",
                "Does a vessel of 12 litres keep the relief valve shut?      | false",
                "Is the vessel too small, or large enough?                   | false",
                "Isn't the vessel large enough?                              | false",
                "Which vessel is enough?                                     | false",
                "Why does it drip?                                           | false"
            })
    void onlyThePlainQuestionIsUnderstood(String question, boolean asked) {
        Scenario scenario = asking(question);
        assertEquals(
                asked,
                Narrative.verdict(scenario.question(), scenario.system(), List.of())
                        .isPresent());
    }

    private static Optional<String> verdict(Scenario scenario) {
        return Narrative.verdict(
                scenario.question(),
                scenario.system(),
                Findings.of(scenario.simulation().run().summary(), scenario.doubts()));
    }

    @Test
    void theFirstWordIsTheAnswer() {
        String question = "Is the vessel large enough?";
        Change good = new Change("vessel.volume", "35 L");
        assertTrue(verdict(asking(question, good)).orElseThrow().startsWith("Yes: "));
        String low = verdict(asking(question, good, new Change("vessel.precharge", "1 bar")))
                .orElseThrow();
        assertTrue(low.startsWith("No: its precharge is too low"), low);
        String small =
                verdict(asking(question, new Change("vessel.volume", "3 L"))).orElseThrow();
        assertTrue(small.startsWith("No: ") && small.contains("too small"), small);
        assertEquals(Optional.empty(), verdict(asking("Why does it drip?", good)));
    }

    /** The sizing says first whether the vessel that is there will do. */
    @ParameterizedTest
    @CsvSource({
        "3 L, No: the 3 L vessel of this house is too small.",
        "35 L, Yes: the 35 L vessel of this house is large enough"
    })
    void theSizingAnswersToo(String volume, String begins) {
        Scenario scenario = asking("Is the vessel large enough?", new Change("vessel.volume", volume));
        String answer = Narrative.verdict(
                        scenario.question(),
                        VesselChoice.of(scenario).build().answer().advice())
                .orElseThrow()
                .text(QuantityFormat.ascii(UnitSystem.SI));
        assertTrue(answer.startsWith(begins), answer);
    }
}
