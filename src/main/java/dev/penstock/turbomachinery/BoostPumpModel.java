package dev.penstock.turbomachinery;

import dev.penstock.errors.Require;
import dev.penstock.fluids.FluidCursor;
import dev.penstock.fluids.FluidState;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Spread;
import dev.penstock.provenance.UncertainInput;
import dev.penstock.quantities.Constants;
import java.util.List;

/**
 * A slow pump ahead of the main pump, driven by a hydraulic turbine on liquid from the main pump's outlet.
 * <pre>
 * ṁ_drive = P_boost/[η_t (h1 - h(p_boost, s1))],   state 1 behind the main pump
 * </pre>
 * The drive flow joins the boost pump's outlet and passes the main pump again, so the main pump lifts ṁ + ṁ_drive. Not
 * thread-safe.
 */
public final class BoostPumpModel {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.boost-pump",
            "Boost pump on a hydraulic turbine",
            "drive flow = P_boost/(η_t Δh_s); boost discharge 5 % of main discharge unless stated",
            "full-flow hydraulic turbines; liquid stays liquid",
            "15 % on drive flow",
            List.of("nasa-sp-8107"));

    /** Usual boost discharge pressure over main discharge pressure (-): common practice, no source. */
    private static final double USUAL_SHARE = 0.05;

    private final PumpModel pumps;

    /** @param pumps pump model whose memory is shared */
    public BoostPumpModel(PumpModel pumps) {
        this.pumps = pumps;
    }

    /**
     * A boost pump and what drives it.
     *
     * @param pump the boost pump
     * @param driveFlow liquid from the main pump through its turbine (kg/s)
     * @param turbineEfficiency of the hydraulic turbine (-)
     */
    public record BoostPump(PumpSizing pump, double driveFlow, double turbineEfficiency) {

        public BoostPump {
            Require.positive(pump.name(), "drive flow (kg/s)", driveFlow);
            Require.within(pump.name(), "efficiency of the hydraulic turbine (-)", turbineEfficiency, 0.05, 1);
        }
    }

    /** @return efficiency of the hydraulic turbine with its spread */
    public static UncertainInput turbineEfficiency() {
        return new UncertainInput(
                "boost_turbine_efficiency", "-", new Spread(0.6, 0.7, 0.8), "common practice, no source");
    }

    /**
     * @param tankOutlet state ahead of the boost pump
     * @param mainDischarge discharge pressure of the main pump (Pa)
     * @return usual discharge pressure of the boost pump (Pa), above the inlet pressure
     */
    public static double usualPressure(FluidState tankOutlet, double mainDischarge) {
        return tankOutlet.pressure()
                + USUAL_SHARE * Require.positive(CARD.id(), "main discharge pressure (Pa)", mainDischarge);
    }

    /**
     * @param main duty of the main pump
     * @param design design of the main pump
     * @param speed speed at which the main pump is to run (rad/s)
     * @return inlet pressure that it needs for that speed, suppression head and margin included (Pa)
     */
    public double pressureForSpeed(PumpDuty main, PumpDesign design, double speed) {
        double required = PumpSuction.requiredHead(main, design, speed) * design.suctionMargin();
        double missing = required - PumpSuction.pressureHead(main) - new PumpSuction().suppressionHead(main, design);
        return main.inlet().pressure() + missing * main.inlet().density() * Constants.STANDARD_GRAVITY;
    }

    /**
     * @param name name of the boost pump
     * @param duty from tank outlet to main inlet, without the drive flow
     * @param design design of the boost pump
     * @param behindMain state behind the main pump
     * @param turbineEfficiency of the hydraulic turbine (-)
     * @return the boost pump with its drive flow
     */
    public BoostPump size(
            String name, PumpDuty duty, PumpDesign design, FluidState behindMain, double turbineEfficiency) {
        PumpSizing pump = pumps.size(name, duty, design);
        return new BoostPump(pump, driveFlow(duty, pump.power(), behindMain, turbineEfficiency), turbineEfficiency);
    }

    /**
     * @param duty duty of the boost pump
     * @param power shaft power of the boost pump (W)
     * @param behindMain state behind the main pump
     * @param turbineEfficiency of the hydraulic turbine (-)
     * @return liquid through the hydraulic turbine (kg/s)
     */
    public double driveFlow(PumpDuty duty, double power, FluidState behindMain, double turbineEfficiency) {
        try (FluidCursor cursor = duty.propellant().fluid().cursor()) {
            double drop = -Isentrope.rise(
                    duty.propellant().fluid(), cursor, behindMain, duty.dischargePressure(), behindMain.temperature());
            return power / (turbineEfficiency * Require.positive(CARD.id(), "drop through the turbine (J/kg)", drop));
        }
    }
}
