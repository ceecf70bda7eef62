package dev.penstock.cooling.jacket;

import dev.penstock.cooling.march.ChannelGrid;
import dev.penstock.cooling.march.JacketGrid;
import dev.penstock.cooling.march.JacketRun;
import dev.penstock.cooling.march.Leg;
import dev.penstock.cooling.march.LegField;
import java.util.ArrayList;
import java.util.List;

/** Turns the fields of a march into station records, and adds up the heat. */
final class JacketStations {

    private JacketStations() {}

    /** One station per cell; where two passes lie side by side, that of the hotter wall. */
    static List<JacketStation> of(JacketRun run, ChannelGrid channels) {
        List<JacketStation> stations = new ArrayList<>(run.grid.cells);
        for (int c = 0; c < run.grid.cells; c++) {
            LegField hottest = null;
            for (List<LegField> branch : run.fields) {
                for (LegField field : branch) {
                    if (field.visited[c] && (hottest == null || field.metal[c] > hottest.metal[c])) {
                        hottest = field;
                    }
                }
            }
            if (hottest != null) {
                stations.add(station(run, channels, hottest, c));
            }
        }
        return stations;
    }

    /** Strength of the wall at every station. */
    static List<WallAssessment> wall(JacketRun run, ChannelGrid channels, List<JacketStation> stations) {
        List<WallAssessment> wall = new ArrayList<>(stations.size());
        for (int c = 0; c < stations.size(); c++) {
            wall.add(WallAssessment.of(
                    stations.get(c), run.grid.pressure[run.grid.first + c], run.material, channels.kind));
        }
        return wall;
    }

    private static JacketStation station(JacketRun run, ChannelGrid channels, LegField field, int c) {
        JacketGrid grid = run.grid;
        return new JacketStation(
                grid.x[c],
                grid.radius[c],
                grid.areaRatio[c],
                field.heatFlux[c],
                run.gasSide.radiation(c),
                run.gasSide.adiabaticWallTemperature(c),
                field.metal[c],
                field.floor[c],
                field.bulk[c],
                field.pressure[c],
                field.velocity[c],
                field.gasCoefficient[c],
                field.coolantCoefficient[c],
                channels.width[c],
                channels.height[c],
                Math.max(0, channels.land[c]),
                channels.thickness[c],
                field.finEfficiency[c],
                field.reynolds[c]);
    }

    /** Heat through the wall, Σ q A over all legs (W). */
    static double heatLoad(JacketRun run) {
        double load = 0;
        for (int b = 0; b < run.branches.size(); b++) {
            for (int i = 0; i < run.branches.get(b).size(); i++) {
                Leg leg = run.branches.get(b).get(i);
                LegField field = run.fields.get(b).get(i);
                for (int c = 0; c < run.grid.cells; c++) {
                    load += field.visited[c] ? field.heatFlux[c] * run.grid.area[c] * leg.share() : 0;
                }
            }
        }
        return load;
    }
}
