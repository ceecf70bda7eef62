package dev.penstock.cooling.march;

import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.ChannelSection;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.errors.InvalidInput;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** Channel dimensions in every cell of a {@link JacketGrid}. Arrays written once here and only read afterwards. */
public final class ChannelGrid {

    /** Share of the pitch by which tubes that touch are pressed narrower (-). */
    private static final double TUBE_FLATTENING = 0.15;

    public final ChannelKind kind;
    public final double count;
    final double roughness;
    /** Wall between gas and channel floor (m). */
    public final double[] thickness;

    public final double[] width;
    public final double[] height;
    public final double[] land;

    /** Cross-section of one channel (m²) and its hydraulic diameter (m). */
    final double[] flowArea;

    final double[] hydraulicDiameter;

    /** Cell by cell, ready for use by the march. */
    ChannelGrid(JacketGrid grid, ChannelKind kind, double count, double roughness, double thickness) {
        this.kind = kind;
        this.count = count;
        this.roughness = roughness;
        this.thickness = new double[grid.cells];
        Arrays.fill(this.thickness, thickness);
        width = new double[grid.cells];
        height = new double[grid.cells];
        land = new double[grid.cells];
        flowArea = new double[grid.cells];
        hydraulicDiameter = new double[grid.cells];
    }

    /** Circumference at the channel floor, or length where they run around, over the number of channels (m). */
    double pitch(JacketGrid grid, int cell) {
        return grid.around ? grid.wallLength / count : 2 * Math.PI * (grid.radius[cell] + thickness[cell]) / count;
    }

    void set(JacketGrid grid, int cell, double w, double h) {
        width[cell] = w;
        height[cell] = h;
        land[cell] = pitch(grid, cell) - w;
        if (kind == ChannelKind.TUBE) {
            flowArea[cell] = Math.PI / 4 * w * h;
            hydraulicDiameter[cell] = 4 * flowArea[cell] / ellipsePerimeter(w, h);
        } else {
            flowArea[cell] = w * h;
            hydraulicDiameter[cell] = 2 * w * h / (w + h);
        }
    }

    /** Perimeter of an ellipse by Ramanujan's first formula; exact for a circle. */
    static double ellipsePerimeter(double a, double b) {
        return Math.PI / 2 * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b)));
    }

    /**
     * @param grid cells
     * @param layout channels with sections
     * @param thickness wall thickness (m)
     * @return the layout's sizes in every cell
     * @throws InvalidInput if channels overlap somewhere, naming the place
     */
    public static ChannelGrid of(JacketGrid grid, ChannelLayout layout, double thickness) {
        List<ChannelSection> sections = layout.sections();
        double narrowest = sizeAt(sections, 0, ChannelSection::width);
        double wallsBetween = layout.kind() == ChannelKind.TUBE ? 2 * thickness : narrowest;
        double count = layout.count()
                .orElseGet(() -> Math.max(
                        1,
                        Math.floor((grid.around ? grid.wallLength : 2 * Math.PI * (grid.narrowestRadius + thickness))
                                / (narrowest + wallsBetween))));
        ChannelGrid channels = new ChannelGrid(grid, layout.kind(), count, layout.roughnessUsed(), thickness);
        for (int c = grid.first; c < grid.cells; c++) {
            channels.thickness[c] =
                    sizeAt(sections, grid.place[c], s -> s.wall().orElse(thickness));
            double w = sizeAt(sections, grid.place[c], ChannelSection::width);
            double h = sizeAt(sections, grid.place[c], ChannelSection::height);
            channels.set(grid, c, w, h);
            channels.check(grid, c);
            channels.press(grid, c);
        }
        return channels;
    }

    /** Tubes that are a little too wide for their place are pressed, as they are when a bundle is brazed. */
    private void press(JacketGrid grid, int cell) {
        double room = pitch(grid, cell) - 2 * thickness[cell];
        if (kind == ChannelKind.TUBE && width[cell] > room) {
            set(grid, cell, room, height[cell]);
        }
    }

    private void check(JacketGrid grid, int cell) {
        double least = kind == ChannelKind.TUBE ? 2 * thickness[cell] - TUBE_FLATTENING * pitch(grid, cell) : 0;
        if (!(land[cell] > least)) {
            throw new InvalidInput(
                    "",
                    "cooling.channel_width",
                    String.format(Locale.ROOT, "%.4g mm", 1e3 * width[cell]),
                    String.format(
                            Locale.ROOT,
                            "%.0f channels of that width overlap at x = %.4g m (area ratio %.4g, wall radius %.4g mm), where"
                                    + " the pitch is %.4g mm%s",
                            count,
                            grid.x[cell],
                            grid.areaRatio[cell],
                            1e3 * grid.radius[cell],
                            1e3 * pitch(grid, cell),
                            kind == ChannelKind.TUBE
                                    ? String.format(
                                            Locale.ROOT, " and two tube walls need %.4g mm", 2e3 * thickness[cell])
                                    : ""));
        }
    }

    /** Size between the sections, linear over the logarithm of area ratio, constant beyond the outermost. */
    private static double sizeAt(List<ChannelSection> sections, double place, ToDoubleFunction<ChannelSection> size) {
        ChannelSection previous = sections.get(0);
        if (place <= previous.place()) {
            return size.applyAsDouble(previous);
        }
        for (int i = 1; i < sections.size(); i++) {
            ChannelSection next = sections.get(i);
            if (place <= next.place()) {
                double fraction = (place - previous.place()) / (next.place() - previous.place());
                double from = size.applyAsDouble(previous);
                return from + fraction * (size.applyAsDouble(next) - from);
            }
            previous = next;
        }
        return size.applyAsDouble(previous);
    }
}
