package dev.penstock.app.console;

import dev.penstock.fluids.FluidLibrary;
import java.io.PrintWriter;
import java.nio.file.Path;

/**
 * What a command works with.
 *
 * @param home folder that holds the data of Penstock
 * @param out where results go
 * @param err where progress and problems go
 * @param terminal whether a person watches {@code err}
 * @param fluids fluids of the home folder
 */
public record Session(Path home, PrintWriter out, PrintWriter err, boolean terminal, FluidLibrary fluids) {

    public Session(Path home, PrintWriter out, PrintWriter err, boolean terminal) {
        this(home, out, err, terminal, FluidLibrary.open(home));
    }
}
