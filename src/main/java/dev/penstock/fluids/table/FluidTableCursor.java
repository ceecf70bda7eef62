package dev.penstock.fluids.table;

import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidSamples.Property;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.Phase;

/** A movable state on a {@link FluidTable}, with the full model behind it. Not thread-safe. */
final class FluidTableCursor implements FluidCursor {

    private static final int ORDER = PatchBasis.ORDER;
    private static final int SIZE = PatchBasis.SIZE;
    private static final int MAXIMUM_STEPS = 60;
    private static final double TOLERANCE = 1e-13;

    /** A step of Newton's method whose square no longer counts, over the height of the patch (-). */
    private static final double LAST_STEP = 1e-7;

    private final FluidTable table;
    /** Opened when the table is left for the first time. */
    private FluidCursor full;

    private final double[] coefficients = new double[FluidTable.PATCH];
    private final double[] powers = new double[ORDER];
    private final double[] heightPowers = new double[ORDER];
    private final double[] local = new double[3];
    private final double[] line = new double[ORDER];
    private TableRegion patchRegion;
    private int patch = TableRegion.NOT_SERVED;
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
    public long effort() {
        return full == null ? 0 : full.effort();
    }

    @Override
    public void setPressureEnthalpy(double p, double h) {
        onTable = false;
        if (table.covers(p)) {
            double x = table.coordinate(p);
            if (!table.boils(p)) {
                onTable = enter(table.single(), x, h);
            } else {
                onTable = h <= table.liquid().top(x)
                        ? enter(table.liquid(), x, h)
                        : h >= table.vapour().bottom(x) && enter(table.vapour(), x, h);
            }
        }
        if (onTable) {
            pressure = p;
            enthalpy = h;
            return;
        }
        full().setPressureEnthalpy(p, h);
        leftTable();
    }

    @Override
    public void setPressureTemperature(double p, double t) {
        onTable = false;
        if (table.covers(p)) {
            double x = table.coordinate(p);
            TableRegion region = table.single();
            if (table.boils(p)) {
                region = t < table.boilingTemperature(x) ? table.liquid() : table.vapour();
            }
            onTable = find(region, x, Property.TEMPERATURE, t);
        }
        if (onTable) {
            pressure = p;
            return;
        }
        full().setPressureTemperature(p, t);
        leftTable();
    }

    /** {@inheritDoc} Below the critical pressure the full model answers: the table does not know the entropy of boiling. */
    @Override
    public void setPressureEntropy(double p, double s) {
        onTable = table.covers(p) && !table.boils(p) && find(table.single(), table.coordinate(p), Property.ENTROPY, s);
        if (onTable) {
            pressure = p;
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
        fullEvaluations++;
        pressure = full.pressure();
        enthalpy = full.enthalpy();
    }

    private boolean enter(TableRegion region, double x, double h) {
        double bottom = region.bottom(x);
        return place(region, region.across(x), (h - bottom) / (region.top(x) - bottom));
    }

    /** Stands in the patch at a place of a region; says no if none serves there. */
    private boolean place(TableRegion region, double across, double up) {
        int found = region.find(across, up, local);
        if (found == TableRegion.NOT_SERVED) {
            return false;
        }
        if (found != patch || region != patchRegion) {
            region.read(found, coefficients);
            patch = found;
            patchRegion = region;
        }
        fill(powers, local[0]);
        fill(heightPowers, local[1]);
        return true;
    }

    private static void fill(double[] to, double x) {
        to[0] = 1;
        for (int i = 1; i < ORDER; i++) {
            to[i] = to[i - 1] * x;
        }
    }

    /**
     * Enthalpy at which a quantity that rises with it has a value, by Newton's method inside a bracket, from a place that the
     * region gives, so that nothing depends on where the cursor stood. Inside a patch at one pressure it is a polynomial of one
     * variable; a step so short that the square of the next one is lost is the last.
     */
    private boolean find(TableRegion region, double x, Property property, double wanted) {
        double across = region.across(x);
        double low = 0;
        double high = 1;
        double up = property == Property.TEMPERATURE ? region.start(across, wanted) : 0.5;
        double served = Double.NaN;
        boolean inside = false;
        for (int step = 0; step < MAXIMUM_STEPS; step++) {
            if (!inside) {
                if (!place(region, across, up)) {
                    up = 0.5 * (up + served);
                    continue;
                }
                cut(property);
            }
            served = up;
            double missing = wanted - value();
            double move = missing * local[2] / (2 * slope());
            if (missing > 0) {
                low = up;
            } else {
                high = up;
            }
            double next = up + move;
            double localNext = local[1] + 2 * move / local[2];
            inside = next > low && next < high && Math.abs(localNext) < 1;
            boolean last = inside && Math.abs(move) <= LAST_STEP * local[2];
            if (last || Math.abs(move) <= TOLERANCE || high - low <= TOLERANCE) {
                up = last ? next : up;
                if (last) {
                    fill(heightPowers, localNext);
                }
                double bottom = region.bottom(x);
                enthalpy = bottom + up * (region.top(x) - bottom);
                return last || low > 0 && high < 1 || Math.abs(move) <= TOLERANCE; // else it lies beyond a border
            }
            up = next > low && next < high ? next : 0.5 * (low + high);
            if (inside) {
                local[1] = localNext;
                fill(heightPowers, localNext);
            }
        }
        return false;
    }

    /** A property of the patch over its height at the pressure, as a polynomial. */
    private void cut(Property property) {
        double[] c = coefficients;
        double[] x = powers;
        double x1 = x[1];
        double x2 = x[2];
        double x3 = x[3];
        double x4 = x[4];
        double x5 = x[5];
        for (int j = 0, at = property.ordinal() * SIZE; j < ORDER; j++, at++) {
            line[j] = x5 * c[at + 5 * ORDER]
                    + x4 * c[at + 4 * ORDER]
                    + x3 * c[at + 3 * ORDER]
                    + x2 * c[at + 2 * ORDER]
                    + x1 * c[at + ORDER]
                    + c[at];
        }
    }

    private double value() {
        double sum = line[0];
        for (int j = 1; j < ORDER; j++) {
            sum += line[j] * heightPowers[j];
        }
        return sum;
    }

    /** Change of the cut property with the place in the patch's height. */
    private double slope() {
        double sum = 0;
        for (int j = ORDER - 1; j > 0; j--) {
            sum += j * line[j] * heightPowers[j - 1];
        }
        return sum;
    }

    private double read(Property property) {
        double[] c = coefficients;
        double[] x = powers;
        double[] y = heightPowers;
        double y1 = y[1];
        double y2 = y[2];
        double y3 = y[3];
        double y4 = y[4];
        double y5 = y[5];
        double sum = 0;
        for (int i = ORDER - 1, row = property.ordinal() * SIZE + i * ORDER; i >= 0; i--, row -= ORDER) {
            double inner =
                    c[row] + c[row + 1] * y1 + c[row + 2] * y2 + c[row + 3] * y3 + c[row + 4] * y4 + c[row + 5] * y5;
            sum += x[i] * inner;
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

    /** {@inheritDoc} A patch lies in one phase. */
    @Override
    public Phase phase() {
        if (!onTable) {
            return full.phase();
        }
        if (patchRegion != table.single()) {
            return patchRegion == table.liquid() ? Phase.LIQUID : Phase.GAS;
        }
        boolean warm = temperature() > table.fluid().criticalTemperature().orElse(Double.POSITIVE_INFINITY);
        return warm ? Phase.SUPERCRITICAL : Phase.LIQUID;
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
