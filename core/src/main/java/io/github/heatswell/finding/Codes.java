package io.github.heatswell.finding;

import static io.github.heatswell.source.Source.Standing.FROM_MEMORY;
import static io.github.heatswell.source.Source.Standing.SECOND_HAND;
import static io.github.heatswell.source.Source.Standing.SEEN;

/** The authorities more than one rule refers to. */
final class Codes {

    /** 80 psi. */
    static final Authority STATIC_80_PSI = Authority.code(
            "UPC/CPC 608.2 as adopted in Signal Hill; IPC 604.8 as quoted in Philadelphia P-1304.2: 80 psi", SEEN);

    static final Authority EXPANSION_CONTROL =
            Authority.code("IPC 607.3 as adopted in Philadelphia P-607.3: thermal expansion control", SEEN);

    static final Authority RELIEF_IS_NO_CONTROL = Authority.code(
            "municipal codes of the IPC family, lineage of 504.4, as adopted in Chicago and Spring Hill", SEEN);

    static final Authority RELIEF_SETTING = Authority.code(
            "Washington WAC 296-150V-1580(2): 150 psi or the tank's rated pressure, whichever is lower, and 210 degF",
            SEEN);

    static final Authority RELIEF_CAPACITY = Authority.code(
            "municipal codes as adopted in Chicago and Loudonville: relief capacity not below the heater's input",
            SEEN);

    static final Authority TWO_DEVICES = Authority.code(
            "Approved Document G3, quoted by a building-control body: two safety devices besides the thermostat",
            SECOND_HAND);

    static final Authority LEGIONELLA =
            Authority.code("HSE, hot and cold water systems, and HSG274 Part 2 (2014): store at 60 degC or more", SEEN);

    static final Authority PRECHARGE = Authority.practice(
            "precharge equal to the supply's static pressure, or 0.2 bar to 0.3 bar below it (DIN 4807-5 as quoted by a"
                    + " trade page)",
            SECOND_HAND);

    static final Authority SUPPLY_TO_RELIEF = Authority.practice(
            "German teaching sheet and trade page on DIN 4807-5: supply at most 75 % to 80 % of the relief set",
            SECOND_HAND);

    static final Authority SET_TOLERANCE =
            Authority.code("ISO 4126-1 section 7: tolerance of the set pressure, 3 %", FROM_MEMORY);

    static final Authority RUN = Authority.computed("what the run shows");

    static final Authority DESCRIPTION = Authority.computed("what the description says");

    private Codes() {}
}
