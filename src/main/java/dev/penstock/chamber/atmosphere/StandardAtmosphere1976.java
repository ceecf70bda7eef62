package dev.penstock.chamber.atmosphere;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * U.S. Standard Atmosphere, 1976.
 * <pre>
 * up to 86 km   H = r₀ z/(r₀ + z);  T_M = T_b + L (H − H_b)
 *               p = p_b (T_b/T_M)^(g₀ M₀/(R L)), or p_b exp(−g₀ M₀ (H − H_b)/(R T_b)) where L = 0
 *               ρ = p M₀/(R T_M);  a = √(1.4 R T_M/M₀);  T = T_M M/M₀
 * above         T by the standard's four laws; between the standard's printed values cubic curves in z, ln p with the
 *               hydrostatic slope −ρ g/p at each printed value, ln ρ with slopes from its neighbours
 * </pre>
 * Source: [us-std-atm-1976], constants as the standard states them (R = 8314.32 J/(kmol·K)). Range −5 to 1000 km geometric;
 * above that the air is nil. Between the printed values used here the curves stay within 1 % of the standard, far less than
 * the swing of the real upper atmosphere with solar activity. The speed of sound above
 * 86 km is √(1.4 p/ρ): a scale, since the standard stops giving one there.
 */
public final class StandardAtmosphere1976 implements Atmosphere {

    public static final ModelCard CARD = new ModelCard(
            "chamber.atmosphere_1976",
            "U.S. Standard Atmosphere 1976",
            "hydrostatic layers of linear molecular-scale temperature; table above 86 km",
            "-5 to 1000 km geometric altitude",
            "the standard itself below 86 km; 1 % of it above",
            List.of("us-std-atm-1976"));

    private static final double EARTH_RADIUS = 6_356_766; // m
    private static final double GRAVITY = 9.80665; // m/s²
    private static final double GAS_CONSTANT = 8314.32; // J/(kmol·K), the standard's own
    private static final double MOLAR_MASS = 28.9644; // kg/kmol at sea level
    private static final double LAPSE = GRAVITY * MOLAR_MASS / GAS_CONSTANT; // K/m
    private static final double TOP_OF_LAYERS = 86_000; // m, geometric
    private static final double TOP = 1_000_000; // m, geometric
    private static final double BOTTOM = -5_000; // m, geometric

    /** Layer bases: geopotential height (m) and molecular-scale lapse rate (K/m). */
    private static final double[] BASE = {0, 11_000, 20_000, 32_000, 47_000, 51_000, 71_000};

    private static final double[] RATE = {-0.0065, 0, 0.001, 0.0028, 0, -0.0028, -0.002};

    /** M/M₀ at 80, 80.5 ... 86 km: oxygen begins to dissociate. */
    private static final double[] MOLAR_MASS_RATIO = {
        1, 0.999996, 0.999989, 0.999971, 0.999941, 0.999909, 0.999870, 0.999829, 0.999786, 0.999741, 0.999694, 0.999641,
        0.999579
    };

    /** Printed values above the layers: geometric altitude (km), pressure (Pa), density (kg/m³). */
    private static final double[][] UPPER = {
        {86, 3.7338e-1, 6.958e-6},
        {90, 1.8359e-1, 3.416e-6},
        {95, 7.5966e-2, 1.393e-6},
        {100, 3.2011e-2, 5.604e-7},
        {105, 1.4477e-2, 2.325e-7},
        {110, 7.1042e-3, 9.708e-8},
        {115, 4.0096e-3, 4.289e-8},
        {120, 2.5382e-3, 2.222e-8},
        {130, 1.2505e-3, 8.152e-9},
        {140, 7.2028e-4, 3.831e-9},
        {150, 4.5422e-4, 2.076e-9},
        {160, 3.0395e-4, 1.233e-9},
        {180, 1.5271e-4, 5.194e-10},
        {200, 8.4736e-5, 2.541e-10},
        {250, 2.4767e-5, 6.073e-11},
        {300, 8.7704e-6, 1.916e-11},
        {350, 3.4498e-6, 7.014e-12},
        {400, 1.4518e-6, 2.803e-12},
        {450, 6.4468e-7, 1.184e-12},
        {500, 3.0236e-7, 5.215e-13},
        {600, 8.2130e-8, 1.137e-13},
        {700, 3.1908e-8, 3.070e-14},
        {800, 1.7036e-8, 1.136e-14},
        {900, 1.0873e-8, 5.759e-15},
        {1000, 7.5138e-9, 3.561e-15}
    };

    // Logarithms of the printed values and their slopes (1/km): asked for at every step of every flight.
    private static final double[] LN_PRESSURE = each(i -> lnUpper(i, 1));
    private static final double[] LN_DENSITY = each(i -> lnUpper(i, 2));
    private static final double[] PRESSURE_SLOPE = each(StandardAtmosphere1976::hydrostatic);
    private static final double[] DENSITY_SLOPE = each(StandardAtmosphere1976::densitySlope);

    private final double[] baseTemperature = new double[BASE.length];
    private final double[] basePressure = new double[BASE.length];

