package dev.penstock.errors;

import java.util.List;
import java.util.stream.Collectors;

/** Something the user wrote cannot be used. Several problems of one input are reported together. */
public final class InvalidInput extends PenstockException {

    private static final long serialVersionUID = 1L;
    /** As much of what was written as finds it again. */
    private static final int SHOWN = 300;

    /**
     * One thing that is wrong.
     *
     * @param where file, file and line, or command-line option; empty if unknown
     * @param key dotted key or option name
     * @param value what was written, or "(missing)"
     * @param allowed what would be accepted, as the end of a sentence
     */
    public record Problem(String where, String key, String value, String allowed) {

        /** @return the problem as one sentence naming place, key, value and what is allowed */
        public String sentence() {
            String place = where.isEmpty() ? "" : where + ": ";
            return place + shortened(key) + " is " + shortened(value) + "; " + allowed;
        }

        private static String shortened(String text) {
            return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "... (" + text.length() + " characters)";
        }
    }

    private final transient List<Problem> problems;

    /** @param problems at least one problem, in the order in which the user wrote the keys */
    public InvalidInput(List<Problem> problems) {
        super(problems.stream().map(Problem::sentence).collect(Collectors.joining(System.lineSeparator())));
        this.problems = List.copyOf(problems);
    }

    /**
     * A single problem.
     *
     * @param where file, file and line, or command-line option; empty if unknown
     * @param key dotted key or option name
     * @param value what was written
     * @param allowed what would be accepted, as the end of a sentence
     */
    public InvalidInput(String where, String key, String value, String allowed) {
        this(List.of(new Problem(where, key, value, allowed)));
    }

    /** @return every problem found */
    public List<Problem> problems() {
        return problems;
    }
}
