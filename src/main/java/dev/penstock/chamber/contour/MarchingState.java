package dev.penstock.chamber.contour;

import java.util.Arrays;

/** One marching surface of {@link MarchingFlow}: fluxes through its cells, the states they decode to, and side fluxes. */
final class MarchingState {

    private final CharacteristicGas gas;
    private final double gamma;
    private final int n;
    private final double[] mass;
    private final double[] axial;
    private final double[] radial;
    private final double[] u;
    private final double[] v;
    private final double[] p;
    private final double[] sideMass;
    private final double[] sideAxial;
    private final double[] sideRadial;

    MarchingState(CharacteristicGas gas, int cells) {
        this.gas = gas;
        this.gamma = gas.gamma();
        this.n = cells;
        mass = new double[n];
        axial = new double[n];
        radial = new double[n];
        u = new double[n];
        v = new double[n];
        p = new double[n];
        sideMass = new double[n + 1];
        sideAxial = new double[n + 1];
        sideRadial = new double[n + 1];
    }

    void set(int j, double axialVelocity, double radialVelocity) {
        u[j] = axialVelocity;
        v[j] = radialVelocity;
        p[j] = gas.pressure(gas.machOfVelocity(Math.hypot(axialVelocity, radialVelocity)));
    }

    double pressure(int j) {
        return p[j];
    }

    double mach(int j) {
        return Math.sqrt((u[j] * u[j] + v[j] * v[j]) / soundSquared(u[j], v[j]));
    }

    double totalMass() {
        return Arrays.stream(mass).sum();
    }

    double totalAxial() {
        return Arrays.stream(axial).sum();
    }

    /** Fluxes through the cells of a surface from their states. */
    void collect(double[] x, double[] r) {
        for (int j = 0; j < n; j++) {
            double ax = (r[j + 1] + r[j]) * (r[j + 1] - r[j]);
            double ar = -(r[j + 1] + r[j]) * (x[j + 1] - x[j]);
            double through = density(u[j], v[j], p[j]) * (u[j] * ax + v[j] * ar);
            mass[j] = through;
            axial[j] = through * u[j] + p[j] * ax;
            radial[j] = through * v[j] + p[j] * ar;
        }
    }

    /** Steepest slope of a characteristic against the side walls of the cells, along the surface normal. */
    double steepest(double[] x, double[] r) {
        double steepest = 0;
        for (int j = 0; j < n; j++) {
            double normal = Math.atan2(-(x[j + 1] - x[j]), r[j + 1] - r[j]);
            double angle = Math.atan2(v[j], u[j]) - normal;
            double mu = Math.asin(Math.min(1, 1 / mach(j)));
            double widest = Math.max(Math.abs(angle + mu), Math.abs(angle - mu));
            steepest = Math.max(steepest, Math.tan(Math.min(1.5, widest)) + 0.3);
        }
        return steepest;
    }

    /** Fluxes through the sides between two surfaces with the states of this one. */
    void sides(double[] x0, double[] r0, double[] x1, double[] r1) {
        for (int j = 1; j < n; j++) {
            double sx = -(r1[j] + r0[j]) * (r1[j] - r0[j]);
            double sr = (r1[j] + r0[j]) * (x1[j] - x0[j]);
            double ul = u[j - 1] + 0.5 * limited(u, j - 1);
            double vl = v[j - 1] + 0.5 * limited(v, j - 1);
            double pl = p[j - 1] + 0.5 * limited(p, j - 1);
            double ur = u[j] - 0.5 * limited(u, j);
            double vr = v[j] - 0.5 * limited(v, j);
            double pr = p[j] - 0.5 * limited(p, j);
            double rhol = density(ul, vl, pl);
            double rhor = density(ur, vr, pr);
            double ml = rhol * (ul * sx + vl * sr);
            double mr = rhor * (ur * sx + vr * sr);

            double length = Math.hypot(x1[j] - x0[j], r1[j] - r0[j]) * (r1[j] + r0[j]);
            double normal = Math.atan2(-(x0[j + 1] - x0[j - 1]), r0[j + 1] - r0[j - 1]);
            double side = Math.atan2(r1[j] - r0[j], x1[j] - x0[j]) - normal;
            double nx = Math.cos(normal);
            double nr = Math.sin(normal);
            double spread = Math.max(spread(ul, vl, normal, side), spread(ur, vr, normal, side));
            double push = 0.5 * spread * length * Math.cos(side);
            double wl = rhol * (ul * nx + vl * nr);
            double wr = rhor * (ur * nx + vr * nr);
            sideMass[j] = 0.5 * (ml + mr) - push * (wr - wl);
            sideAxial[j] = 0.5 * (ml * ul + mr * ur + (pl + pr) * sx) - push * (wr * ur + pr * nx - wl * ul - pl * nx);
            sideRadial[j] = 0.5 * (ml * vl + mr * vr + (pl + pr) * sr) - push * (wr * vr + pr * nr - wl * vl - pl * nr);
        }
        wallSide(x0, r0, x1, r1);
    }

