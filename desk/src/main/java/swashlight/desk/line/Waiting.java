package swashlight.desk.line;

import java.util.Timer;
import java.util.TimerTask;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import swashlight.desk.text.Ink;
import swashlight.desk.work.RunWatch;

/**
 * Somebody at a shell who waits: after a second of work hears how far it is, and may stop it with Ctrl-C. Then the work ends where it is,
 * nothing half-written stays behind, and the shell sees 130.
 */
final class Waiting implements RunWatch, AutoCloseable {
    private static final long PATIENCE = 1000; // ms until the first word
    private static final long PAUSE = 1000; // ms between two words on a terminal
    private static final long LONG_PAUSE = 10_000; // ms between two lines in a log
    private static final long MOST_WAITED = 10; // s for the work to come to an end

    private final Session session;
    private final String work;
    private final boolean terminal;
    private final Timer timer = new Timer(true);
    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook = new Thread(this::interrupted, "stops the work");
    private volatile double share;
    private volatile boolean stopped;
    private volatile boolean told;

    /** For a piece of work whose words of help begin with its name. */
    Waiting(Session session, String work) {
        this.session = session;
        this.work = work;
        terminal = session.ink() == Ink.TERMINAL;
        timer.schedule(
                new TimerTask() {
                    @Override
                    public void run() {
                        tell();
                    }
                },
                PATIENCE,
                terminal ? PAUSE : LONG_PAUSE);
        Runtime.getRuntime().addShutdownHook(hook);
    }

    private void tell() {
        String words = words("progress", share);
        session.err().print(terminal ? "\r" + words : words + System.lineSeparator());
        session.err().flush();
        told = true;
    }

    private String words(String key, double share) {
        return HelpWords.load().getString(work + "." + key).replace("{0}", String.valueOf((int) (100 * share)));
    }

    /** What happens on Ctrl-C, while the work goes on in its own thread. */
    private void interrupted() {
        stopped = true;
        timer.cancel();
        try {
            boolean came = ended.await(MOST_WAITED, TimeUnit.SECONDS);
            String key = !came ? "hangs" : share < 1 ? "stopped" : "finished";
            session.err().println((terminal && told ? "\n" : "") + words(key, share));
            session.err().flush();
        } catch (InterruptedException again) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void reached(double reached) {
        share = reached;
    }

    @Override
    public boolean stopped() {
        return stopped;
    }

    @Override
    public void close() {
        timer.cancel();
        ended.countDown();
        if (!stopped) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException ending) { // the program is being stopped just now: the hook says so
                return;
            }
        }
        if (told && terminal) {
            session.err().print("\r\u001b[K");
            session.err().flush();
        }
    }
}
