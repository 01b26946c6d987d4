package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.RulesHere;
import io.github.heatswell.assessment.RulesHere.Held;
import io.github.heatswell.citation.Citation;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.file.Origin;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Report on the rules of the place where a house is.
 */
public final class RulesReport {

    private RulesReport() {}

    /**
     * The answer.
     *
     * @param scenario whose house it is
     * @param assumed whether the code of its place was only assumed from a state or country, also where the scenario does not say so
     * @param units the units of screen and page
     * @return with the files rules.json and report.html
     */
    public static CommandResult answer(Scenario scenario, boolean assumed, UnitSystem units) {
        boolean taken = assumed || scenario.origin("site.place") == Origin.ASSUMED_CODE;
        RulesHere rules = RulesHere.of(scenario.system(), scenario.doubts());
        CommandResult answer = CommandResult.of(
                shown -> content(scenario, rules, taken, shown),
                Balances.NONE,
                units,
                List.of(json(scenario, rules).file("rules.json")),
                List.of());
        NextStep next = NextStep.afterRules(scenario.system(), Findings.of(scenario.system(), scenario.doubts()));
        // also where people may be hurt: whoever mends it has the rules now
        return new CommandResult(answer.files(), () -> answer.report().get().then(next));
    }

    /** The rules for other programs. */
    static Json json(Scenario scenario, RulesHere rules) {
        return new Json()
                .program(scenario.name())
                .with("place", rules.place().key())
                .with("place_title", rules.place().title())
                .each("rules", rules.rules(), RulesReport::json)
                .with(
                        "not_read",
                        rules.unread().stream().map(PlaceRule.Topic::label).toList())
                .findings(found(rules), scenario.units());
    }

    private static Json json(Held held) {
        PlaceRule rule = held.rule();
        return new Json()
                .with("place", rule.place().key())
                .with("topic", rule.topic())
                .with("rule", rule.words())
                .with("clause", rule.cited())
                .known("limit_si", rule.limit())
                .with("demand", rule.demand())
                .with("standing", rule.source().map(Citation::standing))
                .with("quotation", rule.quotation())
                .with("seen_at", rule.seenAt())
                .with("verdict", held.verdict())
                .with("finding", held.finding().map(Finding::id));
    }

