package dev.penstock.turbomachinery.pump;

import dev.penstock.fluids.Propellant;
import dev.penstock.provenance.Spread;
import dev.penstock.provenance.UncertainInput;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Usual values and limits of pumps by propellant, with their spreads. Nothing here is fitted to one engine; the efficiency
 * factor is the general distance between industrial and rocket pumps (decision 0050).
 */
public final class PumpDefaults {

    private static final String COMMON = "common practice, no source";

    private PumpDefaults() {}

    /**
     * @param propellant what is pumped
     * @return design with nothing fixed and the usual limits
     */
    public static PumpDesign of(Propellant propellant) {
        List<UncertainInput> inputs = uncertain(propellant);
        return new PumpDesign(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                PumpType.AUTOMATIC,
                OptionalDouble.empty(),
                mode(inputs, "tip_speed_limit"),
                inputs.get(0).source(),
                mode(inputs, "inducer_tip_speed_limit"),
                mode(inputs, "inducer_flow_coefficient"),
                0.3,
                mode(inputs, "suppression_factor"),
                mode(inputs, "suction_margin"),
                mode(inputs, "specific_speed_limit"),
                mode(inputs, "bearing_speed_limit"),
                mode(inputs, "shaft_stress"),
                smallestShaft(false).spread().mode(),
                mode(inputs, "efficiency_factor"));
    }

    /**
     * @param propellant what is pumped
     * @return every efficiency and limit of its pump that is only known within bounds, by its key in the concept file
     */
    public static List<UncertainInput> uncertain(Propellant propellant) {
        boolean hydrogen = LightLiquid.is(propellant.loadingDensity());
        boolean cryogenic = propellant.storageTemperature() < 150;
        return List.of(
                new UncertainInput(
                        "tip_speed_limit",
                        "m/s",
                        ImpellerMaterial.usual(propellant).tipSpeed(propellant),
                        "nasa-sp-8109"),
                new UncertainInput(
                        "inducer_tip_speed_limit",
                        "m/s",
                        hydrogen ? new Spread(300, 340, 400) : new Spread(130, 170, 200),
                        "nasa-sp-8052"),
                new UncertainInput("inducer_flow_coefficient", "-", new Spread(0.07, 0.09, 0.12), "nasa-sp-8052"),
                new UncertainInput(
                        "suppression_factor",
                        "-",
                        cryogenic ? new Spread(0, 1, 2) : Spread.exactly(0),
                        "nasa-tn-d-5292"),
                // nominal over required: inlet pressure falls and hydrogen warms towards the end of a burn
                new UncertainInput(
                        "suction_margin",
                        "-",
                        hydrogen ? new Spread(1.2, 2.0, 3.0) : new Spread(1.1, 1.5, 2.2),
                        COMMON),
                new UncertainInput("specific_speed_limit", "-", new Spread(0.8, 1.0, 1.3), "nasa-sp-125"),
                new UncertainInput(
                        "bearing_speed_limit",
                        "m/s",
                        // DN 1.6, 1.5 and 1.2 million mm·rpm; hydrogen has been shown to bear 2.0
                        hydrogen
                                ? new Spread(79, 84, 105)
                                : cryogenic ? new Spread(70, 79, 89) : new Spread(52, 63, 79),
                        "nasa-sp-8048"),
                new UncertainInput("shaft_stress", "Pa", new Spread(250e6, 350e6, 450e6), COMMON),
                new UncertainInput("efficiency_factor", "-", new Spread(0.76, 0.86, 0.94), "nasa-sp-125"));
    }

    /**
     * Bearings of turbopumps are not built smaller, whatever the torque: the shaft is bored for a tie bolt, must carry the
     * overhung wheels without bending and its bearings must pass their coolant. Motor spindles are simpler.
     *
     * @param motorDriven whether an electric motor drives the pump
     * @return smallest shaft that is built (m), with its spread, by its key in the concept file
     */
    public static UncertainInput smallestShaft(boolean motorDriven) {
        return new UncertainInput(
                "smallest_shaft_diameter",
                "m",
                motorDriven ? new Spread(0.008, 0.012, 0.020) : new Spread(0.020, 0.025, 0.035),
                motorDriven ? COMMON : "nasa-sp-8048");
    }

    static Optional<UncertainInput> find(List<UncertainInput> inputs, String key) {
        return inputs.stream().filter(input -> input.key().equals(key)).findFirst();
    }

    public static double mode(List<UncertainInput> inputs, String key) {
        return find(inputs, key).orElseThrow().spread().mode();
    }
}
