package dev.penstock.chamber;

import dev.penstock.chamber.contour.BellTable;
import dev.penstock.chamber.contour.ChamberContour;
import dev.penstock.chamber.contour.TruncatedIdeal;
import dev.penstock.chamber.design.AltitudeCompensation;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.design.NozzleDesign;
import dev.penstock.chamber.flow.GasProfile;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.chamber.flow.NozzleStation;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a thrust chamber delivers: the ideal expansion less every loss by name.
 * <pre>
 * c*_delivered = c*_ideal · Π factors on c*;  C_F delivered = C_F ideal · Π factors on C_F;  ṁ = p_c A_t / c*_delivered
 * F(p_a) = F_vac − p_a A_e                                while the flow fills the nozzle
 * F(p_a) = F_vac(ε_s) − p_a ε_s A_t                       separated at the area ratio ε_s, ambient pressure beyond it
 * </pre>
 *
 * @param design what was asked for
 * @param ideal loss-free expansion
 * @param profile ideal gas states along the nozzle
 * @param losses losses in the order in which they are taken off; their factors multiply to delivered over ideal impulse
 * @param characteristicVelocity delivered c* (m/s)
 * @param vacuumImpulse delivered effective exhaust velocity in vacuum (m/s)
 * @param throatArea throat area (m²)
 * @param exitArea exit area (m²)
 * @param massFlow mass flow (kg/s)
 * @param vacuumThrust delivered thrust in vacuum (N)
 * @param contour inner wall
 * @param wallStream film and outer zone along the wall
 * @param warnings what the reader must know
 */
