package dev.penstock.validation;

import java.util.List;
import java.util.Locale;

/**
 * How a published engine is put to the program: its published cycle, propellants, mixture ratio, chamber pressure, area ratio,
 * thrust, turbine gas temperature and (for dumped turbine gas) pressure ratio; how its machines are coupled; and for everything
 * else the program's usual values. Nothing is set to make an engine come out right. What the table does not tell is set by
 * class: engines that start on the ground have 0.50 MPa in the oxidizer line and 0.35 MPa in the fuel line, engines that start
 * in flight 0.28 and 0.23 MPa.
 *
 * @param engine published figures
 * @param onGround whether it starts on the ground
 * @param coupling the table [shafts] of the concept
 * @param boosted whether it has boost pumps
 * @param wall how its chamber is made, lines of the table [cooling]
 */
record EngineCase(PublishedEngine engine, boolean onGround, String coupling, boolean boosted, String wall) {

    /** Pressure ratio of the oxidizer turbine of J-2, from the note of its row: about 2.65. */
    private static final double SECOND_TURBINE_RATIO = 2.65;

    private static final String SINGLE = "arrangement = \"single\"";

    /** Gearing of RL10A-3-3A from the note of its row: 2.5 to 1. */
    private static final String GEARED = "arrangement = \"geared\"\npump_speed_ratio = 2.5";

    private static final String PARALLEL = "arrangement = \"dual\"";
    private static final String SERIES = "arrangement = \"dual\"\ngas_path = \"series\"";

    private static final String MILLED = "";

    /** Cooled to the exit: fuel in tubes or brazed channels along the whole nozzle, from memory. */
    private static final String TO_THE_EXIT = "end_area_ratio = 100";

    private static final String STEEL_TUBES =
            "channels = \"tube\"\nroute = \"pass-and-a-half\"\nmaterial = \"stainless-347\"\n" + TO_THE_EXIT;

    /** Tubes to area ratio 10, from there a sheet under turbine exhaust: notes of its rows here and in technology.csv. */
    private static final String NICKEL_TUBES = "channels = \"tube\"\nroute = \"two-pass\"\nmaterial = \"inconel-718\"\n"
            + "end_area_ratio = 10\nextension = \"film-cooled\"\n[exhaust]\ninto_area_ratio = 10";

    /**
     * Engines whose published fuel discharge is that of what feeds the preburner: the row's note has 29.98 MPa before the turbine, above
     * which the whole figure stands, and names no second stage.
     */
    private static final List<String> DISCHARGE_FEEDS_PREBURNER = List.of("RD-0124");

    /** Name of the pump of the balance that a published discharge pressure belongs to. */
    static String dischargingPump(String engine, String side) {
        return side.equals("fuel") && DISCHARGE_FEEDS_PREBURNER.contains(engine) ? "fuel kick pump" : side + " pump";
    }

    /** Engines with published figures of their turbomachinery whose arrangement the program has. */
    static List<EngineCase> all() {
        return List.of(
                new EngineCase(named("F-1"), true, SINGLE, false, NICKEL_TUBES),
                new EngineCase(named("J-2"), false, SERIES, false, STEEL_TUBES),
                new EngineCase(named("Vulcain 1"), true, PARALLEL, false, MILLED),
                new EngineCase(named("LE-7"), true, PARALLEL, false, MILLED),
                new EngineCase(named("RD-170"), true, SINGLE, true, TO_THE_EXIT),
                new EngineCase(named("RL10A-3-3A"), false, GEARED, false, STEEL_TUBES),
                new EngineCase(named("LE-5A"), false, SERIES, false, MILLED),
                new EngineCase(named("RD-0110"), false, SINGLE, false, TO_THE_EXIT),
                new EngineCase(named("RD-0124"), false, SINGLE, true, TO_THE_EXIT),
                new EngineCase(named("RD-180"), true, SINGLE, true, TO_THE_EXIT));
    }

    /** The concept file of the engine. */
    String concept() {
        StringBuilder text = new StringBuilder();
        line(text, "name = \"%s\"", engine.name());
        line(text, "cycle = \"%s\"", engine.cycle());
        line(text, "[propellants]");
        line(text, "oxidizer = \"%s\"", engine.oxidizer());
        line(text, "fuel = \"%s\"", engine.fuel());
        line(text, "mixture_ratio = %s", engine.text("mixture_ratio"));
        line(text, "[engine]");
        line(text, "thrust_vacuum = \"%s kN\"", engine.text("thrust_vac_kN"));
        line(text, "chamber_pressure = \"%s MPa\"", engine.text("chamber_pressure_MPa"));
        line(text, "chambers = %d", engine.chambers());
        line(text, "[nozzle]");
        line(text, "area_ratio = %s", engine.text("expansion_ratio"));
        line(text, "[tanks]");
        line(text, "oxidizer.pressure = \"%s MPa\"", tankPressure(true));
        line(text, "fuel.pressure = \"%s MPa\"", tankPressure(false));
        line(text, "[cooling]");
        line(text, "coolant = \"fuel\"");
        line(text, "%s", wall);
        line(text, "[shafts]");
        line(text, "%s", coupling);
        if (boosted) {
            line(text, "[boost_pumps.oxidizer]");
            line(text, "[boost_pumps.fuel]");
        }
        gas(text);
        return text.toString();
    }

    private void gas(StringBuilder text) {
        String temperature = engine.text("turbine_inlet_temperature_K");
        if (!temperature.isEmpty()) {
            String table =
                    switch (engine.cycle()) {
                        case "gas-generator" -> "gas_generator";
                        case "staged-fuel-rich" -> "preburner.fuel_rich";
                        case "staged-oxygen-rich" -> "preburner.oxidizer_rich";
                        default -> "";
                    };
            if (!table.isEmpty()) {
                line(text, "[%s]", table);
                line(text, "temperature = \"%s K\"", temperature);
            }
        }
        String ratio = engine.text("turbine_pressure_ratio");
        if (engine.cycle().equals("gas-generator") && !ratio.isEmpty()) {
            line(text, "[turbines.%s]", coupling.equals(SINGLE) ? "main" : "fuel");
            // in series the concept states the ratio of both turbines together
            double both = coupling.equals(SERIES)
                    ? Double.parseDouble(ratio) * SECOND_TURBINE_RATIO
                    : Double.parseDouble(ratio);
            line(text, "pressure_ratio = %.4g", both);
        }
    }

    /** Pressure at the tank outlet by class, MPa. */
    String tankPressure(boolean oxidizer) {
        return onGround ? oxidizer ? "0.50" : "0.35" : oxidizer ? "0.28" : "0.23";
    }

    static PublishedEngine named(String name) {
        return PublishedEngine.all().stream()
                .filter(e -> e.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static void line(StringBuilder text, String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
