package dev.penstock.cycles.sheet;

import dev.penstock.cycles.concept.ShaftDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.shaft.GearTeeth;
import dev.penstock.turbomachinery.speed.SpeedLimit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Speeds of the main pumps while an engine is sized: the tightest of what pumps, turbines and gears allow. */
final class ShaftSpeeds {

    static final String STATED = "the concept";

    private final Plant plant;
    private final ShaftDesign coupling;

    ShaftSpeeds(Plant plant) {
        this.plant = plant;
        this.coupling = plant.concept().shafts();
    }

    /**
     * @param duties what is asked of each main pump
     * @param designs settled design of each
     * @param boosted sides whose suction does not count, since a boost pump is to give it what it needs
     * @return speed of each main pump, and what sets it
     */
    Map<Side, SpeedLimit> of(Map<Side, PumpDuty> duties, Map<Side, PumpDesign> designs, Set<Side> boosted) {
        Map<Side, SpeedLimit> speeds = new EnumMap<>(Side.class);
        OptionalDouble coupled = coupled();
        if (coupled.isPresent()) {
            SpeedLimit fuel = coupledFuelSpeed(duties, designs, boosted, coupled.getAsDouble());
            speeds.put(Side.FUEL, fuel);
            speeds.put(Side.OXIDIZER, fuel.geared(1 / coupled.getAsDouble()));
            return speeds;
        }
        for (Side side : Side.values()) {
            Optional<SpeedLimit> stated = stated(designs.get(side));
            if (stated.isPresent()) {
                speeds.put(side, stated.get());
                continue;
            }
            List<SpeedLimit> limits = ofPump(side, duties.get(side), designs.get(side), boosted);
            if (side == Side.FUEL && coupling.geared()) {
                limits.add(teeth(duties, designs));
            }
            annulus(side).ifPresent(limits::add);
            speeds.put(side, SpeedLimit.least(limits));
        }
        return speeds;
    }

    /** A pump on a shaft of its own. */
    SpeedLimit alone(String label, PumpDuty duty, PumpDesign design) {
        return stated(design).orElseGet(() -> SpeedLimit.least(plant.pumpModel().speedLimits(duty, design))
                .of(label));
    }

    private static Optional<SpeedLimit> stated(PumpDesign design) {
        return design.speed().isPresent()
                ? Optional.of(new SpeedLimit(STATED, design.speed().getAsDouble()))
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
        Optional<SpeedLimit> stated =
                stated(designs.get(Side.OXIDIZER)).map(l -> l.geared(ratio)).or(() -> stated(designs.get(Side.FUEL)));
        if (stated.isPresent()) {
            return stated.get();
        }
        List<SpeedLimit> limits = new ArrayList<>();
        for (Side side : Side.values()) {
            ofPump(side, duties.get(side), designs.get(side), boosted)
                    .forEach(l -> limits.add(side == Side.FUEL ? l : l.geared(ratio)));
        }
        limits.add(
                coupling.geared()
                        ? teeth(duties, designs)
                        : PumpModel.sharedBearings(power(duties), designs.values())
                                .of("main shaft"));
        annulus(Side.FUEL).ifPresent(limits::add);
        return SpeedLimit.least(limits);
    }

    private List<SpeedLimit> ofPump(Side side, PumpDuty duty, PumpDesign design, Set<Side> boosted) {
        List<SpeedLimit> own = boosted.contains(side)
                ? plant.pumpModel().mechanicalLimits(duty, design)
                : plant.pumpModel().speedLimits(duty, design);
        List<SpeedLimit> limits = new ArrayList<>();
        own.forEach(l -> limits.add(l.of(side.key() + " pump")));
        return limits;
    }

    /** Teeth of the gearbox, on the fuel pump's shaft or, faster, on the turbine's. */
    private SpeedLimit teeth(Map<Side, PumpDuty> duties, Map<Side, PumpDesign> designs) {
        double pinion = GearTeeth.fastest(power(duties), designs.get(Side.FUEL), coupling.gearSpeedLimit());
        return new SpeedLimit("teeth of the gearbox", pinion / Math.max(1, coupling.gearRatio()));
    }

    private double power(Map<Side, PumpDuty> duties) {
        return duties.values().stream()
                .mapToDouble(plant.pumpModel()::hydraulicPower)
                .sum();
    }

    /** The turbine that drives a side, as held while equations are solved, at the speed of that side's pump. */
    private Optional<SpeedLimit> annulus(Side side) {
        if (coupling.geared() && side == Side.OXIDIZER) {
            return Optional.empty();
        }
        TurbinePlace place = coupling.oneTurbine()
                ? TurbinePlace.MAIN
                : side == Side.FUEL ? TurbinePlace.FUEL : TurbinePlace.OXIDIZER;
        return plant.annulusLimit(place).map(l -> l.geared(1 / coupling.gearRatio()));
    }
}
