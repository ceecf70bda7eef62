package dev.penstock.fluids.table;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidSamples.Property;
import dev.penstock.fluids.state.SaturationSamples;
import dev.penstock.numerics.EvenCurve;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** Asks a fluid's model for all that its {@link FluidTable} holds, and writes it down as numbers. */
final class TableBuilder {

    private static final double LOWEST_PRESSURE = 5e4;
    private static final double HIGHEST_PRESSURE = 1e8;
    private static final int SATURATION_NODES = 257;
    private static final int BORDER_NODES = 65;
    private static final double INSIDE = 1e-4;
    private static final int HALVINGS = 30;
    private static final double COLD_MARGIN = 1e-3;
    private static final double PRESSURE_MARGIN = 1.02;

    /** Pressures over the critical one beside which the full model takes longest, and no polynomial follows it (-). */
    private static final double LEAST_ROUGH = 0.9;

    private static final double MOST_ROUGH = 1.15;

    /** Places of the states by which a stored table is recognised, as shares of a region's width and height. */
    private static final double[][] MARKS = {{0.3, 0.2}, {0.55, 0.6}, {0.8, 0.4}};

    private final Fluid fluid;
    private final NumberList out = new NumberList();
    private final NumberList marks = new NumberList();

    TableBuilder(Fluid fluid) {
        this.fluid = fluid;
    }

    /** @return the table as numbers, as {@link FluidTable} reads them */
    double[] build() {
        double highest = Math.min(HIGHEST_PRESSURE, fluid.range().maximumPressure());
        double critical = fluid.criticalPressure().orElse(0);
        Optional<SaturationSamples> any = critical > LOWEST_PRESSURE && critical < highest
                ? fluid.saturation(new double[] {0.5 * critical})
                : Optional.empty();
        try (FluidCursor cursor = fluid.cursor()) {
            if (any.isPresent()) {
                withVapour(cursor, critical, highest);
            } else {
                double lowest = lowest();
                out.addAll(lowest, highest, lowest, 0);
                out.add(1);
                double width = Math.log(highest / lowest);
                region(
                        cursor,
                        x -> lowest * Math.exp(x),
                        0,
                        width,
                        null,
                        lid(hottest(cursor, highest), width),
                        p -> false);
            }
            out.addList(marks.toArray());
        }
        return out.toArray();
    }

    private void withVapour(FluidCursor cursor, double critical, double highest) {
        double lowest = lowest();
        double widest = Math.sqrt(Math.log(critical / lowest));
        DoubleUnaryOperator below = u -> critical * Math.exp(-u * u);
        double[] pressures = IntStream.range(0, SATURATION_NODES)
                .mapToDouble(i -> below.applyAsDouble(widest * i / (SATURATION_NODES - 1)))
                .toArray();
        SaturationSamples line = fluid.saturation(pressures).orElseThrow();
        mendTop(line);
        out.addAll(lowest, highest, critical, widest);
        out.addList(line.temperature());
        EvenCurve liquid = new EvenCurve(0, widest, line.liquidEnthalpy());
        EvenCurve vapour = new EvenCurve(0, widest, line.vapourEnthalpy());
        out.add(3);
        DoublePredicate beside = p -> p > LEAST_ROUGH * critical && p < MOST_ROUGH * critical;
        region(cursor, below, 0, widest, null, liquid, beside);
        region(cursor, below, 0, widest, vapour, null, beside);
        region(cursor, x -> critical * Math.exp(x), 0, Math.log(highest / critical), null, null, beside);
    }

    /**
     * A constant: where the hottest liquid begins to boil, the curve through it would have a kink, which no polynomial follows.
     * What lies beyond boiling has no state and is cut off.
     */
    private static EvenCurve lid(double enthalpy, double width) {
        double[] level = new double[4];
        Arrays.fill(level, enthalpy);
        return new EvenCurve(0, width, level);
    }

    /** Above the vapour pressure at the cold end, so that every pressure of the table has a liquid. */
    private double lowest() {
        double coldest = fluid.range().minimumTemperature() * (1 + COLD_MARGIN);
        return Math.max(LOWEST_PRESSURE, PRESSURE_MARGIN * fluid.vapourPressure(coldest));
    }

    /**
     * Beside the critical point the model gives no saturated states, or one state for both phases. There the two branches,
     * which are one smooth curve over the signed coordinate, are carried through by the polynomial of nodes on both sides, and
     * temperature by its own, through the critical point.
     */
    private void mendTop(SaturationSamples line) {
        double[] h1 = line.liquidEnthalpy();
        double[] h2 = line.vapourEnthalpy();
        double[] t = line.temperature();
        int m = SATURATION_NODES / 4;
        while (m > 1 && h2[m - 1] > h1[m - 1] && t[m - 1] > t[m]) {
            m--;
        }
        int apart = Math.max(1, m / 2);
        int n = m + apart;
        int o = n + apart;
        double[] places = {-o, -n, -m, m, n, o};
        double[] branches = {h1[o], h1[n], h1[m], h2[m], h2[n], h2[o]};
        double[] hot = {-o, -n, -m, 0, m, n, o};
        double[] temperatures = {t[o], t[n], t[m], fluid.criticalTemperature().orElseThrow(), t[m], t[n], t[o]};
        for (int i = 0; i < m; i++) {
            h1[i] = lagrange(places, branches, -i);
            h2[i] = lagrange(places, branches, i);
            t[i] = lagrange(hot, temperatures, i);
        }
    }

