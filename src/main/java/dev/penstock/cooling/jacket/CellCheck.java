package dev.penstock.cooling.jacket;

import dev.penstock.cooling.wall.ChannelCell;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.WallMaterial;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The hottest station of a jacket, solved again as a two-dimensional cell: how far the fin model is off there. Gas, coolant
 * and geometry are those of the station; only the conduction in the metal is another.
 *
 * @param x distance from the throat, negative upstream (m)
 * @param areaRatio area ratio of the station (-)
 * @param finHeatFlux flux by the fin model (W/m²)
 * @param cellHeatFlux flux by {@link ChannelCell} (W/m²)
 * @param finWallTemperature gas-side wall by the fin model (K)
 * @param cellWallTemperature hottest place of the hot face by {@link ChannelCell} (K)
 * @param imbalance heat in less heat out over heat in of the cell (-)
 */
public record CellCheck(
        double x,
        double areaRatio,
        double finHeatFlux,
        double cellHeatFlux,
        double finWallTemperature,
        double cellWallTemperature,
        double imbalance) {

    /** Shell outside the channels over the wall inside them; it hardly conducts (-). */
    private static final double SHELL_OVER_WALL = 2;

    /** The check of a jacket; empty for tubes, which have no lands, and where the hottest place takes no heat from the gas. */
    static Optional<CellCheck> of(ChannelKind kind, List<JacketStation> stations, WallMaterial material) {
        if (kind == ChannelKind.TUBE) {
            return Optional.empty();
        }
        return stations.stream()
                .max(Comparator.comparingDouble(JacketStation::gasSideWallTemperature))
                .filter(s -> s.heatFlux() > s.radiativeHeatFlux()
                        && s.adiabaticWallTemperature() > s.gasSideWallTemperature())
                .map(s -> at(s, material));
    }

    private static CellCheck at(JacketStation s, WallMaterial material) {
        double metal = 0.5 * (s.gasSideWallTemperature() + s.coolantSideWallTemperature());
        double gas =
                (s.heatFlux() - s.radiativeHeatFlux()) / (s.adiabaticWallTemperature() - s.gasSideWallTemperature());
        ChannelCell.Answer cell = ChannelCell.solve(new ChannelCell.Setting(
                s.channelWidth(),
                s.channelHeight(),
                s.landWidth(),
                s.wallThickness(),
                SHELL_OVER_WALL * s.wallThickness(),
                material.conductivity().at(metal),
                gas,
                s.adiabaticWallTemperature(),
                s.radiativeHeatFlux(),
                s.coolantSideCoefficient(),
                s.coolantTemperature()));
        return new CellCheck(
                s.x(),
                s.areaRatio(),
                s.heatFlux(),
                cell.heatFlux(),
                s.gasSideWallTemperature(),
                cell.hottest(),
                cell.imbalance());
    }
}
