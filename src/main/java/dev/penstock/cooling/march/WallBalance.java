package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.Boiling;
import dev.penstock.cooling.coolant.ChannelFlow;
import dev.penstock.cooling.coolant.ChannelFriction;
import dev.penstock.cooling.coolant.CoolantProperties;
import dev.penstock.cooling.coolant.CoolantSideDesign;
import dev.penstock.cooling.coolant.CoolantSideHeatTransfer;
import dev.penstock.cooling.gas.GasSide;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.FinEfficiency;
import dev.penstock.cooling.wall.HotSpot;
import dev.penstock.cooling.wall.TemperatureTable;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Heat balance through the wall of one cell: what the gas gives, the layers and the wall conduct and the coolant takes.
 * <pre>
 * q = h_g(T_s)(T_aw − T_s) + q_rad          gas to surface s
 * T_wg = T_s − q R_layers                    soot, coating
 * T_wc = T_wg − q r ln((r + t)/r)/k(T̄)        metal, cylindrical
 * q = h_c(T_wc) φ (T_wc − T_b)(r + t)/r      φ cooled over hot area, fins included; with nucleate boiling, see Boiling
 * </pre>
 * A tube takes heat on the half circle that faces the gas; in a tube pressed taller than wide the straight sides are fins
 * of two wall thicknesses. {@link CellBalance} looks for the T_s at which both sides agree. Not thread-safe; allocates
 * nothing.
 */
public final class WallBalance {

    public static final ModelCard CARD = new ModelCard(
            "cooling.wall-balance",
            "Heat balance through the wall",
            "h_g(T_aw - T_s) + q_rad = (T_s - T_wc)/(R_layers + t/k) = h_c phi (T_wc - T_b)",
            "one-dimensional conduction through the wall, fins for the lands",
            "about 5 % in flux against two-dimensional conduction (own comparison)",
            List.of("nasa-sp-125", "incropera-2007"));

    private static final double DRYING_RANGE = 10;
    private static final double LAMINAR_NUSSELT = 4.36;

    private final GasSide gasSide;
    private final TemperatureTable conductivity;
    private final CoolantSideHeatTransfer correlation;
    private final CoolantProperties properties;
    private final CoolantSideDesign options;
    private final ChannelFlow flow;

    /** Set for the cell. */
    private int cell;

    private ChannelGrid channels;
    private double conductionLength;
    private double floorOverWall;
    private double curvatureFactor;

    /** The solution. */
    double surfaceTemperature;

    double metalTemperature;
    double floorTemperature;
    double heatFlux;
    double gasCoefficient;
    double coolantCoefficient;
    double finEfficiency;
    int evaluations;

    WallBalance(
            GasSide gasSide,
            TemperatureTable conductivity,
            CoolantSideHeatTransfer correlation,
            CoolantProperties properties,
            CoolantSideDesign options,
            ChannelFlow flow) {
        this.gasSide = gasSide;
        this.conductivity = conductivity;
        this.correlation = correlation;
        this.properties = properties;
        this.options = options;
        this.flow = flow;
    }

    /** Moves to a cell. */
    void enter(JacketGrid grid, ChannelGrid channelGrid, int newCell) {
        cell = newCell;
        channels = channelGrid;
        double radius = grid.radius[newCell];
        conductionLength = radius * Math.log1p(channelGrid.thickness[newCell] / radius);
        floorOverWall = 1 + channelGrid.thickness[newCell] / radius;
    }

    /** Adiabatic wall temperature of the cell (K). */
    double adiabaticWallTemperature() {
        return gasSide.adiabaticWallTemperature(cell);
    }

    /** How far radiation can drive the surface above the adiabatic wall temperature (K). */
    double radiationRise() {
        return gasSide.radiation(cell) / gasSide.coefficient(cell, gasSide.adiabaticWallTemperature(cell));
    }

    /** Fall of the residual with the surface temperature at a coolant that stays as it is (W/(m²·K)). */
    double slope() {
        double resistance = gasSide.layers(cell) + conductionLength / conductivity.at(metalTemperature);
        return gasCoefficient + coolingPerArea * (1 + gasCoefficient * resistance);
    }

    /** Coolant-side coefficient over the gas-side surface, fins included (W/(m²·K)). */
    double coolingPerArea() {
        return coolingPerArea;
    }

    private double coolingPerArea;
    private double wettedPerArea;

