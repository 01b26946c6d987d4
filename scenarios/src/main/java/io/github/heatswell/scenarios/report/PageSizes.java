package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.RulesHere;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.place.Customs;
import io.github.heatswell.place.Place;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.scenarios.choice.DischargingValve;
import io.github.heatswell.scenarios.choice.SupplyTable;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.YearlyWater;
import io.github.heatswell.scenarios.file.Costs;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.study.SizeCertainty;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.Symbols;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** What each vessel on sale would do, and what the water of a year costs, as the printed report shows them. */
final class PageSizes {

    private static final int DECIMALS = 2;

    private static final Map<String, String> SIGNS = Map.of("USD", "$", "GBP", "\u00a3", "EUR", "\u20ac");
    /** Sizes are the same within this share of one. */
    private static final double SAME_SIZE = 1e-9;

    private static final String NOT_KNOWN = "not known";

    /** What a relief valve must open below the tank's plate (Pa) for a later one to be worth a question; our own judgement. */
    private static final double MORE_ROOM = 1.5e5;

    private PageSizes() {}

    /** The sizes of a sizing, and how sure each is as far as it was looked at; none where there is nothing to choose. */
    static Optional<Grid> of(VesselAnswer answer, QuantityFormat shown) {
        return answer.sizing().outcome() == SizingResult.Outcome.SIZED
                        || answer.recommended().isPresent()
                ? grid(
                        answer.sizing().nominal(),
                        size -> enough(size, answer),
                        answer.certainty().map(found -> size -> houses(size, found)),
                        answer.scenario().system(),
                        shown)
                : Optional.empty();
    }

    private static String enough(SizingResult.Vessel size, VesselAnswer answer) {
        if (!size.suffices()) {
            return "no";
        }
        boolean taken = answer.recommended().filter(size::equals).isPresent();
        boolean sure = answer.certainty().isEmpty()
                || answer.recommended()
                        .filter(best -> size.volume() >= best.volume())
                        .isPresent()
                || answer.recommended().isEmpty()
                        && answer.certainty().get().bare().holds();
        return taken ? "yes, recommended" : sure ? "yes" : "by the best estimates alone";
    }

    /** In how many of the sampled houses the limit is kept, as far as the size was tried in them. */
    private static String houses(SizingResult.Vessel size, SizeCertainty certainty) {
        return certainty
                .at(size.volume())
                .map(SizeCertainty.Tried::above)
                .map(above -> above.of() - above.count() + " of " + above.of())
                .orElse("not tried");
    }

    /** The sizes for the heat-up of a house from a cold fill. */
    static Optional<Grid> of(SizingResult coldFill, HotWaterSystem house, QuantityFormat shown) {
        return grid(
                coldFill.nominal(),
                size -> size.suffices() ? "by the best estimates" : "no",
                Optional.empty(),
                house,
                shown);
    }

    /**
     * A column is left out where it says nothing: one precharge for all goes into the caption. A peak that the relief valve does not
     * let stand is never reached: the valve drips.
     */
    private static Optional<Grid> grid(
            List<SizingResult.Vessel> sizes,
            Function<SizingResult.Vessel, String> enough,
            Optional<Function<SizingResult.Vessel, String>> houses,
            HotWaterSystem house,
            QuantityFormat shown) {
        double atmosphere = house.site().atmosphere();
        double relief = Limit.reliefSetGauge(house).orElse(Double.POSITIVE_INFINITY);
        if (sizes.isEmpty()) {
            return Optional.empty();
        }
        boolean alike = sizes.stream()
                        .mapToDouble(size -> size.precharge().gauge(atmosphere))
                        .distinct()
                        .count()
                == 1;
        boolean priced = sizes.stream().anyMatch(size -> size.price().isPresent());
        List<String> columns = new ArrayList<>(List.of("Vessel", "Peak", "Below the limit"));
        if (!alike) {
            columns.add("Precharge");
        }
        if (priced) {
            columns.add("Price");
        }
        columns.add("Enough");
        houses.ifPresent(counted -> columns.add("Enough in"));
        List<List<String>> rows = new ArrayList<>();
        for (SizingResult.Vessel size : sizes) {
            double peak = size.peakAbsolute() - atmosphere;
            boolean drips = peak >= relief;
            List<String> row = new ArrayList<>(List.of(
                    shown.volume(size.volume()),
                    drips ? "would drip" : (size.higher() ? "over " : "") + shown.pressure(peak),
                    drips || size.higher() ? "none" : room(size.margin(), shown)));
            if (!alike) {
                row.add(precharge(size, atmosphere, shown));
            }
            if (priced) {
                row.add(price(size, house, shown));
            }
            row.add(enough.apply(size));
            houses.ifPresent(counted -> row.add(counted.apply(size)));
            rows.add(row);
        }
        return Optional.of(new Grid(
                "What each vessel would do in the worst heat-up"
                        + (house.hasSeveralVessels() ? ", beside those present" : "")
                        + (alike ? ", precharged to " + precharge(sizes.get(0), atmosphere, shown) : "")
                        + "; gauge pressures",
                columns,
                rows));
    }

