package dev.penstock.cycles.reading;

import dev.penstock.fluids.Propellant;
import dev.penstock.input.InputTable;
import dev.penstock.turbomachinery.pump.ImpellerMaterial;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpInputs;
import dev.penstock.turbomachinery.pump.PumpType;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Reads the table of a pump; what is absent is left to the pump model or takes the usual value of the propellant. */
final class PumpKeys {

    private PumpKeys() {}

    static Supplier<PumpDesign> read(InputTable keys, Propellant propellant, boolean motorDriven, boolean boost) {
        OptionalDouble speed = keys.number(PumpInputs.SPEED);
        OptionalDouble efficiency = keys.number(PumpInputs.EFFICIENCY);
        OptionalInt stages = keys.count(PumpInputs.STAGES);
        PumpType type = keys.read(PumpInputs.TYPE);
        OptionalDouble head = keys.number(PumpInputs.HEAD_COEFFICIENT);
        ImpellerMaterial material = keys.read(PumpInputs.IMPELLER_MATERIAL, PumpInputs.impellerMaterial(propellant));
        if (material.barred(propellant)) {
            keys.problem(
                    PumpInputs.IMPELLER_MATERIAL.key(),
                    '"' + material.name().toLowerCase(Locale.ROOT) + '"',
                    material.objection(propellant).orElseThrow() + "; choose another alloy");
        }
        var usualTip = PumpInputs.tipSpeed(material, propellant);
        double tip = keys.read(PumpInputs.TIP_SPEED_LIMIT, usualTip);
        String tipSource = keys.has(PumpInputs.TIP_SPEED_LIMIT.key()) ? "concept file" : usualTip.source();
        double inducerTip = keys.read(PumpInputs.INDUCER_TIP_SPEED_LIMIT, PumpInputs.inducerTipSpeed(propellant));
        double flow = keys.read(PumpInputs.INDUCER_FLOW_COEFFICIENT);
        double hub = keys.read(PumpInputs.INDUCER_HUB_RATIO);
        double suppression = keys.read(PumpInputs.SUPPRESSION_FACTOR, PumpInputs.suppression(propellant));
        double margin = keys.read(PumpInputs.SUCTION_MARGIN, PumpInputs.suctionMargin(propellant));
        double specific = keys.read(PumpInputs.SPECIFIC_SPEED_LIMIT, PumpInputs.specificSpeed(boost));
        double bearing = keys.read(PumpInputs.BEARING_SPEED_LIMIT, PumpInputs.bearingSpeed(propellant));
        double stress = keys.read(PumpInputs.SHAFT_STRESS);
        double shaft = keys.read(PumpInputs.SMALLEST_SHAFT_DIAMETER, PumpInputs.smallestShaft(motorDriven));
        double factor = keys.read(PumpInputs.EFFICIENCY_FACTOR);
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
}
