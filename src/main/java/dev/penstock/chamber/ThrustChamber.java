package dev.penstock.chamber;

import dev.penstock.chamber.contour.ContourBuilder;
import dev.penstock.chamber.design.AltitudeCompensation;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.flow.Expansion;
import dev.penstock.chamber.flow.GasProfile;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.chamber.loss.BoundaryLayerLoss;
import dev.penstock.chamber.loss.DivergenceLoss;
import dev.penstock.chamber.loss.EnergyReleaseLoss;
import dev.penstock.chamber.loss.FilmCoolingLoss;
import dev.penstock.chamber.loss.KineticsLoss;
import dev.penstock.chamber.loss.LossAccount;
import dev.penstock.chamber.loss.LossCase;
import dev.penstock.chamber.loss.LossModel;
import dev.penstock.chamber.loss.NearLosses;
import dev.penstock.chamber.loss.StreamTubes;
import dev.penstock.chamber.loss.TwoPhaseLoss;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.quantities.Constants;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Sizes a thrust chamber for a thrust or a throat, and takes the named losses off its ideal performance. The
 * losses depend weakly on size, so the throat is found by repeated substitution, from the second pass on along the line through the
 * last two. Not thread-safe, like the solver inside.
 */
public final class ThrustChamber {

    private static final int MOST_PASSES = 30;
    private static final double TOLERANCE = 1e-11;
    private static final double WEAKLY = 0.5;

    private final NozzleFlow nozzle;
    private final List<LossModel> models;

    /** @param nozzle ideal nozzle flow */
    public ThrustChamber(NozzleFlow nozzle) {
        this.nozzle = nozzle;
        this.models = List.of(
                new EnergyReleaseLoss(),
                new FilmCoolingLoss(),
                new KineticsLoss(),
                new DivergenceLoss(),
                new BoundaryLayerLoss(),
                new TwoPhaseLoss());
    }

    /**
     * @param design chamber
     * @param injection what is injected, with the fuel side known
     * @param thrust delivered thrust in vacuum (N)
     * @return the chamber of that thrust
     */
    public ChamberPerformance forVacuumThrust(ChamberDesign design, Injection injection, double thrust) {
        return forVacuumThrust(design, injection, thrust, new NearChamber());
    }

    /**
     * As above, from a chamber that is nearly the same.
     *
     * @param design chamber
     * @param injection what is injected, with the fuel side known
     * @param thrust delivered thrust in vacuum (N)
     * @param near where to start; moves along
     * @return the chamber of that thrust
     */
    public ChamberPerformance forVacuumThrust(
            ChamberDesign design, Injection injection, double thrust, NearChamber near) {
        Require.positive("thrust chamber", "vacuum thrust (N)", thrust);
        return size(design, injection, losses -> thrust / losses.vacuumThrustPerArea(), near);
    }

    /**
     * @param design chamber
     * @param injection what is injected, with the fuel side known
     * @param throatArea throat area (m²)
     * @return the chamber with that throat
     */
    public ChamberPerformance forThroatArea(ChamberDesign design, Injection injection, double throatArea) {
        return forThroatArea(design, injection, throatArea, new NearChamber());
    }

    /**
     * As above, from a chamber that is nearly the same.
     *
     * @param design chamber
     * @param injection what is injected, with the fuel side known
     * @param throatArea throat area (m²)
     * @param near where to start; moves along
     * @return the chamber with that throat
     */
    public ChamberPerformance forThroatArea(
            ChamberDesign design, Injection injection, double throatArea, NearChamber near) {
        Require.positive("thrust chamber", "throat area (m²)", throatArea);
        return size(design, injection, losses -> throatArea, near);
    }

    /**
     * @param design chamber
     * @param reactants mixture with its enthalpy as injected
     * @param areaRatio exit over throat area (-)
     * @return impulse in vacuum of that mixture in such a chamber without any loss (m/s)
     */
    public double idealImpulse(ChamberDesign design, Reactants reactants, double areaRatio) {
        return nozzle.toAreaRatio(reactants, design.chamberPressure(), areaRatio, design.expansion())
                .vacuumImpulse();
    }

    /** @return equilibria that were solved so far */
    public int equilibria() {
        return nozzle.solver().solutions();
    }

    private interface AreaRule {
        double throatArea(LossAccount losses);
    }

