package dev.penstock.cycles.trail;

import dev.penstock.chamber.ChamberTrail;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketTrail;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.cycles.origin.Closing;
import dev.penstock.cycles.origin.Definitions;
import dev.penstock.cycles.origin.InputPaths;
import dev.penstock.cycles.origin.PartPlace;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EnergyAudit;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.EngineSummary;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.cycles.sheet.ExhaustNozzle;
import dev.penstock.cycles.sheet.Residual;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.LimitKind;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.provenance.Place.Role;
import dev.penstock.provenance.Trail;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.pump.PumpFigures;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import dev.penstock.turbomachinery.shaft.ShaftFigures;
import dev.penstock.turbomachinery.turbine.TurbineFigures;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Records where every number of a balanced engine comes from: inputs with who said so, stations by the component that made
 * them, machines, chamber and jacket by their own packages. The arrangement itself decides what depends on what, so a new
 * cycle needs nothing here.
 */
public final class BalanceTrail {

    private static final String GRAVITY = "constants.standard_gravity_m_s2";

    private final EngineBalance balance;
    private final Trail trail = new Trail();
    private final InputPaths inputs;

    private BalanceTrail(EngineBalance balance) {
        this.balance = balance;
        this.inputs = new InputPaths(balance.concept());
    }

    /**
     * @param balance balanced engine
     * @return the trail of all its numbers
     */
    public static Trail of(EngineBalance balance) {
        return new BalanceTrail(balance).make();
    }

    private Trail make() {
        inputs();
        String chamberGas = chamberGas();
        balance.origins().entries().forEach(trail::add);
        machines();
        new ChamberTrail(trail)
                .chamber(balance.chamber(), chamberGas, size(), concept("nozzle.", "chamber.", "efficiencies."));
        new ChamberTrail(trail)
                .gas(
                        balance.chamber(),
                        chamberGas,
                        trail.entry(chamberGas + ".temperature_K").orElseThrow().model());
        balance.cooling().forEach(jacket -> cooling(jacket, chamberGas));
        engine(chamberGas);
        new MassTrail(balance, trail).record();
        components();
        limits();
        evidence();
        return trail;
    }

    // ---- what comes from outside

    private void inputs() {
        trail.given(GRAVITY, Constants.STANDARD_GRAVITY, "m/s²", "constant by definition", "3rd CGPM, 1901");
        trail.given(
                "constants.standard_atmosphere_Pa",
                Constants.STANDARD_ATMOSPHERE,
                "Pa",
                "constant by definition",
                "10th CGPM, 1954");
        for (InputValue input : balance.concept().document().inputs()) {
            String what = input.given() ? "stated by the concept" : "default of the concept";
            List<String> follows = inputs.of(input.follows().toArray(String[]::new));
            input.number()
                    .ifPresent(value ->
                            trail.given("concept." + input.key(), value, input.unit(), what, input.source(), follows));
        }
        for (Propellant propellant :
                List.of(balance.concept().oxidizer(), balance.concept().fuel())) {
            trail.given(
                    "fluids." + propellant.id() + ".formation_enthalpy_J_kg",
                    propellant.formationEnthalpy(),
                    "J/kg",
                    "stated by the fluid's file",
                    String.join(", ", propellant.sources()));
        }
    }

    /** Paths of the concept's numbers whose key starts with one of the prefixes. */
    static List<String> concept(EngineBalance balance, Trail trail, String... prefixes) {
        List<String> paths = new ArrayList<>();
        for (InputValue input : balance.concept().document().inputs()) {
            for (String prefix : prefixes) {
                String path = "concept." + input.key();
                if (input.key().startsWith(prefix) && trail.has(path) && !paths.contains(path)) {
                    paths.add(path);
                }
            }
        }
        return paths;
    }

    private List<String> concept(String... prefixes) {
        return concept(balance, trail, prefixes);
    }

    // ---- machines, jacket, engine

    static String at(int number) {
        return "stations." + number;
    }

    private String chamberGas() {
        return balance.components().stream()
                .filter(c -> c.kind() == Component.Kind.CHAMBER)
                .map(c -> at(c.outlets().get(0)))
                .findFirst()
                .orElseThrow();
    }

