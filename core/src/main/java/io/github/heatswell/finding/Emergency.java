package io.github.heatswell.finding;

/** What to do beside a tank that nobody should go near. */
final class Emergency {

    /** For water that boils, or would in the open, and for pressure beyond what a tank is tested to. */
    static final String STAY_AWAY =
            "Stay away from the tank. If you can do it safely from elsewhere, trip the heater's breaker"
                    + " or shut the gas at the meter. Leave and call for help. Do not lift the relief valve, open no tap and"
                    + " let no cold water in.";

    private Emergency() {}
}
