package dev.penstock.cooling;

import dev.penstock.fluids.Fluid;
import java.util.Set;

/** Which correlation answers for which coolant. */
final class CoolantCorrelations {

    private static final Set<String> LIGHT_GASES = Set.of("helium", "nitrogen");
    private static final Set<String> SUPERCRITICAL_FUELS = Set.of("methane", "propane");

    private CoolantCorrelations() {}

    /**
     * @param choice choice of the design
     * @param fluid coolant
     * @param pressure inlet pressure (Pa)
     * @return the correlation
     */
    static CoolantSideHeatTransfer of(CoolantSideDesign.Correlation choice, Fluid fluid, double pressure) {
        return switch (choice) {
            case AUTOMATIC -> of(automatic(fluid, pressure), fluid, pressure);
            case DITTUS_BOELTER -> new DittusBoelter();
            case SIEDER_TATE -> new SiederTate();
            case GNIELINSKI -> new Gnielinski();
            case MCCARTHY_WOLF -> new McCarthyWolf();
            case TAYLOR -> new Taylor();
            case HESS_KUNZ -> new HessKunz();
            case SPENCER_ROUSAR -> new SpencerRousar();
            case JACKSON -> new Jackson();
            case KEROSENE -> new KeroseneTube();
        };
    }

    /** What the automatic choice stands for. */
    static CoolantSideDesign.Correlation automatic(Fluid fluid, double pressure) {
        boolean supercritical = fluid.criticalPressure().isPresent()
                && pressure > fluid.criticalPressure().getAsDouble();
        String id = fluid.id();
        if (id.equals("hydrogen")) {
            return CoolantSideDesign.Correlation.TAYLOR;
        }
        if (LIGHT_GASES.contains(id)) {
            return CoolantSideDesign.Correlation.MCCARTHY_WOLF;
        }
        if (supercritical && id.equals("oxygen")) {
            return CoolantSideDesign.Correlation.SPENCER_ROUSAR;
        }
        return supercritical && SUPERCRITICAL_FUELS.contains(id)
                ? CoolantSideDesign.Correlation.JACKSON
                : CoolantSideDesign.Correlation.SIEDER_TATE;
    }
}
