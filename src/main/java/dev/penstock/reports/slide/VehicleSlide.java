package dev.penstock.reports.slide;

import dev.penstock.quantities.Notation;
import dev.penstock.quantities.Scale;
import dev.penstock.reports.chart.Ink;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.StageContents;
import dev.penstock.vehicle.mass.TankShape;
import dev.penstock.vehicle.stage.BoosterSizing;
import dev.penstock.vehicle.stage.LiquidBoosters;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A vehicle with its tanks, to scale, lying on its side where there is more width than height, beside a bar as high as a
 * person. Tanks, stages and engine bays are as sized; nose cones stand for what no model sizes.
 */
final class VehicleSlide {

    private static final double PERSON = 1.75;
    private static final double SIZE = 25;
    /** Share of ink in the colour of a tank. */
    private static final double TANK = 0.75;

    /** Length of a nose over the diameter below it. */
    private static final double NOSE = 1.6;
    /** Length of the nozzle drawn below a solid booster over its diameter. */
    private static final double SOLID_NOZZLE = 0.7;
    /** Share of the engine bay that a nozzle takes at most. */
    private static final double BAY = 0.55;

    /**
     * Where a place of the vehicle is drawn.
     *
     * @param upright whether it stands
     * @param scale length of a metre (px)
     * @param origin place of the lowest nozzle exit along the axis (px)
     * @param axis place of the axis across it (px)
     */
    private record Frame(boolean upright, double scale, double origin, double axis) {

        double along(double z) {
            return upright ? origin - scale * z : origin + scale * z;
        }

        double across(double r) {
            return axis + scale * r;
        }
    }

    /** What is written beside a place along the axis (m). */
    private record Label(double place, List<String> lines) {}

    private final VehicleSizing vehicle;

    private VehicleSlide(VehicleSizing vehicle) {
        this.vehicle = vehicle;
    }

    static Slide of(VehicleSizing vehicle) {
        VehicleSlide slide = new VehicleSlide(vehicle);
        return new Slide("vehicle", "Vehicle and tanks, to scale", slide.sentence(), slide::draw);
    }

    private String sentence() {
        return tonnes(vehicle.startMass()) + " at lift-off carry " + tonnes(vehicle.payload()) + " of payload; "
                + Notation.PERCENT.write(vehicle.propellantMass() / vehicle.startMass())
                + " is propellant. The bar beside the vehicle is as high as a person, " + height(PERSON) + ".";
    }

    private static String tonnes(double mass) {
        return Notation.TONNES.writeWithUnit(mass);
    }

    private double length() {
        double sum = 0;
        for (StageSizing s : vehicle.stages()) {
            sum += s.contents().length();
        }
        StageSizing top = vehicle.stages().get(vehicle.stages().size() - 1);
        return sum + NOSE * top.contents().diameter();
    }

    private double halfWidth() {
        double widest = 0;
        for (StageSizing s : vehicle.stages()) {
            double own = s.contents().diameter() / 2;
            widest = Math.max(
                    widest, own + s.boosters().map(BoosterSizing::diameter).orElse(0.0));
        }
        return widest;
    }

    private void draw(Pencil pencil, Rectangle2D room) {
        double length = length();
        double half = halfWidth();
        boolean upright = room.getWidth() < 1.25 * room.getHeight();
        double labels = upright ? 0.52 * room.getWidth() : 0;
        double scale = upright
                ? Math.min((room.getHeight() - 20) / length, (room.getWidth() - labels - 120) / (2 * half))
                : Math.min((room.getWidth() - 60) / length, (room.getHeight() - 340) / (2 * half));
        Frame frame = upright
                ? new Frame(true, scale, room.getMaxY() - 10, room.getX() + 110 + scale * half)
                : new Frame(
                        false,
                        scale,
                        room.getX() + 40 + (room.getWidth() - 60 - scale * length) / 2,
                        room.getY() + 170 + (room.getHeight() - 340) / 2);
        person(pencil, frame, half);
        double z = 0;
        List<StageSizing> stages = vehicle.stages();
        for (int i = 0; i < stages.size(); i++) {
            StageSizing stage = stages.get(i);
            double foot = z;
            stage.boosters().ifPresent(b -> boosters(pencil, frame, stage, b, foot));
            body(pencil, frame, stage.contents(), z, 0, exit(stage.engine()), stage.engines());
            z += stage.contents().length();
        }
        StageSizing top = stages.get(stages.size() - 1);
        nose(pencil, frame, z, 0, top.contents().diameter(), Ink.GAIN);
        labels(pencil, frame, room, half);
        key(pencil, upright ? frame.across(half) + 60 : room.getX(), room.getMaxY() - 8);
    }

