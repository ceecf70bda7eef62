package dev.penstock.cycles.questions;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.cycles.sheet.EngineBalance;
import java.util.function.ToDoubleFunction;

/**
 * What a chamber pressure is best for.
 *
 * @param title name for people
 * @param unit SI unit as text
 * @param least whether less is better
 * @param value the value of an engine, in {@code unit}; may throw a failure where the engine does not serve
 */
public record Merit(String title, String unit, boolean least, ToDoubleFunction<EngineBalance> value) {

    /**
     * @param concept an engine
     * @return its delivered specific impulse: at sea level if its thrust is stated there, else in vacuum
     */
    public static Merit impulse(Concept concept) {
        return concept.thrust().kind() == ThrustTarget.Kind.SEA_LEVEL_THRUST
                ? new Merit("specific impulse, sea level", "s", false, b -> b.engine()
                        .seaLevelIsp())
                : new Merit(
                        "specific impulse, vacuum", "s", false, b -> b.engine().vacuumIsp());
    }
}
