package dev.penstock.cycles.sheet;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.chamber.loss.Vaporisation;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.Machines;
import dev.penstock.cycles.origin.Origins;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.electric.ElectricSizing;
import dev.penstock.turbomachinery.mass.EngineMass;
import dev.penstock.turbomachinery.metal.MetalReport;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A balanced engine: every station, machine, pressure step and limit, with the evidence that it closes.
 *
 * @param concept what was asked for
 * @param engine headline figures
 * @param stations every numbered station
 * @param components the parts that join them, in the order of the arrangement
 * @param machines pumps, turbines and shafts by their keys
 * @param chamber thrust chamber, one of them where there are several
 * @param cooling jackets of one chamber, in the order of the concept's circuits
 * @param pressureLadder pressure steps, line by line, from tank to chamber
 * @param exhausts dumped turbine gas
 * @param electric electric drive, for the cycle that has one
 * @param engineLosses what lies between the chamber's and the engine's specific impulse
 * @param limits every limit held against its value: cycle, machines and jackets
 * @param metals parts that meet oxygen or hydrogen, with the tests of their metals
 * @param warnings what the reader must know
 * @param residuals what is left of every closing equation
 * @param audit mass and energy added up again from the stations
 * @param effort what the solution cost
 * @param origins what the calculation wrote down of where its numbers come from and where its parts stand
 */
public record EngineBalance(
        Concept concept,
        EngineSummary engine,
        List<Station> stations,
        List<Component> components,
        Machines machines,
        ChamberPerformance chamber,
        List<JacketResult> cooling,
        List<PressureStep> pressureLadder,
        List<ExhaustJet> exhausts,
        Optional<ElectricSizing> electric,
        List<NamedLoss> engineLosses,
        List<LimitCheck> limits,
        MetalReport metals,
        List<Warning> warnings,
        List<Residual> residuals,
        EnergyAudit audit,
        Effort effort,
        Origins origins) {

    public EngineBalance {
        stations = List.copyOf(stations);
        components = List.copyOf(components);
        cooling = List.copyOf(cooling);
        pressureLadder = List.copyOf(pressureLadder);
        exhausts = List.copyOf(exhausts);
        engineLosses = List.copyOf(engineLosses);
        limits = List.copyOf(limits);
        warnings = List.copyOf(warnings);
        residuals = List.copyOf(residuals);
    }

    /** @return pumps as sized, shaft after shaft; empty for pressure-fed cycles */
    public List<PumpSizing> pumps() {
        return List.copyOf(machines.pumps().values());
    }

    /** @return turbines as sized, shaft after shaft */
    public List<TurbineSizing> turbines() {
        return List.copyOf(machines.turbines().values());
    }

    /** @return shafts with their power balance */
    public List<ShaftBalance> shafts() {
        return List.copyOf(machines.shafts().values());
    }

    /** @return largest relative residual of the closing equations and of the audit (-) */
    public double residualWorst() {
        return residuals.stream().mapToDouble(Residual::relative).reduce(audit.worst(), Math::max);
    }

    /** @return warnings by which a limit that is kept may be missed, or the reverse */
    public List<Warning> doubts() {
        return warnings.stream().filter(w -> !w.aside()).toList();
    }

    /** @return whether every limit is kept, as the models have it; {@link #doubts()} may turn that */
    public boolean withinLimits() {
        return limits.stream().allMatch(LimitCheck::met);
    }

    /** @return its mass, part by part, without tanks and pressurant, which are the vehicle's */
    public EngineMass mass() {
        return EngineMasses.of(this);
    }

    /**
     * Of the chamber as this engine has it when it is throttled at the mixture ratio of the design.
     *
     * @param throttle chamber pressure over that of the design (-)
     * @return what its injector leaves unvaporised
     */
    public Vaporisation vaporisation(double throttle) {
        CombustorDesign combustor = concept.chamber().combustor();
        Reactants mixture = Reactants.of(concept.oxidizer(), 0, concept.fuel(), 0, engine.chamberMixtureRatio());
        return new Vaporisation(
                combustor.withInjector(combustor.injector().throttled(throttle)),
                throttle * concept.chamberPressure(),
                mixture);
    }

    /** @return power of all pumps (W); empty without pumps */
    public OptionalDouble pumpPower() {
        return machines.pumps().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        pumps().stream().mapToDouble(PumpSizing::power).sum());
    }

    /**
     * @param number number of a station
     * @return the station
     */
    public Station station(int number) {
        return stations.stream()
                .filter(s -> s.number() == number)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no station " + number));
    }

    /**
     * @param side oxidizer or fuel
     * @return the station behind its tank
     */
    public Station tankOutlet(Side side) {
        return outlet(PartKey.tank(side));
    }

    /**
     * @param part a part of the arrangement
     * @return the station behind it
     */
    public Station outlet(PartKey part) {
        return components.stream()
                .filter(c -> c.key().equals(part))
                .map(c -> station(c.outlets().get(0)))
                .findFirst()
                .orElseThrow();
    }

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return thrust of the whole engine there (N)
     */
    public double thrustAt(double ambientPressure) {
        return new Nozzles(concept.chambers(), chamber, exhausts).thrustAt(ambientPressure);
    }

    /** @return whether the flow leaves the wall of the main nozzle at one standard atmosphere, by the design's criterion */
    public boolean separatedAtSeaLevel() {
        return chamber.separationAreaRatio(Constants.STANDARD_ATMOSPHERE).isPresent();
    }

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return specific impulse of the whole engine there (s)
     */
    public double ispAt(double ambientPressure) {
        return thrustAt(ambientPressure) / engine.massFlow() / Constants.STANDARD_GRAVITY;
    }

    /**
     * Everything that an engine pushes with: its chambers, and what dumps turbine gas.
     *
     * @param chambers number of chambers
     * @param chamber one of them
     * @param exhausts nozzles of dumped turbine gas
     */
    public record Nozzles(int chambers, ChamberPerformance chamber, List<ExhaustJet> exhausts) {

        public Nozzles {
            exhausts = List.copyOf(exhausts);
        }

        /**
         * @param ambientPressure ambient pressure (Pa)
         * @return thrust of the whole engine there (N)
         * @throws dev.penstock.errors.OutsideValidity if the throat would not be sonic
         */
        public double thrustAt(double ambientPressure) {
            Require.notNegative("engine", "ambient pressure (Pa)", ambientPressure);
            return chambers * chamber.thrustAt(ambientPressure)
                    + exhausts.stream()
                            .mapToDouble(jet -> jet.thrustAt(ambientPressure))
                            .sum();
        }
    }
}
