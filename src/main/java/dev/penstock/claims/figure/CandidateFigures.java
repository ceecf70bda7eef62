package dev.penstock.claims.figure;

import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Notation;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.OptionalDouble;

/** Figures that are asked of a candidate beside those that its engine and its vehicle publish. */
public final class CandidateFigures {

    private static final FigureTable<Candidate> ENGINE = FigureTable.<Candidate>ofOne()
            .number(
                    "impulse_efficiency",
                    "specific impulse over that of the ideal chamber",
                    Notation.significant("", 4),
                    c -> c.balance().engine().vacuumIsp()
                            * Constants.STANDARD_GRAVITY
                            / c.balance().chamber().ideal().vacuumImpulse())
            .table();

    private static final FigureTable<Candidate> VEHICLE = FigureTable.<Candidate>ofOne()
            .optional(
                    "liftoff_acceleration_m_s2",
                    "acceleration at lift-off",
                    Notation.significant("m/s²", 4),
                    c -> first(c, s -> (s.thrustToWeight() - 1) * Constants.STANDARD_GRAVITY))
            .optional(
                    "height_m",
                    "height of all stages",
                    Notation.significant("m", 4),
                    c -> all(c, s -> s.contents().length()))
            .optional(
                    "tank_volume_m3",
                    "volume of all tanks",
                    Notation.significant("m³", 4),
                    c -> all(c, CandidateFigures::tanks))
            .table();

    private static final FigureTable<Candidate> BODY = FigureTable.<Candidate>ofOne()
            .optional("volume_m3", "volume of the body", Notation.significant("m³", 4), c -> c.body()
                    .map(b -> OptionalDouble.of(b.volume()))
                    .orElse(OptionalDouble.empty()))
            .optional("filling", "volume of all tanks over that of the body", Notation.significant("", 4), c -> {
                OptionalDouble volume = all(c, CandidateFigures::tanks);
                return c.body().isPresent() && volume.isPresent()
                        ? OptionalDouble.of(
                                volume.getAsDouble() / c.body().get().volume())
                        : OptionalDouble.empty();
            })
            .table();

    /** All of them. */
    public static final FigureTable<Candidate> ALL = FigureTable.<Candidate>ofOne()
            .part("engine", java.util.Optional::of, ENGINE)
            .part("vehicle", java.util.Optional::of, VEHICLE)
            .part("body", java.util.Optional::of, BODY)
            .table();

    private CandidateFigures() {}

    private static double tanks(StageSizing stage) {
        return stage.oxidizerTankVolume() + stage.fuelTankVolume();
    }

    private static OptionalDouble first(Candidate c, java.util.function.ToDoubleFunction<StageSizing> of) {
        return c.vehicle()
                .map(v -> OptionalDouble.of(of.applyAsDouble(v.stages().get(0))))
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble all(Candidate c, java.util.function.ToDoubleFunction<StageSizing> of) {
        return c.vehicle()
                .map(VehicleSizing::stages)
                .map(stages -> OptionalDouble.of(stages.stream().mapToDouble(of).sum()))
                .orElse(OptionalDouble.empty());
    }
}
