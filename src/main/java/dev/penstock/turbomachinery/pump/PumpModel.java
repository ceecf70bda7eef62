package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.Warning;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.KnownStates;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.speed.ShaftTorsion;
import dev.penstock.turbomachinery.speed.SpeedBound;
import dev.penstock.turbomachinery.speed.SpeedLimit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * Sizes a pump: speed, stages, diameters, efficiency and power for a duty.
 *
 * <p>Inside a solver loop the results must not jump. Only the kind and number of stages can: settle them first with
 * {@link #choose}, solve with the settled design, and choose again at the solution. {@link #work} and {@link #fastestSpeed} on
 * a settled design are smooth in every number of the duty; on a design that is not settled they choose by themselves, and may
 * jump.
 *
 * <p>Not thread-safe: remembers isentropes and suppression heads of recent inlet states.
 */
public final class PumpModel {

    private final PumpHead heads = new PumpHead();
    private final PumpSuction suction = new PumpSuction();
    private final PumpSpeed speeds = new PumpSpeed(suction);
    private final PumpStages stages = new PumpStages(speeds);

    /**
     * @param duty what is asked of the pump
     * @param design what is fixed
     * @return the design with kind and number of stages settled
     */
    public PumpDesign choose(PumpDuty duty, PumpDesign design) {
        return design.settled() ? design : stages.choose(duty, design, head(duty));
    }

    /**
     * The fastest speed that suction, inducer tip speed, specific speed and bearings allow together.
     *
     * @param duty what is asked of the pump
     * @param design what is fixed
     * @return speed (rad/s): the design's own if it fixes one
     * @throws dev.penstock.errors.OutsideValidity if the liquid boils at the inlet even with the suppression head
     */
    public double fastestSpeed(PumpDuty duty, PumpDesign design) {
        if (design.speed().isPresent()) {
            return design.speed().getAsDouble();
        }
        double head = head(duty);
        return speeds.fastest(duty, stages.choose(duty, design, head), head);
    }

    /**
     * @param duty what is asked of the pump
     * @param design what is fixed
     * @return every bound on its speed, whether or not the design fixes one
     * @throws dev.penstock.errors.OutsideValidity if the liquid boils at the inlet even with the suppression head
     */
    public List<SpeedLimit> speedLimits(PumpDuty duty, PumpDesign design) {
        double head = head(duty);
        return speeds.limits(duty, stages.choose(duty, design, head), head);
    }

    /**
     * @param duty what is asked of the pump
     * @param design what is fixed
     * @return those bounds on its speed that more inlet pressure does not move
     */
    public List<SpeedLimit> mechanicalLimits(PumpDuty duty, PumpDesign design) {
        double head = head(duty);
        return PumpSpeed.mechanical(duty, stages.choose(duty, design, head), head);
    }

    /**
     * @param duty duty from an inlet with too little pressure
     * @param design what is fixed
     * @param speed at which the pump is to run (rad/s)
     * @return inlet pressure that it needs, suppression head and margin included (Pa)
     */
    public double inletPressureFor(PumpDuty duty, PumpDesign design, double speed) {
        double required = PumpSuction.requiredHead(duty, design, speed) * design.suctionMargin();
        double missing = required - PumpSuction.pressureHead(duty) - suction.suppressionHead(duty, design);
        return duty.inlet().pressure() + missing * duty.inlet().density() * Constants.STANDARD_GRAVITY;
    }

    /**
     * The bearing beside the turbine of a shaft with several pumps carries the torque of all. It runs in the liquid that bears the
     * higher speed.
     *
     * @param hydraulicPower isentropic power of all pumps (W)
     * @param designs their designs
     * @return bound on the speed of the shaft
     */
    public static SpeedLimit sharedBearings(double hydraulicPower, Collection<PumpDesign> designs) {
        double stress =
                designs.stream().mapToDouble(PumpDesign::shaftStress).min().orElseThrow();
        double surface = designs.stream()
                .mapToDouble(PumpDesign::bearingSpeedLimit)
                .max()
                .orElseThrow();
        return new SpeedLimit(SpeedBound.BEARINGS, PumpSpeed.bearings(hydraulicPower, stress, surface));
    }

    /**
     * @param duty what is asked of the pump
     * @return isentropic power (W)
     */
    public double hydraulicPower(PumpDuty duty) {
        return duty.massFlow() * head(duty);
    }

    /**
     * @param duty what is asked of the pump
     * @param design what is fixed; settled where the result must not jump
     * @return speed, head, efficiency, power and outlet enthalpy
     */
    public PumpWork work(PumpDuty duty, PumpDesign design) {
        double head = head(duty);
        PumpDesign settled = stages.choose(duty, design, head);
        double speed = speeds.fastest(duty, settled, head);
        double efficiency = settled.efficiency().isPresent()
                ? settled.efficiency().getAsDouble()
                : PumpStages.relationEfficiency(duty, settled, speed, head);
        double work = head / efficiency;
        return new PumpWork(
                speed, head, efficiency, duty.massFlow() * work, duty.inlet().enthalpy() + work);
    }

    /**
     * @param name name of the pump in the cycle
     * @param duty what is asked of it
     * @param design what is fixed
     * @return the pump, with its limits and warnings
     */
    public PumpSizing size(String name, PumpDuty duty, PumpDesign design) {
        PumpDesign settled = choose(duty, design);
        PumpWork work = work(duty, settled);
        double speed = work.speed();
        double q = duty.volumeFlow();
        double stageHead = work.head() / settled.stages().orElseThrow();
        double specific = SpecificSpeed.of(speed, q, stageHead);
        double psi = PumpStages.headCoefficient(settled, specific);
        double tipSpeed = Math.sqrt(stageHead / psi);
        double diameter = 2 * tipSpeed / speed;
        double width = settled.type() == PumpType.AXIAL
                ? q / (Math.PI * diameter * StageShape.AXIAL_FLOW_COEFFICIENT * tipSpeed)
                : diameter * StageShape.outletWidthRatio(SpecificSpeed.metric(specific));
        double phi = PumpSuction.flowCoefficient(duty, settled, speed);
        double inducer = InducerSuction.diameter(q, speed, phi, settled.inducerHubRatio());
        double required = PumpSuction.requiredHead(duty, settled, speed);
        double available = PumpSuction.pressureHead(duty);
        double suppression = suction.suppressionHead(duty, settled);
        double shaft = Math.max(
                ShaftTorsion.diameter(work.power() / speed, settled.shaftStress()), settled.minimumShaftDiameter());
        return new PumpSizing(
                name,
                duty,
                settled,
                duty.propellant().fluid().atPressureEnthalpy(duty.dischargePressure(), work.outletEnthalpy()),
                work.head(),
                work.efficiency(),
                work.power(),
                speed,
                settled.stages().orElseThrow(),
                stageHead,
                specific,
                InducerSuction.suctionSpecificSpeed(phi, settled.inducerHubRatio()),
                available,
                suppression,
                required,
                psi,
                diameter,
                width,
                inducer,
                tipSpeed,
                shaft,
                List.of(
                        LimitCheck.atMost(
                                PumpLimit.TIP_SPEED,
                                name,
                                tipSpeed,
                                settled.tipSpeedLimit(),
                                "m/s",
                                settled.tipSpeedSource()),
                        LimitCheck.atMost(
                                PumpLimit.INDUCER_TIP_SPEED,
                                name,
                                0.5 * speed * inducer,
                                settled.inducerTipSpeedLimit(),
                                "m/s",
                                "nasa-sp-8052"),
                        LimitCheck.atLeast(
                                PumpLimit.SUCTION_MARGIN,
                                name,
                                (available + suppression) / required,
                                settled.suctionMargin(),
                                "-",
                                "nasa-sp-8052"),
                        LimitCheck.atMost(
                                PumpLimit.BEARING_SPEED,
                                name,
                                0.5 * speed * shaft,
                                settled.bearingSpeedLimit(),
                                "m/s",
                                "nasa-sp-8048")),
                warnings(name, q, SpecificSpeed.metric(specific), settled));
    }

    /**
     * @param fluid a liquid
     * @return its states that were found lately, from which searches for others start
     */
    public KnownStates known(Fluid fluid) {
        return heads.known(fluid);
    }

    /**
     * @param duty inlet state and discharge pressure
     * @return isentropic enthalpy rise of the liquid between them (J/kg)
     * @throws dev.penstock.errors.PropertyFailure if the liquid has no state there
     */
    public double head(PumpDuty duty) {
        return heads.rise(duty.propellant(), duty.inlet(), duty.dischargePressure());
    }

    private static List<Warning> warnings(String name, double volumeFlow, double nq, PumpDesign design) {
        if (design.efficiency().isPresent()) {
            return List.of();
        }
        List<Warning> warnings = new ArrayList<>();
        if (volumeFlow < GulichEfficiency.SMALLEST_FLOW) {
            warnings.add(new Warning(
                    name,
                    String.format(
                            Locale.ROOT,
                            "volume flow %.3g m³/s is below the %.3g m³/s of the efficiency relation, which is extrapolated",
                            volumeFlow,
                            GulichEfficiency.SMALLEST_FLOW)));
        }
        int stages = design.stages().orElseThrow();
        if (GulichEfficiency.of(nq, volumeFlow, stages) < PumpStages.SLOW_PUMP_EFFICIENCY) {
            warnings.add(new Warning(
                    name,
                    "specific speed and flow are too low for impellers of full emission: a partial-emission or displacement"
                            + " pump is assumed"));
        }
        if (nq < GulichEfficiency.LOWEST_SPECIFIC_SPEED || nq > GulichEfficiency.HIGHEST_SPECIFIC_SPEED) {
            warnings.add(new Warning(
                    name,
                    String.format(
                            Locale.ROOT,
                            "metric specific speed %.3g is outside the %.0f to %.0f of the efficiency relation",
                            nq,
                            GulichEfficiency.LOWEST_SPECIFIC_SPEED,
                            GulichEfficiency.HIGHEST_SPECIFIC_SPEED)));
        }
        return warnings;
    }
}
