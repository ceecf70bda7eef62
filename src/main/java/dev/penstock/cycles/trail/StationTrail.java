package dev.penstock.cycles.trail;

import dev.penstock.chamber.flow.CombustorPressure;
import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.fluids.Propellant;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Trail;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Records where the numbers of stations come from: each station is made by the component it leaves. */
final class StationTrail {

    private final EngineBalance balance;
    private final Trail trail;
    private final Map<Integer, Component> makers = new TreeMap<>();

    StationTrail(EngineBalance balance, Trail trail) {
        this.balance = balance;
        this.trail = trail;
        balance.components().forEach(c -> c.outlets().forEach(n -> makers.put(n, c)));
    }

    void station(Station s) {
        Component maker = makers.get(s.number());
        String p = at(s.number());
        List<String> inlets = maker.inlets().stream().map(BalanceTrail::at).toList();
        String side = s.medium().equals(balance.concept().oxidizer().id()) ? "oxidizer" : "fuel";
        switch (maker.kind()) {
            case TANK -> tank(s, p, maker.id().endsWith("oxidizer") ? "oxidizer" : "fuel");
            case PUMP -> liquid(s, p, Definitions.BUDGET, budget(side), Definitions.WORK, inlets, maker.label());
            case JACKET -> {
                put(
                        p,
                        "pressure_Pa",
                        s.pressure(),
                        "Pa",
                        Definitions.DIFFERENCE,
                        each(inlets, "pressure_Pa"),
                        List.of("cooling.coolant_pressure_drop_Pa"));
                put(
                        p,
                        "enthalpy_J_kg",
                        s.enthalpy(),
                        "J/kg",
                        Definitions.HEAT,
                        each(inlets, "enthalpy_J_kg"),
                        List.of("cooling.heat_load_W", p + ".mass_flow_kg_s"));
                states(s, p, fluidCard(s));
                flow(s, p, inlets);
            }
            case TURBINE -> {
                String machine = "turbines." + Trail.slug(maker.label());
                put(p, "pressure_Pa", s.pressure(), "Pa", Definitions.CLOSING, downstream(s), concept("turbines."));
                put(
                        p,
                        "enthalpy_J_kg",
                        s.enthalpy(),
                        "J/kg",
                        Definitions.WORK,
                        each(inlets, "enthalpy_J_kg"),
                        List.of(machine + ".power_W", p + ".mass_flow_kg_s"));
                states(s, p, gasCard(s));
                flow(s, p, inlets);
            }
            case GAS_GENERATOR, PREBURNER -> burner(s, p, inlets, maker);
            case CHAMBER -> chamber(s, p, inlets);
            default -> passage(s, p, inlets, maker, side);
        }
    }

    private void tank(Station s, String p, String side) {
        String key = "concept.tanks." + side;
        boolean stated = trail.has(key + ".pressure");
        put(
                p,
                "pressure_Pa",
                s.pressure(),
                "Pa",
                stated ? Definitions.SAME : Definitions.BUDGET,
                stated ? List.of(key + ".pressure") : budget(side));
        put(p, "temperature_K", s.temperature(), "K", Definitions.SAME, List.of(key + ".temperature"));
        put(p, "density_kg_m3", s.density(), "kg/m³", fluidCard(s), List.of(p + ".pressure_Pa", p + ".temperature_K"));
        put(
                p,
                "enthalpy_J_kg",
                s.enthalpy(),
                "J/kg",
                fluidCard(s),
                List.of(p + ".pressure_Pa", p + ".temperature_K"),
                formation(s));
        put(
                p,
                "mass_flow_kg_s",
                s.massFlow(),
                "kg/s",
                Definitions.TANK_FLOW,
                List.of("engine.mass_flow_kg_s", "concept.propellants.mixture_ratio"));
    }

    private void liquid(
            Station s,
            String p,
            ModelCard pressure,
            List<String> pressureFrom,
            ModelCard enthalpy,
            List<String> inlets,
            String machine) {
        put(p, "pressure_Pa", s.pressure(), "Pa", pressure, pressureFrom);
        put(
                p,
                "enthalpy_J_kg",
                s.enthalpy(),
                "J/kg",
                enthalpy,
                each(inlets, "enthalpy_J_kg"),
                List.of("pumps." + Trail.slug(machine) + ".power_W", p + ".mass_flow_kg_s"));
        states(s, p, fluidCard(s));
        flow(s, p, inlets);
    }

    private void burner(Station s, String p, List<String> inlets, Component maker) {
        List<String> stated = concept(maker.id() + ".temperature", maker.id() + ".injector_loss");
        put(p, "pressure_Pa", s.pressure(), "Pa", Definitions.CLOSING, downstream(s), stated);
        put(
                p,
                "enthalpy_J_kg",
                s.enthalpy(),
                "J/kg",
                Definitions.MIXING,
                each(inlets, "enthalpy_J_kg"),
                each(inlets, "mass_flow_kg_s"));
        states(s, p, EquilibriumSolver.CARD);
        flow(s, p, inlets);
    }

