package dev.penstock.turbomachinery.speed;

import dev.penstock.errors.Require;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * One bound on the speed of a shaft.
 *
 * @param bound what sets it
 * @param owner machine that it belongs to; empty if it has none
 * @param speed highest speed it allows (rad/s)
 * @param from paths of the values that it was made from; empty where nothing is recorded
 * @param next the next of those that it is the tightest of, made from all the others; empty if it is one alone
 */
public record SpeedLimit(SpeedBound bound, String owner, double speed, List<String> from, Optional<SpeedLimit> next) {

    public SpeedLimit {
        Require.positive(bound.title(), "speed limit (rad/s)", speed);
        from = List.copyOf(from);
    }

    /**
     * @param bound what sets it
     * @param speed highest speed it allows (rad/s)
     */
    public SpeedLimit(SpeedBound bound, double speed) {
        this(bound, "", speed, List.of(), Optional.empty());
    }

    /** @return whether it is a limit by which the speed was chosen, not the speed of a concept or of a built machine */
    public boolean chosen() {
        return bound != SpeedBound.STATED && bound != SpeedBound.BUILT;
    }

    /** @return what sets it, for people, for example "suction of the fuel pump" */
    public String name() {
        return owner.isEmpty() ? bound.title() : bound.title() + " of the " + owner;
    }

    /**
     * @param machine machine that the limit belongs to
     * @param paths what a bound of that machine is made from
     * @return the same limit with its owner
     */
    public SpeedLimit of(String machine, Function<SpeedBound, List<String>> paths) {
        return new SpeedLimit(bound, machine, speed, paths.apply(bound), next);
    }

    /**
     * @param ratio speed of the other end of a gear over the speed of this one (-)
     * @return the same limit as that other end feels it
     */
    public SpeedLimit geared(double ratio) {
        return ratio == 1 ? this : new SpeedLimit(bound, owner, speed * ratio, from, next.map(n -> n.geared(ratio)));
    }

    /**
     * @param other another speed (rad/s)
     * @return the same bound at that speed
     */
    public SpeedLimit at(double other) {
        return new SpeedLimit(bound, owner, other, from, next);
    }

    /**
     * @param more paths of values that went in besides
     * @return the same limit, made from those too
     */
    public SpeedLimit with(Collection<String> more) {
        if (more.isEmpty()) {
            return this;
        }
        Set<String> all = new LinkedHashSet<>(from);
        all.addAll(more);
        return new SpeedLimit(bound, owner, speed, List.copyOf(all), next);
    }

    /**
     * @param limits at least one
     * @return the tightest with a speed at or just below it, smooth where another takes over
     */
    public static SpeedLimit least(List<SpeedLimit> limits) {
        double[] speeds = new double[limits.size()];
        SpeedLimit tightest = limits.get(0);
        for (int i = 0; i < speeds.length; i++) {
            speeds[i] = limits.get(i).speed;
            tightest = speeds[i] < tightest.speed ? limits.get(i) : tightest;
        }
        return new SpeedLimit(
                tightest.bound, tightest.owner, Smooth.least(speeds), tightest.from, others(limits, tightest));
    }

    private static Optional<SpeedLimit> others(List<SpeedLimit> limits, SpeedLimit tightest) {
        Optional<SpeedLimit> others = Optional.empty();
        for (SpeedLimit limit : limits) {
            if (limit != tightest) {
                SpeedLimit before = others.orElse(limit);
                SpeedLimit first = limit.speed < before.speed ? limit : before;
                others = Optional.of(first.with(limit.from).with(before.from));
            }
        }
        return others;
    }
}
