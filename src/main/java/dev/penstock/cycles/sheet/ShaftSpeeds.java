package dev.penstock.cycles.sheet;

import dev.penstock.cycles.concept.GasInputs;
import dev.penstock.cycles.concept.ShaftDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.shaft.GearTeeth;
import dev.penstock.turbomachinery.speed.SpeedBound;
import dev.penstock.turbomachinery.speed.SpeedLimit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/** Speeds of the main pumps while an engine is sized: the tightest of what pumps, turbines and gears allow. */
final class ShaftSpeeds {

    private final BalanceModels balanceModels;
    private final ShaftDesign coupling;
    private final BoundPaths paths;

    ShaftSpeeds(BalanceModels balanceModels, BoundPaths paths) {
        this.balanceModels = balanceModels;
        this.paths = paths;
        this.coupling = balanceModels.concept().shafts();
    }

    /**
     * @param duties what is asked of each main pump
     * @param designs settled design of each
     * @param boosted sides whose suction does not count, since a boost pump is to give it what it needs
     * @return speed of each main pump, and what sets it: where the concept does not, the share that it asks for of the fastest that
     *     the limits allow
     */
    Map<Side, SpeedLimit> of(Map<Side, PumpDuty> duties, Map<Side, PumpDesign> designs, Set<Side> boosted) {
        Map<Side, SpeedLimit> speeds = new EnumMap<>(Side.class);
        OptionalDouble coupled = coupled();
        if (coupled.isPresent()) {
            SpeedLimit fuel = share(coupledFuelSpeed(duties, designs, boosted, coupled.getAsDouble()));
            speeds.put(Side.FUEL, fuel);
            speeds.put(
                    Side.OXIDIZER, fuel.geared(1 / coupled.getAsDouble()).with(paths.gear(GasInputs.PUMP_SPEED_RATIO)));
            return speeds;
        }
        for (Side side : Side.values()) {
            Optional<SpeedLimit> stated = stated(side, designs.get(side));
            if (stated.isPresent()) {
                speeds.put(side, stated.get());
                continue;
            }
            List<SpeedLimit> limits = ofPump(side, duties.get(side), designs.get(side), boosted);
            if (side == Side.FUEL && coupling.geared()) {
                limits.add(teeth(duties, designs));
            }
            annulus(side).ifPresent(limits::add);
            speeds.put(side, share(SpeedLimit.least(limits)));
        }
        return speeds;
    }

    private SpeedLimit share(SpeedLimit fastest) {
        return fastest.chosen() && coupling.speedShare() < 1
                ? fastest.at(fastest.speed() * coupling.speedShare()).with(paths.gear(GasInputs.SPEED_SHARE))
                : fastest;
    }

    /** A pump on a shaft of its own. */
    SpeedLimit alone(String label, PumpDuty duty, PumpDesign design, Function<SpeedBound, List<String>> boundPaths) {
        return stated(design, boundPaths)
                .orElseGet(() -> SpeedLimit.least(
                        owned(balanceModels.pumpModel().speedLimits(duty, design), label, boundPaths)));
    }

    private static List<SpeedLimit> owned(
            List<SpeedLimit> limits, String label, Function<SpeedBound, List<String>> boundPaths) {
        List<SpeedLimit> owned = new ArrayList<>();
        limits.forEach(l -> owned.add(l.of(label, boundPaths)));
        return owned;
    }

    private Optional<SpeedLimit> stated(Side side, PumpDesign design) {
        return stated(design, bound -> paths.pump(side, bound));
    }

    private static Optional<SpeedLimit> stated(PumpDesign design, Function<SpeedBound, List<String>> boundPaths) {
        return design.speed().isPresent()
                ? Optional.of(new SpeedLimit(SpeedBound.STATED, design.speed().getAsDouble()).of("", boundPaths))
                : Optional.empty();
    }

    /** Fuel-pump speed over oxidizer-pump speed, where one follows from the other. */
    private OptionalDouble coupled() {
        return coupling.arrangement() == ShaftDesign.Arrangement.SINGLE
                ? OptionalDouble.of(1)
                : coupling.geared() ? coupling.pumpSpeedRatio() : OptionalDouble.empty();
    }

    private SpeedLimit coupledFuelSpeed(
            Map<Side, PumpDuty> duties, Map<Side, PumpDesign> designs, Set<Side> boosted, double ratio) {
        Optional<SpeedLimit> stated = stated(Side.OXIDIZER, designs.get(Side.OXIDIZER))
                .map(l -> l.geared(ratio).with(paths.gear(GasInputs.PUMP_SPEED_RATIO)))
                .or(() -> stated(Side.FUEL, designs.get(Side.FUEL)));
        if (stated.isPresent()) {
            return stated.get();
        }
        List<SpeedLimit> limits = new ArrayList<>();
        for (Side side : Side.values()) {
            ofPump(side, duties.get(side), designs.get(side), boosted)
                    .forEach(l -> limits.add(
                            side == Side.FUEL ? l : l.geared(ratio).with(paths.gear(GasInputs.PUMP_SPEED_RATIO))));
        }
        limits.add(
                coupling.geared()
                        ? teeth(duties, designs)
                        : PumpModel.sharedBearings(power(duties), designs.values())
                                .of("main shaft", this::bothPumps));
        annulus(Side.FUEL).ifPresent(limits::add);
        return SpeedLimit.least(limits);
    }

    private List<SpeedLimit> ofPump(Side side, PumpDuty duty, PumpDesign design, Set<Side> boosted) {
        List<SpeedLimit> own = boosted.contains(side)
                ? balanceModels.pumpModel().mechanicalLimits(duty, design)
                : balanceModels.pumpModel().speedLimits(duty, design);
        return owned(own, side.key() + " pump", bound -> paths.pump(side, bound));
    }

    private List<String> bothPumps(SpeedBound bound) {
        List<String> both = new ArrayList<>();
        for (Side side : Side.values()) {
            both.addAll(paths.pump(side, bound));
        }
        return both;
    }

    /** Teeth of the gearbox, on the fuel pump's shaft or, faster, on the turbine's. */
    private SpeedLimit teeth(Map<Side, PumpDuty> duties, Map<Side, PumpDesign> designs) {
        double pinion = GearTeeth.fastest(power(duties), designs.get(Side.FUEL), coupling.gearSpeedLimit());
        return new SpeedLimit(SpeedBound.TEETH, pinion / Math.max(1, coupling.gearRatio()))
                .of("gearbox", bound -> paths.teeth());
    }

    private double power(Map<Side, PumpDuty> duties) {
        return duties.values().stream()
                .mapToDouble(balanceModels.pumpModel()::hydraulicPower)
                .sum();
    }

    /** The turbine that drives a side, as held while equations are solved, at the speed of that side's pump. */
    private Optional<SpeedLimit> annulus(Side side) {
        if (coupling.geared() && side == Side.OXIDIZER) {
            return Optional.empty();
        }
        TurbinePlace place = coupling.oneTurbine() ? TurbinePlace.MAIN : TurbinePlace.of(side);
        return balanceModels.choices().annulusLimit(place).map(l -> l.geared(1 / coupling.gearRatio())
                .with(paths.turbine(place))
                .with(paths.gear(GasInputs.GEAR_RATIO)));
    }
}
