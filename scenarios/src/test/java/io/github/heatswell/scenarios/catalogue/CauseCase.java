package io.github.heatswell.scenarios.catalogue;

import java.time.Duration;
import java.util.List;
import java.util.Locale;

/**
 * A cause of a dripping relief valve, with the run that shows it.
 *
 * @param name the cause in words
 * @param scenario a bundled scenario
 * @param figures what the run left
 */
record CauseCase(String name, String scenario, CauseFigures figures) {

    /** Fine enough for a climb of a few minutes. */
    private static final Duration SAMPLE = Duration.ofSeconds(10);

    /** Every cause that can be told from the others by what it leaves. */
    static List<CauseCase> all() {
        return List.of(
                of("expansion; vessel missing, isolated or waterlogged", "mill-cottage"),
                of("expansion; vessel too small", "mill-cottage-small-vessel"),
                of("expansion; vessel charged too high", "mill-cottage-overcharged-vessel"),
                of("worn seat", "mill-cottage-worn-seat"),
                of("valve stuck open", "mill-cottage-stuck-open"),
                of("high mains pressure at night", "mill-cottage-night-mains"),
                of("supply above the set pressure", "mill-cottage-high-mains"),
                of("creeping reducing valve", "mill-cottage-creeping-reducer"),
                of("thermostat stuck", "mill-cottage-thermostat"));
    }

    private static CauseCase of(String name, String scenario) {
        return new CauseCase(
                name,
                scenario,
                new CauseFigures(Catalogue.read(scenario)
                        .sampledEvery(SAMPLE)
                        .simulation()
                        .run()));
    }

    /** What gives it away, from the figures alone. */
    String signature() {
        return when() + "; " + howMuch() + "; " + pressure();
    }

    private String when() {
        if (figures.hottest() > 95) {
            return "scalding hot";
        }
        if (figures.whileHeating() > 0.9) {
            return "only while heating";
        }
        if (figures.atNight() > 0.9) {
            return "at night, without heating";
        }
        return figures.running() > 0.99 ? "always" : "after hours at rest";
    }

    private String howMuch() {
        double litres = figures.litresADay();
        return litres < 30 ? "drips" : litres < 3_000 ? "runs" : "gushes";
    }

    private String pressure() {
        double half = figures.halfWay();
        if (Double.isNaN(figures.pressureAtRest())) {
            return "the heater never rests";
        }
        if (figures.whileHeating() <= 0.9) {
            return rest();
        }
        return half < 0.3 ? "jumps, then climbs slowly" : half > 0.7 ? "climbs slowly, then jumps" : "climbs evenly";
    }

    private String rest() {
        if (figures.pressureAtRest() > figures.supplied() + 0.3) {
            return "pressure creeps up at rest";
        }
        return figures.supplied() > 7 ? "supply above the set pressure" : "at rest as supplied";
    }

    /** A row of the table. */
    String row() {
        return String.format(
                Locale.ROOT,
                "| %s | [%s](../src/main/resources/io/github/heatswell/scenarios/catalogue/%s.yaml) | %s | %s | %s | %s |"
                        + " %.1f | %s | %s | %.0f | %s | %s |\n",
                name,
                scenario,
                scenario,
                percent(figures.whileHeating()),
                percent(figures.atNight()),
                percent(figures.atRest()),
                percent(figures.running()),
                figures.openingsADay(),
                figures.litresADay() < 100
                        ? String.format(Locale.ROOT, "%.1f", figures.litresADay())
                        : String.format(Locale.ROOT, "%.0f", figures.litresADay()),
                Double.isNaN(figures.pressureAtRest())
                        ? "never"
                        : String.format(Locale.ROOT, "%.1f", figures.pressureAtRest()),
                figures.hottest(),
                Double.isNaN(figures.halfWay()) ? "" : percent(figures.halfWay()),
                signature());
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }
}
