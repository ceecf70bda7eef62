package dev.penstock.cooling.wall;

import dev.penstock.errors.NotConverged;
import dev.penstock.errors.Require;
import dev.penstock.numerics.EnvelopeCholesky;
import dev.penstock.provenance.ModelCard;
import java.util.Arrays;
import java.util.List;

/**
 * Two-dimensional conduction in half a channel and half a land, by finite volumes: the check on the fin model.
 * <pre>∇·(k ∇T) = 0;  hot face h_g (T_aw − T) + q_rad;  wetted faces h_c (T − T_b);  symmetry planes and outside adiabatic</pre>
 * As many volumes whatever the dimensions, so that the answer is as smooth in them as the equation; harmonic conduction. Rows that are
 * alike are brought down to their ends ({@link CellStrip}), so that many cost no more than few, and what is left is solved directly. Constant conductivity, as in the fin model it checks. Standard method [patankar-1980].
 */
public final class ChannelCell {

    public static final ModelCard CARD = new ModelCard(
            "cooling.channel-cell",
            "Two-dimensional conduction in a channel cell",
            "div(k grad T) = 0, convection on hot and wetted faces",
            "steady, no conduction along the axis",
            "0.5 % at the default grid (own comparison of grids)",
            List.of("patankar-1980"));

    /**
     * What surrounds the cell.
     *
     * @param width channel width (m)
     * @param height channel height (m)
     * @param land land width (m)
     * @param wall wall between gas and channel (m)
     * @param shell shell outside the channel (m)
     * @param conductivity conductivity of the metal (W/(m·K))
     * @param gasCoefficient gas-side coefficient (W/(m²·K))
     * @param adiabaticWallTemperature adiabatic wall temperature (K)
     * @param radiation radiative flux (W/m²)
     * @param coolantCoefficient coolant-side coefficient (W/(m²·K))
     * @param coolantTemperature bulk temperature of the coolant (K)
     */
    public record Setting(
            double width,
            double height,
            double land,
            double wall,
            double shell,
            double conductivity,
            double gasCoefficient,
            double adiabaticWallTemperature,
            double radiation,
            double coolantCoefficient,
            double coolantTemperature) {

        public Setting {
            Require.positive("channel cell", "width (m)", width);
            Require.positive("channel cell", "height (m)", height);
            Require.positive("channel cell", "land (m)", land);
            Require.positive("channel cell", "wall (m)", wall);
            Require.positive("channel cell", "shell (m)", shell);
            Require.positive("channel cell", "conductivity (W/(m·K))", conductivity);
            Require.positive("channel cell", "gas coefficient (W/(m²·K))", gasCoefficient);
            Require.positive("channel cell", "adiabatic wall temperature (K)", adiabaticWallTemperature);
            Require.notNegative("channel cell", "radiation (W/m²)", radiation);
            Require.positive("channel cell", "coolant coefficient (W/(m²·K))", coolantCoefficient);
            Require.positive("channel cell", "coolant temperature (K)", coolantTemperature);
        }
    }

    /**
     * What comes out.
     *
     * @param heatFlux mean flux through the hot face (W/m²)
     * @param hottest hottest place of the hot face (K)
     * @param meanHotFace mean temperature of the hot face (K)
     * @param coldestHotFace coldest place of the hot face (K)
     * @param imbalance heat in less heat out over heat in (-)
     */
    public record Answer(
            double heatFlux, double hottest, double meanHotFace, double coldestHotFace, double imbalance) {}

    /** Rows for each volume across the half channel, in wall, channel and shell. */
    private static final int WALL_ROWS = 2;

    private static final int CHANNEL_ROWS = 64;
    private static final int SHELL_ROWS = 2;

    private final Setting setting;
    private final int across;
    private final int nx;
    private final double[] dx;
    private final double wallStep;
    private final double channelStep;
    private final double shellStep;
    private final CellStrip wall;
    private final CellStrip land;
    private final CellStrip shell;

    /** Equations of the first volumes of the rows that are kept: first and last of wall, land and shell. */
    private final int[] kept;

    private final EnvelopeCholesky system;
    /** Heat from the gas, then the temperatures above the coolant (W/m, K). */
    private final double[] temperatures;

