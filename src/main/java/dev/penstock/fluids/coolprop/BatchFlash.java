package dev.penstock.fluids.coolprop;

import static dev.penstock.fluids.coolprop.CoolPropOutput.CONDUCTIVITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.DENSITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ENTHALPY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ENTROPY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ISOBARIC_HEAT_CAPACITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ISOCHORIC_HEAT_CAPACITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PHASE;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE_BY_DENSITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE_BY_TEMPERATURE;
import static dev.penstock.fluids.coolprop.CoolPropOutput.SOUND_SPEED;
import static dev.penstock.fluids.coolprop.CoolPropOutput.TEMPERATURE;
import static dev.penstock.fluids.coolprop.CoolPropOutput.VISCOSITY;

import dev.penstock.fluids.property.TransportModel;
import dev.penstock.fluids.state.FluidSamples;
import dev.penstock.fluids.state.Phase;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * States at many pressures and enthalpies at once, by Newton's method ({@link FlashStep}) on all of them in step, so that
 * thousands are one question to CoolProp. Every {@value #COARSE}th is sought from the nearest of {@link FlashAnchors}, those
 * between from the straight line between their neighbours; neighbours in the list should therefore lie near each other. What
 * is not found so is not held. Not thread-safe.
 */
final class BatchFlash {

    private static final int COARSE = 8;

    /** From this step on most states have arrived, and their other properties are asked with them. */
    private static final int LATE = 2;

    private static final CoolPropOutput[] STEP = {
        PRESSURE, ENTHALPY, ISOCHORIC_HEAT_CAPACITY, PRESSURE_BY_DENSITY, PRESSURE_BY_TEMPERATURE, PHASE
    };
    private static final CoolPropOutput[] PROPERTIES = {
        TEMPERATURE, DENSITY, ENTROPY, ISOBARIC_HEAT_CAPACITY, SOUND_SPEED
    };
    private static final CoolPropOutput[] TRANSPORT = {VISCOSITY, CONDUCTIVITY};

    private final CoolPropHandle handle;
    private final FlashAnchors anchors;
    private final Optional<TransportModel> model;
    private final CoolPropOutput[] everything;
    private final double[] pressure;
    private final double[] enthalpy;
    private final double[] density;
    private final double[] temperature;
    private final boolean[] found;
    private final FluidSamples samples;
    private final FlashStep step = new FlashStep();

    /**
     * @param handle state of the fluid, left anywhere
     * @param anchors anchors of the fluid
     * @param model viscosity and conductivity, if CoolProp's own are not to be used
     * @param pressure pressures (Pa)
     * @param enthalpy enthalpies (J/kg), as many
     */
    BatchFlash(
            CoolPropHandle handle,
            FlashAnchors anchors,
            Optional<TransportModel> model,
            double[] pressure,
            double[] enthalpy) {
        this.handle = handle;
        this.anchors = anchors;
        this.model = model;
        this.pressure = pressure;
        this.enthalpy = enthalpy;
        this.density = new double[pressure.length];
        this.temperature = new double[pressure.length];
        this.found = new boolean[pressure.length];
        this.samples = new FluidSamples(pressure.length);
        this.everything = join(STEP, join(PROPERTIES, model.isPresent() ? new CoolPropOutput[0] : TRANSPORT));
    }

    private static CoolPropOutput[] join(CoolPropOutput[] first, CoolPropOutput[] second) {
        CoolPropOutput[] both = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
    }

    /**
     * Seeks all states, from the guesses first.
     *
     * @param densities guesses (kg/m³); NaN where there is none
     * @param temperatures guesses (K); NaN where there is none
     * @return those found
     */
    FluidSamples run(double[] densities, double[] temperatures) {
        solve(open().filter(i -> startAt(i, densities[i], temperatures[i])).toArray());
        int[] coarse = open().filter(i -> i % COARSE == 0 || i == pressure.length - 1)
                .filter(this::startAtAnchor)
                .toArray();
        solve(coarse);
        solve(open().filter(this::startBetween).toArray());
        solve(open().filter(this::startAtAnchor).toArray());
        for (int side = -1; side <= 1; side += 2) {
            int next = side;
            solve(open().filter(i -> startAtNeighbour(i, next)).toArray());
        }
        return samples;
    }

    private boolean startAt(int state, double rho, double t) {
        density[state] = rho;
        temperature[state] = t;
        return rho > 0 && t > 0;
    }

    /** At the nearest state that was found before or after this one in the list. */
    private boolean startAtNeighbour(int state, int side) {
        for (int away = 1; away <= COARSE; away++) {
            int other = state + side * away;
            if (other >= 0 && other < found.length && found[other]) {
                return startAt(state, density[other], temperature[other]);
            }
        }
        return false;
    }

    private IntStream open() {
        return IntStream.range(0, pressure.length).filter(i -> !found[i]);
    }

    private boolean startAtAnchor(int state) {
        int anchor = anchors.nearest(pressure[state], ENTHALPY, enthalpy[state]);
        if (anchor < 0) {
            return false;
        }
        density[state] = anchors.density(anchor);
        temperature[state] = anchors.temperature(anchor);
        return true;
    }

    /** On the straight line between the nearest states of the coarse list, or at the one of them that was found. */
    private boolean startBetween(int state) {
        int low = state / COARSE * COARSE;
        int high = Math.min(low + COARSE, pressure.length - 1);
        if (!found[low] && !found[high]) {
            return startAtAnchor(state);
        }
        double share = (state - low) / (double) (high - low);
        double weight = found[low] && found[high] ? share : found[high] ? 1 : 0;
        density[state] = density[low] * (1 - weight) + density[high] * weight;
        temperature[state] = temperature[low] * (1 - weight) + temperature[high] * weight;
        return true;
    }

    /** Newton's method on the given states, from where they stand. */
    private void solve(int[] states) {
        int[] open = states;
        for (int steps = 0; steps < WarmFlash.MAXIMUM_STEPS && open.length > 0; steps++) {
            CoolPropOutput[] wanted = steps < LATE ? STEP : everything;
            double[] values = evaluate(open, wanted);
            int left = 0;
            int[] going = new int[open.length];
            int[] arrived = new int[open.length];
            int early = 0;
            for (int k = 0; k < open.length; k++) {
                int state = open[k];
                int at = k * wanted.length;
                if (!aim(state, values, at)) {
                    continue;
                }
                if (step.size() < WarmFlash.CONVERGED) {
                    found[state] = true;
                    if (steps < LATE) {
                        arrived[early++] = state;
                    } else {
                        take(state, values, at);
                    }
                } else if (Math.abs(step.density()) < WarmFlash.LARGEST_DENSITY_STEP * density[state]
                        && Math.abs(step.temperature()) < WarmFlash.LARGEST_TEMPERATURE_STEP * temperature[state]) {
                    density[state] += step.density();
                    temperature[state] += step.temperature();
                    going[left++] = state;
                }
            }
            takeEarly(Arrays.copyOf(arrived, early));
            open = Arrays.copyOf(going, left);
        }
    }

    /** Finds the step from a state; says no if CoolProp gave no number there or it lies between the phases. */
    private boolean aim(int state, double[] values, int at) {
        if (Double.isNaN(values[at]) || CoolPropPhases.of(values[at + 5]) == Phase.TWO_PHASE) {
            return false;
        }
        step.solve(
                density[state],
                temperature[state],
                values[at + 3],
                values[at + 4],
                values[at + 2],
                pressure[state] - values[at],
                true,
                enthalpy[state] - values[at + 1]);
        return true;
    }

    private void takeEarly(int[] states) {
        double[] values = evaluate(states, everything);
        for (int k = 0; k < states.length; k++) {
            take(states[k], values, k * everything.length);
        }
    }

    private double[] evaluate(int[] states, CoolPropOutput[] wanted) {
        return handle.evaluate(
                CoolPropInputs.DENSITY_TEMPERATURE,
                Arrays.stream(states).mapToDouble(i -> density[i]).toArray(),
                Arrays.stream(states).mapToDouble(i -> temperature[i]).toArray(),
                wanted);
    }

    private void take(int state, double[] values, int at) {
        if (Double.isNaN(values[at])) {
            found[state] = false;
            return;
        }
        int from = at + STEP.length;
        FluidSamples.Property[] properties = FluidSamples.Property.values();
        for (int k = 0; k < everything.length - STEP.length; k++) {
            samples.set(properties[k], state, values[from + k]);
        }
        double t = values[from];
        double rho = values[from + 1];
        model.ifPresent(transport -> {
            samples.set(FluidSamples.Property.VISCOSITY, state, transport.viscosity(t, rho, pressure[state]));
            samples.set(FluidSamples.Property.CONDUCTIVITY, state, transport.conductivity(t, rho, pressure[state]));
        });
        samples.hold(state, CoolPropPhases.of(values[at + 5]));
    }
}
