package dev.penstock.turbomachinery.turbine;

import dev.penstock.combustion.WorkingState;
import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.LimitCheck;
import java.util.List;

/**
 * A turbine: what it does and how big it is.
 *
 * @param name name in the cycle, for example "oxidizer turbine"
 * @param duty what was offered to it
 * @param design what was asked for, with kind and number of stages settled
 * @param inlet total state at the inlet
 * @param outlet total-enthalpy state at the exit pressure
 * @param speed shaft speed (rad/s)
 * @param efficiency work over isentropic total-to-static drop (-)
 * @param isentropicDrop total-to-static isentropic enthalpy drop of the whole turbine (J/kg)
 * @param power shaft power (W)
 * @param spoutingVelocity √(2·drop) of the whole turbine (m/s)
 * @param velocityRatio pitch-line speed over spouting velocity of the whole turbine (-)
 * @param pitchLineSpeed blade speed at the pitch line (m/s)
 * @param stages number of stages
 * @param meanDiameter pitch diameter (m)
 * @param bladeHeight height of the last rotor blades (m)
 * @param admission admitted share of the circumference (-)
 * @param annulusSpeed ω√A of the last rotor (m/s)
 * @param rootStress centrifugal stress at the root of an untapered steel or nickel blade of the last row (Pa)
 * @param limits limits held against this turbine
 * @param warnings what the reader must know
 */
public record TurbineSizing(
        String name,
        TurbineDuty duty,
        TurbineDesign design,
        WorkingState inlet,
        WorkingState outlet,
        double speed,
        double efficiency,
        double isentropicDrop,
        double power,
        double spoutingVelocity,
        double velocityRatio,
        double pitchLineSpeed,
        int stages,
        double meanDiameter,
        double bladeHeight,
        double admission,
        double annulusSpeed,
        double rootStress,
        List<LimitCheck> limits,
        List<Warning> warnings) {

    public TurbineSizing {
        Require.positive(name, "speed (rad/s)", speed);
        Require.within(name, "efficiency (-)", efficiency, Double.MIN_NORMAL, 1);
        Require.positive(name, "isentropic drop (J/kg)", isentropicDrop);
        Require.positive(name, "power (W)", power);
        Require.positive(name, "velocity ratio (-)", velocityRatio);
        Require.positive(name, "pitch diameter (m)", meanDiameter);
        Require.positive(name, "blade height (m)", bladeHeight);
        Require.within(name, "admission (-)", admission, Double.MIN_NORMAL, 1);
        Require.positive(name, "square root of AN² (m/s)", annulusSpeed);
        limits = List.copyOf(limits);
        warnings = List.copyOf(warnings);
    }

    /** @return kind of blading */
    public TurbineType type() {
        return design.type();
    }
}
