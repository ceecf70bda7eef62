package dev.penstock.cycles.reading;

import dev.penstock.fluids.Propellant;
import dev.penstock.input.FileDefaults;
import dev.penstock.input.Input;
import dev.penstock.input.Usual;
import dev.penstock.provenance.Spread;
import dev.penstock.turbomachinery.mass.MassPart;
import dev.penstock.turbomachinery.pump.PumpInputs;
import dev.penstock.turbomachinery.turbine.TurbineInputs;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The defaults of a concept that follow from its {@link Technology}; each says so. */
final class TechnologyDefaults implements FileDefaults {

    /** Limits that a later technology raises, each inside the range that its own source gives. */
    private static final Set<Input<?>> RAISED = Set.of(
            PumpInputs.INDUCER_TIP_SPEED_LIMIT,
            PumpInputs.BEARING_SPEED_LIMIT,
            TurbineInputs.PITCH_LINE_SPEED_LIMIT,
            TurbineInputs.ANNULUS_SPEED_LIMIT);

    /** Hottest generator gas of the table of technology, with blades of the 1960s, rounded up (K). */
    private static final double HOTTEST_FLOWN = 1185;

    /** Margins that a later technology lowers. */
    private static final Set<Input<?>> LOWERED = Set.of(PumpInputs.SUCTION_MARGIN, PumpInputs.SMALLEST_SHAFT_DIAMETER);

    private static final Set<Input<?>> MASSES =
            MassPart.parts().stream().map(MassPart::factor).collect(Collectors.toSet());

    /** A fuel that is stored below this temperature is cold (K). */
    private static final double COLD = 120;

    private final Technology level;
    private final boolean coldFuel;
    private final boolean soots;

    private TechnologyDefaults(Technology level, Propellant fuel) {
        this.level = level;
        this.coldFuel = fuel.storageTemperature() < COLD;
        this.soots = fuel.combustion().soot();
    }

    static FileDefaults of(Technology level, Propellant fuel) {
        return level == Technology.UNSTATED ? FileDefaults.NONE : new TechnologyDefaults(level, fuel);
    }

    @Override
    @SuppressWarnings("unchecked")
    public <T> Optional<Usual<T>> of(Input<T> input, Optional<Usual<T>> otherwise) {
        Optional<Usual<T>> own = level.own(input, coldFuel, soots);
        if (own.isPresent()) {
            return own.map(usual -> usual.because(reason(usual.reason())).following(ConceptInputs.TECHNOLOGY.key()));
        }
        if (input == TurbineInputs.INLET_TEMPERATURE_LIMIT && fuelRich(otherwise)) {
            return Optional.of((Usual<T>) Usual.between(1000, HOTTEST_FLOWN, 1250, "")
                    .because(reason("1181 K flew in blades of the 1960s"))
                    .following(ConceptInputs.TECHNOLOGY.key()));
        }
        double place = RAISED.contains(input)
                ? level.speeds()
                : LOWERED.contains(input) ? -level.speeds() : MASSES.contains(input) ? level.masses() : 0;
        return place == 0 ? otherwise : otherwise.map(usual -> moved(usual, place));
    }

    /** Whether a limit of a turbine is the usual one for fuel-rich gas, not that for oxygen or one that the file states. */
    private static boolean fuelRich(Optional<? extends Usual<?>> limit) {
        return limit.filter(u ->
                        u.value().equals(TurbineInputs.inletTemperature(false).value())
                                && u.follows().isEmpty())
                .isPresent();
    }

    private String reason(String why) {
        return ConceptInputs.TECHNOLOGY.key() + " " + level.word() + ": " + why;
    }

    /** Half-way, say, from the most likely value to an end of its range, which stays the range. */
    @SuppressWarnings("unchecked")
    private <T> Usual<T> moved(Usual<T> usual, double place) {
        if (usual.spread().isEmpty() || !(usual.value() instanceof Double)) {
            return usual;
        }
        Spread range = usual.spread().get();
        double mode = range.mode() + Math.abs(place) * ((place > 0 ? range.high() : range.low()) - range.mode());
        String why = String.format(
                java.util.Locale.ROOT,
                "%.0f %% of the way to the %s end of the range",
                100 * Math.abs(place),
                place > 0 ? "upper" : "lower");
        Usual<Double> moved = Usual.of(new Spread(range.low(), mode, range.high()), reason(why), usual.source());
        return (Usual<T>) new Usual<>(
                moved.value(), moved.spread(), moved.reason(), moved.source(), List.of(ConceptInputs.TECHNOLOGY.key()));
    }
}
