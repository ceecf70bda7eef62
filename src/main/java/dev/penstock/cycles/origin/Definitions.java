package dev.penstock.cycles.origin;

import dev.penstock.provenance.ModelCard;

/** The relations of a balance that no publication is needed for: conservation, and what the terms of the trade mean. */
public final class Definitions {

    public static final ModelCard FLOW = card(
            "flow", "Conservation of mass", "Σ ṁ_out = Σ ṁ_in; oxidizer and fuel are counted apart", "steady flow");
    public static final ModelCard TANK_FLOW = card(
            "tank-flow",
            "Flow leaving the tanks",
            "ṁ_o = ṁ r/(1 + r); ṁ_f = ṁ/(1 + r); r mixture ratio",
            "steady flow");
    public static final ModelCard LOSS =
            card("loss", "Stated pressure loss", "p₂ = p₁ − Δp; h₂ = h₁", "adiabatic line, valve, orifice or injector");
    public static final ModelCard BUDGET = card(
            "budget",
            "Pressure budget, from the chamber upstream",
            "p_discharge = p_needed + Σ losses of line, jacket, valve and injector",
            "steady flow");
    public static final ModelCard MIXING =
            card("mixing", "Adiabatic mixing", "h = Σ ṁ h / Σ ṁ", "streams at rest in total enthalpy");
    public static final ModelCard WORK = card("work", "Work on a stream", "h₂ = h₁ + P/ṁ", "adiabatic machine");
    public static final ModelCard HEAT = card("heat", "Heat into a stream", "h₂ = h₁ + Q/ṁ", "no work");
    public static final ModelCard CLOSING = card(
            "closing",
            "Found by closing the balance",
            "the value at which every closing equation vanishes",
            "where a balance exists; what is left of each equation is listed with the residuals");
    public static final ModelCard SUM = card("sum", "Sum", "x = Σ xᵢ", "everywhere");
    public static final ModelCard DIFFERENCE = card("difference", "Difference", "Δx = x₂ − x₁", "everywhere");
    public static final ModelCard RATIO = card("ratio", "Ratio", "r = a/b", "everywhere");
    public static final ModelCard IMPULSE =
            card("specific-impulse", "Specific impulse", "Isp = F/(ṁ g₀)", "everywhere");
    public static final ModelCard DIAMETER = card("diameter", "Diameter of a circle", "d = √(4 A/π)", "round sections");
    public static final ModelCard AUDIT = card(
            "audit",
            "Audit of mass and energy",
            "Σ in − Σ out over the larger, component by component, from the station table alone",
            "everywhere; above 1e-8 the result is an error");
    public static final ModelCard RESIDUAL =
            card("residual", "What is left of a closing equation", "left side − right side", "at the solution");
    public static final ModelCard EXTREME = card("extreme", "Largest of several", "max xᵢ", "everywhere");
    public static final ModelCard PRODUCT = card("product", "Product", "x = a b", "everywhere");
    public static final ModelCard SMALLEST = card("smallest", "Smallest of several", "min xᵢ", "everywhere");

    private Definitions() {}

    public static ModelCard card(String id, String title, String equation, String range) {
        return ModelCard.definition("cycles." + id, title, equation, range);
    }
}
