package dev.penstock.app.console;

import dev.penstock.fluids.coolprop.CoolPropLibrary;
import java.nio.file.Path;

/**
 * CoolProp on its way into this process, on a thread of its own, while the command line and the files are read: a fifth of a
 * short answer is waiting for it. Whoever asks for a state meanwhile waits as before; what goes wrong here is said there.
 */
public final class EarlyCoolProp {

    private final Thread loading;

    private EarlyCoolProp(Thread loading) {
        this.loading = loading;
    }

    /**
     * @param home home folder
     * @param needed whether the command will ask for states of fluids
     * @return the load, begun if needed
     */
    public static EarlyCoolProp begin(Path home, boolean needed) {
        Thread thread = new Thread(() -> load(home), "coolprop");
        thread.setDaemon(true);
        if (needed) {
            thread.start();
        }
        return new EarlyCoolProp(thread);
    }

    private static void load(Path home) {
        try {
            CoolPropLibrary.load(home);
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
