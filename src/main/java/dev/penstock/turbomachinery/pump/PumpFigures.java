package dev.penstock.turbomachinery.pump;

import static dev.penstock.provenance.Place.Role.DRIVE;
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

    public static final ModelCard SAME = new ModelCard(
            "turbomachinery.same", "The value of another place", "x = x", "everywhere", "exact", List.of("definition"));

    /** Figures of a pump between its stations. */
    public static final FigureTable<PumpSizing> ALL = FigureTable.named(PumpSizing::name)
            .word("name", "pump", PumpSizing::name)
            .number("inlet_pressure_Pa", "inlet", Notation.PRESSURE, p -> p.duty()
                    .inlet()
                    .pressure())
            .by(SAME, of(INLET, "pressure_Pa"))
            .number("discharge_pressure_Pa", "discharge", Notation.PRESSURE, p -> p.duty()
                    .dischargePressure())
            .by(SAME, of(OUTLET, "pressure_Pa"))
            .number("discharge_temperature_K", "discharge", Notation.TEMPERATURE, p -> p.outlet()
                    .temperature())
            .from((p, at) -> afterMixing(at, of(OUTLET, "temperature_K"), own("mass_flow_kg_s")))
            .number("mass_flow_kg_s", "flow", Notation.MASS_FLOW, p -> p.duty().massFlow())
            .from((p, at) -> afterMixing(at, of(INLET, "mass_flow_kg_s")))
            .number("head_J_kg", "head", significant("J/kg", "kJ/kg", 1e-3, 4), PumpSizing::head)
            .by(PumpHead.CARD, own("inlet_pressure_Pa"), of(INLET, "temperature_K"), own("discharge_pressure_Pa"))
            .number("efficiency", "efficiency", Notation.PERCENT, PumpSizing::efficiency)
            .from(PumpFigures::efficiency)
            .number("power_W", "power", Notation.POWER, PumpSizing::power)
            .by(PumpHead.CARD, own("mass_flow_kg_s", "head_J_kg", "efficiency"))
            .number("speed_rad_s", "speed", Notation.SPEED, PumpSizing::speed)
            .by(
                    PumpSpeed.CARD,
                    own("mass_flow_kg_s", "suction_head_available_m"),
                    given("speed", "suction", "inducer", "bearing"))
            .count("stages", "stages", PumpSizing::stages)
            .by(PumpStages.CARD, own("head_J_kg", "speed_rad_s"), given("tip_speed_limit", "stages"))
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
            .by(InducerSuction.CARD, given("inducer_flow", "inducer_hub"))
            .number(
                    "suction_head_available_m",
                    "suction head there",
                    significant("m", 3),
                    p -> p.netPositiveSuctionHead() + p.suppressionHead())
            .by(SuppressionHead.CARD, of(INLET, "pressure_Pa"), of(INLET, "temperature_K"), given("suppression"))
            .number(
                    "suction_head_required_m",
                    "suction head needed",
                    significant("m", 3),
                    PumpSizing::requiredSuctionHead)
            .by(InducerSuction.CARD, own("speed_rad_s", "mass_flow_kg_s", "suction_specific_speed"))
            .number("impeller_diameter_m", "impeller", significant("m", "mm", 1e3, 3), PumpSizing::impellerDiameter)
            .by(StageShape.CARD, own("tip_speed_m_s", "speed_rad_s"))
            .number("inducer_diameter_m", "inducer", significant("m", "mm", 1e3, 3), PumpSizing::inducerDiameter)
            .by(InducerSuction.CARD, own("speed_rad_s", "mass_flow_kg_s"), of(INLET, "density_kg_m3"))
            .number("tip_speed_m_s", "tip speed", significant("m/s", 3), PumpSizing::tipSpeed)
            .by(StageShape.CARD, own("head_J_kg", "stages", "specific_speed"))
            .table();

    private PumpFigures() {}

    /** Liquid from behind the pump that drives a boost pump passes it again: its flow is more than that of the inlet. */
    private static Origin afterMixing(Place at, Place.Source station, Place.Source... drive) {
        if (at.all(DRIVE).isEmpty()) {
            return new Origin(SAME, station.paths(at));
        }
        List<String> from = new ArrayList<>(station.paths(at));
        for (Place.Source more : drive) {
            from.addAll(more.paths(at));
        }
        return new Origin(HydraulicTurbine.CARD, from);
    }

    private static Origin efficiency(PumpSizing pump, Place at) {
        if (pump.design().efficiency().isPresent()) {
            return Origin.given("stated for this pump", "concept or usual value");
        }
        List<String> from = new ArrayList<>(
                own("specific_speed", "mass_flow_kg_s", "stages").paths(at));
        from.addAll(given("efficiency").paths(at));
        return new Origin(GulichEfficiency.CARD, from);
    }
}
