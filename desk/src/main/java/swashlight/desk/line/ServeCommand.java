package swashlight.desk.line;

import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.ServiceLoader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import swashlight.desk.door.Door;
import swashlight.desk.work.Refusal;

/** The page: opened to browsers until Ctrl-C. */
@Command
final class ServeCommand extends LineCommand {
    private static final int USUAL_PORT = 8080;
    private static final int HIGHEST_PORT = 65_535;

    @Option(names = "--port", paramLabel = "NUMBER")
    private Integer port;

    @Option(names = "--host", paramLabel = "ADDRESS")
    private String host = "127.0.0.1";

    @Option(names = "--open")
    private boolean look;

    ServeCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        if (port != null && (port < 0 || port > HIGHEST_PORT)) {
            throw wrong("--port takes 0 (any free one) to " + HIGHEST_PORT + ", not " + port);
        }
        Optional<Door> door = ServiceLoader.load(Door.class).findFirst();
        if (door.isEmpty()) {
            return refuse(
                    "", "this build has no page in it", "build all of it: mvn -B package, then ./swashlight serve");
        }
        InetSocketAddress address;
        try {
            address = free(InetAddress.getByName(host));
        } catch (UnknownHostException unknown) {
            return refuse(
                    host,
                    "no such address on this machine",
                    "127.0.0.1 is this machine alone, 0.0.0.0 the network too");
        } catch (IOException busy) {
            String right = busy instanceof BindException
                    ? "--port 0 takes a free one; or end what runs there"
                    : "127.0.0.1 is this machine alone, 0.0.0.0 the network too";
            return refuse(host + ":" + asked(), "cannot be opened: " + busy.getMessage(), right);
        }
        door.get().open(address, this::tell);
        return Ending.ANSWERED.code();
    }

    /** The address asked for, or beside it where nobody insisted on a port. */
    private InetSocketAddress free(InetAddress home) throws IOException {
        try (ServerSocket tried = new ServerSocket(asked(), 1, home)) {
            return new InetSocketAddress(home, tried.getLocalPort());
        } catch (BindException busy) {
            if (port != null) {
                throw busy;
            }
            try (ServerSocket any = new ServerSocket(0, 1, home)) {
                return new InetSocketAddress(home, any.getLocalPort());
            }
        }
    }

    private int asked() {
        return port == null ? USUAL_PORT : port;
    }

    private void tell(URI where) {
        ResourceBundle words = HelpWords.load();
        session().out().println(words.getString("serve.opened").replace("{0}", where.toString()));
        session().out().flush();
        if (look && !Browser.show(where)) {
            session().err().println(words.getString("serve.no-browser"));
        }
    }

    private Integer refuse(String given, String what, String right) {
        Complaints.tell(session().err(), List.of(new Refusal("serve", "swashlight serve", given, what, right)));
        return Ending.INPUT.code();
    }
}
