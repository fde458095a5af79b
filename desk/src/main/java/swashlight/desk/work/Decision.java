package swashlight.desk.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Value;
import swashlight.drive.description.Dimension;
import swashlight.findings.belief.Belief;
import swashlight.findings.cause.Lore;
import swashlight.findings.choice.Choice;
import swashlight.findings.choice.Hill;
import swashlight.findings.choice.Ledger;
import swashlight.findings.cost.Prices;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.finding.Found;
import swashlight.findings.next.Prospect;
import swashlight.findings.next.Ranking;
import swashlight.findings.next.StepWorth;
import swashlight.findings.next.Steps;
import swashlight.findings.next.Tool;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.tie.Tie;
import swashlight.findings.tie.Ties;

/** A case found, what to do about it, and what to read next, by money. */
record Decision(
        MachineCase machine,
        Found found,
        Prices prices,
        Set<Tool> have,
        Choice choice,
        Optional<Ranking> ranking,
        List<Tie> ties,
        List<StepWorth> steps) {
    static Decision of(DecisionAsked asked, boolean ranked, Inspection inspection) {
        MachineCase machine =
                inspection.filed(() -> CaseShelf.open(asked.machineCase())).machineCase();
        Prices prices = asked.prices()
                .map(file -> inspection.filed(() -> PricesShelf.open(file)))
                .orElseGet(Prices::invented);
        Hill hill = hill(asked, inspection);
        Set<Tool> have = asked.have().map(stated -> tools(stated, inspection)).orElseGet(Tool::usual);
        Lore lore = Desk.lore(asked.counted(), inspection);
        FinderOptions options = FinderOptions.usual(asked.seed()).with(lore);
        inspection.close();
        Found found = new Finder(options).found(machine);
        Belief belief = found.belief();
        Ledger ledger = Ledger.of(belief, prices, hill);
        Choice choice = Choice.of(belief, ledger, prices, hill);
        if (!ranked) {
            return new Decision(machine, found, prices, have, choice, Optional.empty(), List.of(), List.of());
        }
        Prospect prospect = Prospect.of(belief, prices, asked.seed());
        Ranking ranking = Ranking.of(prospect, ledger, prices, have, machine.readings());
        List<Tie> ties = new Ties(prospect, prices, have, machine.readings()).of(found.finding());
        List<StepWorth> steps = Steps.of(belief, ledger, prices, lore, machine);
        return new Decision(machine, found, prices, have, choice, Optional.of(ranking), ties, steps);
    }

    private static Hill hill(DecisionAsked asked, Inspection inspection) {
        Hill usual = Hill.usual();
        double slope = asked.hill()
                .map(stated ->
                        inspection.number(stated, Dimension.ANGLE, -0.6, 0.6).orElse(0))
                .orElse(usual.slope());
        double load = asked.load()
                .map(stated ->
                        inspection.number(stated, Dimension.FORCE, 0, 1e5).orElse(0))
                .orElse(usual.load());
        double share = asked.share()
                .map(stated ->
                        inspection.number(stated, Dimension.NUMBER, 0, 1.5).orElse(0))
                .orElse(usual.share());
        return new Hill(slope, load, usual.oilTemperature(), share);
    }

    private static Set<Tool> tools(Stated stated, Inspection inspection) {
        Set<Tool> tools = EnumSet.noneOf(Tool.class);
        List<String> known = Arrays.stream(Tool.values()).map(Tool::key).toList();
        for (String word : stated.text().split(",")) {
            if (!word.isBlank()) {
                inspection
                        .oneOf(new Stated(stated.where(), word.strip()), known)
                        .flatMap(Tool::find)
                        .ifPresent(tools::add);
            }
        }
        return tools;
    }

    /** An amount with its currency. */
    Value money(double amount) {
        return Value.word("money", Value.of(Math.rint(amount), Measure.RATIO), Value.text(prices.currency()));
    }

    /** What all of it stands on. */
    List<Line> basis() {
        List<Line> lines = new ArrayList<>();
        lines.add(new Fact("currency", Value.text(prices.currency())));
        lines.add(new Fact("labour", Value.word("decision.hourly", money(prices.labour() * 3600))));
        lines.add(new Fact("hill", Value.of(choice.hill().slope(), Measure.ANGLE)));
        if (choice.hill().load() > 0) {
            lines.add(new Fact("hillLoad", Value.of(choice.hill().load(), Measure.FORCE)));
        }
        lines.add(new Fact("hillOil", Value.of(choice.hill().oilTemperature(), Measure.TEMPERATURE)));
        lines.add(new Fact("required", Value.of(choice.required(), Measure.SPEED)));
        return lines;
    }
}
