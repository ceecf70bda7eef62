package dev.penstock.cooling.jacket;

import dev.penstock.cooling.wall.ChannelCell;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.HotSpot;
import dev.penstock.cooling.wall.WallMaterial;
import java.util.List;
import java.util.Optional;

/**
 * The station at the throat, or where a jacket on the nozzle begins, solved again as a two-dimensional cell: how far the fin model is off
 * there. Gas, coolant and geometry are those of the station; only the conduction in the metal is another. Elsewhere the wall over a channel
 * is as hot as by {@link HotSpot}, corrected by what that misses at the throat and in the chamber:
 * <pre>T = T_fin + ΔT_spot + m q,   m = (T_cell − T_fin − ΔT_spot)/q at the two, straight between them by the number of the station</pre>
 * The two are the same stations however hot others are, so that the hottest place is as smooth as the jacket. In the demos it is within
 * 0.3 K of the hottest cell of all stations. Own model.
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

    /** Stations before the throat over those before the place in the chamber (-). */
    private static final int CHAMBER = 4;

    /** The check of a jacket; empty for tubes, which have no lands, and where that place takes no heat from the gas. */
    static Optional<CellCheck> of(ChannelKind kind, List<JacketStation> stations, WallMaterial material) {
        if (kind == ChannelKind.TUBE) {
            return Optional.empty();
        }
        return Optional.of(stations.get(checked(stations)))
                .filter(CellCheck::heated)
                .map(s -> at(s, material));
    }

    /** The last station before the throat, else the first. */
    private static int checked(List<JacketStation> stations) {
        int station = 0;
        for (int i = 1; i < stations.size() && stations.get(i).x() < 0; i++) {
            station = i;
        }
        return station;
    }

    private static boolean heated(JacketStation s) {
        return s.heatFlux() > s.radiativeHeatFlux() && s.adiabaticWallTemperature() > s.gasSideWallTemperature();
    }

    /** Hottest place of the metal over the channels of a jacket that this is the check of (K). */
    double hottest(List<JacketStation> stations, WallMaterial material) {
        int throat = checked(stations);
        int chamber = throat / CHAMBER;
        double atThroat = missed(stations.get(throat), material);
        JacketStation before = stations.get(chamber);
        double inChamber =
                chamber < throat && heated(before) ? at(before, material).missed(before, material) : atThroat;
        double hottest = 0;
        for (int i = 0; i < stations.size(); i++) {
            JacketStation s = stations.get(i);
            if (heated(s)) {
                double along = Math.max(0, Math.min(1, (i - chamber) / (double) Math.max(1, throat - chamber)));
                double missed = inChamber + along * (atThroat - inChamber);
                hottest = Math.max(hottest, s.gasSideWallTemperature() + hotSpot(s, material) + missed * s.heatFlux());
            }
        }
        return hottest;
    }

    /** What the closed form misses at the station of this check, over the flux (K·m²/W). */
    private double missed(JacketStation own, WallMaterial material) {
        return (cellWallTemperature - finWallTemperature - hotSpot(own, material)) / finHeatFlux;
    }

    private static double hotSpot(JacketStation s, WallMaterial material) {
        return HotSpot.excess(
                s.channelWidth(),
                s.channelHeight(),
                s.landWidth(),
                s.wallThickness(),
                conductivity(s, material),
                gasCoefficient(s),
                s.coolantSideCoefficient(),
                s.adiabaticWallTemperature() - s.coolantTemperature());
    }

    /** Of the convection alone, the layers on the wall included (W/(m²·K)). */
    private static double gasCoefficient(JacketStation s) {
        return (s.heatFlux() - s.radiativeHeatFlux()) / (s.adiabaticWallTemperature() - s.gasSideWallTemperature());
    }

    private static double conductivity(JacketStation s, WallMaterial material) {
        return material.conductivity().at(0.5 * (s.gasSideWallTemperature() + s.coolantSideWallTemperature()));
    }

    private static CellCheck at(JacketStation s, WallMaterial material) {
        ChannelCell.Answer cell = ChannelCell.solve(new ChannelCell.Setting(
                s.channelWidth(),
                s.channelHeight(),
                s.landWidth(),
                s.wallThickness(),
                SHELL_OVER_WALL * s.wallThickness(),
                conductivity(s, material),
                gasCoefficient(s),
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
