package dev.penstock.vehicle.reading;

import dev.penstock.errors.InvalidInput;
import dev.penstock.provenance.Trail;
import dev.penstock.vehicle.engine.EnginePerformance;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Changes of a vehicle, sorted: those of its own file, and those of its engines. An input of an engine is called as its
 * figures are in the vehicle's trail: {@code engines.heron.engine.chamber_pressure}.
 *
 * @param own changes of the vehicle's own file, by dotted path
 * @param engines changes of the concept files, by the engine's name in small letters, then by dotted path
 */
public record EngineChanges(Map<String, String> own, Map<String, Map<String, String>> engines) {

    public EngineChanges {
        own = Collections.unmodifiableMap(new LinkedHashMap<>(own));
        engines = Collections.unmodifiableMap(new LinkedHashMap<>(engines));
    }

    /**
     * @param changes values by dotted path
     * @return the same, sorted
     */
    public static EngineChanges of(Map<String, String> changes) {
        Map<String, String> own = new LinkedHashMap<>();
        Map<String, Map<String, String>> engines = new LinkedHashMap<>();
        changes.forEach((path, value) -> {
            String rest =
                    path.startsWith(EnginePerformance.PATHS) ? path.substring(EnginePerformance.PATHS.length()) : "";
            int dot = rest.indexOf('.');
            if (dot > 0) {
                engines.computeIfAbsent(name(rest.substring(0, dot)), n -> new LinkedHashMap<>())
                        .put(rest.substring(dot + 1), value);
            } else {
                own.put(path, value);
            }
        });
        return new EngineChanges(own, engines);
    }

    /** Names are told apart without regard to capitals. */
    private static String name(String engine) {
        return Trail.slug(engine).toLowerCase(Locale.ROOT);
    }

    /**
     * @param engine name of an engine
     * @return path that the inputs of that engine begin with, its dot included
     */
    public static String at(String engine) {
        return EnginePerformance.PATHS + name(engine) + ".";
    }

    /**
     * @param engine name of an engine
     * @return changes of its concept file
     */
    public Map<String, String> of(String engine) {
        return engines.getOrDefault(name(engine), Map.of());
    }

    /**
     * @param names names of the engines that there are
     * @throws InvalidInput if a change is of another
     */
    public void check(Collection<String> names) {
        List<String> known = names.stream().map(EngineChanges::name).toList();
        for (String engine : engines.keySet()) {
            if (!known.contains(engine)) {
                throw new InvalidInput(
                        "",
                        EnginePerformance.PATHS + engine,
                        "no engine of this vehicle",
                        "its engines are " + String.join(", ", known));
            }
        }
    }
}
