package dev.penstock.study;

/** Told of each piece of work that is done. Calls may come from any thread, one at a time. */
@FunctionalInterface
public interface Progress {

    /** Tells nobody. */
    Progress NONE = (done, of, what) -> {};

    /**
     * @param done pieces done so far
     * @param of pieces in all
     * @param what the piece just done
     */
    void done(int done, int of, String what);
}
