package dev.penstock.cooling.jacket;

import dev.penstock.cooling.coolant.CoolantModels;
import dev.penstock.cooling.design.ExhaustFilm;
import dev.penstock.cooling.design.ExtensionKind;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.gas.GasSide;
import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.cooling.gas.LiquidFilm;
import dev.penstock.cooling.march.GasSides;
import dev.penstock.cooling.march.JacketGrid;
import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Equilibrium of a thin uncooled wall that radiates to the outside, under a film of turbine gas where that is led in.
 * <pre>
 * h_g(T)(T_aw − T) + q_rad = ε σ T⁴
 * under a film: T_aw − η (T_aw − T_f) for T_aw, η = exp[−∫h_g dA/(ṁ_f cp_f)] from where it enters
 * </pre>
 * The film is that of a gas which mixes without a fitted factor ({@link LiquidFilm#vapourEffectiveness}).
 * Radiation back through the exit, conduction along the wall and heat from surroundings are left out; the first makes the
 * wall cooler, the last hotter. Common practice, no source.
 */
public final class RadiationSkirt {

    public static final ModelCard CARD = new ModelCard(
            "cooling.radiation-skirt",
            "Radiating nozzle extension",
            "h_g (T_aw - T) + q_rad = eps sigma T^4; T_aw less exp[-int h dA/(m cp)] (T_aw - T_f) under turbine gas",
            "thin wall facing space; turbine gas led in evenly around the nozzle",
            "±10 % in temperature (own judgement)",
            List.of("common practice, no source"));

    private static final int CELLS = 240;

    private RadiationSkirt() {}

    /**
     * @param flux heat flux into the wall, whatever its temperature (W/m²)
     * @param emissivity emissivity (-)
     * @return temperature at which the wall radiates it (K)
     */
    public static double equilibrium(double flux, double emissivity) {
        return Math.sqrt(Math.sqrt(flux / (emissivity * Constants.STEFAN_BOLTZMANN)));
    }

    /** The part of the nozzle beyond the jacket; empty if the jacket reaches the exit. */
    static Optional<ExtensionResult> beyond(
            JacketCase question, ExtensionKind kind, double endAreaRatio, WallMaterial material, CoolantModels models) {
        HotGasProfile profile = question.gas();
        double exit =
                profile.areaRatio(profile.stations().get(profile.stations().size() - 1));
        if (endAreaRatio >= exit * (1 - 1e-6)) {
            return Optional.empty();
        }
        List<Double> joints = new ArrayList<>(List.of(Math.log(endAreaRatio)));
        question.exhaust().ifPresent(film -> joints.add(Math.log(film.areaRatio())));
        JacketGrid grid = new JacketGrid(profile, exit, joints, CELLS);
        GasSide bare = GasSides.of(grid, question, models);
        double[] effectiveness = effectiveness(question, kind, grid, bare);
        double start = 0;
        double last = 0;
        double heat = 0;
        double area = 0;
        for (int c = 0; c < grid.cells; c++) {
            if (grid.x[c] <= 0 || grid.areaRatio[c] < endAreaRatio) {
                continue;
            }
            last = temperature(bare, c, adiabatic(question, bare, effectiveness, c), material.emissivity());
            start = start == 0 ? last : start;
            heat += material.emissivity() * Constants.STEFAN_BOLTZMANN * Math.pow(last, 4) * grid.area[c];
            area += grid.area[c];
        }
        return start == 0
                ? Optional.empty()
                : Optional.of(new ExtensionResult(kind, material.id(), endAreaRatio, start, last, heat, area));
    }

    /** Effectiveness of the turbine gas along the wall; zero where there is none. */
    private static double[] effectiveness(JacketCase question, ExtensionKind kind, JacketGrid grid, GasSide gas) {
        double[] effectiveness = new double[grid.cells];
        if (kind != ExtensionKind.FILM_COOLED || question.exhaust().isEmpty()) {
            return effectiveness;
        }
        ExhaustFilm film = question.exhaust().get();
        double exchange = 0;
        for (int c = 0; c < grid.cells; c++) {
            if (grid.x[c] > 0 && grid.areaRatio[c] >= film.areaRatio()) {
                double step =
                        gas.coefficient(c, film.temperature()) * grid.area[c] / (film.massFlow() * film.heatCapacity());
                effectiveness[c] = LiquidFilm.vapourEffectiveness(exchange + 0.5 * step);
                exchange += step;
            }
        }
        return effectiveness;
    }

    private static double adiabatic(JacketCase question, GasSide gas, double[] effectiveness, int cell) {
        double own = gas.adiabaticWallTemperature(cell);
        double film = question.exhaust().map(ExhaustFilm::temperature).orElse(own);
        return own - effectiveness[cell] * Math.max(0, own - film);
    }

    private static double temperature(GasSide gas, int cell, double adiabatic, double emissivity) {
        double high = adiabatic + gas.radiation(cell) / gas.coefficient(cell, adiabatic) + 1;
        return RootFinder.between(
                        "temperature of the nozzle extension",
                        t -> gas.coefficient(cell, t) * (adiabatic - t)
                                + gas.radiation(cell)
                                - emissivity * Constants.STEFAN_BOLTZMANN * Math.pow(t, 4),
                        1,
                        high,
                        1e-10)
                .value();
    }
}
