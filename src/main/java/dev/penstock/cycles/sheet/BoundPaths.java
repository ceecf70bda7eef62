package dev.penstock.cycles.sheet;

import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.input.Input;
import dev.penstock.input.TableKey;
import dev.penstock.provenance.Trail;
import dev.penstock.turbomachinery.speed.SpeedBound;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Paths of what the bounds on the speeds of an arrangement's shafts are made from; empty where nothing is recorded. */
final class BoundPaths {

    private final Optional<StationRecorder> recorder;
    private final Map<Side, Stream> inlets = new EnumMap<>(Side.class);

    BoundPaths(Optional<StationRecorder> recorder) {
        this.recorder = recorder;
    }

    /** What reaches the main pump of a side. */
    void inlet(Side side, Stream stream) {
        inlets.put(side, stream);
    }

    List<String> pump(Side side, SpeedBound bound) {
        return pump(PumpKey.main(side), Optional.ofNullable(inlets.get(side)), bound);
    }

    List<String> boostPump(PumpKey key, Stream inlet, SpeedBound bound) {
        return pump(key, Optional.of(inlet), bound);
    }

    private List<String> pump(PumpKey key, Optional<Stream> inlet, SpeedBound bound) {
        List<String> paths = of(key.path(), key.table(), bound);
        if (recorder.isPresent() && !bound.figures().isEmpty()) {
            inlet.ifPresent(s -> paths.add(StationRecorder.density(s)));
        }
        return paths;
    }

    List<String> turbine(TurbinePlace place) {
        return of("turbines." + Trail.slug(place.title()), ConceptTables.turbine(place), SpeedBound.ANNULUS);
    }

    /** Teeth carry the power of both pumps and stand on the fuel pump's shaft. */
    List<String> teeth() {
        List<String> paths = of("", ConceptTables.SHAFTS, SpeedBound.TEETH);
        for (Side side : Side.values()) {
            paths.addAll(pump(side, SpeedBound.BEARINGS));
        }
        paths.addAll(pump(Side.FUEL, SpeedBound.SMALLEST_BEARINGS));
        return paths;
    }

    List<String> gear(Input<Double> ratio) {
        return recorder.map(r -> r.inputs().of(ConceptTables.SHAFTS.of(ratio))).orElse(List.of());
    }

    private List<String> of(String machine, TableKey table, SpeedBound bound) {
        List<String> paths = new ArrayList<>();
        recorder.ifPresent(r -> {
            bound.figures().forEach(figure -> paths.add(machine + "." + figure));
            paths.addAll(r.inputs().in(table, bound.keys()));
        });
        return paths;
    }
}
