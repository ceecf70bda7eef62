package dev.penstock.cycles.trail;

import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.origin.Definitions;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.Spread;
import dev.penstock.provenance.Trail;
import dev.penstock.turbomachinery.mass.EngineMass;
import dev.penstock.turbomachinery.mass.EngineMassModel;
import dev.penstock.turbomachinery.mass.MassItem;
import dev.penstock.turbomachinery.mass.MassPart;
import java.util.ArrayList;
import java.util.List;

/** Records where the mass of an engine comes from, part by part. */
final class MassTrail {

    private static final String ITEMS = "mass.items.";

    private final EngineBalance balance;
    private final Trail trail;

    MassTrail(EngineBalance balance, Trail trail) {
        this.balance = balance;
        this.trail = trail;
    }

    void record() {
        EngineMass mass = balance.mass();
        List<String> parts = new ArrayList<>();
        for (MassItem item : mass.items()) {
            String path = ITEMS + Trail.slug(item.name());
            List<String> from = new ArrayList<>(item.part() == MassPart.FRAME ? List.copyOf(parts) : madeFrom(item));
            from.addAll(BalanceTrail.concept(
                    balance, trail, "mass." + item.part().factor().key()));
            spread(path, item.mass(), item.part(), from);
            parts.add(path + ".mass_kg");
        }
        for (MassItem item : mass.wholeEngine()) {
            spread(
                    "mass.whole_engine." + Trail.slug(item.name()),
                    item.mass(),
                    item.part(),
                    List.of("engine.thrust_vacuum_N", "engine.area_ratio"));
        }
        totals(mass, parts);
    }

    private void spread(String path, Spread mass, MassPart part, List<String> from) {
        BalanceTrail.put(trail, path + ".mass_kg", mass.mode(), "kg", part.card(), from);
        List<String> likely = List.of(path + ".mass_kg");
        BalanceTrail.put(trail, path + ".low_kg", mass.low(), "kg", part.card(), likely);
        BalanceTrail.put(trail, path + ".high_kg", mass.high(), "kg", part.card(), likely);
    }

    private void totals(EngineMass mass, List<String> parts) {
        Spread total = mass.total();
        List<String> lows =
                parts.stream().map(p -> p.replace(".mass_kg", ".low_kg")).toList();
        List<String> highs =
                parts.stream().map(p -> p.replace(".mass_kg", ".high_kg")).toList();
        put("engine.mass_kg", total.mode(), "kg", parts);
        put("engine.mass_low_kg", total.low(), "kg", List.of("engine.mass_kg"), lows);
        put("engine.mass_high_kg", total.high(), "kg", List.of("engine.mass_kg"), highs);
        Spread ratio = mass.thrustToWeight();
        List<String> thrust = List.of("engine.thrust_vacuum_N", "constants.standard_gravity_m_s2");
        BalanceTrail.put(
                trail,
                "engine.thrust_to_weight",
                ratio.mode(),
                "",
                Definitions.THRUST_TO_WEIGHT,
                thrust,
                List.of("engine.mass_kg"));
        BalanceTrail.put(
                trail,
                "engine.thrust_to_weight_low",
                ratio.low(),
                "",
                Definitions.THRUST_TO_WEIGHT,
                thrust,
                List.of("engine.mass_high_kg"));
        BalanceTrail.put(
                trail,
                "engine.thrust_to_weight_high",
                ratio.high(),
                "",
                Definitions.THRUST_TO_WEIGHT,
                thrust,
                List.of("engine.mass_low_kg"));
    }

    @SafeVarargs
    private void put(String path, double value, String unit, List<String>... from) {
        BalanceTrail.put(trail, path, value, unit, EngineMassModel.CARD, from);
    }

    private List<String> madeFrom(MassItem item) {
        return switch (item.part()) {
            case CHAMBER ->
                with(
                        List.of("engine.throat_diameter_m", "engine.chamber_pressure_Pa"),
                        "chamber.",
                        "nozzle.",
                        "cooling.");
            case EXTENSION ->
                with(
                        List.of("engine.throat_diameter_m", "engine.area_ratio"),
                        "nozzle.",
                        lastCircuit() + ".end_area_ratio");
            case INJECTOR -> with(List.of("engine.throat_diameter_m"), "chamber.");
            case TURBOPUMP -> List.of("shafts." + Trail.slug(item.name().replaceFirst(" turbopump$", "")) + ".mass_kg");
            case BURNER -> outletOf(item.name());
            case LINE -> withLength(outletOf(item.name().replaceFirst(" line$", "")));
            case VALVE -> outletOf(item.name().replaceFirst(" valve$", ""));
            case ELECTRIC ->
                with(
                        balance.shafts().stream()
                                .map(s -> "shafts." + Trail.slug(s.name()) + ".power_delivered_W")
                                .toList(),
                        "electric.");
            default -> List.of("engine.thrust_vacuum_N");
        };
    }

    /** Table of the circuit that the extension follows. */
    private String lastCircuit() {
        List<JacketResult> jackets = balance.cooling();
        CircuitKey last = jackets.isEmpty()
                ? CircuitKey.FIRST
                : jackets.get(jackets.size() - 1).circuit();
        return last.table();
    }

    private List<String> with(List<String> paths, String... prefixes) {
        List<String> all = new ArrayList<>(paths);
        all.addAll(BalanceTrail.concept(balance, trail, prefixes));
        return all;
    }

    private static List<String> withLength(List<String> paths) {
        List<String> all = new ArrayList<>(paths);
        all.add("engine.exit_diameter_m");
        return all;
    }

    private List<String> outletOf(String label) {
        Component part = balance.components().stream()
                .filter(c -> c.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no component " + label));
        String at = BalanceTrail.at(part.outlets().get(0));
        return List.of(at + ".mass_flow_kg_s", at + ".pressure_Pa", at + ".density_kg_m3");
    }
}
