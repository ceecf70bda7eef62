package dev.penstock.chamber.contour;

import dev.penstock.errors.NotConverged;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Supersonic flow in a nozzle of given wall by finite volumes, marched downstream: steady, axisymmetric, inviscid,
 * calorically perfect gas. What goes through one marching surface, less what leaves through the sides, goes through the
 * next; a surface's mass and momentum give back its state through the total enthalpy. Conserving mass and momentum to
 * round-off, it gives thrust without integrating wall pressures, and takes internal shocks in its stride.
 * <pre>
 * per cell   Φ_{i+1} = Φ_i − Σ side fluxes + p ΔA_r,    Φ = ∫ (ρ V_n, ρ V_n u + p n_x, ρ V_n v + p n_r) dA
 * state      with V_n, V_t along and across the surface: (γ+1)/(2γ) ṁ V_n² − I V_n + (ṁ/γ)(a₀² − (γ−1)/2 V_t²) = 0
 * </pre>
 * Surfaces are parabolas that reach further downstream on the axis than at the wall, like the sonic surface, so that the
 * march can start from the transonic solution [sauer-1947] at the throat. Sides use Rusanov's flux with limited linear
 * reconstruction, steps Heun's method. Lengths in throat radii, pressures over p₀, velocities over the sonic one.
 */
final class MarchingFlow {

    static final ModelCard CARD = new ModelCard(
            "chamber.marching_flow",
            "Axisymmetric supersonic flow by finite volumes",
            "steady Euler equations in conservation form, marched downstream",
            "supersonic throughout, constant γ",
            "0.2 % of thrust",
            List.of("sauer-1947", "zucrow-1977"));

    private static final double AXIS_MACH = 1.10;
    private static final double COURANT = 0.5;
    private static final int MOST_STEPS = 20_000;

    /** Wall radius against distance from the throat, in throat radii. */
    interface Wall {
        double radius(double x);
    }

    private final CharacteristicGas gas;
    private final Wall wall;
    private final int n;
    private final double bulge;
    private final MarchingState now;
    private final MarchingState trial;
    private double[] x0;
    private double[] r0;
    private double[] x1;
    private double[] r1;
    private double position;

    /**
     * @param gas gas
     * @param upstreamCurvature wall curvature radius upstream of the throat (throat radii)
     * @param wall wall downstream of the throat
     * @param cells cells from axis to wall
     */
    MarchingFlow(CharacteristicGas gas, double upstreamCurvature, Wall wall, int cells) {
        this.gas = gas;
        this.wall = wall;
        this.n = cells;
        this.now = new MarchingState(gas, cells);
        this.trial = new MarchingState(gas, cells);
        x0 = new double[n + 1];
        r0 = new double[n + 1];
        x1 = new double[n + 1];
        r1 = new double[n + 1];
        TransonicFlow throat = new TransonicFlow(gas, upstreamCurvature);
        bulge = throat.axisPosition(AXIS_MACH);
        place(0, x0, r0);
        for (int j = 0; j < n; j++) {
            double x = (x0[j] + x0[j + 1]) / 2;
            double r = (r0[j] + r0[j + 1]) / 2;
            now.set(j, throat.axialVelocity(x, r), throat.radialVelocity(x, r));
        }
        now.collect(x0, r0);
    }

    /**
     * Marches on.
     *
     * @param end wall position to reach (throat radii)
     */
    void marchTo(double end) {
        for (int step = 0; position < end; step++) {
            if (step > MOST_STEPS) {
                throw new NotConverged(CARD.title(), step, Double.NaN, "at x " + position);
            }
            double height = wall.radius(position) / n;
            double next = Math.min(end, position + COURANT * height / now.steepest(x0, r0));
            place(next, x1, r1);
            now.sides(x0, r0, x1, r1);
            trial.advanceFrom(now, now, x0, r0, x1, r1);
            trial.sides(x0, r0, x1, r1);
            now.addSides(trial);
            now.advanceFrom(now, trial, x0, r0, x1, r1);
            double[] x = x0;
            double[] r = r0;
            x0 = x1;
            r0 = r1;
            x1 = x;
            r1 = r;
            position = next;
        }
    }

    /** Mass flow over that of one-dimensional sonic flow through the throat: the discharge coefficient. */
    double dischargeCoefficient() {
        return now.totalMass() / (gas.gamma() * gas.pressure(1));
    }

    /** Vacuum thrust over p₀ A_t of a nozzle that ends here. */
    double vacuumThrust() {
        return now.totalAxial();
    }

    /** Pressure over p₀ next to the wall. */
    double wallPressure() {
        return now.pressure(n - 1);
    }

    private void place(double wallX, double[] x, double[] r) {
        double radius = wall.radius(wallX);
        for (int j = 0; j <= n; j++) {
            double eta = (double) j / n;
            r[j] = eta * radius;
            x[j] = wallX + bulge * radius * (1 - eta * eta);
        }
    }
}