    /**
     * What the gas gives a surface, and the temperatures below it.
     *
     * @param surface temperature of the surface that faces the gas (K)
     */
    void receive(double surface) {
        surfaceTemperature = surface;
        gasCoefficient = gasSide.coefficient(cell, surface);
        heatFlux = gasCoefficient * (gasSide.adiabaticWallTemperature(cell) - surface) + gasSide.radiation(cell);
        metalTemperature = surface - heatFlux * gasSide.layers(cell);
        floorTemperature = metalTemperature;
        for (int i = 0; i < 12; i++) {
            double k = conductivity.at(0.5 * (metalTemperature + floorTemperature));
            double next = metalTemperature - heatFlux * conductionLength / k;
            double change = Math.abs(next - floorTemperature);
            floorTemperature = next;
            if (change < 1e-10) {
                break;
            }
        }
    }

    /**
     * What the surface receives less what the coolant, in its bulk state in the flow, takes from the wall.
     *
     * @param curvature factor of curvature on heat transfer (-)
     * @return the difference (W/m²)
     */
    double residual(double curvature) {
        evaluations++;
        curvatureFactor = curvature;
        flow.wallTemperature = Math.max(1, floorTemperature);
        if (correlation.needsWallProperties()) {
            properties.wall(flow);
        }
        if (correlation.needsFilmProperties()) {
            properties.film(flow);
        }
        if (correlation.needsMeanProperties()) {
            properties.mean(flow);
        }
        coolantCoefficient = coefficient();
        double metal = conductivity.at(floorTemperature);
        double areaFactor;
        if (channels.kind == ChannelKind.TUBE) {
            double width = channels.width[cell];
            double side = Math.max(0, channels.height[cell] - width);
            double crown = Math.PI / 2 * Math.min(width, channels.height[cell]);
            finEfficiency = FinEfficiency.of(coolantCoefficient, metal, 2 * channels.thickness[cell], side);
            areaFactor = (crown + 2 * finEfficiency * side) / (width + channels.land[cell]);
        } else {
            finEfficiency = FinEfficiency.of(coolantCoefficient, metal, channels.land[cell], channels.height[cell]);
            areaFactor = FinEfficiency.areaFactor(
                    finEfficiency, channels.width[cell], channels.height[cell], channels.land[cell]);
        }
        wettedPerArea = areaFactor * floorOverWall;
        coolingPerArea = coolantCoefficient * wettedPerArea;
        double convected = coolingPerArea * (floorTemperature - flow.bulkTemperature);
        double superheat = floorTemperature - flow.boilingTemperature;
        double wet = wetShare() * flow.boilingShare;
        if (superheat > 0 && wet > 0) {
            double boiled = wet * wettedPerArea * Boiling.nucleateFlux(flow.criticalPressure, flow.pressure, superheat);
            return heatFlux - Math.hypot(convected, boiled);
        }
        return heatFlux - convected;
    }

    /** How much hotter the metal is over the middle of a channel than by the fin model (K). */
    double hotSpot() {
        double gas = heatFlux / Math.max(1, gasSide.adiabaticWallTemperature(cell) - metalTemperature);
        return gas > 0 && coolantCoefficient > 0
                ? HotSpot.excess(
                        channels.width[cell],
                        channels.height[cell],
                        channels.land[cell],
                        channels.thickness[cell],
                        conductivity.at(0.5 * (metalTemperature + floorTemperature)),
                        gas,
                        coolantCoefficient,
                        gasSide.adiabaticWallTemperature(cell) - flow.bulkTemperature)
                : 0;
    }

    /** Share of the wall that liquid reaches: all of it up to boiling, none once the flow has dried out (-). */
    private double wetShare() {
        if (flow.quality >= 0) {
            return 1 - flow.quality;
        }
        return Math.max(0, Math.min(1, 1 - (flow.bulkTemperature - flow.boilingTemperature) / DRYING_RANGE));
    }

    /** @return whether the correlation's fit covers the flow as solved */
    boolean covered() {
        return correlation.covers(flow);
    }

    /** Coefficient from the correlation, with laminar flow, curvature and roughness taken in (W/(m²·K)). */
    private double coefficient() {
        double reynolds = flow.reynolds;
        double turbulent = ChannelFriction.turbulentShare(reynolds);
        double nusselt = LAMINAR_NUSSELT;
        double k = flow.bulkConductivity;
        if (turbulent > 0) {
            flow.reynolds = Math.max(reynolds, ChannelFriction.TURBULENT);
            nusselt = Math.max(LAMINAR_NUSSELT, correlation.nusselt(flow));
            k = correlation.conductivity(flow);
            flow.reynolds = reynolds;
            nusselt = LAMINAR_NUSSELT + turbulent * (nusselt - LAMINAR_NUSSELT);
        }
        double rough = 1;
        if (options.roughWall() && turbulent > 0) {
            double smooth = ChannelFriction.factor(Math.max(reynolds, ChannelFriction.TURBULENT), 0);
            rough = RoughWall.factor(flow.frictionFactor / (smooth * curvatureFactor));
        }
        return nusselt * k / flow.hydraulicDiameter * curvatureFactor * rough;
    }
}
