package dev.penstock.cooling.wall;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * How much hotter the wall is over the middle of a channel than the fin model says, in closed form: the wall as a plate that
 * conducts sideways, on the coolant over the channel and on the land as a fin beside it.
 * <pre>
 * k t T'' = (T − T_0) U     over each half;  U = U_g + U_c, T_0 = (U_g T_aw + U_c T_b)/U
 * 1/U_g = 1/h_g + t/2k,  1/U_c = 1/h_c + t/2k over the channel, 1/(k m tanh mH) + t/2k over the land, m = √(2h_c/(k l))
 * </pre>
 * w width, H height, l land, t wall; T and T' agree between the halves. The excess over the fin model times 0.7, a factor
 * chosen against {@link ChannelCell}, since a land also spreads heat below the plate; so it is within a third or 10 K there for
 * channels at least three times taller than wide. Own model.
 */
public final class HotSpot {

    public static final ModelCard CARD = new ModelCard(
            "cooling.hot-spot",
            "Wall over a channel hotter than by the fin model",
            "k t T'' = (T - T_0) U over channel and over land",
            "channels at least three times taller than wide; milled or printed",
            "a third of the excess or 10 K against two-dimensional conduction (own comparison)",
            List.of("common practice, no source"));

    private static final double SHARE = 0.7;

    private HotSpot() {}

    /**
     * @param width channel width (m)
     * @param height channel height (m)
     * @param land land width (m)
     * @param wall wall between gas and channel (m)
     * @param conductivity conductivity of the metal (W/(m·K))
     * @param gas gas-side coefficient (W/(m²·K))
     * @param coolant coolant-side coefficient (W/(m²·K))
     * @param difference adiabatic wall less coolant temperature (K)
     * @return excess of the hottest place of the hot face over the fin model's (K), at least zero
     */
    public static double excess(
            double width,
            double height,
            double land,
            double wall,
            double conductivity,
            double gas,
            double coolant,
            double difference) {
        double m = Math.sqrt(2 * coolant / (conductivity * land));
        double bed = conductivity * m * Math.tanh(m * height);
        double half = wall / (2 * conductivity);
        double fromGas = 1 / (1 / gas + half);
        double overChannel = 1 / (1 / coolant + half);
        double overLand = 1 / (1 / bed + half);
        double channel = fromGas / (fromGas + overChannel);
        double beside = fromGas / (fromGas + overLand);
        double plate = conductivity * wall;
        double a = Math.sqrt((fromGas + overChannel) / plate);
        double b = Math.sqrt((fromGas + overLand) / plate);
        // T = T_0 + A cosh(a x) over the channel, x from its middle; written with tanh, so that nothing overflows
        double slopes = a * Math.tanh(0.5 * a * width) / (b * Math.tanh(0.5 * b * land));
        double middle = channel + (beside - channel) / (Math.cosh(0.5 * a * width) * (1 + slopes));
        double hot = middle + half * fromGas * (1 - middle);
        double fins = coolant
                * FinEfficiency.areaFactor(FinEfficiency.of(coolant, conductivity, land, height), width, height, land);
        double uniform = 1 - 1 / (gas * (1 / gas + 2 * half + 1 / fins));
        return SHARE * Math.max(0, hot - uniform) * difference;
    }
}
