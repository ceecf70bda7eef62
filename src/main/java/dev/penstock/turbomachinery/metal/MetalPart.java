package dev.penstock.turbomachinery.metal;

import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import java.util.Arrays;
import java.util.Locale;

/** Part that hot gas or a warm propellant touches, with what a file says of its metal. */
public enum MetalPart {
    BURNER("Walls of preburners and generators", " wall"),
    TURBINE("Wheels and nozzles of turbines", " wheel"),
    HOUSING("Housings of turbines", " housing"),
    SEAL("Seals of turbines", " seal"),
    DUCT("Ducts and valves", ""),
    INJECTOR("Injectors of hot gas or warm propellant", "");

    private static final String FILES = ", an alloy family in fluids/metals";

    /** What bears oxygen at any pressure tried. */
    private static final Usual<String> IN_OXYGEN = Usual.common("nickel-burn-resistant")
            .because("bare superalloys burn on above some 7 MPa of oxygen, these at none tried");

    private static final Usual<String> IN_HYDROGEN =
            Usual.common("nickel-superalloy-plated").because("hydrogen embrittles bare superalloys");
    private static final Usual<String> IN_FUEL_GAS =
            Usual.common("nickel-superalloy").because("hot, and little hydrogen");

    private final String title;
    private final String suffix;

    MetalPart(String title, String suffix) {
        this.title = title;
        this.suffix = suffix;
    }

    /** @return the input that names its family */
    public Input<String> input() {
        return Input.text(name().toLowerCase(Locale.ROOT), title + FILES)
                .follows("by what it meets: " + IN_OXYGEN.value() + " in oxygen, " + IN_HYDROGEN.value()
                        + " where the fuel is hydrogen, else " + IN_FUEL_GAS.value() + ", " + Usual.COMMON);
    }

    /**
     * @param oxygen whether it meets the oxidizer's side
     * @param hydrogen whether the fuel is hydrogen
     * @return its family where a file is silent
     */
    public static Usual<String> usual(boolean oxygen, boolean hydrogen) {
        return oxygen ? IN_OXYGEN : hydrogen ? IN_HYDROGEN : IN_FUEL_GAS;
    }

    /**
     * @param component name of the component that it belongs to
     * @return its name for people
     */
    public String of(String component) {
        return component + suffix;
    }

    /**
     * @param key key of the table
     * @param meets what its parts meet
     * @return the family of every part
     */
    public static InputGroup group(String key, String meets) {
        return InputGroup.table(
                key,
                "Metals of the parts that meet " + meets,
                Arrays.stream(values()).map(MetalPart::input).toArray(Input<?>[]::new));
    }
}
