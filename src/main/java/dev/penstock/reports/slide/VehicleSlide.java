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
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A vehicle with its tanks, to scale, beside a bar as high as a person; lying on its side where that shows it much larger. Tanks, stages and engine bays are as sized; nose cones stand for what no model sizes.
 */
final class VehicleSlide {

    private static final double PERSON = 1.75;
    /** Share of ink in the colour of a tank. */
    private static final double TANK = 0.75;

    /** Length of a nose over the diameter below it. */
    static final double NOSE = 1.6;
    /** Length of the nozzle drawn below a solid booster over its diameter. */
    private static final double SOLID_NOZZLE = 0.7;
    /** How much larger a vehicle must be drawn when it lies for it not to stand. */
    private static final double LYING = 1.5;
    /** Room for the person beside the vehicle (px). */
    private static final double PERSON_ROOM = 90;
    /** Share of the engine bay that a nozzle takes at most. */
    private static final double BAY = 0.55;

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
                + " is propellant. Without its nose it is " + metres(stack())
                + " high; the bar beside it is as high as a person, "
                + height(PERSON) + ".";
    }

    static String tonnes(double mass) {
        return Notation.TONNES.writeWithUnit(mass);
    }

    /** Length of the stages, without the nose that is assumed. */
    private double stack() {
        return vehicle.stages().stream().mapToDouble(s -> s.contents().length()).sum();
    }

    private double length() {
        StageSizing top = vehicle.stages().get(vehicle.stages().size() - 1);
        return stack() + NOSE * top.contents().diameter();
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
        double half = halfWidth();
        VehicleLabels labels = VehicleLabels.of(vehicle);
        VehicleFrame standing = standing(labels, room, half);
        VehicleFrame lying = lying(labels, room, half);
        boolean upright = lying.scale() < LYING * standing.scale();
        VehicleFrame frame = upright ? standing : lying;
        person(pencil, frame, half);
        double z = 0;
        List<StageSizing> stages = vehicle.stages();
        for (int i = 0; i < stages.size(); i++) {
            StageSizing stage = stages.get(i);
            double foot = z;
            stage.boosters().ifPresent(b -> boosters(pencil, frame, stage, b, foot));
            double below = i == 0 ? 0 : stages.get(i - 1).contents().diameter() / 2;
            body(pencil, frame, stage.contents(), z, 0, below, exit(stage.engine()), stage.engines());
            z += stage.contents().length();
        }
        StageSizing top = stages.get(stages.size() - 1);
        nose(pencil, frame, z, 0, top.contents().diameter(), Ink.GAIN);
        if (upright) {
            labels.beside(pencil, frame, room, half);
        } else {
            labels.aboveAndBelow(pencil, frame, room, half);
        }
        key(pencil, upright ? frame.across(half) + VehicleLabels.LEADER : room.getX(), room.getMaxY() - 8);
    }

    /** As high as the room, or as wide as person and texts leave it; all of it in the middle. */
    private VehicleFrame standing(VehicleLabels labels, Rectangle2D room, double half) {
        double beside = PERSON_ROOM + VehicleLabels.LEADER + VehicleLabels.GAP + labels.width();
        double scale = Math.min((room.getHeight() - 20) / length(), (room.getWidth() - beside) / (2 * half));
        double left = room.getX() + (room.getWidth() - beside - 2 * half * scale) / 2;
        return new VehicleFrame(true, scale, room.getMaxY() - 10, left + PERSON_ROOM + scale * half);
    }

    /** As long as the room, or as wide as the texts above and below leave it. */
    private VehicleFrame lying(VehicleLabels labels, Rectangle2D room, double half) {
        double text = labels.height() + VehicleLabels.LEADER;
        double length = length();
        double scale = Math.min((room.getWidth() - 60) / length, (room.getHeight() - 2 * text) / (2 * half));
        return new VehicleFrame(
                false,
                scale,
                room.getX() + 40 + (room.getWidth() - 60 - scale * length) / 2,
                room.getY() + room.getHeight() / 2);
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
            double size = VehicleLabels.SIZE * 0.8;
            pencil.fill(new Rectangle2D.Double(x, y - size, size, size), pencil.tint(ink.getValue(), TANK));
            pencil.text(ink.getKey(), x + size + 9, y, VehicleLabels.SIZE, false, pencil.color(Ink.TEXT));
            x += size + 9 + Pencil.width(ink.getKey(), VehicleLabels.SIZE, false) + 28;
        }
    }

    /**
     * A stage: engines, engine bay, fuel tank, oxidizer tank, all inside one skin.
     *
     * @param below radius of the stage below, which an interstage joins to it around the nozzles; zero if there is none
     */
    private static void body(
            Pencil pencil,
            VehicleFrame f,
            StageContents c,
            double z,
            double axis,
            double below,
            double exit,
            int engines) {
        double radius = c.diameter() / 2;
        double shared = c.commonBulkhead()
                ? Math.min(c.oxidizerTank().headHeight(), c.fuelTank().headHeight())
                : 0;
        double tanks = c.oxidizerTank().length() + c.fuelTank().length() - shared;
        double equipment = c.length() - tanks;
        double bay = c.commonBulkhead() ? 0.85 * equipment : 0.6 * equipment;
        double between = c.commonBulkhead() ? 0 : 0.25 * equipment;
        double nozzle = Math.min(BAY * bay, 1.2 * exit);
        if (below > 0) {
            interstage(pencil, f, z, z + nozzle, below, radius);
        }
        nozzles(pencil, f, z, axis, nozzle, exit, engines, radius);
        Rectangle2D skin = f.box(z + nozzle, z + c.length(), axis - radius, axis + radius);
        pencil.fill(skin, pencil.color(Ink.PANEL));
        double fuelFoot = z + bay;
        double oxidizerFoot = fuelFoot + c.fuelTank().length() - shared + between;
        tank(pencil, f, c.fuelTank(), fuelFoot, axis, Ink.FUEL);
        tank(pencil, f, c.oxidizerTank(), oxidizerFoot, axis, Ink.OXIDIZER);
        pencil.line(skin, pencil.color(Ink.TEXT), 2);
    }

    private static void interstage(Pencil pencil, VehicleFrame f, double z1, double z2, double r1, double r2) {
        Path2D shell = new Path2D.Double();
        Point2D first = f.at(z1, -r1);
        shell.moveTo(first.getX(), first.getY());
        for (Point2D corner : List.of(f.at(z1, r1), f.at(z2, r2), f.at(z2, -r2))) {
            shell.lineTo(corner.getX(), corner.getY());
        }
        shell.closePath();
        pencil.fill(shell, pencil.tint(Ink.STEEL, 0.25));
        pencil.line(shell, pencil.color(Ink.TEXT), 2);
    }

    private static void nozzles(
            Pencil pencil,
            VehicleFrame f,
            double z,
            double axis,
            double length,
            double exit,
            int engines,
            double radius) {
        int seen = Math.max(1, Math.min(engines, (int) Math.ceil(engines / 2.0)));
        double room = Math.max(0, radius - exit / 2);
        for (int i = 0; i < seen; i++) {
            double r = axis + (seen == 1 ? 0 : room * (2.0 * i / (seen - 1) - 1));
            Path2D bell = new Path2D.Double();
            Point2D a = f.at(z, r - exit / 2);
            Point2D b = f.at(z + length, r - exit / 8);
            Point2D c = f.at(z + length, r + exit / 8);
            Point2D d = f.at(z, r + exit / 2);
            Point2D m = f.at(z + 0.6 * length, r - 0.4 * exit);
            Point2D n = f.at(z + 0.6 * length, r + 0.4 * exit);
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
    private static void tank(Pencil pencil, VehicleFrame f, TankShape tank, double foot, double axis, Ink ink) {
        double r = tank.radius();
        double head = tank.headHeight();
        Area area = new Area();
        if (tank.cylinderLength() > 0) {
            area.add(new Area(f.box(foot + head, foot + head + tank.cylinderLength(), axis - r, axis + r)));
        }
        area.add(new Area(oval(f, foot, foot + 2 * head, axis, r)));
        area.add(new Area(oval(f, foot + tank.cylinderLength(), foot + 2 * head + tank.cylinderLength(), axis, r)));
        pencil.fill(area, pencil.tint(ink, TANK));
        pencil.line(area, pencil.color(ink), 2);
    }

    private static Ellipse2D oval(VehicleFrame f, double z1, double z2, double axis, double r) {
        Rectangle2D box = f.box(z1, z2, axis - r, axis + r);
        return new Ellipse2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight());
    }

    private static void nose(Pencil pencil, VehicleFrame f, double z, double axis, double diameter, Ink ink) {
        Path2D path = new Path2D.Double();
        double r = diameter / 2;
        double end = z + NOSE * diameter;
        Point2D a = f.at(z, axis - r);
        Point2D shoulder = f.at(z + 0.55 * NOSE * diameter, axis - r);
        Point2D tip = f.at(end, axis);
        Point2D other = f.at(z + 0.55 * NOSE * diameter, axis + r);
        Point2D b = f.at(z, axis + r);
        Point2D up = f.at(z + 0.85 * NOSE * diameter, axis - 0.75 * r);
        Point2D down = f.at(z + 0.85 * NOSE * diameter, axis + 0.75 * r);
        path.moveTo(a.getX(), a.getY());
        path.lineTo(shoulder.getX(), shoulder.getY());
        path.quadTo(up.getX(), up.getY(), tip.getX(), tip.getY());
        path.quadTo(down.getX(), down.getY(), other.getX(), other.getY());
        path.lineTo(b.getX(), b.getY());
        path.closePath();
        pencil.fill(path, pencil.tint(ink, 0.3));
        pencil.line(path, pencil.color(Ink.TEXT), 2);
    }

    private void boosters(Pencil pencil, VehicleFrame f, StageSizing core, BoosterSizing b, double z) {
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
                        0,
                        exit(liquid.engine()),
                        b.plan().engines());
            } else {
                solid(pencil, f, b, z, axis);
            }
            nose(pencil, f, z + b.length(), axis, b.diameter(), Ink.STEEL);
        }
    }

    /** A case full of grain over a nozzle. */
    private static void solid(Pencil pencil, VehicleFrame f, BoosterSizing b, double z, double axis) {
        double radius = b.diameter() / 2;
        double nozzle = SOLID_NOZZLE * b.diameter();
        nozzles(pencil, f, z, axis, nozzle, b.diameter(), 1, radius);
        Rectangle2D grain = f.box(z + nozzle, z + b.length(), axis - radius, axis + radius);
        pencil.fill(grain, pencil.tint(Ink.STEEL, TANK));
        pencil.line(grain, pencil.color(Ink.TEXT), 2);
    }

    private static void person(Pencil pencil, VehicleFrame f, double half) {
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

    private static double exit(EnginePerformance engine) {
        return 2 * Math.sqrt(engine.exitArea() / Math.PI);
    }

    private static String height(double length) {
        Scale scale = Scale.of("m");
        return Notation.significant(scale.of(length), 3) + " " + scale.unit();
    }

    static String metres(double length) {
        Scale scale = Scale.of("m");
        return String.format(Locale.ROOT, "%.1f %s", scale.of(length), scale.unit());
    }
}
