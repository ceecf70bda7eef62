package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import dev.penstock.vehicle.engine.StartNeeds;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a stage is built, as far as its dry mass depends on it.
 *
 * @param tankKind how the tanks take load; empty for the relation by volume
 * @param material what the tanks are made of
 * @param pressurant gas from bottles, if any
 * @param ownVapour whether cryogenic propellants pressurise their own tanks with vapour
 * @param collapseFactor collapse factor (-); empty for the usual one
 * @param engineMass mass of one engine (kg); empty for the engine's own estimate
 * @param interstage whether it carries another stage, on an interstage
 * @param fairing mass of the payload fairing (kg), overboard while this stage burns; zero for none
 * @param recovery what brings the stage back, if anything
 * @param starts starts of each engine with what they start on; empty where nothing is carried for them
 * @param growthMargin growth as a fraction of the sum of the lines that are estimated (-)
 */
public record DryMassDesign(
        Optional<TankShell.Kind> tankKind,
        TankMaterial material,
        Optional<PressurantSupply> pressurant,
        boolean ownVapour,
        OptionalDouble collapseFactor,
        OptionalDouble engineMass,
        boolean interstage,
        double fairing,
        Optional<RecoveryHardware> recovery,
        Optional<StartNeeds.Bottle> starts,
        double growthMargin) {

    /** A stage that carries nothing for its starts. */
    public DryMassDesign(
            Optional<TankShell.Kind> tankKind,
            TankMaterial material,
            Optional<PressurantSupply> pressurant,
            boolean ownVapour,
            OptionalDouble collapseFactor,
            OptionalDouble engineMass,
            boolean interstage,
            double fairing,
            Optional<RecoveryHardware> recovery,
            double growthMargin) {
        this(
                tankKind,
                material,
                pressurant,
                ownVapour,
                collapseFactor,
                engineMass,
                interstage,
                fairing,
                recovery,
                Optional.empty(),
                growthMargin);
    }

    /** Tanks by the relation, no pressurant, 15 % growth. */
    public static final DryMassDesign PLAIN = new DryMassDesign(
            Optional.empty(),
            TankMaterial.ALUMINIUM,
            Optional.empty(),
            false,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            false,
            0,
            Optional.empty(),
            0.15);

    public DryMassDesign {
        collapseFactor.ifPresent(f -> Require.within("dry mass", "collapse factor (-)", f, 0.5, 10));
        engineMass.ifPresent(m -> Require.positive("dry mass", "engine mass (kg)", m));
        Require.notNegative("dry mass", "fairing (kg)", fairing);
        Require.within("dry mass", "growth margin (-)", growthMargin, 0, 2);
    }

    /**
     * @param hardware what brings the stage back, if anything
     * @return the same design with that
     */
    public DryMassDesign withRecovery(Optional<RecoveryHardware> hardware) {
        return new DryMassDesign(
                tankKind,
                material,
                pressurant,
                ownVapour,
                collapseFactor,
                engineMass,
                interstage,
                fairing,
                hardware,
                starts,
                growthMargin);
    }
}
