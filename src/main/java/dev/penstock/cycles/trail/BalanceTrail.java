package dev.penstock.cycles.trail;

import dev.penstock.chamber.ChamberTrail;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketTrail;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EnergyAudit;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.EngineSummary;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.cycles.sheet.ExhaustNozzle;
import dev.penstock.cycles.sheet.PressureStep;
import dev.penstock.cycles.sheet.Residual;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.ModelCard;
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

    private BalanceTrail(EngineBalance balance) {
        this.balance = balance;
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
        StationTrail stations = new StationTrail(balance, trail);
        balance.stations().forEach(stations::station);
        machines();
        new ChamberTrail(trail).chamber(balance.chamber(), chamberGas, concept("nozzle.", "chamber.", "efficiencies."));
        new ChamberTrail(trail)
                .gas(
                        balance.chamber(),
                        chamberGas,
                        trail.entry(chamberGas + ".temperature_K").orElseThrow().model());
        balance.cooling().ifPresent(jacket -> cooling(jacket, chamberGas));
        engine(chamberGas);
        new MassTrail(balance, trail).record();
        components();
        ladder();
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
            try {
                double value = Double.parseDouble(input.value());
                String what = input.given() ? "stated by the concept" : "default of the concept";
                trail.given("concept." + input.key(), value, input.unit(), what, input.source());
            } catch (NumberFormatException word) {
                // A word or an open value: it decides which model is used, and has no number to trace.
                continue;
            }
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

    private List<String> size() {
        return concept("engine.thrust_vacuum", "engine.thrust_sea_level", "engine.throat_diameter");
    }

    private void machines() {
        for (PumpSizing pump : balance.pumps()) {
            String side = pump.duty()
                            .propellant()
                            .id()
                            .equals(balance.concept().oxidizer().id())
                    ? "oxidizer"
                    : "fuel";
            Place at = between("pumps", pump.name()).with(Role.GIVEN, concept("pumps." + side + "."));
            PumpFigures.ALL.record(pump, drives(pump) ? at.with(Role.DRIVE, at.all(Role.OUTLET)) : at, trail);
        }
        for (TurbineSizing turbine : balance.turbines()) {
            List<String> shaft = balance.shafts().stream()
                    .filter(s -> s.turbines().contains(turbine.name()))
                    .map(s -> "shafts." + Trail.slug(s.name()))
                    .toList();
            Place at = between("turbines", turbine.name())
                    .with(Role.GIVEN, concept("turbines."))
                    .with(Role.SHAFT, shaft);
            TurbineFigures.ALL.record(turbine, at, trail);
        }
        List<String> turbines =
                balance.turbines().stream().map(TurbineSizing::name).toList();
        for (ShaftBalance shaft : balance.shafts()) {
            Place at = Place.at("shafts." + Trail.slug(shaft.name()))
                    .with(Role.GIVEN, concept("shafts."))
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

    /** Place of a machine between its stations. */
    private Place between(String list, String machine) {
        Component c = labelled(machine);
        return Place.at(list + "." + Trail.slug(machine))
                .with(Role.INLET, List.of(at(c.inlets().get(0))))
                .with(Role.OUTLET, List.of(at(c.outlets().get(0))));
    }

    /** Whether liquid from behind the pump drives a boost pump and passes it again. */
    private boolean drives(PumpSizing pump) {
        double arriving = balance.station(labelled(pump.name()).inlets().get(0)).massFlow();
        return Math.abs(arriving / pump.duty().massFlow() - 1) > 1e-6;
    }

    private static List<String> parts(String list, List<String> names) {
        return names.stream().map(name -> list + Trail.slug(name)).toList();
    }

    private Component labelled(String name) {
        return balance.components().stream()
                .filter(c -> c.label().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no component " + name));
    }

    private void cooling(JacketResult jacket, String chamberGas) {
        Component c = balance.components().stream()
                .filter(x -> x.kind() == Component.Kind.JACKET)
                .findFirst()
                .orElseThrow();
        new JacketTrail(trail)
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
                List.of("engine.thrust_vacuum_N", "chamber.exit_area_m2", "constants.standard_atmosphere_Pa"));
        put(p, "oxidizer_flow_kg_s", e.oxidizerFlow(), "kg/s", Definitions.SUM, tankFlows("oxidizer"));
        put(p, "fuel_flow_kg_s", e.fuelFlow(), "kg/s", Definitions.SUM, tankFlows("fuel"));
        put(p, "mass_flow_kg_s", e.massFlow(), "kg/s", Definitions.CLOSING, List.of("chamber.mass_flow_kg_s"), size());
        put(
                p,
                "mixture_ratio",
                e.mixtureRatio(),
                "",
                Definitions.RATIO,
                List.of("engine.oxidizer_flow_kg_s", "engine.fuel_flow_kg_s"));
        put(
                p,
                "chamber_mixture_ratio",
                e.chamberMixtureRatio(),
                "",
                Definitions.RATIO,
                List.of(chamberGas + ".mass_flow_kg_s", "concept.propellants.mixture_ratio"));
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

    private List<String> tankFlows(String side) {
        return balance.components().stream()
                .filter(c -> c.kind() == Component.Kind.TANK && c.id().endsWith(side))
                .flatMap(c -> c.outlets().stream())
                .map(n -> at(n) + ".mass_flow_kg_s")
                .toList();
    }

    // ---- what is shown again, and the evidence

    private void components() {
        for (Component c : balance.components()) {
            String p = "components." + c.id();
            List<String> ends = new ArrayList<>();
            c.inlets().forEach(n -> ends.add(at(n) + ".enthalpy_J_kg"));
            c.outlets().forEach(n -> ends.add(at(n) + ".enthalpy_J_kg"));
            boolean heated = c.heatIn() != 0 && balance.cooling().isPresent();
            put(
                    p,
                    "heat_in_W",
                    c.heatIn(),
                    "W",
                    heated ? Definitions.SAME : Definitions.HEAT,
                    heated ? List.of("cooling.heat_load_W") : ends.isEmpty() ? shaftPowers() : ends);
            put(p, "work_in_W", c.workIn(), "W", Definitions.WORK, ends.isEmpty() ? shaftPowers() : ends);
        }
    }

    private List<String> shaftPowers() {
        return balance.shafts().stream()
                .map(s -> "shafts." + Trail.slug(s.name()) + ".power_delivered_W")
                .toList();
    }

    private void ladder() {
        for (int i = 0; i < balance.pressureLadder().size(); i++) {
            PressureStep step = balance.pressureLadder().get(i);
            String p = "pressure_ladder." + i;
            put(p, "from_Pa", step.from(), "Pa", Definitions.SAME, stationWith(step.from()));
            put(p, "to_Pa", step.to(), "Pa", Definitions.SAME, stationWith(step.to()));
            put(p, "rise_Pa", step.rise(), "Pa", Definitions.DIFFERENCE, List.of(p + ".from_Pa", p + ".to_Pa"));
        }
    }

    private List<String> stationWith(double pressure) {
        return balance.stations().stream()
                .filter(s -> s.pressure() == pressure)
                .map(s -> at(s.number()) + ".pressure_Pa")
                .limit(1)
                .toList();
    }

    private void limits() {
        for (LimitCheck limit : balance.limits()) {
            String p = "limits." + Trail.slug(limit.name());
            List<String> from = subject(limit);
            put(p, "value", limit.value(), limit.unit(), model(limit, from), from);
            trail.given(p + ".limit", limit.limit(), limit.unit(), "limit of the hardware", limit.source());
            put(p, "margin", limit.margin(), "", Definitions.MARGIN, List.of(p + ".value", p + ".limit"));
        }
    }

    /** A figure that is published is shown again; any other is made from those of the part. */
    private ModelCard model(LimitCheck limit, List<String> from) {
        boolean published =
                from.stream().anyMatch(path -> trail.entry(path).orElseThrow().value() == limit.value());
        return published
                ? Definitions.SAME
                : LimitFigures.card(limit.name().substring(limit.name().indexOf('.') + 1));
    }

    /** The machine or jacket that a limit is about, and its figure of that name where it is published. */
    private List<String> subject(LimitCheck limit) {
        int dot = limit.name().indexOf('.');
        String owner = Trail.slug(limit.name().substring(0, dot));
        String figure = limit.name().substring(dot + 1);
        String kind = owner.equals("cooling")
                ? ""
                : owner.endsWith("shaft") ? "shafts." : owner.contains("turbine") ? "turbines." : "pumps.";
        String base = kind + owner + ".";
        List<String> all = trail.entries().stream()
                .map(Trail.Entry::path)
                .filter(path -> path.startsWith(base) && !path.contains(".profile."))
                .toList();
        List<String> same = all.stream()
                .filter(path -> path.startsWith(base + figure) || path.startsWith(base + "peak_" + figure))
                .toList();
        if (!same.isEmpty()) {
            return same;
        }
        return all.isEmpty() ? tankPressures() : all;
    }

    private List<String> tankPressures() {
        return balance.components().stream()
                .filter(c -> c.kind() == Component.Kind.TANK)
                .flatMap(c -> c.outlets().stream())
                .map(n -> at(n) + ".pressure_Pa")
                .toList();
    }

    private void evidence() {
        List<String> all = new ArrayList<>();
        for (Residual residual : balance.residuals()) {
            String p = "residuals." + Trail.slug(residual.name());
            put(p, "value", residual.value(), residual.unit(), Definitions.RESIDUAL, List.of("engine.mass_flow_kg_s"));
            put(p, "relative", residual.relative(), "", Definitions.RATIO, List.of(p + ".value"));
            all.add(p + ".relative");
        }
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
