package io.github.heatswell.scenarios.report;

import io.github.heatswell.narrative.Limit;
import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.choice.SupplyTable;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.QuantityFormat;
import java.util.Comparator;
import java.util.Optional;

/** What is said of the vessel that was bought, the same in guide, headline and what to do: "too small" is one that exceeds the limit. */
public final class BoughtVessel {

    /** A difference in precharge (Pa) that a tyre gauge shows; our own judgement. */
    private static final double FELT = 0.1e5;

    private BoughtVessel() {}

    /**
     * Why a vessel must not be fitted by what its plate allows: less than the relief valve that opens last lets the pressure rise to.
     *
     * @param house the house
     * @param rating the pressure on the plate of the vessel
     * @param shown how quantities are written
     * @return whole sentences, which say what to get instead; empty if nothing is known against it
     */
    public static Optional<String> weak(HotWaterSystem house, Pressure rating, QuantityFormat shown) {
        double atmosphere = house.site().atmosphere();
        return Limit.opensAbove(rating, house).map(valve -> {
            String set = shown.pressure(valve.setPressure().gauge(atmosphere));
            return "Do not fit a vessel rated for only " + shown.pressure(rating.gauge(atmosphere)) + ": '"
                    + valve.name() + "' opens only at " + set + ". Get one rated for at least " + set + ".";
        });
    }

    /** Why the only vessel of a house must not stay there by what its plate allows; empty if nothing is known against it. */
    static Optional<String> presentIsWeak(HotWaterSystem house, QuantityFormat shown) {
        return house.vessel()
                .filter(present -> !house.hasSeveralVessels())
                .flatMap(present -> present.body().rating())
                .flatMap(rating -> weak(house, rating, shown))
                .map(why -> "Have the vessel of this house replaced. " + why);
    }

    /**
     * Whether the vessel that was bought will do.
     *
     * @param answer the sizing with it
     * @param shown how quantities are written
     * @return whole sentences; empty if none was bought
     */
    public static Optional<String> told(VesselAnswer answer, QuantityFormat shown) {
        return answer.against().filter(other -> other.bought().isPresent()).map(other -> {
            String vessel = "The vessel of " + shown.volume(other.vessel().volume()) + " that was bought ";
            if (answer.tooSmall().isPresent()) {
                return vessel + "is too small: the pressure would go to " + peak(other.vessel(), answer, shown)
                        + ", over the limit of "
                        + shown.pressure(answer.sizing().target().gauge()) + wanted(answer, shown)
                        + turned(answer, other.vessel(), shown);
            }
            return vessel + (answer.lacksMargin() ? "keeps the limit by the best estimates, with " : "is enough, with ")
                    + shown.pressureDifference(other.vessel().margin()) + " to spare"
                    + other.tried()
                            .map(tried -> ", and in "
                                    + (tried.above().of() - tried.above().count()) + " of "
                                    + tried.above().of() + " sampled houses")
                            .orElse("")
                    + (answer.lacksMargin()
                            ? ". That leaves too little margin for a year's loss of charge and for what is uncertain"
                                    + wanted(answer, shown) + turned(answer, other.vessel(), shown)
                            : ".");
        });
    }

    private static String peak(SizingResult.Vessel vessel, VesselAnswer answer, QuantityFormat shown) {
        double atmosphere = answer.scenario().system().site().atmosphere();
        return shown.pressure(vessel.peakAbsolute() - atmosphere) + (vessel.higher() ? " and beyond" : "");
    }

    private static String wanted(VesselAnswer answer, QuantityFormat shown) {
        return answer.recommended()
                .map(wanted -> "; the right size is " + shown.volume(wanted.volume()) + ".")
                .orElse(".");
    }

    /** What turning the reducing valve would do, where a house has one that may be turned. */
    private static String turned(VesselAnswer answer, SizingResult.Vessel vessel, QuantityFormat shown) {
        double atmosphere = answer.scenario().system().site().atmosphere();
        if (answer.scenario().system().supply().reducingValve().isEmpty()
                || answer.scenario().system().site().place() == Place.UK) {
            return "";
        }
        return answer.supplies().columns().stream()
                .filter(column -> column.setting().isPresent() && column.holds(vessel.volume()))
                .flatMap((SupplyTable.Column column) -> column.setting().stream())
                .max(Comparator.comparingDouble(set -> set.gauge(atmosphere)))
                .map(set -> " With the reducing valve set to " + shown.pressure(set.gauge(atmosphere))
                        + ", this vessel is enough.")
                .orElse("");
    }

    /**
     * What it was charged to, where that is not what it should be; empty if nobody said, if a gauge shows no difference, or if it is too
     * small, so that another is to be fitted.
     */
    static Optional<String> charged(VesselAnswer answer, double target, QuantityFormat shown) {
        double atmosphere = answer.scenario().system().site().atmosphere();
        return answer.against()
                .filter(other -> answer.bought().isPresent())
                .flatMap(VesselAnswer.Against::charged)
                .map(charge -> charge.gauge(atmosphere))
                .filter(charge -> Math.abs(charge - target) > FELT)
                .map(charge -> "It was charged to " + shown.pressure(charge) + ": bring it to " + shown.pressure(target)
                        + ".");
    }
}
