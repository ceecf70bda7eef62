package dev.penstock.errors;

import java.util.Objects;

/**
 * Something the reader of a result must know: a model used outside its fit, an assumption known to be doubtful here.
 *
 * @param source model or component that raised it
 * @param message one sentence with the numbers
 * @param aside whether no limit of the hardware could be kept or missed because of it
 */
public record Warning(String source, String message, boolean aside) {

    public Warning {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(message, "message");
    }

    /**
     * A warning that may turn a limit.
     *
     * @param source model or component that raised it
     * @param message one sentence with the numbers
     */
    public Warning(String source, String message) {
        this(source, message, false);
    }

    /** @return the same, of which no limit of the hardware depends */
    public Warning asAside() {
        return new Warning(source, message, true);
    }
}
