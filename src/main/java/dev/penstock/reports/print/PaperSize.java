package dev.penstock.reports.print;

import java.util.Arrays;
import java.util.Optional;

/** A sheet of paper, upright. */
public enum PaperSize {
    /** ISO 216. */
    A4("a4", 210, 297),
    /** ANSI/ASME Y14.1, 8.5 in by 11 in. */
    LETTER("letter", 215.9, 279.4);

    private static final double POINTS_PER_MM = 72 / 25.4;

    private final String id;
    private final double width;
    private final double height;

    PaperSize(String id, double width, double height) {
        this.id = id;
        this.width = width;
        this.height = height;
    }

    /** @return name as it is written on the command line */
    public String id() {
        return id;
    }

    /** @return width (points of 1/72 in) */
    public double width() {
        return width * POINTS_PER_MM;
    }

    /** @return height (points of 1/72 in) */
    public double height() {
        return height * POINTS_PER_MM;
    }

    /**
     * @param id name in any case
     * @return the size of that name, if there is one
     */
    public static Optional<PaperSize> named(String id) {
        return Arrays.stream(values()).filter(s -> s.id.equalsIgnoreCase(id)).findFirst();
    }
}
