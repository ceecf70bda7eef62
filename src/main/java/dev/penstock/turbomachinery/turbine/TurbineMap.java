package dev.penstock.turbomachinery.turbine;

import dev.penstock.combustion.WorkingFluid;
import dev.penstock.combustion.WorkingState;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * A built turbine off its design point: fixed nozzles and wheel.
 * <pre>
 * ṁ = A Ψ(γ) √(p1 ρ1) √(1 - [max(0, r - r_c)/(1 - r_c)]²),   r = p2/p1     (ellipse law)
 * Ψ = √γ (2/(γ+1))^((γ+1)/(2(γ-1))),   r_c = [(2/(γ+1))^(γ/(γ-1))]^rows,   rows = 1 for impulse, 2n for reaction
 * η from the velocity triangles of the design at ν = ω D/(2 C0)
 * </pre>
 * A follows from the design point. The flow is continuous with its slope where the nozzles choke. Tip gaps and losses stay as at
 * the design point. Has no state beyond the design.
 */
public final class TurbineMap {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.turbine-map",
            "Turbine flow and efficiency off the design point",
            "ṁ = A Ψ √(p1ρ1) √(1 - [(r - r_c)/(1 - r_c)]²); η from the design's velocity triangles at ν = ωD/(2C0)",
            "fixed nozzles, same kind of gas",
            "5 % on flow, 5 points on efficiency",
            List.of("stodola-1927", "nasa-sp-8110"));

    private final TurbineSizing turbine;
    private final double area;
    private final double efficiencyRatio;

    /** @param turbine turbine as sized */
    public TurbineMap(TurbineSizing turbine) {
        this.turbine = turbine;
        TurbineDuty duty = turbine.duty();
        this.area = duty.massFlow() / flowPerArea(turbine.inlet(), duty.exitPressure() / duty.inletPressure());
        // a fixed design efficiency scales the triangles' curve
        this.efficiencyRatio = turbine.efficiency() / blading(turbine.pitchLineSpeed(), turbine.spoutingVelocity());
    }

    /** @return the turbine it describes */
    public TurbineSizing turbine() {
        return turbine;
    }

    /** @return nozzle area that passes the design flow (m²), discharge coefficient included */
    public double nozzleArea() {
        return area;
    }

    /**
     * @param speed shaft speed (rad/s)
     * @param drop total-to-static isentropic enthalpy drop of any gas (J/kg)
     * @return efficiency there (-)
     */
    public double efficiency(double speed, double drop) {
        return Math.min(efficiencyRatio * blading(0.5 * speed * turbine.meanDiameter(), Math.sqrt(2 * drop)), 1);
    }

    /**
     * @param gas working fluid
     * @param inletPressure total pressure at the inlet (Pa)
     * @param inletEnthalpy total enthalpy at the inlet, relative to the elements (J/kg)
     * @param exitPressure static pressure behind the last row (Pa), below the inlet pressure
     * @param speed shaft speed (rad/s)
     * @return the operating point, mass flow included
     * @throws dev.penstock.errors.OutsideValidity if the exit pressure is not below the inlet pressure
     */
    public TurbinePoint at(
            WorkingFluid gas, double inletPressure, double inletEnthalpy, double exitPressure, double speed) {
        GasExpansion probe = new GasExpansion(new TurbineDuty(
                gas, inletPressure, inletEnthalpy, exitPressure, turbine.duty().massFlow()));
        double ratio = exitPressure / inletPressure;
        double flow = area * flowPerArea(probe.inlet, ratio);
        double efficiency = efficiency(speed, probe.drop);
        double work = efficiency * probe.drop;
        return new TurbinePoint(
                flow,
                probe.drop,
                0.5 * speed * turbine.meanDiameter() / probe.spoutingVelocity,
                efficiency,
                flow * work,
                inletEnthalpy - work,
                ratio <= criticalRatio(probe.inlet.gamma()));
    }

    private double blading(double pitchLineSpeed, double spoutingVelocity) {
        double ratio = pitchLineSpeed / spoutingVelocity * Math.sqrt(turbine.stages());
        return Triangles.of(turbine.design(), ratio).withLosses(turbine.design(), ratio, turbine.admission());
    }

    private double flowPerArea(WorkingState inlet, double ratio) {
        double gamma = inlet.gamma();
        double choking = Math.sqrt(gamma) * Math.pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1)));
        double critical = criticalRatio(gamma);
        double above = Math.max(0, ratio - critical) / (1 - critical);
        return choking * Math.sqrt(inlet.pressure() * inlet.density()) * Math.sqrt(1 - above * above);
    }

    private double criticalRatio(double gamma) {
        int rows = turbine.type() == TurbineType.REACTION ? 2 * turbine.stages() : turbine.stages();
        return Math.pow(2 / (gamma + 1), rows * gamma / (gamma - 1));
    }
}
