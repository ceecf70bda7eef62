package dev.penstock.reports;

import dev.penstock.cycles.EngineBalance;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.study.Outcome;
import dev.penstock.turbomachinery.PumpSizing;
import dev.penstock.turbomachinery.TurbineSizing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Several concepts side by side: JSON document, terminal table, page. */
public final class ComparisonView {

    /**
     * One line of the comparison.
     *
     * @param name what is compared
     * @param unit unit for people
     * @param better +1 if more is better, −1 if less is, 0 if neither
     * @param value value of a balance, SI; empty where the cycle has none
     * @param text the value for people
     */
    private record Line(
            String name,
            String unit,
            int better,
            Function<EngineBalance, OptionalDouble> value,
            Function<Double, String> text) {}

    private static final List<Line> LINES = List.of(
            line("vacuum thrust", "kN", 0, b -> b.engine().vacuumThrust(), Figures::kilonewton),
            line("specific impulse, vacuum", "s", 1, b -> b.engine().vacuumIsp(), v -> Figures.fixed(v, 1)),
            line("specific impulse, sea level", "s", 1, b -> b.engine().seaLevelIsp(), v -> Figures.fixed(v, 1)),
            line("chamber pressure", "bar", 0, b -> b.engine().chamberPressure(), Figures::bar),
            line("mixture ratio", "", 0, b -> b.engine().mixtureRatio(), v -> Figures.significant(v, 3)),
            line("mass flow", "kg/s", 0, b -> b.engine().massFlow(), Figures::massFlow),
            line("area ratio", "", 0, b -> b.engine().areaRatio(), v -> Figures.significant(v, 3)),
            line("exit diameter", "mm", -1, b -> b.engine().exitDiameter(), v -> Figures.significant(v * 1e3, 4)),
            new Line("hottest turbine gas", "K", -1, ComparisonView::turbineTemperature, Figures::kelvin),
            new Line("highest pump discharge", "bar", -1, ComparisonView::discharge, Figures::bar),
            new Line("pump power, all", "MW", -1, ComparisonView::pumpPower, v -> Figures.significant(v / 1e6, 3)),
            new Line(
                    "coolant temperature rise",
                    "K",
                    -1,
                    b -> b.cooling().isEmpty()
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(b.cooling().get().coolantTemperatureRise()),
                    Figures::kelvin),
            new Line(
                    "hottest wall",
                    "K",
                    -1,
                    b -> b.cooling().isEmpty()
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(b.cooling().get().peakWallTemperature()),
                    Figures::kelvin));

    private final List<Outcome> outcomes;

    /** @param outcomes the concepts, in the order to show them */
    public ComparisonView(List<Outcome> outcomes) {
        this.outcomes = List.copyOf(outcomes);
    }

    private static Line line(
            String name,
            String unit,
            int better,
            Function<EngineBalance, Double> value,
            Function<Double, String> text) {
        return new Line(name, unit, better, b -> OptionalDouble.of(value.apply(b)), text);
    }

    private static OptionalDouble turbineTemperature(EngineBalance b) {
        return b.turbines().stream()
                .map(TurbineSizing::inlet)
                .mapToDouble(s -> s.temperature())
                .max();
    }

    private static OptionalDouble discharge(EngineBalance b) {
        return b.pumps().stream().mapToDouble(p -> p.duty().dischargePressure()).max();
    }

