package dev.penstock.chamber.loss;

import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.flow.NearExpansion;
import dev.penstock.chamber.flow.NozzleGas;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Impulse lost because the gas along the wall burns at another mixture ratio than the core, by stream tubes that share the
 * pressure but do not mix in the nozzle ({@link StreamTubes}).
 * <pre>c*  = Σ w c*_i,   I_vac = Σ w I_vac,i     (w mass fractions, one area ratio)</pre>
 * Source: stream-tube method of [cpia-246]; the share of gas drawn into the film is an assumption (entrained mass equal
 * to the film's own), so the loss to a film is good to about half of itself. Against [nasa-tp-2862]: an outer ring with 26 to 30 %
 * of the fuel and 13 to 17 % of the oxygen cost 3.3 to 4.5 % of c*. With neither film nor outer zone there is no loss; when the
 * sides of the injection are not known none can be modelled and a warning says so.
 */
public final class FilmCoolingLoss extends LossModel {

    public static final ModelCard CARD = new ModelCard(
            "chamber.film_cooling",
            "Film and outer zone by stream tubes",
            "c* = Σ w c*_i; I_vac = Σ w I_vac,i",
            "film of fuel up to half of the fuel; outer zone up to 0.6 of the flow",
            "half of the loss",
            List.of("cpia-246", "nasa-tp-2862"));

    public FilmCoolingLoss() {
        super(LossKind.FILM_COOLING, CARD);
    }

    @Override
    public Result evaluate(LossCase chamber) {
        CombustorDesign combustor = chamber.design().combustor();
        if (!combustor.shieldsWall()) {
            return Result.combustor(1, "no film");
        }
        Optional<StreamTubes> parted = StreamTubes.of(combustor, chamber.injection());
        if (parted.isEmpty()) {
            return new Result(
                    1,
                    1,
                    "film not modelled",
                    Optional.of(
                            new Warning(
                                    CARD.id(),
                                    "the loss to the film is not taken and the wall gets none: which part is fuel is not known")));
        }
        StreamTubes tubes = parted.get();
        double[] sums = new double[2];
        add(
                sums,
                tubes.coreShare(),
                expand(chamber, tubes.core(), chamber.near().core()));
        List<Supplier<String>> notes = new ArrayList<>();
        tubes.outer().ifPresent(reactants -> {
            NozzleGas.Impulse flow = expand(chamber, reactants, chamber.near().outer());
            add(sums, tubes.outerShare(), flow);
            notes.add(() -> note("outer zone", tubes.outerShare(), flow));
        });
        tubes.film().ifPresent(reactants -> {
            NozzleGas.Impulse flow = expand(chamber, reactants, chamber.near().film());
            add(sums, tubes.filmShare(), flow);
            notes.add(() ->
                    String.format(Locale.ROOT, "%.1f %% of the fuel as film", 100 * combustor.filmFuelFraction()));
            notes.add(() -> note("wall zone", tubes.filmShare(), flow));
        });
        return new Result(
                sums[0] / chamber.ideal().vacuumImpulse(),
                sums[1] / chamber.ideal().characteristicVelocity(),
                () -> notes.stream().map(Supplier::get).collect(Collectors.joining("; ")),
                Optional.empty());
    }

    private static void add(double[] sums, double share, NozzleGas.Impulse flow) {
        sums[0] += share * flow.vacuumImpulse();
        sums[1] += share * flow.characteristicVelocity();
    }

    private static String note(String tube, double share, NozzleGas.Impulse flow) {
        return String.format(
                Locale.ROOT, "%s %.1f %% of the flow at %.0f K", tube, 100 * share, flow.chamberTemperature());
    }

    private static NozzleGas.Impulse expand(LossCase chamber, Reactants reactants, NearExpansion near) {
        return NozzleGas.impulse(
                chamber.solver(),
                reactants,
                chamber.design().chamberPressure(),
                chamber.design().expansion(),
                chamber.ideal().areaRatio(),
                near);
    }
}
