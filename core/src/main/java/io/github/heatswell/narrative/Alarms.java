package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.share;
import static io.github.heatswell.assessment.Measure.temperature;
import static io.github.heatswell.assessment.Measure.time;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Severity;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Audit;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The alarms that findings and a run give: hazards with what to do, each advice once, then a limit passed. */
final class Alarms {

    private static final String EXCEEDED = "working-pressure-exceeded";

    private Alarms() {}

    static List<Alarm> of(List<Finding> findings) {
        List<Alarm> alarms = new ArrayList<>();
        Set<Statement> advised = new HashSet<>();
        findings.stream()
                .filter(finding -> finding.severity() == Severity.HAZARD)
                .forEach(finding -> alarms.add(new Alarm(
                        Alarm.Level.HAZARD,
                        finding.sentence(),
                        Optional.of(finding.advice()).filter(advised::add))));
        return alarms;
    }

    static List<Alarm> of(RunSummary run, List<Finding> findings) {
        List<Alarm> alarms = of(findings);
        boolean told = findings.stream()
                .anyMatch(finding -> finding.id().equals(EXCEEDED) && finding.severity() == Severity.HAZARD);
        boolean given = run.system().tank().workingPressureGiven(); // if not, a finding asks to read the plate
        run.first(Event.Kind.WORKING_PRESSURE_EXCEEDED)
                .filter(event -> given && !told)
                .ifPresent(event -> alarms.add(Alarm.of(Alarm.Level.WARNING, passed(run, event))));
        if (!run.audit().closes()) {
            alarms.add(Alarm.of(Alarm.Level.NOT_RELIABLE, open(run.audit())));
        }
        return alarms;
    }

    private static Statement open(Audit audit) {
        boolean water = audit.massFraction() > Audit.BOUND || audit.energyFraction() <= Audit.BOUND;
        return plain("The balance of this run does not close: ")
                .then(share(water ? audit.massFraction() : audit.energyFraction()))
                .then(" of the " + (water ? "water" : "heat")
                        + " is unaccounted for. Do not rely on its figures; please report the scenario.");
    }

    private static Statement passed(RunSummary run, Event event) {
        return plain(event.kind().description() + " after ")
                .then(time(event.time()))
                .then(", at ")
                .then(gauge(run.gauge(event.pressureAbsolute())))
                .then(" and ")
                .then(temperature(event.waterTemperature()))
                .then(". " + event.kind().meaning())
                .capitalised();
    }
}
