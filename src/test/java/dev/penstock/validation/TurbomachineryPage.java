package dev.penstock.validation;

import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.EngineMasses;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.provenance.Spread;
import dev.penstock.turbomachinery.mass.EngineMass;
import dev.penstock.turbomachinery.mass.MassItem;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.pump.SpecificSpeed;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Computes what docs/validation/turbomachinery.md shows, and writes it. */
final class TurbomachineryPage {

    private static final double POWER = 0.15;
    private static final double DISCHARGE = 0.15;
    private static final double SPEED = 0.30;
    private static final double RPM = Math.PI / 30;

    private final Map<String, EngineBalance> balances = new LinkedHashMap<>();
    private final Map<String, List<Comparison>> engines = new LinkedHashMap<>();

    TurbomachineryPage() {
        EngineStudy study = EngineStudy.open();
        ConceptReader reader = new ConceptReader(FluidLibrary.open());
        for (RatedEngine question : RatedEngine.withMachines()) {
            PublishedEngine engine = question.engine();
            EngineBalance balance = study.balance(reader.parse(engine.name(), question.concept(), Map.of()));
            balances.put(engine.name(), balance);
            engines.put(engine.name(), compare(engine, balance));
        }
    }

    /** Every comparison of an engine that has a target. */
    List<Comparison> comparisons() {
        return engines.values().stream().flatMap(List::stream).toList();
    }

    Map<String, EngineBalance> balances() {
        return balances;
    }

    private static List<Comparison> compare(PublishedEngine engine, EngineBalance balance) {
        List<Comparison> rows = new ArrayList<>();
        ToDoubleFunction<PumpSizing> discharge = p -> p.duty().dischargePressure() / 1e6;
        add(
                rows,
                engine,
                "fuel_pump_discharge_MPa",
                "fuel pump discharge, MPa",
                pump(balance, RatedEngine.dischargingPump(engine.name(), "fuel"), discharge),
                DISCHARGE);
        add(
                rows,
                engine,
                "ox_pump_discharge_MPa",
                "oxidizer pump discharge, MPa",
                pump(balance, RatedEngine.dischargingPump(engine.name(), "oxidizer"), discharge),
                DISCHARGE);
        add(
                rows,
                engine,
                "fuel_pump_speed_rpm",
                "fuel pump speed, rpm",
                pump(balance, "fuel pump", p -> p.speed() / RPM),
                SPEED);
        add(
                rows,
                engine,
                "ox_pump_speed_rpm",
                "oxidizer pump speed, rpm",
                pump(balance, "oxidizer pump", p -> p.speed() / RPM),
                SPEED);
        boolean two = balance.turbines().size() > 1;
        add(
                rows,
                engine,
                "fuel_turbine_power_MW",
                two ? "fuel turbine power, MW" : "turbine power, MW",
                turbine(balance, two ? "fuel" : "main"),
                POWER);
        add(
                rows,
                engine,
                "ox_turbine_power_MW",
                "oxidizer turbine power, MW",
                two ? turbine(balance, "oxidizer") : OptionalDouble.empty(),
                POWER);
        if (engine.cycle().equals("gas-generator")) {
            add(
                    rows,
                    engine,
                    "gas_generator_or_preburner_flow_kg_s",
                    "gas generator flow, kg/s",
                    gasFlow(balance),
                    POWER);
        } else {
            add(
                    rows,
                    engine,
                    "turbine_pressure_ratio",
                    "turbine pressure ratio",
                    OptionalDouble.of(balance.turbines().get(0).duty().pressureRatio()),
                    0);
        }
        return rows;
    }

    private static void add(
            List<Comparison> rows,
            PublishedEngine engine,
            String column,
            String what,
            OptionalDouble computed,
            double target) {
        OptionalDouble published = engine.published(column);
        if (published.isPresent() && computed.isPresent()) {
            rows.add(new Comparison(what, published.getAsDouble(), computed.getAsDouble(), target));
        }
    }

    private static OptionalDouble pump(EngineBalance balance, String name, ToDoubleFunction<PumpSizing> figure) {
        return balance.pumps().stream()
                .filter(p -> p.name().equals(name))
                .mapToDouble(figure)
                .findFirst();
    }

    private static OptionalDouble turbine(EngineBalance balance, String place) {
        return balance.turbines().stream()
                .filter(t -> t.name().startsWith(place))
                .mapToDouble(t -> t.power() / 1e6)
                .findFirst();
    }

    private static OptionalDouble gasFlow(EngineBalance balance) {
        return balance.components().stream()
                .filter(c -> c.kind() == dev.penstock.cycles.origin.PartKind.GAS_GENERATOR)
                .map(c -> balance.station(c.outlets().get(0)))
                .mapToDouble(Station::massFlow)
                .findFirst();
    }

