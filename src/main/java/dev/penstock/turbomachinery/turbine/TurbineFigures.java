package dev.penstock.turbomachinery.turbine;

import static dev.penstock.provenance.Place.Role.INLET;
import static dev.penstock.provenance.Place.Role.OUTLET;
import static dev.penstock.provenance.Place.Role.SHAFT;
import static dev.penstock.provenance.Place.given;
import static dev.penstock.provenance.Place.of;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Words;
import dev.penstock.quantities.Notation;
import java.util.Locale;

/** What a turbine publishes. */
public final class TurbineFigures {

    /** Figures of a turbine between its stations. */
    public static final FigureTable<TurbineSizing> ALL = FigureTable.named(TurbineSizing::name)
            .word("name", "turbine", TurbineSizing::name)
            .word("gas", "gas", t -> t.duty().gas().description())
            .number("inlet_pressure_Pa", "inlet", Notation.PRESSURE, t -> t.inlet()
                    .pressure())
            .by(ModelCard.SAME, of(INLET, "pressure_Pa"))
            .number("inlet_temperature_K", "inlet", Notation.TEMPERATURE, t -> t.inlet()
                    .temperature())
            .by(ModelCard.SAME, of(INLET, "temperature_K"))
            .number("exit_pressure_Pa", "exit", Notation.PRESSURE, t -> t.outlet()
                    .pressure())
            .by(ModelCard.SAME, of(OUTLET, "pressure_Pa"))
            .number("exit_temperature_K", "exit", Notation.TEMPERATURE, t -> t.outlet()
                    .temperature())
            .by(ModelCard.SAME, of(OUTLET, "temperature_K"))
            .number(
                    "pressure_ratio",
                    "pressure ratio",
                    significant("", 3),
                    t -> t.inlet().pressure() / t.outlet().pressure())
            .by(TurbineModel.CARD, own("inlet_pressure_Pa", "exit_pressure_Pa"))
            .number("mass_flow_kg_s", "flow", Notation.MASS_FLOW, t -> t.duty().massFlow())
            .by(ModelCard.SAME, of(INLET, "mass_flow_kg_s"))
            .number(
                    "isentropic_drop_J_kg",
                    "isentropic drop",
                    significant("J/kg", "kJ/kg", 1e-3, 4),
                    TurbineSizing::isentropicDrop)
            .by(TurbineModel.CARD, own("inlet_pressure_Pa", "inlet_temperature_K", "exit_pressure_Pa"))
            .number("efficiency", "efficiency", Notation.PERCENT, TurbineSizing::efficiency)
            .by(
                    TurbineFigures::blading,
                    own("velocity_ratio", "stages"),
                    given("efficiency", "efficiency_factor", "nozzle_angle", "nozzle_coefficient", "blade_coefficient"))
            .number("power_W", "power", Notation.POWER, TurbineSizing::power)
            .by(TurbineModel.CARD, own("mass_flow_kg_s", "isentropic_drop_J_kg", "efficiency"))
            .number("speed_rad_s", "speed", Notation.SPEED, TurbineSizing::speed)
            .by(ModelCard.SAME, of(SHAFT, "speed_rad_s"))
            .word("type", "kind", t -> Words.of(t.type()))
            .word("blading", "kind", TurbineFigures::kind)
            .outsideDocuments()
            .count("stages", "stages", TurbineSizing::stages)
            .by(TurbineFigures::blading, own("pressure_ratio", "speed_rad_s", "isentropic_drop_J_kg"), given("stages"))
            .number("velocity_ratio", "blade / jet speed", significant("", 3), TurbineSizing::velocityRatio)
            .by(TurbineFigures::blading, own("pitch_line_speed_m_s", "isentropic_drop_J_kg"))
            .number("mean_diameter_m", "mean diameter", significant("m", "mm", 1e3, 3), TurbineSizing::meanDiameter)
            .by(
                    TurbineFigures::blading,
                    own("speed_rad_s", "isentropic_drop_J_kg"),
                    given(
                            "mean_diameter",
                            "diameter_coefficient",
                            "pitch_line_speed_limit",
                            "nozzle_angle",
                            "nozzle_coefficient"))
            .number("blade_height_m", "blade height", significant("m", "mm", 1e3, 3), TurbineSizing::bladeHeight)
            .by(
                    PartialAdmission.CARD,
                    own("mass_flow_kg_s", "mean_diameter_m", "isentropic_drop_J_kg", "exit_pressure_Pa"),
                    given("nozzle_angle", "nozzle_coefficient", "smallest_blade_height"))
            .number("pitch_line_speed_m_s", "pitch-line speed", significant("m/s", 3), TurbineSizing::pitchLineSpeed)
            .by(TurbineFigures::blading, own("mean_diameter_m", "speed_rad_s"))
            .table();

    private TurbineFigures() {}

    private static String kind(TurbineSizing turbine) {
        return turbine.type().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ", " + turbine.stages()
                + (turbine.stages() == 1 ? " stage" : " stages");
    }

    private static ModelCard blading(TurbineSizing turbine) {
        return turbine.type() == TurbineType.REACTION ? ReactionBlading.CARD : ImpulseBlading.CARD;
    }
}
