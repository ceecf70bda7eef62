package dev.penstock.vehicle.trade;

import dev.penstock.errors.Require;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.stage.RocketEquation;
import java.util.ArrayList;
import java.util.List;

/**
 * Payload of a single stage against its dry mass at a given start mass: a falling line that meets zero where the stage
 * stops closing.
 *
 * <pre>payload = (m0 − startup)/R − residual − dry,   R = exp(Δv/c)</pre>
 *
 * @param pair oxidizer and fuel by id
 * @param startMass start mass (kg)
 * @param closingDryMass dry mass at which the payload is zero (kg); negative if not even a weightless stage closes
 * @param points the line
 */
public record ClosingCurve(String pair, double startMass, double closingDryMass, List<Point> points) {

    /**
     * A point of the line.
     *
     * @param dryMass dry mass (kg)
     * @param payload payload (kg); negative beyond the closing dry mass
     */
    public record Point(double dryMass, double payload) {}

    public ClosingCurve {
        Require.finite("closing curve", "closing dry mass (kg)", closingDryMass);
        points = List.copyOf(points);
    }

    /**
     * @param engine engine of the stage
     * @param allowances propellant that gives no speed
     * @param engines number of engines
     * @param startMass start mass (kg)
     * @param deltaV ideal delta-v (m/s)
     * @param heaviest largest dry mass of the line (kg)
     * @return the line
     */
    public static ClosingCurve of(
            EnginePerformance engine,
            Allowances allowances,
            int engines,
            double startMass,
            double deltaV,
            double heaviest) {
        Require.positive("closing curve", "start mass (kg)", startMass);
        Require.positive("closing curve", "largest dry mass (kg)", heaviest);
        double exhaust = engine.vacuumThrust() / engine.massFlow();
        double startup = allowances.startupTime() * engines * engine.massFlow();
        double ratio = RocketEquation.massRatio(deltaV, exhaust);
        double usable = 1 - allowances.residual() - allowances.boilOff();
        // loaded = burned + startup + (residual + boil-off) loaded, burned = (m0 - startup - boil-off loaded)(1 - 1/R)
        double spent = 1 - 1 / ratio;
        double loaded = (spent * (startMass - startup) + startup) / (usable + spent * allowances.boilOff());
        double closing = startMass - loaded;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            double dry = heaviest * i / 40;
            points.add(new Point(dry, closing - dry));
        }
        return new ClosingCurve(engine.oxidizer().id() + " / " + engine.fuel().id(), startMass, closing, points);
    }
}
