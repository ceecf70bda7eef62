package dev.penstock.cycles.origin;

import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The turning machines of an engine by their keys, shaft after shaft.
 *
 * @param pumps pumps as sized; empty for pressure-fed cycles
 * @param turbines turbines as sized
 * @param shafts shafts with the machines on them, those of boost pumps last
 */
public record Machines(
        Map<PumpKey, PumpSizing> pumps, Map<TurbinePlace, TurbineSizing> turbines, Map<ShaftKey, ShaftBalance> shafts) {

    public Machines {
        pumps = Collections.unmodifiableMap(new LinkedHashMap<>(pumps));
        turbines = Collections.unmodifiableMap(new LinkedHashMap<>(turbines));
        shafts = Collections.unmodifiableMap(new LinkedHashMap<>(shafts));
    }

    /**
     * @param key a pump of the arrangement
     * @return it as sized, if the engine has it
     */
    public Optional<PumpSizing> pump(PumpKey key) {
        return Optional.ofNullable(pumps.get(key));
    }

    /**
     * @param part a part of the arrangement
     * @return the pump that it is, if it is one
     */
    public Optional<PumpSizing> pump(PartKey part) {
        return pumps.entrySet().stream()
                .filter(entry -> PartKey.pump(entry.getKey()).equals(part))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /**
     * @param shaft a shaft of the engine
     * @return parts that it turns
     */
    public List<PartKey> driven(ShaftBalance shaft) {
        return pumps.entrySet().stream()
                .filter(entry -> shaft.pumps().contains(entry.getValue()))
                .map(entry -> PartKey.pump(entry.getKey()))
                .toList();
    }

    /**
     * @param shaft a shaft of the engine
     * @return parts of the gas path that turn it
     */
    public List<PartKey> driving(ShaftBalance shaft) {
        return turbines.entrySet().stream()
                .filter(entry -> shaft.turbines().contains(entry.getValue()))
                .map(entry -> PartKey.turbine(entry.getKey()))
                .toList();
    }
}
