package io.github.heatswell.system;

import java.util.Optional;

/** Requirements on the gas law of a vessel, between the empty vessel and its acceptance limit. */
final class GasLawRules {

    /** Where the precharge is asked, rounding may change it by this part (-). */
    private static final double SAME = 1e-9;
    /** The law is looked at at so many volumes. */
    private static final int VOLUMES = 200;
    /** Gas with a temperature of its own is looked at from so much of the temperature around it (-) */
    private static final double COLDEST = 0.8;
    /** to this: more than compression and expansion can do. */
    private static final double WARMEST = 1.6;

    private final GasLaw law;
    private final ExpansionVessel vessel;
    private final double charge;
    private final double warmth;

    /**
     * The rules for a vessel with a law of its own.
     *
     * @param vessel the vessel
     * @param law its law
     * @param atmosphere the pressure of the air (Pa, absolute)
     * @param warmth the absolute temperature around its gas over that at which the precharge was set (-)
     */
    GasLawRules(ExpansionVessel vessel, GasLaw law, double atmosphere, double warmth) {
        this.law = law;
        this.vessel = vessel;
        charge = vessel.precharge().absolute(atmosphere);
        this.warmth = warmth;
    }

    /** {@return what the law does not keep, or empty} */
    Optional<String> broken() {
        try {
            double empty = law.pressure(charge, 1, 1);
            if (!(Math.abs(empty - charge) <= SAME * charge)) {
                return Optional.of("gives " + empty + " Pa for the empty vessel as charged, where the precharge is "
                        + charge + " Pa");
            }
            Optional<String> broken = brokenAt(warmth);
            if (broken.isPresent() || vessel.gasTimeConstant().isEmpty()) {
                return broken;
            }
            return brokenAt(COLDEST * warmth)
                    .or(() -> brokenAt(WARMEST * warmth))
                    .or(() -> brokenByWarmth(1))
                    .or(() -> brokenByWarmth(vessel.gasShareAtLimit()));
        } catch (RuntimeException thrown) {
            return Optional.of("fails: " + thrown);
        }
    }

    /** What is wrong with it at a temperature, in those of charging. */
    private Optional<String> brokenAt(double warm) {
        double least = vessel.gasShareAtLimit();
        for (int i = 0; i <= VOLUMES; i++) {
            double share = least + (1 - least) * i / VOLUMES;
            double slope = law.byShare(charge, share, warm);
            if (!(Double.isFinite(law.pressure(charge, share, warm)) && Double.isFinite(slope) && slope < 0)) {
                return Optional.of("must give a finite pressure that falls as the gas expands; at " + share
                        + " of the volume it gives " + law.pressure(charge, share, warm) + " Pa with the slope " + slope
                        + " Pa");
            }
        }
        return new StatedCurve(share -> law.pressure(charge, share, warm), share -> law.byShare(charge, share, warm))
                .contradiction(least, 1, charge)
                .map(found -> contradicts(found, "of the volume"));
    }

    private Optional<String> brokenByWarmth(double share) {
        for (double warm : new double[] {COLDEST * warmth, warmth, WARMEST * warmth}) {
            double slope = law.byWarmth(charge, share, warm);
            if (!(slope >= 0 && Double.isFinite(slope))) {
                return Optional.of(
                        "must not fall as the gas warms; its slope is " + slope + " Pa at " + share + " of the volume");
            }
        }
        return new StatedCurve(warm -> law.pressure(charge, share, warm), warm -> law.byWarmth(charge, share, warm))
                .contradiction(COLDEST * warmth, WARMEST * warmth, charge)
                .map(found -> contradicts(found, "of the temperature at charging"));
    }

    private static String contradicts(StatedCurve.Contradiction found, String of) {
        return "changes by " + found.rise() + " Pa from " + found.from() + " to " + found.to() + " " + of
                + ", with the slope " + found.slope() + " Pa; so it jumps, or its slope is not its derivative";
    }
}
