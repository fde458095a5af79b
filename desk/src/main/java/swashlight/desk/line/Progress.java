package swashlight.desk.line;

import java.util.Timer;
import java.util.TimerTask;
import java.util.function.Supplier;

/** Says on standard error that something is being worked out, if it takes longer than a second. */
final class Progress {
    private static final long PATIENCE = 1000; // ms

    private Progress() {}

    /** Does the work; after a second says the words of help under a key, with a number in their gap. */
    static <T> T during(Session session, String key, long number, Supplier<T> work) {
        String words = HelpWords.load().getString(key).replace("{0}", String.valueOf(number));
        Timer timer = new Timer(true);
        timer.schedule(
                new TimerTask() {
                    @Override
                    public void run() {
                        session.err().println(words);
                    }
                },
                PATIENCE);
        try {
            return work.get();
        } finally {
            timer.cancel();
        }
    }
}
