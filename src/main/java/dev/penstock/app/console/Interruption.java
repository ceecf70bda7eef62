package dev.penstock.app.console;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/** Lets a long command end early and still show what is done: an interrupt of the program waits until this is closed. */
public final class Interruption implements AutoCloseable {

    private static final int PATIENCE = 10;

    private final AtomicBoolean requested = new AtomicBoolean();
    private final CountDownLatch finished = new CountDownLatch(1);
    private final Thread hook = new Thread(() -> {
        requested.set(true);
        awaitFinish();
    });

    public Interruption() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** Whether the program is to end. */
    public boolean requested() {
        return requested.get();
    }

    @Override
    public void close() {
        finished.countDown();
        if (!requested.get()) {
            Runtime.getRuntime().removeShutdownHook(hook);
        }
    }

    private void awaitFinish() {
        try {
            finished.await(PATIENCE, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