    /** What the colours of tanks stand for. */
    private void key(Pencil pencil, double left, double y) {
        Map<String, Ink> inks = new LinkedHashMap<>(Map.of("oxidizer", Ink.OXIDIZER));
        inks.put("fuel", Ink.FUEL);
        if (vehicle.stages().stream().flatMap(s -> s.boosters().stream()).anyMatch(b -> b.liquid()
                .isEmpty())) {
            inks.put("solid propellant", Ink.STEEL);
        }
        double x = left;
        for (Map.Entry<String, Ink> ink : inks.entrySet()) {
            double size = SIZE * 0.8;
            pencil.fill(new Rectangle2D.Double(x, y - size, size, size), pencil.tint(ink.getValue(), TANK));
            pencil.text(ink.getKey(), x + size + 9, y, SIZE, false, pencil.color(Ink.TEXT));
            x += size + 9 + Pencil.width(ink.getKey(), SIZE, false) + 28;
        }
    }

    /** A rectangle between two places along the axis and two across it. */
    private static Rectangle2D box(Frame f, double z1, double z2, double r1, double r2) {
        double a = Math.min(f.along(z1), f.along(z2));
        double b = Math.max(f.along(z1), f.along(z2));
        double c = Math.min(f.across(r1), f.across(r2));
        double d = Math.max(f.across(r1), f.across(r2));
        return f.upright() ? new Rectangle2D.Double(c, a, d - c, b - a) : new Rectangle2D.Double(a, c, b - a, d - c);
    }

    private static Point2D at(Frame f, double z, double r) {
        return f.upright() ? new Point2D.Double(f.across(r), f.along(z)) : new Point2D.Double(f.along(z), f.across(r));
    }

    /** A stage: engines, engine bay, fuel tank, oxidizer tank, all inside one skin. */
    private static void body(Pencil pencil, Frame f, StageContents c, double z, double axis, double exit, int engines) {
        double radius = c.diameter() / 2;
        double shared = c.commonBulkhead()
                ? Math.min(c.oxidizerTank().headHeight(), c.fuelTank().headHeight())
                : 0;
        double tanks = c.oxidizerTank().length() + c.fuelTank().length() - shared;
        double equipment = c.length() - tanks;
        double bay = c.commonBulkhead() ? 0.85 * equipment : 0.6 * equipment;
        double between = c.commonBulkhead() ? 0 : 0.25 * equipment;
        double nozzle = Math.min(BAY * bay, 1.2 * exit);
        nozzles(pencil, f, z, axis, nozzle, exit, engines, radius);
        Rectangle2D skin = box(f, z + nozzle, z + c.length(), axis - radius, axis + radius);
        pencil.fill(skin, pencil.color(Ink.PANEL));
        double fuelFoot = z + bay;
        double oxidizerFoot = fuelFoot + c.fuelTank().length() - shared + between;
        tank(pencil, f, c.fuelTank(), fuelFoot, axis, Ink.FUEL);
        tank(pencil, f, c.oxidizerTank(), oxidizerFoot, axis, Ink.OXIDIZER);
        pencil.line(skin, pencil.color(Ink.TEXT), 2);
    }

    private static void nozzles(
            Pencil pencil, Frame f, double z, double axis, double length, double exit, int engines, double radius) {
        int seen = Math.max(1, Math.min(engines, (int) Math.ceil(engines / 2.0)));
        double room = Math.max(0, radius - exit / 2);
        for (int i = 0; i < seen; i++) {
            double r = axis + (seen == 1 ? 0 : room * (2.0 * i / (seen - 1) - 1));
            Path2D bell = new Path2D.Double();
            Point2D a = at(f, z, r - exit / 2);
            Point2D b = at(f, z + length, r - exit / 8);
            Point2D c = at(f, z + length, r + exit / 8);
            Point2D d = at(f, z, r + exit / 2);
            Point2D m = at(f, z + 0.6 * length, r - 0.4 * exit);
            Point2D n = at(f, z + 0.6 * length, r + 0.4 * exit);
            bell.moveTo(a.getX(), a.getY());
            bell.quadTo(m.getX(), m.getY(), b.getX(), b.getY());
            bell.lineTo(c.getX(), c.getY());
            bell.quadTo(n.getX(), n.getY(), d.getX(), d.getY());
            bell.closePath();
            pencil.fill(bell, pencil.tint(Ink.GAS, 0.45));
            pencil.line(bell, pencil.color(Ink.TEXT), 1.6);
        }
    }

