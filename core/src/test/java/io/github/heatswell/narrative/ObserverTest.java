package io.github.heatswell.narrative;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.narrative.Observer.Observed;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is counted in samples written by hand: closed form. */
class ObserverTest {

    private static final double HOUR = 3_600;

    /** Showers at 45 degC at eight and at twenty, in a run that begins at six. */
    private static final HotWaterSystem SHOWERS = Houses.bare()
            .start(Start.builder().timeOfDay(6, DurationUnit.HOUR).build())
            .draws(DrawProfile.of("two showers", List.of(shower(8), shower(20))))
            .build();

    private static Draw shower(double hour) {
        return Draw.ofVolume(hour * HOUR, 60, VolumeUnit.LITRE, 8, FlowUnit.LITRE_PER_MINUTE)
                .mixedTo(45, TemperatureUnit.CELSIUS);
    }

    private static double[] values(Map<Channel, Double> given) {
        double[] values = new double[Channel.values().length];
        given.forEach((channel, value) -> values[channel.ordinal()] = value);
        return values;
    }

    private static void draw(Observer observer, double clockHours, double topCelsius) {
        observer.sample(
                (clockHours - 6) * HOUR,
                values(Map.of(Channel.DRAW_FLOW, 1e-4, Channel.WATER_TOP, topCelsius + 273.15)),
                Trace.Regime.FED);
    }

    /** A draw is too cool once, however many samples say so, and half a kelvin is no matter. */
    @Test
    void eachCoolDrawCountsOnce() {
        Observer observer = new Observer(SHOWERS);
        draw(observer, 8.01, 30);
        draw(observer, 8.02, 30);
        assertEquals(1, observer.observed().drawsTooCool());
        draw(observer, 20.01, 44.6);
        assertEquals(1, observer.observed().drawsTooCool(), "cool enough");
        draw(observer, 20.02, 44.4);
        assertEquals(2, observer.observed().drawsTooCool());
        draw(observer, 24.01, 30);
        assertEquals(2, observer.observed().drawsTooCool(), "still that of the evening before");
        draw(observer, 32.01, 30);
        assertEquals(3, observer.observed().drawsTooCool(), "the next morning");
        assertEquals(6, observer.observed().samples());
    }

    @Test
    void noDrawIsTooCoolWhileNoTapIsOpen() {
        Observer observer = new Observer(SHOWERS);
        observer.sample(3 * HOUR, values(Map.of(Channel.WATER_TOP, 283.15)), Trace.Regime.FED);
        assertEquals(0, observer.observed().drawsTooCool());
    }

    /** Of 3 L discharged while a valve stayed open the supply gave 2 L besides what the taps took. */
    @Test
    void onlyWhatTheSupplyGaveCountsAsFed() {
        Observer observer = new Observer(SHOWERS);
        relief(observer, 0, 1e-4, 1e-3, 5e-3, 5e-3);
        relief(observer, 60, 1e-4, 4e-3, 17e-3, 15e-3);
        assertEquals(2e-3, observer.observed().relievedWhileFed(), 1e-15); // rounding
        relief(observer, 120, 1e-4, 4.5e-3, 27e-3, 15e-3);
        assertEquals(2.5e-3, observer.observed().relievedWhileFed(), 1e-15, "no more than was discharged");
        relief(observer, 180, 0, 9e-3, 40e-3, 15e-3);
        assertEquals(2.5e-3, observer.observed().relievedWhileFed(), 1e-15, "the valve has closed");
        Observed observed = observer.observed();
        assertEquals(5e5, observed.startPressureAbsolute());
        assertEquals(290, observed.startTemperature());
    }

    private static void relief(
            Observer observer, double time, double flow, double relieved, double inflow, double drawn) {
        observer.sample(
                time,
                values(Map.of(
                        Channel.PRESSURE_ABSOLUTE, 5e5 + time,
                        Channel.WATER_MEAN, 290 + time,
                        Channel.RELIEF_FLOW, flow,
                        Channel.RELIEVED_TOTAL, relieved,
                        Channel.INFLOW_TOTAL, inflow,
                        Channel.DRAWN_TOTAL, drawn)),
                Trace.Regime.FED);
    }
}
