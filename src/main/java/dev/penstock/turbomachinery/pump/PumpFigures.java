package dev.penstock.turbomachinery.pump;

import static dev.penstock.provenance.Place.Role.INLET;
import static dev.penstock.provenance.Place.Role.OUTLET;
import static dev.penstock.provenance.Place.given;
import static dev.penstock.provenance.Place.of;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.quantities.Notation;
import java.util.ArrayList;
import java.util.List;

/** What a pump publishes. */
public final class PumpFigures {

    /** Figures of a pump between its stations. */
    public static final FigureTable<PumpSizing> ALL = FigureTable.named(PumpSizing::name)
            .word("name", "pump", PumpSizing::name)
            .number("inlet_pressure_Pa", "inlet", Notation.PRESSURE, p -> p.duty()
                    .inlet()
                    .pressure())
            .by(ModelCard.SAME, of(INLET, "pressure_Pa"))
            .number("discharge_pressure_Pa", "discharge", Notation.PRESSURE, p -> p.duty()
                    .dischargePressure())
            .by(ModelCard.SAME, of(OUTLET, "pressure_Pa"))
            .number("discharge_temperature_K", "discharge", Notation.TEMPERATURE, p -> p.outlet()
                    .temperature())
            .by(PumpHead.CARD, of(INLET, "temperature_K"), own("discharge_pressure_Pa", "efficiency", "mass_flow_kg_s"))
            .number("mass_flow_kg_s", "flow", Notation.MASS_FLOW, p -> p.duty().massFlow())
            .by(ModelCard.SAME, of(INLET, "mass_flow_kg_s"))
            .number("head_J_kg", "head", significant("J/kg", "kJ/kg", 1e-3, 4), PumpSizing::head)
            .by(PumpHead.CARD, own("inlet_pressure_Pa"), of(INLET, "temperature_K"), own("discharge_pressure_Pa"))
            .number("efficiency", "efficiency", Notation.PERCENT, PumpSizing::efficiency)
            .from(PumpFigures::efficiency)
            .number("power_W", "power", Notation.POWER, PumpSizing::power)
            .by(PumpHead.CARD, own("mass_flow_kg_s", "head_J_kg", "efficiency"))
            .number("speed_rad_s", "speed", Notation.SPEED, PumpSizing::speed)
            .by(PumpSpeed.CARD)
            .count("stages", "stages", PumpSizing::stages)
            .by(
                    PumpStages.CARD,
                    own("head_J_kg", "speed_rad_s"),
                    given("tip_speed_limit", "stages", "head_coefficient"))
            .number("specific_speed", "specific speed", significant("", 3), PumpSizing::specificSpeed)
            .by(
                    SpecificSpeed.CARD,
                    own("speed_rad_s", "mass_flow_kg_s"),
                    of(INLET, "density_kg_m3"),
                    own("head_J_kg", "stages"))
            .number(
                    "suction_specific_speed",
                    "suction specific speed",
                    significant("", 3),
                    PumpSizing::suctionSpecificSpeed)
            .by(InducerSuction.CARD, own("inducer_diameter_m"), given("inducer_hub_ratio"))
            .number(
                    "suction_head_available_m",
                    "NPSH available",
                    significant("m", 3),
                    p -> p.netPositiveSuctionHead() + p.suppressionHead())
            .by(SuppressionHead.CARD, of(INLET, "pressure_Pa"), of(INLET, "temperature_K"), given("suppression_factor"))
            .number("suction_head_required_m", "NPSH required", significant("m", 3), PumpSizing::requiredSuctionHead)
            .by(InducerSuction.CARD, own("speed_rad_s", "mass_flow_kg_s", "suction_specific_speed"))
            .number("impeller_diameter_m", "impeller", significant("m", "mm", 1e3, 3), PumpSizing::impellerDiameter)
            .by(StageShape.CARD, own("tip_speed_m_s", "speed_rad_s"))
            .number("inducer_diameter_m", "inducer", significant("m", "mm", 1e3, 3), PumpSizing::inducerDiameter)
            .by(
                    InducerSuction.CARD,
                    own("speed_rad_s", "mass_flow_kg_s"),
                    of(INLET, "density_kg_m3"),
                    given("inducer_flow_coefficient", "inducer_hub_ratio", "inducer_tip_speed_limit"))
            .number("tip_speed_m_s", "tip speed", significant("m/s", 3), PumpSizing::tipSpeed)
            .by(StageShape.CARD, own("head_J_kg", "stages", "specific_speed"), given("head_coefficient"))
            .table();

    private PumpFigures() {}

    private static Origin efficiency(PumpSizing pump, Place at) {
        if (pump.design().efficiency().isPresent()) {
            return Origin.given("stated for this pump", "concept or usual value");
        }
        List<String> from = new ArrayList<>(
                own("specific_speed", "mass_flow_kg_s", "stages").paths(at));
        from.addAll(given("efficiency_factor").paths(at));
        return new Origin(GulichEfficiency.CARD, from);
    }
}
