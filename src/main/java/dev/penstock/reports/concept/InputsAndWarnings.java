package dev.penstock.reports.concept;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.Warning;
import dev.penstock.input.InputValue;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.text.PageTable;
import dev.penstock.study.Axis;
import dev.penstock.study.Outcome;
import dev.penstock.study.Sweep;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the numbers of a page stand on: inputs with their sources, and warnings of many results together. */
public final class InputsAndWarnings {

    private static final String ID = "inputs";
    private static final String TITLE = "Inputs";
    private static final String QUESTION = "What was asked for, and on whose word?";
    private static final String READ =
            "Values are shown to six digits; the concept file has them as they were written.";
    private static final String UNSOURCED = "no source given";

    private InputsAndWarnings() {}

    /** @return inputs of one balanced concept */
    public static PageSection of(EngineBalance balance) {
        return section(List.of(READ), given(balance, "Stated by the concept"), defaults(balance));
    }

    private static PageSection section(List<String> text, List<PageTable> tables, List<PageTable> folded) {
        return new PageSection(ID, TITLE, QUESTION, text, List.of(), tables, folded);
    }

    private static List<PageTable> given(EngineBalance balance, String caption) {
        return List.of(table(
                caption,
                balance.concept().document().inputs().stream()
                        .filter(InputValue::given)
                        .toList()));
    }

    private static List<PageTable> defaults(EngineBalance balance) {
        return List.of(table(
                "Defaults",
                balance.concept().document().inputs().stream()
                        .filter(i -> !i.given())
                        .toList()));
    }

    private static PageTable table(String caption, List<InputValue> inputs) {
        PageTable.Builder table = PageTable.titled(caption, "<key", "<value", "<source");
        inputs.forEach(i -> table.row(i.key(), i.readable(), i.source().endsWith(UNSOURCED) ? "" : i.source()));
        return table.table().filled();
    }

    /** @return what was varied, and the inputs that stayed, of the first combination with a balance */
    public static List<PageSection> of(Sweep.Result sweep) {
        PageTable.Builder varied = PageTable.titled("Varied", "<key", "<values");
        Set<String> keys = new LinkedHashSet<>();
        for (Axis axis : sweep.axes()) {
            keys.add(axis.path());
            varied.row(axis.path(), String.join(", ", axis.values()));
        }
        List<EngineBalance> balances =
                sweep.points().stream().flatMap(p -> p.balance().stream()).toList();
        List<PageTable> tables = new ArrayList<>(List.of(varied.table()));
        List<PageTable> folded = new ArrayList<>();
        balances.stream().limit(1).forEach(first -> {
            List<InputValue> rest = first.concept().document().inputs().stream()
                    .filter(i -> !keys.contains(i.key()))
                    .toList();
            tables.add(table(
                    "Stated by the concept",
                    rest.stream().filter(InputValue::given).toList()));
            folded.add(table("Defaults", rest.stream().filter(i -> !i.given()).toList()));
        });
        return List.of(
                section(
                        List.of(READ, "Defaults that follow from other inputs are those of the first combination."),
                        tables,
                        folded),
                warnings(balances));
    }

