package dev.penstock.cycles;

import dev.penstock.chamber.LossKind;
import dev.penstock.chamber.NamedLoss;
import dev.penstock.provenance.Spread;
import dev.penstock.provenance.UncertainInput;
import dev.penstock.turbomachinery.GearTeeth;
import dev.penstock.turbomachinery.HydraulicTurbine;
import dev.penstock.turbomachinery.MechanicalLosses;
import dev.penstock.turbomachinery.PumpDefaults;
import dev.penstock.turbomachinery.TurbineDefaults;
import dev.penstock.turbomachinery.electric.ElectricDrive;
import dev.penstock.turbomachinery.mass.MassPart;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Every input of an engine that is only known within bounds: what the concept's table {@code [uncertainty]} says, and the
 * spreads of the defaults it uses. An input that the concept states without a spread counts as exact.
 */
public final class UncertainInputs {

    private static final String COMMON = "common practice, no source";

    private final Map<String, UncertainValue> values = new LinkedHashMap<>();
    private final Set<String> given;
    private final Set<String> known;

    private UncertainInputs(Concept concept) {
        given = concept.document().inputs().stream()
                .filter(ConceptInput::given)
                .map(ConceptInput::key)
                .collect(Collectors.toSet());
        known = concept.document().inputs().stream().map(ConceptInput::key).collect(Collectors.toSet());
    }

    /**
     * @param balance the engine as it is most likely; losses that are modelled spread about their modelled value
     * @return uncertain inputs by dotted key, in the order of the calculation
     */
    public static Map<String, UncertainValue> of(EngineBalance balance) {
        Concept concept = balance.concept();
        UncertainInputs inputs = new UncertainInputs(concept);
        inputs.chamber(balance.chamber().losses());
        inputs.losses();
        for (Side side : Side.values()) {
            inputs.table(
                    "pumps." + side.key(),
                    PumpDefaults.uncertain(concept.feed(side).propellant()));
            boolean liquid = concept.feed(side)
                    .boost()
                    .filter(b -> b.drive() == BoostDesign.Drive.LIQUID)
                    .isPresent();
            if (liquid) {
                inputs.table("boost_pumps." + side.key(), List.of(HydraulicTurbine.efficiency()));
            }
            inputs.table(
                    "boost_pumps." + side.key(),
                    PumpDefaults.uncertain(concept.feed(side).propellant()));
        }
        concept.turbines()
                .forEach((place, option) -> inputs.table(
                        "turbines." + place.key(),
                        TurbineDefaults.uncertain(
                                option.design().oxygenRich(),
                                concept.cycle().traits().livesOnJacketHeat())));
        boolean motors = !concept.cycle().traits().turbines();
        for (Side side : Side.values()) {
            inputs.table("pumps." + side.key(), List.of(PumpDefaults.smallestShaft(motors)));
        }
        inputs.table("shafts", MechanicalLosses.uncertain());
        inputs.table("shafts", List.of(GearTeeth.pitchLineSpeed()));
        inputs.table("electric", ElectricDrive.uncertain());
        inputs.table("mass", MassPart.uncertain());
        inputs.values.putAll(concept.document().uncertainty());
        return Collections.unmodifiableMap(inputs.values);
    }

    /** Modelled losses, about what the model gave: half to one and a half times the loss, a point for energy release. */
    private void chamber(List<NamedLoss> losses) {
        for (NamedLoss loss : losses) {
            for (LossKind kind : LossKind.values()) {
                if (!kind.title().equals(loss.name())
                        || loss.factor() >= 1
                        || loss.model().isEmpty()) {
                    continue;
                }
                double missing = 1 - loss.factor();
                Spread spread = kind == LossKind.ENERGY_RELEASE
                        ? new Spread(loss.factor() - 0.012, loss.factor(), Math.min(1, loss.factor() + 0.008))
                        : new Spread(1 - 1.5 * missing, loss.factor(), 1 - 0.5 * missing);
                add("efficiencies." + kind.key(), spread, "");
            }
        }
        add("cooling.heat_flux_factor", new Spread(0.7, 1, 1.2), "");
    }

    private void losses() {
        for (Side side : Side.values()) {
            add("injector." + side.key() + "_loss", new Spread(0.15, 0.18, 0.22), "");
            add("lines." + side.key() + "_discharge_loss", new Spread(0.01, 0.02, 0.04), "");
            add("lines." + side.key() + "_valve_loss", new Spread(0.05, 0.10, 0.16), "");
            add("lines." + side.key() + "_suction_loss", new Spread(20e3, 40e3, 70e3), "Pa");
        }
        add("injector.gas_loss", new Spread(0.05, 0.08, 0.12), "");
        add("lines.hot_gas_loss", new Spread(0.01, 0.02, 0.04), "");
        add("exhaust.efficiency", new Spread(0.85, 0.93, 0.97), "");
        add("exhaust.duct_loss", new Spread(0.05, 0.15, 0.3), "");
    }

    private void table(String table, List<UncertainInput> inputs) {
        for (UncertainInput input : inputs) {
            boolean plain = input.unit().equals("-") || input.unit().contains("^(");
            put(
                    table + "." + input.key(),
                    new UncertainValue(input.spread(), plain ? "" : input.unit(), input.source()));
        }
    }

    private void add(String key, Spread spread, String unit) {
        put(key, new UncertainValue(spread, unit, COMMON));
    }

    /** Only what this concept's reader asked for and the concept left open. */
    private void put(String key, UncertainValue value) {
        boolean exact = value.spread().low() == value.spread().high();
        if (known.contains(key) && !given.contains(key) && !exact) {
            values.put(key, value);
        }
    }
}
