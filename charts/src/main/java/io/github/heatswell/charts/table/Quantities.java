package io.github.heatswell.charts.table;

import io.github.heatswell.result.RunSummary;
import io.github.heatswell.units.UnitSystem;

/**
 * Quantities as cells, and the units as column names say them. The decimals are fine enough that small systems are not
 * rounded away: a pressure to 1 Pa, a volume to a tenth of a millilitre, a temperature to a ten-thousandth of a degree.
 */
final class Quantities {

    static final int TIME_DECIMALS = 3;

    private final UnitSystem units;
    private final boolean metric;

    Quantities(UnitSystem units) {
        this.units = units;
        this.metric = units.isMetric();
    }

    String pressureUnit() {
        return units.pressure().symbol();
    }

    String temperatureUnit() {
        return units.temperature().symbol();
    }

    String volumeUnit() {
        return units.volume().symbol();
    }

    String flowUnit() {
        return named(units.flow().symbol());
    }

    String powerUnit() {
        return named(units.power().symbol());
    }

    int pressureDecimals() {
        return units.pressureDecimals() + 3;
    }

    int temperatureDecimals() {
        return 4;
    }

    int volumeDecimals() {
        return metric ? 4 : 5;
    }

    int flowDecimals() {
        return metric ? 5 : 6;
    }

    int powerDecimals() {
        return metric ? 4 : 1;
    }

    /** A time (s), to a thousandth, without zeros at its end. */
    static String time(double seconds) {
        return FixedDecimals.trimmed(seconds, TIME_DECIMALS);
    }

    /** A gauge pressure from an absolute one (Pa). */
    String gauge(RunSummary summary, double absolute) {
        return pressure(summary.gauge(absolute));
    }

    /** A pressure (Pa), against whatever it is measured. */
    String pressure(double pascal) {
        return FixedDecimals.of(units.pressure().fromSi(pascal), pressureDecimals());
    }

    /** A temperature (K). */
    String temperature(double kelvin) {
        return FixedDecimals.of(units.temperature().fromSi(kelvin), temperatureDecimals());
    }

    /** A volume (m3). */
    String volume(double cubicMetres) {
        return FixedDecimals.of(units.volume().fromSi(cubicMetres), volumeDecimals());
    }

    private static String named(String symbol) {
        return symbol.replace("/", "_per_");
    }
}
