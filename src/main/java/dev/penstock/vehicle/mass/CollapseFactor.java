package dev.penstock.vehicle.mass;

import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.engine.LoadedPropellant;
import java.util.List;

/**
 * Usual collapse factor: pressurant used over the gas that would fill the tank without cooling or condensing.
 *
 * <pre>
 *                       inert gas   own vapour
 * hydrogen                  1.6         1.9
 * oxygen                    1.4         2.0
 * other cryogens            1.4         2.0
 * storable propellants      1.15        -
 * </pre>
 *
 * Source: middle of the ranges in [nasa-sp-8112], from memory (inert 1.3 to 2, 1.2 to 1.6, 1.05 to 1.3; own vapour 1.4 to
 * 2.5). Slosh and long coasts go beyond.
 */
public final class CollapseFactor {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.collapse-factor",
            "Usual collapse factor of pressurant",
            "1.6 hydrogen, 1.4 other cryogens, 1.15 storable; own vapour 1.9 hydrogen, 2.0 other",
            "quiet tanks emptied within ten minutes",
            "±20 %",
            List.of("nasa-sp-8112"));

    private CollapseFactor() {}

    /**
     * @param propellant what the tank holds
     * @param ownVapour whether it is pressurised by its own vapour
     * @return collapse factor (-)
     */
    public static double usual(LoadedPropellant propellant, boolean ownVapour) {
        if (!propellant.cryogenic()) {
            return 1.15;
        }
        boolean hydrogen = propellant.id().equals("hydrogen");
        if (ownVapour) {
            return hydrogen ? 1.9 : 2.0;
        }
        return hydrogen ? 1.6 : 1.4;
    }
}
