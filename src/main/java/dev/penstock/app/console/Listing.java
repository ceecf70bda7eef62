package dev.penstock.app.console;

import dev.penstock.combustion.species.Species;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cooling.jacket.JacketLimit;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.origin.ExhaustLimit;
import dev.penstock.cycles.origin.InjectorLimit;
import dev.penstock.cycles.origin.TankLimit;
import dev.penstock.cycles.reading.ConceptInputs;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.input.DataFolder;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.provenance.Figure;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.FigureTable.Branch;
import dev.penstock.provenance.FigureTable.Member;
import dev.penstock.provenance.FigureTable.Presence;
import dev.penstock.provenance.FigureTable.Shape;
import dev.penstock.provenance.LimitKind;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.text.TextTable;
import dev.penstock.study.StudyInputs;
import dev.penstock.turbomachinery.metal.AlloyFamily;
import dev.penstock.turbomachinery.metal.AlloyLibrary;
import dev.penstock.turbomachinery.metal.MetalLimit;
import dev.penstock.turbomachinery.pump.PumpLimit;
import dev.penstock.turbomachinery.shaft.ShaftLimit;
import dev.penstock.turbomachinery.turbine.TurbineLimit;
import dev.penstock.vehicle.ascent.AscentLimit;
import dev.penstock.vehicle.plan.VehicleInputs;
import dev.penstock.vehicle.stage.VehicleFigures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What can be named in files and options: one kind of it, read off the declarations and data themselves.
 *
 * @param kind what is listed
 * @param columns keys of the columns
 * @param rows a cell for each column
 */
public record Listing(Kind kind, List<String> columns, List<List<String>> rows) {

    private static final String KEY = "key";
    private static final String TITLE = "title";
    private static final String DOCUMENTED = "documented_in";

    /** Parts with limits of their own. */
    private static final List<Part> PARTS = List.of(
            new Part("cooling jacket", "docs/theory/cooling.md", JacketLimit.values()),
            new Part("pump", "docs/theory/turbomachinery.md", PumpLimit.values()),
            new Part("turbine", "docs/theory/turbomachinery.md", TurbineLimit.values()),
            new Part("shaft", "docs/theory/turbomachinery.md", ShaftLimit.values()),
            new Part("tank", "docs/theory/cycles.md", TankLimit.values()),
            new Part("injector", "docs/theory/chamber.md", InjectorLimit.values()),
            new Part("metals of parts", "docs/theory/turbomachinery.md", MetalLimit.values()),
            new Part("turbine exhaust", "docs/theory/cycles.md", ExhaustLimit.values()),
            new Part("ascent", "docs/theory/vehicle.md", AscentLimit.values()));

    /** What can be listed. */
    public enum Kind {
        /** propellants, coolants, pressurants */
        FLUIDS(Listing::fluids),
        /** species of the equilibrium */
        GAS(Listing::gas),
        /** wall materials */
        WALLS(Listing::walls),
        /** alloy families in oxygen and hydrogen */
        METALS(Listing::metals),
        /** engine cycles */
        CYCLES(session -> cycles()),
        /** limits of an engine and of an ascent */
        LIMITS(session -> limits()),
        /** figures of an engine and of a vehicle */
        FIGURES(session -> figures()),
        /** inputs of concept, vehicle and study files */
        INPUTS(session -> inputs());

        private final Function<Session, Listing> make;

        Kind(Function<Session, Listing> make) {
            this.make = make;
        }

        /** @return how it is written */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public Listing of(Session session) {
            return make.apply(session);
        }
    }

    private static Listing fluids(Session session) {
        List<List<String>> rows = session.fluids().ids().stream()
                .map(id -> session.fluids().propellant(id))
                .map(p -> List.of(
                        p.id(),
                        p.fluid().name(),
                        String.join(
                                ", ",
                                p.roles().stream()
                                        .map(r -> r.name().toLowerCase(Locale.ROOT))
                                        .sorted()
                                        .toList()),
                        "fluids/" + p.id() + ".toml"))
                .toList();
        return new Listing(Kind.FLUIDS, List.of(KEY, TITLE, "roles", DOCUMENTED), rows);
    }

    private static Listing gas(Session session) {
        List<List<String>> rows = SpeciesLibrary.open(session.home()).species().stream()
                .map(Listing::species)
                .toList();
        return new Listing(Kind.GAS, List.of(KEY, "molar_mass_g_mol", "lowest_K", "highest_K", DOCUMENTED), rows);
    }

    private static List<String> species(Species s) {
        return List.of(
                s.name(),
                Notation.significant(1e3 * s.molarMass(), 6),
                Notation.significant(s.minimumTemperature(), 4),
                Notation.significant(s.maximumTemperature(), 5),
                "fluids/gas/" + s.file());
    }

    private static Listing walls(Session session) {
        WallLibrary walls = WallLibrary.open(session.home());
        List<List<String>> rows = walls.ids().stream()
                .map(walls::material)
                .map(w -> List.of(
                        w.id(),
                        w.name(),
                        Notation.significant(w.maximumTemperature(), 4),
                        "fluids/walls/" + w.id() + ".toml"))
                .toList();
        return new Listing(Kind.WALLS, List.of(KEY, TITLE, "highest_temperature_K", DOCUMENTED), rows);
    }

