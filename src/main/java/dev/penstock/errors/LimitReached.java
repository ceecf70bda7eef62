package dev.penstock.errors;

/** No balance exists inside a limit. A limit that is missed where a balance exists is a result, not this error. */
public final class LimitReached extends PenstockException {

    private static final long serialVersionUID = 1L;

    private final String limit;

    /**
     * @param limit name of the limit
     * @param sentence one sentence with where, value, bound, unit and what would help
     */
    public LimitReached(String limit, String sentence) {
        super(sentence);
        this.limit = limit;
    }

    /** @return name of the limit */
    public String limit() {
        return limit;
    }
}
