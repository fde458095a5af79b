package swashlight.desk.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.SiftAsked;
import swashlight.desk.work.Stated;

/** Many cases, one row each. */
@Command
final class SiftCommand extends DeskCommand {
    @Parameters(index = "0..*", arity = "0..*", paramLabel = "FOLDER|CASE", descriptionKey = "place")
    private List<String> places = new ArrayList<>();

    @Mixin
    private LongOptions longer;

    @Mixin
    private TableOptions table;

    SiftCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        List<Stated> stated = places.stream()
                .map(place -> new Stated(
                        "CASE",
                        Desk.isDemoCase(place) ? place : session().file(place).toString()))
                .toList();
        SiftAsked asked = new SiftAsked(stated, longer.seed, longer.careful, longer.hands(), longer.to(session()));
        try (Waiting waiting = new Waiting(session(), "sift")) {
            return Desk.sift(asked, waiting);
        }
    }

    @Override
    Optional<String> patience() {
        return Optional.empty();
    }

    @Override
    Optional<TableOptions> table() {
        return Optional.of(table);
    }
}
