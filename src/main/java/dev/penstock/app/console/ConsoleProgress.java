package dev.penstock.app.console;

import dev.penstock.study.Progress;
import java.io.PrintWriter;
import java.util.Optional;
import me.tongfei.progressbar.DelegatingProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** Shows progress on the error stream: a bar for a person who watches, lines where asked for, else nothing. */
public final class ConsoleProgress implements Progress, AutoCloseable {

    private static final int WIDTH = 100;

    private final PrintWriter err;
    private final boolean lines;
    private final Optional<ProgressBar> bar;

    private ConsoleProgress(PrintWriter err, boolean lines, Optional<ProgressBar> bar) {
        this.err = err;
        this.lines = lines;
        this.bar = bar;
    }

    /**
     * @param session session
     * @param task what is being done
     * @param pieces number of pieces
     * @param linesOtherwise whether to print lines where nobody watches
     * @return progress to be closed at the end
     */
    public static ConsoleProgress of(Session session, String task, int pieces, boolean linesOtherwise) {
        if (!session.terminal() || pieces < 2) {
            return new ConsoleProgress(session.err(), linesOtherwise, Optional.empty());
        }
        ProgressBar bar = new ProgressBarBuilder()
                .setTaskName(task)
                .setInitialMax(pieces)
                .setStyle(ProgressBarStyle.ASCII)
                .setUpdateIntervalMillis(100)
                .setConsumer(new DelegatingProgressBarConsumer(
                        text -> {
                            session.err().print("\r" + text);
                            session.err().flush();
                        },
                        WIDTH))
                .build();
        return new ConsoleProgress(session.err(), false, Optional.of(bar));
    }

    @Override
    public void done(int done, int of, String what) {
        bar.ifPresent(b -> b.maxHint(of).stepTo(done).setExtraMessage(" " + what));
        if (lines) {
            err.println("[" + done + "/" + of + "] " + what);
            err.flush();
        }
    }

    @Override
    public void close() {
        bar.ifPresent(b -> {
            b.close();
            err.println();
            err.flush();
        });
    }
}
