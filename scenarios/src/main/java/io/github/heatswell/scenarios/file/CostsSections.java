package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Fields.amount;

import io.github.heatswell.scenarios.quantity.Kind;
import java.util.List;

/** What water and vessels cost. */
final class CostsSections {

    private static final int MAX_SIZES = 200;

    private static final Section<CostsDraft.Vessel, CostsDraft.Vessel> VESSEL = new Section<>(
            "vessels",
            CostsDraft.Vessel::new,
            CostsDraft.Vessel::end,
            List.of(
                    amount("volume", "size on sale", "12 L", Kind.VOLUME, CostsDraft.Vessel::volume),
                    new Field<>(
                                    "price",
                                    "price, in the currency; unknown if left out",
                                    "52.50",
                                    Forms.price("amount of money without a currency sign", CostsDraft.Vessel::price))
                            .leftOutFreely()));

    static final Section<CostsDraft, Costs> COSTS = new Section<>(
            "costs",
            CostsDraft::new,
            CostsDraft::end,
            List.of(
                    new Field<>(
                                    "currency",
                                    "currency of the prices; EUR if left out",
                                    "EUR",
                                    Forms.text(8, CostsDraft::currency))
                            .leftOutFreely(),
                    new Field<>(
                                    "water",
                                    "price of cold water including sewage; if left out, an invented one",
                                    "4.50 per m3",
                                    Forms.price("amount of money per m3, per L or per gal", CostsDraft::water))
                            .leftOutFreely(),
                    Field.of(
                                    "vessels",
                                    "expansion vessels on sale; if left out, the common sizes at invented prices",
                                    "[{ volume: 12 L, price: 52.50 }]",
                                    Nested.list(VESSEL, MAX_SIZES, CostsDraft::vessels))
                            .leftOutFreely()));

    private CostsSections() {}
}
