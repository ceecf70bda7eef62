package dev.penstock.validation;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One engine with its published figures, a row of {@code src/test/resources/validation/engines.csv}. Each figure has a mark: the
 * column {@code seen} lists the columns that were read in the source that the row names or in a transcription of it,
 * {@code derived} those worked out from such figures; every other figure is from memory. The kind of the row is that of its weakest
 * figure, so that a row cannot call itself published and hold a figure that nobody has read.
 *
 * @param cells text by column
 */
record PublishedEngine(Map<String, String> cells) {

    private static final List<String> FIGURES = List.of(
            "mixture_ratio",
            "chamber_pressure_MPa",
            "expansion_ratio",
            "thrust_vac_kN",
            "thrust_sl_kN",
            "isp_vac_s",
            "isp_sl_s",
            "mass_kg",
            "fuel_pump_speed_rpm",
            "ox_pump_speed_rpm",
            "fuel_pump_discharge_MPa",
            "ox_pump_discharge_MPa",
            "fuel_turbine_power_MW",
            "ox_turbine_power_MW",
            "turbine_inlet_temperature_K",
            "turbine_pressure_ratio",
            "gas_generator_or_preburner_flow_kg_s",
            "coolant_temperature_rise_K",
            "coolant_pressure_drop_MPa");

    /** What a concept is written from and its impulse is held against, in words. */
    private static final Map<String, String> NEEDED = new LinkedHashMap<>();

    static {
        NEEDED.put("mixture_ratio", "mixture ratio");
        NEEDED.put("chamber_pressure_MPa", "chamber pressure");
        NEEDED.put("expansion_ratio", "area ratio");
        NEEDED.put("thrust_vac_kN", "vacuum thrust");
        NEEDED.put("isp_vac_s", "vacuum impulse");
    }

    private static final Map<String, String> IDS = Map.of(
            "LOX", "oxygen",
            "LH2", "hydrogen",
            "RP-1", "rp-1",
            "kerosene", "rp-1",
            "N2O4", "nitrogen-tetroxide",
            "Aerozine-50", "hydrazine-50",
            "ethanol-75", "ethanol-75",
            "UH25", "uh-25",
            "UDMH", "udmh",
            "MMH", "mmh");

    PublishedEngine {
        String name = cells.get("engine");
        List<String> marked = new ArrayList<>(list(cells.get("seen")));
        marked.addAll(list(cells.get("derived")));
        for (String column : marked) {
            if (!FIGURES.contains(column)
                    || cells.get(column).isEmpty()
                    || marked.indexOf(column) != marked.lastIndexOf(column)) {
                throw new IllegalArgumentException(name + ": \"" + column + "\" is no figure, empty or marked twice");
            }
        }
        Evidence kind = FIGURES.stream().anyMatch(c -> !cells.get(c).isEmpty() && !marked.contains(c))
                ? Evidence.FROM_MEMORY
                : cells.get("derived").isEmpty() ? Evidence.PUBLISHED : Evidence.WORKED;
        if (!cells.get("confidence").equals(kind.text())) {
            throw new IllegalArgumentException(
                    name + ": its weakest figure is " + kind.text() + ", the row says " + cells.get("confidence"));
        }
    }

    static List<PublishedEngine> all() {
        return table("/validation/engines.csv").stream()
                .map(PublishedEngine::new)
                .toList();
    }

    static PublishedEngine named(String name) {
        return all().stream().filter(e -> e.name().equals(name)).findFirst().orElseThrow();
    }

    /** Rows of a table, by the columns that its first line names. */
    static List<Map<String, String>> table(String resource) {
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(PublishedEngine.class.getResourceAsStream(resource), StandardCharsets.UTF_8))) {
            List<List<String>> rows = new ArrayList<>();
            reader.lines().forEach(line -> rows.add(split(line)));
            List<Map<String, String>> tables = new ArrayList<>();
            for (List<String> row : rows.subList(1, rows.size())) {
                Map<String, String> cells = new LinkedHashMap<>();
                for (int i = 0; i < row.size(); i++) {
                    cells.put(rows.get(0).get(i), row.get(i));
                }
                tables.add(cells);
            }
            return tables;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String name() {
        return cells.get("engine");
    }

    String cycle() {
        return cells.get("cycle");
    }

    String oxidizer() {
        return IDS.get(cells.get("oxidizer"));
    }

    String fuel() {
        return IDS.get(cells.get("fuel"));
    }

    String text(String column) {
        return cells.getOrDefault(column, "");
    }

    /** The figure as a page shows it: with an asterisk if it is from memory, a dagger if it is derived from figures that were read. */
    String shown(String column) {
        String text = text(column);
        boolean plain = text.isEmpty() || list(text("seen")).contains(column);
        return plain ? text : text + (list(text("derived")).contains(column) ? "†" : "*");
    }

    private static List<String> list(String columns) {
        return columns.isEmpty() ? List.of() : List.of(columns.split("; "));
    }

    /** What the program would need and has not, in words; empty if a concept can be written from the row. */
    Optional<String> lacking() {
        List<String> lacking = new ArrayList<>();
        for (String side : List.of("oxidizer", "fuel")) {
            if (!IDS.containsKey(text(side))) {
                lacking.add("no fluid file for " + text(side));
            }
        }
        for (String column : NEEDED.keySet()) {
            if (text(column).isEmpty()) {
                lacking.add("no " + NEEDED.get(column) + " published");
            }
        }
        return lacking.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", lacking));
    }

    double number(String column) {
        return Double.parseDouble(cells.get(column));
    }

    OptionalDouble published(String column) {
        String text = text(column);
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    /** A figure that was read somewhere, not remembered and not worked out. */
    OptionalDouble seen(String column) {
        return list(text("seen")).contains(column) ? published(column) : OptionalDouble.empty();
    }

    /** Thrust chambers that its figures are for, as its note tells. */
    int chambers() {
        return Integer.parseInt(text("chambers"));
    }

    boolean storable() {
        return oxidizer().equals("nitrogen-tetroxide");
    }

    /** Splits a line at commas outside double quotes. */
    private static List<String> split(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
