package dev.penstock.fluids.table;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidSamples.Property;
import dev.penstock.numerics.EvenCurve;
import dev.penstock.provenance.ModelCard;
import java.nio.DoubleBuffer;
import java.util.List;
import java.util.Optional;

/**
 * Properties of a fluid over the whole range of its model between 0.05 MPa (or where it still boils) and 100 MPa, by pressure and
 * enthalpy: liquid, vapour, and what lies above the critical pressure, each a rectangle over pressure and the share of the
 * enthalpy between its borders ({@link TableRegion}), so that the boiling line is an edge that no patch crosses. Where a patch is not
 * good enough, between the phases, and outside, {@link #cursor()} asks the full model; beside the critical point, where that takes
 * longest, rough patches serve. A table is made of its fluid alone;
 * immutable and safe to share, a cursor is not.
 */
public final class FluidTable {

    public static final ModelCard CARD = new ModelCard(
            "fluids.table",
            "Polynomials of fluid properties in pressure and enthalpy",
            "f(p, h) = sum over i, j < 6 of c_ij x^i y^j in each patch; above the critical pressure x is linear in ln p, below"
                    + " it in (ln(p_c / p))^½; y is linear in the share of h between the borders of its phase at p",
            "one phase, 0.05 to 100 MPa, the range of the fluid's model; the full model elsewhere",
            "against the full model, at worst: temperature, density, entropy and sound speed 0.01 %, heat capacity 0.1 %,"
                    + " viscosity 0.2 %, conductivity 0.6 % where its published correlation jumps; on most states below 1e-5;"
                    + " between 0.9 and 1.15 of the critical pressure within 2 % of the critical temperature 0.01 % in temperature, 5 % in density,"
                    + " 10 % in sound speed and viscosity, a factor of 6 in heat capacity and conductivity, whose peaks there are"
                    + " levelled; helium at those pressures 0.1 % in temperature",
            List.of("common practice, no source"));

    /** Raised whenever the numbers of a table mean something else. */
    static final int FORMAT = 6;

    /** Numbers of a patch. */
    static final int PATCH = Property.values().length * PatchBasis.SIZE;

    /** By how much the model may miss what a stored table has of it, before the table is taken for another model's. */
    private static final double SAME = 1e-7;

    private static final int WHOLE = 0;
    private static final int LIQUID = 0;
    private static final int VAPOUR = 1;
    private static final int ABOVE = 2;

    private final Fluid fluid;
    private final double lowest;
    private final double highest;
    private final double reference;
    private final EvenCurve boiling;
    private final TableRegion[] regions;
    private final double[] marks;

    /** Read along the borders when it is first wanted; whoever reads it reads the same. */
    private volatile BoilingLine line;

    /**
     * @param fluid fluid
     * @param numbers what {@link TableBuilder} wrote of it; kept
     */
    FluidTable(Fluid fluid, DoubleBuffer numbers) {
        this.fluid = fluid;
        DoubleBuffer in = numbers.duplicate();
        lowest = in.get();
        highest = in.get();
        reference = in.get();
        double widest = in.get();
        boiling = widest > 0 ? new EvenCurve(0, widest, TableRegion.list(in)) : null;
        regions = new TableRegion[(int) in.get()];
        for (int i = 0; i < regions.length; i++) {
            regions[i] = new TableRegion(in);
        }
        marks = TableRegion.list(in);
    }

    /** Whether the fluid's model still says of some states what it said when the table was made. */
    boolean isOfItsModel() {
        int length = Property.values().length;
        double[] now = new double[length];
        try (FluidCursor cursor = fluid.cursor()) {
            for (int at = 0; at < marks.length; at += 2 + length) {
                cursor.setPressureEnthalpy(marks[at], marks[at + 1]);
                TableBuilder.read(cursor, now);
                for (int k = 0; k < length; k++) {
                    double then = marks[at + 2 + k];
                    if (!(Math.abs(now[k] - then) <= SAME * Math.abs(then))) {
                        return false;
                    }
                }
            }
            return true;
        } catch (PropertyFailure e) {
            return false;
        }
    }

    /** @return the fluid */
    public Fluid fluid() {
        return fluid;
    }

    /** @return a new cursor: the table where it holds, the full model elsewhere; the caller closes it */
    public FluidCursor cursor() {
        return new FluidTableCursor(this);
    }

    /** @return both sides of the boiling line as the table has them; empty if the model has no vapour */
    public Optional<BoilingLine> boilingLine() {
        if (boiling != null && line == null) {
            line = BoilingLine.of(this, reference, boiling);
        }
        return Optional.ofNullable(line);
    }

    boolean covers(double pressure) {
        return pressure >= lowest && pressure <= highest;
    }

    boolean boils(double pressure) {
        return boiling != null && pressure < reference;
    }

    /** The coordinate of a pressure, in the regions that hold it. */
    double coordinate(double pressure) {
        return boils(pressure) ? Math.sqrt(Math.log(reference / pressure)) : Math.log(pressure / reference);
    }

    /** Boiling temperature (K) at the coordinate of a pressure below the critical one. */
    double boilingTemperature(double x) {
        return boiling.at(x);
    }

    TableRegion liquid() {
        return regions[LIQUID];
    }

    TableRegion vapour() {
        return regions[VAPOUR];
    }

    /** Above the critical pressure, or all of a fluid that is known as a liquid only. */
    TableRegion single() {
        return regions[boiling == null ? WHOLE : ABOVE];
    }
}
