package dev.penstock.cycles.sheet;

import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.origin.LineKey;

/**
 * A medium on its way from one component to the next.
 *
 * @param station number of the station where it is
 * @param medium what flows
 * @param pressure absolute pressure (Pa)
 * @param enthalpy specific enthalpy relative to the elements (J/kg)
 * @param oxidizerFlow how much of it came out of the oxidizer tank (kg/s)
 * @param fuelFlow how much of it came out of the fuel tank (kg/s)
 * @param diluentFlow how much of it came out of the tank of a third fluid (kg/s)
 */
public record Stream(
        int station,
        Medium medium,
        double pressure,
        double enthalpy,
        double oxidizerFlow,
        double fuelFlow,
        double diluentFlow) {

    /** Mass flow (kg/s). */
    public double flow() {
        return oxidizerFlow + fuelFlow + diluentFlow;
    }

    /** What it is. */
    Content content() {
        if (medium.burnt()) {
            return Content.BURNT_GAS;
        }
        if (diluentFlow > 0) {
            return Content.DILUENT;
        }
        return oxidizerFlow > fuelFlow ? Content.OXIDIZER : Content.FUEL;
    }

    /** The line that it flows in, where that is called by what flows. */
    public LineKey line() {
        return new LineKey(content(), medium.name(), false);
    }

    /** Enthalpy flow (W). */
    double enthalpyFlow() {
        return flow() * enthalpy;
    }
}
