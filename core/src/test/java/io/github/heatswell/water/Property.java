package io.github.heatswell.water;

/** What is compared with a {@link Reference}, each with its own measure of error. */
enum Property {
    DENSITY {
        @Override
        double error(LiquidWater.State state, Reference reference) {
            return state.density() / reference.density() - 1;
        }
    },
    /** Absolute (1/K). */
    EXPANSIVITY {
        @Override
        double error(LiquidWater.State state, Reference reference) {
            return state.expansivity() - reference.expansivity();
        }
    },
    COMPRESSIBILITY {
        @Override
        double error(LiquidWater.State state, Reference reference) {
            return state.compressibility() / reference.compressibility() - 1;
        }
    },
    HEAT_CAPACITY {
        @Override
        double error(LiquidWater.State state, Reference reference) {
            return state.heatCapacity() / reference.heatCapacity() - 1;
        }
    },
    /** Absolute (J/kg). */
    ENTHALPY {
        @Override
        double error(LiquidWater.State state, Reference reference) {
            return state.enthalpy() - reference.enthalpy();
        }
    },
    /** Only above 10 C: a relative error has no meaning near the zero at 4 C. */
    EXPANSIVITY_RELATIVE {
        @Override
        double error(LiquidWater.State state, Reference reference) {
            return state.expansivity() / reference.expansivity() - 1;
        }

        @Override
        boolean appliesTo(Reference reference) {
            return reference.temperature() >= COLDEST_FOR_RELATIVE;
        }
    },
    /** beta/kappa, the pressure rise of shut-in water per kelvin; only above 10 C. */
    PRESSURE_RISE_RELATIVE {
        @Override
        double error(LiquidWater.State state, Reference reference) {
            double expected = reference.expansivity() / reference.compressibility();
            return state.expansivity() / state.compressibility() / expected - 1;
        }

        @Override
        boolean appliesTo(Reference reference) {
            return reference.temperature() >= COLDEST_FOR_RELATIVE;
        }
    },
    /** From w^2 = v^2/(v kappa - T v^2 beta^2/c_p): one number that all of rho, beta, kappa and c_p enter. */
    SOUND_SPEED {
        @Override
        double error(LiquidWater.State state, Reference reference) {
            return soundSpeed(state) / reference.soundSpeed() - 1;
        }

        @Override
        boolean appliesTo(Reference reference) {
            return !Double.isNaN(reference.soundSpeed());
        }
    };

    private static final double COLDEST_FOR_RELATIVE = 283.15;

    abstract double error(LiquidWater.State state, Reference reference);

    boolean appliesTo(Reference reference) {
        return true;
    }

    static double soundSpeed(LiquidWater.State state) {
        double volume = 1 / state.density();
        double isentropicCompressibility = state.compressibility()
                - state.temperature() * volume * state.expansivity() * state.expansivity() / state.heatCapacity();
        return Math.sqrt(volume / isentropicCompressibility);
    }
}
