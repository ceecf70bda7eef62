package dev.penstock.fluids.table;

import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidSamples.Property;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.Phase;

/** A movable state on a {@link FluidTable}, with the full model behind it. Not thread-safe. */
final class FluidTableCursor implements FluidCursor {

    private static final int STENCIL = FluidTable.STENCIL;
    private static final int MAXIMUM_STEPS = 12;
    private static final double POSITION_TOLERANCE = 1e-11;

    private final FluidTable table;
    /** Opened when the table is left for the first time. */
    private FluidCursor full;

    private final double[] pressureWeights = new double[STENCIL];
    private final double[] enthalpyWeights = new double[STENCIL];
    private final double[] slopeWeights = new double[STENCIL];
    private int corner;
    private boolean onTable;
    private double pressure;
    private double enthalpy;
    private long fullEvaluations;

    FluidTableCursor(FluidTable table) {
        this.table = table;
    }

    /** @return how often the full model had to be asked */
    long fullEvaluations() {
        return fullEvaluations;
    }

    @Override
    public void setPressureEnthalpy(double p, double h) {
        double x = table.pressurePosition(p);
        double y = table.enthalpyPosition(h);
        if (enter(x, y)) {
            pressure = p;
            enthalpy = h;
            return;
        }
        full().setPressureEnthalpy(p, h);
        leftTable();
    }

    @Override
    public void setPressureTemperature(double p, double t) {
        if (find(p, Property.TEMPERATURE, t)) {
            return;
        }
        full().setPressureTemperature(p, t);
        leftTable();
    }

    @Override
    public void setPressureEntropy(double p, double s) {
        if (find(p, Property.ENTROPY, s)) {
            return;
        }
        full().setPressureEntropy(p, s);
        leftTable();
    }

    private FluidCursor full() {
        if (full == null) {
            full = table.fluid().cursor();
        }
        return full;
    }

    private void leftTable() {
        onTable = false;
        fullEvaluations++;
        pressure = full.pressure();
        enthalpy = full.enthalpy();
    }

    private boolean enter(double x, double y) {
        int i = (int) Math.floor(x);
        int j = (int) Math.floor(y);
        onTable = i >= 0 && j >= 0 && i < table.pressures() - 1 && j < table.enthalpies() - 1 && table.usable(i, j);
        if (onTable) {
            int i0 = FluidTable.start(i, table.pressures());
            int j0 = FluidTable.start(j, table.enthalpies());
            lagrange(x - i0, pressureWeights);
            lagrange(y - j0, enthalpyWeights);
            corner = i0 * table.enthalpies() + j0;
        }
        return onTable;
    }

    /**
     * Enthalpy at which a quantity that rises with it has a value: the interval by bisection over the nodes, the place in
     * it by Newton's method on the interpolating cubic.
     */
    private boolean find(double p, Property property, double wanted) {
        double x = table.pressurePosition(p);
        int i = (int) Math.floor(x);
        if (!(i >= 0 && i < table.pressures() - 1)) {
            return false;
        }
        double[] f = table.column(property);
        int row = FluidTable.start(i, table.pressures()) * table.enthalpies();
        lagrange(x - FluidTable.start(i, table.pressures()), pressureWeights);
        int low = 0;
        int high = table.enthalpies() - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (along(f, row + middle) <= wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        if (!table.usable(i, low)) {
            return false;
        }
        int j0 = FluidTable.start(low, table.enthalpies());
        double y = low - j0 + 0.5;
        for (int step = 0; step < MAXIMUM_STEPS; step++) {
            lagrange(y, enthalpyWeights);
            lagrangeSlope(y, slopeWeights);
            double value = 0;
            double slope = 0;
            for (int k = 0; k < STENCIL; k++) {
                double node = along(f, row + j0 + k);
                value += enthalpyWeights[k] * node;
                slope += slopeWeights[k] * node;
            }
            double move = (wanted - value) / slope;
            y += move;
            if (Math.abs(move) < POSITION_TOLERANCE * table.enthalpies()) {
                double h = table.enthalpyAt(y + j0);
                if (!enter(x, y + j0)) {
                    return false;
                }
                pressure = p;
                enthalpy = h;
                return true;
            }
        }
        return false;
    }

    /** The quantity at this pressure on one column of nodes. */
    private double along(double[] f, int node) {
        int n = table.enthalpies();
        return pressureWeights[0] * f[node]
                + pressureWeights[1] * f[node + n]
                + pressureWeights[2] * f[node + 2 * n]
                + pressureWeights[3] * f[node + 3 * n];
    }

    private static void lagrange(double x, double[] w) {
        double x1 = x - 1;
        double x2 = x - 2;
        double x3 = x - 3;
        w[0] = -x1 * x2 * x3 / 6;
        w[1] = x * x2 * x3 / 2;
        w[2] = -x * x1 * x3 / 2;
        w[3] = x * x1 * x2 / 6;
    }

    private static void lagrangeSlope(double x, double[] w) {
        double x1 = x - 1;
        double x2 = x - 2;
        double x3 = x - 3;
        w[0] = -(x2 * x3 + x1 * x3 + x1 * x2) / 6;
        w[1] = (x2 * x3 + x * x3 + x * x2) / 2;
        w[2] = -(x1 * x3 + x * x3 + x * x1) / 2;
        w[3] = (x1 * x2 + x * x2 + x * x1) / 6;
    }

    private double read(Property property) {
        double[] f = table.column(property);
        double sum = 0;
        for (int k = 0; k < STENCIL; k++) {
            sum += enthalpyWeights[k] * along(f, corner + k);
        }
        return sum;
    }

    @Override
    public double pressure() {
        return pressure;
    }

    @Override
    public double enthalpy() {
        return enthalpy;
    }

    @Override
    public double temperature() {
        return onTable ? read(Property.TEMPERATURE) : full.temperature();
    }

    @Override
    public double density() {
        return onTable ? read(Property.DENSITY) : full.density();
    }

    @Override
    public double entropy() {
        return onTable ? read(Property.ENTROPY) : full.entropy();
    }

    @Override
    public double isobaricHeatCapacity() {
        return onTable ? read(Property.ISOBARIC_HEAT_CAPACITY) : full.isobaricHeatCapacity();
    }

    @Override
    public double soundSpeed() {
        return onTable ? read(Property.SOUND_SPEED) : full.soundSpeed();
    }

    @Override
    public double viscosity() {
        return onTable ? read(Property.VISCOSITY) : full.viscosity();
    }

    @Override
    public double conductivity() {
        return onTable ? read(Property.CONDUCTIVITY) : full.conductivity();
    }

    /** {@inheritDoc} A cell of the table never spans two phases, so temperature and pressure decide. */
    @Override
    public Phase phase() {
        if (!onTable) {
            return full.phase();
        }
        Fluid fluid = table.fluid();
        boolean warm = temperature() > fluid.criticalTemperature().orElse(Double.POSITIVE_INFINITY);
        boolean dense = pressure > fluid.criticalPressure().orElse(0);
        if (dense) {
            return warm ? Phase.SUPERCRITICAL : Phase.LIQUID;
        }
        return !warm && pressure > fluid.vapourPressure(temperature()) ? Phase.LIQUID : Phase.GAS;
    }

    /** {@inheritDoc} The record comes from the full model. */
    @Override
    public FluidState snapshot() {
        if (onTable) {
            full().setPressureEnthalpy(pressure, enthalpy);
        }
        return full.snapshot();
    }

    @Override
    public void close() {
        if (full != null) {
            full.close();
        }
    }
}