    private static Listing metals(Session session) {
        List<List<String>> rows = AlloyLibrary.load(DataFolder.metals(session.home())).families().stream()
                .map(f -> List.of(
                        f.id(),
                        f.name(),
                        f.leastInOxygen()
                                .map(t -> Notation.significant(t.threshold(), 3) + (t.burnt() ? "" : ", none burnt"))
                                .orElse("no test held"),
                        f.hydrogen().stream()
                                .min(Comparator.comparingDouble(AlloyFamily.HydrogenTest::strengthRatio))
                                .map(t -> Notation.significant(t.strengthRatio(), 2))
                                .orElse("no test held"),
                        f.inOxygen(),
                        f.inHydrogen(),
                        f.inFuelGas(),
                        "fluids/metals/" + f.id() + ".toml"))
                .toList();
        return new Listing(
                Kind.METALS,
                List.of(
                        KEY,
                        TITLE,
                        "oxygen_threshold_Pa",
                        "strength_in_hydrogen",
                        "in_oxygen",
                        "in_hydrogen",
                        "in_fuel_gas",
                        DOCUMENTED),
                rows);
    }

    private static Listing cycles() {
        List<List<String>> rows = Cycle.all().stream()
                .map(c -> List.of(c.id(), c.title(), c.summary(), "docs/theory/cycles.md"))
                .toList();
        return new Listing(Kind.CYCLES, List.of(KEY, TITLE, "summary", DOCUMENTED), rows);
    }

    private static Listing limits() {
        List<List<String>> rows = new ArrayList<>();
        for (Part part : PARTS) {
            for (LimitKind kind : part.limits()) {
                rows.add(List.of(
                        kind.key(),
                        part.name(),
                        kind.terms().equation().isEmpty()
                                ? String.join(", ", kind.terms().figures())
                                : kind.terms().equation(),
                        String.join(", ", kind.terms().bounds()),
                        part.page()));
            }
        }
        return new Listing(Kind.LIMITS, List.of(KEY, "of", "value", "bound_set_by", DOCUMENTED), rows);
    }

    private record Part(String name, String page, LimitKind... limits) {}

    private static Listing figures() {
        List<List<String>> rows = new ArrayList<>();
        walk("", EngineFigures.ALL, "engine", rows);
        walk("", VehicleFigures.ALL, "vehicle", rows);
        return new Listing(Kind.FIGURES, List.of(KEY, TITLE, "unit", "of", DOCUMENTED), rows);
    }

    private static <T> void walk(String path, FigureTable<T> table, String of, List<List<String>> rows) {
        for (Member<T> member : table.members()) {
            if (member.presence() == Presence.NEVER) {
                continue;
            }
            if (member instanceof Figure<T> figure) {
                String unit = figure.isNumber() ? figure.notation().siUnit() : "word";
                rows.add(List.of(
                        path + figure.key(), figure.title(), unit, of, "penstock explain CASE " + path + figure.key()));
            } else if (member instanceof Branch<T, ?> branch) {
                walk(path + branch.key() + (branch.shape() == Shape.ONE ? "." : ".NAME."), branch.table(), of, rows);
            }
        }
    }

    private static Listing inputs() {
        List<List<String>> rows = new ArrayList<>();
        add(ConceptInputs.ofAll(VehicleInputs.IN_CONCEPT), "concept", rows);
        add(VehicleInputs.FILE, "vehicle", rows);
        add(StudyInputs.FILE, "study", rows);
        return new Listing(Kind.INPUTS, List.of(KEY, TITLE, "allowed", "if_left_out", "of", DOCUMENTED), rows);
    }

    private static void add(InputGroup file, String of, List<List<String>> rows) {
        for (Map.Entry<String, Input<?>> entry : file.all().entrySet()) {
            Input<?> input = entry.getValue();
            String absent = input.whenAbsent();
            rows.add(List.of(
                    entry.getKey(),
                    input.title(),
                    input.kind().allowed(),
                    absent.isEmpty() ? "must be stated" : absent,
                    of,
                    "docs/schema/" + of + ".json"));
        }
    }

    /** @return the limits of all parts, for those who check that none is left out */
    public static Stream<Class<?>> limitKinds() {
        return PARTS.stream().map(part -> ((Enum<?>) part.limits()[0]).getDeclaringClass());
    }

    /** @return JSON document */
    public Map<String, Object> json() {
        List<Map<String, Object>> entries = new ArrayList<>();
        for (List<String> row : rows) {
            Map<String, Object> entry = new LinkedHashMap<>();
            for (int i = 0; i < columns.size(); i++) {
                entry.put(columns.get(i), row.get(i));
            }
            entries.add(entry);
        }
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("listed", kind.word());
        map.put("entries", entries);
        return map;
    }

    /** @return table for a terminal */
    public String text() {
        TextTable table = new TextTable()
                .header(columns.stream().map(c -> "<" + c.replace('_', ' ')).toArray(String[]::new));
        rows.forEach(row -> table.row(row.toArray(String[]::new)));
        return table.text();
    }
}
