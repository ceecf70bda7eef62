package dev.penstock.reports.slide;

import dev.penstock.fluids.Propellant;
import dev.penstock.reports.chart.Ink;
import dev.penstock.vehicle.mass.StageContents;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** What is written beside a drawn vehicle, each text with a line to the part that it is about. */
final class VehicleLabels {

    /** Size of the letters (px). */
    static final double SIZE = 25;
    /** Room between vehicle and text (px). */
    static final double LEADER = 60;
    /** Room between the end of that line and the text (px). */
    static final double GAP = 14;
    /** Height of the line that explains the colours (px). */
    private static final double KEY = 46;

    /** What is written beside a place along the axis (m). */
    private record Label(double place, List<String> lines) {}

    private final List<Label> labels;

    private VehicleLabels(List<Label> labels) {
        this.labels = List.copyOf(labels);
    }

    /** What is said of each stage from the lowest up, and of the payload. */
    static VehicleLabels of(VehicleSizing vehicle) {
        double z = 0;
        List<Label> texts = new ArrayList<>();
        for (StageSizing s : vehicle.stages()) {
            StageContents c = s.contents();
            List<String> lines = new ArrayList<>();
            lines.add(s.name());
            lines.add(Propellant.pair(
                    s.engine().oxidizer().propellant(), s.engine().fuel().propellant()));
            lines.add(VehicleSlide.tonnes(s.propellant().loaded()) + " propellant, "
                    + VehicleSlide.tonnes(s.dryMass().total()) + " dry");
            lines.add((s.engines() == 1 ? "1 engine: " : s.engines() + " engines: ")
                    + s.engine().name());
            lines.add(VehicleSlide.metres(c.length()) + " long, " + VehicleSlide.metres(c.diameter()) + " across");
            s.boosters()
                    .ifPresent(b -> lines.add(b.count() + " boosters beside it, each "
                            + VehicleSlide.tonnes(b.loadedEach()) + " of propellant"));
            texts.add(new Label(z + c.length() / 2, lines));
            z += c.length();
        }
        StageSizing top = vehicle.stages().get(vehicle.stages().size() - 1);
        texts.add(new Label(
                z + VehicleSlide.NOSE * top.contents().diameter() / 2,
                List.of("payload " + VehicleSlide.tonnes(vehicle.payload()), "shape of the nose is assumed")));
        return new VehicleLabels(texts);
    }

    /** Width of the widest line (px). */
    double width() {
        return width(labels);
    }

    /** Height of the highest label (px). */
    double height() {
        return labels.stream().mapToDouble(t -> height(t.lines())).max().orElse(0);
    }

    private static double width(List<Label> texts) {
        return texts.stream()
                .flatMap(t -> t.lines().stream())
                .mapToDouble(line -> Pencil.width(line, SIZE, true))
                .max()
                .orElse(0);
    }

    private static double height(List<String> lines) {
        return lines.size() * SIZE * Pencil.LEADING;
    }

    /** To the right of the vehicle, from the lowest up; a leader goes level to its dot, or bends where the texts are crowded. */
    void beside(Pencil pencil, VehicleFrame f, Rectangle2D room, double half) {
        double x = f.across(half) + LEADER;
        double free = room.getMaxY() - KEY;
        for (Label text : labels) {
            double place = f.along(text.place());
            double height = height(text.lines());
            double top = Math.max(room.getY(), Math.min(place - height / 2, free - height));
            free = top - SIZE / 2;
            double level = Math.max(top, Math.min(place, top + height));
            Path2D leader = new Path2D.Double();
            leader.moveTo(f.across(0), place);
            leader.lineTo(f.across(half) + LEADER / 3, place);
            leader.lineTo(x, level);
            leader.moveTo(x, top);
            leader.lineTo(x, top + height);
            pencil.line(leader, pencil.color(Ink.TEXT), 1.5);
            dot(pencil, f, text.place());
            write(pencil, text.lines(), x + GAP, top + SIZE, false);
        }
    }

    /** Above and below a vehicle that lies, in turn; one that would leave the sheet stands to the left of its leader. */
    void aboveAndBelow(Pencil pencil, VehicleFrame f, Rectangle2D room, double half) {
        for (int i = 0; i < labels.size(); i++) {
            Label text = labels.get(i);
            double place = f.along(text.place());
            double height = height(text.lines());
            double top = i % 2 == 0 ? f.across(-half) - LEADER / 2 - height : f.across(half) + LEADER / 2;
            pencil.line(
                    new Line2D.Double(place, f.across(0), place, i % 2 == 0 ? top : top + height),
                    pencil.color(Ink.TEXT),
                    1.5);
            dot(pencil, f, text.place());
            boolean left = place + GAP + width(List.of(text)) > room.getMaxX();
            write(pencil, text.lines(), left ? place - GAP : place + GAP, top + SIZE, left);
        }
    }

    private static void dot(Pencil pencil, VehicleFrame f, double z) {
        Point2D p = f.at(z, 0);
        pencil.fill(new Ellipse2D.Double(p.getX() - 5, p.getY() - 5, 10, 10), pencil.color(Ink.TEXT));
    }

    private static void write(Pencil pencil, List<String> lines, double x, double y, boolean toTheLeft) {
        for (int i = 0; i < lines.size(); i++) {
            double from = toTheLeft ? x - Pencil.width(lines.get(i), SIZE, i == 0) : x;
            pencil.text(lines.get(i), from, y + i * SIZE * Pencil.LEADING, SIZE, i == 0, pencil.color(Ink.TEXT));
        }
    }
}
