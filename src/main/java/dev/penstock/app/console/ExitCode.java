package dev.penstock.app.console;

import dev.penstock.errors.InvalidInput;

/** Exit codes of every command. */
public final class ExitCode {

    /** The question was answered. */
    public static final int OK = 0;

    /** The question was understood, but no solution exists or none was found. */
    public static final int NO_SOLUTION = 1;

    /** The question was not understood: options, files or values have to be changed. */
    public static final int BAD_INPUT = 2;

    private ExitCode() {}

    public static int of(Throwable failure) {
        return failure instanceof InvalidInput ? BAD_INPUT : NO_SOLUTION;
    }
}
