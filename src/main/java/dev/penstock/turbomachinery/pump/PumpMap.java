package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.Require;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.quantities.Constants;
import java.util.Optional;

/**
 * A built pump off its design point: the generic {@link PumpCurve} pinned to a {@link PumpSizing}. The discharge pressure follows
 * from the head along the real liquid's isentrope; the required suction head follows the design's suction specific speed. At the
 * design point it returns the sizing's numbers. Not thread-safe.
 */
public final class PumpMap {

    private static final int MOST_STEPS = 30;

    /** Share of a head by which two heads may differ and be one. */
    private static final double SETTLED = 1e-10;

    /** A discharge pressure (Pa) and the isentropic enthalpy rise to it (J/kg). */
    private record Discharge(double pressure, double head) {

        boolean has(double other) {
            return Math.abs(other - head) < SETTLED * head;
        }
    }

    private final PumpSizing pump;
    private final double shutOff;
    private final double designFlow;
    private final PumpSuction suction = new PumpSuction();

    /** @param pump pump as sized */
    public PumpMap(PumpSizing pump) {
        this.pump = pump;
        this.shutOff = PumpCurve.shutOff(pump.type(), SpecificSpeed.metric(pump.specificSpeed()));
        this.designFlow = pump.duty().volumeFlow();
    }

    /** @return the pump it describes */
    public PumpSizing pump() {
        return pump;
    }

    /** @return head at zero flow over design head, at the same speed (-) */
    public double shutOff() {
        return shutOff;
    }

    /**
     * @param inlet total state at the inlet
     * @param speed shaft speed (rad/s)
     * @param massFlow mass flow (kg/s)
     * @return the operating point
     * @throws dev.penstock.errors.OutsideValidity if speed or flow is not positive
     * @throws dev.penstock.errors.PropertyFailure if the discharge state leaves the range of the fluid
     */
    public PumpPoint at(FluidState inlet, double speed, double massFlow) {
        return at(inlet, speed, massFlow, Optional.empty());
    }

    /**
     * The same near a pressure whose head is known, which takes no state of the liquid if the pump has that very head.
     *
     * @param duty inlet, flow and a discharge pressure
     * @param speed shaft speed (rad/s)
     * @param isentropicHead isentropic enthalpy rise to that pressure (J/kg)
     * @return the operating point
     * @throws dev.penstock.errors.OutsideValidity if the speed is not positive
     * @throws dev.penstock.errors.PropertyFailure if the discharge state leaves the range of the fluid
     */
    public PumpPoint at(PumpDuty duty, double speed, double isentropicHead) {
        return at(
                duty.inlet(),
                speed,
                duty.massFlow(),
                Optional.of(new Discharge(duty.dischargePressure(), isentropicHead)));
    }

    /**
     * Head alone, which takes no state of the liquid.
     *
     * @param volumeFlow flow at the inlet (m³/s)
     * @param speedRatio speed over design speed (-)
     * @return isentropic enthalpy rise (J/kg); negative beyond the flow that the pump can lift
     */
    public double head(double volumeFlow, double speedRatio) {
        return pump.head() * speedRatio * speedRatio * PumpCurve.head(flowRatio(volumeFlow, speedRatio), shutOff);
    }

    private double flowRatio(double volumeFlow, double speedRatio) {
        return volumeFlow / designFlow / speedRatio;
    }

    private PumpPoint at(FluidState inlet, double speed, double massFlow, Optional<Discharge> near) {
        Require.positive(pump.name(), "speed (rad/s)", speed);
        Require.positive(pump.name(), "mass flow (kg/s)", massFlow);
        double volumeFlow = massFlow / inlet.density();
        double speedRatio = speed / pump.speed();
        double x = flowRatio(volumeFlow, speedRatio);
        double head = head(volumeFlow, speedRatio);
        double efficiency = Math.min(pump.efficiency() * PumpCurve.efficiency(x), 1);
        // beyond the flow it can lift a pump is a resistance: shaft work cannot turn negative with the head
        double work = Math.abs(head) / efficiency;
        PumpDuty here = new PumpDuty(
                pump.duty().propellant(),
                inlet,
                Math.max(pump.duty().dischargePressure(), 2 * inlet.pressure()),
                massFlow);
        double available = PumpSuction.pressureHead(here) + suction.suppressionHead(here, pump.design());
        double required = Math.pow(speed * Math.sqrt(volumeFlow) / pump.suctionSpecificSpeed(), 4.0 / 3)
                / Constants.STANDARD_GRAVITY;
        return new PumpPoint(
                speed,
                x,
                head,
                near.filter(discharge -> discharge.has(head))
                        .map(Discharge::pressure)
                        .orElseGet(() -> dischargePressure(
                                pump.duty().propellant().fluid(),
                                inlet,
                                head,
                                pump.outlet().temperature())),
                efficiency,
                massFlow * work,
                inlet.enthalpy() + work,
                x / PumpCurve.stallRatio(pump.type()) - 1,
                available / required - 1);
    }

    /** Newton on pressure along the isentrope: dh = dp/ρ. */
    private static double dischargePressure(Fluid fluid, FluidState inlet, double head, double temperatureGuess) {
        double floor = 1e-3 * inlet.pressure();
        double pressure = Math.max(inlet.pressure() + head * inlet.density(), floor);
        if (head <= 0) {
            return pressure;
        }
        // the inlet temperature may lie below the melting line at the discharge pressure of hydrogen
        double temperature = Math.max(inlet.temperature(), temperatureGuess);
        try (FluidCursor cursor = fluid.cursor()) {
            for (int i = 0; i < MOST_STEPS; i++) {
                double missing = head - LiquidIsentrope.rise(fluid, cursor, inlet, pressure, temperature);
                temperature = cursor.temperature();
                pressure += missing * cursor.density();
                if (Math.abs(missing) < SETTLED * head) {
                    break;
                }
            }
        }
        return pressure;
    }
}
