package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.LimitCheck;
import java.util.List;

/**
 * A pump: what it does and how big it is.
 *
 * @param name name in the cycle, for example "fuel pump"
 * @param duty what was asked of it
 * @param design what was asked for, with kind and number of stages settled
 * @param outlet total state at the outlet
 * @param head isentropic total enthalpy rise of the whole pump (J/kg)
 * @param efficiency head over shaft work (-)
 * @param power shaft power (W)
 * @param speed shaft speed (rad/s)
 * @param stages number of main stages
 * @param stageHead head of one main stage (J/kg)
 * @param specificSpeed of a main stage, ω√Q/(stage head)^0.75 (-); times 2733 in US units
 * @param suctionSpecificSpeed ω√Q/(g·required NPSH)^0.75 (-); times 2733 in US units
 * @param netPositiveSuctionHead available at the inlet from pressure alone (m)
 * @param suppressionHead thermodynamic suppression head (m)
 * @param requiredSuctionHead net positive suction head that the inducer requires at this speed (m)
 * @param headCoefficient stage head over tip speed squared (-)
 * @param impellerDiameter outer diameter of the main stages (m)
 * @param impellerTipWidth width of the passage at the impeller outlet, or blade height of an axial stage (m)
 * @param inducerDiameter tip diameter at the inducer inlet (m)
 * @param tipSpeed of the main stages (m/s)
 * @param shaftDiameter from torque and allowed stress (m)
 * @param limits limits held against this pump
 * @param warnings what the reader must know
 */
public record PumpSizing(
        String name,
        PumpDuty duty,
        PumpDesign design,
        FluidState outlet,
        double head,
        double efficiency,
        double power,
        double speed,
        int stages,
        double stageHead,
        double specificSpeed,
        double suctionSpecificSpeed,
        double netPositiveSuctionHead,
        double suppressionHead,
        double requiredSuctionHead,
        double headCoefficient,
        double impellerDiameter,
        double impellerTipWidth,
        double inducerDiameter,
        double tipSpeed,
        double shaftDiameter,
        List<LimitCheck> limits,
        List<Warning> warnings) {

    public PumpSizing {
        Require.positive(name, "head (J/kg)", head);
        Require.within(name, "efficiency (-)", efficiency, Double.MIN_NORMAL, 1);
        Require.positive(name, "power (W)", power);
        Require.positive(name, "speed (rad/s)", speed);
        Require.positive(name, "specific speed (-)", specificSpeed);
        Require.positive(name, "suction specific speed (-)", suctionSpecificSpeed);
        Require.finite(name, "net positive suction head (m)", netPositiveSuctionHead);
        Require.notNegative(name, "suppression head (m)", suppressionHead);
        Require.positive(name, "required suction head (m)", requiredSuctionHead);
        Require.positive(name, "impeller diameter (m)", impellerDiameter);
        Require.positive(name, "impeller tip width (m)", impellerTipWidth);
        Require.positive(name, "inducer diameter (m)", inducerDiameter);
        Require.positive(name, "shaft diameter (m)", shaftDiameter);
        limits = List.copyOf(limits);
        warnings = List.copyOf(warnings);
    }

    /** @return kind of main stages */
    public PumpType type() {
        return design.type();
    }

    /** @return torque at the shaft (N·m) */
    public double torque() {
        return power / speed;
    }
}
