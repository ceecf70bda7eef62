package dev.penstock.chamber.loss;

import dev.penstock.chamber.contour.ChamberContour;
import dev.penstock.chamber.contour.ContourBuilder;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.flow.GasProfile;
import dev.penstock.chamber.flow.NozzleStation;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Momentum lost to wall friction, by the integral momentum equation of a turbulent or laminar boundary layer.
 * <pre>
 * dθ/dx = (c_f/2)/cos φ − θ [(2 + H) (dv/dx)/v + (dρ/dx)/ρ + (dr/dx)/r]        (x along the axis)
 * c_f/2 = 0.0128 (ρ_r/ρ) [ρ_r v θ/μ_r]^−1/4,  reference temperature T_r = ½(T_w + T) + 0.22 (T_aw − T)
 * H     = 1.29 T_w/T + T_aw/T − 1
 * laminar: c_f/2 = 0.225 μ_r/(ρ v θ),  H = T_w/T + T_aw/T − 1
 * loss  = 2 π r ρ v² θ cos φ at the exit, over the ideal vacuum thrust
 * </pre>
 * The displacement of the stream does not enter: to first order what it takes from the area it gives back as pressure on
 * the displaced wall. Equation and Blasius friction: [bartz-1965]; reference temperature: [eckert-1955]; μ ~ T^0.7. The
 * wall is taken at 800 K, cooled metal, or at the local gas where that is colder. Uncertainty a quarter of the loss;
 * a hot uncooled wall loses about a quarter less. Laminar: the quadrature of [thwaites-1949], d(θ² v⁶) = 0.45 (μ/ρ) v⁵ ds, with the same
 * reference temperature; what a gradient does to friction and shape is in its numbers. No layer whose turbulent momentum Reynolds
 * number at the exit is below 320 stays turbulent [preston-1958], and from 1000 on (common practice, no source) all is; between them the
 * loss goes from one to the other, smoothly in ln Re.
 */
public final class BoundaryLayerLoss extends LossModel {

    public static final ModelCard CARD = new ModelCard(
            "chamber.boundary_layer",
            "Boundary layer by the integral momentum equation",
            "dθ/dx = (c_f/2)/cos φ − θ[(2+H) v'/v + ρ'/ρ + r'/r]; loss = 2π r ρ v² θ cos φ",
            "cooled wall; laminar below a momentum Reynolds number of 320, turbulent above 1000",
            "a quarter of the loss",
            List.of("bartz-1965", "eckert-1955", "thwaites-1949", "preston-1958", "common practice, no source"));

    private static final double WALL_TEMPERATURE = 800; // K
    private static final double SHAPE = 1.29; // incompressible H of a 1/7-power profile
    private static final double LAMINAR_SHAPE =
            1; // of Thwaites' quadrature: θ² v^(2 (2 + H)) grows, with 2 (2 + H) = 6
    private static final double LAMINAR = 320; // momentum Reynolds number
    private static final double TURBULENT = 1000; // momentum Reynolds number
    private static final double VISCOSITY_EXPONENT = 0.7;
    private static final int STEPS = 90;

    /** Difference between the starts of two walls of one shape (-): round-off. */
    private static final double ALIKE = 1e-12;

    public BoundaryLayerLoss() {
        super(LossKind.BOUNDARY_LAYER, CARD);
    }

    @Override
    public Result evaluate(LossCase chamber) {
        return ofSize(chamber).at(chamber.drawing());
    }

    @Override
    public OfSize ofSize(LossCase chamber) {
        Layer first = layer(chamber);
        return drawing -> {
            ChamberContour contour = drawing.contour();
            boolean alike = Math.abs(start(contour) / contour.throatRadius() - first.start) <= ALIKE;
            return result(chamber, drawing, alike ? first : layer(chamber.with(drawing)));
        };
    }

    /**
     * The layer at the exit, freed of the size of the chamber: walls of one shape have θ = φ r_t^0.8 with the same φ, since θ^5/4
     * grows by k ds, and laminar ones θ = λ r_t^0.5, since θ² does.
     *
     * @param start where it starts over the throat radius (-)
     * @param thickness φ (m^0.2)
     * @param laminar λ of a laminar layer (m^0.5)
     * @param radius wall radius at the exit over that of the throat (-)
     * @param gas gas at the exit
     */
    private record Layer(double start, double thickness, double laminar, double radius, NozzleStation gas) {}

    /**
     * Where the layer starts (m): where the wall begins to converge, since ahead of it gas is hardly moving and still burning; in a
     * chamber shorter than that at the injector.
     */
    private static double start(ChamberContour contour) {
        return Math.max(-contour.throatRadius(), -contour.chamberLength());
    }

