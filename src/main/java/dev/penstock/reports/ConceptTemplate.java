package dev.penstock.reports;

import dev.penstock.cycles.Concept;
import dev.penstock.cycles.ConceptInput;
import dev.penstock.cycles.ConceptReader;
import dev.penstock.cycles.Cycle;
import dev.penstock.fluids.Propellant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A concept file to start from: the few values that a concept must state, and in comments every other input of its cycle
 * with its default and what that rests on. The comments are what the reader itself noted, so they cannot fall behind it.
 */
public final class ConceptTemplate {

    /** Valence of the elements in complete combustion to CO2, H2O and N2; oxygen counts negative. */
    private static final Map<String, Double> VALENCE = Map.of("C", 4.0, "H", 1.0, "O", -2.0);

    private static final double SHARE_OF_STOICHIOMETRIC = 0.8;

    private final ConceptReader reader;
    private final Cycle cycle;
    private final Propellant oxidizer;
    private final Propellant fuel;

    /**
     * @param reader reads concepts
     * @param cycle cycle of the concept
     * @param oxidizer oxidizer
     * @param fuel fuel
     */
    public ConceptTemplate(ConceptReader reader, Cycle cycle, Propellant oxidizer, Propellant fuel) {
        this.reader = reader;
        this.cycle = cycle;
        this.oxidizer = oxidizer;
        this.fuel = fuel;
    }

    /**
     * @param name name of the concept
     * @return text of the file
     */
    public String text(String name) {
        String plainName = name.replaceAll("[^\\p{L}\\p{N} ._-]", "-");
        Map<String, List<String>> stated = stated(plainName);
        Concept concept = reader.parse("new concept", plain(stated), Map.of());
        Map<String, List<String>> defaults = new LinkedHashMap<>();
        for (ConceptInput input : concept.document().inputs()) {
            int dot = input.key().lastIndexOf('.');
            if (!input.given() && dot > 0) {
                defaults.computeIfAbsent(input.key().substring(0, dot), t -> new ArrayList<>())
                        .add(comment(input, input.key().substring(dot + 1)));
            }
        }
        StringBuilder text = new StringBuilder();
        text.append("# ")
                .append(cycle.title())
                .append(": ")
                .append(cycle.summary())
                .append(".\n");
        text.append(
                "# State what you know; a line behind # shows a default, and what it rests on. Remove the # to change");
        text.append(" it\n# (and that of its [table], where the table is one of comments only). Values have units.\n");
        stated.forEach((table, lines) -> {
            text.append(table.isEmpty() ? "" : "\n[" + table + "]\n");
            lines.forEach(line -> text.append(line).append('\n'));
            List<String> more = defaults.remove(table);
            if (more != null) {
                more.forEach(line -> text.append(line).append('\n'));
            }
        });
        defaults.forEach((table, lines) -> {
            text.append("\n# [").append(table).append("]\n");
            lines.forEach(line -> text.append(line).append('\n'));
        });
        text.append("\n# Where your values come from, key by key or for a whole table; reports show it.\n");
        text.append("# [sources]\n# \"engine.chamber_pressure\" = \"requirement of the launcher, revision B\"\n");
        text.append("\n# A vehicle of stages that all use this engine; penstock size sizes it.\n");
        text.append("# [vehicle]\n# payload = \"2 t\"\n# stages = 2\n# [vehicle.mission]\n# delta_v = \"9400 m/s\"\n");
        return text.toString();
    }

    private Map<String, List<String>> stated(String name) {
        boolean pumped = cycle.traits().pumped();
        Map<String, List<String>> tables = new LinkedHashMap<>();
        tables.put("", List.of("name = \"" + name + "\"", "description = \"\"", "cycle = \"" + cycle.id() + "\""));
        tables.put(
                "propellants",
                List.of(
                        "oxidizer = \"" + oxidizer.id() + "\"",
                        "fuel = \"" + fuel.id() + "\"",
                        String.format(
                                Locale.ROOT,
                                "mixture_ratio = %.2f  # by mass, leaving the tanks; %.0f %% of the stoichiometric ratio",
                                SHARE_OF_STOICHIOMETRIC * stoichiometric(),
                                100 * SHARE_OF_STOICHIOMETRIC)));
        tables.put(
                "engine",
                List.of(
                        "thrust_vacuum = \"" + (pumped ? 500 : 20) + " kN\"  # or thrust_sea_level, or throat_diameter",
                        "chamber_pressure = \"" + (pumped ? "8 MPa" : "1 MPa")
                                + "\"  # absolute, at the nozzle entrance"));
        tables.put("nozzle", List.of("area_ratio = " + (pumped ? 30 : 60) + "  # or exit_pressure = \"40 kPa\""));
        if (pumped) {
            tables.put("cooling", List.of("coolant = \"fuel\"  # fuel, oxidizer or none"));
        }
        return tables;
    }

    private static String plain(Map<String, List<String>> tables) {
        StringBuilder text = new StringBuilder();
        tables.forEach((table, lines) -> {
            text.append(table.isEmpty() ? "" : "[" + table + "]\n");
            lines.forEach(line -> text.append(line).append('\n'));
        });
        return text.toString();
    }

    /** Oxidizer over fuel by mass at which the valences cancel (-); 1 for a fuel that needs no oxidizer. */
    private double stoichiometric() {
        double need = valence(fuel);
        double offer = -valence(oxidizer);
        return need > 0 && offer > 0 ? need / offer : 1;
    }

    private static double valence(Propellant propellant) {
        double sum = 0;
        for (Map.Entry<String, Double> element :
                propellant.composition().molesPerKilogram().entrySet()) {
            sum += VALENCE.getOrDefault(element.getKey(), 0.0) * element.getValue();
        }
        return sum;
    }

    private static String comment(ConceptInput input, String key) {
        String basis = input.source().replaceFirst("^default: ", "");
        String value = input.value();
        if (value.equals("computed")) {
            return "# " + key + " =  # computed: " + basis;
        }
        boolean word = !value.matches("[-+.\\deE]+|true|false");
        String written = input.unit().isEmpty() ? (word ? '"' + value + '"' : value) : '"' + inUnits(input) + '"';
        return "# " + key + " = " + written + "  # " + basis;
    }

    /** SI values in the unit in which people write them. */
    private static String inUnits(ConceptInput input) {
        double value = Double.parseDouble(input.value());
        return switch (input.unit()) {
            case "Pa" -> Math.abs(value) >= 1e6 ? short6(value / 1e6) + " MPa" : short6(value / 1e3) + " kPa";
            case "m" -> Math.abs(value) < 0.1 ? short6(value * 1e3) + " mm" : short6(value) + " m";
            case "rad" -> short6(Math.toDegrees(value)) + " deg";
            case "rad/s" -> short6(value * 30 / Math.PI) + " rpm";
            default -> short6(value) + " " + input.unit();
        };
    }

    private static String short6(double value) {
        return String.format(Locale.ROOT, "%.6g", value)
                .replaceAll("(\\.\\d*?)0+($|e)", "$1$2")
                .replaceAll("\\.($|e)", "$1");
    }
}
