package io.github.heatswell.scenarios.report;

import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.units.Decimals;

/** Amounts of money as reports show them: two decimals, then the currency. */
final class Money {

    private static final int DECIMALS = 2;

    private Money() {}

    static String of(NominalSize.Price price) {
        return of(price.amount().doubleValue(), price.currency());
    }

    static String of(double amount, String currency) {
        return Decimals.fixed(amount, DECIMALS) + " " + currency;
    }
}
