package org.keelweigh.decision.acceptability;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/** Shares blocks of samples among threads, in fixed consecutive parts, each with rows and counts of its own. */
final class Blocks {

    private Blocks() {}

    /** Works blocks one after another and holds what was counted. */
    interface Worker {
        void work(int block);

        Tally tally();
    }

    static int requireThreads(int count) {
        if (count < 1 || count > 64) {
            throw new IllegalArgumentException("threads must be 1 to 64 but is " + count);
        }
        return count;
    }

    static Tally tally(int blocks, int threads, Supplier<Worker> workers) {
        int parts = Math.max(1, Math.min(threads, blocks));
        List<FutureTask<Tally>> tasks = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            int from = (int) ((long) blocks * part / parts);
            int to = (int) ((long) blocks * (part + 1) / parts);
            tasks.add(new FutureTask<>(range(workers.get(), from, to)));
        }
        for (int part = 1; part < parts; part++) {
            Thread.ofPlatform().daemon().name("acceptability-" + part).start(tasks.get(part));
        }
        tasks.getFirst().run();
        Tally sum = result(tasks.getFirst());
        for (int part = 1; part < parts; part++) {
            sum.addAll(result(tasks.get(part)));
        }
        return sum;
    }

    private static Callable<Tally> range(Worker worker, int from, int to) {
        return () -> {
            for (int block = from; block < to; block++) {
                worker.work(block);
            }
            return worker.tally();
        };
    }

    private static Tally result(FutureTask<Tally> task) {
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while ranking samples", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("ranking samples failed", e.getCause());
        }
    }
}
