package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.units.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The values at which a slider's house is run: those of the lesson, and as many between them as make the steps small. */
final class SliderValues {

    /** With fewer runs than this the steps between them are coarse. */
    private static final int FEWEST = 15;

    private static final int DECIMALS = 2;

    private SliderValues() {}

    /** The slider with values between its own, or the same slider if its values are no numbers. */
    static LessonSlider refined(LessonSlider slider) {
        int parts = 1;
        while ((slider.values().size() - 1) * parts + 1 < FEWEST) {
            parts *= 2;
        }
        try {
            return new LessonSlider(
                    slider.house(), slider.label(), slider.fields(), between(slider.values(), parts), slider.unit());
        } catch (NumberFormatException e) {
            return slider;
        }
    }

    private static List<String> between(List<String> given, int parts) {
        List<String> values = new ArrayList<>();
        for (int i = 0; i + 1 < given.size(); i++) {
            BigDecimal low = new BigDecimal(given.get(i));
            BigDecimal step = new BigDecimal(given.get(i + 1)).subtract(low);
            values.add(given.get(i));
            for (int part = 1; part < parts; part++) {
                BigDecimal exact =
                        low.add(step.multiply(BigDecimal.valueOf(part)).divide(BigDecimal.valueOf(parts)));
                String value = exact.setScale(DECIMALS, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString();
                if (!values.contains(value) && !given.contains(value)) {
                    values.add(value);
                }
            }
        }
        values.add(given.get(given.size() - 1));
        return values;
    }

    /** A value of the slider in a system of units; as it is written if its unit has no counterpart. */
    static String shown(LessonSlider slider, int index, UnitSystem units) {
        Optional<KnownUnit> unit = KnownUnit.of(slider.unit());
        try {
            double value = Double.parseDouble(slider.values().get(index));
            return unit.map(known -> new Measure(known.kind(), known.toSi(value)).text(units))
                    .orElse(slider.text(index));
        } catch (NumberFormatException e) {
            return slider.text(index);
        }
    }
}
