package dev.penstock.turbomachinery.turbine;

import dev.penstock.errors.Require;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What the engineer fixed about a turbine and the limits it must keep; everything left empty is chosen by
 * {@link TurbineModel}. {@link TurbineDefaults} gives the usual values with their spreads and sources.
 *
 * @param efficiency total-to-static efficiency (-); empty for the velocity-triangle relation
 * @param stages number of stages (of two rows each when velocity-compounded); empty for {@link TurbineModel#choose}
 * @param type kind of blading
 * @param meanDiameter pitch diameter (m); empty to follow the best velocity ratio within the limits
 * @param pitchLineSpeedLimit highest blade speed at the pitch line (m/s)
 * @param annulusSpeedLimit highest ω√A of the last rotor (m/s), A the annulus area; its square is the AN² of the trade
 * @param inletTemperatureLimit highest gas temperature at the inlet (K)
 * @param nozzleAngle smallest angle of the nozzle jet to the plane of rotation (rad); in a sizing the angle it came to
 * @param nozzleCoefficient nozzle velocity coefficient (-)
 * @param bladeCoefficient velocity coefficient of a rotor or turning row of impulse blades (-)
 * @param efficiencyFactor what a tip gap of 2 %, disk friction and secondary flow leave of the blading efficiency (-)
 * @param diameterCoefficient largest pitch diameter over the cube root of torque (m/(N·m)^(1/3))
 * @param minimumBladeHeight smallest blade that is built (m); below it only a part of the annulus is admitted
 * @param oxygenRich whether the gas is oxygen-rich, which bars many materials
 */
public record TurbineDesign(
        OptionalDouble efficiency,
        OptionalInt stages,
        TurbineType type,
        OptionalDouble meanDiameter,
        double pitchLineSpeedLimit,
        double annulusSpeedLimit,
        double inletTemperatureLimit,
        double nozzleAngle,
        double nozzleCoefficient,
        double bladeCoefficient,
        double efficiencyFactor,
        double diameterCoefficient,
        double minimumBladeHeight,
        boolean oxygenRich) {

    private static final String NAME = "turbine design";

    public TurbineDesign {
        efficiency.ifPresent(x -> Require.within(NAME, "efficiency (-)", x, 0.01, 1));
        stages.ifPresent(x -> Require.within(NAME, "number of stages", x, 1, 10));
        meanDiameter.ifPresent(x -> Require.positive(NAME, "pitch diameter (m)", x));
        Require.positive(NAME, "pitch-line speed limit (m/s)", pitchLineSpeedLimit);
        Require.positive(NAME, "limit of the square root of AN² (m/s)", annulusSpeedLimit);
        Require.positive(NAME, "inlet temperature limit (K)", inletTemperatureLimit);
        Require.within(NAME, "nozzle angle (rad)", nozzleAngle, Math.toRadians(8), Math.toRadians(45));
        Require.within(NAME, "nozzle velocity coefficient (-)", nozzleCoefficient, 0.8, 1);
        Require.within(NAME, "blade velocity coefficient (-)", bladeCoefficient, 0.5, 1);
        Require.within(NAME, "efficiency factor (-)", efficiencyFactor, 0.3, 1);
        Require.positive(NAME, "diameter coefficient (m/(N·m)^(1/3))", diameterCoefficient);
        Require.positive(NAME, "smallest blade height (m)", minimumBladeHeight);
    }

    /**
     * @param newEfficiency total-to-static efficiency (-)
     * @return this design with that efficiency
     */
    public TurbineDesign withEfficiency(double newEfficiency) {
        return with(OptionalDouble.of(newEfficiency), stages, type, meanDiameter, nozzleAngle, oxygenRich);
    }

    /**
     * @param newType kind of blading
     * @param newStages number of stages
     * @return this design with its stages settled
     */
    public TurbineDesign withStages(TurbineType newType, int newStages) {
        return with(efficiency, OptionalInt.of(newStages), newType, meanDiameter, nozzleAngle, oxygenRich);
    }

    /**
     * @param newMeanDiameter pitch diameter (m)
     * @return this design with that diameter
     */
    public TurbineDesign withMeanDiameter(double newMeanDiameter) {
        return with(efficiency, stages, type, OptionalDouble.of(newMeanDiameter), nozzleAngle, oxygenRich);
    }

    /**
     * @param newNozzleAngle angle of the nozzle jet to the plane of rotation (rad)
     * @return this design with that angle
     */
    TurbineDesign withNozzleAngle(double newNozzleAngle) {
        return with(efficiency, stages, type, meanDiameter, newNozzleAngle, oxygenRich);
    }

    /**
     * @param newLimit highest gas temperature at the inlet (K)
     * @return this design with that limit
     */
    public TurbineDesign withInletTemperatureLimit(double newLimit) {
        return new TurbineDesign(
                efficiency,
                stages,
                type,
                meanDiameter,
                pitchLineSpeedLimit,
                annulusSpeedLimit,
                newLimit,
                nozzleAngle,
                nozzleCoefficient,
                bladeCoefficient,
                efficiencyFactor,
                diameterCoefficient,
                minimumBladeHeight,
                oxygenRich);
    }

    /** @return whether kind and number of stages are settled, as a solver loop needs */
    public boolean settled() {
        return stages.isPresent() && type != TurbineType.AUTOMATIC;
    }

    private TurbineDesign with(
            OptionalDouble newEfficiency,
            OptionalInt newStages,
            TurbineType newType,
            OptionalDouble newMeanDiameter,
            double newNozzleAngle,
            boolean newOxygenRich) {
        return new TurbineDesign(
                newEfficiency,
                newStages,
                newType,
                newMeanDiameter,
                pitchLineSpeedLimit,
                annulusSpeedLimit,
                inletTemperatureLimit,
                newNozzleAngle,
                nozzleCoefficient,
                bladeCoefficient,
                efficiencyFactor,
                diameterCoefficient,
                minimumBladeHeight,
                newOxygenRich);
    }
}
