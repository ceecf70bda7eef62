package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.ChannelFlow;

/** What a march leaves in each cell of one leg; scratch arrays over the whole grid. Not thread-safe. */
public final class LegField {

    public final double[] heatFlux;
    public final double[] metal;
    public final double[] floor;
    public final double[] surface;
    public final double[] bulk;
    public final double[] enthalpy;
    public final double[] pressure;
    public final double[] velocity;
    public final double[] massFlux;
    public final double[] gasCoefficient;
    public final double[] coolantCoefficient;
    public final double[] finEfficiency;
    public final double[] reynolds;
    public final double[] soundSpeed;
    public final boolean[] covered;
    public final boolean[] visited;

    LegField(int cells) {
        heatFlux = new double[cells];
        metal = new double[cells];
        floor = new double[cells];
        surface = new double[cells];
        bulk = new double[cells];
        enthalpy = new double[cells];
        pressure = new double[cells];
        velocity = new double[cells];
        massFlux = new double[cells];
        gasCoefficient = new double[cells];
        coolantCoefficient = new double[cells];
        finEfficiency = new double[cells];
        reynolds = new double[cells];
        soundSpeed = new double[cells];
        covered = new boolean[cells];
        visited = new boolean[cells];
    }

    void store(int c, WallBalance wall, ChannelFlow flow, CoolantPoint point) {
        visited[c] = true;
        heatFlux[c] = wall.heatFlux;
        metal[c] = wall.metalTemperature;
        floor[c] = wall.floorTemperature;
        surface[c] = wall.surfaceTemperature;
        gasCoefficient[c] = wall.gasCoefficient;
        coolantCoefficient[c] = wall.coolantCoefficient;
        finEfficiency[c] = wall.finEfficiency;
        bulk[c] = flow.bulkTemperature;
        enthalpy[c] = flow.bulkEnthalpy;
        reynolds[c] = flow.reynolds;
        pressure[c] = point.pressure();
        velocity[c] = point.velocity();
        massFlux[c] = point.massFlux();
        soundSpeed[c] = flow.bulkSoundSpeed;
        covered[c] = wall.covered();
    }
}