    String text() {
        StringBuilder page = new StringBuilder();
        page.append("# Turbomachinery against published figures\n\n");
        page.append(
                "Generated by `TurbomachineryPageTest`; `mvn test -Dtest=TurbomachineryPageTest -Dpenstock.docs.write=true` writes it anew.\n\n");
        workedExamples(page);
        pumps(page);
        engines(page);
        masses(page);
        return page.toString();
    }

    private static void workedExamples(StringBuilder page) {
        page.append("## Worked examples\n\n");
        page.append(
                "Run through the models with the example's own speed, efficiency and head coefficient, except where a row says"
                        + " that the program chose. Targets are the printed digits or, for the program's own choices, the scatter of the"
                        + " relation.\n\n");
        page.append(
                "| example | figure | published | computed | deviation | target | |\n|---|---|---|---|---|---|---|\n");
        WorkedExamples.all().forEach((name, rows) -> rows.forEach(row -> page.append(row.row(name))));
        page.append('\n');
    }

    private static void pumps(StringBuilder page) {
        page.append("## Pumps at their published duty\n\n");
        page.append(
                "Flow from the published thrust, specific impulse and mixture ratio; discharge pressure and speed as published;"
                        + " stages and efficiency by the program.\n\n");
        page.append(
                "| engine | figure | published | computed | deviation | target | |\n|---|---|---|---|---|---|---|\n");
        PublishedPumps.all().forEach((name, rows) -> rows.forEach(row -> page.append(row.row(name))));
        page.append('\n');
    }

    private void engines(StringBuilder page) {
        page.append("## Built engines\n\n");
        page.append(
                "Every engine of [ratings](ratings.md) of whose machines a figure is published, put to the program as there, with its level of"
                        + " technology where there is one. Published figures and their sources:"
                        + " `src/test/resources/validation/engines.csv`; many are from memory, as that file says row by row.\n\n");
        page.append(
                "| engine | figure | published | computed | deviation | target | |\n|---|---|---|---|---|---|---|\n");
        engines.forEach((name, rows) -> rows.forEach(row -> page.append(row.row(name))));
        List<Comparison> aimed =
                comparisons().stream().filter(c -> c.target() > 0).toList();
        long met = aimed.stream().filter(Comparison::met).count();
        page.append(String.format(Locale.ROOT, "%n%d of %d figures meet their target.%n%n", met, aimed.size())
                .replace("\r\n", "\n"));
        page.append("What the machines look like:\n\n");
        page.append(
                "| engine | pump | stages | η | nq | tip speed m/s | | turbine | kind | stages | η | U/C0 | pitch dia. m |\n"
                        + "|---|---|---|---|---|---|---|---|---|---|---|---|---|\n");
        balances.forEach((name, balance) -> machines(page, name, balance));
        page.append("\nWhat keeps the shafts from turning faster:\n\n| engine | shaft | set by |\n|---|---|---|\n");
        balances.forEach((name, balance) -> balance.shafts()
                .forEach(s -> page.append(String.format("| %s | %s | %s |\n", name, s.name(), s.speedSetBy()))));
        specificSpeeds(page);
        page.append("\nMisses, and why:\n\n");
        page.append(NOTES);
    }

    /** Specific speed of each oxidizer pump at its published speed, duty and stages by the program. */
    private void specificSpeeds(StringBuilder page) {
        page.append(
                """

                Specific speed of oxidizer pumps at their published speed (US units; duty and stages by the program), beside the highest that a main pump is designed
                for, 1800, the middle of the range of Francis impellers [nasa-sp-125] (decision 0198):

                | engine | US units |
                |---|--:|
                """);
        balances.forEach((name, balance) -> {
            OptionalDouble speed = PublishedEngine.named(name).published("ox_pump_speed_rpm");
            balance.pumps().stream()
                    .filter(p -> p.name().equals("oxidizer pump") && speed.isPresent())
                    .forEach(p -> page.append(String.format(
                            Locale.ROOT,
                            "| %s | %.0f |\n",
                            name,
                            SpecificSpeed.inUsUnits(p.specificSpeed())
                                    * speed.getAsDouble()
                                    * Math.PI
                                    / 30
                                    / p.speed())));
        });
    }

