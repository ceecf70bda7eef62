package dev.penstock.cooling.coolant;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidSamples.Property;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.SaturationSamples;
import dev.penstock.fluids.table.BoilingLine;
import dev.penstock.fluids.table.FluidTables;
import dev.penstock.numerics.EvenCurve;
import java.util.Arrays;
import java.util.Optional;

/**
 * Both sides of the boiling line from the fluid's table ({@link BoilingLine}), up to the critical point. Below the table's lowest pressure
 * down to the cold end of the fluid's model cubics over the same u = (ln(p_c/p))^½ through states of the full model carry on. Heat
 * capacity, viscosity and conductivity, which have no limit at the critical point, keep the values they have at 0.99 of its
 * pressure. Immutable.
 */
final class TabledSaturation implements SaturationColumns {

    private static final int COLD_NODES = 33;
    private static final double COLD_END = 1.0005;
    private static final double STEP_INTO_VAPOUR = 1e-5;
    private static final double HELD_PRESSURE = 0.99;
    private static final double LEAST_COLD_PART = 1e-3;

    private static final Property[] PROPERTIES = {
        Property.DENSITY, Property.ISOBARIC_HEAT_CAPACITY, Property.VISCOSITY, Property.CONDUCTIVITY
    };

    private final BoilingLine line;
    private final double held;
    private final double lowestPlace;
    private final double coldestPlace;
    private final EvenCurve[] cold;

    private TabledSaturation(BoilingLine line, double coldestPlace, EvenCurve[] cold) {
        this.line = line;
        this.held = line.place(HELD_PRESSURE * line.criticalPressure());
        this.lowestPlace = line.place(line.lowestPressure());
        this.coldestPlace = coldestPlace;
        this.cold = cold;
    }

    /**
     * @param fluid fluid
     * @return its boiling line; empty if its table has none
     */
    static Optional<SaturationColumns> of(Fluid fluid) {
        return FluidTables.of(fluid).boilingLine().map(line -> with(line, fluid));
    }

    private static TabledSaturation with(BoilingLine line, Fluid fluid) {
        double coldest = line.place(fluid.vapourPressure(fluid.range().minimumTemperature() * COLD_END));
        double lowest = line.place(line.lowestPressure());
        if (!(coldest > lowest + LEAST_COLD_PART)) {
            return new TabledSaturation(line, lowest, null);
        }
        double[] pressures = new double[COLD_NODES];
        for (int i = 0; i < COLD_NODES; i++) {
            double u = lowest + (coldest - lowest) * i / (COLD_NODES - 1);
            pressures[i] = line.criticalPressure() * Math.exp(-u * u);
        }
        SaturationSamples samples = fluid.saturation(pressures).orElseThrow();
        double[][] rows = new double[COLD_NODES][];
        for (int i = 0; i < COLD_NODES; i++) {
            rows[i] = cold(fluid, pressures[i], samples, i);
            if (rows[i] == null) {
                rows[i] = i == 0 ? end(line, lowest) : rows[i - 1];
            }
        }
        EvenCurve[] curves = new EvenCurve[COUNT];
        for (int c = 0; c < COUNT; c++) {
            int column = c;
            curves[c] = new EvenCurve(
                    lowest,
                    coldest,
                    Arrays.stream(rows).mapToDouble(row -> row[column]).toArray());
        }
        return new TabledSaturation(line, coldest, curves);
    }

    /** Columns at a pressure from the full model; nothing where it has no state. */
    private static double[] cold(Fluid fluid, double pressure, SaturationSamples samples, int i) {
        double temperature = samples.temperature()[i];
        if (!(temperature > 0)) {
            return null;
        }
        try {
            FluidState liquid = fluid.saturatedLiquid(temperature);
            FluidState vapour = fluid.atPressureTemperature(pressure, temperature * (1 + STEP_INTO_VAPOUR));
            return vapour.density() < liquid.density()
                    ? SaturationColumns.row(temperature, liquid, Optional.of(vapour))
                    : null;
        } catch (PropertyFailure e) {
            return null;
        }
    }

    private static double[] end(BoilingLine line, double lowest) {
        TabledSaturation table = new TabledSaturation(line, lowest, null);
        double[] row = new double[COUNT];
        for (int c = 0; c < COUNT; c++) {
            row[c] = table.fromTable(lowest, c);
        }
        return row;
    }

    @Override
    public double highestPressure() {
        return line.criticalPressure();
    }

    @Override
    public boolean hasVapour() {
        return true;
    }

    @Override
    public double place(double pressure) {
        return line.place(pressure);
    }

    @Override
    public double atPlace(double place, int column) {
        if (place <= lowestPlace) {
            return fromTable(place, column);
        }
        return cold == null ? fromTable(lowestPlace, column) : cold[column].at(Math.min(place, coldestPlace));
    }

    private double fromTable(double place, int column) {
        if (column == TEMPERATURE) {
            return line.temperature(place);
        }
        boolean vapour = column > VAPOUR;
        int of = vapour ? column - VAPOUR : column;
        if (of == ENTHALPY) {
            return line.enthalpy(vapour, place);
        }
        return line.value(vapour, PROPERTIES[of - DENSITY], of == DENSITY ? place : Math.max(place, held));
    }
}
