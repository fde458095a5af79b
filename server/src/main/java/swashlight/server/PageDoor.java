package swashlight.server;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.QuarkusApplication;
import java.net.InetSocketAddress;
import java.net.URI;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import swashlight.desk.door.Door;

/** Starts the server, tells when it answers, and waits until the program is told to end. */
public final class PageDoor implements Door {
    /** What to do once the server answers; a server there is only one of in a program. */
    private static final AtomicReference<Runnable> OPENED = new AtomicReference<>(() -> {});

    /** For the service loader. */
    public PageDoor() {}

    @Override
    public void open(InetSocketAddress address, Consumer<URI> opened) {
        String host = address.getAddress().getHostAddress();
        System.setProperty("quarkus.http.host", host);
        System.setProperty("quarkus.http.port", Integer.toString(address.getPort()));
        boolean everywhere = address.getAddress().isAnyLocalAddress();
        String shown = everywhere ? "localhost" : host.contains(":") ? "[" + host + "]" : host;
        OPENED.set(() -> opened.accept(URI.create("http://" + shown + ":" + address.getPort() + "/")));
        AtomicReference<Throwable> broken = new AtomicReference<>();
        Quarkus.run(Waiting.class, (code, failure) -> broken.set(failure));
        if (broken.get() != null) {
            throw new IllegalStateException(
                    "the server could not open: " + broken.get().getMessage(), broken.get());
        }
    }

    /** What the server's program does: nothing but wait. */
    public static final class Waiting implements QuarkusApplication {
        @Override
        public int run(String... arguments) {
            OPENED.get().run();
            Quarkus.waitForExit();
            return 0;
        }
    }
}
