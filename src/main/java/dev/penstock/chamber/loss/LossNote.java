package dev.penstock.chamber.loss;

import java.util.function.Supplier;

/** A line for the reader, put into words when it is first read: rounds towards a balance make many that nobody reads. */
public final class LossNote {

    private final Supplier<String> maker;
    private String text;

    LossNote(Supplier<String> maker) {
        this.maker = maker;
    }

    /** @param text the line */
    public static LossNote of(String text) {
        return new LossNote(() -> text);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LossNote && other.toString().equals(toString());
    }

    @Override
    public int hashCode() {
        return toString().hashCode();
    }

    @Override
    public String toString() {
        String made = text;
        if (made == null) {
            made = maker.get();
            text = made;
        }
        return made;
    }
}
