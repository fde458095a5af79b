package swashlight.desk.line;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The commands in the order of work. A command's class is loaded only when it is made. */
enum Catalogue {
    SERVE("serve", ServeCommand::new),
    FIND("find", FindCommand::new),
    NEXT("next", NextCommand::new),
    CHOOSE("choose", ChooseCommand::new),
    PROOF("proof", ProofCommand::new),
    TEARDOWN("teardown", TeardownCommand::new),
    LIMITS("limits", LimitsCommand::new),
    SIFT("sift", SiftCommand::new),
    CHECK("check", CheckCommand::new),
    POINT("point", PointCommand::new),
    CURVE("curve", CurveCommand::new),
    MAP("map", MapCommand::new),
    WARM_UP("warmup", WarmUpCommand::new),
    RUN("run", RunCommand::new),
    SWAY("sway", SwayCommand::new),
    FIT("fit", FitCommand::new),
    EXPECT("expect", ExpectCommand::new),
    LEARN("learn", LearnCommand::new),
    STUDY("study", StudyCommand::new),
    FAULTS("faults", FaultsCommand::new),
    DEMO("demo", DemoCommand::new),
    SCHEMA("schema", SchemaCommand::new);

    private final String word;
    private final Function<Session, LineCommand> maker;

    Catalogue(String word, Function<Session, LineCommand> maker) {
        this.word = word;
        this.maker = maker;
    }

    String word() {
        return word;
    }

    LineCommand make(Session session) {
        return maker.apply(session);
    }

    static Optional<Catalogue> find(String word) {
        return Stream.of(values()).filter(command -> command.word.equals(word)).findFirst();
    }

    static List<String> words() {
        return Stream.of(values()).map(Catalogue::word).toList();
    }
}
