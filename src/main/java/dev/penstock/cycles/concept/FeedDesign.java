package dev.penstock.cycles.concept;

import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import dev.penstock.turbomachinery.pump.PumpDesign;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One propellant on its way from the tank to the injector.
 *
 * @param propellant what flows
 * @param tankPressure tank pressure (Pa); empty if a pressure-fed cycle is to find it
 * @param tankTemperature temperature in the tank (K)
 * @param suctionLoss pressure loss between tank and pump inlet (Pa)
 * @param lineLoss loss of the discharge line over chamber pressure (-)
 * @param valveLoss loss of valve and mixture-ratio orifice over chamber pressure (-)
 * @param injectorLoss loss of the injector over chamber pressure (-)
 * @param pump main pump
 * @param boost boost pump before it, if any
 */
public record FeedDesign(
        Propellant propellant,
        OptionalDouble tankPressure,
        double tankTemperature,
        double suctionLoss,
        double lineLoss,
        double valveLoss,
        double injectorLoss,
        PumpDesign pump,
        Optional<BoostDesign> boost) {

    public FeedDesign {
        tankPressure.ifPresent(p -> Require.positive("feed", "tank pressure (Pa)", p));
        Require.positive("feed", "tank temperature (K)", tankTemperature);
        Require.notNegative("feed", "suction loss (Pa)", suctionLoss);
        Require.within("feed", "line loss (-)", lineLoss, 0, 2);
        Require.within("feed", "valve loss (-)", valveLoss, 0, 2);
        Require.within("feed", "injector loss (-)", injectorLoss, 0, 2);
    }
}