    private static void machines(StringBuilder page, String name, EngineBalance balance) {
        int rows = Math.max(balance.pumps().size(), balance.turbines().size());
        for (int i = 0; i < rows; i++) {
            String pump = "| | | | | ";
            if (i < balance.pumps().size()) {
                PumpSizing p = balance.pumps().get(i);
                pump = String.format(
                        Locale.ROOT,
                        "%s | %d | %.2f | %.0f | %.0f ",
                        p.name(),
                        p.stages(),
                        p.efficiency(),
                        SpecificSpeed.metric(p.specificSpeed()),
                        p.tipSpeed());
            }
            String turbine = "| | | | | ";
            if (i < balance.turbines().size()) {
                TurbineSizing t = balance.turbines().get(i);
                turbine = String.format(
                        Locale.ROOT,
                        "%s | %s | %d | %.2f | %.2f | %.2f ",
                        t.name(),
                        t.type().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                        t.stages(),
                        t.efficiency(),
                        t.velocityRatio(),
                        t.meanDiameter());
            }
            page.append("| ")
                    .append(name)
                    .append(" | ")
                    .append(pump)
                    .append("| | ")
                    .append(turbine)
                    .append("|\n");
        }
    }

    private void masses(StringBuilder page) {
        page.append("\n## Engine mass\n\n");
        page.append(
                "Sum of the parts with its band, and the relations for whole engines. Published masses include accessories to"
                        + " a different extent from engine to engine.\n\n");
        page.append(
                "| engine | published kg | sum of parts kg | low | high | deviation | inside the band | whole-engine relations kg |\n"
                        + "|---|---|---|---|---|---|---|---|\n");
        balances.forEach((name, balance) -> {
            OptionalDouble published = PublishedEngine.named(name).published("mass_kg");
            if (published.isPresent()) {
                EngineMass mass = EngineMasses.of(balance);
                Spread total = mass.total();
                double kg = published.getAsDouble();
                List<String> others = mass.wholeEngine().stream()
                        .map(MassItem::mass)
                        .map(s -> String.format(Locale.ROOT, "%.0f", s.mode()))
                        .toList();
                page.append(String.format(
                                Locale.ROOT,
                                "| %s | %.0f | %.0f | %.0f | %.0f | %+.0f %% | %s | %s |%n",
                                name,
                                kg,
                                total.mode(),
                                total.low(),
                                total.high(),
                                100 * (total.mode() / kg - 1),
                                kg >= total.low() && kg <= total.high() ? "yes" : "**no**",
                                String.join(", ", others))
                        .replace("\r\n", "\n"));
            }
        });
    }

    private static final String NOTES =
            """
            - Vulcain 1, discharge pressures: 12.5 MPa, from memory, would leave 0.19 of the chamber pressure for injector, valve and line together; with them
              goes its power.
            - Redstone A-7, turbine power: its impulse comes out 9 % low and its flow as much too high; a chamber of 2.2 MPa of the early 1950s had
              less in valves and ducts than later engines.
            - RD-0110 and RD-0124, fuel pump discharge: the built fuel pumps deliver 2.1 and 2.35 times chamber pressure. What
              their jackets take is not published.
            - RD-0110, generator flow: with the fuel pump's discharge, its power and so its gas come out low.
            - RD-170, fuel pump discharge: under the film and with the walls of its level its jacket takes little; what the built one
              takes is not published.
            - LE-5A, oxidizer pump, and RD-0124, speeds: the built shafts run slower than their limits
              allow, by margins that no general rule here asks for; a concept may state `shafts.speed_share`.
            - Redstone A-7, speed: put without inducers, suction limits it at the tank pressure of its class; its own is not published.
            - Viking 4B, speed: the suction of its oxidizer pump at the tank pressure of its class; its own may be higher.

            Near misses that share a reason:

            - Viking, turbine power: without a jacket, with as large an orifice as the others here, and with water that its turbine gas takes along.
            - LE-7, fuel pump speed: the turbine's annulus at the middle of the published limits (3·10¹⁰ in²·rpm²) holds the shaft
              back; the built turbine has more of it.
            - RL10A-3-3A, turbine power: three reaction stages are more efficient than the built turbine.

            How far this is a check: the limits behind the speeds of small pumps (smallest bearings 25 mm, teeth of a gearbox
            100 m/s on a pinion of two shaft diameters, DN 1.6 million in hydrogen) and the shares of chamber pressure (jacket up
            to a quarter, growing with p^0.8 above 10 MPa; 40 % where its heat drives the pumps; a main valve of 3 % without trim
            where a propellant goes whole through a preburner) are round numbers of practice; orifice and ducts are from published schedules
            of other engines with these in view (decision 0214, with each left out). They hold for every concept and none
            is fitted to an engine, but they were settled with these engines in view, and one gearbox, two small hydrogen pumps
            and one chamber above 20 MPa say as much about that choice as about the models.

            Engines of the table that are not here are those without published figures of their machines and those without pumps; their
            impulse and mass are on the page of ratings. Redstone A-7 drives its turbine with decomposed peroxide; here a generator burns fuel-rich.
            """;
}
