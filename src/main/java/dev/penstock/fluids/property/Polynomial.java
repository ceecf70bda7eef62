package dev.penstock.fluids.property;

import java.util.Arrays;
import java.util.List;

/**
 * A polynomial in temperature, lowest power first: f(T) = c0 + c1 T + c2 T² + ... For heat capacities it also gives the
 * integrals that make enthalpy and entropy.
 */
public final class Polynomial implements TemperatureFunction {

    private final double[] c;

    public Polynomial(List<Double> coefficients) {
        this.c = coefficients.stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Polynomial polynomial && Arrays.equals(c, polynomial.c);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(c);
    }

    @Override
    public double value(double t) {
        double sum = 0;
        for (int i = c.length - 1; i >= 0; i--) {
            sum = sum * t + c[i];
        }
        return sum;
    }

    @Override
    public double slope(double t) {
        double sum = 0;
        for (int i = c.length - 1; i >= 1; i--) {
            sum = sum * t + i * c[i];
        }
        return sum;
    }

    @Override
    public double curvature(double t) {
        double sum = 0;
        for (int i = c.length - 1; i >= 2; i--) {
            sum = sum * t + i * (i - 1) * c[i];
        }
        return sum;
    }

    /** @return ∫ f dT from one temperature to another */
    public double integral(double from, double to) {
        return primitive(to) - primitive(from);
    }

    private double primitive(double t) {
        double sum = 0;
        for (int i = c.length - 1; i >= 0; i--) {
            sum = sum * t + c[i] / (i + 1);
        }
        return sum * t;
    }

    /** @return ∫ f/T dT from one temperature to another */
    public double integralOverTemperature(double from, double to) {
        return c[0] * Math.log(to / from) + higherPrimitive(to) - higherPrimitive(from);
    }

    private double higherPrimitive(double t) {
        double sum = 0;
        for (int i = c.length - 1; i >= 1; i--) {
            sum = sum * t + c[i] / i;
        }
        return sum * t;
    }
}
