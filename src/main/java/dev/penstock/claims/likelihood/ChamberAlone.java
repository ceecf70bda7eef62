package dev.penstock.claims.likelihood;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.ThrustChamber;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.quantities.Constants;
import java.util.Map;

/**
 * What the thrust chamber of a concept does by itself, fed at the mixture ratio and enthalpy of the tanks: nearly what the
 * engine does, at a fraction of the cost of a balance. The same for every thread, since each has a solver of its own.
 */
final class ChamberAlone {

    private final Concept concept;
    private final ChamberPerformance performance;

    /**
     * @param concept concept
     * @param species gas species
     */
    ChamberAlone(Concept concept, SpeciesLibrary species) {
        this.concept = concept;
        Reactants reactants = Reactants.ofTanks(concept.oxidizer(), concept.fuel(), concept.mixtureRatio());
        ThrustChamber chamber = new ThrustChamber(NozzleFlow.of(species, reactants));
        this.performance = sized(chamber, Injection.of(reactants));
    }

    private ChamberPerformance sized(ThrustChamber chamber, Injection injection) {
        ThrustTarget target = concept.thrust();
        double value = target.valueOfOne();
        return switch (target.kind()) {
            case VACUUM_THRUST -> chamber.forVacuumThrust(concept.chamber(), injection, value);
            case THROAT_DIAMETER -> chamber.forThroatArea(concept.chamber(), injection, Math.PI / 4 * value * value);
            case SEA_LEVEL_THRUST -> {
                ChamberPerformance first = chamber.forVacuumThrust(concept.chamber(), injection, value);
                double there = first.thrustAt(Constants.STANDARD_ATMOSPHERE);
                yield there > 0.1 * value
                        ? chamber.forVacuumThrust(concept.chamber(), injection, value * value / there)
                        : first;
            }
        };
    }

    /** What the model of a loss leaves; one where there is no such loss. */
    double lossFactor(LossKind kind) {
        return performance.loss(kind).map(NamedLoss::factor).orElse(1.0);
    }

    static final String IMPULSE_VACUUM = "engine.isp_vacuum_s";
    static final String FLOW = "engine.mass_flow_kg_s";
    static final String THRUST_SEA_LEVEL = "engine.thrust_sea_level_N";
    static final String IMPULSE_SEA_LEVEL = "engine.isp_sea_level_s";

    /** Figures that vary with the back pressure: a share of a small number is little. */
    private static final double AT_SEA_LEVEL = 3;

    /** How much less sure a figure is than one in vacuum (-). */
    static double looseness(String path) {
        return path.equals(THRUST_SEA_LEVEL) || path.equals(IMPULSE_SEA_LEVEL) ? AT_SEA_LEVEL : 1;
    }

    /**
     * Figures by the path that the engine publishes them under.
     *
     * @param efficiency efficiency of all stated losses over what their models give (-)
     */
    Map<String, Double> figures(double efficiency) {
        int chambers = concept.chambers();
        double flow = chambers * performance.massFlow() / efficiency;
        double atSeaLevel = chambers * performance.thrustAt(Constants.STANDARD_ATMOSPHERE);
        return Map.of(
                IMPULSE_VACUUM,
                performance.vacuumSpecificImpulse() * efficiency,
                "engine.thrust_vacuum_N",
                chambers * performance.vacuumThrust(),
                FLOW,
                flow,
                "engine.throat_diameter_m",
                Math.sqrt(4 * performance.throatArea() / Math.PI),
                "engine.exit_diameter_m",
                Math.sqrt(4 * performance.exitArea() / Math.PI),
                "engine.area_ratio",
                performance.areaRatio(),
                THRUST_SEA_LEVEL,
                atSeaLevel,
                IMPULSE_SEA_LEVEL,
                atSeaLevel / flow / Constants.STANDARD_GRAVITY);
    }
}
