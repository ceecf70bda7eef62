package dev.penstock.cycles.trail;

import dev.penstock.cycles.origin.Definitions;
import dev.penstock.fluids.Propellant;
import dev.penstock.provenance.ModelCard;

/** Relations of a pressure feed that need no publication. */
final class PressureFeedCards {

    static final ModelCard LOAD = Definitions.card(
            "propellant-load",
            "Propellant loaded",
            "m_o = m r/(1 + r); m_f = m/(1 + r); m stated, or ṁ t of the start; r what is burnt over the life",
            "tanks that end together");
    static final ModelCard TANK_VOLUME = Definitions.card(
            "tank-volume", "Volume of a tank", "V = m/(ρ (1 − u)); u share of gas at the start", "everywhere");
    static final ModelCard IMPULSE = Definitions.card(
            "total-impulse", "Impulse over the life", "I = ∫ F dt, thrust linear between the points", "everywhere");
    static final ModelCard HEATER = Definitions.card(
            "pressurant-heater",
            "Heat exchanger for the pressurant",
            "P = Q/t; share P/(½ F v_e); a coil about the nozzle costs half that share of the specific impulse",
            "shares of a few per cent");

    private PressureFeedCards() {}

    static ModelCard vapourPressure(Propellant propellant) {
        return new ModelCard(
                "cycles.vapour-pressure",
                "Vapour pressure in the tank",
                "p_v(T) of the fluid; zero where its file has none",
                "the fluid's own",
                "the fluid's own",
                propellant.sources());
    }
}
