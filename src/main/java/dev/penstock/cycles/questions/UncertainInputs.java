package dev.penstock.cycles.questions;

import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.cooling.design.JacketLimits;
import dev.penstock.cycles.concept.BoostDesign;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ConceptInput;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.UncertainValue;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.Spread;
import dev.penstock.provenance.UncertainInput;
import dev.penstock.turbomachinery.electric.ElectricDrive;
import dev.penstock.turbomachinery.mass.MassPart;
import dev.penstock.turbomachinery.pump.HydraulicTurbine;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.shaft.GearTeeth;
import dev.penstock.turbomachinery.shaft.MechanicalLosses;
import dev.penstock.turbomachinery.turbine.TurbineDefaults;
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
        inputs.losses(concept);
        inputs.limits(concept, balance.limits());
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

    private void losses(Concept concept) {
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
        concept.burners()
                .keySet()
                .forEach(burner -> add(burner.key() + ".injector_loss", new Spread(0.08, 0.12, 0.20), ""));
        add("expander.turbine_bypass", new Spread(0.02, 0.05, 0.10), "");
        put("cooling.film.efficiency", new UncertainValue(new Spread(0.3, 0.5, 0.7), "", "grisson-1991"));
        concept.pressurization().ifPresent(p -> {
            for (Side side : Side.values()) {
                put(
                        "pressurization." + side.key() + "_collapse_factor",
                        new UncertainValue(collapse(p.collapse(side)), "", "nasa-sp-8112"));
            }
        });
    }

    /** Half the excess over one to twice of it, about the ranges of the source. */
    private static Spread collapse(double factor) {
        return new Spread(1 + 0.5 * (factor - 1), factor, 1 + 1.8 * (factor - 1));
    }

    /** Limits of the hardware that the concept leaves at their usual values, and those of materials that the jacket found. */
    private void limits(Concept concept, List<LimitCheck> checks) {
        double discharge = concept.limits().dischargePressure();
        double tank = concept.limits().tankPressure();
        add("limits.discharge_pressure", new Spread(0.75, 1, 1.15).times(discharge), "Pa");
        add("limits.tank_pressure", new Spread(0.8, 1, 1.3).times(tank), "Pa");
        concept.cooling().ifPresent(c -> {
            JacketLimits own = c.jacket().limits();
            add("cooling.limits.pressure_drop_fraction", new Spread(0.7, 1, 1.5).times(own.pressureDropFraction()), "");
            add("cooling.limits.life", new Spread(0.5, 1, 2).times(own.life()), "");
        });
        for (LimitCheck check : checks) {
            double kelvin = check.limit();
            if (check.name().equals("cooling.wall_temperature")) {
                add("cooling.limits.wall_temperature", new Spread(kelvin - 60, kelvin, kelvin + 60), "K");
            } else if (check.name().equals("cooling.coolant_wall_temperature")) {
                add("cooling.limits.coolant_wall_temperature", new Spread(kelvin - 30, kelvin, kelvin + 30), "K");
            }
        }
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
