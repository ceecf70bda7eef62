package dev.penstock.cycles;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.errors.PenstockException;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.JsonText;
import java.util.List;

/**
 * What came of a concept.
 *
 * @param kind how it ended
 * @param reason why it did not close: kind and sentence, without the numbers and names in them; for a defect all of it
 */
record Verdict(Kind kind, String reason) {

    /** How a balance can end. */
    enum Kind {
        CLOSED,
        REFUSED,
        /** A number in the answer that is none. */
        NOT_A_NUMBER,
        /** Mass or energy of a component does not add up. */
        AUDIT,
        /** A failure that no sentence was written for. */
        UNTYPED
    }

    static final double AUDIT_LIMIT = 1e-8;

    private static final String NUMBER = "[-+]?(\\d[\\d,]*\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?";

    /** Balances the concept and writes out all its figures. */
    static Verdict on(RandomConcepts.Draw draw) {
        EngineBalance balance;
        try {
            balance = Concepts.STUDY.balance(draw.concept());
        } catch (PenstockException e) {
            return new Verdict(Kind.REFUSED, e.getClass().getSimpleName() + ": " + reason(e.getMessage(), draw));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return new Verdict(Kind.UNTYPED, e + " at " + at(e));
        }
        try {
            JsonText.of(FigureJson.of(EngineFigures.ALL, balance));
        } catch (IllegalStateException e) {
            return new Verdict(Kind.NOT_A_NUMBER, e.getMessage());
        } catch (RuntimeException e) {
            return new Verdict(Kind.UNTYPED, e + " at " + at(e));
        }
        double worst = balance.audit().worst();
        return worst < AUDIT_LIMIT
                ? new Verdict(Kind.CLOSED, "")
                : new Verdict(
                        Kind.AUDIT, "audit " + worst + " of " + draw.cycle().id());
    }

    /** The sentence without what differs from one concept to the next: fluids, numbers, the values named in quotes. */
    static String reason(String sentence, RandomConcepts.Draw draw) {
        String unnamed = sentence;
        for (String key : List.of("propellants.oxidizer", "propellants.fuel")) {
            String id = draw.values().get(key);
            unnamed = unnamed.replace(id, "PROPELLANT")
                    .replace(Concepts.FLUIDS.propellant(id).name(), "PROPELLANT");
        }
        return unnamed.replaceAll("\"[^\"]*\"", "\"\"")
                .replaceAll("(?<![A-Za-z])" + NUMBER, "#")
                .replaceAll("\\s+", " ");
    }

    private static String at(Throwable e) {
        StackTraceElement[] trace = e.getStackTrace();
        return trace.length == 0 ? "an unknown place" : trace[0].toString();
    }
}
