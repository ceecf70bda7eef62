package dev.penstock.cooling.jacket;

import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.ModelCard;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A jacket that has been marched through.
 *
 * @param circuit which of the engine's circuits it belongs to
 * @param stations cells from its beginning, mostly at the injector, to the end of the jacket, x rising
 * @param inlet coolant in the inlet manifold
 * @param outlet coolant in the outlet manifold
 * @param heatLoad heat taken up by the coolant (W)
 * @param pressureDrop inlet minus outlet manifold pressure (Pa)
 * @param coolantTemperatureRise outlet minus inlet manifold temperature (K)
 * @param peakWallTemperature hottest temperature of the wall metal (K), by the fin model or, if that is hotter, by two-dimensional
 *     conduction ({@link CellCheck})
 * @param peakHeatFlux largest heat flux into the wall (W/m²)
 * @param layout channels as solved, with the numbers that were chosen where the design left them open
 * @param wallThickness wall between gas and channel floor at the throat, or where the jacket begins behind it (m)
 * @param sootResistance thermal resistance of soot at the throat (m²·K/W); zero without soot
 * @param wall strength of the hot wall, station by station
 * @param extension what follows where the jacket ends before the nozzle
 * @param limits every limit held against its value
 * @param warnings what the reader must know
 * @param gasModel model of the heat flux from the gas
 * @param coolantModel model of the heat transfer to the coolant
 * @param iterations wall balances solved, all passes and the sizing included
 */
public record JacketResult(
        CircuitKey circuit,
        List<JacketStation> stations,
        FluidState inlet,
        FluidState outlet,
        double heatLoad,
        double pressureDrop,
        double coolantTemperatureRise,
        double peakWallTemperature,
        double peakHeatFlux,
        ChannelLayout layout,
        double wallThickness,
        double sootResistance,
        List<WallAssessment> wall,
        Optional<ExtensionResult> extension,
        List<LimitCheck> limits,
        List<Warning> warnings,
        ModelCard gasModel,
        ModelCard coolantModel,
        int iterations) {

    public JacketResult {
        Require.finite("jacket", "heat load (W)", heatLoad);
        Require.finite("jacket", "pressure drop (Pa)", pressureDrop);
        Require.finite("jacket", "coolant temperature rise (K)", coolantTemperatureRise);
        Require.positive("jacket", "peak wall temperature (K)", peakWallTemperature);
        Require.finite("jacket", "peak heat flux (W/m²)", peakHeatFlux);
        stations = List.copyOf(stations);
        wall = List.copyOf(wall);
        limits = List.copyOf(limits);
        warnings = List.copyOf(warnings);
    }

    /** @return whether every limit is kept */
    public boolean feasible() {
        return limits.stream().allMatch(LimitCheck::met);
    }

    /** @return the limit with the smallest relative margin: the one that says no, if any does */
    public Optional<LimitCheck> bindingLimit() {
        return limits.stream().min(Comparator.comparingDouble(LimitCheck::margin));
    }
}