    /** What the concept asks of the engine's size; dumped gas gives part of the thrust. */
    private ChamberTrail.Size size() {
        ThrustTarget.Kind kind = balance.concept().thrust().kind();
        List<String> asked = inputs.of("engine." + kind.key());
        if (kind == ThrustTarget.Kind.THROAT_DIAMETER) {
            return new ChamberTrail.Size(asked, List.of());
        }
        List<String> thrust = new ArrayList<>(asked);
        balance.exhausts().forEach(jet -> thrust.add(thrustOf(jet)));
        if (kind == ThrustTarget.Kind.SEA_LEVEL_THRUST) {
            thrust.addAll(List.of(
                    "constants.standard_atmosphere_Pa", "chamber.thrust_coefficient_vacuum", "chamber.area_ratio"));
            thrust.addAll(inputs.of("engine.chamber_pressure"));
        }
        return new ChamberTrail.Size(List.of(), thrust);
    }

    private static String thrustOf(ExhaustJet jet) {
        return "exhausts." + Trail.slug(jet.name()) + ".vacuum_thrust_N";
    }

    private void machines() {
        for (PumpSizing pump : balance.pumps()) {
            PumpFigures.ALL.record(pump, between("pumps", pump.name()), trail);
        }
        for (TurbineSizing turbine : balance.turbines()) {
            TurbineFigures.ALL.record(turbine, between("turbines", turbine.name()), trail);
        }
        List<String> turbines =
                balance.turbines().stream().map(TurbineSizing::name).toList();
        for (ShaftBalance shaft : balance.shafts()) {
            Place at = Place.at("shafts." + Trail.slug(shaft.name()))
                    .with(Role.GIVEN, tables(place(shaft.name())))
                    .with(Role.PUMPS, parts("pumps.", shaft.pumps()))
                    .with(
                            Role.TURBINES,
                            parts(
                                    "turbines.",
                                    shaft.turbines().stream()
                                            .filter(turbines::contains)
                                            .toList()));
            ShaftFigures.ALL.record(shaft, at, trail);
        }
    }

    /** Place of a machine between its stations, with its tables of the concept file. */
    private Place between(String list, String machine) {
        PartPlace place = place(machine);
        return Place.at(list + "." + Trail.slug(machine))
                .with(Role.INLET, List.of(at(place.inlets().get(0))))
                .with(Role.OUTLET, List.of(at(place.outlets().get(0))))
                .with(Role.GIVEN, tables(place));
    }

    private static List<String> parts(String list, List<String> names) {
        return names.stream().map(name -> list + Trail.slug(name)).toList();
    }

    private PartPlace place(String part) {
        return balance.origins().place(part).orElseThrow(() -> new IllegalStateException("no place of the " + part));
    }

    private List<String> tables(PartPlace place) {
        List<String> paths = new ArrayList<>();
        place.tables().forEach(table -> paths.addAll(inputs.table(table)));
        return paths;
    }

    private void cooling(JacketResult jacket, String chamberGas) {
        Component c = balance.components().stream()
                .filter(x -> x.id().equals(jacket.circuit().id("jacket")))
                .findFirst()
                .orElseThrow();
        new JacketTrail(trail, jacket.circuit())
                .jacket(
                        jacket,
                        at(c.inlets().get(0)),
                        List.of(chamberGas + ".pressure_Pa", chamberGas + ".temperature_K", "chamber.throat_area_m2"),
                        concept("cooling.", "chamber.", "nozzle."));
    }

