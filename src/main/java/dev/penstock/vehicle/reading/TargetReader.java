package dev.penstock.vehicle.reading;

import dev.penstock.input.Input;
import dev.penstock.input.InputTable;
import dev.penstock.vehicle.ascent.Target;
import dev.penstock.vehicle.plan.MissionInputs;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads where a mission goes: a circular orbit by its height, an elliptic one by two, or away by its energy. */
final class TargetReader {

    private final InputTable table;

    TargetReader(InputTable table) {
        this.table = table;
    }

    /** @return the target; empty where none is given, or more than one, or one that is none */
    Optional<Target> target() {
        OptionalDouble round = table.number(MissionInputs.ORBIT_ALTITUDE);
        OptionalDouble perigee = table.number(MissionInputs.PERIGEE_ALTITUDE);
        OptionalDouble apogee = table.number(MissionInputs.APOGEE_ALTITUDE);
        OptionalDouble energy = table.number(MissionInputs.C3);
        boolean ellipse = table.has(MissionInputs.PERIGEE_ALTITUDE) || table.has(MissionInputs.APOGEE_ALTITUDE);
        if (!one(ellipse)) {
            return Optional.empty();
        }
        if (round.isPresent()) {
            return Optional.of(Target.circular(round.getAsDouble()));
        }
        if (energy.isPresent()) {
            return Optional.of(new Target.Escape(energy.getAsDouble()));
        }
        if (perigee.isEmpty() || apogee.isEmpty()) {
            return Optional.empty();
        }
        if (apogee.getAsDouble() < perigee.getAsDouble()) {
            table.problem(
                    MissionInputs.APOGEE_ALTITUDE,
                    String.format(Locale.ROOT, "%.0f km", apogee.getAsDouble() / 1e3),
                    String.format(
                            Locale.ROOT, "it must not be below the perigee of %.0f km", perigee.getAsDouble() / 1e3));
            return Optional.empty();
        }
        return Optional.of(new Target.Orbit(perigee.getAsDouble(), apogee.getAsDouble()));
    }

    /** Whether not more than one target is given, an ellipse with both of its heights. */
    private boolean one(boolean ellipse) {
        for (Input<Double> half : List.of(MissionInputs.PERIGEE_ALTITUDE, MissionInputs.APOGEE_ALTITUDE)) {
            if (ellipse && !table.has(half)) {
                table.problem(half, "missing", "an elliptic orbit needs perigee_altitude and apogee_altitude");
                return false;
            }
        }
        boolean round = table.has(MissionInputs.ORBIT_ALTITUDE);
        boolean away = table.has(MissionInputs.C3);
        if ((round ? 1 : 0) + (ellipse ? 1 : 0) + (away ? 1 : 0) > 1) {
            table.problem(
                    away ? MissionInputs.C3 : MissionInputs.PERIGEE_ALTITUDE,
                    "given together with another target",
                    "give one of orbit_altitude, perigee_altitude with apogee_altitude, c3");
            return false;
        }
        return true;
    }
}
