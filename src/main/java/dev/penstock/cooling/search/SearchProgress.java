package dev.penstock.cooling.search;

/** Told how far a long search has come. */
@FunctionalInterface
public interface SearchProgress {

    /** Says nothing. */
    SearchProgress SILENT = (done, all) -> {};

    /**
     * @param done steps done
     * @param all steps allowed; the search may end earlier
     */
    void step(int done, int all);
}
