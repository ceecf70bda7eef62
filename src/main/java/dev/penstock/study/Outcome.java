package dev.penstock.study;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.PenstockException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What became of one concept.
 *
 * @param file concept file
 * @param name name of the concept
 * @param balance balanced engine, if there is one
 * @param failure why there is none
 */
public record Outcome(Path file, String name, Optional<EngineBalance> balance, Optional<PenstockException> failure) {

    public Outcome {
        if (balance.isPresent() == failure.isPresent()) {
            throw new IllegalArgumentException(name + " needs either a balance or a failure");
        }
    }
}