public record ChamberPerformance(
        ChamberDesign design,
        IdealExpansion ideal,
        GasProfile profile,
        List<NamedLoss> losses,
        double characteristicVelocity,
        double vacuumImpulse,
        double throatArea,
        double exitArea,
        double massFlow,
        double vacuumThrust,
        ChamberContour contour,
        WallStream wallStream,
        List<Warning> warnings) {

    private static final String MODEL = "thrust chamber";

    public ChamberPerformance {
        losses = List.copyOf(losses);
        warnings = List.copyOf(warnings);
        Require.positive(MODEL, "characteristic velocity (m/s)", characteristicVelocity);
        Require.positive(MODEL, "vacuum impulse (m/s)", vacuumImpulse);
        Require.positive(MODEL, "throat area (m²)", throatArea);
        Require.positive(MODEL, "exit area (m²)", exitArea);
        Require.positive(MODEL, "mass flow (kg/s)", massFlow);
        Require.positive(MODEL, "vacuum thrust (N)", vacuumThrust);
    }

    /** @return exit area over throat area (-) */
    public double areaRatio() {
        return ideal.areaRatio();
    }

    /** @return delivered over ideal characteristic velocity (-) */
    public double combustionEfficiency() {
        return characteristicVelocity / ideal.characteristicVelocity();
    }

    /** @return delivered over ideal vacuum thrust coefficient (-) */
    public double nozzleEfficiency() {
        return vacuumThrustCoefficient() / ideal.vacuumThrustCoefficient();
    }

    /**
     * @param kind which loss
     * @return that loss; empty if the chamber has none of the kind
     */
    public Optional<NamedLoss> loss(LossKind kind) {
        return losses.stream()
                .filter(loss -> loss.kind().filter(kind::equals).isPresent())
                .findFirst();
    }

    /** @return delivered vacuum thrust coefficient (-) */
    public double vacuumThrustCoefficient() {
        return vacuumImpulse / characteristicVelocity;
    }

    /** @return delivered specific impulse in vacuum (s) */
    public double vacuumSpecificImpulse() {
        return vacuumImpulse / Constants.STANDARD_GRAVITY;
    }

    /** @return delivered specific impulse at one standard atmosphere (s), separated if the criterion says so */
    public double seaLevelSpecificImpulse() {
        return impulseAt(Constants.STANDARD_ATMOSPHERE) / Constants.STANDARD_GRAVITY;
    }

    /**
     * Area ratio at which the flow leaves the wall, by the design's criterion; that of the inflection where it would leave the
     * extension of a dual bell. A plug has no wall to leave, an extendible nozzle is short where it would. Pressure and Mach number of the criterion are
     * those at the wall: the one-dimensional pressure times {@link #exitWallPressureRatio}.
     *
     * @param ambientPressure ambient pressure (Pa)
     * @return that area ratio (-); empty if the flow fills the nozzle
     * @throws OutsideValidity if the ambient pressure is so high that the throat would not be sonic
     */
    public OptionalDouble separationAreaRatio(double ambientPressure) {
        OptionalDouble bell = bellSeparation(ambientPressure);
        return switch (design.nozzle().compensation().kind()) {
            case NONE, STOWED -> bell;
            case PLUG -> OptionalDouble.empty();
            case DUAL_BELL -> {
                double inner = inner(bell);
                boolean below = profile.at(inner, true).pressure() < ambientPressure;
                yield bell.isPresent() && below ? OptionalDouble.of(inner) : bell;
            }
            case EXTENDIBLE -> {
                double inner = inner(bell);
                yield inner < design.nozzle().compensation().innerAreaRatio()
                        ? OptionalDouble.of(inner)
                        : OptionalDouble.empty();
            }
        };
    }

    /** Where the flow would leave a bell in one piece of the same area ratio (-). */
    private OptionalDouble bellSeparation(double ambientPressure) {
        Require.notNegative(MODEL, "ambient pressure (Pa)", ambientPressure);
        NozzleStation throat = profile.throat();
        if (ambientPressure >= throat.pressure()) {
            throw new OutsideValidity(
                    MODEL,
                    "ambient pressure (Pa)",
                    ambientPressure,
                    String.format(Locale.ROOT, "below the throat pressure of %.6g Pa", throat.pressure()));
        }
        double wallRatio = exitWallPressureRatio();
        if (margin(profile.exit(), wallRatio, ambientPressure) >= 0) {
            return OptionalDouble.empty();
        }
        double lnEps = RootFinder.between(
                        "separation point",
                        s -> margin(profile.at(Math.exp(s), true), wallRatio, ambientPressure),
                        0,
                        Math.log(profile.exit().areaRatio()),
                        1e-10)
                .value();
        return OptionalDouble.of(Math.exp(lnEps));
    }

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return delivered thrust (N)
     * @throws OutsideValidity if the ambient pressure is so high that the throat would not be sonic
     */
    public double thrustAt(double ambientPressure) {
        return switch (design.nozzle().compensation().kind()) {
            case PLUG -> new PlugNozzle(this).thrustAt(ambientPressure);
            case EXTENDIBLE -> {
                OptionalDouble bell = bellSeparation(ambientPressure);
                yield Math.max(filled(bell, ambientPressure), filled(OptionalDouble.of(inner(bell)), ambientPressure));
            }
            case NONE, STOWED, DUAL_BELL -> filled(separationAreaRatio(ambientPressure), ambientPressure);
        };
    }

    /** @return what the thrust over ambient pressure is made with */
    public ModelCard altitudeCard() {
        return switch (design.nozzle().compensation().kind()) {
            case NONE, STOWED -> design.nozzle().separation().card();
            case PLUG -> PlugNozzle.CARD;
            case DUAL_BELL, EXTENDIBLE -> AltitudeCompensation.CARD;
        };
    }

    /** Thrust with the flow on the wall up to an area ratio; up to the exit where none is given. */
    private double filled(OptionalDouble upTo, double ambientPressure) {
        if (upTo.isEmpty()) {
            return vacuumThrust - ambientPressure * exitArea;
        }
        double ratio = upTo.getAsDouble();
        double kept = profile.at(ratio, true).vacuumImpulse() / ideal.vacuumImpulse();
        return vacuumThrust * kept - ambientPressure * ratio * throatArea;
    }

    /** Where the flow ends on the inner part of a nozzle in two (-): at its end, or where it parts before that. */
    private double inner(OptionalDouble separated) {
        return Math.min(design.nozzle().compensation().innerAreaRatio(), separated.orElse(Double.POSITIVE_INFINITY));
    }

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return delivered effective exhaust velocity (m/s)
     * @throws OutsideValidity if the ambient pressure is so high that the throat would not be sonic
     */
    public double impulseAt(double ambientPressure) {
        return thrustAt(ambientPressure) / massFlow;
    }

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return a warning if the flow separates there
     */
    public Optional<Warning> separationWarning(double ambientPressure) {
        OptionalDouble separated = separationAreaRatio(ambientPressure);
        AltitudeCompensation compensation = design.nozzle().compensation();
        boolean atInflection = compensation.inTwo() && separated.orElse(0) == compensation.innerAreaRatio();
        if (separated.isEmpty() || atInflection) {
            return Optional.empty();
        }
        return Optional.of(new Warning(
                design.nozzle().separation().card().id(),
                String.format(
                        Locale.ROOT,
                        "at an ambient pressure of %.4g bar the flow separates at area ratio %.3g of %.4g (%s); side loads "
                                + "and buzz are not estimated",
                        ambientPressure / 1e5,
                        separated.getAsDouble(),
                        areaRatio(),
                        design.nozzle().separation().card().title())));
    }

    ChamberPerformance withWarnings(List<Warning> all) {
        return new ChamberPerformance(
                design,
                ideal,
                profile,
                losses,
                characteristicVelocity,
                vacuumImpulse,
                throatArea,
                exitArea,
                massFlow,
                vacuumThrust,
                contour,
                wallStream,
                all);
    }

    /**
     * Pressure at the wall over that of one-dimensional flow: a bell bends the flow back towards the axis and presses more
     * on its end, which keeps it full at a higher ambient pressure.
     *
     * @return the ratio at the exit (-), 1 for a cone
     */
    public double exitWallPressureRatio() {
        NozzleDesign nozzle = design.nozzle();
        return switch (nozzle.shape()) {
            case CONE -> 1;
            case BELL -> BellTable.exitWallPressure(areaRatio(), nozzle.lengthFraction(), ideal.meanExponent());
            case IDEAL -> TruncatedIdeal.of(nozzle, areaRatio()).exitWallPressure();
        };
    }

    /** Wall pressure less separation pressure (Pa). */
    private double margin(NozzleStation station, double wallRatio, double ambientPressure) {
        double wall = Math.min(profile.throat().pressure(), wallRatio * station.pressure());
        double mach = Math.max(
                1, profile.atPressure(Math.max(profile.exit().pressure(), wall)).mach());
        return wall - design.nozzle().separation().pressureRatio(mach) * ambientPressure;
    }
}
