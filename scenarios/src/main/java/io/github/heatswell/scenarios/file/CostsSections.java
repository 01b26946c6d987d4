package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Field.amount;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.Price;
import java.util.List;

/** What water and vessels cost. */
final class CostsSections {

    private static final int MAX_SIZES = 200;

    private static final Section<Costs.Size, Costs.Size> VESSEL = new Section<>(
            "vessels",
            Costs.Size::new,
            size -> size,
            List.of(
                    amount("volume", "size on sale", "12 L", Kind.VOLUME, Costs.Size::volume),
                    new Field<>(
                                    "price",
                                    "price, in the currency; unknown if left out",
                                    "52.50",
                                    Form.price("amount of money without a currency sign", Price::of, Costs.Size::price))
                            .leftOutFreely()));

    static final Section<Costs.Builder, Costs.Builder> COSTS = new Section<>(
            "costs",
            Costs.Builder::new,
            costs -> costs,
            List.of(
                    new Field<>(
                                    "currency",
                                    "currency of the prices; if left out, EUR, or USD in a file in US units",
                                    "EUR",
                                    Form.text(8, Costs.Builder::currency))
                            .leftOutFreely(),
                    new Field<>(
                                    "water",
                                    "price of cold water including sewage; if left out, an invented one",
                                    "4.50 per m3",
                                    Form.price(
                                            "amount of money per m3, per L or per gal",
                                            Price::perVolume,
                                            Costs.Builder::water))
                            .leftOutFreely(),
                    Field.of(
                                    "vessels",
                                    "expansion vessels on sale; if left out, the common sizes at invented prices",
                                    "[{ volume: 12 L, price: 52.50 }]",
                                    Nested.list(VESSEL, MAX_SIZES, Costs.Builder::vessels))
                            .leftOutFreely()));

    private CostsSections() {}
}
