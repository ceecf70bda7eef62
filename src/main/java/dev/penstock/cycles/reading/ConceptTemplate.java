package dev.penstock.cycles.reading;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ConceptInput;
import dev.penstock.cycles.concept.InputText;
import dev.penstock.fluids.FluidLibrary;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Writes a concept file to start from: an ordinary engine of a cycle, every value that must be stated, and every value that
 * may be, commented out with its default and what that rests on. The keys come from the reader itself.
 */
public final class ConceptTemplate {

    private static final int COMMENT_COLUMN = 52;

    private final ConceptReader reader;

    /** @param fluids where propellants are looked up */
    public ConceptTemplate(FluidLibrary fluids) {
        this.reader = new ConceptReader(fluids);
    }

    /**
     * @param cycle cycle of the new concept
     * @param name name of the new concept
     * @return text of a concept file that balances as it is
     */
    public String text(Cycle cycle, String name) {
        String shortest =
                cycle.example().shortest(cycle.id(), name.replace("\\", "").replace("\"", ""));
        Concept concept = reader.parse("template", shortest, Map.of());
        StringBuilder out = new StringBuilder();
        out.append("# ")
                .append(cycle.title())
                .append(": ")
                .append(cycle.summary())
                .append(".\n");
        out.append("# Values carry their unit. Lines that begin with # are defaults: remove the # to change one.\n");
        Map<String, StringBuilder> tables = new LinkedHashMap<>();
        for (ConceptInput input : concept.document().inputs()) {
            int dot = input.key().lastIndexOf('.');
            String table = dot < 0 ? "" : input.key().substring(0, dot);
            String line = line(input, input.key().substring(dot + 1));
            tables.computeIfAbsent(table, t -> new StringBuilder()).append(line);
        }
        tables.forEach((table, lines) -> {
            if (!table.isEmpty()) {
                out.append("\n[").append(table).append("]\n");
            }
            out.append(lines);
        });
        if (cycle.traits().pumped()) {
            out.append("\n# Boost pumps are there if their tables are; pressure rise and drive flow are computed.\n");
            out.append("# [boost_pumps.oxidizer]\n# [boost_pumps.fuel]\n");
        }
        out.append("\n# Where values come from, by key or by table; shown in reports.\n[sources]\n");
        out.append("# \"engine.chamber_pressure\" = \"trade study of the upper stage\"\n");
        out.append("\n# How sure values are: lowest, most likely, highest; sampled by a study of uncertainty.\n");
        out.append("[uncertainty]\n# \"injector.fuel_loss\" = [0.15, 0.18, 0.22]\n");
        return out.toString();
    }

    private static String line(ConceptInput input, String key) {
        boolean open = !input.given() && input.value().equals("computed");
        String assignment = key + " = " + (open ? "..." : value(input));
        if (input.given()) {
            return assignment + "\n";
        }
        String basis = input.source().replaceFirst("^default: ", open ? "computed: " : "");
        return String.format(Locale.ROOT, "%-" + COMMENT_COLUMN + "s # %s%n", "# " + assignment, basis)
                .replace("\r\n", "\n");
    }

    private static String value(ConceptInput input) {
        String text = input.value();
        if (input.unit().isEmpty()) {
            boolean plain = text.matches("[-+]?[0-9.]+([eE][-+]?\\d+)?") || text.equals("true") || text.equals("false");
            return plain ? text : '"' + text + '"';
        }
        return '"' + InputText.readable(Double.parseDouble(text), input.unit()) + '"';
    }
}
