package io.github.heatswell.scenarios.page;

import io.github.heatswell.assessment.Measure;
import org.teavm.jso.JSObject;

/** A house that was read, as the page holds it. */
public interface House extends JSObject {

    /**
     * The house with other values.
     *
     * @param fields the fields to change, such as {@code tank.volume}
     * @param values their values as a file has them, such as {@code 150 L}; {@code none} takes a field out
     * @return an object with the {@code house}, or with the {@code faults}; the column of each is the number of the change, from 1
     */
    JSObject with(String[] fields, String[] values);

    /** {@return what was described, for the drawing and the controls} */
    JSObject described();

    /** {@return the run: its trace, events, figures and what is said of it} */
    JSObject run();

    /** {@return the peaks of the worst heat-up over size and precharge of its vessel, and what is said of them} */
    JSObject map();

    /**
     * The answers of some of two hundred such houses.
     *
     * @param part which part of them, from 0
     * @param parts how many parts there are
     * @return an object with the numbers {@code answers}, for {@link #band}
     */
    JSObject sampled(int part, int parts);

    /**
     * Such houses together.
     *
     * @param answers those of all parts, in their order
     * @return between which pressures nine of ten such houses lie over the run, and what is said of them
     */
    JSObject band(double[] answers);

    /** {@return what a gauge should read at the moments of a check, and how it is done} */
    JSObject check();

    /**
     * A reading of the gauge as somebody types it.
     *
     * @param text the number, with its unit
     * @return an object with the {@code pressure} (Pa, gauge), and the {@code hazard} it shows or no text; or with what is {@code wrong}
     */
    JSObject reading(String text);

    /**
     * What readings mean that are off the {@link #check}.
     *
     * @param kinds when they were taken, as the check names it
     * @param above how far each lies above (Pa) what agrees or, negative, below it
     * @return whole sentences
     */
    String offSheet(String[] kinds, double[] above);

    /** {@return the house as a scenario file, all changes included} */
    String text();

    /**
     * A quantity in the units of the house.
     *
     * @param kind what it measures, the name of a {@link Measure.Kind}
     * @param value its value, in SI
     * @return number and unit
     */
    String said(String kind, double value);

    /**
     * A time of day as people at the place of the house tell it.
     *
     * @param minutes since midnight, below 1440
     * @return such as {@code 06:12}
     */
    String clock(int minutes);

    /**
     * A quantity as a number in the units of the house, for axes and controls.
     *
     * @param kind as above
     * @param value its value, in SI
     * @return the number, not rounded
     */
    double number(String kind, double value);

    /**
     * The unit of such a number as files have it.
     *
     * @param kind as above
     * @return such as {@code degC}
     */
    String unit(String kind);

    /**
     * The unit of such a number as people read it.
     *
     * @param kind as above
     * @return such as {@code °C}
     */
    String symbol(String kind);

    /** {@return of the run without its trace the {@code peak} (Pa, gauge), what is {@code discharged} (m3), and the {@code times} of its events (s)} */
    JSObject summary();

    /**
     * What a sound vessel of a size would do, charged to the supply, as the command tries it.
     *
     * @param volume the size (m3)
     * @return an object with its {@code precharge} and {@code peak} (Pa, gauge) of the worst heat-up, or of the run where that is higher;
     *     whether it {@code drips}, where no pressure beyond the relief setting is reached; whether it would be {@code higher}, had the
     *     tank borne it; or with why it is {@code refused}
     */
    JSObject sized(double volume);

    /** {@return which size to take, its {@code volume} (m3), not a number if none, and what is {@code said} of it and of the smallest, as the command does; or why it is {@code refused}} */
    JSObject advised();

    /**
     * Words of the page in the words of the place.
     *
     * @param words what is said where nothing is known of the place
     * @return the same, as it is said there
     */
    String spelled(String words);
}
