package dev.penstock.cycles.concept;

import dev.penstock.errors.Require;

/**
 * What a concept says about the way of its turbine gas, apart from burners and turbines.
 *
 * @param ductLoss pressure loss of a hot-gas duct over its inlet pressure (-)
 * @param injectorLoss loss of an injector of gas over chamber pressure (-)
 * @param exhaust dump of turbine gas, for the cycles that have one
 * @param heatedShare share of the fuel that goes through the jacket, for split and bleed expanders (-)
 * @param turbineBypass share of the heated fuel that passes by the turbines, for control (-)
 */
public record GasPathDesign(
        double ductLoss, double injectorLoss, ExhaustDesign exhaust, double heatedShare, double turbineBypass) {

    public GasPathDesign {
        Require.within("gas path", "duct loss (-)", ductLoss, 0, 0.5);
        Require.within("gas path", "gas injector loss (-)", injectorLoss, 0, 1);
        Require.within("gas path", "heated share (-)", heatedShare, 0.01, 1);
        Require.within("gas path", "turbine bypass (-)", turbineBypass, 0, 0.9);
    }
}
