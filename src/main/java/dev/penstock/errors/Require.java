package dev.penstock.errors;

import java.util.function.Supplier;

/** Guards for record constructors: a state with an impossible or non-finite number cannot exist. */
public final class Require {

    private Require() {}

    /**
     * @param model record or model that refuses
     * @param quantity quantity with its SI unit
     * @param value value to check
     * @return the value
     * @throws OutsideValidity if the value is NaN or infinite
     */
    public static double finite(String model, String quantity, double value) {
        if (!Double.isFinite(value)) {
            throw new OutsideValidity(model, quantity, value, "a finite number");
        }
        return value;
    }

    /**
     * @param model record or model that refuses
     * @param quantity quantity with its SI unit
     * @param value value to check
     * @return the value
     * @throws OutsideValidity if the value is not a finite number above zero
     */
    public static double positive(String model, String quantity, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new OutsideValidity(model, quantity, value, "above 0 and finite");
        }
        return value;
    }

    /**
     * @param model record or model that refuses
     * @param quantity quantity with its SI unit
     * @param value value to check
     * @return the value
     * @throws OutsideValidity if the value is not a finite number of zero or more
     */
    public static double notNegative(String model, String quantity, double value) {
        return notNegative(model, () -> quantity, value);
    }

    /** As the other, for a loop: the quantity is put into words only where it is refused. */
    public static double notNegative(String model, Supplier<String> quantity, double value) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new OutsideValidity(model, quantity.get(), value, "0 or more and finite");
        }
        return value;
    }

    /**
     * @param model record or model that refuses
     * @param quantity quantity with its SI unit
     * @param value value to check
     * @param low lowest allowed, same unit
     * @param high highest allowed, same unit
     * @return the value
     * @throws OutsideValidity if the value is NaN or outside the closed range
     */
    public static double within(String model, String quantity, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new OutsideValidity(model, quantity, value, low + " to " + high);
        }
        return value;
    }
}
