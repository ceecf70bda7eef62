package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.speed.Smooth;

/**
 * Suction side of a pump: what head the inlet offers and what an inducer of given flow coefficient needs. Remembers the
 * suppression head of its last {@value #MEMORY} inlet states, since a solver asks for the same tank again and again. Not
 * thread-safe.
 */
final class PumpSuction {

    /** Above this flow coefficient an inducer is no inducer any more (-). */
    private static final double LARGEST_FLOW_COEFFICIENT = 0.3;

    /** Share of the tip speed limit that is used, so that smooth minima do not touch it (-). */
    private static final double WITHIN = 0.999;

    private static final int MEMORY = 8;

    private final FluidState[] inlets = new FluidState[MEMORY];
    private final double[] suppressions = new double[MEMORY];
    private int next;

    /**
     * @param duty what is asked of the pump
     * @return (p - pv)/(ρg) of the inlet's total pressure (m); without vapour pressure the whole pressure counts
     */
    static double pressureHead(PumpDuty duty) {
        double vapour = duty.inlet().vapourPressure().orElse(0);
        return (duty.inlet().pressure() - vapour) / (duty.inlet().density() * Constants.STANDARD_GRAVITY);
    }

    /**
     * @param duty what is asked of the pump
     * @param design suppression factor
     * @return thermodynamic suppression head (m)
     */
    double suppressionHead(PumpDuty duty, PumpDesign design) {
        if (design.suppressionFactor() == 0) {
            return 0;
        }
        for (int i = 0; i < MEMORY; i++) {
            if (duty.inlet().equals(inlets[i])) {
                return design.suppressionFactor() * suppressions[i];
            }
        }
        double head = SuppressionHead.perVolumeRatio(duty.propellant().fluid(), duty.inlet());
        inlets[next] = duty.inlet();
        suppressions[next] = head;
        next = (next + 1) % MEMORY;
        return design.suppressionFactor() * head;
    }

    /**
     * @param duty what is asked of the pump
     * @param design suppression factor and margin
     * @return head that the inducer may use up at its design point (m)
     * @throws OutsideValidity if the liquid boils at the inlet even with the suppression head
     */
    double usableHead(PumpDuty duty, PumpDesign design) {
        double usable = pressureHead(duty) + suppressionHead(duty, design);
        if (!(usable > 0)) {
            throw new OutsideValidity(
                    "pump of " + duty.propellant().name(),
                    "net positive suction head (m)",
                    usable,
                    "above 0: the liquid boils at the inlet");
        }
        return usable / design.suctionMargin();
    }

    /**
     * The design's flow coefficient, or the larger one that keeps the inducer's tip speed: with plenty of suction head, as
     * behind a boost pump, a smaller and faster inducer does.
     *
     * @param duty what is asked of the pump
     * @param design lowest flow coefficient, hub ratio, tip speed limit
     * @param speed shaft speed (rad/s)
     * @return flow coefficient of the inducer (-)
     */
    static double flowCoefficient(PumpDuty duty, PumpDesign design, double speed) {
        double hub = design.inducerHubRatio();
        double forTipSpeed = 8
                * duty.volumeFlow()
                * speed
                * speed
                / (Math.PI * (1 - hub * hub) * Math.pow(2 * WITHIN * design.inducerTipSpeedLimit(), 3));
        double wanted = Smooth.greatest(design.inducerFlowCoefficient(), forTipSpeed);
        return Smooth.least(wanted, LARGEST_FLOW_COEFFICIENT);
    }

    /**
     * @param duty what is asked of the pump
     * @param design inducer
     * @param speed shaft speed (rad/s)
     * @return net positive suction head that the inducer needs (m)
     */
    static double requiredHead(PumpDuty duty, PumpDesign design, double speed) {
        double phi = flowCoefficient(duty, design, speed);
        double suction = InducerSuction.suctionSpecificSpeed(phi, design.inducerHubRatio());
        return Math.pow(speed * Math.sqrt(duty.volumeFlow()) / suction, 4.0 / 3) / Constants.STANDARD_GRAVITY;
    }
}