    /** A cylinder between two heads that are half ellipsoids. */
    private static void tank(Pencil pencil, Frame f, TankShape tank, double foot, double axis, Ink ink) {
        double r = tank.radius();
        double head = tank.headHeight();
        Area area = new Area();
        if (tank.cylinderLength() > 0) {
            area.add(new Area(box(f, foot + head, foot + head + tank.cylinderLength(), axis - r, axis + r)));
        }
        area.add(new Area(oval(f, foot, foot + 2 * head, axis, r)));
        area.add(new Area(oval(f, foot + tank.cylinderLength(), foot + 2 * head + tank.cylinderLength(), axis, r)));
        pencil.fill(area, pencil.tint(ink, TANK));
        pencil.line(area, pencil.color(ink), 2);
    }

    private static Ellipse2D oval(Frame f, double z1, double z2, double axis, double r) {
        Rectangle2D box = box(f, z1, z2, axis - r, axis + r);
        return new Ellipse2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight());
    }

    private static void nose(Pencil pencil, Frame f, double z, double axis, double diameter, Ink ink) {
        Path2D path = new Path2D.Double();
        double r = diameter / 2;
        double end = z + NOSE * diameter;
        Point2D a = at(f, z, axis - r);
        Point2D shoulder = at(f, z + 0.55 * NOSE * diameter, axis - r);
        Point2D tip = at(f, end, axis);
        Point2D other = at(f, z + 0.55 * NOSE * diameter, axis + r);
        Point2D b = at(f, z, axis + r);
        Point2D up = at(f, z + 0.85 * NOSE * diameter, axis - 0.75 * r);
        Point2D down = at(f, z + 0.85 * NOSE * diameter, axis + 0.75 * r);
        path.moveTo(a.getX(), a.getY());
        path.lineTo(shoulder.getX(), shoulder.getY());
        path.quadTo(up.getX(), up.getY(), tip.getX(), tip.getY());
        path.quadTo(down.getX(), down.getY(), other.getX(), other.getY());
        path.lineTo(b.getX(), b.getY());
        path.closePath();
        pencil.fill(path, pencil.tint(ink, 0.3));
        pencil.line(path, pencil.color(Ink.TEXT), 2);
    }

    private void boosters(Pencil pencil, Frame f, StageSizing core, BoosterSizing b, double z) {
        double r = core.contents().diameter() / 2 + b.diameter() / 2;
        int sides = b.count() == 1 ? 1 : 2;
        for (int i = 0; i < sides; i++) {
            double axis = i == 0 ? -r : r;
            if (b.liquid().isPresent()) {
                LiquidBoosters liquid = b.liquid().get();
                body(
                        pencil,
                        f,
                        liquid.contents(),
                        z,
                        axis,
                        exit(liquid.engine()),
                        b.plan().engines());
            } else {
                solid(pencil, f, b, z, axis);
            }
            nose(pencil, f, z + b.length(), axis, b.diameter(), Ink.STEEL);
        }
    }

    /** A case full of grain over a nozzle. */
    private static void solid(Pencil pencil, Frame f, BoosterSizing b, double z, double axis) {
        double radius = b.diameter() / 2;
        double nozzle = SOLID_NOZZLE * b.diameter();
        nozzles(pencil, f, z, axis, nozzle, b.diameter(), 1, radius);
        Rectangle2D grain = box(f, z + nozzle, z + b.length(), axis - radius, axis + radius);
        pencil.fill(grain, pencil.tint(Ink.STEEL, TANK));
        pencil.line(grain, pencil.color(Ink.TEXT), 2);
    }

    private static void person(Pencil pencil, Frame f, double half) {
        double width = 0.45 * f.scale();
        double height = PERSON * f.scale();
        double x;
        double foot;
        if (f.upright()) {
            x = f.across(-half) - 40 - width / 2;
            foot = f.along(0);
        } else {
            x = f.along(0) - 34;
            foot = f.across(half);
        }
        pencil.fill(
                new RoundRectangle2D.Double(
                        x - Math.max(3, width / 2), foot - height, Math.max(6, width), height, 6, 6),
                pencil.color(Ink.TEXT));
    }

    /** Beside an upright vehicle, in the order in which the stages stand; above and below one that lies. */
    private void labels(Pencil pencil, Frame f, Rectangle2D room, double half) {
        double z = 0;
        List<Label> texts = new ArrayList<>();
        for (StageSizing s : vehicle.stages()) {
            StageContents c = s.contents();
            List<String> lines = new ArrayList<>();
            lines.add(s.name());
            lines.add(tonnes(s.propellant().loaded()) + " propellant, "
                    + tonnes(s.dryMass().total()) + " dry");
            lines.add(s.engines() + (s.engines() == 1 ? " engine" : " engines"));
            lines.add(metres(c.diameter()) + " wide, " + metres(c.length()) + " long");
            s.boosters()
                    .ifPresent(b -> lines.add(
                            b.count() + " boosters beside it, each " + tonnes(b.loadedEach()) + " of propellant"));
            texts.add(new Label(z + c.length() / 2, lines));
            z += c.length();
        }
        StageSizing top = vehicle.stages().get(vehicle.stages().size() - 1);
        texts.add(new Label(
                z + NOSE * top.contents().diameter() / 2,
                List.of("payload " + tonnes(vehicle.payload()), "shape of the nose is assumed")));
        double last = f.upright() ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        for (int i = 0; i < texts.size(); i++) {
            double place = f.along(texts.get(i).place());
            List<String> lines = texts.get(i).lines();
            if (f.upright()) {
                double x = f.across(half) + 60;
                double y = Math.min(
                        place - (lines.size() - 1) * SIZE * Pencil.LEADING / 2,
                        last - lines.size() * SIZE * Pencil.LEADING - 8);
                y = Math.max(y, room.getY() + SIZE);
                last = y - SIZE;
                pencil.line(
                        new Line2D.Double(f.across(0), place, x - 10, y - SIZE * 0.35), pencil.color(Ink.TEXT), 1.5);
                pencil.fill(new Ellipse2D.Double(f.across(0) - 5, place - 5, 10, 10), pencil.color(Ink.TEXT));
                write(pencil, lines, x, y);
            } else {
                boolean above = i % 2 == 0;
                double widest = lines.stream()
                        .mapToDouble(l -> Pencil.width(l, SIZE, true))
                        .max()
                        .orElse(0);
                double x = Math.max(room.getX(), Math.min(place - widest / 2, room.getMaxX() - widest));
                double y = above
                        ? f.across(-half) - 24 - (lines.size() - 1) * SIZE * Pencil.LEADING
                        : f.across(half) + 24 + SIZE;
                double from = above ? f.across(-half) - 16 : f.across(half) + 16;
                pencil.line(new Line2D.Double(place, f.across(0), place, from), pencil.color(Ink.TEXT), 1.5);
                pencil.fill(new Ellipse2D.Double(place - 5, f.across(0) - 5, 10, 10), pencil.color(Ink.TEXT));
                write(pencil, lines, x, y);
            }
        }
    }

    private static void write(Pencil pencil, List<String> lines, double x, double y) {
        pencil.text(lines.get(0), x, y, SIZE, true, pencil.color(Ink.TEXT));
        pencil.lines(lines.subList(1, lines.size()), x, y + SIZE * Pencil.LEADING, SIZE, false, pencil.color(Ink.TEXT));
    }

    private static double exit(EnginePerformance engine) {
        return 2 * Math.sqrt(engine.exitArea() / Math.PI);
    }

    private static String height(double length) {
        Scale scale = Scale.of("m");
        return Notation.significant(scale.of(length), 3) + " " + scale.unit();
    }

    private static String metres(double length) {
        Scale scale = Scale.of("m");
        return String.format(Locale.ROOT, "%.1f %s", scale.of(length), scale.unit());
    }
}
