package dev.penstock.cooling.coolant;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.Propellant;
import dev.penstock.provenance.Words;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Which correlation answers for which coolant. */
public final class CoolantCorrelations {

    private CoolantCorrelations() {}

    /**
     * @param choice choice of the design
     * @param coolant coolant
     * @param pressure inlet pressure (Pa)
     * @return the correlation
     * @throws InvalidInput if the choice is left to the coolant's file, which names none
     */
    public static CoolantSideHeatTransfer of(
            CoolantSideDesign.Correlation choice, Propellant coolant, double pressure) {
        return switch (choice) {
            case AUTOMATIC -> of(automatic(coolant, pressure), coolant, pressure);
            case DITTUS_BOELTER -> new DittusBoelter();
            case SIEDER_TATE -> new SiederTate();
            case GNIELINSKI -> new Gnielinski();
            case MCCARTHY_WOLF -> new McCarthyWolf();
            case TAYLOR -> new Taylor();
            case HESS_KUNZ -> new HessKunz();
            case SCHACHT_QUENTMEYER -> new SchachtQuentmeyer();
            case SPENCER_ROUSAR -> new SpencerRousar();
            case JACKSON -> new Jackson();
            case KEROSENE -> new KeroseneTube();
        };
    }

    /**
     * What the automatic choice stands for: what the coolant's file names, for an inlet above the critical pressure if it
     * says so.
     */
    public static CoolantSideDesign.Correlation automatic(Propellant coolant, double pressure) {
        OptionalDouble critical = coolant.fluid().criticalPressure();
        Optional<String> above = coolant.cooling().supercriticalCorrelation();
        if (above.isPresent() && critical.isPresent() && pressure > critical.getAsDouble()) {
            return named(coolant, "cooling.supercritical_correlation", above.get());
        }
        String name = coolant.cooling()
                .correlation()
                .orElseThrow(() -> coolant.missing("cooling.correlation", "one of " + String.join(", ", names())));
        return named(coolant, "cooling.correlation", name);
    }

    private static CoolantSideDesign.Correlation named(Propellant coolant, String key, String name) {
        return choices()
                .filter(choice -> nameOf(choice).equals(name))
                .findFirst()
                .orElseThrow(() -> new InvalidInput(
                        coolant.file(), key, '"' + name + '"', "allowed are " + String.join(", ", names())));
    }

    private static List<String> names() {
        return choices().map(CoolantCorrelations::nameOf).toList();
    }

    private static Stream<CoolantSideDesign.Correlation> choices() {
        return Arrays.stream(CoolantSideDesign.Correlation.values())
                .filter(choice -> choice != CoolantSideDesign.Correlation.AUTOMATIC);
    }

    private static String nameOf(CoolantSideDesign.Correlation choice) {
        return Words.of(choice);
    }
}
