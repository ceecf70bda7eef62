package dev.penstock.input;

import java.util.Optional;

/**
 * Defaults that hold all over a file because of one thing that it says. They stand in front of those that the declarations have
 * and those that follow from the rest of the file; what the file states goes before both.
 */
public interface FileDefaults {

    /** Every input keeps the default that it has. */
    FileDefaults NONE = new FileDefaults() {
        @Override
        public <T> Optional<Usual<T>> of(Input<T> input, Optional<Usual<T>> otherwise) {
            return otherwise;
        }
    };

    /**
     * @param input an input that the file leaves out
     * @param otherwise the default it would have; empty where the calculation finds the value
     * @param <T> type of its value
     * @return the default in use; empty where the calculation finds the value
     */
    <T> Optional<Usual<T>> of(Input<T> input, Optional<Usual<T>> otherwise);
}
