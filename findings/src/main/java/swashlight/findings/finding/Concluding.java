package swashlight.findings.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import swashlight.findings.cause.Action;
import swashlight.findings.fit.Figures;

/** Puts the finding into one conclusion. */
final class Concluding {
    private static final double COVERED = 0.9; // probability that the tied causes share, 1
    private static final double NEAR = 0.1; // share of the likeliest cause below which a cause is no tie, 1

    private static final int MOST_NAMED = 4;

    private Concluding() {}

    static Conclusion conclude(List<ActionFinding> actions, boolean contradiction) {
        ActionFinding best = actions.get(0);
        List<CauseFinding> tied = tied(actions);
        boolean sameAction =
                tied.stream().allMatch(cause -> cause.cause().actions().equals(Set.of(best.action())));
        Verdict verdict = contradiction || best.verdict() != Verdict.THIS ? Verdict.CANNOT_TELL : Verdict.THIS;
        return new Conclusion(
                verdict,
                best.action(),
                tied.stream().map(cause -> cause.cause().key()).toList(),
                sameAction,
                contradiction,
                words(verdict, best, tied, sameAction, contradiction));
    }

    private static List<CauseFinding> tied(List<ActionFinding> actions) {
        List<CauseFinding> all = Finding.ranked(actions);
        List<CauseFinding> tied = new ArrayList<>();
        double covered = 0;
        for (CauseFinding cause : all) {
            if (covered >= COVERED || cause.probability() < NEAR * all.get(0).probability()) {
                break;
            }
            tied.add(cause);
            covered += cause.probability();
        }
        return tied;
    }

    private static String words(
            Verdict verdict, ActionFinding best, List<CauseFinding> tied, boolean sameAction, boolean contradiction) {
        StringBuilder text = new StringBuilder();
        CauseFinding first = tied.get(0);
        if (verdict == Verdict.THIS) {
            text.append(capital(best.action()))
                    .append(" (")
                    .append(percent(best.probability()))
                    .append(")");
            text.append(tied.size() == 1 ? ": " + first.cause().words() + "." : ". ");
            if (tied.size() > 1) {
                text.append("Which of ")
                        .append(names(tied))
                        .append(" cannot be told apart from outside")
                        .append(sameAction ? ", and need not be: the same is to be done." : ".");
            }
            return text.toString();
        }
        text.append("Cannot tell yet. ");
        if (contradiction) {
            text.append("The readings contradict each other: no single cause explains them all. ")
                    .append("Repeat the one that fits worst. ");
        }
        text.append("Likeliest single cause: ")
                .append(first.cause().words())
                .append(" (")
                .append(percent(first.probability()))
                .append("). Likeliest thing to do: ")
                .append(best.action().words())
                .append(" (")
                .append(percent(best.probability()))
                .append("). ");
        if (tied.size() > 1) {
            List<CauseFinding> few = tied.subList(0, Math.min(MOST_NAMED, tied.size()));
            int more = tied.size() - few.size();
            text.append("Not told apart: ").append(names(few)).append(more > 0 ? ", and " + more + " more. " : ". ");
        }
        return text.toString().trim();
    }

    private static String names(List<CauseFinding> causes) {
        StringBuilder names = new StringBuilder();
        for (int i = 0; i < causes.size(); i++) {
            names.append(i == 0 ? "" : i == causes.size() - 1 ? " and " : ", ")
                    .append(causes.get(i).cause().words());
        }
        return names.toString();
    }

    private static String capital(Action action) {
        return Character.toUpperCase(action.words().charAt(0)) + action.words().substring(1);
    }

    private static String percent(double probability) {
        return Figures.significant(100 * probability, probability > 0.995 ? 3 : 2) + " %";
    }
}
