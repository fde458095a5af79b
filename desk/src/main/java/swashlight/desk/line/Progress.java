package swashlight.desk.line;

import java.util.Timer;
import java.util.TimerTask;
import java.util.function.Supplier;
import swashlight.desk.text.Ink;

/** Says on standard error that something is being worked out, if it takes longer than a second; on a terminal it goes when done. */
final class Progress {
    private static final long PATIENCE = 1000; // ms
    private static final String WIPE = "\r\u001b[K";

    private final Session session;
    private final String words;
    private boolean told;
    private boolean ended;

    private Progress(Session session, String words) {
        this.session = session;
        this.words = words;
    }

    /** Does the work; after a second says the words. */
    static <T> T during(Session session, String words, Supplier<T> work) {
        Progress progress = new Progress(session, words);
        Timer timer = new Timer(true);
        timer.schedule(
                new TimerTask() {
                    @Override
                    public void run() {
                        progress.tell();
                    }
                },
                PATIENCE);
        try {
            return work.get();
        } finally {
            timer.cancel();
            progress.end();
        }
    }

    private synchronized void tell() {
        if (!ended) {
            told = true;
            session.err().print(terminal() ? words : words + System.lineSeparator());
            session.err().flush();
        }
    }

    private synchronized void end() {
        ended = true;
        if (told && terminal()) {
            session.err().print(WIPE);
            session.err().flush();
        }
    }

    private boolean terminal() {
        return session.ink() == Ink.TERMINAL;
    }
}