    private void chamber(Station s, String p, List<String> inlets) {
        put(p, "pressure_Pa", s.pressure(), "Pa", Definitions.SAME, List.of("concept.engine.chamber_pressure"));
        put(
                p,
                "enthalpy_J_kg",
                s.enthalpy(),
                "J/kg",
                Definitions.MIXING,
                each(inlets, "enthalpy_J_kg"),
                each(inlets, "mass_flow_kg_s"),
                balance.cooling().isPresent() ? List.of("cooling.heat_load_W") : List.of());
        put(
                p,
                "temperature_K",
                s.temperature(),
                "K",
                EquilibriumSolver.CARD,
                List.of(p + ".pressure_Pa", p + ".enthalpy_J_kg", "engine.chamber_mixture_ratio"));
        put(
                p,
                "density_kg_m3",
                s.density(),
                "kg/m³",
                EquilibriumSolver.CARD,
                List.of(p + ".pressure_Pa", p + ".temperature_K"));
        put(p, "mass_flow_kg_s", s.massFlow(), "kg/s", Definitions.CLOSING, each(inlets, "mass_flow_kg_s"), size());
    }

    /** Lines, valves, orifices, injectors, splits and merges. */
    private void passage(Station s, String p, List<String> inlets, Component maker, String side) {
        List<String> losses =
                switch (maker.kind()) {
                    case INJECTOR -> concept("injector.", "engine.chamber_pressure");
                    case LINE -> concept("lines.", "exhaust.duct_loss", "engine.chamber_pressure");
                    case VALVE -> concept("lines." + side, "engine.chamber_pressure");
                    default -> List.of();
                };
        ModelCard pressure = maker.kind() == Component.Kind.INJECTOR ? CombustorPressure.CARD : Definitions.LOSS;
        put(p, "pressure_Pa", s.pressure(), "Pa", pressure, each(inlets, "pressure_Pa"), losses);
        boolean merged = inlets.size() > 1;
        put(
                p,
                "enthalpy_J_kg",
                s.enthalpy(),
                "J/kg",
                merged ? Definitions.MIXING : Definitions.LOSS,
                each(inlets, "enthalpy_J_kg"),
                merged ? each(inlets, "mass_flow_kg_s") : List.of());
        states(s, p, isLiquid(s) ? fluidCard(s) : gasCard(s));
        if (maker.kind() == Component.Kind.SPLIT) {
            put(
                    p,
                    "mass_flow_kg_s",
                    s.massFlow(),
                    "kg/s",
                    Definitions.CLOSING,
                    each(inlets, "mass_flow_kg_s"),
                    concept("cooling.flow_fraction"));
        } else {
            flow(s, p, inlets);
        }
    }

    private void states(Station s, String p, ModelCard card) {
        List<String> from = new ArrayList<>(List.of(p + ".pressure_Pa", p + ".enthalpy_J_kg"));
        from.addAll(formation(s));
        put(p, "temperature_K", s.temperature(), "K", card, from);
        put(p, "density_kg_m3", s.density(), "kg/m³", card, from);
    }

    private void flow(Station s, String p, List<String> inlets) {
        List<String> from = each(inlets, "mass_flow_kg_s");
        put(p, "mass_flow_kg_s", s.massFlow(), "kg/s", Definitions.FLOW, from.isEmpty() ? size() : from);
    }

    private boolean isLiquid(Station s) {
        return s.medium().equals(balance.concept().oxidizer().id())
                || s.medium().equals(balance.concept().fuel().id());
    }

    private ModelCard fluidCard(Station s) {
        Propellant oxidizer = balance.concept().oxidizer();
        return (s.medium().equals(oxidizer.id()) ? oxidizer : balance.concept().fuel())
                .fluid()
                .model();
    }

    private ModelCard gasCard(Station s) {
        return isLiquid(s) ? fluidCard(s) : EquilibriumSolver.CARD;
    }

    private List<String> formation(Station s) {
        String path = "fluids." + s.medium() + ".formation_enthalpy_J_kg";
        return trail.has(path) ? List.of(path) : List.of();
    }

    /** What a pressure upstream has to make up for. */
    private List<String> budget(String side) {
        List<String> paths =
                concept("engine.chamber_pressure", "lines." + side, "injector.", "preburner.", "gas_generator.");
        if (balance.cooling().isPresent()) {
            paths.add("cooling.coolant_pressure_drop_Pa");
        }
        return paths;
    }

    /** Stations that the next component makes out of this one. */
    private List<String> downstream(Station s) {
        return balance.components().stream()
                .filter(c -> c.inlets().contains(s.number()))
                .flatMap(c -> c.outlets().stream())
                .map(n -> at(n) + ".pressure_Pa")
                .toList();
    }

    private List<String> size() {
        return BalanceTrail.concept(
                balance, trail, "engine.thrust_vacuum", "engine.thrust_sea_level", "engine.throat_diameter");
    }

    private List<String> concept(String... prefixes) {
        return BalanceTrail.concept(balance, trail, prefixes);
    }

    @SafeVarargs
    private void put(String base, String key, double value, String unit, ModelCard card, List<String>... inputs) {
        BalanceTrail.put(trail, base + "." + key, value, unit, card, inputs);
    }

    private static String at(int number) {
        return BalanceTrail.at(number);
    }

    private static List<String> each(List<String> stations, String key) {
        return stations.stream().map(s -> s + "." + key).toList();
    }
}
