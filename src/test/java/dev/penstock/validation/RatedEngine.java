package dev.penstock.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How a built engine is put to the program at its rating, with its level of technology where the table of technology gives one: its
 * cycle, propellants, mixture ratio, chamber pressure, area ratio, thrust, number of chambers, turbine gas temperature and ratio, and
 * what the notes of its rows say of its machines and walls. Everything else is the program's usual value.
 *
 * @param engine published figures
 */
record RatedEngine(PublishedEngine engine) {

    private static final String SINGLE = "[shafts]\narrangement = \"single\"\n";
    private static final String GEARED = "[shafts]\narrangement = \"geared\"\n";
    private static final String SERIES = "[shafts]\narrangement = \"dual\"\ngas_path = \"series\"\n";
    private static final String PARALLEL = "[shafts]\narrangement = \"dual\"\n";
    private static final String BOOSTED = "[boost_pumps.oxidizer]\n[boost_pumps.fuel]\n";

    private static final String FUEL = "[cooling]\ncoolant = \"fuel\"\n";
    private static final String TO_THE_EXIT = FUEL + "end_area_ratio = 1000\n";
    private static final String BARE = "[cooling]\ncoolant = \"none\"\nextension = \"ablative\"\n";

    /** Tables of the concept beyond the rating, by engine: from the notes of its rows; where they are silent, from memory. */
    private static final Map<String, String> TABLES = Map.ofEntries(
            Map.entry(
                    "F-1",
                    SINGLE + FUEL
                            + "end_area_ratio = 10\nextension = \"film-cooled\"\n[exhaust]\ninto_area_ratio = 10\n"),
            Map.entry("J-2", SERIES + TO_THE_EXIT),
            Map.entry("J-2S", PARALLEL + TO_THE_EXIT),
            Map.entry("RL10A-3-3A", GEARED + "pump_speed_ratio = 2.5\n" + TO_THE_EXIT),
            Map.entry("RL10A-4-2", GEARED + TO_THE_EXIT),
            Map.entry("RL10B-2", GEARED + FUEL + "end_area_ratio = 60\n"),
            Map.entry("LE-7", PARALLEL + TO_THE_EXIT),
            Map.entry("RD-170", SINGLE + TO_THE_EXIT + BOOSTED),
            Map.entry("RD-180", SINGLE + TO_THE_EXIT + BOOSTED),
            Map.entry("RD-253", SINGLE + TO_THE_EXIT),
            Map.entry("AJ10-118K", BARE),
            Map.entry("AJ10-137", BARE),
            Map.entry("R-4D-11", BARE.replace("ablative", "radiating")),
            Map.entry("Vulcain 1", PARALLEL + TO_THE_EXIT),
            Map.entry("LR-87-AJ-11", GEARED + FUEL + "end_area_ratio = 8\nextension = \"ablative\"\n"),
            Map.entry("LR-87-AJ-7", GEARED + TO_THE_EXIT),
            Map.entry("Viking 4B", SINGLE + BARE),
            Map.entry("Viking 5C", SINGLE + BARE),
            Map.entry("LE-5A", SERIES + TO_THE_EXIT),
            Map.entry("LE-5", SERIES + FUEL),
            Map.entry("RD-0110", SINGLE + TO_THE_EXIT),
            Map.entry("RD-0124", SINGLE + TO_THE_EXIT + BOOSTED),
            Map.entry(
                    "J-2X",
                    SERIES + FUEL
                            + "end_area_ratio = 35\nextension = \"film-cooled\"\n[exhaust]\ninto_area_ratio = 35\n"),
            Map.entry("YF-77", PARALLEL + TO_THE_EXIT),
            Map.entry("Redstone A-7", SINGLE + TO_THE_EXIT + "[cooling.film]\nfuel_fraction = 0.10\n"));

    private static final Map<String, String> BURNERS = Map.of(
            "gas-generator", "gas_generator",
            "staged-fuel-rich", "preburner.fuel_rich",
            "staged-oxygen-rich", "preburner.oxidizer_rich");

    /** Every row of the tables of engines from which a concept can be written. */
    static List<RatedEngine> all() {
        return PublishedEngine.all().stream()
                .filter(e -> e.lacking().isEmpty())
                .map(RatedEngine::new)
                .toList();
    }

    Optional<FlownTechnology> flown() {
        return FlownTechnology.all().stream()
                .filter(f -> f.engine().replaceAll(" \\(.*", "").equals(engine.name()))
                .filter(f -> f.level().isPresent())
                .findFirst();
    }

    /** The word of its level of technology; empty where no level describes it. */
    String level() {
        return flown().map(f -> f.level().orElseThrow().word()).orElse("");
    }

    String concept() {
        List<String> lines = new ArrayList<>();
        lines.add(quoted("name", engine.name()));
        lines.add(quoted("cycle", engine.cycle()));
        if (!level().isEmpty()) {
            lines.add(quoted("technology", level()));
        }
        lines.add("[propellants]");
        lines.add(quoted("oxidizer", engine.oxidizer()));
        lines.add(quoted("fuel", engine.fuel()));
        lines.add("mixture_ratio = " + engine.text("mixture_ratio"));
        lines.add("[engine]");
        lines.add(quoted("thrust_vacuum", engine.text("thrust_vac_kN") + " kN"));
        lines.add(quoted("chamber_pressure", engine.text("chamber_pressure_MPa") + " MPa"));
        lines.add("chambers = " + engine.chambers());
        lines.add("[nozzle]");
        lines.add("area_ratio = " + engine.text("expansion_ratio"));
        lines.add(TABLES.getOrDefault(engine.name(), FUEL));
        gas(lines);
        return String.join("\n", lines) + "\n";
    }

    private void gas(List<String> lines) {
        String temperature = engine.text("turbine_inlet_temperature_K");
        if (!temperature.isEmpty() && BURNERS.containsKey(engine.cycle())) {
            lines.add("[" + BURNERS.get(engine.cycle()) + "]");
            lines.add(quoted("temperature", temperature + " K"));
        }
    }

    private static String quoted(String key, String value) {
        return String.format(Locale.ROOT, "%s = \"%s\"", key, value);
    }
}
