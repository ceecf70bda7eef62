package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Mass of a propellant tank from the loads it takes: membrane stress by pressure and liquid head, and buckling of the
 * cylinder under the load from above.
 *
 * <pre>
 * t_cylinder = FS p r / (σ e)      t_head = FS p r / (√2 σ e)          p = ullage pressure + ρ a h
 * N_crit     = 0.605 γ E t²/r,  γ = 1 − 0.901 (1 − exp(−√(r/t)/16))    axial load per length it must take:
 * N          = FS_b P (1 + bending) / (2 π r) − p_ullage r / 2
 * </pre>
 *
 * Source: membrane [nasa-sp-125] ch. 8; buckling with its knock-down factor [nasa-sp-8007]. An integral tank is stiffened
 * against N: its stiffened skin weighs half of the smooth one that would take the same load. A pressure-stabilised tank
 * takes no buckling load: its ullage pressure is raised until N vanishes. Rings, weld lands, baffles and fittings add a
 * fixed factor. Both factors are judgement.
 */
public final class TankShell {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.tank-shell",
            "Mass of a propellant tank from its loads",
            "t = FS p r/(σ e); N_crit = 0.605 γ E t²/r, γ = 1 − 0.901(1 − exp(−(r/t)^0.5/16))",
            "thin shells, 20 < r/t < 1500; loads along the axis",
            "±25 %, most of it in the factor for everything that is not shell",
            List.of("nasa-sp-125", "nasa-sp-8007"));

    /** How a tank takes load from above. */
    public enum Kind {
        INTEGRAL,
        PRESSURE_STABILIZED
    }

    private static final double BURST_FACTOR = 1.5;
    private static final double BUCKLING_FACTOR = 1.25;
    private static final double BENDING = 0.5;
    private static final double STIFFENED = 0.5;
    private static final double NOT_SHELL = 1.35;

    private TankShell() {}

    /**
     * What a tank weighs and needs.
     *
     * @param mass mass with rings and fittings (kg)
     * @param cylinderThickness smeared thickness of the cylinder (m)
     */
    public record Result(double mass, double cylinderThickness) {}

    /**
     * @param tank shape
     * @param kind how it takes load from above
     * @param material what it is made of
     * @param ullagePressure pressure of the gas over the ambient one (Pa); in space the absolute pressure
     * @param liquidDensity density of what it holds (kg/m³)
     * @param acceleration acceleration when full (m/s²)
     * @param loadAbove largest axial force from above (N)
     * @return the tank
     */
    public static Result size(
            TankShape tank,
            Kind kind,
            TankMaterial material,
            double ullagePressure,
            double liquidDensity,
            double acceleration,
            double loadAbove) {
        Require.notNegative("tank shell", "ullage pressure (Pa)", ullagePressure);
        Require.notNegative("tank shell", "load from above (N)", loadAbove);
        double r = tank.radius();
        double line = BUCKLING_FACTOR * loadAbove * (1 + BENDING) / (2 * Math.PI * r);
        double stabilizing = tank.cylinderLength() > 0 ? 2 * line / r : 0;
        double ullage = kind == Kind.PRESSURE_STABILIZED ? Math.max(ullagePressure, stabilizing) : ullagePressure;
        double pressure = ullage + liquidDensity * acceleration * tank.length();
        double allowed = material.strength() * material.jointEfficiency() / BURST_FACTOR;
        double membrane = Math.max(material.minimumGauge(), pressure * r / allowed);
        double head = Math.max(material.minimumGauge(), pressure * r / (Math.sqrt(2) * allowed));
        double cylinder = membrane;
        if (kind == Kind.INTEGRAL && tank.cylinderLength() > 0) {
            double excess = line - ullagePressure * r / 2;
            cylinder = Math.max(membrane, STIFFENED * smoothThickness(excess, r, material.modulus()));
        }
        double shell = material.density() * (cylinder * tank.cylinderArea() + head * 2 * tank.headArea());
        return new Result(NOT_SHELL * shell, cylinder);
    }

    /**
     * @param line compressive load per length (N/m); none if not above zero
     * @param radius radius (m)
     * @param modulus elastic modulus (Pa)
     * @return thickness of a smooth cylinder that just does not buckle (m)
     */
    public static double smoothThickness(double line, double radius, double modulus) {
        if (!(line > 0)) {
            return 0;
        }
        double thickness = Math.sqrt(line * radius / (0.605 * 0.4 * modulus));
        for (int i = 0; i < 30; i++) {
            double next = Math.sqrt(line * radius / (0.605 * knockDown(radius / thickness) * modulus));
            if (Math.abs(next - thickness) < 1e-10 * next) {
                return next;
            }
            thickness = next;
        }
        return thickness;
    }

    /**
     * @param slenderness radius over thickness (-)
     * @return knock-down factor γ (-)
     */
    public static double knockDown(double slenderness) {
        Require.positive("tank shell", "radius over thickness (-)", slenderness);
        return 1 - 0.901 * -Math.expm1(-Math.sqrt(slenderness) / 16);
    }
}
