package dev.penstock.cooling.wall;

import dev.penstock.errors.NotConverged;
import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Two-dimensional conduction in half a channel and half a land, by finite volumes: the check on the fin model.
 * <pre>∇·(k ∇T) = 0;  hot face h_g (T_aw − T) + q_rad;  wetted faces h_c (T − T_b);  symmetry planes and outside adiabatic</pre>
 * Square-ish volumes, harmonic conduction, conjugate gradients on the symmetric system. Constant conductivity, as in the fin
 * model it checks. Standard method [patankar-1980].
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
     * @param iterations conjugate gradient steps
     */
    public record Answer(
            double heatFlux,
            double hottest,
            double meanHotFace,
            double coldestHotFace,
            double imbalance,
            int iterations) {}

    private static final int MAX_ITERATIONS = 20_000;
    private static final double TOLERANCE = 1e-11;

    private final Setting setting;
    private final int nx;
    private final int ny;
    private final int channelColumns;
    private final int firstChannelRow;
    private final int endChannelRow;
    private final double[] dx;
    private final double[] dy;
    private final double[] diagonal;
    private final double[] east;
    private final double[] north;
    private final double[] source;
    private final boolean[] solid;

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
        diagonal = new double[nx * ny];
        east = new double[nx * ny];
        north = new double[nx * ny];
        source = new double[nx * ny];
        solid = new boolean[nx * ny];
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
     * @throws NotConverged if the conjugate gradients do not reach the tolerance
     */
    public static Answer solve(Setting setting, int across) {
        Require.within("channel cell", "volumes across the half channel (-)", across, 4, 200);
        return new ChannelCell(setting, across).answer();
    }

    private boolean channel(int i, int j) {
        return i < channelColumns && j >= firstChannelRow && j < endChannelRow;
    }

    private void assemble() {
        double k = setting.conductivity;
        for (int j = 0; j < ny; j++) {
            for (int i = 0; i < nx; i++) {
                int c = j * nx + i;
                solid[c] = !channel(i, j);
                if (!solid[c]) {
                    diagonal[c] = 1;
                    continue;
                }
                if (j == 0) {
                    toFluid(c, dx[i], dy[0], setting.gasCoefficient, gasTemperature());
                }
                if (i + 1 < nx) {
                    couple(c, c + 1, east, k * dy[j] / (0.5 * (dx[i] + dx[i + 1])));
                }
                if (i > 0 && channel(i - 1, j)) {
                    toFluid(c, dy[j], dx[i], setting.coolantCoefficient, setting.coolantTemperature);
                }
                if (j + 1 < ny) {
                    if (channel(i, j + 1)) {
                        toFluid(c, dx[i], dy[j], setting.coolantCoefficient, setting.coolantTemperature);
                    } else {
                        couple(c, c + nx, north, k * dx[i] / (0.5 * (dy[j] + dy[j + 1])));
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

    private void couple(int c, int other, double[] side, double conductance) {
        side[c] = conductance;
        diagonal[c] += conductance;
        diagonal[other] += conductance;
    }

    private void toFluid(int c, double face, double depth, double coefficient, double temperature) {
        double conductance = face / (1 / coefficient + 0.5 * depth / setting.conductivity);
        diagonal[c] += conductance;
        source[c] += conductance * temperature;
    }

    private Answer answer() {
        int n = nx * ny;
        double[] t = new double[n];
        double[] r = new double[n];
        double[] p = new double[n];
        double[] ap = new double[n];
        java.util.Arrays.fill(t, setting.coolantTemperature);
        multiply(t, ap);
        double scale = 0;
        double rho = 0;
        for (int c = 0; c < n; c++) {
            r[c] = solid[c] ? source[c] - ap[c] : 0;
            p[c] = r[c] / diagonal[c];
            rho += r[c] * p[c];
            scale += source[c] * source[c] / diagonal[c];
        }
        int iteration = 0;
        while (rho > TOLERANCE * TOLERANCE * scale) {
            if (iteration++ == MAX_ITERATIONS) {
                throw new NotConverged("channel cell", iteration, Math.sqrt(rho / scale), "conjugate gradients stall");
            }
            multiply(p, ap);
            double pap = 0;
            for (int c = 0; c < n; c++) {
                pap += p[c] * ap[c];
            }
            double alpha = rho / pap;
            double next = 0;
            for (int c = 0; c < n; c++) {
                t[c] += alpha * p[c];
                r[c] -= alpha * ap[c];
                next += r[c] * r[c] / diagonal[c];
            }
            for (int c = 0; c < n; c++) {
                p[c] = r[c] / diagonal[c] + next / rho * p[c];
            }
            rho = next;
        }
        return summary(t, iteration);
    }

    private void multiply(double[] x, double[] y) {
        for (int c = 0; c < x.length; c++) {
            y[c] = solid[c] ? diagonal[c] * x[c] : 0;
        }
        for (int c = 0; c < x.length; c++) {
            if (east[c] != 0) {
                y[c] -= east[c] * x[c + 1];
                y[c + 1] -= east[c] * x[c];
            }
            if (north[c] != 0) {
                y[c] -= north[c] * x[c + nx];
                y[c + nx] -= north[c] * x[c];
            }
        }
    }

    private Answer summary(double[] t, int iterations) {
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
        for (int c = 0; c < t.length; c++) {
            if (solid[c]) {
                out += toCoolant(c, t[c]);
            }
        }
        return new Answer(heat / pitch, hottest, mean / pitch, coldest, (heat - out) / heat, iterations);
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
