package dev.penstock.chamber.contour;

import dev.penstock.chamber.Designs;
import dev.penstock.chamber.design.NozzleDesign;
import java.util.Locale;

/** Computes what {@link BellTable} holds; run by hand, it prints the whole table as CSV. */
public final class BellTableWriter {

    private static final int CELLS = 24;
    private static final String HEADING = "area_ratio,length_fraction,gamma,efficiency,exit_wall_pressure_ratio";

    private BellTableWriter() {}

    /** One entry of the table. */
    public static TwoDimensionalFlow.Result compute(double areaRatio, double length, double gamma) {
        NozzleDesign nozzle = Designs.bell(areaRatio, length);
        ChamberContour contour = ContourBuilder.draw(Designs.combustor(2, 5), nozzle, areaRatio, 1)
                .contour();
        return TwoDimensionalFlow.of(contour, nozzle.upstreamCurvature(), gamma, CELLS);
    }

    public static void main(String[] arguments) {
        System.out.println(HEADING);
        for (double areaRatio : BellTable.AREA_RATIO) {
            for (double length : BellTable.LENGTH) {
                for (double gamma : BellTable.GAMMA) {
                    TwoDimensionalFlow.Result flow = compute(areaRatio, length, gamma);
                    System.out.printf(
                            Locale.ROOT,
                            "%s,%s,%s,%.5f,%.4f%n",
                            areaRatio,
                            length,
                            gamma,
                            flow.efficiency(),
                            flow.exitWallPressure());
                }
            }
        }
    }
}
