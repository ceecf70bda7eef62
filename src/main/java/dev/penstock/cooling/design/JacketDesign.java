package dev.penstock.cooling.design;

import dev.penstock.cooling.coolant.CoolantSideDesign;
import dev.penstock.cooling.gas.GasSideDesign;
import dev.penstock.cooling.wall.WallDesign;
import dev.penstock.errors.Require;
import java.util.Objects;
import java.util.Optional;

/**
 * A jacket as designed. Whatever is left open is chosen by the solver and reported.
 *
 * @param circuit which of the engine's circuits it belongs to
 * @param wall wall and shell
 * @param channels channels
 * @param route way of the coolant
 * @param gasSide models of the gas side
 * @param coolantSide models of the coolant side
 * @param limits what it is held against
 * @param cells number of cells along the jacket (-)
 * @param extension what follows where the jacket ends before the nozzle does; empty where another jacket follows
 */
public record JacketDesign(
        CircuitKey circuit,
        WallDesign wall,
        ChannelLayout channels,
        CoolantRoute route,
        GasSideDesign gasSide,
        CoolantSideDesign coolantSide,
        JacketLimits limits,
        int cells,
        Optional<ExtensionDesign> extension) {

    public JacketDesign {
        Objects.requireNonNull(circuit, "circuit");
        Objects.requireNonNull(wall, "wall");
        Objects.requireNonNull(channels, "channels");
        Objects.requireNonNull(route, "route");
        Objects.requireNonNull(gasSide, "gasSide");
        Objects.requireNonNull(coolantSide, "coolantSide");
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(extension, "extension");
        Require.within("jacket", "number of cells (-)", cells, 4, 10_000);
    }

    /**
     * @param layout channels
     * @return the same jacket with those channels, for example the ones that an earlier solution was sized to
     */
    public JacketDesign withChannels(ChannelLayout layout) {
        return new JacketDesign(circuit, wall, layout, route, gasSide, coolantSide, limits, cells, extension);
    }

    /**
     * @param newWall wall
     * @return the same jacket with that wall
     */
    public JacketDesign withWall(WallDesign newWall) {
        return new JacketDesign(circuit, newWall, channels, route, gasSide, coolantSide, limits, cells, extension);
    }

    /**
     * @param newRoute way of the coolant
     * @return the same jacket with that route
     */
    public JacketDesign withRoute(CoolantRoute newRoute) {
        return new JacketDesign(circuit, wall, channels, newRoute, gasSide, coolantSide, limits, cells, extension);
    }

    /**
     * @param newGasSide models of the gas side
     * @return the same jacket with those models
     */
    public JacketDesign withGasSide(GasSideDesign newGasSide) {
        return new JacketDesign(circuit, wall, channels, route, newGasSide, coolantSide, limits, cells, extension);
    }

    /**
     * @param newCoolantSide models of the coolant side
     * @return the same jacket with those models
     */
    public JacketDesign withCoolantSide(CoolantSideDesign newCoolantSide) {
        return new JacketDesign(circuit, wall, channels, route, gasSide, newCoolantSide, limits, cells, extension);
    }

    /**
     * @param newLimits limits
     * @return the same jacket with those limits
     */
    public JacketDesign withLimits(JacketLimits newLimits) {
        return new JacketDesign(circuit, wall, channels, route, gasSide, coolantSide, newLimits, cells, extension);
    }

    /**
     * @param newCells number of cells
     * @return the same jacket with that many cells
     */
    public JacketDesign withCells(int newCells) {
        return new JacketDesign(circuit, wall, channels, route, gasSide, coolantSide, limits, newCells, extension);
    }
}
