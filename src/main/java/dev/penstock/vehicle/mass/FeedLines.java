package dev.penstock.vehicle.mass;

import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.engine.LoadedPropellant;
import java.util.List;

/**
 * Lines from tanks to engines, sized by flow speed.
 *
 * <pre>D = √(4 ṁ / (π ρ v)),  m = π D L t ρ_steel · 2</pre>
 *
 * v is {@code line_velocity} in the propellant's file, t 1.2 mm of steel; the factor 2 for bellows, flanges, valves and filters. The line of the
 * forward tank passes the aft tank; both end in the engine bay. Common practice, no source.
 */
public final class FeedLines {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.feed-lines",
            "Feed lines sized by flow speed",
            "D = (4 ṁ/(π ρ v))^0.5; m = 2 π D L t ρ_steel",
            "suction lines of pump-fed stages below 1 MPa",
            "±50 % of a small line in the table",
            List.of("common practice, no source"));

    private static final double STEEL = 7900;
    private static final double GAUGE = 1.2e-3;
    private static final double FITTINGS = 2;

    private FeedLines() {}

    /**
     * @param stage what the stage holds
     * @return both lines with their fittings
     */
    public static MassLine of(StageContents stage) {
        double flow = stage.engines()
                * stage.engine().massFlow()
                * (1 - stage.engine().diluentShare());
        double ratio = stage.engine().mixtureRatio();
        double bay = 0.5 * stage.diameter();
        double oxidizer = line(
                flow * ratio / (1 + ratio),
                stage.engine().oxidizer(),
                stage.fuelTank().length() + bay);
        double fuel = line(flow / (1 + ratio), stage.engine().fuel(), bay);
        return new MassLine(
                "feed lines", oxidizer + fuel, 0.5, "flow speed: common practice, no source", MassLine.Made.of(CARD));
    }

    private static double line(double flow, LoadedPropellant propellant, double length) {
        double velocity = propellant
                .propellant()
                .needed(
                        propellant.propellant().tank().lineVelocity(),
                        "tank.line_velocity",
                        "a velocity such as \"8 m/s\"");
        double diameter = Math.sqrt(4 * flow / (Math.PI * propellant.density() * velocity));
        return FITTINGS * Math.PI * diameter * length * GAUGE * STEEL;
    }
}
