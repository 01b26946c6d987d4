package io.github.heatswell.scenarios.page;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.VolumeUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.teavm.jso.JSObject;

/** A house from a scenario file. */
final class ReadHouse implements House {

    /** No run is made longer than this (h). */
    private static final long LONGEST = 48;

    private final Scenario scenario;
    /** Made when it is asked for: its samples are drawn once for all parts. */
    private SampledBand band;

    ReadHouse(Scenario scenario) {
        this.scenario = scenario;
    }

    @Override
    public JSObject with(String[] fields, String[] values) {
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < fields.length; i++) {
            changes.add(new Change(fields[i], values[i]));
        }
        try {
            return new Values()
                    .with("house", new ReadHouse(toTheEnd(scenario.with(changes))))
                    .object();
        } catch (InvalidScenarioException e) {
            return PageEngine.faults(e);
        }
    }

    /** With a run that sees the first heat-up to its end: cut off before, a slow heater looked as if its relief valve never opened. */
    private static Scenario toTheEnd(Scenario changed) {
        Scenario longer = changed;
        long hours = changed.duration().toHours() + 1;
        while (hours <= LONGEST && longer.simulation().summary().isUnfinished()) {
            hours *= 2;
            longer = changed.with(List.of(new Change("run.duration", hours + " h")));
        }
        return longer;
    }

    @Override
    public JSObject described() {
        return Described.values(scenario).object();
    }

    @Override
    public JSObject run() {
        return new Told(scenario, scenario.simulation().run()).values().object();
    }

    @Override
    public JSObject map() {
        return MappedPeaks.values(scenario).object();
    }

    @Override
    public JSObject sampled(int part, int parts) {
        return new Values().with("answers", band().part(part, parts)).object();
    }

    @Override
    public JSObject band(double[] answers) {
        return band().values(answers).object();
    }

    private SampledBand band() {
        if (band == null) {
            band = new SampledBand(scenario);
        }
        return band;
    }

    @Override
    public JSObject check() {
        return GaugeCheck.values(scenario).object();
    }

    @Override
    public JSObject reading(String text) {
        try {
            double gauge =
                    QuantityReader.pressure(text).gauge(scenario.system().site().atmosphere());
            SiteCheck.HEAT_UP_MAXIMUM.limits().checkSi(gauge, SiteCheck.HEAT_UP_MAXIMUM.customaryUnit());
            String hazard = Narrative.readingHazard(scenario.system(), gauge)
                    .map(said -> scenario.units().spelled(said.text(QuantityFormat.unicode(scenario.units()))))
                    .orElse("");
            return new Values().with("pressure", gauge).with("hazard", hazard).object();
        } catch (IllegalArgumentException e) {
            return new Values().with("wrong", e.getMessage()).object();
        }
    }

    @Override
    public String offSheet(String[] kinds, double[] above) {
        Map<CheckSheet.Reading.Kind, Double> off = new EnumMap<>(CheckSheet.Reading.Kind.class);
        for (int i = 0; i < kinds.length; i++) {
            off.put(CheckSheet.Reading.Kind.valueOf(kinds[i]), above[i]);
        }
        return Narrative.offSheet(off, !scenario.system().vessels().isEmpty())
                .map(meaning -> scenario.units().spelled(meaning.text(QuantityFormat.unicode(scenario.units()))))
                .orElse("");
    }

    @Override
    public String text() {
        return scenario.changedText();
    }

    @Override
    public String said(String kind, double value) {
        return new Measure(Measure.Kind.valueOf(kind), value).text(scenario.units());
    }

    @Override
    public String clock(int minutes) {
        return Moments.of(scenario.system(), 0).clock(minutes);
    }

    @Override
    public double number(String kind, double value) {
        return unitOf(kind).fromSi(value);
    }

    @Override
    public String unit(String kind) {
        return unitOf(kind).symbol();
    }

    @Override
    public String symbol(String kind) {
        return QuantityFormat.unicode(scenario.units()).symbol(unitOf(kind));
    }

    private Unit unitOf(String kind) {
        return switch (Measure.Kind.valueOf(kind)) {
            case GAUGE_PRESSURE -> scenario.units().pressure();
            case TEMPERATURE -> scenario.units().temperature();
            case VOLUME -> scenario.units().volume();
            case POWER -> scenario.units().power();
            default -> throw new IllegalArgumentException("kind: " + kind + " has neither axis nor control");
        };
    }

    @Override
    public JSObject summary() {
        RunSummary run = scenario.simulation().summary();
        return new Values()
                .with("peak", run.peak().value())
                .with("discharged", run.totals().relieved())
                .with("times", run.events().stream().mapToDouble(Event::time).toArray())
                .object();
    }

    @Override
    public JSObject sized(double volume) {
        HotWaterSystem house = scenario.system();
        VesselChoice choice = VesselChoice.of(scenario).build();
        try {
            SizingResult.Vessel tried = VesselSizing.builder(house, choice.target())
                    .precharge(VesselSizing.Precharge.STATIC)
                    .vesselLike(choice.pattern())
                    .alsoRun(scenario.duration())
                    .build()
                    .tried(NominalSize.of(volume, VolumeUnit.CUBIC_METRE), new Balances.Count());
            double air = house.site().atmosphere();
            double peak = tried.peakAbsolute() - air;
            OptionalDouble opens = Limit.reliefSetGauge(house);
            boolean drips = opens.isPresent() && peak >= opens.getAsDouble();
            return new Values()
                    .with("peak", drips ? opens.getAsDouble() : peak)
                    .with("drips", drips)
                    .with("higher", tried.higher())
                    .with("precharge", tried.precharge().gauge(air))
                    .object();
        } catch (IllegalArgumentException e) {
            return new Values().with("refused", e.getMessage()).object();
        }
    }

    @Override
    public JSObject advised() {
        try {
            SizeAdvice advice = VesselChoice.of(scenario).build().advice();
            Narrative narrative = Narrative.of(advice);
            QuantityFormat format = QuantityFormat.unicode(scenario.units());
            List<String> said = new ArrayList<>(List.of(narrative.headline().text(format) + "."));
            said.addAll(narrative.remarkTexts(format));
            return new Values()
                    .with(
                            "volume",
                            advice.recommended()
                                    .map(SizingResult.Vessel::volume)
                                    .orElse(Double.NaN))
                    .texts("said", said)
                    .object();
        } catch (IllegalArgumentException e) {
            return new Values().with("refused", e.getMessage()).object();
        }
    }

    @Override
    public String spelled(String words) {
        return scenario.units().spelled(words);
    }
}
