package dev.penstock.turbomachinery.pump;

import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.speed.ShaftTorsion;
import dev.penstock.turbomachinery.speed.SpeedBound;
import dev.penstock.turbomachinery.speed.SpeedLimit;
import java.util.ArrayList;
import java.util.List;

/**
 * The fastest speed at which a pump may run; faster is smaller and lighter.
 * <pre>
 * suction:        margin · NPSH_required(ω) = NPSH + suppression head
 * inducer:        tip speed limit at the largest flow coefficient
 * specific speed: ω √Q/(Δhs/n)^0.75 = limit                             (not for axial stages)
 * bearings:       ω d/2 = limit, d = (16 P/(ω π S))^(1/3), and d = smallest shaft
 * speed = smooth minimum of these
 * </pre>
 */
public final class PumpSpeed {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.pump-speed",
            "Fastest pump speed",
            "minimum of the speeds at which suction, inducer tip, specific speed and bearings reach their limits",
            "pumps with an inducer",
            "30 %: designers also keep away from critical speeds and match the turbine",
            List.of("nasa-sp-8107", "nasa-sp-8052", "nasa-sp-8048"));

    /** Efficiency assumed where only the size of the shaft depends on it (-): 60 to 85 % [nasa-sp-125]. */
    private static final double NOMINAL_EFFICIENCY = 0.70;

    private final PumpSuction suction;

    PumpSpeed(PumpSuction suction) {
        this.suction = suction;
    }

    /**
     * @param duty what is asked of the pump
     * @param design settled design
     * @param head isentropic rise of the whole pump (J/kg)
     * @return speed (rad/s): the design's own if it fixes one
     * @throws dev.penstock.errors.OutsideValidity if the liquid boils at the inlet even with the suppression head
     */
    double fastest(PumpDuty duty, PumpDesign design, double head) {
        return design.speed().isPresent()
                ? design.speed().getAsDouble()
                : SpeedLimit.least(limits(duty, design, head)).speed();
    }

    /**
     * @param duty what is asked of the pump
     * @param design settled design
     * @param head isentropic rise of the whole pump (J/kg)
     * @return every bound on its speed
     * @throws dev.penstock.errors.OutsideValidity if the liquid boils at the inlet even with the suppression head
     */
    List<SpeedLimit> limits(PumpDuty duty, PumpDesign design, double head) {
        List<SpeedLimit> limits = new ArrayList<>(mechanical(duty, design, head));
        limits.add(new SpeedLimit(SpeedBound.SUCTION, suctionLimited(duty, design)));
        return limits;
    }

    /** Bounds that more inlet pressure does not move. */
    static List<SpeedLimit> mechanical(PumpDuty duty, PumpDesign design, double head) {
        double q = duty.volumeFlow();
        double inducer = Math.pow(
                2 * design.inducerTipSpeedLimit() / InducerSuction.diameter(q, 1, 0.3, design.inducerHubRatio()), 1.5);
        double surface = design.bearingSpeedLimit();
        double bearing = bearings(duty.massFlow() * head, design.shaftStress(), surface);
        List<SpeedLimit> limits = new ArrayList<>(5);
        limits.add(new SpeedLimit(SpeedBound.INDUCER_TIP, inducer));
        limits.add(new SpeedLimit(SpeedBound.BEARINGS, bearing));
        limits.add(new SpeedLimit(SpeedBound.SMALLEST_BEARINGS, 2 * surface / design.minimumShaftDiameter()));
        if (design.type() != PumpType.AXIAL) {
            double stageHead = head / design.stages().orElse(1);
            double specific = design.specificSpeedLimit() * Math.pow(stageHead, 0.75) / Math.sqrt(q);
            limits.add(new SpeedLimit(SpeedBound.SPECIFIC_SPEED, specific));
        }
        return limits;
    }

    /** Speed at which the shaft of a pump of usual efficiency reaches a surface speed (rad/s). */
    public static double bearings(double hydraulicPower, double stress, double surfaceSpeed) {
        return ShaftTorsion.fastest(hydraulicPower / NOMINAL_EFFICIENCY, stress, surfaceSpeed);
    }

    private double suctionLimited(PumpDuty duty, PumpDesign design) {
        double usable = suction.usableHead(duty, design);
        // with the lowest flow coefficient an inducer sucks best: the true speed cannot be higher
        double best = InducerSuction.suctionSpecificSpeed(design.inducerFlowCoefficient(), design.inducerHubRatio());
        double bound = best * Math.pow(Constants.STANDARD_GRAVITY * usable, 0.75) / Math.sqrt(duty.volumeFlow());
        if (PumpSuction.requiredHead(duty, design, bound) <= usable) {
            return bound;
        }
        return RootFinder.between(
                        "suction-limited speed",
                        speed -> Math.log(PumpSuction.requiredHead(duty, design, speed) / usable),
                        1e-3 * bound,
                        bound,
                        1e-13)
                .value();
    }
}
