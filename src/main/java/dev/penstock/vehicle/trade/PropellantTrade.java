package dev.penstock.vehicle.trade;

import dev.penstock.errors.LimitReached;
import dev.penstock.vehicle.VehicleSizer;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Propellant pair against pair on the same mission: every stage takes the same engine, one engine per candidate. */
public final class PropellantTrade {

    private final VehicleSizer sizer = new VehicleSizer();

    /**
     * One candidate.
     *
     * @param engine its engine
     * @param sizing the vehicle; empty if none closes
     * @param reason why none closes; empty text if one does
     */
    public record Row(EnginePerformance engine, Optional<VehicleSizing> sizing, String reason) {

        /** @return oxidizer and fuel by id */
        public String pair() {
            return engine.oxidizer().id() + " / " + engine.fuel().id();
        }

        /** @return volume of all tanks (m³); zero if no vehicle closes */
        public double tankVolume() {
            return sizing.stream()
                    .flatMap(s -> s.stages().stream())
                    .mapToDouble(s -> s.oxidizerTankVolume() + s.fuelTankVolume())
                    .sum();
        }

        /** @return height of the stages one upon the other (m), fairing apart; zero if no vehicle closes */
        public double height() {
            return sizing.map(VehicleSizing::height).orElse(0.0);
        }

        /** @return mean density of the propellant as loaded (kg/m³) */
        public double bulkDensity() {
            double ratio = engine.mixtureRatio();
            return (1 + ratio)
                    / (ratio / engine.oxidizer().density() + 1 / engine.fuel().density());
        }

        /** @return largest structural coefficient among the stages (-); zero if no vehicle closes */
        public double structuralCoefficient() {
            return sizing.stream()
                    .flatMap(s -> s.stages().stream())
                    .mapToDouble(StageSizing::structuralCoefficient)
                    .max()
                    .orElse(0);
        }
    }

    /**
     * @param plan mission and stages; engine files in it are not used
     * @param candidates an engine each
     * @return a row per candidate, in the same order
     */
    public List<Row> rows(VehiclePlan plan, List<EnginePerformance> candidates) {
        List<Row> rows = new ArrayList<>();
        for (EnginePerformance engine : candidates) {
            try {
                rows.add(new Row(engine, Optional.of(sizer.size(plan, file -> engine)), ""));
            } catch (LimitReached none) {
                rows.add(new Row(engine, Optional.empty(), none.getMessage()));
            }
        }
        return rows;
    }
}
