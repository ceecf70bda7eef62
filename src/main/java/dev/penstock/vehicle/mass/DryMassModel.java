package dev.penstock.vehicle.mass;

import java.util.Optional;
import java.util.function.UnaryOperator;

/** Answers what a stage weighs without propellant. Implementations are immutable. */
public interface DryMassModel {

    /**
     * @param stage what the stage holds and carries
     * @return its dry mass, line by line
     */
    MassTable estimate(StageContents stage);

    /** @return the part of it that covers the payload and goes overboard on the way (kg) */
    default double fairing() {
        return 0;
    }

    /** @return whether each engine counts in it */
    default boolean growsWithEngines() {
        return false;
    }

    /**
     * @param change what brings the stage back, made from what does so now
     * @return the same model with that; one that is not built up line by line holds whatever it needs
     */
    default DryMassModel recovering(UnaryOperator<Optional<RecoveryHardware>> change) {
        return this;
    }
}
