package swashlight.desk.door;

import java.net.InetSocketAddress;
import java.net.URI;
import java.util.function.Consumer;

/** Opens the page to browsers. Found as a service, so that the command line starts no server unless it is asked for one. */
public interface Door {
    /**
     * Opens at an address that is free and stays open until the program is told to end.
     *
     * @param address host and port
     * @param opened told once the first page can be fetched, with where
     * @throws IllegalStateException when it cannot open; the message says why
     */
    void open(InetSocketAddress address, Consumer<URI> opened);
}
