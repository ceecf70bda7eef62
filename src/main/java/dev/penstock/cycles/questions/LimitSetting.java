package dev.penstock.cycles.questions;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.concept.GasInputs;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.sheet.EngineBalance;
import java.util.ArrayList;
import java.util.List;

/**
 * What a search for the highest chamber pressure puts in the place of what a concept states. A balance of the same concept with
 * all of them is the engine that the search found.
 *
 * @param key key of the concept
 * @param value what the search takes (SI)
 * @param unit SI unit as text
 * @param stated what the concept states (SI)
 */
public record LimitSetting(String key, double value, String unit, double stated) {

    static List<LimitSetting> of(Concept stated, EngineBalance found) {
        List<LimitSetting> list = new ArrayList<>();
        list.add(new LimitSetting(
                ConceptTables.ENGINE.of(EngineInputs.CHAMBER_PRESSURE).path(),
                found.concept().chamberPressure(),
                "Pa",
                stated.chamberPressure()));
        found.concept().burners().forEach((burner, design) -> {
            if (design.asHotAsTurbine()) {
                list.add(new LimitSetting(
                        ConceptTables.burner(burner)
                                .of(GasInputs.BURNER_TEMPERATURE)
                                .path(),
                        found.outlet(PartKey.burner(burner)).temperature(),
                        "K",
                        stated.burners().get(burner).temperature().orElseThrow()));
            }
        });
        return List.copyOf(list);
    }
}
