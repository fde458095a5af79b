package swashlight.desk.line;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import swashlight.desk.work.Desk;
import swashlight.desk.work.DriveAsked;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Stated;
import swashlight.desk.work.StudyAsked;

/** Whether findings keep their promises. */
@Command
final class StudyCommand extends DeskCommand {
    @Option(names = "--drive", paramLabel = "FILE|DEMO")
    private String drive;

    @Option(names = "--machines", paramLabel = "NUMBER")
    private String machines = "200";

    @Option(names = "--with", paramLabel = "FILE")
    private List<String> with = List.of();

    @Mixin
    private LongOptions longer;

    @Mixin
    private TableOptions table;

    @Mixin
    private PictureOptions picture;

    StudyCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        DriveAsked asked = new DriveAsked(Named.drive(session(), "--drive", Optional.ofNullable(drive)), List.of());
        StudyAsked study = new StudyAsked(
                new Stated("--machines", machines),
                longer.seed,
                longer.careful,
                longer.hands(),
                longer.to(session()),
                with.stream().map(session()::file).toList());
        try (Waiting waiting = new Waiting(session(), "study")) {
            return Desk.study(asked, study, waiting);
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

    @Override
    Optional<PictureOptions> picture() {
        return Optional.of(picture);
    }
}
