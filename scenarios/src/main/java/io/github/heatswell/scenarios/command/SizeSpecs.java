package io.github.heatswell.scenarios.command;

import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.sizing.PrechargeRule;
import io.github.heatswell.units.Pressure;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.TypeConversionException;

/** The options of a sizing. */
final class SizeSpecs {

    static final String LIMIT = "--limit";
    static final String RATING = "--rating";
    static final String NO_CODE_CAP = "--no-code-cap";
    static final String PRECHARGE = "--precharge";

    private static final Map<String, PrechargeRule> RULES =
            Map.of("static", PrechargeRule.STATIC, "din", PrechargeRule.STATIC_LESS_FIFTH_BAR);

    private SizeSpecs() {}

    static OptionSpec limit() {
        return pressure(
                LIMIT,
                "A limit of your own for the peak, such as '5 bar'. The lowest limit rules: this one, the reseat pressure"
                        + " of a relief valve less 3 %% of its set pressure, 80 psi, the ratings of vessel and tank.");
    }

    static OptionSpec rating() {
        return pressure(
                RATING,
                "Highest pressure the vessel is made for. Default: that of the scenario's vessel, else 10 bar.");
    }

    static OptionSpec noCodeCap() {
        return OptionSpec.builder(NO_CODE_CAP)
                .description("Leave out the cap of 80 psi, where no code with such a cap holds.")
                .build();
    }

    static OptionSpec precharge() {
        return OptionSpec.builder(PRECHARGE)
                .paramLabel("static|din")
                .type(PrechargeRule.class)
                .converters(SizeSpecs::rule)
                .description("Precharge: static, the supply's static pressure (the default), or din, 0.2 bar less.")
                .build();
    }

    private static OptionSpec pressure(String name, String description) {
        return OptionSpec.builder(name)
                .paramLabel("PRESSURE")
                .type(Pressure.class)
                .converters(SizeSpecs::pressure)
                .description(description)
                .build();
    }

    private static Pressure pressure(String text) {
        try {
            return QuantityReader.pressure(text);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }

    private static PrechargeRule rule(String text) {
        PrechargeRule rule = RULES.get(text.toLowerCase(Locale.ROOT));
        if (rule == null) {
            throw new TypeConversionException(Printable.quote(text) + " is neither static nor din");
        }
        return rule;
    }
}
