package io.github.heatswell.scenarios.report;

import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How the numbers of the printed report were made. */
final class PageMethods {

    private PageMethods() {}

    /** Of one run. */
    static Document.Section of(RunSummary result, QuantityFormat shown) {
        List<List<String>> notes = new ArrayList<>(model());
        notes.add(air(result, shown));
        notes.add(version());
        return withAudit(
                notes,
                "audit and solver of the run",
                List.of(List.of("Audit", audit(result.audit())), List.of("Solver", solver(result.numerics()))));
    }

    private static Document.Section withAudit(List<List<String>> notes, String name, List<List<String>> rows) {
        List<Block> blocks = new ArrayList<>(section(notes).blocks());
        blocks.add(new Block.Folded(
                        name, List.of(new Grid("Audit and solver", List.of("About", "What was done"), rows)))
                .onPage());
        return new Document.Section(section(notes).title(), blocks);
    }

    /** Of several runs. */
    static Document.Section of(List<NamedRun> runs) {
        List<List<String>> notes = new ArrayList<>(model());
        notes.add(List.of("Assumptions", "Each scenario's own report lists what was filled in."));
        notes.add(version());
        return withAudit(
                notes,
                "audit and solver of the runs",
                runs.stream()
                        .map(run -> List.of(
                                run.name(),
                                audit(run.result().audit())
                                        + " "
                                        + solver(run.result().numerics())))
                        .toList());
    }

    /** Of runs through the years. */
    static Document.Section ofYears(String fading) {
        List<List<String>> notes = new ArrayList<>(model());
        notes.add(List.of("Loss of precharge", fading));
        notes.add(List.of(
                "Years",
                "For every month the day with the coldest supply is simulated, with the precharge left on that day. The"
                        + " precharge falls in proportion to its gauge pressure, and while there is water in the vessel in"
                        + " proportion to the supply's static pressure. Years have 365 days."));
        notes.add(version());
        return section(notes);
    }

    /** Of many runs of one house, varied. */
    static Document.Section ofStudy(long simulations) {
        List<List<String>> notes = new ArrayList<>(model());
        notes.add(List.of("Runs", simulations + " simulations."));
        notes.add(version());
        return section(notes);
    }

    /**
     * Of a diagnosis. From memory, and so not on the page: the criterion is that of Schwarz, Annals of Statistics 6, 1978; 3 %
     * is what ASME section VIII allows; class 1.6 or 2.5 is one of EN 837-1.
     */
    static Document.Section ofDiagnosis() {
        List<List<String>> notes = new ArrayList<>(model());
        notes.add(List.of(
                "Causes",
                "The described house is changed by one cause at a time, and the simulation is fitted to the readings by least"
                        + " squares. The Bayesian information criterion weighs goodness of fit against the number of free"
                        + " parameters. It does not look for several"
                        + " faults at once."));
        notes.add(
                List.of(
                        "Treated as uncertain",
                        "With every cause, supply pressure, tank volume, heating rate and thermostat may be a little off the"
                                + " description. A sound relief valve may open up to 3 % off its plate. The gauge may be a tenth of a"
                                + " bar off at zero and 1 % off in its scale; these are one standard deviation each, our own choice for"
                                + " a gauge from a hardware store. A reseat pressure that the file does not give is left open too."));
        notes.add(List.of(
                "Intervals",
                "Each applies to the cause it is listed with. In 70 simulated logs of known cause, all 36 numbers that could be"
                        + " estimated were inside."));
        notes.add(version());
        return section(notes);
    }

    private static Document.Section section(List<List<String>> notes) {
        return new Document.Section(
                "How the numbers were made",
                List.of(new Block.Items(
                                notes.stream()
                                        .map(note -> note.get(0) + ": " + note.get(1))
                                        .toList(),
                                Block.ListKind.QUOTED_BULLETS)
                        .onPage()));
    }

    /** What is modelled, and what is left out. */
    static List<List<String>> model() {
        return List.of(
                List.of(
                        "Model",
                        "One storage tank, its piping, its feed, its relief valves and its expansion vessels share"
                                + " one pressure. Mass and energy are balanced; the tank stretches with pressure and expands with"
                                + " heat; the vessel's gas obeys the gas law, or the law that was given for it."),
                List.of(
                        "Water",
                        "Density and energy of real water, by a formulation fitted to IAPWS-95 and tested against"
                                + " IAPWS-IF97."),
                List.of(
                        "Left out",
                        "Pressure waves, flow losses in the piping, and everything that follows once a tank has failed."));
    }

    private static List<String> air(RunSummary result, QuantityFormat shown) {
        return List.of(
                "Gauge",
                "Pressures are gauge readings at the height of the tank's drain cock, against an absolute air pressure of "
                        + shown.pressure(result.system().site().atmosphere()) + ".");
    }

    private static String audit(RunSummary.Audit audit) {
        return String.format(
                Locale.ROOT,
                "Unaccounted for: %.0e of the mass that moved and %.0e of the energy; a sound run stays below %.0e. The"
                        + " balance %s.",
                audit.massFraction(),
                audit.energyFraction(),
                RunSummary.Audit.BOUND,
                audit.closes() ? "closes" : "does not close: do not rely on this run");
    }

    private static String solver(RunSummary.Numerics numerics) {
        return String.format(
                Locale.ROOT,
                "%s, relative tolerance %.0e: %d steps in %d segments, %d evaluations.",
                numerics.method(),
                numerics.relativeTolerance(),
                numerics.steps(),
                numerics.segments(),
                numerics.evaluations());
    }

    /** Which program made the numbers. */
    static List<String> version() {
        return List.of("Program", "Heatswell " + Version.number());
    }
}