    public StandardAtmosphere1976() {
        baseTemperature[0] = 288.15;
        basePressure[0] = 101_325;
        for (int i = 1; i < BASE.length; i++) {
            baseTemperature[i] = baseTemperature[i - 1] + RATE[i - 1] * (BASE[i] - BASE[i - 1]);
            basePressure[i] = layerPressure(i - 1, BASE[i]);
        }
    }

    @Override
    public State at(double altitude) {
        Require.within(CARD.title(), "altitude (m)", altitude, BOTTOM, Double.MAX_VALUE);
        if (altitude >= TOP) {
            return new State(altitude, 0, upperTemperature(TOP), 0, upperSoundSpeed(UPPER[UPPER.length - 1]));
        }
        return altitude < TOP_OF_LAYERS ? inLayers(altitude) : above(altitude);
    }

    private State inLayers(double altitude) {
        double height = EARTH_RADIUS * altitude / (EARTH_RADIUS + altitude);
        int i = 0;
        while (i < BASE.length - 1 && height >= BASE[i + 1]) {
            i++;
        }
        double scaleTemperature = baseTemperature[i] + RATE[i] * (height - BASE[i]);
        double pressure = layerPressure(i, height);
        double specific = GAS_CONSTANT / MOLAR_MASS * scaleTemperature;
        return new State(
                altitude,
                pressure,
                scaleTemperature * molarMassRatio(altitude),
                pressure / specific,
                Math.sqrt(1.4 * specific));
    }

    private double layerPressure(int i, double height) {
        double above = height - BASE[i];
        double t = baseTemperature[i];
        return RATE[i] == 0
                ? basePressure[i] * Math.exp(-LAPSE * above / t)
                : basePressure[i] * Math.pow(t / (t + RATE[i] * above), LAPSE / RATE[i]);
    }

    private static double molarMassRatio(double altitude) {
        double position = Math.max(0, (altitude - 80_000) / 500);
        int i = (int) Math.min(position, MOLAR_MASS_RATIO.length - 2.0);
        return MOLAR_MASS_RATIO[i] + (position - i) * (MOLAR_MASS_RATIO[i + 1] - MOLAR_MASS_RATIO[i]);
    }

    private static State above(double altitude) {
        double km = altitude / 1000;
        int i = 0;
        while (i < UPPER.length - 2 && km >= UPPER[i + 1][0]) {
            i++;
        }
        double width = UPPER[i + 1][0] - UPPER[i][0];
        double t = (km - UPPER[i][0]) / width;
        double[] here = {
            km,
            Math.exp(hermite(t, width, LN_PRESSURE[i], LN_PRESSURE[i + 1], PRESSURE_SLOPE[i], PRESSURE_SLOPE[i + 1])),
            Math.exp(hermite(t, width, LN_DENSITY[i], LN_DENSITY[i + 1], DENSITY_SLOPE[i], DENSITY_SLOPE[i + 1]))
        };
        return new State(altitude, here[1], upperTemperature(altitude), here[2], upperSoundSpeed(here));
    }

    private static double[] each(IntToDoubleFunction value) {
        return IntStream.range(0, UPPER.length).mapToDouble(value).toArray();
    }

    private static double lnUpper(int row, int column) {
        return Math.log(UPPER[row][column]);
    }

    /** d ln p/dz at a printed value (1/km). */
    private static double hydrostatic(int i) {
        double gravity = GRAVITY * Math.pow(EARTH_RADIUS / (EARTH_RADIUS + 1000 * UPPER[i][0]), 2);
        return -1000 * gravity * UPPER[i][2] / UPPER[i][1];
    }

    /** d ln ρ/dz at a printed value, from the parabola through its neighbours (1/km). */
    private static double densitySlope(int i) {
        int m = Math.max(1, Math.min(UPPER.length - 2, i));
        double before = (lnUpper(m, 2) - lnUpper(m - 1, 2)) / (UPPER[m][0] - UPPER[m - 1][0]);
        double after = (lnUpper(m + 1, 2) - lnUpper(m, 2)) / (UPPER[m + 1][0] - UPPER[m][0]);
        double second = (after - before) / (UPPER[m + 1][0] - UPPER[m - 1][0]);
        return before + second * (2 * UPPER[i][0] - UPPER[m][0] - UPPER[m - 1][0]);
    }

    private static double hermite(double t, double width, double a, double b, double slopeA, double slopeB) {
        double u = 1 - t;
        return u * u * ((1 + 2 * t) * a + t * width * slopeA) + t * t * ((1 + 2 * u) * b - u * width * slopeB);
    }

    private static double upperSoundSpeed(double[] row) {
        return Math.sqrt(1.4 * row[1] / row[2]);
    }

    /** Kinetic temperature above 86 km (K), the standard's equations 25 to 31. */
    private static double upperTemperature(double altitude) {
        double km = altitude / 1000;
        if (km <= 91) {
            return 186.8673;
        }
        if (km <= 110) {
            double x = (km - 91) / 19.9429;
            return 263.1905 - 76.3232 * Math.sqrt(1 - x * x);
        }
        if (km <= 120) {
            return 240 + 12 * (km - 110);
        }
        double radius = EARTH_RADIUS / 1000;
        double xi = (km - 120) * (radius + 120) / (radius + km);
        return 1000 - 640 * Math.exp(-0.01875 * xi);
    }
}