    private static double lagrange(double[] places, double[] values, double at) {
        double sum = 0;
        for (int i = 0; i < places.length; i++) {
            double weight = values[i];
            for (int j = 0; j < places.length; j++) {
                weight *= j == i ? 1 : (at - places[j]) / (places[i] - places[j]);
            }
            sum += weight;
        }
        return sum;
    }

    private void region(
            FluidCursor cursor,
            DoubleUnaryOperator pressure,
            double low,
            double high,
            EvenCurve floor,
            EvenCurve roof,
            DoublePredicate rough) {
        double[] floors = new double[BORDER_NODES];
        double[] roofs = new double[BORDER_NODES];
        for (int i = 0; i < BORDER_NODES; i++) {
            double p = pressure.applyAsDouble(low + (high - low) * i / (BORDER_NODES - 1));
            floors[i] = floor == null ? coldest(cursor, p) : 0;
            roofs[i] = roof == null ? hottest(cursor, p) : 0;
        }
        EvenCurve bottom = floor == null ? new EvenCurve(low, high, floors) : floor;
        EvenCurve top = roof == null ? new EvenCurve(low, high, roofs) : roof;
        double hot = fluid.range().maximumTemperature();
        double warming = (roof == null ? hot : fluid.criticalTemperature().orElse(hot))
                / fluid.range().minimumTemperature();
        new RegionBuilder(cursor, pressure, low, high, bottom, top, warming, rough).write(out);
        for (double[] mark : MARKS) {
            double x = low + (high - low) * mark[0];
            mark(cursor, pressure.applyAsDouble(x), bottom.at(x) + mark[1] * (top.at(x) - bottom.at(x)));
        }
    }

    /** Writes down what the model says of a state, if it says anything. */
    private void mark(FluidCursor cursor, double p, double h) {
        double[] values = new double[Property.values().length];
        try {
            cursor.setPressureEnthalpy(p, h);
            read(cursor, values);
        } catch (PropertyFailure e) {
            return;
        }
        marks.addAll(p, h);
        marks.addAll(values);
    }

    static void read(FluidCursor cursor, double[] values) {
        for (Property property : Property.values()) {
            values[property.ordinal()] = switch (property) {
                case TEMPERATURE -> cursor.temperature();
                case DENSITY -> cursor.density();
                case ENTROPY -> cursor.entropy();
                case ISOBARIC_HEAT_CAPACITY -> cursor.isobaricHeatCapacity();
                case SOUND_SPEED -> cursor.soundSpeed();
                case VISCOSITY -> cursor.viscosity();
                case CONDUCTIVITY -> cursor.conductivity();
            };
        }
    }

    /** Enthalpy at the lowest temperature that the model has at a pressure: the end of its range, or freezing. */
    private double coldest(FluidCursor cursor, double p) {
        double low = fluid.range().minimumTemperature() * (1 + INSIDE);
        double step = INSIDE * low;
        double high = low;
        while (!has(cursor, p, high)) {
            low = high;
            high += step;
            step *= 2;
            if (high > fluid.range().maximumTemperature()) {
                throw new PropertyFailure(
                        fluid.id(), "p = " + p + " Pa", "no temperature of its model's range has a state");
            }
        }
        for (int i = 0; i < HALVINGS && high > low; i++) {
            double middle = 0.5 * (low + high);
            if (has(cursor, p, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return enthalpy(cursor, p, high * (1 + INSIDE));
    }

    /** Enthalpy at the highest temperature that the model has at a pressure: the end of its range, or boiling. */
    private double hottest(FluidCursor cursor, double p) {
        double high = fluid.range().maximumTemperature() * (1 - 1e-6);
        double low = fluid.range().minimumTemperature() * (1 + INSIDE);
        if (!has(cursor, p, high)) {
            for (int i = 0; i < HALVINGS; i++) {
                double middle = 0.5 * (low + high);
                if (has(cursor, p, middle)) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            high = low;
        }
        return enthalpy(cursor, p, high);
    }

    private static boolean has(FluidCursor cursor, double p, double t) {
        try {
            cursor.setPressureTemperature(p, t);
            return true;
        } catch (PropertyFailure e) {
            return false;
        }
    }

    private static double enthalpy(FluidCursor cursor, double p, double t) {
        cursor.setPressureTemperature(p, t);
        return cursor.enthalpy();
    }
}