    private static PageSection warnings(List<EngineBalance> balances) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        Map<String, String> sources = new LinkedHashMap<>();
        for (EngineBalance balance : balances) {
            for (Warning warning : new LinkedHashSet<>(balance.warnings())) {
                counts.merge(warning.message(), 1, Integer::sum);
                sources.put(warning.message(), warning.source());
            }
        }
        PageTable.Builder table = PageTable.titled("Warnings", "<warning", "<about", "combinations");
        counts.forEach((message, count) -> table.row(message, sources.get(message), Integer.toString(count)));
        return warnings(table.table());
    }

    private static PageSection warnings(PageTable table) {
        boolean none = table.rows().isEmpty();
        return new PageSection(
                "warnings",
                "Warnings",
                "Where is a model at its end?",
                none ? List.of("None.") : List.of(),
                List.of(),
                none ? List.of() : List.of(table),
                List.of());
    }

    /** @return what the concepts state, side by side, and their warnings */
    public static List<PageSection> of(List<Outcome> outcomes) {
        List<Outcome> balanced =
                outcomes.stream().filter(o -> o.balance().isPresent()).toList();
        Set<String> keys = new LinkedHashSet<>();
        List<String> titles = new ArrayList<>(List.of("<key"));
        PageTable.Builder warnings = PageTable.titled("Warnings", "<concept", "<warning", "<about");
        for (Outcome outcome : balanced) {
            titles.add("<" + outcome.name());
            EngineBalance balance = outcome.balance().orElseThrow();
            balance.concept().document().inputs().stream()
                    .filter(i ->
                            i.given() && !i.key().equals("name") && !i.key().equals("description"))
                    .forEach(i -> keys.add(i.key()));
            balance.warnings().stream().distinct().forEach(w -> warnings.row(outcome.name(), w.message(), w.source()));
        }
        PageTable.Builder table = PageTable.titled("Stated by the concepts", titles.toArray(String[]::new));
        for (String key : keys) {
            List<String> cells = new ArrayList<>(List.of(key));
            balanced.forEach(o -> cells.add(stated(o.balance().orElseThrow(), key)));
            table.row(cells.toArray(String[]::new));
        }
        return List.of(
                section(
                        List.of(READ, "Sources and defaults stand on the page of each concept."),
                        List.of(table.table()),
                        List.of()),
                warnings(warnings.table()));
    }

    private static String stated(EngineBalance balance, String key) {
        return balance.concept().document().inputs().stream()
                .filter(i -> i.given() && i.key().equals(key))
                .map(InputValue::readable)
                .findFirst()
                .orElse("");
    }

    /** @return inputs and engines of a vehicle */
    public static PageSection of(VehicleSizing vehicle) {
        PageTable.Builder engines = PageTable.titled(
                "Engines", "<stage", "<engine", "thrust, vacuum (kN)", "Isp, vacuum (s)", "<concept file");
        List<StagePlan> plans = vehicle.plan().stages();
        for (int i = 0; i < plans.size(); i++) {
            StageSizing s = vehicle.stages().get(i);
            s.boosters()
                    .ifPresent(b -> engines.row(
                            "boosters",
                            b.engineName(),
                            Notation.FORCE.write(b.vacuumThrustOfOneEngine()),
                            Notation.fixed(b.vacuumIsp(), 1),
                            file(b.plan().engineFile())));
            engines.row(
                    s.name(),
                    s.engine().name(),
                    Notation.FORCE.write(s.engine().vacuumThrust()),
                    Notation.fixed(s.engine().vacuumIsp(), 1),
                    file(plans.get(i).engineFile()));
        }
        List<PageTable> tables = new ArrayList<>(List.of(engines.table()));
        tables.addAll(given(vehicle.plan()));
        return section(
                List.of(
                        READ,
                        "Each engine is balanced from its concept file first; that file's page has the engine's own inputs,"
                                + " and penstock explain its numbers."),
                tables,
                defaults(vehicle.plan()));
    }

    private static String file(Optional<Path> engine) {
        return engine.map(f -> ConceptPage.fileName(f.toString())).orElse("the same file");
    }

    /** @return inputs of a plan that several engines are tried on */
    public static PageSection of(VehiclePlan plan) {
        return section(List.of(READ), given(plan), defaults(plan));
    }

    private static List<PageTable> given(VehiclePlan plan) {
        return List.of(table(plan, "Stated by the plan", true));
    }

    private static List<PageTable> defaults(VehiclePlan plan) {
        return List.of(table(plan, "Defaults", false));
    }

    private static PageTable table(VehiclePlan plan, String caption, boolean given) {
        PageTable.Builder table = PageTable.titled(caption, "<key", "<value", "<source");
        plan.inputs().stream()
                .filter(i -> i.given() == given)
                .forEach(i -> table.row(i.key(), i.readable(), given ? source(plan, i.key()) : basis(i)));
        return table.table().filled();
    }

    /** A source may be given for a key or for the table that it is in. */
    private static String source(VehiclePlan plan, String key) {
        String at = key.startsWith("vehicle.") ? key.substring("vehicle.".length()) : key;
        while (!at.isEmpty()) {
            if (plan.sources().containsKey(at)) {
                return plan.sources().get(at);
            }
            at = at.contains(".") ? at.substring(0, at.lastIndexOf('.')) : "";
        }
        return "";
    }

    private static String basis(InputValue input) {
        if (input.value().equals("computed")) {
            return "not given: from the other inputs, or not asked for";
        }
        return "default: common practice, no source";
    }
}
