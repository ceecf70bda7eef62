package dev.penstock.cooling;

/** Makes the gas side that a design asks for. */
final class GasSides {

    private GasSides() {}

    static GasSide of(JacketGrid grid, JacketCase question) {
        return new BartzGasSide(
                grid, question.gas(), question.design(), question.gas().sooty(), question.heatFluxFactor());
    }
}
