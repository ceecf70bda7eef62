package dev.penstock.cooling;

/** What a march leaves in each cell of one leg; scratch arrays over the whole grid. Not thread-safe. */
final class LegField {

    final double[] heatFlux;
    final double[] metal;
    final double[] floor;
    final double[] surface;
    final double[] bulk;
    final double[] enthalpy;
    final double[] pressure;
    final double[] velocity;
    final double[] massFlux;
    final double[] gasCoefficient;
    final double[] coolantCoefficient;
    final double[] finEfficiency;
    final double[] reynolds;
    final double[] soundSpeed;
    final boolean[] covered;
    final boolean[] visited;

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

    void store(int c, WallBalance wall, ChannelFlow flow, double p, double v, double flux) {
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
        pressure[c] = p;
        velocity[c] = v;
        massFlux[c] = flux;
        soundSpeed[c] = flow.bulkSoundSpeed;
        covered[c] = wall.covered();
    }
}
