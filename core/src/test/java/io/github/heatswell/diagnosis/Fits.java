package io.github.heatswell.diagnosis;

import io.github.heatswell.system.HotWaterSystem;
import java.util.List;
import java.util.Optional;

/** Fits made by hand. */
final class Fits {

    private Fits() {}

    static HypothesisFit of(Cause cause, double criterion, HotWaterSystem house) {
        return with(cause, criterion, 10, Optional.empty(), house);
    }

    static HypothesisFit pair(Cause cause, Cause second, HotWaterSystem house) {
        return with(cause, Optional.of(new HypothesisFit.Also(second, "")), 0, 10, Optional.empty(), house);
    }

    static HypothesisFit with(
            Cause cause, double criterion, double squares, Optional<Misfit> misfit, HotWaterSystem house) {
        return with(cause, Optional.empty(), criterion, squares, misfit, house);
    }

    private static HypothesisFit with(
            Cause cause,
            Optional<HypothesisFit.Also> also,
            double criterion,
            double squares,
            Optional<Misfit> misfit,
            HotWaterSystem house) {
        return new HypothesisFit(
                cause,
                "",
                also,
                squares,
                criterion,
                0.5,
                List.of(),
                0,
                misfit,
                List.of(),
                house,
                List.of(3e5),
                HypothesisFit.Course.NONE);
    }
}
