package dev.penstock.chamber.contour;

/**
 * Thrust of a given wall in axisymmetric inviscid flow, against one-dimensional flow to the same area ratio: everything that
 * a bell or a cone loses to curved and diverging streamlines, per mass flow.
 */
public final class TwoDimensionalFlow {

    /**
     * A wall's inviscid performance.
     *
     * @param efficiency vacuum impulse over that of one-dimensional flow to the same area ratio (-)
     * @param dischargeCoefficient mass flow over that of one-dimensional sonic flow through the throat (-)
     * @param exitWallPressure pressure at the wall's end over the pressure of one-dimensional flow there (-)
     */
    public record Result(double efficiency, double dischargeCoefficient, double exitWallPressure) {}

    private TwoDimensionalFlow() {}

    /**
     * @param contour wall
     * @param upstreamCurvature wall curvature radius upstream of the throat over throat radius (-)
     * @param gamma isentropic exponent (-)
     * @param cells cells from axis to wall
     * @return performance
     */
    public static Result of(ChamberContour contour, double upstreamCurvature, double gamma, int cells) {
        CharacteristicGas gas = new CharacteristicGas(gamma);
        double rt = contour.throatRadius();
        double end = contour.nozzleLength() / rt;
        MarchingFlow flow =
                new MarchingFlow(gas, upstreamCurvature, x -> contour.radiusAt(Math.min(x, end) * rt) / rt, cells);
        flow.marchTo(end);
        double radius = contour.exitRadius() / rt;
        double mach = gas.machAtAreaRatio(radius * radius);
        return new Result(
                flow.vacuumThrust() / flow.dischargeCoefficient() / gas.vacuumThrustCoefficient(mach),
                flow.dischargeCoefficient(),
                flow.wallPressure() / gas.pressure(mach));
    }
}
