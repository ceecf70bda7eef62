package dev.penstock.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * How a built engine is put to the program at its rating, with its level of technology where the table of technology gives one: its
 * cycle, propellants, mixture ratio, chamber pressure, area ratio, thrust, number of chambers, turbine gas temperature, for dumped
 * turbine gas its pressure ratio, and what the notes of its rows, and of those of cooled walls, say of its machines and walls. Everything else is the program's
 * usual value; nothing is set to make an engine come out right. What the tables do not tell of an engine with pumps goes by class:
 * engines that start on the ground have 0.50 MPa at the oxidizer's tank outlet and 0.35 MPa at the fuel's, engines that start in
 * flight 0.28 and 0.23 MPa.
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

    /** A nozzle of nickel alloy with a small flow of fuel of its own, dumped at its end (alloy and share from memory). */
    private static final String DUMPED =
            """
            [[cooling.circuits]]
            name = "nozzle"
            coolant = "fuel"
            material = "inconel-625"
            flow_fraction = 0.04
            [cooling.circuits.dump]
            """;

    /** Water beside propellants near the stoichiometric ratio in the generator: at 0.6 of its gas they burn at 2.2, 2.9 would burn all. */
    private static final String WATERED = "[gas_generator]\ndiluent.fluid = \"water\"\ndiluent.flow_fraction = 0.6\n";

    /**
     * Pumps that suck with their impellers, as before there were inducers (from memory): the eye of an impeller has a flow coefficient of
     * 0.3, at which a suction specific speed of 9 800 (US units) follows, as handbooks give it without an inducer.
     */
    private static final String WITHOUT_INDUCERS =
            "[pumps.oxidizer]\ninducer_flow_coefficient = 0.3\n[pumps.fuel]\ninducer_flow_coefficient = 0.3\n";

    private static final String BARE = "[cooling]\ncoolant = \"none\"\nextension = \"ablative\"\n";

    /** Of AJ10-137: 7 % of the flow as a film at a mixture ratio of 2; injector drops of 44 and 47 psi at 102 psia. */
    private static final String BARRIER =
            "[cooling.film]\nfuel_fraction = 0.21\n[injector]\noxidizer_loss = 0.431\nfuel_loss = 0.461\n";

    /** Pressures at the tank outlets of RD-0110 (MPa): pump inlets of 0.28 and 0.14 MPa, and the usual line before them. */
    private static final Map<Boolean, Double> OWN_TANKS = Map.of(true, 0.32, false, 0.18);

    private static final Set<String> START_ON_GROUND = Set.of(
            "F-1",
            "LE-7",
            "RD-170",
            "RD-180",
            "RD-253",
            "Vulcain 1",
            "LR-87-AJ-11",
            "LR-87-AJ-7",
            "Viking 5C",
            "YF-77",
            "Redstone A-7");

    /**
     * Engines whose published fuel discharge is that of what feeds the preburner: the row's note has 29.98 MPa before the turbine, above
     * which the whole figure stands, and names no second stage.
     */
    private static final Set<String> DISCHARGE_FEEDS_PREBURNER = Set.of("RD-0124");

    /** Pressure ratio of the oxidizer turbine of J-2, from the note of its row: about 2.65. */
    private static final double SECOND_TURBINE_RATIO = 2.65;

    /** Tables of the concept beyond the rating, by engine: from the notes of its rows; where they are silent, from memory. */
    private static final Map<String, String> TABLES = Map.ofEntries(
            Map.entry(
                    "F-1",
                    SINGLE + FUEL
                            + "flow_fraction = 0.7\nend_area_ratio = 10\nextension = \"film-cooled\"\n[exhaust]\ninto_area_ratio = 10\n"),
            Map.entry("J-2", SERIES + TO_THE_EXIT),
            Map.entry("J-2S", PARALLEL + TO_THE_EXIT),
            Map.entry(
                    "RL10A-3-3A",
                    GEARED + "pump_speed_ratio = 2.5\n" + TO_THE_EXIT + "[chamber]\ncontraction_ratio = 4.31\n"),
            Map.entry("RL10A-4-2", GEARED + TO_THE_EXIT),
            Map.entry("RL10B-2", GEARED + FUEL + "end_area_ratio = 60\n"),
            Map.entry("LE-7", PARALLEL + TO_THE_EXIT),
            Map.entry("RD-170", SINGLE + TO_THE_EXIT + BOOSTED),
            // the gas of RD-170, whose half-size relative it is
            Map.entry(
                    "RD-180", SINGLE + TO_THE_EXIT + BOOSTED + "[preburner.oxidizer_rich]\ntemperature = \"772 K\"\n"),
            Map.entry("RD-253", SINGLE + TO_THE_EXIT),
            Map.entry("AJ10-118K", BARE),
            Map.entry("AJ10-137", BARE + "lining_end_area_ratio = 6\n" + BARRIER),
            Map.entry("R-4D-11", BARE.replace("ablative", "radiating")),
            Map.entry("Vulcain 1", PARALLEL + FUEL + "end_area_ratio = 5.8\n" + DUMPED),
            Map.entry("LR-87-AJ-11", GEARED + FUEL + "end_area_ratio = 8\nextension = \"ablative\"\n"),
            Map.entry("LR-87-AJ-7", GEARED + TO_THE_EXIT),
            Map.entry("Viking 4B", SINGLE + BARE + WATERED),
            Map.entry("Viking 5C", SINGLE + BARE + WATERED),
            Map.entry("LE-5A", SERIES + TO_THE_EXIT),
            Map.entry("LE-5", SERIES + FUEL),
            Map.entry("RD-0110", SINGLE + TO_THE_EXIT),
            Map.entry("RD-0124", SINGLE + TO_THE_EXIT + BOOSTED),
            Map.entry(
                    "J-2X",
                    SERIES + FUEL
                            + "end_area_ratio = 35\nextension = \"film-cooled\"\n[exhaust]\ninto_area_ratio = 35\n"),
            Map.entry("YF-77", PARALLEL + TO_THE_EXIT),
            Map.entry(
                    "Redstone A-7",
                    SINGLE + TO_THE_EXIT + "[cooling.film]\nfuel_fraction = 0.10\n" + WITHOUT_INDUCERS));

    private static final Map<String, String> BURNERS = Map.of(
            "gas-generator", "gas_generator",
            "staged-fuel-rich", "preburner.fuel_rich",
            "staged-oxygen-rich", "preburner.oxidizer_rich");

    /** Engines whose walls are those of another one of their family, whose rows tell of them. */
    private static final Map<String, String> FAMILY = Map.of("RL10A-4-2", "RL10A-3-3A");

    /** Every row of the tables of engines from which a concept can be written. */
    static List<RatedEngine> all() {
        return PublishedEngine.all().stream()
                .filter(e -> e.lacking().isEmpty())
                .map(RatedEngine::new)
                .toList();
    }

    /** Those of {@link #all} of which a figure of the table is of a pump, a turbine or a generator. */
    static List<RatedEngine> withMachines() {
        List<String> columns = List.of(
                "fuel_pump_speed_rpm",
                "ox_pump_speed_rpm",
                "fuel_pump_discharge_MPa",
                "ox_pump_discharge_MPa",
                "fuel_turbine_power_MW",
                "gas_generator_or_preburner_flow_kg_s");
        return all().stream()
                .filter(e ->
                        columns.stream().anyMatch(c -> e.engine.published(c).isPresent()))
                .toList();
    }

    /** Name of the pump of the balance that a published discharge pressure belongs to. */
    static String dischargingPump(String engine, String side) {
        return side.equals("fuel") && DISCHARGE_FEEDS_PREBURNER.contains(engine) ? "fuel kick pump" : side + " pump";
    }

    /** Pressure at the tank outlet (MPa): its own where its row tells of it, else by class. */
    double tankPressure(boolean oxidizer) {
        if (engine.name().equals("RD-0110")) {
            return OWN_TANKS.get(oxidizer);
        }
        return START_ON_GROUND.contains(engine.name()) ? oxidizer ? 0.50 : 0.35 : oxidizer ? 0.28 : 0.23;
    }

    Optional<FlownTechnology> flown() {
        return FlownTechnology.all().stream()
                .filter(f ->
                        f.engine().replaceAll(" \\(.*", "").equals(FAMILY.getOrDefault(engine.name(), engine.name())))
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
        if (!engine.cycle().equals("pressure-fed")) {
            lines.add("[tanks]");
            lines.add(quoted("oxidizer.pressure", tankPressure(true) + " MPa"));
            lines.add(quoted("fuel.pressure", tankPressure(false) + " MPa"));
        }
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
        OptionalDouble ratio = engine.published("turbine_pressure_ratio");
        if (engine.cycle().equals("gas-generator") && ratio.isPresent()) {
            String tables = TABLES.getOrDefault(engine.name(), FUEL);
            boolean two = tables.contains(SERIES) || tables.contains(PARALLEL);
            // in series the concept states the ratio of both turbines together
            double both = ratio.getAsDouble() * (tables.contains(SERIES) ? SECOND_TURBINE_RATIO : 1);
            lines.add(two ? "[turbines.fuel]" : "[turbines.main]");
            lines.add(String.format(Locale.ROOT, "pressure_ratio = %.4g", both));
        }
    }

    private static String quoted(String key, String value) {
        return String.format(Locale.ROOT, "%s = \"%s\"", key, value);
    }
}
