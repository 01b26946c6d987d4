package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import io.github.heatswell.assessment.RulesHere;
import io.github.heatswell.diagnosis.Parameter;
import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.outlook.HouseOutlook;
import io.github.heatswell.scenarios.spread.HouseSpread;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written for other programs keeps to the schemas in the documentation, and these are strict. */
@Order(1)
class SchemaTest {

    private static final JsonSchema SUMMARY = schema("summary.schema.json");
    private static final JsonSchema SPREAD = schema("spread.schema.json");
    private static final JsonSchema OUTLOOK = schema("outlook.schema.json");
    private static final JsonSchema DIAGNOSIS = schema("diagnosis.schema.json");
    private static final JsonSchema RULES = schema("rules.schema.json");
    private static final JsonSchema SIZING = schema("sizing.schema.json");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "orchard-lodge",
                "orchard-lodge-vessel",
                "quarry-row",
                "ridge-house",
                "kiln-house-runaway",
                "mill-cottage-thermostat",
                "tannery-yard-bypass-high-mains",
                "weir-house-day"
            })
    void summariesKeepToTheirSchema(String name) throws IOException {
        assertEquals(Set.of(), SUMMARY.validate(summary(name), InputFormat.JSON));
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard-lodge", "mill-cottage-high-mains", "ferry-cottage", "quarry-row", "tannery-yard"})
    void sizingsKeepToTheirSchema(String name) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SizingJson.of(VesselChoice.of(Catalogue.read(name)).build().answer()).write(out);
        assertEquals(Set.of(), SIZING.validate(out.toString(StandardCharsets.UTF_8), InputFormat.JSON));
    }

    /** Regression: the second answer that the papers give, a lower supply with its vessel, was on the papers alone. */
    @Test
    void aSizingCarriesWhatItsPapersSay() throws IOException {
        VesselAnswer answer = VesselChoice.of(Catalogue.read("ridge-house")
                        .with(List.of(Change.of("supply.pressure=79 psi"), Change.of("site.place=us-upc"))))
                .build()
                .answer();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SizingJson.of(answer).write(out);
        String json = out.toString(StandardCharsets.UTF_8);
        assertEquals(Set.of(), SIZING.validate(json, InputFormat.JSON));
        SizeAdvice.LowerSupply lower = answer.supplies().cheapest().orElseThrow();
        double air = answer.scenario().system().site().atmosphere();
        String told = json.substring(json.indexOf("\"lower_supply\""));
        for (String said : List.of(
                "\"volume_m3\" : " + Decimals.significant(lower.volume(), 10),
                "\"reducing_valve_absolute_pa\" : "
                        + Decimals.significant(lower.supply().valve().absolute(air), 10),
                "\"holds_from_m3\" : " + Decimals.significant(lower.volume(), 10))) {
            assertTrue(told.contains(said), said + " in " + told);
        }
        assertTrue(
                json.contains("set to "
                        + QuantityFormat.unicode(UnitSystem.US)
                                .pressure(lower.supply().valve().gauge(air))),
                json);
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard-lodge", "quarry-row"})
    void spreadsKeepToTheirSchema(String name) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SpreadJson.of(HouseSpread.of(Catalogue.read(name)).samples(32).build().answer())
                .write(out);
        assertEquals(Set.of(), SPREAD.validate(out.toString(StandardCharsets.UTF_8), InputFormat.JSON));
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard-lodge-vessel", "mill-cottage-small-vessel"})
    void outlooksKeepToTheirSchema(String name) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        OutlookJson.of(HouseOutlook.of(Catalogue.read(name))
                        .years(5)
                        .sampled(study -> study.samples(16))
                        .build()
                        .answer())
                .write(out);
        assertEquals(Set.of(), OUTLOOK.validate(out.toString(StandardCharsets.UTF_8), InputFormat.JSON));
    }

    @ParameterizedTest
    @EnumSource(Place.class)
    void rulesKeepToTheirSchema(Place place) throws IOException {
        Scenario house = Catalogue.read("orchard-lodge").with(List.of(Change.of("site.place=" + place.key())));
        RulesHere rules = RulesHere.of(house.system(), house.doubts());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        RulesReport.json(house, rules).write(out);
        String json = out.toString(StandardCharsets.UTF_8);
        assertEquals(Set.of(), RULES.validate(json, InputFormat.JSON));
        for (RulesHere.Held held : rules.rules()) {
            assertTrue(
                    json.contains("\"clause\" : \"" + held.rule().cited() + "\""),
                    held.rule().cited());
        }
    }

    /** Water drawn that only a log shows is a number too. */
    @Test
    void theSchemaOfADiagnosisKnowsEveryNumber() throws IOException {
        String schema = Files.readString(Path.of("docs", "diagnosis.schema.json"));
        for (Parameter parameter : Parameter.values()) {
            assertTrue(schema.contains('"' + parameter.name().toLowerCase(Locale.ROOT) + '"'), parameter::name);
        }
    }

    /** From a log with readings on site, and from these alone. */
    @Test
    void diagnosesKeepToTheirSchema() throws IOException {
        for (DiagnosisAnswer answer : List.of(
                Diagnoses.of("orchard-lodge-vessel", "vessel.condition=isolated", folder),
                Diagnoses.ofSpots("orchard-lodge-vessel", folder))) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            DiagnosisJson.of(answer).write(out);
            String json = out.toString(StandardCharsets.UTF_8);
            assertEquals(Set.of(), DIAGNOSIS.validate(json, InputFormat.JSON));
            String spoilt = json.replaceFirst("\"weight\"", "\"wait\"");
            assertFalse(DIAGNOSIS.validate(spoilt, InputFormat.JSON).isEmpty(), spoilt);
        }
    }

    @Test
    void theSchemaNoticesWhatIsMissingNewOrOfTheWrongKind() throws IOException {
        String sound = summary("orchard-lodge");
        for (String spoilt : new String[] {
            sound.replaceFirst("\"samples\" : ", "\"sampels\" : "),
            sound.replaceFirst("\"closes\" : true", "\"closes\" : \"yes\""),
            sound.replaceFirst("\"hazard\" : null,", "")
        }) {
            assertFalse(spoilt.equals(sound), "nothing was spoilt");
            Set<ValidationMessage> messages = SUMMARY.validate(spoilt, InputFormat.JSON);
            assertFalse(messages.isEmpty(), spoilt);
        }
    }

    private static String summary(String name) throws IOException {
        Scenario scenario = Catalogue.read(name);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SummaryJson.of(scenario, RunFindings.of(scenario.simulation().run())).write(out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static JsonSchema schema(String name) {
        try {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(Files.readString(Path.of("docs", name)), InputFormat.JSON);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
