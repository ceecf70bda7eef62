package dev.penstock.reports.engine;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.Warning;
import java.util.List;

/** Whether a balanced engine keeps its limits, in the words that report and local page share. */
public final class LimitsSentence {

    private LimitsSentence() {}

    /**
     * @param balance balanced engine
     * @return how a sentence goes on that said to what the cycle closes, its full stop included
     */
    public static String of(EngineBalance balance) {
        int limits = balance.limits().size();
        int missed = missed(balance);
        return missed > 0
                ? ", but misses " + missed + " of " + limits + " limits."
                : " and keeps all " + limits + " limits" + doubt(balance) + ".";
    }

    /**
     * @param balance balanced engine
     * @return number of limits that it misses
     */
    public static int missed(EngineBalance balance) {
        return (int) balance.limits().stream().filter(l -> !l.met()).count();
    }

    /** Nothing is within limits for sure where a model says that it is used outside its fit. */
    private static String doubt(EngineBalance balance) {
        List<Warning> all = balance.warnings().stream().distinct().toList();
        int doubts = (int) balance.doubts().stream().distinct().count();
        if (doubts == 0) {
            return "";
        }
        String some = doubts == 1 ? "a warning" : doubts + " warnings";
        return "; " + (doubts < all.size() ? doubts + " of " + all.size() + " warnings" : some) + " may change that";
    }
}
