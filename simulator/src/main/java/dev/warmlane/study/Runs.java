package dev.warmlane.study;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/** Runs the parts of a study on several threads; results come in the order of the items, whoever finished first. */
public final class Runs {

    private final int threads;
    private final Progress progress;

    /**
     * How to run.
     *
     * @param threads how many threads, 1 or more
     * @param progress who hears of it
     */
    public Runs(int threads, Progress progress) {
        if (threads < 1) {
            throw new IllegalArgumentException("a study needs at least 1 thread, was " + threads);
        }
        this.threads = threads;
        this.progress = progress;
    }

    /** On all cores, heard by nobody. */
    public static Runs onAllCores() {
        return onAllCores(Progress.SILENT);
    }

    /** On all cores. */
    public static Runs onAllCores(Progress progress) {
        return new Runs(Runtime.getRuntime().availableProcessors(), progress);
    }

    /**
     * Applies a function to every item.
     *
     * @throws CancellationException if {@link Progress#cancelled} said so, or this thread was interrupted
     */
    public <T, R> List<R> map(List<T> items, Function<? super T, ? extends R> function) {
        AtomicInteger finished = new AtomicInteger();
        ExecutorService pool = Executors.newFixedThreadPool(Math.max(1, Math.min(threads, items.size())));
        try {
            List<Future<R>> futures = new ArrayList<>();
            for (T item : items) {
                futures.add(pool.submit(() -> {
                    if (progress.cancelled()) {
                        throw new CancellationException("the study was cancelled");
                    }
                    R result = function.apply(item);
                    progress.finished(finished.incrementAndGet(), items.size());
                    return result;
                }));
            }
            List<R> results = new ArrayList<>();
            for (Future<R> future : futures) {
                results.add(result(future));
            }
            return results;
        } finally {
            pool.shutdownNow();
        }
    }

    private static <R> R result(Future<R> future) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw cancelled(e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (e.getCause() instanceof Error cause) {
                throw cause; // such as no memory left, which whoever asked has to hear of as it is
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    private static CancellationException cancelled(Throwable cause) {
        CancellationException e = new CancellationException("the study was interrupted");
        e.initCause(cause);
        return e;
    }
}
