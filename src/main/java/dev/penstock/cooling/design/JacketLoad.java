package dev.penstock.cooling.design;

import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.errors.Require;
import java.util.Objects;

/**
 * What a cycle must know of a jacket while it iterates; everything else is in {@link JacketResult}.
 *
 * @param heatLoad heat through the wall (W)
 * @param pressureDrop inlet less outlet manifold pressure (Pa)
 * @param layout channels
 * @param hottestX where the coolant is hottest: distance from the throat, negative upstream (m)
 * @param hottestAreaRatio where the coolant is hottest: area ratio (-)
 */
public record JacketLoad(
        double heatLoad, double pressureDrop, ChannelLayout layout, double hottestX, double hottestAreaRatio) {

    public JacketLoad {
        Require.finite("jacket", "heat load (W)", heatLoad);
        Require.finite("jacket", "pressure drop (Pa)", pressureDrop);
        Objects.requireNonNull(layout, "layout");
    }
}
