package dev.penstock.reports.engine;

import dev.penstock.cycles.sheet.EngineBalance;

/** Whether a balanced engine keeps its limits, in the words that report and local page share. */
public final class LimitsSentence {

    private LimitsSentence() {}

    /**
     * @param balance balanced engine
     * @return how a sentence goes on that said to what the cycle closes, its full stop included
     */
    public static String of(EngineBalance balance) {
        return of(
                balance.limits().size(),
                missed(balance),
                (int) balance.warnings().stream().distinct().count(),
                (int) balance.doubts().stream().distinct().count());
    }

    /** The same from numbers of limits, of those missed, of warnings, and of those by which a limit may be kept or missed. */
    static String of(int limits, int missed, int warnings, int doubts) {
        return missed > 0
                ? ", but misses " + missed + " of " + limits + " limits."
                : " and keeps all " + limits + " limits" + doubt(warnings, doubts) + ".";
    }

    /**
     * @param balance balanced engine
     * @return number of limits that it misses
     */
    public static int missed(EngineBalance balance) {
        return (int) balance.limits().stream().filter(l -> !l.met()).count();
    }

    /** Nothing is within limits for sure where a model says that it is used outside its fit. */
    private static String doubt(int warnings, int doubts) {
        if (doubts == 0) {
            return "";
        }
        String some = doubts == 1 ? "a warning" : doubts + " warnings";
        return "; " + (doubts < warnings ? doubts + " of " + warnings + " warnings" : some) + " may change that";
    }
}
