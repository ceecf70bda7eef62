package dev.penstock.vehicle.mass;

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
}
