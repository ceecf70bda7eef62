package dev.penstock.vehicle.mass;

import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.engine.LoadedPropellant;
import java.util.List;

/**
 * Usual collapse factor: pressurant used over the gas that would fill the tank without cooling or condensing.
 *
 * The propellant's file states it, {@code [tank] collapse_factor} and its likes. Source of the values there: middle of the
 * ranges in [nasa-sp-8112], from memory (inert gas 1.3 to 2 for hydrogen, 1.2 to 1.6 for other cryogens, 1.05 to 1.3 for
 * storable propellants; own vapour 1.4 to 2.5). Slosh and long coasts go beyond.
 */
public final class CollapseFactor {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.collapse-factor",
            "Usual collapse factor of pressurant",
            "value of the propellant's file, by pressurant and loading temperature",
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
        if (!ownVapour) {
            return propellant.propellant().collapseFactor(propellant.temperature());
        }
        return propellant
                .propellant()
                .needed(
                        propellant.propellant().tank().ownVapourCollapseFactor(),
                        "tank.own_vapour_collapse_factor",
                        "a factor such as 2.0, or choose another pressurant");
    }
}
