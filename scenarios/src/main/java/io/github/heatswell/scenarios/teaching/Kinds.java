package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.units.UnitSystem;

/** The units in which readings of each kind are written down. */
final class Kinds {

    private Kinds() {}

    static String unit(Measure.Kind kind, UnitSystem units) {
        boolean si = units == UnitSystem.SI;
        return switch (kind) {
            case GAUGE_PRESSURE, PRESSURE_DIFFERENCE -> units.pressure().symbol();
            case TEMPERATURE -> si ? "\u00b0C" : "\u00b0F";
            case TEMPERATURE_DIFFERENCE -> si ? "K" : "\u00b0F";
            case VOLUME -> units.volume().symbol();
            case FLOW -> units.flow().symbol();
            case POWER -> units.power().symbol();
            case MASS -> units.mass().symbol();
            case LENGTH -> si ? "m" : "in";
            case MOMENT -> units.moment().symbol();
            case TIME -> "min";
            case SHARE -> "%";
        };
    }
}
