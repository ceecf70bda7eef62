package dev.penstock.cycles.reading;

import dev.penstock.fluids.Propellant;
import dev.penstock.provenance.UncertainInput;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.pump.ImpellerMaterial;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpType;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Reads the table of a pump; what is absent is left to the pump model or takes the usual value of the propellant. */
final class PumpKeys {

    private PumpKeys() {}

    static Supplier<PumpDesign> read(ConceptKeys keys, Propellant propellant, boolean motorDriven) {
        PumpDesign usual = PumpDefaults.of(propellant);
        List<UncertainInput> uncertain = PumpDefaults.uncertain(propellant);
        OptionalDouble speed = keys.optional(
                "speed",
                Dimension.ROTATIONAL_SPEED,
                Range.of(10, 3e4),
                "the fastest that suction, inducer and bearings allow");
        OptionalDouble efficiency = keys.optional(
                "efficiency", Dimension.RATIO, Range.of(0.05, 1), "relation of efficiency to specific speed");
        OptionalInt stages = keys.optionalCount("stages", 1, 20, "the fewest that keep the tip speed");
        PumpType type = keys.choice("type", PumpType.class, PumpType.AUTOMATIC, "centrifugal unless axial stages pay");
        OptionalDouble head = keys.optional(
                "head_coefficient",
                Dimension.RATIO,
                Range.of(0.05, 1),
                "relation of head coefficient to specific speed");
        ImpellerMaterial material = keys.choice(
                "impeller_material",
                ImpellerMaterial.class,
                ImpellerMaterial.usual(propellant),
                "the fastest alloy that the liquid allows, nasa-sp-8109");
        if (material.barred(propellant)) {
            keys.problem(
                    "impeller_material",
                    '"' + material.name().toLowerCase(Locale.ROOT) + '"',
                    material.objection(propellant).orElseThrow() + "; choose another alloy");
        }
        double tip = keys.quantity(
                "tip_speed_limit",
                Dimension.VELOCITY,
                Range.of(20, 1200),
                material.tipSpeed(propellant).mode(),
                "nasa-sp-8109, " + material.title());
        String tipSource = keys.has("tip_speed_limit") ? "concept file" : usual.tipSpeedSource();
        double inducerTip = usual("inducer_tip_speed_limit", keys, Dimension.VELOCITY, Range.of(5, 800), uncertain);
        double flow = usual("inducer_flow_coefficient", keys, Dimension.RATIO, Range.of(0.04, 0.3), uncertain);
        double hub = keys.quantity(
                "inducer_hub_ratio", Dimension.RATIO, Range.of(0, 0.8), usual.inducerHubRatio(), ConceptKeys.COMMON);
        double suppression = usual("suppression_factor", keys, Dimension.RATIO, Range.of(0, 10), uncertain);
        double margin = usual("suction_margin", keys, Dimension.RATIO, Range.of(1, 10), uncertain);
        double specific = usual("specific_speed_limit", keys, Dimension.RATIO, Range.of(0.1, 5), uncertain);
        double bearing = usual("bearing_speed_limit", keys, Dimension.VELOCITY, Range.of(5, 400), uncertain);
        double stress = usual("shaft_stress", keys, Dimension.PRESSURE, Range.of(1e7, 2e9), uncertain);
        double shaft = usual(
                "smallest_shaft_diameter",
                keys,
                Dimension.LENGTH,
                Range.of(1e-3, 0.1),
                List.of(PumpDefaults.smallestShaft(motorDriven)));
        double factor = usual("efficiency_factor", keys, Dimension.RATIO, Range.of(0.1, 1.2), uncertain);
        return () -> new PumpDesign(
                speed,
                efficiency,
                stages,
                type,
                head,
                tip,
                tipSource,
                inducerTip,
                flow,
                hub,
                suppression,
                margin,
                specific,
                bearing,
                stress,
                shaft,
                factor);
    }

    private static double usual(
            String key, ConceptKeys keys, Dimension dimension, Range range, List<UncertainInput> uncertain) {
        UncertainInput input = uncertain.stream()
                .filter(u -> u.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no usual value of " + key));
        return keys.quantity(key, dimension, range, input.spread().mode(), input.source());
    }
}
