package dev.penstock.fluids.coolprop;

import static dev.penstock.fluids.coolprop.CoolPropInputs.PRESSURE_QUALITY;
import static dev.penstock.fluids.coolprop.CoolPropInputs.PRESSURE_TEMPERATURE;

import dev.penstock.errors.NotConverged;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.FluidRange;
import dev.penstock.numerics.RootFinder;
import java.util.Locale;

/**
 * State at a pressure and an enthalpy or entropy by a bracketed search in temperature, for the few states (about two in
 * a thousand, most near the critical point) at which CoolProp's own search gives up. Below the critical pressure the
 * side of the saturation curve is settled first. Not thread-safe.
 */
final class BracketedFlash {

    private static final double BESIDE_SATURATION = 5e-7;
    private static final double TOLERANCE = 1e-12;
    private static final double STEP_OFF_MELTING = 1.01;

    private final CoolPropHandle handle;
    private final FluidRange range;
    private final double criticalPressure;

    BracketedFlash(CoolPropHandle handle, FluidRange range, double criticalPressure) {
        this.handle = handle;
        this.range = range;
        this.criticalPressure = criticalPressure;
    }

    /**
     * Moves the handle to the wanted state.
     *
     * @param pressure wanted pressure (Pa)
     * @param second {@code ENTHALPY} or {@code ENTROPY}
     * @param wanted its wanted value (J/kg or J/(kg·K))
     * @throws PropertyFailure if CoolProp gives no saturation state, or its range holds no such state
     * @throws NotConverged if the value lies outside what the range of temperatures gives
     */
    void move(double pressure, CoolPropOutput second, double wanted) {
        double low = range.minimumTemperature();
        double high = range.maximumTemperature();
        if (pressure < criticalPressure) {
            handle.update(PRESSURE_QUALITY, pressure, 0);
            double liquid = handle.output(second);
            double saturation = handle.output(CoolPropOutput.TEMPERATURE);
            handle.update(PRESSURE_QUALITY, pressure, 1);
            double vapour = handle.output(second);
            if (wanted >= liquid && wanted <= vapour) {
                handle.update(PRESSURE_QUALITY, pressure, (wanted - liquid) / (vapour - liquid));
                return;
            }
            low = wanted > vapour ? saturation * (1 + BESIDE_SATURATION) : low;
            high = wanted < liquid ? saturation * (1 - BESIDE_SATURATION) : high;
        }
        double lowest = aboveMelting(pressure, low, high);
        RootFinder.between(
                "temperature at a pressure and " + second.name().toLowerCase(Locale.ROOT),
                t -> {
                    handle.update(PRESSURE_TEMPERATURE, pressure, t);
                    return handle.output(second) - wanted;
                },
                lowest,
                high,
                TOLERANCE);
    }

    private double aboveMelting(double pressure, double low, double high) {
        PropertyFailure last = null;
        for (double t = low; t < high; t *= STEP_OFF_MELTING) {
            try {
                handle.update(PRESSURE_TEMPERATURE, pressure, t);
                return t;
            } catch (PropertyFailure e) {
                last = e;
            }
        }
        throw last == null
                ? CoolPropLibrary.failure("its range of temperatures is empty at " + pressure + " Pa")
                : last;
    }
}
