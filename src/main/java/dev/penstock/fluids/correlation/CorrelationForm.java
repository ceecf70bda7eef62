package dev.penstock.fluids.correlation;

import dev.penstock.fluids.property.Polynomial;
import dev.penstock.fluids.property.TemperatureFunction;
import dev.penstock.provenance.Words;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * The equations in which a fluid's file may state a property. Coefficients are for SI units and kelvin; the named forms
 * are those of the tables they come from (DIPPR numbers as in Perry's handbook, PPDS as in the VDI heat atlas).
 */
public enum CorrelationForm {
    /** c0 + c1 T + c2 T² + ... */
    POLYNOMIAL(1, 8, Polynomial::new),
    /** exp(c0 + c1 T + c2 T² + ...) */
    EXPONENTIAL_POLYNOMIAL(1, 8, c -> new ExponentialOf(new Polynomial(c))),
    /** exp(A + B / (T + C)); A in ln of the SI unit; Antoine's vapour pressure has negative B, Vogel's viscosity positive */
    ANTOINE(3, 3, c -> new ExponentialOf(new Reciprocal(c.get(0), c.get(1), c.get(2)))),
    /** exp(A + B/T + C ln T + D T^E) */
    DIPPR_101(5, 5, c -> new ExponentialOf(new Dippr101Exponent(c))),
    /** A T^B / (1 + C/T + D/T²), for dilute gases */
    DIPPR_102(4, 4, Dippr102::new),
    /** A / B^(1 + (1 - T/C)^D), a saturated liquid's density */
    DIPPR_105(4, 4, c -> new ExponentialOf(new Dippr105Exponent(c))),
    /** pc exp((A τ + B τ^1.5 + C τ^2.5 + D τ^5) Tc/T), τ = 1 - T/Tc; coefficients pc, Tc, A, B, C, D */
    WAGNER(6, 6, Wagner::new),
    /** E exp(A x^(1/3) + B x^(4/3)), x = (C - T)/(T - D); coefficients A, B, C, D, E */
    PPDS_9(5, 5, Ppds9::new);

    private final int fewest;
    private final int most;
    private final Function<List<Double>, TemperatureFunction> maker;

    CorrelationForm(int fewest, int most, Function<List<Double>, TemperatureFunction> maker) {
        this.fewest = fewest;
        this.most = most;
        this.maker = maker;
    }

    /** @return the name used in files */
    String fileName() {
        return Words.of(this);
    }

    static CorrelationForm of(String fileName) {
        return valueOf(fileName.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** @return whether the form takes that many coefficients */
    boolean takes(int count) {
        return count >= fewest && count <= most;
    }

    /** @return how many coefficients the form takes, in words */
    String count() {
        return fewest == most ? fewest + " coefficients" : fewest + " to " + most + " coefficients";
    }

    TemperatureFunction with(List<Double> coefficients) {
        return maker.apply(coefficients);
    }

    /** f = exp(g): f' = f g', f'' = f (g'² + g''). */
    private record ExponentialOf(TemperatureFunction exponent) implements TemperatureFunction {
        @Override
        public double value(double t) {
            return Math.exp(exponent.value(t));
        }

        @Override
        public double slope(double t) {
            return value(t) * exponent.slope(t);
        }

        @Override
        public double curvature(double t) {
            double slope = exponent.slope(t);
            return value(t) * (slope * slope + exponent.curvature(t));
        }
    }

    private record Reciprocal(double a, double b, double c) implements TemperatureFunction {
        @Override
        public double value(double t) {
            return a + b / (t + c);
        }

        @Override
        public double slope(double t) {
            return -b / ((t + c) * (t + c));
        }

        @Override
        public double curvature(double t) {
            return 2 * b / ((t + c) * (t + c) * (t + c));
        }
    }

    private record Dippr101Exponent(List<Double> k) implements TemperatureFunction {
        @Override
        public double value(double t) {
            return k.get(0) + k.get(1) / t + k.get(2) * Math.log(t) + k.get(3) * Math.pow(t, k.get(4));
        }

        @Override
        public double slope(double t) {
            double e = k.get(4);
            return -k.get(1) / (t * t) + k.get(2) / t + k.get(3) * e * Math.pow(t, e - 1);
        }

        @Override
        public double curvature(double t) {
            double e = k.get(4);
            return 2 * k.get(1) / (t * t * t) - k.get(2) / (t * t) + k.get(3) * e * (e - 1) * Math.pow(t, e - 2);
        }
    }

    private record Dippr105Exponent(List<Double> k) implements TemperatureFunction {
        private double y(double t) {
            return 1 - t / k.get(2);
        }

        @Override
        public double value(double t) {
            return Math.log(k.get(0)) - Math.log(k.get(1)) * (1 + Math.pow(y(t), k.get(3)));
        }

        @Override
        public double slope(double t) {
            double d = k.get(3);
            return Math.log(k.get(1)) * d * Math.pow(y(t), d - 1) / k.get(2);
        }

        @Override
        public double curvature(double t) {
            double d = k.get(3);
            return -Math.log(k.get(1)) * d * (d - 1) * Math.pow(y(t), d - 2) / (k.get(2) * k.get(2));
        }
    }

    /** Forms that are asked for values only; derivatives by central difference. */
    private interface ValueOnly extends TemperatureFunction {
        double STEP = 1e-3;

        @Override
        default double slope(double t) {
            return (value(t + STEP) - value(t - STEP)) / (2 * STEP);
        }

        @Override
        default double curvature(double t) {
            return (value(t + STEP) - 2 * value(t) + value(t - STEP)) / (STEP * STEP);
        }
    }

    private record Dippr102(List<Double> k) implements ValueOnly {
        @Override
        public double value(double t) {
            return k.get(0) * Math.pow(t, k.get(1)) / (1 + k.get(2) / t + k.get(3) / (t * t));
        }
    }

    private record Wagner(List<Double> k) implements ValueOnly {
        @Override
        public double value(double t) {
            double tau = 1 - t / k.get(1);
            double root = Math.sqrt(tau);
            double sum = tau * (k.get(2) + root * k.get(3) + tau * root * k.get(4) + tau * tau * tau * tau * k.get(5));
            return k.get(0) * Math.exp(sum * k.get(1) / t);
        }
    }

    private record Ppds9(List<Double> k) implements ValueOnly {
        @Override
        public double value(double t) {
            double x = (k.get(2) - t) / (t - k.get(3));
            double root = Math.cbrt(x);
            return k.get(4) * Math.exp(k.get(0) * root + k.get(1) * x * root);
        }
    }
}
