package io.github.heatswell.scenarios.lesson;

/** Cautions that several lessons share. */
final class Cautions {

    static final String LOOK_ONLY =
            "Look, but do not touch: hot water scalds. Local code and a licensed professional decide on any change.";
    static final String NEVER_PLUG =
            "Never plug, cap or downsize a relief valve, however much it drips. It keeps the tank from bursting.";
    static final String GAS_VALVE =
            "Check or pump the charge of an expansion vessel only with the heater off and cold, the vessel isolated and"
                    + " its water side drained. Never go above the pressure on its plate. Local code decides who may.";
    static final String OVERHEATED =
            "If hot water comes far too hot, or as steam, keep away from tank and taps. Turn the heater off where that"
                    + " is safe, and call a licensed professional.";
    static final String TP_VALVE =
            "Never touch, test or block a T&P valve on a hot tank: it lets out scalding water. Turn the"
                    + " heater off, keep away and call a licensed professional.";

    private Cautions() {}
}
