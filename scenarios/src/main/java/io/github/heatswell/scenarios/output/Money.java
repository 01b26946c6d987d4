package io.github.heatswell.scenarios.output;

import io.github.heatswell.scenarios.wording.Digits;
import io.github.heatswell.sizing.NominalSize;

/** Amounts of money as reports show them: two decimals, then the currency. */
final class Money {

    private static final int DECIMALS = 2;

    private Money() {}

    static String of(NominalSize.Price price) {
        return of(price.amount().doubleValue(), price.currency());
    }

    static String of(double amount, String currency) {
        return Digits.fixed(amount, DECIMALS) + " " + currency;
    }
}