    private static String price(SizingResult.Vessel size, HotWaterSystem house, QuantityFormat shown) {
        boolean own = house.vessels().stream().anyMatch(vessel -> vessel.volume() == size.volume());
        return size.price().map(price -> money(price, shown)).orElse(own ? "present" : "not given");
    }

    /** The room (Pa) below the limit; a peak above it leaves none. */
    private static String room(double margin, QuantityFormat shown) {
        return margin < 0 ? "none" : shown.pressureDifference(margin);
    }

    /**
     * Supply and vessel together: what each size does at the present supply and at every lower one, the cheapest that holds marked; none
     * where that is no answer.
     */
    static Optional<Grid> supplies(VesselAnswer answer, QuantityFormat both) {
        List<SupplyTable.Column> columns = answer.supplies().columns();
        if (columns.isEmpty()) {
            return Optional.empty();
        }
        QuantityFormat shown = both.only(both.units()); // as many columns as there are leave room for one unit
        double atmosphere = answer.scenario().system().site().atmosphere();
        Cheapest cheapest = Cheapest.of(answer);
        List<String> heads = new ArrayList<>(List.of("Supply set"));
        List<List<String>> rows = new ArrayList<>();
        rows.add(new ArrayList<>(List.of("Precharge")));
        columns.stream()
                .map(column -> column.sizing().nominal())
                .filter(sizes -> !sizes.isEmpty())
                .findFirst()
                .ifPresent(all -> all.forEach(size -> rows.add(new ArrayList<>(List.of(shown.volume(size.volume()))))));
        for (SupplyTable.Column column : columns) {
            heads.add(column.setting()
                    .map(setting -> shown.pressure(setting.gauge(atmosphere)))
                    .orElse("as it is"));
            List<SizingResult.Vessel> sizes = column.sizing().nominal();
            rows.get(0)
                    .add(
                            sizes.isEmpty()
                                    ? "-"
                                    : shown.pressureNumber(
                                            sizes.get(0).precharge().gauge(atmosphere)));
            for (int i = 1; i < rows.size(); i++) {
                rows.get(i).add(sizes.isEmpty() ? "no room" : cell(sizes.get(i - 1), column, cheapest, answer, shown));
            }
        }
        return Optional.of(new Grid(
                "Peak of the worst heat-up at every lower supply, if set exactly, each vessel precharged to match, in "
                        + shown.symbol(shown.units().pressure())
                        + "; ok: stays within the limit in nine of ten such houses for a year after charging; drips: the"
                        + " relief valve would open"
                        + cheapest.said(shown, atmosphere),
                heads,
                rows));
    }

