package dev.penstock.cycles.trail;

import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How the figures are made that are held against limits and are published nowhere else. */
final class LimitFigures {

    private static final Map<String, String> EQUATIONS = Map.ofEntries(
            Map.entry("inducer_tip_speed", "u = ω d_inducer/2"),
            Map.entry("suction_margin", "(NPSH + thermodynamic suppression)/NPSH required"),
            Map.entry("bearing_speed", "u = ω d_shaft/2"),
            Map.entry("seal_speed", "u = ω d_shaft/2"),
            Map.entry("gear_speed", "u = ω d_pitch/2, the pinion's"),
            Map.entry("critical_speed_distance", "|ω/ω_critical − 1|"),
            Map.entry("annulus_speed", "ω √(π d h), d mean diameter, h blade height of full admission"),
            Map.entry("coolant_temperature", "largest bulk temperature along the jacket"),
            Map.entry("coolant_model_range", "largest bulk temperature along the jacket"),
            Map.entry("coolant_wall_temperature", "largest wall temperature on the coolant side"),
            Map.entry("coating_temperature", "largest temperature of the coated surface"),
            Map.entry("coolant_mach", "largest v/a along the jacket"),
            Map.entry("enthalpy_rise_to_boiling", "largest h − h_inlet against h_saturated − h_inlet"),
            Map.entry("critical_heat_flux_ratio", "largest q/q_critical along the jacket"),
            Map.entry("channel_width", "smallest width along the jacket"),
            Map.entry("channel_height", "smallest height along the jacket"),
            Map.entry("land_width", "smallest land along the jacket"),
            Map.entry("channel_aspect_ratio", "largest height over width along the jacket"),
            Map.entry(
                    "pressure_stress_over_yield",
                    "largest stress of the floor by pressure over yield at its temperature"),
            Map.entry("land_stress_over_yield", "largest stress of a land by pressure over yield at its temperature"),
            Map.entry("thermal_strain_over_buckling", "largest thermal strain over that at which the wall buckles"),
            Map.entry("life", "fewest cycles to crack by the strain range of a firing"),
            Map.entry("extension_temperature", "radiation equilibrium where the jacket ends"));

    private LimitFigures() {}

    static ModelCard card(String figure) {
        return new ModelCard(
                "cycles.limit-figure." + figure.replace('_', '-').toLowerCase(Locale.ROOT),
                "Figure held against a limit: " + figure.replace('_', ' '),
                EQUATIONS.getOrDefault(figure, "from the figures of the same part"),
                "where the figures of the part hold",
                "that of the figures of the part",
                List.of("definition"));
    }
}
