package dev.penstock.cooling.design;

import dev.penstock.errors.Require;
import java.util.OptionalDouble;

/**
 * What a jacket is held against, and what automatic sizing works towards.
 *
 * @param wallTemperature highest temperature of the wall metal (K); empty takes the material's
 * @param coolantWallTemperature highest temperature of the channel floor (K); empty takes the coolant's coking limit
 * @param cokingShare share of the way from where deposits set in to the hottest wall that is known to serve (-)
 * @param pressureDropFraction largest pressure drop over chamber pressure (-)
 * @param life load cycles that the liner has to stand (-)
 */
public record JacketLimits(
        OptionalDouble wallTemperature,
        OptionalDouble coolantWallTemperature,
        double cokingShare,
        double pressureDropFraction,
        double life) {

    public JacketLimits {
        wallTemperature.ifPresent(t -> Require.positive("jacket limits", "wall temperature (K)", t));
        coolantWallTemperature.ifPresent(
                t -> Require.positive("jacket limits", "coolant-side wall temperature (K)", t));
        Require.within("jacket limits", "share of the coking range (-)", cokingShare, 0, 1);
        Require.within("jacket limits", "pressure drop over chamber pressure (-)", pressureDropFraction, 1e-4, 10);
        Require.within("jacket limits", "life (cycles)", life, 1, 1e7);
    }

    /** Largest pressure drop over chamber pressure (-), up to 10 MPa where the heat is not needed. */
    public static final double USUAL_PRESSURE_DROP = 0.25;
}