    private void engine(String chamberGas) {
        EngineSummary e = balance.engine();
        String p = "engine";
        List<String> jets = balance.exhausts().isEmpty() ? List.of() : jets();
        put(
                p,
                "chamber_pressure_Pa",
                e.chamberPressure(),
                "Pa",
                Definitions.SAME,
                List.of("concept.engine.chamber_pressure"));
        put(p, "thrust_vacuum_N", e.vacuumThrust(), "N", Definitions.SUM, List.of("chamber.vacuum_thrust_N"), jets);
        put(
                p,
                "thrust_sea_level_N",
                e.seaLevelThrust(),
                "N",
                balance.concept().chamber().nozzle().separation().card(),
                List.of("engine.thrust_vacuum_N", "chamber.exit_area_m2", "constants.standard_atmosphere_Pa"),
                inputs.table("exhaust"));
        put(p, "oxidizer_flow_kg_s", e.oxidizerFlow(), "kg/s", Definitions.SUM, tankFlow(Side.OXIDIZER));
        put(p, "fuel_flow_kg_s", e.fuelFlow(), "kg/s", Definitions.SUM, tankFlow(Side.FUEL));
        put(
                p,
                "mass_flow_kg_s",
                e.massFlow(),
                "kg/s",
                Definitions.SUM,
                List.of(p + ".oxidizer_flow_kg_s", p + ".fuel_flow_kg_s"));
        put(
                p,
                "mixture_ratio",
                e.mixtureRatio(),
                "",
                Definitions.RATIO,
                List.of("engine.oxidizer_flow_kg_s", "engine.fuel_flow_kg_s"));
        put(p, "chamber_mixture_ratio", e.chamberMixtureRatio(), "", Definitions.RATIO, chamberFlows());
        put(
                p,
                "isp_vacuum_s",
                e.vacuumIsp(),
                "s",
                Definitions.IMPULSE,
                List.of("engine.thrust_vacuum_N", "engine.mass_flow_kg_s", GRAVITY));
        put(
                p,
                "isp_sea_level_s",
                e.seaLevelIsp(),
                "s",
                Definitions.IMPULSE,
                List.of("engine.thrust_sea_level_N", "engine.mass_flow_kg_s", GRAVITY));
        put(
                p,
                "chamber_isp_vacuum_s",
                balance.chamber().vacuumSpecificImpulse(),
                "s",
                Definitions.IMPULSE,
                List.of("chamber.vacuum_impulse_m_s", GRAVITY));
        put(p, "area_ratio", e.areaRatio(), "", Definitions.SAME, List.of("chamber.area_ratio"));
        put(p, "throat_diameter_m", e.throatDiameter(), "m", Definitions.DIAMETER, List.of("chamber.throat_area_m2"));
        put(p, "exit_diameter_m", e.exitDiameter(), "m", Definitions.DIAMETER, List.of("chamber.exit_area_m2"));
        put(
                p,
                "characteristic_velocity_m_s",
                e.characteristicVelocity(),
                "m/s",
                Definitions.SAME,
                List.of("chamber.characteristic_velocity_m_s"));
        for (NamedLoss loss : balance.engineLosses()) {
            new ChamberTrail(trail).loss(loss, "engine_losses", "chamber.vacuum_impulse_m_s", jets);
        }
    }

    private List<String> jets() {
        List<String> paths = new ArrayList<>();
        Component exhaust = balance.components().stream()
                .filter(c -> c.kind() == Component.Kind.EXHAUST)
                .findFirst()
                .orElseThrow();
        String inlet = at(exhaust.inlets().get(0));
        List<String> from = new ArrayList<>(concept("exhaust."));
        from.addAll(List.of(inlet + ".pressure_Pa", inlet + ".temperature_K", inlet + ".mass_flow_kg_s"));
        for (ExhaustJet jet : balance.exhausts()) {
            String path = "exhausts." + Trail.slug(jet.name());
            put(path, "vacuum_thrust_N", jet.vacuumThrust(), "N", ExhaustNozzle.CARD, from);
            paths.add(path + ".vacuum_thrust_N");
        }
        return paths;
    }

    private List<String> chamberFlows() {
        return balance.components().stream()
                .filter(c -> c.kind() == Component.Kind.CHAMBER)
                .flatMap(c -> c.inlets().stream())
                .map(n -> at(n) + ".mass_flow_kg_s")
                .toList();
    }

    private List<String> tankFlow(Side side) {
        return List.of(at(balance.tankOutlet(side).number()) + ".mass_flow_kg_s");
    }

    // ---- what is shown again, and the evidence

    private void components() {
        for (Component c : balance.components()) {
            String p = "components." + c.id();
            List<String> ends = new ArrayList<>();
            c.inlets().forEach(n -> ends.add(at(n) + ".enthalpy_J_kg"));
            c.outlets().forEach(n -> ends.add(at(n) + ".enthalpy_J_kg"));
            List<String> heats = heats(c);
            put(
                    p,
                    "heat_in_W",
                    c.heatIn(),
                    "W",
                    heats.isEmpty() ? Definitions.HEAT : heats.size() > 1 ? Definitions.SUM : Definitions.SAME,
                    heats.isEmpty() ? ends.isEmpty() ? shaftPowers() : ends : heats);
            put(p, "work_in_W", c.workIn(), "W", Definitions.WORK, ends.isEmpty() ? shaftPowers() : ends);
        }
    }

    /** Paths of the heat that a jacket takes up, or that the chamber gives to all of them. */
    private List<String> heats(Component c) {
        return balance.cooling().stream()
                .map(JacketResult::circuit)
                .filter(circuit -> c.kind() == Component.Kind.CHAMBER || c.id().equals(circuit.id("jacket")))
                .map(CircuitKey::heat)
                .toList();
    }

