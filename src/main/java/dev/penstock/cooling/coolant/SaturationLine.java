package dev.penstock.cooling.coolant;

import static dev.penstock.cooling.coolant.SaturationColumns.DENSITY;
import static dev.penstock.cooling.coolant.SaturationColumns.ENTHALPY;
import static dev.penstock.cooling.coolant.SaturationColumns.HEAT_CAPACITY;
import static dev.penstock.cooling.coolant.SaturationColumns.TEMPERATURE;
import static dev.penstock.cooling.coolant.SaturationColumns.VAPOUR;
import static dev.penstock.cooling.coolant.SaturationColumns.VISCOSITY;

import dev.penstock.fluids.state.Fluid;
import java.util.Optional;

/**
 * Both sides of a fluid's boiling line over pressure, made once so that a march can cross it without asking the fluid: from the
 * fluid's table where its model has a vapour ({@link TabledSaturation}), else a line of the liquid alone
 * ({@link StraightSaturation}). Immutable.
 */
public final class SaturationLine {

    private final SaturationColumns columns;

    private SaturationLine(SaturationColumns columns) {
        this.columns = columns;
    }

    /**
     * @param fluid fluid
     * @return its boiling line; empty if the model has none
     */
    static Optional<SaturationLine> of(Fluid fluid) {
        return TabledSaturation.of(fluid).or(() -> StraightSaturation.of(fluid)).map(SaturationLine::new);
    }

    /** @return the same line for one thread that asks for many columns at one pressure, whose place is sought once */
    SaturationLine forOneThread() {
        return new SaturationLine(new AtOnePressure(columns));
    }

    /** @return whether the vapour side is known */
    public boolean hasVapour() {
        return columns.hasVapour();
    }

    /** @return pressure at which the line ends: the critical one, or a little below it without vapour (Pa) */
    double highestPressure() {
        return columns.highestPressure();
    }

    public double temperature(double pressure) {
        return columns.at(pressure, TEMPERATURE);
    }

    public double liquidEnthalpy(double pressure) {
        return columns.at(pressure, ENTHALPY);
    }

    /** Enthalpy of the liquid a fraction of the boiling temperature below boiling (J/kg). */
    double enthalpyBelowBoiling(double pressure, double fraction) {
        return liquidEnthalpy(pressure) - 2 * fraction * columns.at(pressure, HEAT_CAPACITY) * temperature(pressure);
    }

    public double vapourEnthalpy(double pressure) {
        return columns.at(pressure, VAPOUR + ENTHALPY);
    }

    public double liquidDensity(double pressure) {
        return columns.at(pressure, DENSITY);
    }

    public double vapourDensity(double pressure) {
        return columns.at(pressure, VAPOUR + DENSITY);
    }

    /** Saturated liquid's and vapour's value blended by quality: cp 0, viscosity 1, conductivity 2. */
    public double blend(double pressure, int property, double quality) {
        int column = HEAT_CAPACITY + property;
        double liquid = columns.at(pressure, column);
        if (quality <= 0) {
            return liquid;
        }
        double gas = columns.at(pressure, VAPOUR + column);
        return column == VISCOSITY ? 1 / (quality / gas + (1 - quality) / liquid) : liquid + quality * (gas - liquid);
    }

    /** Columns that remember the place of the pressure they were asked for last. Not thread-safe. */
    private static final class AtOnePressure implements SaturationColumns {

        private final SaturationColumns columns;
        private double pressure = Double.NaN;
        private double place;

        AtOnePressure(SaturationColumns columns) {
            this.columns = columns;
        }

        @Override
        public double place(double wanted) {
            if (wanted != pressure) {
                place = columns.place(wanted);
                pressure = wanted;
            }
            return place;
        }

        @Override
        public double atPlace(double where, int column) {
            return columns.atPlace(where, column);
        }

        @Override
        public double highestPressure() {
            return columns.highestPressure();
        }

        @Override
        public boolean hasVapour() {
            return columns.hasVapour();
        }
    }
}
