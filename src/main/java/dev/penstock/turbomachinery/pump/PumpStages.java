package dev.penstock.turbomachinery.pump;

import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.speed.Smooth;
import java.util.List;

/**
 * Kind and number of main stages: the fewest centrifugal ones that keep the tip speed, more where each brings three points of
 * efficiency; axial ones where the engineer asks, or for large hydrogen pumps where they bring three points.
 */
final class PumpStages {

    static final ModelCard CARD = new ModelCard(
            "turbomachinery.pump-stages",
            "Number and kind of pump stages",
            "the fewest stages that keep the tip speed; one more where it brings three points of efficiency",
            "1 to 6 centrifugal or 1 to 10 axial stages",
            "a choice, not an estimate",
            List.of("common practice, no source"));

    private static final int MOST_CENTRIFUGAL = 6;
    private static final int MOST_AXIAL = 10;

    /** Efficiency that one more stage must bring to be worth its parts (-): common practice, no source. */
    private static final double WORTH_OF_A_STAGE = 0.03;

    /** Efficiency that axial stages must bring over centrifugal ones (-): common practice, no source. */
    private static final double WORTH_OF_AXIAL = 0.03;

    /** Flow below which axial hydrogen stages become too small (m³/s): 5500 gpm [nasa-sp-125]. */
    private static final double SMALLEST_AXIAL_FLOW = 0.347;

    /** Head of an axial hydrogen stage (J/kg): 7000 ft, the middle of the range in [nasa-sp-125]. */
    private static final double AXIAL_STAGE_HEAD = 7000 * 0.3048 * Constants.STANDARD_GRAVITY;

    /** Efficiency of good partial-emission and displacement pumps (-): common practice, no source. */
    static final double SLOW_PUMP_EFFICIENCY = 0.25;

    private final PumpSpeed speeds;

    PumpStages(PumpSpeed speeds) {
        this.speeds = speeds;
    }

    /**
     * @param duty what is asked of the pump
     * @param design what is fixed
     * @param head isentropic rise of the whole pump (J/kg)
     * @return the design with kind and number of stages settled
     */
    PumpDesign choose(PumpDuty duty, PumpDesign design, double head) {
        if (design.settled()) {
            return design;
        }
        if (design.type() == PumpType.AXIAL) {
            return axial(design, head);
        }
        PumpDesign centrifugal = centrifugal(duty, design, head);
        boolean axialAllowed = design.type() == PumpType.AUTOMATIC
                && LightLiquid.is(duty.inlet().density())
                && duty.volumeFlow() > SMALLEST_AXIAL_FLOW
                && axialStages(head) <= MOST_AXIAL;
        if (!axialAllowed) {
            return centrifugal;
        }
        PumpDesign axial = axial(design, head);
        double gain = efficiency(duty, axial, head) - efficiency(duty, centrifugal, head);
        return gain > WORTH_OF_AXIAL ? axial : centrifugal;
    }

    private static PumpDesign axial(PumpDesign design, double head) {
        return design.withStages(PumpType.AXIAL, design.stages().orElse(Math.min(axialStages(head), MOST_AXIAL)));
    }

    private static int axialStages(double head) {
        return Math.max((int) Math.ceil(head / AXIAL_STAGE_HEAD), 2);
    }

    private PumpDesign centrifugal(PumpDuty duty, PumpDesign design, double head) {
        if (design.stages().isPresent()) {
            return design.withStages(PumpType.CENTRIFUGAL, design.stages().getAsInt());
        }
        PumpDesign chosen = design.withStages(PumpType.CENTRIFUGAL, 1);
        int n = 1;
        while (n < MOST_CENTRIFUGAL && tipSpeed(duty, chosen, head) > design.tipSpeedLimit()) {
            chosen = design.withStages(PumpType.CENTRIFUGAL, ++n);
        }
        while (n < MOST_CENTRIFUGAL) {
            PumpDesign more = design.withStages(PumpType.CENTRIFUGAL, ++n);
            if (efficiency(duty, more, head) < efficiency(duty, chosen, head) + WORTH_OF_A_STAGE) {
                break;
            }
            chosen = more;
        }
        return chosen;
    }

    private double tipSpeed(PumpDuty duty, PumpDesign settled, double head) {
        double stageHead = head / settled.stages().orElseThrow();
        double specific = SpecificSpeed.of(speeds.fastest(duty, settled, head), duty.volumeFlow(), stageHead);
        return Math.sqrt(stageHead / headCoefficient(settled, specific));
    }

    private double efficiency(PumpDuty duty, PumpDesign settled, double head) {
        return relationEfficiency(duty, settled, speeds.fastest(duty, settled, head), head);
    }

    /**
     * @param duty what is asked of the pump
     * @param settled settled design
     * @param speed shaft speed (rad/s)
     * @param head isentropic rise of the whole pump (J/kg)
     * @return efficiency by the published relation and the rocket-pump factor (-), not below that of the partial-emission and
     *     displacement pumps that take over at very low specific speed
     */
    static double relationEfficiency(PumpDuty duty, PumpDesign settled, double speed, double head) {
        int n = settled.stages().orElseThrow();
        double nq = SpecificSpeed.metric(SpecificSpeed.of(speed, duty.volumeFlow(), head / n));
        double industrial = Smooth.greatest(GulichEfficiency.of(nq, duty.volumeFlow(), n), SLOW_PUMP_EFFICIENCY);
        return Math.min(settled.efficiencyFactor() * industrial, 0.999);
    }

    /**
     * @param settled settled design
     * @param specificSpeed of a stage (-)
     * @return stage head over tip speed squared (-)
     */
    static double headCoefficient(PumpDesign settled, double specificSpeed) {
        if (settled.headCoefficient().isPresent()) {
            return settled.headCoefficient().getAsDouble();
        }
        return settled.type() == PumpType.AXIAL
                ? StageShape.AXIAL_HEAD_COEFFICIENT
                : StageShape.headCoefficient(SpecificSpeed.metric(specificSpeed));
    }
}
