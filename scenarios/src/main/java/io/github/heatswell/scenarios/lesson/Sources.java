package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.citation.Citation.Standing;

/** Sources that several lessons share. */
final class Sources {

    static final Citation WATER =
            new Citation("IAPWS-95, Release R6-95(2018), density of liquid water", Standing.SECOND_HAND);
    static final Citation WATER_TABLE =
            new Citation("A university's water table (Kell 1975 and others): growth and density", Standing.SEEN);
    static final Citation BOILING =
            new Citation("IAPWS R7-97(2012), equation 30, boiling pressure", Standing.SECOND_HAND);
    static final Citation BOYLE = new Citation("Boyle's law of gases, any physics textbook", Standing.FROM_MEMORY);
    static final Citation HANDBOOK =
            new Citation("ASHRAE Handbook HVAC Systems and Equipment, sizing of diaphragm tanks", Standing.FROM_MEMORY);
    static final Citation EXPANSION_CODE =
            new Citation("IPC 607.3, thermal expansion control, as adopted in Philadelphia P-607.3", Standing.SEEN);
    static final Citation BYPASS_CODE = new Citation(
            "Signal Hill, California (2019): local text in place of UPC 608.2, accepts regulators with a bypass",
            Standing.SEEN);
    static final Citation NOT_BY_RELIEF = new Citation(
            "Plumbing codes of Chicago and Spring Hill: a relief valve may not be what controls expansion",
            Standing.SEEN);
    static final Citation GROWTH_FLOW =
            new Citation("API 521, 5th edition, section 5.14, relief of heated liquid", Standing.FROM_MEMORY);
    static final Citation TANK_WALL =
            new Citation("Strength of materials, closed thin cylinder, any textbook", Standing.FROM_MEMORY);
    static final Citation PIPE_WALL =
            new Citation("Lame's solution for thick cylinders, any textbook", Standing.FROM_MEMORY);
    static final Citation PERMEABILITY =
            new Citation("Polymer Handbook, permeability of rubber; good to a factor of three", Standing.FROM_MEMORY);
    static final Citation DIN =
            new Citation("DIN 4807-5:1997, precharge, quoted in a trade lexicon", Standing.SECOND_HAND);
    static final Citation TP_CODE = new Citation("WAC 296-150V-1580(2), T&P valve at 99 degC", Standing.SEEN);
    static final Citation HOUSES =
            new Citation("The houses are invented; their numbers are ordinary ones", Standing.GIVEN);

    private Sources() {}
}
