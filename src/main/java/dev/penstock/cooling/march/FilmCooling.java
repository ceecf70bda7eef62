package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.Boiling;
import dev.penstock.cooling.coolant.CoolantModels;
import dev.penstock.cooling.coolant.SaturationLine;
import dev.penstock.cooling.design.FilmSource;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.gas.FilmDesign;
import dev.penstock.cooling.gas.GasSide;
import dev.penstock.cooling.gas.GasSideField;
import dev.penstock.cooling.gas.HatchPapell;
import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.cooling.gas.LiquidFilm;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import java.util.OptionalDouble;

/** Lowers the adiabatic wall temperature of a gas side downstream of a film's entry. */
final class FilmCooling {

    private static final double REFERENCE_WALL = 700;
    private static final double VAPOUR_ABOVE = 1.1;

    private FilmCooling() {}

    static GasSide apply(
            JacketGrid grid, JacketCase question, GasSideField bare, HotGasProfile.Film fuel, CoolantModels models) {
        FilmDesign film = question.design().gasSide().film();
        double flow = fuel.flow();
        int entry = entryCell(grid, film);
        Fluid fluid = fuel.fuel().fluid();
        double pressure = Math.min(grid.pressure[entry], fluid.range().maximumPressure());
        FluidState inlet = inlet(question, film, fuel.fuel(), pressure);
        double[] temperatures = new double[grid.cells];
        for (int c = 0; c < grid.cells; c++) {
            temperatures[c] = bare.adiabaticWallTemperature(c);
        }
        if (film.kind() == FilmDesign.Kind.GASEOUS) {
            gaseous(grid, bare, film, flow, entry, inlet, temperatures);
            return bare.withAdiabatic(temperatures);
        }
        liquid(grid, bare, film, flow, entry, inlet, Evaporation.of(fluid, inlet, models), temperatures);
        return bare.withAdiabatic(temperatures);
    }

    private static FluidState inlet(JacketCase question, FilmDesign film, Propellant fuel, double pressure) {
        if (film.temperature().isPresent()) {
            return fuel.fluid()
                    .atPressureTemperature(pressure, film.temperature().getAsDouble());
        }
        FilmSource coolant = question.film();
        boolean cools = fuel.id().equals(coolant.propellant().id());
        return fuel.fluid()
                .atPressureEnthalpy(
                        pressure,
                        cools ? coolant.enthalpy() : fuel.storageState().enthalpy());
    }

    /** Where a film enters behind the injector: logarithm of area ratio, negative upstream; no cell may straddle it. */
    static OptionalDouble joint(FilmDesign film) {
        if (film.areaRatio().isEmpty()) {
            return OptionalDouble.empty();
        }
        double distance = Math.log(film.areaRatio().getAsDouble());
        return OptionalDouble.of(film.upstream() ? -distance : distance);
    }

    private static int entryCell(JacketGrid grid, FilmDesign film) {
        OptionalDouble place = joint(film);
        if (place.isEmpty()) {
            return 0;
        }
        for (int c = 0; c < grid.cells; c++) {
            if (grid.place[c] >= place.getAsDouble()) {
                return c;
            }
        }
        return grid.cells - 1;
    }

    private static void gaseous(
            JacketGrid grid,
            GasSideField bare,
            FilmDesign film,
            double flow,
            int entry,
            FluidState inlet,
            double[] temperatures) {
        double slotArea = 2 * Math.PI * grid.radius[entry] * film.slotHeight();
        double filmVelocity = flow / (inlet.density() * slotArea);
        double diffusivity = inlet.conductivity() / (inlet.density() * inlet.isobaricHeatCapacity());
        double exchange = 0;
        for (int c = entry; c < grid.cells; c++) {
            double step = bare.coefficient(c, REFERENCE_WALL) * grid.area[c] / (flow * inlet.isobaricHeatCapacity());
            double group = film.slotHeight() * grid.velocity[entry] / diffusivity;
            double factor = HatchPapell.velocityFactor(grid.velocity[entry], filmVelocity);
            double effectiveness = HatchPapell.effectiveness(exchange + 0.5 * step, group, factor);
            exchange += step;
            temperatures[c] -= effectiveness * Math.max(0, temperatures[c] - inlet.temperature());
        }
    }

    private static void liquid(
            JacketGrid grid,
            GasSideField bare,
            FilmDesign film,
            double flow,
            int entry,
            FluidState inlet,
            Evaporation evaporation,
            double[] temperatures) {
        double kept = film.efficiency() * flow;
        double left = kept * Math.max(0, evaporation.enthalpy());
        double exchange = 0;
        for (int c = entry; c < grid.cells; c++) {
            double own = temperatures[c];
            double driving = Math.max(0, own - evaporation.temperature());
            double heat = (bare.coefficient(c, evaporation.temperature()) * driving + bare.radiation(c)) * grid.area[c];
            double wetted = heat > 0 ? Math.min(1, left / heat) : 1;
            left = Math.max(0, left - heat);
            double step = (1 - wetted)
                    * bare.coefficient(c, REFERENCE_WALL)
                    * grid.area[c]
                    / (kept * evaporation.vapourHeatCapacity());
            double vapour = LiquidFilm.vapourEffectiveness(exchange + 0.5 * step);
            exchange += step;
            temperatures[c] = own - driving * (wetted + (1 - wetted) * vapour);
        }
    }

    /**
     * What it takes to evaporate the film.
     *
     * @param temperature boiling or pseudo-critical temperature (K)
     * @param enthalpy from the inlet to the vapour (J/kg)
     * @param vapourHeatCapacity cp of the vapour (J/(kg·K))
     */
    private record Evaporation(double temperature, double enthalpy, double vapourHeatCapacity) {

        static Evaporation of(Fluid fluid, FluidState inlet, CoolantModels models) {
            double critical = fluid.criticalPressure().orElse(Double.POSITIVE_INFINITY);
            if (inlet.pressure() >= 0.999 * critical) {
                double middle = models.pseudoCritical(fluid).at(inlet.pressure());
                FluidState hot = fluid.atPressureTemperature(
                        inlet.pressure(),
                        Math.min(VAPOUR_ABOVE * middle, fluid.range().maximumTemperature()));
                return new Evaporation(middle, hot.enthalpy() - inlet.enthalpy(), hot.isobaricHeatCapacity());
            }
            SaturationLine line = models.saturation(fluid)
                    .orElseThrow(() -> new PropertyFailure(
                            fluid.id(), "p = " + inlet.pressure() + " Pa", "no boiling line for a liquid film"));
            double boiling = line.temperature(inlet.pressure());
            double liquid = line.liquidEnthalpy(inlet.pressure());
            if (line.hasVapour()) {
                return new Evaporation(
                        boiling,
                        line.vapourEnthalpy(inlet.pressure()) - inlet.enthalpy(),
                        line.blend(inlet.pressure(), 0, 1));
            }
            double latent = Boiling.latentHeat(line, fluid.molarMass(), inlet.pressure());
            double vapourHeat = 4 * dev.penstock.quantities.Constants.MOLAR_GAS_CONSTANT / fluid.molarMass();
            return new Evaporation(boiling, liquid + latent - inlet.enthalpy(), vapourHeat);
        }
    }
}
