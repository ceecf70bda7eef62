package dev.penstock.vehicle;

import dev.penstock.errors.Warning;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A vehicle sized on the losses of its own flight.
 *
 * @param sizing the vehicle; its mission's losses are those of the flight
 * @param ascent the flight
 * @param back way back of the first stage, if it is recovered
 * @param rounds how often it was sized and flown
 */
public record FlownSizing(VehicleSizing sizing, AscentResult ascent, Optional<StageReturn> back, int rounds) {

    /** @return what the reader must know of vehicle, flight and return, each once */
    public List<Warning> warnings() {
        return Stream.of(
                        sizing.warnings(),
                        ascent.warnings(),
                        back.map(StageReturn::warnings).orElse(List.of()))
                .flatMap(List::stream)
                .distinct()
                .toList();
    }

    /**
     * @param more what the reader must know besides
     * @return the same with that
     */
    FlownSizing with(List<Warning> more) {
        return new FlownSizing(sizing.withWarnings(more), ascent, back, rounds);
    }
}
