package io.github.heatswell.charts;

import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.sizing.PeakSurvey;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.LinkedHashMap;
import java.util.Map;

/** Maps of invented houses. */
public final class Maps {

    private Maps() {}

    /** A house with a relief valve set at 7 bar. */
    public static HotWaterSystem.Builder house() {
        return Plants.bare()
                .addReliefValve(Plants.valve("safety valve", 7, 6.3, ReliefValve.LiftCharacteristic.MODULATING));
    }

    /** A vessel that is large enough, with a target. */
    public static PeakMap calm() {
        HotWaterSystem house = house().vessel(Plants.vessel(12, 3)).build();
        SizingTarget target =
                SizingTarget.builder(house).vesselRating(Plants.bar(10)).build();
        return PeakSurvey.builder(house).target(target).build().map();
    }

    /** A vessel that is too small. */
    public static PeakMap dripping() {
        return PeakSurvey.builder(house().vessel(Plants.vessel(5, 2)).build())
                .build()
                .map();
    }

    /** Open to the mains. */
    public static PeakMap open() {
        HotWaterSystem house =
                house().supply(Plants.supply(Supply.Arrangement.DIRECT, 4.2)).build();
        return few(PeakSurvey.builder(house).vesselLike(Plants.vessel(12, 3)));
    }

    /** No relief valve. */
    public static PeakMap unguarded() {
        return few(PeakSurvey.builder(Plants.bare().vessel(Plants.vessel(8, 4)).build()));
    }

    /** A supply above the relief valve. */
    public static PeakMap fed() {
        HotWaterSystem house = house().supply(Plants.supply(Supply.Arrangement.CHECK_VALVE, 7.5))
                .vessel(Plants.vessel(8, 4))
                .build();
        return few(PeakSurvey.builder(house));
    }

    /** A supply valve whose seat leaks. */
    public static PeakMap creeping() {
        Supply supply = Houses.reducing(7, 1).build().toBuilder()
                .seatLeakage(5, FlowUnit.MILLILITRE_PER_MINUTE)
                .build();
        return few(PeakSurvey.builder(
                house().supply(supply).vessel(Plants.vessel(12, 3)).build()));
    }

    /** Two by two cells. */
    public static PeakMap smallest() {
        return PeakSurvey.builder(house().vessel(Plants.vessel(12, 3)).build())
                .volumes(VolumeUnit.LITRE, 0.5, 12)
                .precharges(PressureUnit.BAR, 2, 4.2)
                .build()
                .map();
    }

    private static PeakMap few(PeakSurvey.Builder survey) {
        return survey.volumes(VolumeUnit.LITRE, 2, 4, 8, 16, 32)
                .precharges(PressureUnit.BAR, 1, 2, 3, 4.2, 5, 6)
                .build()
                .map();
    }

    /** Charts of everything above. */
    public static Map<String, Chart> charts(UnitSystem units) {
        Map<String, Chart> charts = new LinkedHashMap<>();
        charts.put("calm", Chart.of(calm(), units));
        charts.put("dripping", Chart.of(dripping(), units));
        charts.put("open", Chart.of(open(), units));
        charts.put("unguarded", Chart.of(unguarded(), units));
        charts.put("fed", Chart.of(fed(), units));
        charts.put("smallest", Chart.of(smallest(), units));
        return charts;
    }
}
