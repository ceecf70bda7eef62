package dev.penstock.validation;

import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * What kind of evidence an expected value is, strongest first. Every case table has a column for it, and a row cannot call
 * itself published and say in its note that it is from memory: memory is a kind, not a remark.
 */
public enum Evidence {
    /** read in the source that the row names, or in a transcription of it */
    PUBLISHED("published"),
    /** a published figure as remembered; nobody has looked it up */
    FROM_MEMORY("from memory"),
    /** a published relation, worked out apart from the program */
    WORKED("worked by hand"),
    /** true of every right answer as an argument goes to an end of its range */
    LIMIT("limit"),
    /** another author's program or equations */
    INDEPENDENT("independent library"),
    /** the source that the data were entered from: shows no more than that they were entered rightly */
    DATA_FILE("data file");

    private final String text;

    Evidence(String text) {
        this.text = text;
    }

    /** @return the kind as a case table and a page write it */
    public String text() {
        return text;
    }

    /**
     * @param kind the cell that names the kind
     * @param source the cell that names the source
     * @return the kind
     * @throws IllegalArgumentException if there is no such kind, or if the source says what only the kind may say
     */
    public static Evidence of(String kind, String source) {
        if (source.contains("memory")) {
            throw new IllegalArgumentException("\"" + source + "\": write \"" + FROM_MEMORY.text + "\" as the kind");
        }
        return Arrays.stream(values())
                .filter(e -> e.text.equals(kind))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("kind \"" + kind + "\" is none of "
                        + Arrays.stream(values()).map(Evidence::text).collect(Collectors.joining(", "))));
    }
}