    /**
     * What costs least of all that holds.
     *
     * @param setting what the reducing valve is set to; empty for the supply as it is
     * @param volume the volume of the vessel (m3); 0 where nothing holds
     * @param price what is to be bought; empty for nothing
     * @param charge what the present vessel is to be charged to at another supply; empty for another vessel, or the same supply
     */
    private record Cheapest(
            Optional<Pressure> setting, double volume, Optional<NominalSize.Price> price, Optional<Pressure> charge) {

        static Cheapest of(VesselAnswer answer) {
            Optional<ExpansionVessel> kept = kept(answer);
            if (kept.isPresent()) {
                return new Cheapest(Optional.empty(), kept.get().volume(), Optional.empty(), Optional.empty());
            }
            Optional<Cheapest> now = answer.recommended()
                    .map(size -> new Cheapest(Optional.empty(), size.volume(), size.price(), Optional.empty()));
            Optional<Cheapest> lower = answer.supplies()
                    .cheapest()
                    .map(way -> new Cheapest(
                            Optional.of(way.supply().valve()),
                            way.volume(),
                            way.price(),
                            Optional.of(way.precharge()).filter(charge -> way.owned())));
            return Stream.of(now, lower)
                    .flatMap(Optional::stream)
                    .min(Comparator.comparing(
                            each -> each.price().map(NominalSize.Price::amount).orElse(BigDecimal.ZERO)))
                    .orElse(new Cheapest(Optional.empty(), 0, Optional.empty(), Optional.empty()));
        }

        boolean is(SizingResult.Vessel size, SupplyTable.Column column) {
            return column.setting().equals(setting) && Math.abs(size.volume() - volume) <= SAME_SIZE * volume;
        }

        String said(QuantityFormat shown, double atmosphere) {
            return volume == 0
                    ? ""
                    : "; cheapest of these: "
                            + shown.volume(volume) + " with the supply "
                            + setting.map(to -> "set to " + shown.pressure(to.gauge(atmosphere)))
                                    .orElse("as it is")
                            + charge.map(to -> " and the vessel recharged to " + shown.pressure(to.gauge(atmosphere)))
                                    .orElse("")
                            + price.map(some -> ", " + money(some, shown)).orElse(", nothing to buy");
        }
    }

    private static String cell(
            SizingResult.Vessel size,
            SupplyTable.Column column,
            Cheapest cheapest,
            VesselAnswer answer,
            QuantityFormat shown) {
        HotWaterSystem house = answer.scenario().system();
        double peak = size.peakAbsolute() - house.site().atmosphere();
        if (peak >= Limit.reliefSetGauge(house).orElse(Double.POSITIVE_INFINITY)) {
            return "drips";
        }
        if (size.higher()) {
            return "too high";
        }
        return shown.pressureNumber(peak)
                + (cheapest.is(size, column) ? " cheapest" : column.holds(size.volume()) ? " ok" : "");
    }

    /** The vessel of the house where it is to be kept; not where another was bought in its place. */
    private static Optional<ExpansionVessel> kept(VesselAnswer answer) {
        return answer.against().flatMap(VesselAnswer.Against::bought).isPresent()
                ? Optional.empty()
                : answer.advice().kept();
    }

