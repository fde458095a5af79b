package swashlight.desk.line;

import java.util.Optional;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Stated;

/** Files and demos as somebody names them in place of an option. */
final class Named {
    private Named() {}

    static Optional<Stated> machineCase(Session session, Optional<String> name) {
        return name.map(text -> new Stated("CASE", Desk.isDemoCase(text) ? text : file(session, text)));
    }

    static Optional<Stated> teardown(Session session, Optional<String> name) {
        return name.map(text -> new Stated("FILE", Desk.isDemoTeardown(text) ? text : file(session, text)));
    }

    static Optional<Stated> drive(Session session, String where, Optional<String> name) {
        return name.map(text -> new Stated(where, Desk.isDemo(text) ? text : file(session, text)));
    }

    static Optional<Stated> prices(Session session, Optional<String> name) {
        return name.map(text -> new Stated("--prices", Desk.isDemoPrices(text) ? text : file(session, text)));
    }

    private static String file(Session session, String name) {
        return session.file(name).toString();
    }
}
