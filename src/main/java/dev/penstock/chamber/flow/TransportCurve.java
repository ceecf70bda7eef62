package dev.penstock.chamber.flow;

import dev.penstock.combustion.gas.FrozenTransport;

/**
 * Viscosity and Prandtl number along one expansion, known at a few temperatures and interpolated between: ln μ and Pr
 * straight over ln T. Transport costs several times what a state costs and changes smoothly; every third node is enough for
 * 0.1 %.
 */
final class TransportCurve {

    private final double[] lnTemperature;
    private final double[] lnViscosity;
    private final double[] prandtl;
    private int size;

    TransportCurve(int capacity) {
        lnTemperature = new double[capacity];
        lnViscosity = new double[capacity];
        prandtl = new double[capacity];
    }

    /** Adds a point, temperature falling from one to the next. */
    void add(double temperature, double viscosity, double prandtlNumber) {
        lnTemperature[size] = Math.log(temperature);
        lnViscosity[size] = Math.log(viscosity);
        prandtl[size] = prandtlNumber;
        size++;
    }

    void add(double temperature, FrozenTransport transport) {
        add(temperature, transport.viscosity(), transport.prandtl());
    }

    double viscosity(double temperature) {
        return Math.exp(interpolate(lnViscosity, Math.log(temperature)));
    }

    double prandtl(double temperature) {
        return interpolate(prandtl, Math.log(temperature));
    }

    private double interpolate(double[] y, double x) {
        int i = 0;
        while (i < size - 2 && x < lnTemperature[i + 1]) {
            i++;
        }
        double t = (x - lnTemperature[i]) / (lnTemperature[i + 1] - lnTemperature[i]);
        return y[i] + t * (y[i + 1] - y[i]);
    }
}
