package io.github.heatswell.checksheet;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.Objects;

/**
 * Procedure by which an owner checks an installation with a pressure gauge, for comparison with the simulation. The
 * gauge sits on a cold tap downstream of the supply valve, as high as the tank's drain cock, or on the cock itself.
 * Immutable.
 *
 * <ol>
 * <li>Cold static: with the heater off, hot water is run until it comes cold, all taps are closed, and the gauge is read
 * 10 min later. It shows the static pressure of the supply, with a reducing valve that
 * at which it locks up.
 * <li>The heater heats the tank to its set point. A stated amount of hot water is drawn, a third of the tank unless
 * said otherwise, and all taps are closed. From then on none is used.
 * <li>After the draw: the gauge is read as soon as it is steady, before heating has raised it.
 * <li>It is read 15 min and 30 min after that.
 * <li>Peak: the highest reading until the thermostat has switched the heater off.
 * <li>Next morning: the reading 10 h after the taps were closed.
 * </ol>
 *
 * <p>{@link #steps(QuantityFormat)} says the same to the owner, with what to watch for.
 *
 * <p>The simulation does the same with the house as described: mains timetable, feed, vessel, relief valves, layers,
 * leaks, air and heights stay; its draws and outages are left out. For the cold reading the heater is off
 * and the tank as warm as the room: what cold water in it warms up in these 10 min is left out. For the others the
 * tank begins at its set point and at the pressure of the supply, at the clock time of the described start, and the
 * stated amount is drawn at once, at 10 L/min or a little less so that it takes whole minutes; from large tanks
 * faster, in half an hour, but never above 200 L/min.
 *
 * @param amount the hot water drawn (m3), above 0 and not more than the tank holds
 */
public record CheckProcedure(double amount) {

    private static final double LITRE = 1e-3;
    private static final Limits AMOUNT = Limits.above("amount", 0, 20);

    /**
     * Checks the amount.
     *
     * @param amount the hot water drawn (m3), above 0 and not more than the tank holds
     * @throws IllegalArgumentException if the amount is not above 0 to 20 m3
     */
    public CheckProcedure {
        amount = AMOUNT.checkSi(amount, VolumeUnit.LITRE);
    }

    /**
     * The usual procedure for a house: a third of the tank is drawn, in whole litres if it holds enough.
     *
     * @param house the house
     * @return the procedure
     */
    public static CheckProcedure of(HotWaterSystem house) {
        double third = Objects.requireNonNull(house, "house").tank().volume() / 3;
        return new CheckProcedure(third < 10 * LITRE ? third : Math.rint(third / LITRE) * LITRE);
    }

    /**
     * The same procedure with another amount drawn.
     *
     * @param value the amount, above 0 and not more than the tank holds
     * @param unit its unit
     * @return the procedure
     * @throws IllegalArgumentException if the amount is not above 0 to 20 m3
     */
    public CheckProcedure drawing(double value, VolumeUnit unit) {
        return new CheckProcedure(AMOUNT.check(value, unit));
    }

    /**
     * How long the draw takes.
     *
     * @return the time (s), whole minutes
     */
    public double drawTime() {
        double atTenLitres = Math.ceil(amount / (10 * LITRE) - 1e-9);
        double atMost = Math.ceil(amount / (200 * LITRE) - 1e-9);
        return 60 * Math.max(atMost, Math.min(30, atTenLitres));
    }

    /**
     * The procedure in plain words.
     *
     * @param format how quantities are written
     * @return the steps, in their order
     */
    public List<String> steps(QuantityFormat format) {
        return List.of(
                "If the tank bulges, rumbles or steams, stay away from it. If you can do it safely from elsewhere, trip the"
                        + " heater's breaker or shut the gas at the meter, then leave and call for help. Never plug, cap or"
                        + " downsize a relief valve.",
                "With the heater off and cool, screw the gauge onto the cold pipe downstream of every reducing valve and"
                        + " check valve: a hose tap there, or the test point of the inlet valves, about as high as the tank's drain cock, and open it slowly. The drain cock itself is second"
                        + " choice: a plastic one may leak in ten hours and not close again.",
                "Cold static: with the heater off, run a hot tap until the water comes cold; it may scald at first. Close all taps,"
                        + " wait 10 min, and read the gauge.",
                "Turn the heater on and wait until its thermostat switches it off.",
                "After the draw: run " + amount(format) + " of hot water through a hose to a drain in about "
                        + format.time(drawTime())
                        + "; it may scald. Close all taps, note the time, and read the gauge as soon as it is steady. Use no tap,"
                        + " hot or cold, from now on.",
                "Read the gauge 15 min and 30 min after the taps were closed, even if the heater has switched off by then.",
                "Peak: note the highest reading until the thermostat switches the heater off. A gauge with a maximum pointer keeps"
                        + " it for you. Watch from a distance whether a relief valve drips; what comes out may scald.",
                "Next morning: read the gauge 10 h after the taps were closed, before the first tap is opened.",
                "Close the tap and take the gauge off only when the water is cool. Local code and a licensed"
                        + " professional decide what is done about what you find.");
    }

    /** Nobody runs a tenth of a gallon into a drain. */
    private String amount(QuantityFormat format) {
        return format.units().isMetric()
                ? format.volume(amount)
                : "about " + format.given(VolumeUnit.US_GALLON.fromSi(amount), VolumeUnit.US_GALLON, 2);
    }

    /**
     * Simulates the procedure.
     *
     * @param house the house as described
     * @return the readings its owner should see
     * @throws IllegalArgumentException if more is drawn than the tank holds
     * @throws io.github.heatswell.simulation.SimulationException if the equations could not be integrated
     */
    public CheckSheet simulate(HotWaterSystem house) {
        if (amount > Objects.requireNonNull(house, "house").tank().volume()) {
            QuantityFormat format = QuantityFormat.ascii(UnitSystem.SI);
            throw new IllegalArgumentException("amount: " + format.volume(amount) + " is more than the tank holds, "
                    + format.volume(house.tank().volume()));
        }
        return new CheckRun(this, house).sheet();
    }
}
