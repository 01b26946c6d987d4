package io.github.heatswell.scenarios.file;

import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.ArrayList;
import java.util.List;

/** What stands at the top of a file and belongs to the system as a whole. */
final class Extras {

    private final List<Leak> leaks = new ArrayList<>();
    private Double air;
    private DrawProfile draws = DrawProfile.none();
    private double gaugeHeight;

    void trappedAir(double value, VolumeUnit unit) {
        HotWaterSystem.builder().trappedAir(value, unit);
        air = unit.toSi(value);
    }

    void leaks(List<Leak> values) {
        leaks.addAll(values);
    }

    void draws(DrawProfile value) {
        draws = value;
    }

    void gaugeHeight(double metres) {
        gaugeHeight = metres;
    }

    /** Hands everything to the system. */
    void into(HotWaterSystem.Builder system) {
        if (air != null) {
            system.trappedAir(air, VolumeUnit.CUBIC_METRE);
        }
        leaks.forEach(system::addLeak);
        system.draws(draws).gaugeHeight(gaugeHeight, LengthUnit.METRE);
    }

    /** The height of the gauge while being read (m). */
    static final class Gauge {
        private double metres;

        void height(double value, LengthUnit unit) {
            HotWaterSystem.builder().gaugeHeight(value, unit);
            metres = unit.toSi(value);
        }

        double end() {
            return metres;
        }
    }
}
