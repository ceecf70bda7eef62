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
 * Square-ish volumes, harmonic conduction; the symmetric system is solved directly, row by row of metal. Constant conductivity,
 * as in the fin model it checks. Standard method [patankar-1980].
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

    private final Setting setting;
    private final int nx;
    private final int ny;
    private final int channelColumns;
    private final int firstChannelRow;
    private final int endChannelRow;
    private final double[] dx;
    private final double[] dy;
    /** Number of the volume's equation, row by row of metal; -1 in the channel. */
    private final int[] equation;

    private final EnvelopeCholesky system;
    /** Heat from fluids at no temperature of the metal, then the temperatures (W/m, K). */
    private final double[] temperatures;

    private ChannelCell(Setting s, int across) {
        setting = s;
        channelColumns = across;
        int landColumns = Math.max(4, (int) Math.round(across * s.land / s.width));
        nx = across + landColumns;
        double step = 0.5 * s.width / across;
        int wallRows = Math.max(6, (int) Math.round(s.wall / step));
        int channelRows = Math.max(8, (int) Math.round(s.height / step));
        int shellRows = Math.max(4, (int) Math.round(s.shell / step));
        firstChannelRow = wallRows;
        endChannelRow = wallRows + channelRows;
        ny = endChannelRow + shellRows;
        dx = new double[nx];
        dy = new double[ny];
        for (int i = 0; i < nx; i++) {
            dx[i] = i < across ? 0.5 * s.width / across : 0.5 * s.land / landColumns;
        }
        for (int j = 0; j < ny; j++) {
            dy[j] = j < wallRows ? s.wall / wallRows : j < endChannelRow ? s.height / channelRows : s.shell / shellRows;
        }
        equation = new int[nx * ny];
        int[] first = number();
        system = new EnvelopeCholesky(first);
        temperatures = new double[first.length];
        assemble();
    }

    /**
     * @param setting what surrounds the cell
     * @return temperatures and flux on a grid of 16 volumes across the half channel
     */
    public static Answer solve(Setting setting) {
        return solve(setting, 16);
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

    private boolean channel(int i, int j) {
        return i < channelColumns && j >= firstChannelRow && j < endChannelRow;
    }

    /** Numbers the equations; each row of the system begins with the neighbour below or the one before. */
    private int[] number() {
        int count = 0;
        int[] first = new int[nx * ny];
        for (int j = 0; j < ny; j++) {
            for (int i = 0; i < nx; i++) {
                int c = j * nx + i;
                equation[c] = channel(i, j) ? -1 : count;
                if (equation[c] < 0) {
                    continue;
                }
                first[count] = count;
                if (i > 0 && equation[c - 1] >= 0) {
                    first[count] = equation[c - 1];
                }
                if (j > 0 && equation[c - nx] >= 0) {
                    first[count] = equation[c - nx];
                }
                count++;
            }
        }
        return Arrays.copyOf(first, count);
    }

    private void assemble() {
        double k = setting.conductivity;
        for (int j = 0; j < ny; j++) {
            for (int i = 0; i < nx; i++) {
                int c = j * nx + i;
                if (equation[c] < 0) {
                    continue;
                }
                if (j == 0) {
                    toFluid(c, dx[i], dy[0], setting.gasCoefficient, gasTemperature());
                }
                if (i + 1 < nx) {
                    couple(c, c + 1, k * dy[j] / (0.5 * (dx[i] + dx[i + 1])));
                }
                if (i > 0 && channel(i - 1, j)) {
                    toFluid(c, dy[j], dx[i], setting.coolantCoefficient, setting.coolantTemperature);
                }
                if (j + 1 < ny) {
                    if (channel(i, j + 1)) {
                        toFluid(c, dx[i], dy[j], setting.coolantCoefficient, setting.coolantTemperature);
                    } else {
                        couple(c, c + nx, k * dx[i] / (0.5 * (dy[j] + dy[j + 1])));
                    }
                }
                if (j > 0 && channel(i, j - 1)) {
                    toFluid(c, dx[i], dy[j], setting.coolantCoefficient, setting.coolantTemperature);
                }
            }
        }
    }

    /** Gas temperature that gives the same flux as convection and radiation together. */
    private double gasTemperature() {
        return setting.adiabaticWallTemperature + setting.radiation / setting.gasCoefficient;
    }

    private void couple(int c, int later, double conductance) {
        int row = equation[c];
        int other = equation[later];
        system.add(row, row, conductance);
        system.add(other, other, conductance);
        system.add(other, row, -conductance);
    }

    private void toFluid(int c, double face, double depth, double coefficient, double temperature) {
        double conductance = face / (1 / coefficient + 0.5 * depth / setting.conductivity);
        int row = equation[c];
        system.add(row, row, conductance);
        temperatures[row] += conductance * temperature;
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
            double resistance = 1 / setting.gasCoefficient + 0.5 * dy[0] / setting.conductivity;
            double flux = (gasTemperature() - t[i]) / resistance;
            double face = t[i] + flux * 0.5 * dy[0] / setting.conductivity;
            heat += flux * dx[i];
            mean += face * dx[i];
            pitch += dx[i];
            hottest = Math.max(hottest, face);
            coldest = Math.min(coldest, face);
        }
        double out = 0;
        for (int c = 0; c < equation.length; c++) {
            if (equation[c] >= 0) {
                out += toCoolant(c, t[equation[c]]);
            }
        }
        return new Answer(heat / pitch, hottest, mean / pitch, coldest, (heat - out) / heat);
    }

    private double toCoolant(int c, double temperature) {
        int i = c % nx;
        int j = c / nx;
        double heat = 0;
        if (i > 0 && channel(i - 1, j)) {
            heat += conductance(dy[j], dx[i]);
        }
        if (j + 1 < ny && channel(i, j + 1) || j > 0 && channel(i, j - 1)) {
            heat += conductance(dx[i], dy[j]);
        }
        return heat * (temperature - setting.coolantTemperature);
    }

    private double conductance(double face, double depth) {
        return face / (1 / setting.coolantCoefficient + 0.5 * depth / setting.conductivity);
    }
}
