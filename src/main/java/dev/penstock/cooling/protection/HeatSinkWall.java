package dev.penstock.cooling.protection;

import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Heat-up and cool-down of an uncooled wall that is fired in pulses.
 * <pre>
 * ρ c(T) ∂T/∂t = ∂/∂x (k(T) ∂T/∂x)
 * hot face   h_g (T_aw − T) while firing, nothing between
 * cold face  ε σ T⁴ to the outside
 * </pre>
 * Plane wall, finite volumes, implicit in time with properties of the last step. Equation and method [incropera-2007]. The
 * gas-side coefficient is held at its steady value, which is reached within milliseconds.
 */
public final class HeatSinkWall {

    public static final ModelCard CARD = new ModelCard(
            "cooling.heat-sink",
            "Transient of an uncooled wall",
            "rho c dT/dt = d/dx (k dT/dx), convection on one face, radiation on the other",
            "thin against the radius of curvature",
            "1 % against the solution for a semi-infinite solid",
            List.of("incropera-2007"));

    /**
     * Firing of the wall.
     *
     * @param gasCoefficient gas-side coefficient (W/(m²·K))
     * @param adiabaticWallTemperature adiabatic wall temperature (K)
     * @param onTime length of a pulse (s)
     * @param offTime pause after each pulse (s)
     * @param pulses number of pulses
     */
    public record Firing(
            double gasCoefficient, double adiabaticWallTemperature, double onTime, double offTime, int pulses) {

        public Firing {
            Require.positive("firing", "gas-side coefficient (W/(m²·K))", gasCoefficient);
            Require.positive("firing", "adiabatic wall temperature (K)", adiabaticWallTemperature);
            Require.positive("firing", "length of a pulse (s)", onTime);
            Require.notNegative("firing", "pause (s)", offTime);
            Require.within("firing", "number of pulses (-)", pulses, 1, 100_000);
        }
    }

    /**
     * The wall at one instant.
     *
     * @param time time from the start (s)
     * @param hotFace temperature of the hot face (K)
     * @param coldFace temperature of the cold face (K)
     */
    public record Instant(double time, double hotFace, double coldFace) {}

    /**
     * What became of the wall.
     *
     * @param history instants, about a hundred for each pulse of few, fewer for each of many
     * @param peakTemperature hottest temperature of the hot face (K)
     * @param timeToLimit firing and pause time until the material's limit is passed (s); empty if it never is
     * @param heatAbsorbed heat taken up from the gas (J/m²)
     * @param heatStored heat in the wall at the end over that at the start (J/m²)
     * @param heatRadiated heat radiated to the outside (J/m²)
     */
    public record Outcome(
            List<Instant> history,
            double peakTemperature,
            OptionalDouble timeToLimit,
            double heatAbsorbed,
            double heatStored,
            double heatRadiated) {

        public Outcome {
            history = List.copyOf(history);
        }
    }

    private static final int VOLUMES = 40;
    private static final int STEPS_PER_PULSE = 400;
    private static final int STEPS_PER_PAUSE = 100;
    private static final int LONGEST_HISTORY = 2000;

    private final WallMaterial material;
    private final double dx;
    private final double[] temperature = new double[VOLUMES];
    private final double[] lower = new double[VOLUMES];
    private final double[] diagonal = new double[VOLUMES];
    private final double[] upper = new double[VOLUMES];
    private final double[] right = new double[VOLUMES];
    private final double[] capacities = new double[VOLUMES];
    private double absorbed;
    private double stored;
    private double radiated;
    private double hotFace;

    private HeatSinkWall(WallMaterial material, double thickness, double initial) {
        this.material = material;
        this.dx = thickness / VOLUMES;
        java.util.Arrays.fill(temperature, initial);
        this.hotFace = initial;
    }

