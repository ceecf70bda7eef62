package dev.penstock.turbomachinery;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Sizes a pump: speed, stages, diameters, efficiency and power for a duty.
 *
 * <p>Inside a solver loop the results must not jump. Only the kind and number of stages can: settle them first with
 * {@link #choose}, solve with the settled design, and choose again at the solution. {@link #work} and {@link #fastestSpeed} on a
 * settled design are smooth in every number of the duty; on a design that is not settled they choose by themselves, and may jump.
 *
 * <p>Not thread-safe: remembers isentropes of recent inlet states.
 */
public final class PumpModel {

    private static final int MOST_CENTRIFUGAL_STAGES = 6;
    private static final int MOST_AXIAL_STAGES = 12;

    /** Efficiency that one more stage must bring to be worth its parts (-). */
    private static final double WORTH_OF_A_STAGE = 0.02;

    /** Efficiency that axial stages must bring over centrifugal ones (-). */
    private static final double WORTH_OF_AXIAL = 0.03;

    /** Flow below which axial hydrogen stages become too small (m³/s): 5500 gpm [nasa-sp-125]. */
    private static final double SMALLEST_AXIAL_FLOW = 0.347;

    /** Head of an axial hydrogen stage (J/kg): 7000 ft, the middle of the range in [nasa-sp-125]. */
    private static final double AXIAL_STAGE_HEAD = 7000 * 0.3048 * Constants.STANDARD_GRAVITY;

    /** Efficiency assumed where only the size of the shaft depends on it (-). */
    private static final double NOMINAL_EFFICIENCY = 0.65;

    private static final double HYDROGEN_DENSITY = 150;

    private final PumpHead heads = new PumpHead();

    /**
     * @param duty what is asked of the pump
     * @param design what is fixed
     * @return the design with kind and number of stages settled: the fewest centrifugal stages that keep the tip speed, more
     *     where each brings at least two points of efficiency, axial ones for large hydrogen pumps where they bring three
     */
    public PumpDesign choose(PumpDuty duty, PumpDesign design) {
        if (design.settled()) {
            return design;
        }
        double head = head(duty);
        boolean axialAllowed = design.type() == PumpType.AXIAL
                || design.type() == PumpType.AUTOMATIC
                        && duty.inlet().density() < HYDROGEN_DENSITY
                        && duty.volumeFlow() > SMALLEST_AXIAL_FLOW;
        PumpDesign best = null;
        if (design.type() != PumpType.AXIAL) {
            best = chooseCount(duty, design, PumpType.CENTRIFUGAL, head);
        }
        if (axialAllowed) {
            PumpDesign axial = chooseCount(duty, design, PumpType.AXIAL, head);
            if (best == null
                    || relationEfficiency(duty, axial, head) > relationEfficiency(duty, best, head) + WORTH_OF_AXIAL) {
                best = axial;
            }
        }
        return best;
    }

    private PumpDesign chooseCount(PumpDuty duty, PumpDesign design, PumpType type, double head) {
        if (design.stages().isPresent()) {
            return design.withStages(type, design.stages().getAsInt());
        }
        if (type == PumpType.AXIAL) {
            int count = (int) Math.ceil(head / AXIAL_STAGE_HEAD);
            return design.withStages(type, Math.min(Math.max(count, 2), MOST_AXIAL_STAGES));
        }
        PumpDesign chosen = null;
        for (int n = 1; n <= MOST_CENTRIFUGAL_STAGES; n++) {
            PumpDesign candidate = design.withStages(type, n);
            if (chosen == null) {
                if (n == MOST_CENTRIFUGAL_STAGES || tipSpeed(duty, candidate, head) <= design.tipSpeedLimit()) {
                    chosen = candidate;
                }
            } else if (relationEfficiency(duty, candidate, head)
                    < relationEfficiency(duty, chosen, head) + WORTH_OF_A_STAGE) {
                return chosen;
            } else {
                chosen = candidate;
            }
        }
        return chosen;
    }

    /**
     * The fastest speed that suction, inducer tip speed, specific speed and bearings allow together. Faster is smaller and lighter.
     *
     * @param duty what is asked of the pump
     * @param design what is fixed
     * @return speed (rad/s): the design's own if it fixes one
     * @throws OutsideValidity if the liquid boils at the inlet even with the suppression head
     */
    public double fastestSpeed(PumpDuty duty, PumpDesign design) {
        if (design.speed().isPresent()) {
            return design.speed().getAsDouble();
        }
        return fastestSpeed(duty, choose(duty, design), head(duty));
    }

    private double fastestSpeed(PumpDuty duty, PumpDesign design, double head) {
        if (design.speed().isPresent()) {
            return design.speed().getAsDouble();
        }
        double q = duty.volumeFlow();
        double usable = suctionHead(duty) + suppressionHead(duty, design);
        if (!(usable > 0)) {
            throw new OutsideValidity(
                    "pump of " + duty.propellant().id(),
                    "net positive suction head (m)",
                    usable,
                    "above 0: the liquid boils at the inlet");
        }
        double suction = InducerSuction.suctionSpecificSpeed(design.inducerFlowCoefficient(), design.inducerHubRatio())
                * Math.pow(Constants.STANDARD_GRAVITY * usable / design.suctionMargin(), 0.75)
                / Math.sqrt(q);
        double unitDiameter = InducerSuction.diameter(q, 1, design.inducerFlowCoefficient(), design.inducerHubRatio());
        double inducer = Math.pow(2 * design.inducerTipSpeedLimit() / unitDiameter, 1.5);
        double specific =
                design.specificSpeedLimit() * Math.pow(head / design.stages().orElse(1), 0.75) / Math.sqrt(q);
        double power = duty.massFlow() * head / NOMINAL_EFFICIENCY;
        double surface = 2 * design.bearingSpeedLimit();
        double bearing = Math.pow(surface, 1.5) * Math.sqrt(Math.PI * design.shaftStress() / (16 * power));
        double smallest = surface / design.minimumShaftDiameter();
        return design.type() == PumpType.AXIAL
                ? Smooth.least(suction, inducer, bearing, smallest)
                : Smooth.least(suction, inducer, specific, bearing, smallest);
    }

    /**
     * @param duty what is asked of the pump
     * @param design what is fixed; settled where the result must not jump
     * @return head, efficiency, power and outlet enthalpy
     */
    public PumpWork work(PumpDuty duty, PumpDesign design) {
        double head = head(duty);
        PumpDesign settled = choose(duty, design);
        double speed = fastestSpeed(duty, settled, head);
        double efficiency = efficiency(duty, settled, speed, head);
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
        int n = settled.stages().orElseThrow();
        double speed = work.speed();
        double q = duty.volumeFlow();
        double stageHead = work.head() / n;
        double specific = SpecificSpeed.of(speed, q, stageHead);
        double psi = headCoefficient(settled, specific);
        double tipSpeed = Math.sqrt(stageHead / psi);
        double diameter = 2 * tipSpeed / speed;
        double width = settled.type() == PumpType.AXIAL
                ? q / (Math.PI * diameter * StageShape.AXIAL_FLOW_COEFFICIENT * tipSpeed)
                : diameter * StageShape.outletWidthRatio(SpecificSpeed.metric(specific));
        double inducer = InducerSuction.diameter(q, speed, settled.inducerFlowCoefficient(), settled.inducerHubRatio());
        double suction =
                InducerSuction.suctionSpecificSpeed(settled.inducerFlowCoefficient(), settled.inducerHubRatio());
        double required = Math.pow(speed * Math.sqrt(q) / suction, 4.0 / 3) / Constants.STANDARD_GRAVITY;
        double available = suctionHead(duty);
        double suppression = suppressionHead(duty, settled);
        double shaft = Math.max(
                ShaftTorsion.diameter(work.power() / speed, settled.shaftStress()), settled.minimumShaftDiameter());

        List<LimitCheck> limits = new ArrayList<>();
        limits.add(LimitCheck.atMost(
                name + ".tip_speed", tipSpeed, settled.tipSpeedLimit(), "m/s", settled.tipSpeedSource()));
        limits.add(LimitCheck.atMost(
                name + ".inducer_tip_speed",
                0.5 * speed * inducer,
                settled.inducerTipSpeedLimit(),
                "m/s",
                "nasa-sp-8052"));
        limits.add(LimitCheck.atLeast(
                name + ".suction_margin",
                (available + suppression) / required,
                settled.suctionMargin(),
                "-",
                InducerSuction.CARD.sources().get(0)));
        limits.add(LimitCheck.atMost(
                name + ".bearing_speed", 0.5 * speed * shaft, settled.bearingSpeedLimit(), "m/s", "nasa-sp-8048"));
        List<Warning> warnings = warnings(name, q, SpecificSpeed.metric(specific), settled);
        return new PumpSizing(
                name,
                duty,
                settled,
                duty.propellant().fluid().atPressureEnthalpy(duty.dischargePressure(), work.outletEnthalpy()),
                work.head(),
                work.efficiency(),
                work.power(),
                speed,
                n,
                stageHead,
                specific,
                suction,
                available,
                suppression,
                required,
                psi,
                diameter,
                width,
                inducer,
                tipSpeed,
                0.5 * speed * inducer,
                shaft,
                limits,
                warnings);
    }

    private static List<Warning> warnings(String name, double volumeFlow, double nq, PumpDesign design) {
        List<Warning> warnings = new ArrayList<>();
        if (design.efficiency().isEmpty()) {
            if (volumeFlow < GulichEfficiency.SMALLEST_FLOW) {
                warnings.add(new Warning(
                        name,
                        String.format(
                                Locale.ROOT,
                                "volume flow %.3g m³/s is below the %.3g m³/s of the efficiency relation, which is extrapolated",
                                volumeFlow,
                                GulichEfficiency.SMALLEST_FLOW)));
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
        }
        return warnings;
    }

    private double head(PumpDuty duty) {
        return heads.rise(duty.propellant(), duty.inlet(), duty.dischargePressure());
    }

    private double relationEfficiency(PumpDuty duty, PumpDesign settled, double head) {
        return relationEfficiency(duty, settled, fastestSpeed(duty, settled, head), head);
    }

    private static double relationEfficiency(PumpDuty duty, PumpDesign settled, double speed, double head) {
        int n = settled.stages().orElseThrow();
        double nq = SpecificSpeed.metric(SpecificSpeed.of(speed, duty.volumeFlow(), head / n));
        return Math.min(settled.efficiencyFactor() * GulichEfficiency.of(nq, duty.volumeFlow(), n), 0.999);
    }

    private static double efficiency(PumpDuty duty, PumpDesign settled, double speed, double head) {
        OptionalDouble fixed = settled.efficiency();
        return fixed.isPresent() ? fixed.getAsDouble() : relationEfficiency(duty, settled, speed, head);
    }

    private static double headCoefficient(PumpDesign settled, double specificSpeed) {
        if (settled.headCoefficient().isPresent()) {
            return settled.headCoefficient().getAsDouble();
        }
        return settled.type() == PumpType.AXIAL
                ? StageShape.AXIAL_HEAD_COEFFICIENT
                : StageShape.headCoefficient(SpecificSpeed.metric(specificSpeed));
    }

    private double tipSpeed(PumpDuty duty, PumpDesign settled, double head) {
        double stageHead = head / settled.stages().orElseThrow();
        double speed = fastestSpeed(duty, settled, head);
        return Math.sqrt(stageHead / headCoefficient(settled, SpecificSpeed.of(speed, duty.volumeFlow(), stageHead)));
    }

    private static double suctionHead(PumpDuty duty) {
        double vapour = duty.inlet().vapourPressure().orElse(0);
        return Require.finite(
                "pump of " + duty.propellant().id(),
                "net positive suction head (m)",
                (duty.inlet().pressure() - vapour) / (duty.inlet().density() * Constants.STANDARD_GRAVITY));
    }

    private static double suppressionHead(PumpDuty duty, PumpDesign design) {
        return design.suppressionFactor() == 0
                ? 0
                : design.suppressionFactor()
                        * SuppressionHead.perVolumeRatio(duty.propellant().fluid(), duty.inlet());
    }
}
