package dev.penstock.cooling.jacket;

import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketLimits;
import dev.penstock.cooling.march.Burnout;
import dev.penstock.cooling.march.ChannelGrid;
import dev.penstock.cooling.march.ChannelSizing;
import dev.penstock.cooling.march.JacketRun;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.LinerBuckling;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.fluids.PropellantLimits;
import dev.penstock.provenance.LimitCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Holds a marched jacket against its limits: temperatures, flow, boiling, geometry, strength, extension. */
final class JacketChecks {

    private static final String PRACTICE = "common practice, no source";
    private static final double LARGEST_MACH = 0.3;
    private static final double SMALLEST_WIDTH = 0.4e-3;
    private static final double SMALLEST_HEIGHT = 0.4e-3;
    private static final double SMALLEST_LAND = 0.4e-3;
    private static final double LARGEST_ASPECT = 15;
    private static final double YIELD_FACTOR = 1.1;
    private static final double LARGEST_BURNOUT_RATIO = 0.7;

    private final JacketRun run;
    private final WallLibrary walls;
    /** Name of the jacket in limits. */
    private final String jacket;

    private final List<LimitCheck> checks = new ArrayList<>();

    JacketChecks(JacketRun run, WallLibrary walls) {
        this.run = run;
        this.walls = walls;
        this.jacket = run.question.design().circuit().owner();
    }

    List<LimitCheck> of(
            ChannelGrid channels,
            List<JacketStation> stations,
            double peakWall,
            List<WallAssessment> wall,
            Optional<ExtensionResult> extension) {
        temperatures(stations, peakWall);
        flow();
        boiling();
        geometry(channels);
        strength(channels, wall);
        extension.ifPresent(this::extension);
        return checks;
    }

    private static <T> double most(List<T> list, ToDoubleFunction<T> value) {
        return list.stream().mapToDouble(value).max().orElse(0);
    }

    private void temperatures(List<JacketStation> stations, double peakWall) {
        JacketLimits own = run.question.design().limits();
        checks.add(LimitCheck.atMost(
                JacketLimit.WALL_TEMPERATURE,
                jacket,
                peakWall,
                own.wallTemperature().orElse(run.material.maximumTemperature()),
                "K",
                own.wallTemperature().isPresent() ? "concept" : "fluids/walls/" + run.material.id() + ".toml"));
        String coolantFile = run.question.coolant().file();
        double floor = most(stations, JacketStation::coolantSideWallTemperature);
        ChannelSizing.coolantWallLimit(run.question)
                .ifPresent(limit -> checks.add(LimitCheck.atMost(
                        JacketLimit.COOLANT_WALL_TEMPERATURE,
                        jacket,
                        floor,
                        limit,
                        "K",
                        own.coolantWallTemperature().isPresent() ? "concept" : coolantFile + ", coking")));
        double bulk = hottestBulk();
        PropellantLimits limits = run.question.coolant().limits();
        limits.decomposition()
                .ifPresent(limit -> checks.add(LimitCheck.atMost(
                        JacketLimit.COOLANT_TEMPERATURE, jacket, bulk, limit, "K", coolantFile + ", decomposition")));
        checks.add(LimitCheck.atMost(
                JacketLimit.COOLANT_MODEL_RANGE, jacket, bulk, run.properties.highestTemperature(), "K", coolantFile));
        run.question
                .design()
                .wall()
                .coating()
                .ifPresent(coating -> checks.add(LimitCheck.atMost(
                        JacketLimit.COATING_TEMPERATURE,
                        jacket,
                        hottestSurface(),
                        coating.maximumTemperature(),
                        "K",
                        "concept")));
    }

    private double hottestBulk() {
        double[] hottest = new double[1];
        run.forEachCell((field, c) -> hottest[0] = Math.max(hottest[0], field.bulk[c]));
        return hottest[0];
    }

    private double hottestSurface() {
        double[] hottest = new double[1];
        run.forEachCell((field, c) -> hottest[0] = Math.max(hottest[0], field.surface[c]));
        return hottest[0];
    }

    private void flow() {
        JacketCase question = run.question;
        checks.add(LimitCheck.atMost(
                JacketLimit.PRESSURE_DROP,
                jacket,
                question.inletPressure() - run.outletPressure,
                question.design().limits().pressureDropFraction() * run.grid.gas.pressure(),
                "Pa",
                "concept or " + PRACTICE));
        double[] mach = new double[1];
        run.forEachCell((field, c) -> mach[0] = Math.max(mach[0], field.velocity[c] / field.soundSpeed[c]));
        checks.add(LimitCheck.atMost(JacketLimit.COOLANT_MACH, jacket, mach[0], LARGEST_MACH, "", PRACTICE));
    }

