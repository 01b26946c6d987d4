package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.source.Source;
import io.github.heatswell.source.Source.Standing;

/** Sources that several lessons share. */
final class Sources {

    static final Source WATER =
            new Source("IAPWS-95, Release R6-95(2018), density of liquid water", Standing.SECOND_HAND);
    static final Source WATER_TABLE =
            new Source("A university's water table (Kell 1975 and others): growth and density", Standing.SEEN);
    static final Source BOILING = new Source("IAPWS R7-97(2012), equation 30, boiling pressure", Standing.SECOND_HAND);
    static final Source BOYLE = new Source("Boyle's law of gases, any physics textbook", Standing.FROM_MEMORY);
    static final Source HANDBOOK =
            new Source("ASHRAE Handbook HVAC Systems and Equipment, sizing of diaphragm tanks", Standing.FROM_MEMORY);
    static final Source EXPANSION_CODE =
            new Source("IPC 607.3, thermal expansion control, as adopted in Philadelphia P-607.3", Standing.SEEN);
    static final Source BYPASS_CODE = new Source(
            "Signal Hill, California (2019): local text in place of UPC 608.2, accepts regulators with a bypass",
            Standing.SEEN);
    static final Source NOT_BY_RELIEF = new Source(
            "Plumbing codes of Chicago and Spring Hill: a relief valve may not be what controls expansion",
            Standing.SEEN);
    static final Source GROWTH_FLOW =
            new Source("API 521, 5th edition, section 5.14, relief of heated liquid", Standing.FROM_MEMORY);
    static final Source TANK_WALL =
            new Source("Strength of materials, closed thin cylinder, any textbook", Standing.FROM_MEMORY);
    static final Source PIPE_WALL =
            new Source("Lame's solution for thick cylinders, any textbook", Standing.FROM_MEMORY);
    static final Source PERMEABILITY =
            new Source("Polymer Handbook, permeability of rubber; good to a factor of three", Standing.FROM_MEMORY);
    static final Source DIN = new Source("DIN 4807-5:1997, precharge, quoted in a trade lexicon", Standing.SECOND_HAND);
    static final Source TP_CODE = new Source("WAC 296-150V-1580(2), T&P valve at 99 degC", Standing.SEEN);
    static final Source HOUSES = new Source("The houses are invented; their numbers are ordinary ones", Standing.GIVEN);

    private Sources() {}
}
