package io.github.heatswell.scenarios.generated;

import io.github.heatswell.scenarios.file.FormatKey;
import io.github.heatswell.scenarios.file.FormatKey.Single;
import io.github.heatswell.scenarios.file.FormatRange;
import io.github.heatswell.scenarios.generated.Part.Keyed;
import io.github.heatswell.scenarios.generated.Part.Quantity;
import io.github.heatswell.scenarios.generated.Part.Several;
import io.github.heatswell.units.TemperatureUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/** Makes some quantities uncertain, as far as both ends stay possible. */
final class Uncertainties {

    /** What stands behind the sign is drawn up to so many times as far. */
    private static final double CUT_OFF = 1.5;

    private final Chance chance;
    private final double share;

    Uncertainties(Chance chance) {
        this.chance = chance;
        this.share = chance.with(0.3) ? 0.2 : 0;
    }

    void cast(Keyed file) {
        cast(file, Format.TOP);
    }

    private void cast(Keyed part, List<FormatKey> keys) {
        for (FormatKey key : keys) {
            Part value = part.values().get(key.name());
            if (value instanceof Keyed inner) {
                cast(inner, key.inner());
            } else if (value instanceof Several several) {
                several.keyed().forEach(item -> cast(item, key.inner()));
            } else if (value instanceof Quantity quantity
                    && quantity.suffix().isEmpty()
                    && !key.path().startsWith("run.")
                    && chance.with(share)) {
                part.put(key.name(), doubtful(key.single().orElseThrow(), quantity));
            }
        }
    }

    private Quantity doubtful(Single single, Quantity quantity) {
        FormatRange range = single.range().orElseThrow();
        double value = quantity.number().doubleValue();
        double low = quantity.unit().fromSi(range.low());
        double high = quantity.unit().fromSi(Math.min(range.high(), 1e6));
        double most = Math.min(value - low, high - value) / CUT_OFF;
        BigDecimal half = BigDecimal.valueOf(chance.between(0.01, 0.05) * most).round(new MathContext(2));
        if (!(half.doubleValue() > 1e-6)) {
            return quantity;
        }
        String unit = quantity.unit() == TemperatureUnit.FAHRENHEIT
                ? " degF"
                : quantity.unit() instanceof TemperatureUnit
                        ? " K"
                        : " " + quantity.unit().symbol();
        return new Quantity(quantity.number(), quantity.unit(), " +- " + half.toPlainString() + unit);
    }
}