    private static OptionalDouble pumpPower(EngineBalance b) {
        return b.pumps().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        b.pumps().stream().mapToDouble(PumpSizing::power).sum());
    }

    /**
     * @param balance balanced engine
     * @return its limit with the least margin: what binds it
     */
    public static Optional<LimitCheck> tightest(EngineBalance balance) {
        return balance.limits().stream().min(Comparator.comparingDouble(LimitCheck::margin));
    }

    /** @return JSON document */
    public Map<String, Object> json() {
        List<Map<String, Object>> concepts = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("name", outcome.name());
            map.put("file", outcome.file().toString());
            outcome.failure().ifPresent(f -> map.put("failure", f.getMessage()));
            outcome.balance().ifPresent(b -> {
                Map<String, Object> all = BalanceJson.of(b);
                for (String key :
                        List.of("oxidizer", "fuel", "engine", "pumps", "turbines", "shafts", "within_limits")) {
                    map.put(key, all.get(key));
                }
                b.cooling().ifPresent(jacket -> {
                    Map<String, Object> cooling = new LinkedHashMap<>(BalanceJson.cooling(jacket));
                    cooling.remove("profile");
                    map.put("cooling", cooling);
                });
                map.put("tightest_limit", tightest(b).map(BalanceJson::limit));
                map.put("residual_worst", b.residualWorst());
            });
            concepts.add(map);
        }
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("concepts", concepts);
        return document;
    }

    /** @return table for a terminal */
    public String text() {
        TextTable table = new TextTable()
                .header(
                        "concept",
                        "<cycle",
                        "Isp vac s",
                        "Isp s.l. s",
                        "chamber bar",
                        "kN vac",
                        "kg/s",
                        "turbine K",
                        "discharge bar",
                        "pumps MW",
                        "<tightest limit");
        for (Outcome outcome : outcomes) {
            if (outcome.balance().isEmpty()) {
                table.row(outcome.name(), "no solution");
                continue;
            }
            EngineBalance b = outcome.balance().get();
            table.row(
                    outcome.name(),
                    b.engine().cycle(),
                    Figures.fixed(b.engine().vacuumIsp(), 1),
                    Figures.fixed(b.engine().seaLevelIsp(), 1),
                    Figures.bar(b.engine().chamberPressure()),
                    Figures.kilonewton(b.engine().vacuumThrust()),
                    Figures.massFlow(b.engine().massFlow()),
                    shown(turbineTemperature(b), Figures::kelvin),
                    shown(discharge(b), Figures::bar),
                    shown(pumpPower(b), v -> Figures.significant(v / 1e6, 3)),
                    tightest(b).map(ComparisonView::limit).orElse("none"));
        }
        StringBuilder text = new StringBuilder(table.text());
        for (Outcome outcome : outcomes) {
            outcome.failure().ifPresent(f -> text.append(System.lineSeparator())
                    .append(outcome.name())
                    .append(": ")
                    .append(f.getMessage())
                    .append(System.lineSeparator()));
        }
        return text.toString();
    }

    private static String limit(LimitCheck limit) {
        return Figures.limitName(limit.name()) + " " + (limit.met() ? "" : "MISSED by ")
                + Figures.percent(Math.abs(limit.margin()));
    }

    private static String shown(OptionalDouble value, Function<Double, String> text) {
        return value.isPresent() ? text.apply(value.getAsDouble()) : "-";
    }

    /**
     * @param software what the numbers were made with
     * @param pages name of the page of each concept that has one, by concept name
     * @return the page
     */
    public String html(Software software, Map<String, String> pages) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("title", "Concepts side by side");
        model.put("kind", outcomes.size() + " concepts");
        model.put("subtitle", "");
        model.put("names", outcomes.stream().map(Outcome::name).toList());
        model.put("pages", pages);
        model.put("lines", lines());
        List<Map<String, String>> failures = new ArrayList<>();
        for (Outcome o : outcomes) {
            o.failure().ifPresent(f -> failures.add(Map.of("name", o.name(), "why", f.getMessage())));
        }
        model.put("failures", failures);
        model.put("charts", charts());
        model.put("binding", binding());
        model.put("cautions", Assumptions.CAUTIONS);
        model.put("software", software);
        return Pages.fill("comparison.ftlh", model);
    }

    private List<Map<String, Object>> lines() {
        List<Map<String, Object>> lines = new ArrayList<>();
        lines.add(textLine("cycle", b -> b.concept().cycle().title()));
        lines.add(textLine(
                "propellants",
                b -> b.concept().oxidizer().fluid().name() + " / "
                        + b.concept().fuel().fluid().name()));
        for (Line line : LINES) {
            List<OptionalDouble> values = outcomes.stream()
                    .map(o -> o.balance().map(line.value()).orElse(OptionalDouble.empty()))
                    .toList();
            double best = values.stream()
                    .filter(OptionalDouble::isPresent)
                    .mapToDouble(v -> line.better() * v.getAsDouble())
                    .max()
                    .orElse(Double.NaN);
            List<Map<String, Object>> cells = new ArrayList<>();
            for (OptionalDouble value : values) {
                boolean first = line.better() != 0
                        && value.isPresent()
                        && outcomes.size() > 1
                        && line.better() * value.getAsDouble() == best;
                cells.add(Map.of("text", shown(value, line.text()), "best", first));
            }
            lines.add(Map.of("name", line.name(), "unit", line.unit(), "cells", cells, "figures", true));
        }
        return lines;
    }

    private Map<String, Object> textLine(String name, Function<EngineBalance, String> text) {
        List<Map<String, Object>> cells = outcomes.stream()
                .map(o -> Map.<String, Object>of("text", o.balance().map(text).orElse("-"), "best", false))
                .toList();
        return Map.of("name", name, "unit", "", "cells", cells, "figures", false);
    }

    private List<Figure> charts() {
        List<SpanChart.Bar> impulse = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            outcome.balance().ifPresent(b -> {
                double sea = b.engine().seaLevelIsp();
                double vacuum = b.engine().vacuumIsp();
                String text = Figures.fixed(sea, 0) + " to " + Figures.fixed(vacuum, 0) + " s";
                impulse.add(new SpanChart.Bar(outcome.name(), sea, vacuum, Ink.GAS, text));
            });
        }
        if (impulse.isEmpty()) {
            return List.of();
        }
        return List.of(new Figure(
                SpanChart.svg("k-isp", "Specific impulse", "specific impulse (s), sea level to vacuum", false, impulse),
                "From sea level (left end) to vacuum (right end). The axis does not start at zero.",
                true));
    }

    private PageTable binding() {
        PageTable.Builder table = PageTable.titled(
                "What binds each concept", "<concept", "<limit", "value", "<bound", "margin", "<source");
        outcomes.stream()
                .filter(o -> o.balance().isPresent())
                .sorted(Comparator.comparingDouble(
                        o -> tightest(o.balance().get()).map(LimitCheck::margin).orElse(Double.MAX_VALUE)))
                .forEach(o -> tightest(o.balance().get())
                        .ifPresent(l -> table.marked(
                                l.met() ? "" : "missed",
                                o.name(),
                                Figures.limitName(l.name()),
                                Figures.withUnit(l.value(), l.unit()),
                                (l.upper() ? "at most " : "at least ") + Figures.withUnit(l.limit(), l.unit()),
                                Figures.margin(l.margin()),
                                l.source())));
        return table.table();
    }
}
