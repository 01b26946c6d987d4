package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.Uncertain;

/** Which of the values a file stands for. */
enum Reach {
    /** All of them: the file as its owner sees it. */
    AS_WRITTEN {
        @Override
        String of(Uncertain quantity, String text) {
            return text;
        }
    },
    /** The lowest. */
    LOW {
        @Override
        String of(Uncertain quantity, String text) {
            return quantity.at(quantity.distribution().low());
        }
    },
    /** The highest. */
    HIGH {
        @Override
        String of(Uncertain quantity, String text) {
            return quantity.at(quantity.distribution().high());
        }
    };

    abstract String of(Uncertain quantity, String text);

    /** The value itself, or the one value out of its spread. */
    String of(String text, Kind<?> kind) {
        return Uncertain.read(text, kind).map(quantity -> of(quantity, text)).orElse(text);
    }
}
