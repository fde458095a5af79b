package swashlight.findings.finding;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Lore;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.evidence.WildLaw;
import swashlight.findings.fit.Account;
import swashlight.findings.fit.Figures;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;

/** What the finding stands on, line by line. */
final class FindingAccount {
    private final Account.Writer writer = Account.writer();
    private final Lore lore;

    FindingAccount(
            MachineCase machine, Intake intake, Unknowns unknowns, Effort effort, List<Cause> leading, Lore lore) {
        this.lore = lore;
        writer.assumed(
                "one-cause",
                "nothing is wrong, or one thing is, or one of some pairs that go together. Odds before reading, severities and looks: own"
                        + " estimate and common practice, no source"
                        + (lore.counts() ? ", moved by counted cases" : ""));
        writer.assumed(
                "unknowns",
                unknowns.size() + " quantities are not known exactly and are integrated over: " + unknowns.parameters()
                        + " of the drive, the rest errors of the conditions");
        writer.assumed(
                "wild-readings",
                "one reading in " + Figures.significant(1 / WildLaw.SHARE, 2) + " is wild, with "
                        + Figures.significant(WildLaw.WIDTH, 2) + " times its error");
        for (UnusedReading unused : intake.unused()) {
            writer.leftOut(
                    "unused-reading",
                    unused.reading().label() + " (" + unused.reading().kind().key() + "): " + unused.lacks());
        }
        looks(machine, leading);
        writer.given(
                "effort",
                "seed " + effort.seed() + ", " + effort.causes() + " causes, " + effort.machines() + " machines drawn, "
                        + effort.unsolved()
                        + " of them with a reading that found no settled state (counted as a wild reading)");
    }

    private void looks(MachineCase machine, List<Cause> leading) {
        for (Look look : Look.values()) {
            boolean noted = machine.seen().contains(look) || machine.notSeen().contains(look);
            if (noted && look.toldBetterBy(kinds(machine))) {
                writer.leftOut("look", look.key() + ": a reading tells the same with a number");
            } else if (noted) {
                boolean seen = machine.seen().contains(look);
                StringBuilder text =
                        new StringBuilder(look.key() + (seen ? " seen" : " not seen") + "; chance of it: ");
                for (Cause cause : leading) {
                    double chance = lore.chance(look, cause);
                    text.append(cause.key())
                            .append(' ')
                            .append(Figures.significant(seen ? chance : 1 - chance, 2))
                            .append(", ");
                }
                writer.assumed(
                        "look",
                        text.append("by a table of common practice, no source").toString());
            }
        }
    }

    private static Set<ReadingKind> kinds(MachineCase machine) {
        return machine.readings().stream().map(Reading::kind).collect(Collectors.toSet());
    }

    Account done() {
        return writer.done();
    }
}
