package swashlight.desk.line;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;

/** What is wrong with a machine: a case in, ranked causes out. */
@Command
final class FindCommand extends DeskCommand {
    @Mixin
    private DecisionOptions decision;

    @Mixin
    private TableOptions table;

    @Mixin
    private PictureOptions picture;

    FindCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        return Desk.find(decision.asked(session()));
    }

    @Override
    Optional<String> patience() {
        return Optional.of(HelpWords.load().getString("find.patience").replace("{0}", String.valueOf(decision.seed())));
    }

    @Override
    Optional<TableOptions> table() {
        return Optional.of(table);
    }

    @Override
    Optional<PictureOptions> picture() {
        return Optional.of(picture);
    }
}