    private ChamberPerformance size(ChamberDesign design, Injection injection, AreaRule rule, NearChamber near) {
        Expansion expansion =
                nozzle.expand(injection.mixed(), design.chamberPressure(), design.expansion(), near.gas());
        OptionalDouble areaRatio = design.nozzle().areaRatio();
        IdealExpansion ideal = areaRatio.isPresent()
                ? expansion.toAreaRatio(areaRatio.getAsDouble())
                : expansion.toExitPressure(design.nozzle().exitPressure().getAsDouble());
        AltitudeCompensation compensation = design.nozzle().compensation();
        if (compensation.inTwo()) {
            Require.within("nozzle", "inner area ratio (-)", compensation.innerAreaRatio(), 1, ideal.areaRatio());
        }
        GasProfile profile = expansion.profile(ideal);

        Map<LossKind, LossModel.OfSize> overSize = new EnumMap<>(LossKind.class);
        double area = near.throatArea().orElseGet(() -> rule.throatArea(new LossAccount(ideal)));
        double lastArea = 0;
        double lastNext = 0;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            ContourBuilder.Drawing drawing = ContourBuilder.draw(
                    design.combustor(), design.nozzle(), ideal.areaRatio(), Math.sqrt(area / Math.PI));
            LossAccount losses = account(
                    new LossCase(design, injection, ideal, profile, drawing, nozzle.solver(), near.losses()), overSize);
            double next = rule.throatArea(losses);
            if (Math.abs(next - area) <= TOLERANCE * area) {
                near.foundThroatArea(next);
                WallStream wall = wallStream(design, injection, ideal, losses, near.losses());
                return assemble(design, ideal, profile, drawing, losses, next, wall);
            }
            double slope = pass > 0 ? (next - lastNext) / (area - lastArea) : near.slope();
            near.foundSlope(slope);
            lastArea = area;
            lastNext = next;
            // where the losses do not depend weakly on size, plain substitution
            area = Math.abs(slope) < WEAKLY ? area + (next - area) / (1 - slope) : next;
        }
        throw new NotConverged("throat area", MOST_PASSES, Double.NaN, "last at " + area + " m²");
    }

    private WallStream wallStream(
            ChamberDesign design, Injection injection, IdealExpansion ideal, LossAccount losses, NearLosses near) {
        return StreamTubes.of(design.combustor(), injection)
                .map(tubes -> new WallStream(
                        design.combustor().filmFuelFraction() * injection.fuelFraction(),
                        tubes.outer().map(row -> outer(design, row, ideal.areaRatio(), near)),
                        losses.filmFactor()))
                .orElseGet(() -> new WallStream(0, Optional.empty(), losses.filmFactor()));
    }

    private WallStream.Outer outer(ChamberDesign design, Reactants row, double areaRatio, NearLosses near) {
        IdealExpansion flow = nozzle.expand(row, design.chamberPressure(), design.expansion(), near.outer())
                .toAreaRatio(areaRatio);
        return new WallStream.Outer(
                flow.chamber(),
                flow.characteristicVelocity(),
                design.combustor().outerZone().orElseThrow().mixtureRatioBias());
    }

    /** Takes off every loss; what does not depend on size is worked out once and kept in the map. */
    private LossAccount account(LossCase chamber, Map<LossKind, LossModel.OfSize> overSize) {
        LossAccount account = new LossAccount(chamber.ideal());
        for (LossModel model : models) {
            OptionalDouble stated = chamber.design().efficiencies().of(model.kind());
            LossModel.OfSize loss = overSize.computeIfAbsent(model.kind(), kind -> lost(model, stated, chamber));
            account.takeOff(
                    model.kind(),
                    loss.at(chamber.drawing()),
                    stated.isPresent() ? Optional.empty() : Optional.of(model.card()));
        }
        return account;
    }

    private static LossModel.OfSize lost(LossModel model, OptionalDouble stated, LossCase chamber) {
        if (stated.isEmpty()) {
            return model.ofSize(chamber);
        }
        LossModel.Result same = stated(model.kind(), model.partFlow(chamber) * stated.getAsDouble());
        return drawing -> same;
    }

    private static LossModel.Result stated(LossKind kind, double efficiency) {
        String note = "stated by the concept";
        return kind.onCharacteristicVelocity()
                ? LossModel.Result.combustor(efficiency, note)
                : LossModel.Result.nozzle(efficiency, note);
    }

    private static ChamberPerformance assemble(
            ChamberDesign design,
            IdealExpansion ideal,
            GasProfile profile,
            ContourBuilder.Drawing drawing,
            LossAccount losses,
            double throatArea,
            WallStream wallStream) {
        double massFlow = design.chamberPressure() * throatArea / losses.characteristicVelocity();
        List<Warning> warnings = new ArrayList<>(ideal.chamber().warnings());
        warnings.addAll(drawing.warnings());
        warnings.addAll(losses.warnings());
        AltitudeCompensation compensation = design.nozzle().compensation();
        compensation.doubt().ifPresent(doubt -> warnings.add(new Warning(AltitudeCompensation.CARD.id(), doubt)));
        ChamberPerformance performance = new ChamberPerformance(
                design,
                ideal,
                profile,
                losses.losses(),
                losses.characteristicVelocity(),
                losses.vacuumImpulse(),
                throatArea,
                throatArea * ideal.areaRatio(),
                massFlow,
                massFlow * losses.vacuumImpulse(),
                drawing.contour(),
                wallStream,
                warnings);
        if (profile.throat().pressure() > Constants.STANDARD_ATMOSPHERE) {
            Optional<Warning> separation = performance.separationWarning(Constants.STANDARD_ATMOSPHERE);
            if (separation.isPresent()) {
                warnings.add(separation.get());
                return performance.withWarnings(warnings);
            }
        }
        return performance;
    }
}