    /** What the house has against the rules, and what of them is to be looked at. */
    private static List<Finding> found(RulesHere rules) {
        return Stream.concat(rules.rules().stream().flatMap(held -> held.finding().stream()), rules.vessel().stream())
                .distinct()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    private static Document content(Scenario scenario, RulesHere rules, boolean taken, QuantityFormat shown) {
        List<Document.Section> sections = new ArrayList<>();
        sections.add(Document.answer(
                "",
                verdict(rules, AlarmNote.of(scenario, shown)),
                Document.withDoubts(scenario, shown, remarks(rules, taken))));
        sections.add(against(rules, shown));
        sections.add(
                new Document.Section("The rules", List.of(grid(rules, shown).orOnScreen(list(rules)))));
        sections.add(quotations(rules).onPage());
        sections.add(toAsk(rules));
        return Document.of(
                        scenario.title() + ": what the code says here",
                        scenario.name(),
                        AlarmNote.of(scenario, shown),
                        sections,
                        shown)
                .printedFor(scenario.system())
                .ofNoRun();
    }

    private static String verdict(RulesHere rules, List<AlarmNote> hazards) {
        if (!rules.place().isKnown()) {
            return "No place was given, so these are the rules of several places.";
        }
        List<Held> against = rules.against();
        return against.isEmpty()
                ? (hazards.isEmpty()
                                ? rules.vessel().isEmpty()
                                        ? "Nothing in the description breaks a rule that was read. The place: "
                                        : "The description breaks no rule that was read, but "
                                                + (rules.vessel().get(0).severity() == Finding.Severity.FAULT
                                                        ? "the vessel described has a fault"
                                                        : "water can freeze there")
                                                + ": see the findings. The place: "
                                : "Deal with the hazard first; no rule that was read covers it. The place: ")
                        + rules.place().title() + "." + open(rules)
                : "This house does not meet the rules here: "
                        + against.stream()
                                .map(held -> held.rule().topic().label())
                                .distinct()
                                .collect(Collectors.joining(", "))
                        + ". The place: " + rules.place().title() + ".";
    }

    /** What the description alone does not settle, so that nobody takes it as kept. */
    private static String open(RulesHere rules) {
        List<String> run = rules.rules().stream()
                .filter(held -> held.verdict() == RulesHere.Verdict.BY_A_RUN)
                .map(held -> held.rule().topic().label())
                .distinct()
                .toList();
        long site = rules.rules().stream()
                .map(Held::verdict)
                .filter(EnumSet.of(RulesHere.Verdict.ON_SITE, RulesHere.Verdict.CUT_OUT_ON_SITE)::contains)
                .count();
        StringBuilder said = new StringBuilder();
        if (!run.isEmpty()) {
            said.append(" Not judged here, since only a run shows it: ")
                    .append(String.join(", ", run))
                    .append(".");
        }
        if (rules.rules().stream().anyMatch(held -> held.verdict() == RulesHere.Verdict.ONCE_CLOSED)) {
            said.append(" Water can flow back to the mains here. Once a check valve is fitted, the expansion must have"
                    + " somewhere else to go: see the rows on expansion.");
        }
        if (site > 0) {
            said.append(site == 1 ? " One rule is" : " " + site + " rules are").append(" left for you to check.");
        }
        return said.toString();
    }

    private static List<String> remarks(RulesHere rules, boolean taken) {
        return rules.place().isKnown()
                ? List.of((taken ? "The code here is " + Origin.ASSUMED_CODE.words() + ". " : "")
                        + "No code was read in full, and places amend model codes: whoever enforces the rules has the last word."
                        + " Where a row names a city or a state, that place's text was read; yours may differ.")
                : List.of(
                        "Write it into the file as site.place, or name it with --place: us-ipc, us-upc, uk, en or au-nz.");
    }

    private static Document.Section against(RulesHere rules, QuantityFormat shown) {
        List<Finding> findings = found(rules);
        return findings.isEmpty() ? new Document.Section("Findings", List.of()) : PageFindings.section(findings, shown);
    }

    private static Block.Grid grid(RulesHere rules, QuantityFormat shown) {
        return new Block.Grid(
                "Rules that matter for this house",
                List.of("About", "What it says", "Clause, and how far it was read", "This house"),
                rules.rules().stream()
                        .map(held -> List.of(
                                about(held, rules),
                                PageWords.typeset(held.rule().words(), shown),
                                standing(held.rule()),
                                word(held.verdict())))
                        .toList());
    }

    private static Block.Items list(RulesHere rules) {
        return new Block.Items(
                rules.rules().stream()
                        .map(held -> about(held, rules) + ": " + held.rule().words() + " ("
                                + standing(held.rule()) + ")"
                                + (rules.place().isKnown() ? ". This house: " + word(held.verdict()) : "") + ".")
                        .toList(),
                Block.ListKind.BULLETS);
    }

    /** Its clause, and how far that was read, unless the clause says who quotes it. */
    private static String standing(PlaceRule rule) {
        return rule.clause().contains("quoted ")
                ? rule.cited()
                : rule.cited() + "; " + PageFormulas.standing(rule.source().orElseThrow());
    }

    private static String about(Held held, RulesHere rules) {
        String topic = held.rule().topic().label();
        return rules.place().isKnown()
                ? topic
                : topic + ", " + held.rule().place().key();
    }

    private static Document.Section quotations(RulesHere rules) {
        List<String> quoted = rules.rules().stream()
                .map(Held::rule)
                .filter(rule -> !rule.quotation().isEmpty())
                .map(rule -> PageWords.capitalised(rule.topic().label()) + ": \u201c" + rule.quotation() + "\u201d "
                        // where the trade quotes it is in rules.json: a page names no portal of the trade
                        + (rule.source().orElseThrow().standing() == Citation.Standing.SEEN
                                ? "read at " + rule.seenAt()
                                : "as quoted elsewhere")
                        + ".")
                .distinct()
                .toList();
        return new Document.Section(
                "In their own words",
                quoted.isEmpty() ? List.of() : List.of(new Block.Items(quoted, Block.ListKind.QUOTED_BULLETS)));
    }

    private static Document.Section toAsk(RulesHere rules) {
        String topics = rules.unread().stream().map(PlaceRule.Topic::label).collect(Collectors.joining("; "));
        return new Document.Section(
                "To ask the authority",
                List.of(new Block.Paragraph(
                        rules.place().isKnown()
                                ? topics.isEmpty()
                                        ? "Ask whether the editions named here are the ones in force, and how they were amended."
                                        : "No rule was read on these; ask the local authority: " + topics + "."
                                : "Ask the local authority which code applies, in which edition and with which changes: above all on"
                                        + " static pressure, expansion control, the relief valve and who may do the work.",
                        Block.Tone.PLAIN)));
    }

    static String word(RulesHere.Verdict verdict) {
        return switch (verdict) {
            case AGAINST -> "does not meet the rule";
            case KEPT -> "nothing in the description breaks it";
            case OPEN -> "for the owner to choose";
            case BY_A_RUN -> "run it to see";
            case ON_SITE -> "for you to check";
            case CUT_OUT_ON_SITE -> "for you to check: the cut-out must be hand-reset";
            case ONCE_CLOSED -> "for you to check, and to keep in full once a check valve is fitted";
            case ELSEWHERE -> "applies only in the place named";
            case OLDER -> "an older standard";
            case NOT_KNOWN -> "place not known";
        };
    }
}
