package dev.penstock.fluids.coolprop;

import dev.penstock.fluids.property.TransportModel;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * The saturation of a fluid at the pressures that a thread asked for last: one turbine asks four times at its exit pressure, and a
 * search moves one thing at a time. What is kept is the same as what would be found again. Not thread-safe.
 */
final class SaturationPoints {

    private static final int KEPT = 64;

    private final Optional<TransportModel> transport;
    private final DoubleUnaryOperator boiling;
    private final Map<Double, SaturationPoint> points = new LinkedHashMap<>(2 * KEPT, 0.75f, true) {

        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Double, SaturationPoint> eldest) {
            return size() > KEPT;
        }
    };

    /**
     * @param transport viscosity and conductivity of the fluid, if CoolProp's own are not to be used
     * @param boiling boiling temperature (K) at a pressure (Pa), nearly; not a number where it is not known
     */
    SaturationPoints(Optional<TransportModel> transport, DoubleUnaryOperator boiling) {
        this.transport = transport;
        this.boiling = boiling;
    }

    /**
     * @param handle state object, moved where saturation is not known
     * @param pressure pressure below the critical one (Pa)
     * @return saturation there
     * @throws dev.penstock.errors.PropertyFailure if the fluid has none there
     */
    SaturationPoint at(CoolPropHandle handle, double pressure) {
        SaturationPoint known = points.get(pressure);
        if (known == null) {
            known = new SaturationPoint(handle, pressure, boiling, transport);
            points.put(pressure, known);
        }
        return known;
    }
}