    /** What can be done, from nothing to a vessel, each with what it costs now and by the year. */
    static Grid choices(VesselAnswer answer, QuantityFormat shown) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(choice("Do nothing", nothing(answer) + against(answer), "-", answer.waterAsItIs(), answer, shown));
        boolean kept = kept(answer).isPresent();
        answer.proposed()
                .filter(with -> kept)
                .flatMap(with -> with.system().vessel())
                .ifPresent(vessel -> rows.add(choice(
                        "The present vessel, "
                                + (answer.advice().isAtWork() ? "" : "put back to work, ")
                                + "precharged to "
                                + shown.pressure(vessel.precharge()
                                        .gauge(answer.scenario().system().site().atmosphere())),
                        "stays within the limit",
                        "-",
                        answer.waterProposed(),
                        answer,
                        shown)));
        recharged(answer, shown).ifPresent(rows::add);
        answer.recommended()
                .filter(vessel -> !kept)
                .ifPresent(vessel -> rows.add(choice(
                        "A vessel of " + shown.volume(vessel.volume()) + madeFor(answer, shown),
                        "stays within the limit",
                        vessel.price().map(price -> money(price, shown)).orElse("not given"),
                        answer.waterProposed(),
                        answer,
                        shown)));
        answer.supplies().cheapest().filter(lower -> !kept).ifPresent(lower -> rows.add(lower(lower, answer, shown)));
        double atmosphere = answer.scenario().system().site().atmosphere();
        for (DischargingValve valve : answer.valves()) {
            boolean group = valve.kind() == DischargingValve.Kind.SAFETY_GROUP;
            rows.add(choice(
                    (group ? "A safety group, set to " : "A relief valve on the cold pipe, set to ")
                            + shown.pressure(valve.setting().gauge(atmosphere))
                            + valve.reseat()
                                    .map(reseat -> ", that closes again at " + shown.pressure(reseat.gauge(atmosphere)))
                                    .orElse(""),
                    does(valve, answer),
                    money(valve.price(), shown),
                    valve.water(),
                    answer,
                    shown));
        }
        return new Grid(
                "What you can do; prices leave out fitting and the drain",
                List.of("Choice", "What it does", "To buy", "Water in a year", "Cost of that water"),
                rows);
    }

    /** The plain repair, where the present vessel keeps the limit by the best estimates: there is nothing to buy. */
    private static Optional<List<String>> recharged(VesselAnswer answer, QuantityFormat shown) {
        boolean unknown = isWaterUnknown(answer);
        return justEnough(answer)
                .map(vessel -> List.of(
                        "The present vessel, recharged to " + recharge(answer, shown),
                        "stays within the limit by the best estimates",
                        "nothing",
                        unknown ? NOT_KNOWN : shown.largeVolume(0),
                        unknown ? NOT_KNOWN : money(0, answer.scenario().costs().currency(), shown)));
    }

    /** The present vessel, where it is to be recharged before a larger one is bought; not where one was bought already. */
    static Optional<ExpansionVessel> justEnough(VesselAnswer answer) {
        return answer.against().flatMap(VesselAnswer.Against::bought).isPresent()
                ? Optional.empty()
                : answer.advice().justEnough();
    }

    /** What the present vessel is to be charged to. */
    static String recharge(VesselAnswer answer, QuantityFormat shown) {
        return shown.pressure(answer.sizing()
                .smallest()
                .orElseThrow()
                .precharge()
                .gauge(answer.scenario().system().site().atmosphere()));
    }

    /** A valve that drips by a fault of its own goes on, so only of sound ones is it known that they stay shut. */
    private static boolean isWaterUnknown(VesselAnswer answer) {
        return answer.waterAsItIs().isEmpty()
                || answer.scenario().system().reliefValves().stream()
                        .anyMatch(valve -> valve.condition() != ReliefFault.Condition.SOUND);
    }

    /** What the rules of a place accept besides a vessel, and why no safety group is listed where nobody read that it is one of it. */
    static Optional<Block> means(Place place) {
        boolean american = place.customs()
                .map(Customs::units)
                .filter(UnitSystem.US::equals)
                .isPresent();
        return place.rules(PlaceRule.Topic.EXPANSION_MEANS).stream()
                .filter(rule -> american)
                .findFirst()
                .map(rule -> new Block.Paragraph(
                        "Accepted here: " + rule.words() + " (" + rule.cited()
                                + "). A safety group, as used in Europe (EN 1487), is not"
                                + " listed: no rule that was read for this place accepts one.",
                        Block.Tone.PLAIN));
    }

    /** How low the supply may be set, where lower settings were looked at. */
    static Optional<Block> least(VesselAnswer answer, QuantityFormat shown) {
        return answer.supplies().columns().isEmpty()
                ? Optional.empty()
                : Optional.of(new Block.Paragraph(
                        "No setting is looked at that leaves less than " + shown.pressure(SupplyTable.LEAST_AT_SHOWER)
                                + " at a shower while water runs, as US model codes ask of one with a mixing valve (IRC table"
                                + " P2903.1, edition not shown; read as quoted elsewhere). The shower is assumed to be "
                                + (shown.units().isMetric() ? "5 m" : "16 ft")
                                + " above the reducing valve, and the pressure behind that to fall by "
                                + shown.pressureDifference(answer.supplies().droop())
                                + ". Pipes take some more: measure at the highest tap before you choose.",
                        Block.Tone.QUIET));
    }

    /** What only the manufacturer can say, where the tank would bear a relief valve that opens later. */
    static Optional<Block> laterValve(VesselAnswer answer, QuantityFormat shown) {
        HotWaterSystem house = answer.scenario().system();
        double plate = house.tank().workingPressure().gauge(house.site().atmosphere());
        return Limit.lastReliefGauge(house).stream()
                .boxed()
                .filter(set -> house.site().place() == Place.EN
                        && house.tank().workingPressureGiven()
                        && plate - set >= MORE_ROOM)
                .findFirst()
                .map(set -> new Block.Paragraph(
                        "A question for the tank's manufacturer: may a relief valve be fitted whose set pressure is nearer the"
                                + " tank's " + shown.pressure(plate) + " than " + shown.pressure(set)
                                + "? A smaller vessel would then do at the present supply. Change no valve, and no valve's setting,"
                                + " before the answer.",
                        Block.Tone.PLAIN));
    }

    /** What its plate must say, where that of the present one says too little. */
    private static String madeFor(VesselAnswer answer, QuantityFormat shown) {
        OptionalDouble least = answer.advice().madeFor();
        return least.isPresent() ? ", made for " + shown.pressure(least.getAsDouble()) : "";
    }

    private static String does(DischargingValve valve, VesselAnswer answer) {
        boolean group = valve.kind() == DischargingValve.Kind.SAFETY_GROUP;
        boolean dripsNow = answer.asItIs().summary().totals().relieved() > 0;
        String does = switch (valve.work()) {
            case STAYS_SHUT -> "stays shut on days like these; needs a drain";
            case DRIPS_ALONE ->
                group
                        ? "dripping is normal; needs a drain"
                        : "drips" + (dripsNow ? " instead of " + theValve(answer) : "") + "; needs a drain";
            case DRIPS_TOO ->
                group ? "dripping is normal; needs a drain" : "drips beside the present one; needs a drain";
        };
        return does
                + valve.reseat()
                        .map(reseat -> "; an ordinary one would reseat below the supply pressure and keep running")
                        .orElse("");
    }

    /** Whether a valve that guards against boiling discharges anything in the house as it is. */
    private static boolean temperatureValveDrips(VesselAnswer answer) {
        return answer.asItIs().summary().totals().relief().stream()
                .filter(relief -> relief.volume() > 0)
                .anyMatch(relief -> answer.scenario().system().reliefValves().stream()
                        .anyMatch(valve -> valve.name().equals(relief.name())
                                && valve.setTemperature().isPresent()));
    }

    /** The valve that drips now, as its owner knows it. */
    private static String theValve(VesselAnswer answer) {
        return temperatureValveDrips(answer) ? "the T&P" : "the present one";
    }

    /** How many rules of the place the house as it is does not meet, and of a single one its clause. */
    private static String against(VesselAnswer answer) {
        List<String> clauses = RulesHere.of(
                        answer.scenario().system(), answer.scenario().doubts())
                .against()
                .stream()
                .map(held -> held.rule().clause())
                .distinct()
                .toList();
        return clauses.isEmpty()
                ? ""
                : "; does not meet " + (clauses.size() == 1 ? clauses.get(0) : clauses.size() + " rules here");
    }

    private static String nothing(VesselAnswer answer) {
        double peak = answer.asItIs().peak().in(PressureUnit.PASCAL);
        boolean passes = Limit.passes(peak, answer.sizing().target().gauge())
                || answer.yardstick().filter(limit -> !limit.holds()).isPresent();
        if (answer.asItIs().hazard().isPresent()) {
            return "ends in a hazard: see above";
        }
        return Narrative.drips(answer.asItIs().summary())
                .map(drips -> temperatureValveDrips(answer)
                        ? "drips; a T&P must not do that for good"
                        : drips + "; scale may in time keep the valve from closing")
                .orElse(
                        passes
                                ? "exceeds the limit"
                                : answer.advice().isAsItShouldBe()
                                        ? "stays within the limit"
                                        : "stays within the limit by the best estimates");
    }

    private static List<String> lower(SizeAdvice.LowerSupply lower, VesselAnswer answer, QuantityFormat shown) {
        boolean unknown = isWaterUnknown(answer);
        double atmosphere = answer.scenario().system().site().atmosphere();
        return List.of(
                (lower.supply().fitted() ? "A reducing valve, set to " : "The reducing valve set to ")
                        + shown.pressure(lower.supply().valve().gauge(atmosphere))
                        + " (" + shown.pressure(lower.supply().standing().gauge(atmosphere)) + " with no water running)"
                        + (lower.owned()
                                ? ", with the present vessel recharged to "
                                : ", a vessel of " + shown.volume(lower.volume()) + ", precharged to ")
                        + shown.pressure(lower.precharge().gauge(atmosphere)),
                "stays within the limit, with "
                        + shown.pressure(answer.supplies()
                                .atShower(lower.supply().valve().gauge(atmosphere)))
                        + " at a shower one floor up while water runs"
                        + (answer.scenario().system().site().place() == Place.UK
                                        && !lower.supply().fitted()
                                ? "; ask the cylinder's manufacturer first: the valve may belong to the tested unit"
                                : ""),
                lower.price().map(price -> money(price, shown)).orElse("nothing"),
                unknown ? NOT_KNOWN : shown.largeVolume(0),
                unknown ? NOT_KNOWN : money(0, answer.scenario().costs().currency(), shown));
    }

    private static List<String> choice(
            String what,
            String does,
            String price,
            Optional<YearlyWater> water,
            VesselAnswer answer,
            QuantityFormat shown) {
        Costs costs = answer.scenario().costs();
        return List.of(
                what,
                does,
                price,
                water.map(each -> shown.largeVolume(each.volume())).orElse(NOT_KNOWN),
                water.map(each -> money(costs.ofWater(each.volume()), costs.currency(), shown))
                        .orElse(NOT_KNOWN));
    }

    private static String money(NominalSize.Price price, QuantityFormat shown) {
        return money(price.amount().doubleValue(), price.currency(), shown);
    }

    private static String precharge(SizingResult.Vessel size, double atmosphere, QuantityFormat shown) {
        return shown.pressure(size.precharge().gauge(atmosphere));
    }

    /** That prices of vessels are not those of any shop, where nobody gave any. */
    static List<Block> prices(VesselAnswer answer) {
        return answer.scenario().costs().vesselsInvented()
                ? List.of(new Block.Paragraph(
                        "The prices of vessels and valves are invented. Give your own prices of vessels under 'costs'.",
                        Block.Tone.QUIET))
                : List.of();
    }

    /** What can be bought and what it costs. */
    static Document.Section section(List<Block> blocks) {
        return new Document.Section("Sizes, alternatives and cost", blocks);
    }

    /** An amount as reports show it, with two decimals: {@code $39.00}, {@code 39.00 AUD}; other signs than the dollar on pages alone. */
    static String money(double amount, String currency, QuantityFormat shown) {
        String digits = Decimals.fixed(amount, DECIMALS);
        String sign = SIGNS.getOrDefault(currency, "");
        return sign.isEmpty() || shown.symbols() == Symbols.ASCII && !sign.equals("$")
                ? digits + " " + currency
                : sign + digits;
    }

    /** What is to be said of a bill that no vessel changes. */
    static String whatever(VesselAnswer answer) {
        return answer.advice()
                .stuckOpen()
                .map(valve -> ", with any vessel, until '" + valve.name() + "' is replaced")
                .orElse("");
    }

    /**
     * What the water of a year costs.
     *
     * @param houses the water by house, such as {@code as it is}; none for nothing
     * @param scenario the house, with its prices
     * @param shown the units
     */
    static List<Block> costs(Map<String, YearlyWater> houses, Scenario scenario, QuantityFormat shown) {
        Costs costs = scenario.costs();
        if (houses.isEmpty()) {
            return List.of();
        }
        List<List<String>> rows = new ArrayList<>();
        houses.forEach((house, water) -> rows.add(List.of(
                house,
                shown.largeVolume(water.volume()),
                money(costs.ofWater(water.volume()), costs.currency(), shown))));
        return List.of(
                new Grid("Water discharged in a year", List.of("House", "Water", "Price"), rows),
                new Block.Paragraph(basis(scenario, shown), Block.Tone.QUIET));
    }

    /** What water costs, by the volume that bills of a place count in. */
    static String ofWater(Costs costs, QuantityFormat shown) {
        return shown.units().isMetric()
                ? money(costs.ofWater(1), costs.currency(), shown) + " per cubic metre"
                : money(costs.ofWater(VolumeUnit.US_GALLON.toSi(1000)), costs.currency(), shown) + " per 1000 gallons";
    }

    private static String basis(Scenario scenario, QuantityFormat shown) {
        Costs costs = scenario.costs();
        return (scenario.system().draws().draws().isEmpty()
                        ? "Hot-water use is not described, so each of 365 days counts as one heat-up from cold: a rough figure."
                                + " Give the number of people, or 'draws', for a better one."
                        : "A year counts as 365 days like those of the run, leaving out its first heat-up from cold. A shorter run counts"
                                + " as one day.")
                + " Water and wastewater cost " + ofWater(costs, shown)
                + (costs.waterInvented() ? ", an invented price: give your own under 'costs'." : ".");
    }
}
