package dev.penstock.claims.likelihood;

import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.cycles.concept.CycleTraits;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Writes what is certain of a hypothesis as the text of a concept file. An engine with pumps is cooled by its fuel unless something is
 * given of cooling: few are built otherwise (common practice, no source), and without a jacket the chamber is a third too light. Engines with
 * preburners have boost pumps unless something is given of such: without them the highest pressures that are flown do not close.
 */
final class ConceptText {

    /** A jacket that only costs pressure and mass is cut coarsely: mass within some 5 % of that with a hundred cells, at a third of its cost. */
    private static final int CELLS = 10;

    private ConceptText() {}

    static String of(ClaimsFile file, Hypothesis hypothesis) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("propellants.oxidizer", '"' + hypothesis.oxidizer().id() + '"');
        all.put("propellants.fuel", '"' + hypothesis.fuel().id() + '"');
        CycleTraits traits = hypothesis.cycle().traits();
        boolean told = file.given("cooling.");
        if (traits.livesOnJacketHeat() || traits.pumped() && !told) {
            all.put("cooling.coolant", "\"fuel\"");
        }
        if (traits.pumped() && !traits.livesOnJacketHeat() && !told) {
            all.put("cooling.cells", Integer.toString(CELLS));
        }
        if (traits.closure() == CycleTraits.Closure.RATIO_OR_TEMPERATURE && !file.given("boost_pumps.")) {
            all.put("boost_pumps.oxidizer.drive", "\"liquid\"");
            all.put("boost_pumps.fuel.drive", "\"liquid\"");
        }
        if (file.aboutVehicle()) {
            all.put("vehicle.stages", "1");
        }
        all.putAll(file.given());
        StringBuilder text = new StringBuilder();
        text.append("name = \"")
                .append(file.name().replace("\\", "").replace("\"", ""))
                .append("\"\n");
        text.append("cycle = \"").append(hypothesis.cycle().id()).append("\"\n");
        tables(all).forEach((table, keys) -> {
            text.append("\n[").append(table).append("]\n");
            keys.forEach(
                    (key, value) -> text.append(key).append(" = ").append(value).append('\n'));
        });
        return text.toString();
    }

    /** Keys with their values by table, both in the order of the paths. */
    static Map<String, Map<String, String>> tables(Map<String, String> values) {
        Map<String, Map<String, String>> tables = new LinkedHashMap<>();
        values.forEach((path, value) -> {
            int dot = path.lastIndexOf('.');
            tables.computeIfAbsent(dot < 0 ? "" : path.substring(0, dot), t -> new LinkedHashMap<>())
                    .put(path.substring(dot + 1), value);
        });
        return tables;
    }
}
