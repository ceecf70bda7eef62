package dev.penstock.cooling.search;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.ThrustChamber;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.gas.HotGasProfiles;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.errors.PenstockException;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.LimitCheck;
import java.util.ArrayList;
import java.util.List;

/**
 * Sizes a chamber and its jacket at every pair of chamber pressure and thrust. Propellants enter from their tanks; the
 * coolant at a multiple of chamber pressure, unheated. Not thread-safe, like the chamber model inside.
 */
public final class FeasibilityStudy {

    private static final double INLET_OVER_CHAMBER_PRESSURE = 1.8;

    private final JacketSolver solver;
    private final NozzleFlow nozzle;

    /**
     * @param solver jacket solver
     * @param nozzle nozzle flow whose species cover the propellants
     */
    public FeasibilityStudy(JacketSolver solver, NozzleFlow nozzle) {
        this.solver = solver;
        this.nozzle = nozzle;
    }

    /**
     * What is mapped.
     *
     * @param oxidizer oxidizer
     * @param fuel fuel
     * @param mixtureRatio oxidizer over fuel by mass (-)
     * @param fuelCools whether the fuel cools; else the oxidizer
     * @param chamber chamber; its pressure is replaced
     * @param jacket jacket, its channels open
     */
    public record Subject(
            Propellant oxidizer,
            Propellant fuel,
            double mixtureRatio,
            boolean fuelCools,
            ChamberDesign chamber,
            JacketDesign jacket) {

        Propellant coolant() {
            return fuelCools ? fuel : oxidizer;
        }

        double coolantShare() {
            return (fuelCools ? 1 : mixtureRatio) / (1 + mixtureRatio);
        }

        Injection injection() {
            return Injection.of(stored(oxidizer), stored(fuel), mixtureRatio);
        }

        private static Reactants stored(Propellant propellant) {
            return Reactants.single(propellant, propellant.storedEnthalpy());
        }
    }

    /**
     * @param subject what is mapped
     * @param chamberPressures chamber pressures, rising (Pa)
     * @param thrusts vacuum thrusts, rising (N)
     * @param progress told after each point
     * @return the map
     */
    public FeasibilityMap map(
            Subject subject, List<Double> chamberPressures, List<Double> thrusts, SearchProgress progress) {
        List<FeasibilityMap.Point> points = new ArrayList<>();
        int all = chamberPressures.size() * thrusts.size();
        for (double pressure : chamberPressures) {
            for (double thrust : thrusts) {
                points.add(point(subject, pressure, thrust));
                progress.step(points.size(), all);
            }
        }
        String title =
                subject.oxidizer.fluid().name() + " and " + subject.fuel.fluid().name() + ", cooled by "
                        + subject.coolant().fluid().name();
        return new FeasibilityMap(title, chamberPressures, thrusts, points);
    }

    private FeasibilityMap.Point point(Subject subject, double pressure, double thrust) {
        try {
            JacketResult result = solver.solve(question(subject, pressure, thrust));
            LimitCheck binding = result.bindingLimit().orElseThrow();
            return new FeasibilityMap.Point(pressure, thrust, result.feasible(), binding.name(), binding.margin());
        } catch (PenstockException e) {
            // no jacket at all is an answer of the map
            return new FeasibilityMap.Point(pressure, thrust, false, e.getMessage(), -1);
        }
    }

    private JacketCase question(Subject subject, double pressure, double thrust) {
        ChamberPerformance chamber = new ThrustChamber(nozzle)
                .forVacuumThrust(subject.chamber.withChamberPressure(pressure), subject.injection(), thrust);
        Propellant coolant = subject.coolant();
        double inlet = INLET_OVER_CHAMBER_PRESSURE * pressure;
        FluidState state = coolant.fluid()
                .atPressureTemperature(Math.max(inlet, coolant.storagePressure()), coolant.storageTemperature());
        return new JacketCase(
                HotGasProfiles.of(chamber, subject.fuel),
                coolant,
                state.pressure(),
                state.enthalpy(),
                chamber.massFlow() * subject.coolantShare(),
                subject.jacket,
                1);
    }
}
