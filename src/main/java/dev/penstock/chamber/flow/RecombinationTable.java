package dev.penstock.chamber.flow;

/**
 * Recombination along a shifting expansion, at the supersonic nodes of a {@link GasProfile}: moles of gas per kilogram and
 * the forward rate at which three-body collisions lower them.
 */
public final class RecombinationTable {

    private final double[] lnPressure;
    private final double[] moles;
    private final double[] rate;
    private int size;

    RecombinationTable(int capacity) {
        lnPressure = new double[capacity];
        moles = new double[capacity];
        rate = new double[capacity];
    }

    void add(double pressure, double molesPerKilogram, double forwardRate) {
        lnPressure[size] = Math.log(pressure);
        moles[size] = molesPerKilogram;
        rate[size] = forwardRate;
        size++;
    }

    public int size() {
        return size;
    }

    public double lnPressure(int i) {
        return lnPressure[i];
    }

    /** Forward recombination rate (mol/(kg·s)). */
    public double rate(int i) {
        return rate[i];
    }

    /** dσ/d ln p (mol/kg), from the parabola through neighbouring nodes: positive while moles fall with pressure. */
    public double molesSlope(int i) {
        int m = Math.max(1, Math.min(size - 2, i));
        double before = (moles[m] - moles[m - 1]) / (lnPressure[m] - lnPressure[m - 1]);
        double after = (moles[m + 1] - moles[m]) / (lnPressure[m + 1] - lnPressure[m]);
        double second = (after - before) / (lnPressure[m + 1] - lnPressure[m - 1]);
        return before + second * (2 * lnPressure[i] - lnPressure[m] - lnPressure[m - 1]);
    }
}
