package dev.penstock.cooling.coolant;

import dev.penstock.fluids.state.FluidState;
import java.util.Optional;

/** What a {@link SaturationLine} is read from: columns over pressure, of the liquid and then of the vapour. Immutable. */
interface SaturationColumns {

    int TEMPERATURE = 0;

    /** Of the liquid; of the vapour this and the next four stand {@value #VAPOUR} further on. */
    int ENTHALPY = 1;

    int DENSITY = 2;
    int HEAT_CAPACITY = 3;
    int VISCOSITY = 4;
    int CONDUCTIVITY = 5;
    int VAPOUR = 5;
    int COUNT = 11;

    /**
     * @param pressure pressure (Pa)
     * @return where the columns have it (-)
     */
    double place(double pressure);

    /**
     * @param place where the columns have a pressure (-); beyond the ends the values of the end
     * @param column column
     * @return its value, SI
     */
    double atPlace(double place, int column);

    /**
     * @param pressure pressure (Pa); beyond the ends the values of the end
     * @param column column
     * @return its value, SI
     */
    default double at(double pressure, int column) {
        return atPlace(place(pressure), column);
    }

    /** @return pressure at which the line ends (Pa) */
    double highestPressure();

    /** @return whether there are columns of the vapour */
    boolean hasVapour();

    /** A row of columns; without vapour those of it are zero. */
    static double[] row(double temperature, FluidState liquid, Optional<FluidState> vapour) {
        double[] row = new double[COUNT];
        row[TEMPERATURE] = temperature;
        fill(row, 0, liquid);
        vapour.ifPresent(state -> fill(row, VAPOUR, state));
        return row;
    }

    private static void fill(double[] row, int at, FluidState state) {
        row[at + ENTHALPY] = state.enthalpy();
        row[at + DENSITY] = state.density();
        row[at + HEAT_CAPACITY] = state.isobaricHeatCapacity();
        row[at + VISCOSITY] = state.viscosity();
        row[at + CONDUCTIVITY] = state.conductivity();
    }
}
