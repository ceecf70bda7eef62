package dev.penstock.chamber.flow;

import java.util.List;

/** One side of the throat in a {@link GasProfile}: node tables over ln p and their cubic Hermite curves. */
final class GasBranch {

    private final int n;
    private final double totalEnthalpy;
    private final double[] lnP;
    private final double[] flux;
    private final Column enthalpy;
    private final Column lnDensity;
    private final Column lnTemperature;
    private final Column gamma;
    private final Column specificHeat;
    private final Column lnViscosity;
    private final Column prandtl;

    /** Values and slopes over ln p. */
    private static final class Column {
        private final double[] value;
        private final double[] slope;

        private Column(double[] value, double[] slope) {
            this.value = value;
            this.slope = slope;
        }
    }

    GasBranch(List<NozzleStation> nodes, double totalEnthalpy) {
        this.n = nodes.size();
        this.totalEnthalpy = totalEnthalpy;
        lnP = column(nodes, s -> Math.log(s.pressure()));
        flux = column(nodes, NozzleStation::massFlux);
        enthalpy = new Column(column(nodes, NozzleStation::enthalpy), column(nodes, s -> s.pressure() / s.density()));
        lnDensity = new Column(column(nodes, s -> Math.log(s.density())), column(nodes, s -> 1 / s.gamma()));
        lnTemperature = withSlopes(column(nodes, s -> Math.log(s.temperature())));
        gamma = withSlopes(column(nodes, NozzleStation::gamma));
        specificHeat = withSlopes(column(nodes, NozzleStation::specificHeat));
        lnViscosity = withSlopes(column(nodes, s -> Math.log(s.viscosity())));
        prandtl = withSlopes(column(nodes, NozzleStation::prandtl));
    }

    double highest() {
        return lnP[0];
    }

    double lowest() {
        return lnP[n - 1];
    }

    double lnPressure(int i) {
        return lnP[i];
    }

    /** Mass flux at a node (kg/(m²·s)). */
    double nodeFlux(int i) {
        return flux[i];
    }

    /** Interval whose ends enclose a mass flux, which rises or falls all along the branch. */
    int intervalOfFlux(double wanted) {
        boolean rising = flux[n - 1] > flux[0];
        int a = 0;
        int b = n - 1;
        while (b - a > 1) {
            int middle = (a + b) >>> 1;
            if (flux[middle] <= wanted == rising) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return a;
    }

    double massFlux(double s) {
        int i = interval(s);
        return Math.exp(interpolate(lnDensity, i, s)) * velocity(interpolate(enthalpy, i, s));
    }

    /**
     * Newton's step towards a mass flux inside an interval, by the same curves.
     *
     * @param i interval
     * @param s ln p
     * @param wanted mass flux (kg/(m²·s))
     * @param found receives the mass flux less the wanted one, and the step to take off s
     */
    void stepTowards(int i, double s, double wanted, double[] found) {
        double v = velocity(interpolate(enthalpy, i, s));
        double there = Math.exp(interpolate(lnDensity, i, s)) * v;
        found[0] = there - wanted;
        found[1] = found[0] / (there * (slope(lnDensity, i, s) - slope(enthalpy, i, s) / (v * v)));
    }

    /**
     * Where in an interval a mass flux is about: it rises with the root of the way from rest, falls with the square of the way from the
     * throat, and elsewhere is a power of the pressure.
     *
     * @param i interval
     * @param wanted mass flux (kg/(m²·s)), between those of the ends
     * @return part of the interval from its upper end (-)
     */
    double shareOfInterval(int i, double wanted) {
        double above = flux[i];
        double below = flux[i + 1];
        boolean rising = below > above;
        if (rising && i == n - 2) {
            return 1 - Math.sqrt((below - wanted) / (below - above));
        }
        if (!rising && i == 0) {
            return Math.sqrt((above - wanted) / (above - below));
        }
        return above > 0 ? Math.log(wanted / above) / Math.log(below / above) : wanted * wanted / (below * below);
    }

    NozzleStation at(double s, double areaRatio) {
        int i = interval(s);
        double pressure = Math.exp(s);
        double h = interpolate(enthalpy, i, s);
        double density = Math.exp(interpolate(lnDensity, i, s));
        double g = interpolate(gamma, i, s);
        double v = velocity(h);
        return new NozzleStation(
                areaRatio,
                pressure,
                Math.exp(interpolate(lnTemperature, i, s)),
                density,
                v,
                v / Math.sqrt(g * pressure / density),
                h,
                g,
                interpolate(specificHeat, i, s),
                Math.exp(interpolate(lnViscosity, i, s)),
                interpolate(prandtl, i, s));
    }

    private double velocity(double h) {
        return Math.sqrt(Math.max(0, 2 * (totalEnthalpy - h)));
    }

    private int interval(double s) {
        int a = 0;
        int b = n - 1;
        while (b - a > 1) {
            int middle = (a + b) >>> 1;
            if (lnP[middle] >= s) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return a;
    }

    private double interpolate(Column column, int i, double s) {
        double width = lnP[i + 1] - lnP[i];
        double t = (s - lnP[i]) / width;
        double u = 1 - t;
        return u * u * ((1 + 2 * t) * column.value[i] + t * width * column.slope[i])
                + t * t * ((1 + 2 * u) * column.value[i + 1] - u * width * column.slope[i + 1]);
    }

    /** Derivative of {@link #interpolate} by ln p. */
    private double slope(Column column, int i, double s) {
        double width = lnP[i + 1] - lnP[i];
        double t = (s - lnP[i]) / width;
        double chord = (column.value[i + 1] - column.value[i]) / width;
        return 6 * t * (1 - t) * chord
                + (1 - t) * (1 - 3 * t) * column.slope[i]
                + t * (3 * t - 2) * column.slope[i + 1];
    }

    /**
     * Slopes from the parabola through three neighbours, one-sided at the ends, kept within three times the gentler chord so
     * that nothing overshoots where a condensed species makes a quantity jump.
     */
    private Column withSlopes(double[] y) {
        double[] slope = new double[n];
        if (n == 2) {
            slope[0] = slope[1] = chord(y, 0);
            return new Column(y, slope);
        }
        for (int i = 0; i < n; i++) {
            int m = Math.max(1, Math.min(n - 2, i));
            double second = (chord(y, m) - chord(y, m - 1)) / (lnP[m + 1] - lnP[m - 1]);
            double parabola = chord(y, m - 1) + second * (2 * lnP[i] - lnP[m] - lnP[m - 1]);
            slope[i] = limited(parabola, chord(y, Math.max(0, i - 1)), chord(y, Math.min(n - 2, i)));
        }
        return new Column(y, slope);
    }

    private double chord(double[] y, int i) {
        return (y[i + 1] - y[i]) / (lnP[i + 1] - lnP[i]);
    }

    private static double limited(double slope, double before, double after) {
        if (before * after <= 0) {
            return 0;
        }
        double most = 3 * Math.min(Math.abs(before), Math.abs(after));
        return Math.signum(before) * Math.max(0, Math.min(most, slope * Math.signum(before)));
    }

    private interface Quantity {
        double of(NozzleStation station);
    }

    private static double[] column(List<NozzleStation> nodes, Quantity quantity) {
        double[] values = new double[nodes.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = quantity.of(nodes.get(i));
        }
        return values;
    }
}
