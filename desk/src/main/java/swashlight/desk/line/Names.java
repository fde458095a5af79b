package swashlight.desk.line;

import java.util.Optional;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Stated;

/** Files and demos by the name somebody gave. */
final class Names {
    private Names() {}

    /** A demo drive, or a file as seen from the session's folder; null where picocli was given nothing. */
    static Optional<Stated> drive(Session session, String where, String name) {
        return Optional.ofNullable(name)
                .map(text -> new Stated(
                        where, Desk.isDemo(text) ? text : session.file(text).toString()));
    }
}
