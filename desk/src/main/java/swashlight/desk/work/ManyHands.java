package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/** Does many pieces of work that know nothing of each other, on several cores, until all are done or somebody has enough of it. */
final class ManyHands {
    private ManyHands() {}

    /** Does all that are left of a number of pieces; false when stopped before the end. */
    static <T> boolean all(List<T> left, int all, int hands, Consumer<T> work, RunWatch watch) {
        ExecutorService pool = Executors.newFixedThreadPool(hands);
        AtomicInteger done = new AtomicInteger(all - left.size());
        watch.reached(done.get() / (double) Math.max(1, all));
        List<Future<?>> pieces = new ArrayList<>();
        for (T piece : left) {
            pieces.add(pool.submit(() -> {
                if (!watch.stopped()) {
                    work.accept(piece);
                    watch.reached(done.incrementAndGet() / (double) all);
                }
            }));
        }
        try {
            for (Future<?> piece : pieces) {
                piece.get();
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException broken) {
            throw new IllegalStateException(broken.getCause());
        } finally {
            pool.shutdownNow();
        }
        return done.get() == all;
    }
}
