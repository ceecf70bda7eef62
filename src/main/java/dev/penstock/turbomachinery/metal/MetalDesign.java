package dev.penstock.turbomachinery.metal;

import java.util.Map;

/**
 * What parts are made of.
 *
 * @param oxidizer family of each part that meets the oxidizer or gas rich in it
 * @param fuel family of each part that meets the fuel or gas rich in it
 */
public record MetalDesign(Map<MetalPart, AlloyFamily> oxidizer, Map<MetalPart, AlloyFamily> fuel) {

    public MetalDesign {
        oxidizer = Map.copyOf(oxidizer);
        fuel = Map.copyOf(fuel);
    }
}
