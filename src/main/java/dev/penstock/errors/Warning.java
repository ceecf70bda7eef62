package dev.penstock.errors;

import java.util.Objects;

/**
 * Something the reader of a result must know: a model used outside its fit, an assumption known to be doubtful here.
 *
 * @param source model or component that raised it
 * @param message one sentence with the numbers
 */
public record Warning(String source, String message) {

    public Warning {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(message, "message");
    }
}
