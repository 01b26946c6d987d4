package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/**
 * The sheet by which an owner tells the causes of a dripping valve apart without a log: what each leaves to be seen, and room for
 * what was seen. What it says of pressure and time is what simulated houses show (docs/causes.md); the rest is common practice
 * without a source.
 *
 * @param most what the tank's water gains from the cold supply to the thermostat's setting (m3), with nothing to take it up
 * @param vessel whether there is a vessel to be tested
 * @param reducing whether a reducing valve could creep
 * @param two whether another relief valve stands beside one that opens on temperature
 */
record DripSheet(double most, boolean vessel, boolean reducing, boolean two) {

    /** The sheet for a house. */
    static DripSheet of(HotWaterSystem house) {
        return new DripSheet(
                Findings.expansion(house),
                house.vessel().isPresent(),
                house.supply().reducingValve().isPresent(),
                house.reliefValves().size() > 1
                        && house.reliefValves().stream()
                                .anyMatch(valve -> valve.setTemperature().isPresent()));
    }

    /** A sheet by itself. */
    Document.Section section(QuantityFormat shown) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(
                "If what comes out is scalding or steams, turn the heater off, stay away and call for help. Otherwise, circle what"
                        + " you see in each row. The column with the most circles is the likeliest cause. Only look and weigh: do"
                        + " not touch the discharge, and do not lift the valve's lever.",
                Block.Tone.PLAIN));
        blocks.add(new Grid("What tells the causes of a drip apart", columns(), rows(shown)));
        blocks.add(new Block.Paragraph(
                "If two columns tie, log a gauge through one heat-up and one night, and run heatswell diagnose. This sheet rests on"
                        + " common practice and simulated houses, not on a source.",
                Block.Tone.PLAIN));
        return new Document.Section("Why does it drip? A sheet to fill in", Document.Form.PAPER, blocks);
    }

    private List<String> columns() {
        List<String> columns = new ArrayList<>(List.of(
                "What to look at", "Expansion", "High mains pressure at night", "Worn or dirty seat", "Overheating"));
        if (reducing) {
            columns.add("Creeping reducing valve");
        }
        return columns;
    }

    private List<List<String>> rows(QuantityFormat shown) {
        List<List<String>> rows = new ArrayList<>();
        if (two) {
            String low = "the one set lower";
            rows.add(row("Which relief valve's outlet is wet", low, low, "either", "the T&P valve's", low));
        }
        rows.add(row("Dry paper under the outlet, first hour of a heat-up", "wet", "dry", "wet", "wet", "dry"));
        rows.add(
                row("Fresh paper, an hour after the heater went off", "dry", "dry", "wet", "it never goes off", "dry"));
        rows.add(row("Fresh paper from midnight to 5 am, heater off", "dry", "wet", "wet", "dry", "wet"));
        rows.add(row(
                "Run a cold tap for a moment while it drips",
                "stops, and comes back while it heats",
                "stops, and soon comes back",
                "slows, and comes back at once",
                "goes on",
                "stops, and comes back after hours"));
        rows.add(row(
                "Weigh what one heat-up from cold discharges",
                "at most about " + shown.volume(most) + ", from a cold tank",
                "nothing",
                "no more than at rest",
                "far more",
                "nothing"));
        rows.add(row(
                "A gauge",
                "climbs only while it heats",
                "climbs in the night",
                "stays at the supply pressure",
                "may stay low",
                "climbs slowly at rest"));
        if (vessel) {
            rows.add(row(
                    "Press the pin of the vessel's air valve for an instant",
                    "water or nothing: failed or flat; air: perhaps too little, or too small a vessel",
                    "air",
                    "air",
                    "air",
                    "air"));
        }
        return rows;
    }

    private List<String> row(String what, String... seen) {
        List<String> row = new ArrayList<>(List.of(what));
        row.addAll(List.of(seen).subList(0, reducing ? 5 : 4));
        return row;
    }
}