    /** Room to boiling in the bulk, and wall flux over the critical one; only where the coolant can boil. */
    private void boiling() {
        double[] worst = new double[3];
        run.forEachCell((field, c) -> {
            double room = run.properties.liquidEnthalpy(field.pressure[c]) - run.question.inletEnthalpy();
            double used = field.enthalpy[c] - run.question.inletEnthalpy();
            if (room > 0 && room < Double.POSITIVE_INFINITY && used / room > worst[0]) {
                worst[0] = used / room;
                worst[1] = room;
            }
            worst[2] = Math.max(worst[2], Burnout.ratio(run, field, c));
        });
        if (worst[1] > 0) {
            checks.add(LimitCheck.atMost(
                    JacketLimit.ENTHALPY_RISE_TO_BOILING,
                    jacket,
                    worst[0] * worst[1],
                    worst[1],
                    "J/kg",
                    "boiling line of " + run.question.coolant().id()));
        }
        if (worst[2] > 0) {
            checks.add(LimitCheck.atMost(
                    JacketLimit.CRITICAL_HEAT_FLUX_RATIO, jacket, worst[2], LARGEST_BURNOUT_RATIO, "", PRACTICE));
        }
    }

    private void geometry(ChannelGrid channels) {
        double width = Double.POSITIVE_INFINITY;
        double height = Double.POSITIVE_INFINITY;
        double land = Double.POSITIVE_INFINITY;
        double aspect = 0;
        double tall = 0;
        for (int c = run.grid.first; c < channels.width.length; c++) {
            width = Math.min(width, channels.width[c]);
            height = Math.min(height, channels.height[c]);
            land = Math.min(land, channels.land[c]);
            aspect = Math.max(aspect, channels.height[c] / channels.width[c]);
            tall = Math.max(tall, channels.height[c] / run.grid.radius[c]);
        }
        checks.add(LimitCheck.atLeast(JacketLimit.CHANNEL_WIDTH, jacket, width, SMALLEST_WIDTH, "m", PRACTICE));
        checks.add(LimitCheck.atLeast(JacketLimit.CHANNEL_HEIGHT, jacket, height, SMALLEST_HEIGHT, "m", PRACTICE));
        if (channels.kind != ChannelKind.TUBE) {
            checks.add(LimitCheck.atLeast(JacketLimit.LAND_WIDTH, jacket, land, SMALLEST_LAND, "m", PRACTICE));
        }
        checks.add(LimitCheck.atMost(JacketLimit.CHANNEL_ASPECT_RATIO, jacket, aspect, LARGEST_ASPECT, "", PRACTICE));
        checks.add(LimitCheck.atMost(
                JacketLimit.CHANNEL_HEIGHT_OVER_RADIUS,
                jacket,
                tall,
                ChannelSizing.LARGEST_HEIGHT_OVER_RADIUS,
                "",
                PRACTICE));
    }

    private void strength(ChannelGrid channels, List<WallAssessment> wall) {
        checks.add(LimitCheck.atMost(
                JacketLimit.PRESSURE_STRESS_OVER_YIELD,
                jacket,
                most(wall, w -> w.pressureStress() / w.yieldStrength()),
                1 / YIELD_FACTOR,
                "",
                PRACTICE));
        if (channels.kind != ChannelKind.TUBE) {
            checks.add(LimitCheck.atMost(
                    JacketLimit.LAND_STRESS_OVER_YIELD,
                    jacket,
                    most(wall, w -> w.landStress() / w.landStrength()),
                    1 / YIELD_FACTOR,
                    "",
                    PRACTICE));
        }
        checks.add(LimitCheck.atLeast(
                JacketLimit.LIFE,
                jacket,
                wall.stream().mapToDouble(WallAssessment::life).min().orElse(Double.MAX_VALUE),
                run.question.design().limits().life(),
                "cycles",
                "concept or " + PRACTICE));
        checks.add(LimitCheck.atMost(
                JacketLimit.THERMAL_STRAIN_OVER_BUCKLING,
                jacket,
                most(wall, w -> w.thermalStrain() / w.bucklingStrain()),
                channels.kind == ChannelKind.TUBE ? LinerBuckling.TUBE_SHARE : 1,
                "",
                channels.kind == ChannelKind.TUBE ? "nasa-sp-125, from memory" : PRACTICE));
    }

    private void extension(ExtensionResult extension) {
        checks.add(LimitCheck.atMost(
                JacketLimit.EXTENSION_TEMPERATURE,
                jacket,
                Math.max(extension.startTemperature(), extension.exitTemperature()),
                walls.material(extension.material()).maximumTemperature(),
                "K",
                "fluids/walls/" + extension.material() + ".toml"));
    }
}
