package dev.penstock.app.console;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.study.EngineRuns;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;

/**
 * What a command works with.
 *
 * @param home folder that holds the data of Penstock
 * @param in where requests come from, for the command that takes them
 * @param out where results go
 * @param err where progress and problems go
 * @param terminal whether a person watches {@code err}
 * @param fluids fluids of the home folder
 * @param local whether a command may do more on this machine than answer ({@link LocalAction})
 * @param runs balances with the data of the home folder; all commands of a session share what it has opened
 * @param pages pages that were unpacked
 */
public record Session(
        Path home,
        InputStream in,
        PrintWriter out,
        PrintWriter err,
        boolean terminal,
        FluidLibrary fluids,
        boolean local,
        EngineRuns runs,
        UnpackedPages pages) {

    /**
     * @param home folder that holds the data of Penstock
     * @param in where requests come from
     * @param out where results go
     * @param err where progress and problems go
     * @param terminal whether a person watches {@code err}
     * @return a session with the data of that folder
     */
    public static Session open(Path home, InputStream in, PrintWriter out, PrintWriter err, boolean terminal) {
        FluidLibrary fluids = FluidLibrary.open(home);
        return new Session(
                home, in, out, err, terminal, fluids, true, new EngineRuns(home, fluids), new UnpackedPages());
    }

    /**
     * @param results where results go
     * @param problems where problems go
     * @return this session, for one command of several, with nobody watching
     */
    public Session into(PrintWriter results, PrintWriter problems) {
        return new Session(home, InputStream.nullInputStream(), results, problems, false, fluids, local, runs, pages);
    }

    /**
     * @param results where results go
     * @param problems where problems go
     * @return this session, for a request of another program, without the pages of other requests
     */
    public Session forRequest(PrintWriter results, PrintWriter problems) {
        return new Session(
                home,
                InputStream.nullInputStream(),
                results,
                problems,
                false,
                fluids,
                false,
                runs,
                new UnpackedPages());
    }
}
