package dev.penstock.turbomachinery.speed;

import dev.penstock.errors.Require;
import java.util.List;

/**
 * One bound on the speed of a shaft.
 *
 * @param name what sets it, for example "suction of the fuel pump"
 * @param speed highest speed it allows (rad/s)
 */
public record SpeedLimit(String name, double speed) {

    public SpeedLimit {
        Require.positive(name, "speed limit (rad/s)", speed);
    }

    /**
     * @param owner machine that the limit belongs to
     * @return the same limit, named with its owner
     */
    public SpeedLimit of(String owner) {
        return new SpeedLimit(name + " of the " + owner, speed);
    }

    /**
     * @param ratio speed of the other end of a gear over the speed of this one (-)
     * @return the same limit as that other end feels it
     */
    public SpeedLimit geared(double ratio) {
        return ratio == 1 ? this : new SpeedLimit(name, speed * ratio);
    }

    /**
     * @param limits at least one
     * @return the name of the tightest with a speed at or just below it, smooth where another takes over
     */
    public static SpeedLimit least(List<SpeedLimit> limits) {
        double[] speeds = new double[limits.size()];
        SpeedLimit tightest = limits.get(0);
        for (int i = 0; i < speeds.length; i++) {
            speeds[i] = limits.get(i).speed;
            tightest = speeds[i] < tightest.speed ? limits.get(i) : tightest;
        }
        return new SpeedLimit(tightest.name, Smooth.least(speeds));
    }
}
