package io.github.heatswell.scenarios.lesson;

/** Cautions that several lessons share. */
final class Cautions {

    static final String LOOK_ONLY =
            "Look, but do not touch: hot water scalds. Local code and a licensed professional decide on any change.";
    static final String NEVER_PLUG =
            "Never plug, cap or downsize a relief valve, however much it drips. It keeps the tank from bursting.";
    static final String GAS_VALVE =
            "Leave the gas valve of an expansion vessel alone. Its pressure is set with the heater off and"
                    + " cold and the water side empty, by somebody who is licensed to.";
    static final String TP_VALVE =
            "Never touch, test or block a T&P valve on a hot tank: it lets out scalding water. Turn the"
                    + " heater off, keep away and call a licensed professional.";

    private Cautions() {}
}
