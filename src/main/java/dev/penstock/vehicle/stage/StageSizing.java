package dev.penstock.vehicle.stage;

import dev.penstock.errors.Require;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.mass.StageContents;
import java.util.Optional;

/**
 * One stage as sized.
 *
 * @param name name for tables
 * @param engine one of its engines
 * @param engines number of engines
 * @param boosters boosters beside it
 * @param startMass start mass: everything that stands on this stage when its engines ignite, its own dry mass and loaded
 *     propellant, boosters beside it and all above it (kg)
 * @param above what it carries: the stages above and the payload (kg)
 * @param propellant propellant and what it is used for
 * @param contents tanks and outer shape
 * @param dryMass dry mass, line by line
 * @param overboard the part of the dry mass that goes overboard while the stage burns: its fairing (kg)
 * @param body whether its tanks fit into the body that it is given, if it is
 * @param deltaV ideal delta-v of this stage (m/s)
 * @param thrustToWeight thrust over weight at ignition (-)
 */
public record StageSizing(
        String name,
        EnginePerformance engine,
        int engines,
        Optional<BoosterSizing> boosters,
        double startMass,
        double above,
        PropellantLoad propellant,
        StageContents contents,
        MassTable dryMass,
        double overboard,
        Optional<BodyFit> body,
        double deltaV,
        double thrustToWeight) {

    public StageSizing {
        Require.positive(name, "start mass (kg)", startMass);
        Require.finite(name, "mass above (kg)", above);
        Require.finite(name, "delta-v (m/s)", deltaV);
        Require.finite(name, "thrust to weight (-)", thrustToWeight);
    }

    /** @return vacuum specific impulse of the engine (s) */
    public double isp() {
        return engine.vacuumIsp();
    }

    /** @return mass when the ascent burn ends, before the stage is dropped and after its fairing is (kg) */
    public double finalMass() {
        return startMass
                - boosters.map(BoosterSizing::startMass).orElse(0.0)
                - propellant.startup()
                - propellant.boilOff()
                - propellant.burned()
                - overboard;
    }

    /** @return mass of the stage and all above at release over {@link #finalMass} (-); boosters do not count */
    public double massRatio() {
        return (finalMass() + propellant.burned()) / finalMass();
    }

    /** @return dry mass over dry mass and propellant (-) */
    public double structuralCoefficient() {
        return dryMass.total() / (dryMass.total() + propellant.loaded());
    }

    /** @return time of the ascent burn at full thrust (s) */
    public double burnTime() {
        return propellant.burned() / (engines * engine.massFlow());
    }

    /** @return volume of the oxidizer tank (m³) */
    public double oxidizerTankVolume() {
        return contents.oxidizerTank().volume();
    }

    /** @return volume of the fuel tank (m³) */
    public double fuelTankVolume() {
        return contents.fuelTank().volume();
    }
}