    private static Layer layer(LossCase chamber) {
        ChamberContour contour = chamber.drawing().contour();
        GasProfile profile = chamber.profile();
        double throat = contour.throatRadius();
        double start = start(contour);
        double end = contour.nozzleLength();
        double theta = 0;
        double laminar = 0;
        double radius = contour.radiusAt(start);
        NozzleStation gas = gasAt(profile, contour, start, radius);
        double x = start;
        for (int i = 1; i <= STEPS; i++) {
            double t = (double) i / STEPS;
            double nextX = start + (end - start) * t * (0.2 + 0.8 * t);
            double nextRadius = contour.radiusAt(nextX);
            NozzleStation next = gasAt(profile, contour, nextX, nextRadius);
            double dx = nextX - x;
            double slope = (nextRadius - radius) / dx;
            double growth = Math.sqrt(1 + slope * slope) * dx;
            double recovery = recoveryTemperature(next);
            // θ ρ r v^(2+H) is carried along exactly between stations; friction is added.
            double flux = gas.density() * radius / (next.density() * nextRadius);
            double slower = gas.velocity() / next.velocity();
            double carried = theta * flux * Math.pow(slower, 2 + shape(SHAPE, next, recovery));
            theta = withFriction(next, recovery, carried, growth / throat);
            double thin = laminar * flux * Math.pow(slower, 2 + shape(LAMINAR_SHAPE, next, recovery));
            laminar = withLaminarFriction(next, recovery, thin, growth / throat);
            gas = next;
            radius = nextRadius;
            x = nextX;
        }
        return new Layer(start / throat, theta, laminar, radius / throat, gas);
    }

    private static Result result(LossCase chamber, ContourBuilder.Drawing drawing, Layer layer) {
        double throat = drawing.contour().throatRadius();
        NozzleStation gas = layer.gas;
        double turbulent = layer.thickness * Math.pow(throat, 0.8);
        double share = turbulentShare(gas.massFlux() * turbulent / gas.viscosity());
        double theta = share * turbulent + (1 - share) * layer.laminar * Math.sqrt(throat);
        double drag = 2
                * Math.PI
                * layer.radius
                * throat
                * gas.massFlux()
                * gas.velocity()
                * theta
                * Math.cos(drawing.exitAngle());
        double thrust = chamber.ideal().vacuumThrustCoefficient()
                * chamber.ideal().chamberPressure()
                * Math.PI
                * throat
                * throat;
        return Result.nozzle(
                1 - Math.min(0.5, drag / thrust),
                () -> String.format(
                        Locale.ROOT,
                        "%smomentum thickness %.3g mm at the exit, momentum Reynolds number %.3g, wall at %.0f K",
                        share <= 0 ? "laminar, " : share < 1 ? "laminar in part, " : "",
                        1000 * theta,
                        gas.massFlux() * theta / gas.viscosity(),
                        WALL_TEMPERATURE),
                Optional.empty());
    }

    /** Share of a turbulent layer (-), by its momentum Reynolds number at the exit; no step in value or slope. */
    static double turbulentShare(double momentumReynolds) {
        double t = Math.log(momentumReynolds / LAMINAR) / Math.log(TURBULENT / LAMINAR);
        double within = Math.max(0, Math.min(1, t));
        return within * within * (3 - 2 * within);
    }

    private static double withLaminarFriction(NozzleStation gas, double recovery, double theta, double length) {
        double reference = reference(gas, recovery);
        double viscosity = gas.viscosity() * Math.pow(reference / gas.temperature(), VISCOSITY_EXPONENT);
        return laminar(theta, viscosity, gas.massFlux(), length);
    }

    /**
     * Adds laminar friction over a length: dθ = k/θ ds integrates to θ² rising by 2 k ds.
     *
     * @param theta momentum thickness before (m)
     * @param viscosity viscosity at the reference temperature (Pa·s)
     * @param massFlux density times velocity outside the layer (kg/(m²·s))
     * @param length along the wall (m)
     * @return momentum thickness behind (m)
     */
    static double laminar(double theta, double viscosity, double massFlux, double length) {
        return Math.sqrt(theta * theta + 0.45 * viscosity / massFlux * length);
    }

    private static double reference(NozzleStation gas, double recovery) {
        double wall = Math.min(WALL_TEMPERATURE, gas.temperature());
        return 0.5 * (wall + gas.temperature()) + 0.22 * (recovery - gas.temperature());
    }

    /** Adds friction over a step: dθ = k θ^−1/4 ds integrates to θ^5/4 rising by 5/4 k ds; so does φ, over s/r_t. */
    private static double withFriction(NozzleStation gas, double recovery, double theta, double length) {
        double reference = reference(gas, recovery);
        double densityRatio = gas.temperature() / reference;
        double viscosity = gas.viscosity() * Math.pow(reference / gas.temperature(), VISCOSITY_EXPONENT);
        double k = 0.0128 * densityRatio * Math.pow(gas.massFlux() * densityRatio / viscosity, -0.25);
        return Math.pow(Math.pow(theta, 1.25) + 1.25 * k * length, 0.8);
    }

    private static double shape(double incompressible, NozzleStation gas, double recovery) {
        double wall = Math.min(WALL_TEMPERATURE, gas.temperature());
        return incompressible * wall / gas.temperature() + recovery / gas.temperature() - 1;
    }

    private static double recoveryTemperature(NozzleStation gas) {
        double recovery = Math.cbrt(gas.prandtl());
        return gas.temperature() + recovery * gas.velocity() * gas.velocity() / (2 * gas.specificHeat());
    }

    private static NozzleStation gasAt(GasProfile profile, ChamberContour contour, double x, double radius) {
        double ratio =
                Math.min(contour.areaRatioOf(radius), x > 0 ? profile.exit().areaRatio() : 1e6);
        return profile.at(ratio, x > 0);
    }
}
