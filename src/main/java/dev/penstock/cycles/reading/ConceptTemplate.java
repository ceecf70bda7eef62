package dev.penstock.cycles.reading;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.FileTemplate;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.InputValue;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Writes a concept file to start from: an ordinary engine of a cycle with every input that it may have. Behind {@code #}
 * stand the defaults in use, behind {@code ##} the inputs of tables and choices that this engine does not have.
 */
public final class ConceptTemplate {

    private final ConceptReader reader;
    private final InputGroup vehicle;

    /**
     * @param fluids where propellants are looked up
     * @param vehicle what the table {@code [vehicle]} may hold
     */
    public ConceptTemplate(FluidLibrary fluids, InputGroup vehicle) {
        this.reader = new ConceptReader(fluids);
        this.vehicle = vehicle;
    }

    /**
     * @param cycle cycle of the new concept
     * @param name name of the new concept
     * @return text of a concept file that balances as it is
     */
    public String text(Cycle cycle, String name) {
        String shortest =
                cycle.example().shortest(cycle.id(), name.replace("\\", "").replace("\"", ""));
        InputGroup top = ConceptInputs.of(cycle, vehicle);
        Map<String, InputValue> used = values(shortest, Map.of());
        Map<String, String> tables = new LinkedHashMap<>();
        open(top, "", used, tables);
        StringBuilder out = new StringBuilder();
        out.append("# ")
                .append(cycle.title())
                .append(": ")
                .append(cycle.summary())
                .append(
                        ".\n# Values carry their unit. Lines that begin with # are defaults: remove the # to change one.\n")
                .append("# Lines that begin with ## belong to tables and choices that this engine does not have.\n");
        write(out, top, "", used, values(shortest, tables));
        return out.toString();
    }

    private Map<String, InputValue> values(String text, Map<String, String> changes) {
        Map<String, InputValue> map = new LinkedHashMap<>();
        reader.parse("template", text, changes).document().inputs().forEach(i -> map.put(i.key(), i));
        return map;
    }

    /** Changes that give an engine the tables it lacks, so that their defaults are known. */
    private void open(InputGroup group, String path, Map<String, InputValue> used, Map<String, String> changes) {
        for (InputGroup inside : group.groups()) {
            if (inside == vehicle || inside.presence() == InputGroup.Presence.REPEATED) {
                continue;
            }
            String prefix = path + inside.key();
            boolean there = used.keySet().stream().anyMatch(k -> k.startsWith(prefix + "."));
            if (inside.presence() == InputGroup.Presence.IF_WRITTEN && !there) {
                changes.put(prefix, "{}");
                inside.inputs().stream()
                        .filter(i -> i.silence() == Input.Silence.REQUIRED)
                        .forEach(i -> changes.put(prefix + "." + i.key(), i.example()));
            }
            open(inside, prefix + ".", used, changes);
        }
    }

    private void write(
            StringBuilder out,
            InputGroup group,
            String path,
            Map<String, InputValue> used,
            Map<String, InputValue> opened) {
        boolean there = group.inputs().stream().anyMatch(i -> used.containsKey(path + i.key()));
        if (!path.isEmpty() && (!group.inputs().isEmpty() || group.free().isPresent())) {
            String name = path.substring(0, path.length() - 1).replaceAll("\\[\\d+]", "");
            String header = group.presence() == InputGroup.Presence.REPEATED ? "[[" + name + "]]" : "[" + name + "]";
            out.append("\n# ").append(group.title()).append(".\n");
            out.append(there ? "" : "## ").append(header).append('\n');
        }
        for (Input<?> input : group.inputs()) {
            InputValue value = used.get(path + input.key());
            out.append(
                    value != null
                            ? line(value.given() ? "" : "# ", input, value.toml(), value.source())
                            : line(
                                    "## ",
                                    input,
                                    Optional.ofNullable(opened.get(path + input.key()))
                                            .flatMap(InputValue::toml),
                                    ""));
        }
        for (InputGroup inside : group.groups()) {
            String table = path + inside.key();
            int number = 0;
            while (inside.presence() == InputGroup.Presence.REPEATED && there(used, table + "[" + number + "].")) {
                write(out, inside, table + "[" + number + "].", used, opened);
                number++;
            }
            if (number == 0) {
                write(out, inside, table + ".", used, opened);
            }
        }
    }

    private static boolean there(Map<String, InputValue> used, String table) {
        return used.keySet().stream().anyMatch(key -> key.startsWith(table));
    }

    private static String line(String mark, Input<?> input, Optional<String> value, String source) {
        String basis = source.isEmpty() ? input.whenAbsent() : source.replaceFirst("^default: ", "");
        return FileTemplate.line(mark, input, value, basis);
    }
}