    private List<String> shaftPowers() {
        return balance.shafts().stream()
                .map(s -> "shafts." + Trail.slug(s.name()) + ".power_delivered_W")
                .toList();
    }

    private void limits() {
        for (LimitCheck limit : balance.limits()) {
            String p = limit.path();
            LimitKind kind = limit.kind();
            Optional<PartPlace> place = balance.origins().place(limit.owner());
            trail.record(p + ".value", limit.value(), limit.unit(), Origin.of(kind.card(), madeFrom(limit, place)));
            List<String> bounds =
                    new ArrayList<>(inputs.of(kind.terms().bounds().toArray(String[]::new)));
            place.ifPresent(x -> x.tables()
                    .forEach(
                            table -> bounds.addAll(inputs.in(table, kind.terms().bounds()))));
            if (bounds.isEmpty()) {
                trail.given(p + ".limit", limit.limit(), limit.unit(), "limit of the hardware", limit.source());
            } else {
                trail.record(p + ".limit", limit.limit(), limit.unit(), Origin.of(Definitions.BOUND, bounds));
            }
            put(p, "margin", limit.margin(), "", Definitions.MARGIN, List.of(p + ".value", p + ".limit"));
        }
    }

    /** The figures of the part, those of its station where it has none of its own, and its inputs. */
    private List<String> madeFrom(LimitCheck limit, Optional<PartPlace> place) {
        List<String> from = new ArrayList<>();
        for (String figure : limit.kind().terms().figures()) {
            String own = limit.kind().path(limit.owner()) + "." + figure;
            from.add(trail.has(own) ? own : at(place.orElseThrow().outlets().get(0)) + "." + figure);
        }
        place.ifPresent(x -> x.tables()
                .forEach(table ->
                        from.addAll(inputs.in(table, limit.kind().terms().inputs()))));
        return from;
    }

    /** What is left of each equation with the terms it was made from, and the loop that they make up. */
    private List<String> residuals() {
        List<String> values = new ArrayList<>();
        List<String> all = new ArrayList<>();
        double worst = 0;
        for (Residual residual : balance.residuals()) {
            String p = "residuals." + Trail.slug(residual.name());
            put(p, "value", residual.value(), residual.unit(), Definitions.RESIDUAL, residual.terms());
            put(p, "relative", residual.relative(), "", Definitions.RATIO, List.of(p + ".value"));
            values.add(p + ".value");
            all.add(p + ".relative");
            worst = Math.max(worst, residual.relative());
        }
        trail.record(Closing.LOOP, worst, "", new Origin(Definitions.CLOSING, values));
        return all;
    }

    private void evidence() {
        List<String> all = new ArrayList<>(residuals());
        List<String> flows = balance.stations().stream()
                .map(s -> at(s.number()) + ".enthalpy_J_kg")
                .toList();
        for (EnergyAudit.Item item : balance.audit().items()) {
            String p = "audit." + Trail.slug(item.component());
            List<String> ends = balance.components().stream()
                    .filter(c -> c.id().equals(item.component()))
                    .flatMap(c -> Stream.concat(c.inlets().stream(), c.outlets().stream()))
                    .flatMap(n -> Stream.of(at(n) + ".mass_flow_kg_s", at(n) + ".enthalpy_J_kg"))
                    .toList();
            List<String> from = ends.isEmpty() ? flows : ends;
            put(p, "mass_imbalance", item.massImbalance(), "", Definitions.AUDIT, from);
            put(p, "energy_imbalance", item.energyImbalance(), "", Definitions.AUDIT, from);
        }
        trail.record("audit_worst", balance.audit().worst(), "", Definitions.AUDIT, flows.toArray(String[]::new));
        all.add("audit_worst");
        trail.record("residual_worst", balance.residualWorst(), "", Definitions.EXTREME, all.toArray(String[]::new));
    }

    @SafeVarargs
    private void put(String base, String key, double value, String unit, ModelCard card, List<String>... inputs) {
        put(trail, base + "." + key, value, unit, card, inputs);
    }

    @SafeVarargs
    static void put(Trail trail, String path, double value, String unit, ModelCard card, List<String>... inputs) {
        List<String> all = new ArrayList<>();
        for (List<String> list : inputs) {
            all.addAll(list);
        }
        trail.record(path, value, unit, card, all.stream().distinct().toArray(String[]::new));
    }
}
