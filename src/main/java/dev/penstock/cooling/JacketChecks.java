package dev.penstock.cooling;

import dev.penstock.fluids.PropellantLimits;
import dev.penstock.provenance.LimitCheck;
import java.util.ArrayList;
import java.util.List;

/** Holds a marched jacket against its limits. */
final class JacketChecks {

    private static final String PRACTICE = "common practice, no source";
    private static final double LARGEST_MACH = 0.3;
    private static final double SMALLEST_WIDTH = 0.4e-3;
    private static final double SMALLEST_HEIGHT = 0.4e-3;
    private static final double SMALLEST_LAND = 0.4e-3;
    private static final double LARGEST_ASPECT = 10;

    private JacketChecks() {}

    static List<LimitCheck> of(JacketRun run, ChannelGrid channels, List<JacketStation> stations) {
        List<LimitCheck> checks = new ArrayList<>();
        temperatures(run, stations, checks);
        flow(run, checks);
        geometry(channels, checks);
        return checks;
    }

    private static void temperatures(JacketRun run, List<JacketStation> stations, List<LimitCheck> checks) {
        double wall = 0;
        double floor = 0;
        double bulk = 0;
        for (JacketStation s : stations) {
            wall = Math.max(wall, s.gasSideWallTemperature());
            floor = Math.max(floor, s.coolantSideWallTemperature());
            bulk = Math.max(bulk, s.coolantTemperature());
        }
        JacketLimits own = run.question.design().limits();
        checks.add(LimitCheck.atMost(
                "cooling.wall_temperature",
                wall,
                own.wallTemperature().orElse(run.material.maximumTemperature()),
                "K",
                own.wallTemperature().isPresent() ? "concept" : "fluids/walls/" + run.material.id() + ".toml"));
        double hottestFloor = floor;
        String coolantFile = "fluids/" + run.question.coolant().id() + ".toml";
        ChannelSizing.coolantWallLimit(run.question)
                .ifPresent(limit -> checks.add(LimitCheck.atMost(
                        "cooling.coolant_wall_temperature",
                        hottestFloor,
                        limit,
                        "K",
                        own.coolantWallTemperature().isPresent() ? "concept" : coolantFile + ", coking")));
        double hottestBulk = bulk;
        PropellantLimits limits = run.question.coolant().limits();
        limits.decomposition()
                .ifPresent(limit -> checks.add(LimitCheck.atMost(
                        "cooling.coolant_temperature", hottestBulk, limit, "K", coolantFile + ", decomposition")));
        checks.add(LimitCheck.atMost(
                "cooling.coolant_model_range", hottestBulk, run.properties.highestTemperature(), "K", coolantFile));
    }

    private static void flow(JacketRun run, List<LimitCheck> checks) {
        JacketCase question = run.question;
        double drop = question.inletPressure() - run.outletPressure;
        checks.add(LimitCheck.atMost(
                "cooling.pressure_drop",
                drop,
                question.design().limits().pressureDropFraction() * run.grid.gas.pressure(),
                "Pa",
                "concept or " + PRACTICE));
        double mach = 0;
        double boilingShare = 0;
        double boilingLimit = 0;
        for (List<LegField> branch : run.fields) {
            for (LegField field : branch) {
                for (int c = 0; c < run.grid.cells; c++) {
                    if (!field.visited[c]) {
                        continue;
                    }
                    mach = Math.max(mach, field.velocity[c] / field.soundSpeed[c]);
                    double room = run.properties.liquidEnthalpy(field.pressure[c]) - question.inletEnthalpy();
                    double used = field.enthalpy[c] - question.inletEnthalpy();
                    if (room > 0 && room < Double.POSITIVE_INFINITY && used / room > boilingShare) {
                        boilingShare = used / room;
                        boilingLimit = room;
                    }
                }
            }
        }
        checks.add(LimitCheck.atMost("cooling.coolant_mach", mach, LARGEST_MACH, "", PRACTICE));
        if (boilingLimit > 0) {
            checks.add(LimitCheck.atMost(
                    "cooling.enthalpy_rise_to_boiling",
                    boilingShare * boilingLimit,
                    boilingLimit,
                    "J/kg",
                    "boiling line of " + question.coolant().id()));
        }
    }

    private static void geometry(ChannelGrid channels, List<LimitCheck> checks) {
        double width = Double.POSITIVE_INFINITY;
        double height = Double.POSITIVE_INFINITY;
        double land = Double.POSITIVE_INFINITY;
        double aspect = 0;
        for (int c = 0; c < channels.width.length; c++) {
            width = Math.min(width, channels.width[c]);
            height = Math.min(height, channels.height[c]);
            land = Math.min(land, channels.land[c]);
            aspect = Math.max(aspect, channels.height[c] / channels.width[c]);
        }
        checks.add(LimitCheck.atLeast("cooling.channel_width", width, SMALLEST_WIDTH, "m", PRACTICE));
        checks.add(LimitCheck.atLeast("cooling.channel_height", height, SMALLEST_HEIGHT, "m", PRACTICE));
        if (channels.kind != ChannelKind.TUBE) {
            checks.add(LimitCheck.atLeast("cooling.land_width", land, SMALLEST_LAND, "m", PRACTICE));
        }
        checks.add(LimitCheck.atMost("cooling.channel_aspect_ratio", aspect, LARGEST_ASPECT, "", PRACTICE));
    }
}
