package dev.penstock.turbomachinery.mass;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.contour.ChamberContour;
import dev.penstock.chamber.contour.ContourPoint;
import dev.penstock.cooling.design.ExtensionKind;
import dev.penstock.provenance.ModelCard;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Mass of chamber and nozzle from their contour.
 * <pre>
 * cooled wall:   dm = 2π r ds (w + ρ p r FS/σ),  w of tubes or of liner and channels (CooledWall), FS/σ = 1.5/500 MPa, ρ 8200 kg/m³
 *                whole = 1.8 × (1.5 to 2.5) for flanges and manifolds
 * extension:     8 kg/m² (6 to 12) of sheet that radiates, 10 with the manifold of a film, 28 of an ablative liner (15 mm of 1750 kg/m³ and its shell)
 *                a sheet thins with the exit radius below 0.5 m, since buckling asks for a share of the radius, to 0.44 of that (0.4 mm)
 *                a quarter more for what guides and drives a part that is stowed
 * no jacket:     an ablative chamber has the 28 kg/m² in place of w
 * injector:      m = 0.1 ρ π/4 D³ √(p/2 MPa), the root at most 1 (half of a plate a fifth of its diameter thick; bending asks for √p)
 * </pre>
 * The pressure along the wall falls with A^-1.25 behind the throat.
 */
final class ChamberMass {

    static final ModelCard CARD = new ModelCard(
            "turbomachinery.chamber-mass",
            "Mass of chamber, nozzle and injector",
            "∫2πr(w + ρ p r FS/σ)ds × 1.8; extension 8, 10 or 28 kg/m² by kind, sheets thinner below 0.5 m radius, a quarter more where it moves; injector 0.1 ρ π/4 D³ √(p/2 MPa)",
            "metal chambers with a jacket, sheets and ablative liners without",
            "40 % per part",
            List.of("common practice, no source"));

    /** Guides, drives and the joint over the sheet that they move (-). */
    private static final double MOVING = 0.25;

    /** Exit radius from which a sheet has the thickness that its mass per area stands for (m). */
    private static final double FULL_SHEET_RADIUS = 0.5;

    /** Thinnest sheet over that thickness (-). */
    private static final double THINNEST_SHEET = 0.44;

    /** Pressure from which an injector is a fifth of its diameter thick (Pa). */
    private static final double FULL_PLATE_PRESSURE = 2e6;

    private static final double DENSITY = 8200;

    private ChamberMass() {}

    static MassItem combustor(EngineParts parts) {
        boolean ablative = !parts.jacket() && parts.uncooled().kind() == ExtensionKind.ABLATIVE;
        DoubleUnaryOperator lining = ablative ? x -> perArea(ExtensionKind.ABLATIVE) : x -> cooled(parts.walls(), x);
        double plain = wall(parts.chamber(), parts.cooledAreaRatio(), lining);
        return EngineMassModel.item(
                MassPart.CHAMBER, parts.jacket() ? "chamber and cooled nozzle" : "chamber", 1.8 * plain);
    }

    /** The wall that is there or nearest; jackets know the middles of their cells, between which gaps are left. */
    private static double cooled(List<CooledWall> walls, double x) {
        return walls.stream()
                .min(Comparator.comparingDouble(wall -> wall.distance(x)))
                .map(CooledWall::perArea)
                .orElse(CooledWall.LINER);
    }

    private static double wall(ChamberPerformance chamber, double cooledAreaRatio, DoubleUnaryOperator lining) {
        double pressure = chamber.ideal().chamberPressure();
        double mass = 0;
        List<ContourPoint> points = chamber.contour().points();
        for (int i = 1; i < points.size(); i++) {
            double x = 0.5 * (points.get(i).x() + points.get(i - 1).x());
            double ratio = areaRatio(chamber, points, i);
            if (x > 0 && ratio > cooledAreaRatio) {
                break;
            }
            double r = 0.5 * (points.get(i).radius() + points.get(i - 1).radius());
            double local = x <= 0 ? pressure : 0.56 * pressure * Math.pow(ratio, -1.25);
            mass += area(points, i)
                    * (lining.applyAsDouble(x) + DENSITY * local * r * EngineMetal.SAFETY_OVER_STRENGTH);
        }
        return mass;
    }

    /** Mass of a wall over its area (kg/m²). */
    private static double perArea(ExtensionKind kind) {
        return switch (kind) {
            case RADIATING -> 8;
            case FILM_COOLED -> 10;
            case ABLATIVE -> 28;
        };
    }

    static MassItem extension(EngineParts parts) {
        ChamberPerformance chamber = parts.chamber();
        double parting = chamber.design().nozzle().compensation().parting().orElse(Double.POSITIVE_INFINITY);
        double mass = 0;
        List<ContourPoint> points = chamber.contour().points();
        double exitRadius = points.get(points.size() - 1).radius();
        double sheet = Math.min(1, Math.max(THINNEST_SHEET, exitRadius / FULL_SHEET_RADIUS));
        for (int i = 1; i < points.size(); i++) {
            boolean downstream = points.get(i).x() > 0;
            double ratio = areaRatio(chamber, points, i);
            if (downstream && ratio > parts.cooledAreaRatio()) {
                ExtensionKind kind = parts.uncooled().kindAt(ratio);
                double thickness = kind == ExtensionKind.ABLATIVE ? 1 : sheet;
                mass += (ratio > parting ? 1 + MOVING : 1) * perArea(kind) * thickness * area(points, i);
            }
        }
        return EngineMassModel.item(MassPart.EXTENSION, "nozzle extension", mass);
    }

    static MassItem injector(ChamberPerformance chamber) {
        double d = 2 * chamber.contour().chamberRadius();
        double bending = Math.sqrt(chamber.ideal().chamberPressure() / FULL_PLATE_PRESSURE);
        double plate = 0.1 * DENSITY * Math.PI / 4 * d * d * d;
        return EngineMassModel.item(MassPart.INJECTOR, "injector", plate * Math.min(1, bending));
    }

    private static double areaRatio(ChamberPerformance chamber, List<ContourPoint> points, int i) {
        ChamberContour contour = chamber.contour();
        double r = 0.5 * (points.get(i).radius() + points.get(i - 1).radius());
        return r * r / (contour.throatRadius() * contour.throatRadius());
    }

    private static double area(List<ContourPoint> points, int i) {
        ContourPoint a = points.get(i - 1);
        ContourPoint b = points.get(i);
        return Math.PI * (a.radius() + b.radius()) * Math.hypot(b.x() - a.x(), b.radius() - a.radius());
    }
}
