package dev.penstock.app.console;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.reports.text.JsonText;
import dev.penstock.study.EngineRuns;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Consumer;

/**
 * What a command works with.
 *
 * @param home folder that holds the data of Penstock
 * @param in where requests come from, for the command that takes them
 * @param out where results go that are text
 * @param documents where results go that are JSON documents
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
        Consumer<Map<String, Object>> documents,
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
                home,
                in,
                out,
                printing(out),
                err,
                terminal,
                fluids,
                true,
                new EngineRuns(home, fluids),
                new UnpackedPages());
    }

    /**
     * @param results where results go
     * @param problems where problems go
     * @return this session, for one command of several, with nobody watching
     */
    public Session into(PrintWriter results, PrintWriter problems) {
        return new Session(
                home,
                InputStream.nullInputStream(),
                results,
                printing(results),
                problems,
                false,
                fluids,
                local,
                runs,
                pages);
    }

    /**
     * @param documents takes the document that answers the request
     * @param problems where problems go
     * @return this session, for a request of another program, without the pages of other requests
     */
    public Session forRequest(Consumer<Map<String, Object>> documents, PrintWriter problems) {
        return new Session(
                home,
                InputStream.nullInputStream(),
                new PrintWriter(Writer.nullWriter()),
                documents,
                problems,
                false,
                fluids,
                false,
                runs,
                new UnpackedPages());
    }

    private static Consumer<Map<String, Object>> printing(PrintWriter out) {
        return document -> out.print(JsonText.of(document));
    }
}
