package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.Require;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.quantities.Constants;

/**
 * A built pump off its design point: the generic {@link PumpCurve} pinned to a {@link PumpSizing}. The discharge pressure follows
 * from the head along the real liquid's isentrope; the required suction head follows the design's suction specific speed. At the
 * design point it returns the sizing's numbers. Not thread-safe.
 */
public final class PumpMap {

    private static final int MOST_STEPS = 30;

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
        Require.positive(pump.name(), "speed (rad/s)", speed);
        Require.positive(pump.name(), "mass flow (kg/s)", massFlow);
        double volumeFlow = massFlow / inlet.density();
        double speedRatio = speed / pump.speed();
        double x = volumeFlow / designFlow / speedRatio;
        double head = pump.head() * speedRatio * speedRatio * PumpCurve.head(x, shutOff);
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
                massFlow,
                x,
                head,
                dischargePressure(
                        pump.duty().propellant().fluid(),
                        inlet,
                        head,
                        pump.outlet().temperature()),
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
                if (Math.abs(missing) < 1e-10 * head) {
                    break;
                }
            }
        }
        return pressure;
    }
}