    private ChannelCell(Setting s, int across) {
        setting = s;
        this.across = across;
        int landColumns = across;
        nx = across + landColumns;
        int wallRows = WALL_ROWS * across;
        int channelRows = CHANNEL_ROWS * across;
        int shellRows = SHELL_ROWS * across;
        wallStep = s.wall / wallRows;
        channelStep = s.height / channelRows;
        shellStep = s.shell / shellRows;
        dx = new double[nx];
        for (int i = 0; i < nx; i++) {
            dx[i] = i < across ? 0.5 * s.width / across : 0.5 * s.land / landColumns;
        }
        double[] landWidths = Arrays.copyOfRange(dx, across, nx);
        wall = new CellStrip(dx, wallStep, wallRows, s.conductivity, 0);
        land = new CellStrip(
                landWidths, channelStep, channelRows, s.conductivity, conductance(channelStep, dx[across]));
        shell = new CellStrip(dx, shellStep, shellRows, s.conductivity, 0);
        kept = new int[] {0, nx, 2 * nx, 2 * nx + landColumns, 2 * nx + 2 * landColumns, 3 * nx + 2 * landColumns};
        int count = 4 * nx + 2 * landColumns;
        int[] first = new int[count];
        for (int group = 1; group < kept.length; group++) {
            int end = group + 1 < kept.length ? kept[group + 1] : count;
            Arrays.fill(first, kept[group], end, kept[group - 1]);
        }
        system = new EnvelopeCholesky(first);
        temperatures = new double[count];
        assemble();
    }

    /**
     * @param setting what surrounds the cell
     * @return temperatures and flux on a grid of 12 volumes across the half channel, and as many across the half land
     */
    public static Answer solve(Setting setting) {
        return solve(setting, 12);
    }

    /**
     * @param setting what surrounds the cell
     * @param across volumes across the half channel
     * @return temperatures and flux
     * @throws NotConverged if the system cannot be solved
     */
    public static Answer solve(Setting setting, int across) {
        Require.within("channel cell", "volumes across the half channel (-)", across, 4, 200);
        return new ChannelCell(setting, across).answer();
    }

    private void assemble() {
        wall.addTo(system, kept[0], kept[1]);
        land.addTo(system, kept[2], kept[3]);
        shell.addTo(system, kept[4], kept[5]);
        for (int i = 0; i < nx; i++) {
            double gas = dx[i] / (1 / setting.gasCoefficient + 0.5 * wallStep / setting.conductivity);
            system.add(kept[0] + i, kept[0] + i, gas);
            temperatures[kept[0] + i] = gas * (gasTemperature() - setting.coolantTemperature);
            if (i < across) {
                system.add(kept[1] + i, kept[1] + i, conductance(dx[i], wallStep));
                system.add(kept[4] + i, kept[4] + i, conductance(dx[i], shellStep));
            } else {
                couple(kept[1] + i, kept[2] + i - across, dx[i], wallStep);
                couple(kept[3] + i - across, kept[4] + i, dx[i], shellStep);
            }
        }
    }

    /** Gas temperature that gives the same flux as convection and radiation together. */
    private double gasTemperature() {
        return setting.adiabaticWallTemperature + setting.radiation / setting.gasCoefficient;
    }

    /** Couples a row of the land to one of wall or shell. */
    private void couple(int row, int later, double face, double step) {
        double conductance = setting.conductivity * face / (0.5 * (step + channelStep));
        system.add(row, row, conductance);
        system.add(later, later, conductance);
        system.add(later, row, -conductance);
    }

    private Answer answer() {
        if (!system.solve(temperatures)) {
            throw new NotConverged("channel cell", 1, Double.POSITIVE_INFINITY, "its equations have no solution");
        }
        return summary(temperatures);
    }

    private Answer summary(double[] t) {
        double heat = 0;
        double mean = 0;
        double hottest = 0;
        double coldest = Double.POSITIVE_INFINITY;
        double pitch = 0;
        for (int i = 0; i < nx; i++) {
            double resistance = 1 / setting.gasCoefficient + 0.5 * wallStep / setting.conductivity;
            double metal = setting.coolantTemperature + t[i];
            double flux = (gasTemperature() - metal) / resistance;
            double face = metal + flux * 0.5 * wallStep / setting.conductivity;
            heat += flux * dx[i];
            mean += face * dx[i];
            pitch += dx[i];
            hottest = Math.max(hottest, face);
            coldest = Math.min(coldest, face);
        }
        double out = land.toSide(t, kept[2], kept[3]);
        for (int i = 0; i < across; i++) {
            out += conductance(dx[i], wallStep) * t[kept[1] + i] + conductance(dx[i], shellStep) * t[kept[4] + i];
        }
        return new Answer(heat / pitch, hottest, mean / pitch, coldest, (heat - out) / heat);
    }

    /** Conductance from the middle of a volume to the coolant (W/(m·K)). */
    private double conductance(double face, double depth) {
        return face / (1 / setting.coolantCoefficient + 0.5 * depth / setting.conductivity);
    }
}
