package dev.penstock.chamber.loss;

import dev.penstock.chamber.contour.ChamberContour;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.GasProfile;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.chamber.flow.NozzleStation;
import dev.penstock.chamber.flow.Recombination;
import dev.penstock.chamber.flow.RecombinationTable;
import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.FrozenGas;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Loss because recombination stops on the way, by sudden freezing.
 * <pre>
 * equilibrium asks for   v |dσ/dx| = v (dσ/d ln p)(d ln p/dx),   σ = moles of gas per kilogram
 * collisions can give    forward three-body recombination rate at the equilibrium composition
 * freezing               where the ratio of the two, given over asked, falls through 0.2
 * loss                   1 − I_vac(equilibrium to the freezing point, frozen from there)/I_vac(shifting)
 * </pre>
 * Two-body reactions shuffle radicals quickly and leave σ alone, so σ measures what recombination has to do. Criterion:
 * [bray-1959]; rates: {@link Recombination}. A real flow goes on recombining for a while after the ratio falls through 1;
 * 0.2 makes the sudden freezing lose what one-dimensional finite-rate expansions with [gri-mech-3.0] lose, over nine
 * chambers from 0.5 kN to 7.8 MN: within 0.3 % of the impulse. Where the gas freezes ahead of the throat, freezing at the
 * throat is used and a warning says so. Expansions that are not shifting lose nothing more here.
 */
public final class KineticsLoss extends LossModel {

    public static final ModelCard CARD = new ModelCard(
            "chamber.kinetics",
            "Finite-rate recombination by sudden freezing",
            "freezing where the forward recombination rate falls to 0.2 v |dσ/dx| of the equilibrium flow",
            "H-C-N-O gas, freezing downstream of the throat",
            "0.3 % of the impulse",
            List.of("bray-1959", "gri-mech-3.0"));

    private static final double FREEZING = 0.2; // rate given over rate asked
    private static final int MOST_STEPS = 40;

    public KineticsLoss() {
        super(LossKind.KINETICS, CARD);
    }

    @Override
    public Result evaluate(LossCase chamber) {
        return ofSize(chamber).at(chamber.drawing());
    }

    /** What is asked goes as one over the size; what can be given is the gas's alone. */
    @Override
    public OfSize ofSize(LossCase chamber) {
        if (chamber.ideal().mode() != ExpansionMode.SHIFTING) {
            Result none = Result.nozzle(1, "the ideal expansion is not shifting");
            return drawing -> none;
        }
        RecombinationTable table = chamber.profile().recombination();
        ChamberContour contour = chamber.drawing().contour();
        double[] asked = new double[table.size()];
        for (int i = 1; i < asked.length; i++) {
            asked[i] = contour.throatRadius() * demand(chamber.profile(), table, contour, i);
        }
        return drawing -> loss(chamber, asked, drawing.contour().throatRadius());
    }

    /** @param asked rate asked for at each node, times the throat radius (mol·m/(kg·s)) */
    private static Result loss(LossCase chamber, double[] asked, double throatRadius) {
        RecombinationTable table = chamber.profile().recombination();
        // At the throat itself both sides of the demand vanish: the line through the next two nodes stands for it.
        double first = lnSupplyOverDemand(table, asked[1] / throatRadius, 1);
        double second = lnSupplyOverDemand(table, asked[2] / throatRadius, 2);
        double previous = first
                + (first - second)
                        * (table.lnPressure(0) - table.lnPressure(1))
                        / (table.lnPressure(1) - table.lnPressure(2));
        if (previous < 0) {
            return frozenFrom(chamber, Math.exp(table.lnPressure(0)), true);
        }
        for (int i = 1; i < table.size(); i++) {
            double ratio = lnSupplyOverDemand(table, asked[i] / throatRadius, i);
            if (ratio < 0) {
                double share = previous / (previous - ratio);
                double start = table.lnPressure(i - 1);
                double frozen = start + share * (table.lnPressure(i) - start);
                return frozenFrom(chamber, Math.exp(frozen), false);
            }
            previous = ratio;
        }
        return Result.nozzle(1, "equilibrium all the way");
    }

    /** Rate that the flow in equilibrium asks for at a node (mol/(kg·s)). */
    private static double demand(GasProfile profile, RecombinationTable table, ChamberContour contour, int i) {
        NozzleStation station = profile.atPressure(Math.exp(table.lnPressure(i)));
        double x = contour.divergentStation(station.areaRatio());
        double growth = 2 * contour.slopeAt(x) / contour.radiusAt(x); // d ln A/dx
        double perPressure = (1 / (station.mach() * station.mach()) - 1) / station.gamma(); // d ln A/d ln p
        return station.velocity() * Math.abs(table.molesSlope(i) * growth / perPressure);
    }

    private static double lnSupplyOverDemand(RecombinationTable table, double demand, int i) {
        // With nothing left to recombine the flow is frozen and in equilibrium at once: no loss.
        return demand < 1e-9 * table.rate(0) ? 50 : Math.log(table.rate(i) / demand / FREEZING);
    }

    private static Result frozenFrom(LossCase chamber, double pressure, boolean atThroat) {
        IdealExpansion ideal = chamber.ideal();
        EquilibriumSolver solver = chamber.solver();
        solver.setMixture(chamber.injection().mixed());
        solver.startFrom(chamber.near().freezing());
        solver.setPressureEntropy(pressure, ideal.chamber().entropy());
        solver.keep(chamber.near().freezing());
        FrozenGas gas = solver.freeze();
        double temperature = gas.temperature();
        double impulse = frozenImpulse(gas, ideal, chamber.near());
        GasProfile profile = chamber.profile();
        Optional<Warning> warning = atThroat
                ? Optional.of(
                        new Warning(
                                CARD.id(),
                                "recombination cannot keep up even at the throat; the composition of the throat is kept and the loss may be larger"))
                : Optional.empty();
        return Result.nozzle(
                Math.min(1, impulse / ideal.vacuumImpulse()),
                () -> String.format(
                        Locale.ROOT,
                        "composition freezes at area ratio %.3g, %.0f K",
                        Math.max(1, profile.atPressure(pressure).areaRatio()),
                        temperature),
                warning);
    }

    /** Vacuum impulse at the exit's area with the gas as it is now (m/s). */
    private static double frozenImpulse(FrozenGas gas, IdealExpansion ideal, NearLosses near) {
        double entropy = gas.entropy();
        double total = ideal.chamber().enthalpy();
        double wanted = ideal.throat().massFlux() / ideal.areaRatio();
        double lnP = Math.log(Math.min(ideal.exit().pressure(), gas.pressure()));
        if (near.frozenPressure() > 0) {
            lnP = Math.log(near.frozenPressure());
            gas.setPressureTemperature(near.frozenPressure(), near.frozenTemperature());
        }
        for (int i = 0; i < MOST_STEPS; i++) {
            double p = Math.exp(lnP);
            gas.setPressureEntropy(p, entropy);
            double v = Math.sqrt(2 * (total - gas.enthalpy()));
            double rho = gas.density();
            double residual = Math.log(rho * v / wanted);
            double slope = 1 / gas.isentropicExponent() - p / (rho * v * v);
            double step = residual / slope;
            if (Math.abs(step) < 1e-11) {
                near.foundFrozenExit(p, gas.temperature());
                return v + p / (rho * v);
            }
            lnP -= Math.max(-1, Math.min(1, step));
        }
        throw new NotConverged("exit of a suddenly frozen expansion", MOST_STEPS, Double.NaN, "at " + lnP);
    }
}