    /**
     * @param material wall material
     * @param thickness wall thickness (m)
     * @param initial temperature at the start (K)
     * @param firing pulses
     * @return what became of the wall
     */
    public static Outcome fire(WallMaterial material, double thickness, double initial, Firing firing) {
        Require.positive("heat-sink wall", "thickness (m)", thickness);
        Require.positive("heat-sink wall", "initial temperature (K)", initial);
        return new HeatSinkWall(material, thickness, initial).run(firing);
    }

    private Outcome run(Firing firing) {
        List<Instant> history = new ArrayList<>();
        history.add(new Instant(0, hotFace, temperature[VOLUMES - 1]));
        int stride = Math.max(4, firing.pulses() * (STEPS_PER_PULSE + STEPS_PER_PAUSE) / LONGEST_HISTORY);
        double peak = hotFace;
        double time = 0;
        double limitTime = Double.NaN;
        int count = 0;
        for (int pulse = 0; pulse < firing.pulses(); pulse++) {
            int steps = STEPS_PER_PULSE + (firing.offTime() > 0 ? STEPS_PER_PAUSE : 0);
            for (int i = 0; i < steps; i++) {
                boolean on = i < STEPS_PER_PULSE;
                double dt = on ? firing.onTime() / STEPS_PER_PULSE : firing.offTime() / STEPS_PER_PAUSE;
                step(on ? firing.gasCoefficient() : 0, firing.adiabaticWallTemperature(), dt);
                time += dt;
                peak = Math.max(peak, hotFace);
                if (Double.isNaN(limitTime) && hotFace > material.maximumTemperature()) {
                    limitTime = time;
                }
                if (++count % stride == 0) {
                    history.add(new Instant(time, hotFace, temperature[VOLUMES - 1]));
                }
            }
        }
        OptionalDouble toLimit = Double.isNaN(limitTime) ? OptionalDouble.empty() : OptionalDouble.of(limitTime);
        return new Outcome(history, peak, toLimit, absorbed, stored, radiated);
    }

    private void step(double coefficient, double adiabatic, double dt) {
        int last = VOLUMES - 1;
        double toFace = 2 * material.conductivity().at(temperature[0]) / dx;
        double conductance = coefficient > 0 ? 1 / (1 / coefficient + 1 / toFace) : 0;
        double cold = temperature[last];
        double emission = material.emissivity() * Constants.STEFAN_BOLTZMANN;
        double slope = 4 * emission * cold * cold * cold;
        for (int i = 0; i < VOLUMES; i++) {
            capacities[i] = capacity(temperature[i]);
            stored -= capacities[i] * temperature[i];
            double capacity = capacities[i] / dt;
            diagonal[i] = capacity;
            right[i] = capacity * temperature[i];
            lower[i] = i > 0 ? -between(i - 1) : 0;
            upper[i] = i < last ? -between(i) : 0;
            diagonal[i] -= lower[i] + upper[i];
        }
        diagonal[0] += conductance;
        right[0] += conductance * adiabatic;
        diagonal[last] += slope;
        right[last] += slope * cold - emission * cold * cold * cold * cold;
        solveTridiagonal();
        for (int i = 0; i < VOLUMES; i++) {
            stored += capacities[i] * temperature[i];
        }
        double flux = conductance * (adiabatic - temperature[0]);
        absorbed += flux * dt;
        radiated += (slope * (temperature[last] - cold) + emission * Math.pow(cold, 4)) * dt;
        hotFace = temperature[0] + flux / toFace;
    }

    private double capacity(double t) {
        return material.density() * material.heatCapacity().at(t) * dx;
    }

    private double between(int i) {
        return material.conductivity().at(0.5 * (temperature[i] + temperature[i + 1])) / dx;
    }

    private void solveTridiagonal() {
        for (int i = 1; i < VOLUMES; i++) {
            double w = lower[i] / diagonal[i - 1];
            diagonal[i] -= w * upper[i - 1];
            right[i] -= w * right[i - 1];
        }
        int last = VOLUMES - 1;
        temperature[last] = right[last] / diagonal[last];
        for (int i = last - 1; i >= 0; i--) {
            temperature[i] = (right[i] - upper[i] * temperature[i + 1]) / diagonal[i];
        }
    }
}
