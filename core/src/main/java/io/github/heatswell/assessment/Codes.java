package io.github.heatswell.assessment;

import static io.github.heatswell.citation.Citation.Standing.SECOND_HAND;
import static io.github.heatswell.citation.Citation.Standing.SEEN;

import io.github.heatswell.assessment.Finding.Authority;

/** Sources cited by more than one rule. */
final class Codes {

    static final Authority EXPANSION_CONTROL = Authority.code(
            "codes of many places, such as IPC 607.3 adopted in Philadelphia (P-607.3) and Chicago (18-29-607): a device to"
                    + " control expansion behind a check valve, reducing valve or backflow preventer",
            SEEN);

    /** A bypass is no exemption. */
    static final Authority EXPANSION_BEHIND_REGULATOR = Authority.code(
            "IPC 607.3 as adopted in Philadelphia (P-607.3) and Chicago (18-29-607): a device to control expansion behind a"
                    + " reducing valve; UPC 608.2 (2015, 2024): an expansion tank downstream of each regulator; no"
                    + " exemption for a bypass in either",
            SEEN);

    static final Authority RELIEF_IS_NO_CONTROL = Authority.code(
            "codes of many places, such as those of the IPC family (lineage of 504.4) adopted in Chicago and Spring Hill",
            SEEN);

    /** Where a vessel is a choice, and a valve made for the expansion drips. */
    static final Authority RELIEF_MAY_DRIP = Authority.practice(
            "German trade page: without a vessel the diaphragm safety valve drips at every heat-up; US codes, such as those of"
                    + " Chicago and Spring Hill, accept no relief valve as expansion control",
            SECOND_HAND);

    /** What valves on the cold inlet are made for, and how much they discharge. */
    static final Authority MADE_FOR_EXPANSION = Authority.practice(
            "EN 1487:2014 and EN 1488:2021, scopes: fitted to the cold supply of a storage heater, to limit its pressure and that"
                    + " of expansion; two French plumbers' pages: it drips while the water heats, at most about 3 % of the tank"
                    + " a day, and a vessel ends that",
            SECOND_HAND);

    static final Authority OPENS_FIRST = Authority.practice(
            "trade in New Zealand: the expansion valve is set below the combined temperature and pressure relief valve",
            SECOND_HAND);

    static final Authority RELIEF_SETTING = Authority.code(
            "Washington WAC 296-150V-1580(2): 150 psi or the tank's rated pressure, whichever is lower, and 210 degF",
            SEEN);

    static final Authority RELIEF_CAPACITY = Authority.code(
            "municipal codes as adopted in Chicago and Loudonville: relief capacity not below the heater's input",
            SEEN);

    static final Authority TWO_DEVICES = Authority.code(
            "Approved Document G3, quoted by a building-control body: two safety devices besides the thermostat",
            SECOND_HAND);

    static final Authority LEGIONELLA = Authority.code(
            "HSE (United Kingdom), hot and cold water systems, and HSG274 Part 2 (2014): store at 60 degC or more",
            SEEN);

    static final Authority PRECHARGE = Authority.practice(
            "precharge equal to the supply's static pressure, or 0.2 bar to 0.3 bar below it (DIN 4807-5 as quoted by a"
                    + " trade page)",
            SECOND_HAND);

    static final Authority SUPPLY_TO_RELIEF = Authority.practice(
            "older DIN 1988-2 by a heater manual: supply at most 80 % of the relief set; EN 806-2 16.1 by a trade paper: 75 %",
            SECOND_HAND);

    static final Authority SET_TOLERANCE = Authority.computed(
            "our own judgement: tolerance of the set pressure taken as 3 %; no standard for these valves was read");

    /** What draws of 3 gallons or less do to the top of a tank. */
    static final Authority STACKING = Authority.practice(
            "a US heater maker's training paper of 2015: up to 30 degF hotter in gas heaters and about 5 degF hotter in electric ones, by repeated"
                    + " draws of 3 gallons or less",
            SECOND_HAND);

    static final Authority BURNS = Authority.practice(
            "US Consumer Product Safety Commission, document 5098: 2 s at 150 degF, 6 s at 140 degF, 30 s at 130 degF, 5 min at 120 degF",
            SECOND_HAND);

    static final Authority RUN = Authority.computed("what the run shows");

    static final Authority DESCRIPTION = Authority.computed("what the description says");

    private Codes() {}
}
