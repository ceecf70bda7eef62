package dev.penstock.errors;

/** A search ended where nothing could be computed any more, so that its answer is not known. Names no limit of the hardware. */
public final class SearchFailed extends PenstockException {

    private static final long serialVersionUID = 1L;

    private final double last;

    /**
     * @param last last place that was solved, SI; NaN if none was
     * @param sentence one sentence with that place and what failed beyond it
     */
    public SearchFailed(double last, String sentence) {
        super(sentence);
        this.last = last;
    }

    /** @return last place that was solved, SI; NaN if none was */
    public double last() {
        return last;
    }
}
