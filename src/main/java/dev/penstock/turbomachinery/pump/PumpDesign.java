package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.Require;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What the engineer fixed about a pump and the limits it must keep; everything left empty is chosen by {@link PumpModel}.
 * {@link PumpDefaults#of} gives the usual values for a propellant, each with its spread and source.
 *
 * @param speed shaft speed (rad/s); empty for the fastest that suction, specific speed and bearings allow
 * @param efficiency total efficiency, isentropic enthalpy rise over shaft work (-); empty for the published relation
 * @param stages number of main stages; empty for {@link PumpModel#choose}
 * @param type kind of main stages
 * @param headCoefficient isentropic stage head over tip speed squared (-); empty for the published relation
 * @param tipSpeedLimit highest impeller tip speed (m/s)
 * @param tipSpeedSource where that limit comes from
 * @param inducerTipSpeedLimit highest inducer tip speed (m/s)
 * @param inducerFlowCoefficient lowest axial velocity over tip speed at the inducer inlet (-); it fixes the suction specific
 *     speed and is raised where the inducer's tip speed would pass its limit
 * @param inducerHubRatio hub over tip diameter of the inducer inlet (-)
 * @param suppressionFactor vapour over liquid volume at the inducer blade (-), the B factor of the thermodynamic
 *     suppression head; 0 for none
 * @param suctionMargin available over required net positive suction head, suppression included (-)
 * @param specificSpeedLimit highest specific speed of a main stage, ω√Q/(stage head)^0.75 (-)
 * @param bearingSpeedLimit highest surface speed of the shaft in its bearings (m/s); DN in mm·rpm is 19 099 times this
 * @param shaftStress allowed torsional shear stress of the shaft (Pa)
 * @param minimumShaftDiameter smallest shaft that is built (m)
 * @param efficiencyFactor efficiency of a rocket pump over that of the industrial relation (-)
 */
public record PumpDesign(
        OptionalDouble speed,
        OptionalDouble efficiency,
        OptionalInt stages,
        PumpType type,
        OptionalDouble headCoefficient,
        double tipSpeedLimit,
        String tipSpeedSource,
        double inducerTipSpeedLimit,
        double inducerFlowCoefficient,
        double inducerHubRatio,
        double suppressionFactor,
        double suctionMargin,
        double specificSpeedLimit,
        double bearingSpeedLimit,
        double shaftStress,
        double minimumShaftDiameter,
        double efficiencyFactor) {

    private static final String NAME = "pump design";

    public PumpDesign {
        speed.ifPresent(x -> Require.positive(NAME, "speed (rad/s)", x));
        efficiency.ifPresent(x -> Require.within(NAME, "efficiency (-)", x, 0.01, 1));
        stages.ifPresent(x -> Require.within(NAME, "number of stages", x, 1, 20));
        headCoefficient.ifPresent(x -> Require.within(NAME, "head coefficient (-)", x, 0.05, 1));
        Require.positive(NAME, "tip speed limit (m/s)", tipSpeedLimit);
        Require.positive(NAME, "inducer tip speed limit (m/s)", inducerTipSpeedLimit);
        Require.within(NAME, "inducer flow coefficient (-)", inducerFlowCoefficient, 0.04, 0.3);
        Require.within(NAME, "inducer hub ratio (-)", inducerHubRatio, 0, 0.8);
        Require.within(NAME, "suppression factor (-)", suppressionFactor, 0, 10);
        Require.within(NAME, "NPSH margin (-)", suctionMargin, 1, 10);
        Require.within(NAME, "specific speed limit (-)", specificSpeedLimit, 0.1, 5);
        Require.positive(NAME, "bearing speed limit (m/s)", bearingSpeedLimit);
        Require.positive(NAME, "shaft stress (Pa)", shaftStress);
        Require.positive(NAME, "smallest shaft diameter (m)", minimumShaftDiameter);
        Require.within(NAME, "efficiency factor (-)", efficiencyFactor, 0.1, 1.2);
    }

    /**
     * @param newSpeed shaft speed (rad/s)
     * @return this design at that speed
     */
    public PumpDesign withSpeed(double newSpeed) {
        return with(OptionalDouble.of(newSpeed), efficiency, stages, type, headCoefficient);
    }

    /**
     * @param newEfficiency total efficiency (-)
     * @return this design with that efficiency
     */
    public PumpDesign withEfficiency(double newEfficiency) {
        return with(speed, OptionalDouble.of(newEfficiency), stages, type, headCoefficient);
    }

    /**
     * @param newType kind of stages
     * @param newStages number of main stages
     * @return this design with its stages settled
     */
    public PumpDesign withStages(PumpType newType, int newStages) {
        return with(speed, efficiency, OptionalInt.of(newStages), newType, headCoefficient);
    }

    /**
     * @param newHeadCoefficient stage head over tip speed squared (-)
     * @return this design with that head coefficient
     */
    public PumpDesign withHeadCoefficient(double newHeadCoefficient) {
        return with(speed, efficiency, stages, type, OptionalDouble.of(newHeadCoefficient));
    }

    /** @return whether kind and number of stages are settled, as a solver loop needs */
    public boolean settled() {
        return stages.isPresent() && type != PumpType.AUTOMATIC;
    }

    private PumpDesign with(
            OptionalDouble newSpeed,
            OptionalDouble newEfficiency,
            OptionalInt newStages,
            PumpType newType,
            OptionalDouble newHeadCoefficient) {
        return new PumpDesign(
                newSpeed,
                newEfficiency,
                newStages,
                newType,
                newHeadCoefficient,
                tipSpeedLimit,
                tipSpeedSource,
                inducerTipSpeedLimit,
                inducerFlowCoefficient,
                inducerHubRatio,
                suppressionFactor,
                suctionMargin,
                specificSpeedLimit,
                bearingSpeedLimit,
                shaftStress,
                minimumShaftDiameter,
                efficiencyFactor);
    }
}