    private void wallSide(double[] x0, double[] r0, double[] x1, double[] r1) {
        int j = n - 1;
        double ul = u[j] + 0.5 * limited(u, j);
        double vl = v[j] + 0.5 * limited(v, j);
        double pl = p[j] + 0.5 * limited(p, j);
        double m2 = (ul * ul + vl * vl) / soundSquared(ul, vl);
        double turn = Math.atan2(vl, ul) - Math.atan2(r1[n] - r0[n], x1[n] - x0[n]);
        double wall = pl * Math.max(0.3, 1 + gamma * m2 / Math.sqrt(Math.max(0.02, m2 - 1)) * turn);
        sideMass[n] = 0;
        sideAxial[n] = -wall * (r1[n] + r0[n]) * (r1[n] - r0[n]);
        sideRadial[n] = wall * (r1[n] + r0[n]) * (x1[n] - x0[n]);
    }

    /** Mean of these side fluxes and those of another surface. */
    void addSides(MarchingState other) {
        for (int j = 1; j <= n; j++) {
            sideMass[j] = 0.5 * (sideMass[j] + other.sideMass[j]);
            sideAxial[j] = 0.5 * (sideAxial[j] + other.sideAxial[j]);
            sideRadial[j] = 0.5 * (sideRadial[j] + other.sideRadial[j]);
        }
    }

    /** Next surface from the fluxes and sides of one, with the pressure of that one and another between them. */
    void advanceFrom(MarchingState from, MarchingState end, double[] x0, double[] r0, double[] x1, double[] r1) {
        for (int j = 0; j < n; j++) {
            double before = -(r0[j + 1] + r0[j]) * (x0[j + 1] - x0[j]);
            double after = -(r1[j + 1] + r1[j]) * (x1[j + 1] - x1[j]);
            double top = (r1[j + 1] + r0[j + 1]) * (x1[j + 1] - x0[j + 1]);
            double bottom = (r1[j] + r0[j]) * (x1[j] - x0[j]);
            double pressure = 0.5 * (from.p[j] + end.p[j]);
            double newMass = from.mass[j] - from.sideMass[j + 1] + from.sideMass[j];
            double newAxial = from.axial[j] - from.sideAxial[j + 1] + from.sideAxial[j];
            double newRadial = from.radial[j]
                    - from.sideRadial[j + 1]
                    + from.sideRadial[j]
                    + pressure * (after - before + top - bottom);
            mass[j] = newMass;
            axial[j] = newAxial;
            radial[j] = newRadial;
        }
        for (int j = 0; j < n; j++) {
            decode(j, (r1[j + 1] + r1[j]) * (r1[j + 1] - r1[j]), -(r1[j + 1] + r1[j]) * (x1[j + 1] - x1[j]));
        }
    }

    private void decode(int j, double ax, double ar) {
        double area = Math.hypot(ax, ar);
        double nx = ax / area;
        double nr = ar / area;
        double m = mass[j] / area;
        double normal = (axial[j] * nx + radial[j] * nr) / area;
        double across = (radial[j] * nx - axial[j] * nr) / area / m;
        double b = normal * gamma / ((gamma + 1) * m);
        double c = 2 / (gamma + 1) * ((gamma + 1) / 2 - (gamma - 1) / 2 * across * across);
        double speed = b + Math.sqrt(Math.max(0, b * b - c));
        u[j] = speed * nx - across * nr;
        v[j] = speed * nr + across * nx;
        p[j] = normal - m * speed;
    }

    private double spread(double ux, double vx, double normal, double side) {
        double angle = Math.atan2(vx, ux) - normal;
        double m2 = (ux * ux + vx * vx) / soundSquared(ux, vx);
        double mu = Math.asin(Math.min(1, 1 / Math.sqrt(m2)));
        double slope = Math.tan(side);
        return Math.max(
                Math.abs(Math.tan(Math.min(1.5, angle + mu)) - slope),
                Math.abs(Math.tan(Math.max(-1.5, angle - mu)) - slope));
    }

    /** Van Leer's limited difference. On the axis the mirror image is the neighbour; at the wall one side is known. */
    private double limited(double[] q, int j) {
        if (j == n - 1) {
            return q[j] - q[j - 1];
        }
        double up = q[j + 1] - q[j];
        double down = j > 0 ? q[j] - q[j - 1] : (q == v ? 2 * q[0] : 0);
        double product = up * down;
        return product > 0 ? 2 * product / (up + down) : 0;
    }

    /** Speed of sound squared, over the sonic velocity squared. */
    private double soundSquared(double ux, double vx) {
        return Math.max(1e-3, (gamma + 1) / 2 - (gamma - 1) / 2 * (ux * ux + vx * vx));
    }

    private double density(double ux, double vx, double pressure) {
        return gamma * pressure / soundSquared(ux, vx);
    }
}
