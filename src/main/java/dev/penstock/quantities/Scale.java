package dev.penstock.quantities;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The unit of an axis or a number, with the way into it from SI. All units that are read start at zero, so one factor is
 * enough. Immutable.
 *
 * @param unit unit, as written
 * @param size one of it, in SI
 */
public record Scale(String unit, double size) {

    private static final Map<String, Scale> KNOWN = new ConcurrentHashMap<>();

    /**
     * @param metric unit in which engineers of metric countries read the quantity, for example "bar"
     * @return the unit in which the reader of this thread reads it
     * @throws IllegalArgumentException if it is no unit of a known dimension (a defect in the caller)
     */
    public static Scale of(String metric) {
        return exact(UnitSystem.chosen().unit(metric));
    }

    /**
     * @param unit a unit
     * @return that unit, whatever the reader has chosen
     * @throws IllegalArgumentException if it is no unit of a known dimension (a defect in the caller)
     */
    public static Scale exact(String unit) {
        return KNOWN.computeIfAbsent(unit, Scale::made);
    }

    private static Scale made(String unit) {
        return Arrays.stream(Dimension.values())
                .filter(d -> d != Dimension.TEMPERATURE_DIFFERENCE && !unit.isEmpty())
                .flatMap(d -> Units.parse("1 " + unit, d).stream())
                .findFirst()
                .map(size -> new Scale(unit, size))
                .orElseThrow(() -> new IllegalArgumentException(unit + " is no unit that a quantity is read in"));
    }

    /**
     * @param si value in SI
     * @return the number in this unit
     */
    public double of(double si) {
        return si / size;
    }

    /**
     * @param name name of a quantity
     * @return it with the unit, for an axis
     */
    public String label(String name) {
        return unit.isEmpty() ? name : name + " (" + unit + ")";
    }
}
