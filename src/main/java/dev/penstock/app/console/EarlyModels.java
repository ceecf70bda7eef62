package dev.penstock.app.console;

import dev.penstock.fluids.coolprop.CoolPropLibrary;

/**
 * CoolProp on its way into this process, and species and walls behind it, on a thread of its own, while the command line and the files are
 * read: a fifth of a short answer is waiting for them. Whoever asks meanwhile waits as before; what goes wrong here is said there.
 */
public final class EarlyModels {

    /** What a command will ask for. */
    public enum Needed {
        NOTHING,
        /** States of fluids. */
        STATES,
        /** These, and species and walls. */
        ENGINES
    }

    private final Thread loading;

    private EarlyModels(Thread loading) {
        this.loading = loading;
    }

    /**
     * @param session whose home folder and runs are made ready
     * @param needed what the command will ask for
     * @return the load, begun if anything is needed
     */
    public static EarlyModels begin(Session session, Needed needed) {
        Thread thread = new Thread(() -> load(session, needed), "models");
        thread.setDaemon(true);
        if (needed != Needed.NOTHING) {
            thread.start();
        }
        return new EarlyModels(thread);
    }

    private static void load(Session session, Needed needed) {
        try {
            CoolPropLibrary.load(session.home());
            if (needed == Needed.ENGINES) {
                session.runs().study();
            }
        } catch (RuntimeException | LinkageError e) {
            // whoever asks for a state tries again, and says it
        }
    }

    /** Waits for the end of the load: a process that ends in the middle of one may be ended by the system instead. */
    public void await() {
        try {
            loading.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
