package dev.penstock.cycles.sheet;

import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.cycles.origin.ShaftKey;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.shaft.MechanicalLosses;
import dev.penstock.turbomachinery.speed.SpeedLimit;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import dev.penstock.turbomachinery.turbine.TurbineDuty;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A shaft while an arrangement is laid out: what turns on it and the power it takes and gives. */
public final class Shaft {

    /** A pump as asked for. */
    public record PumpUse(PumpKey key, PumpDuty duty, PumpDesign design) {

        public String name() {
            return key.label();
        }
    }

    /** A turbine as asked for. */
    public record TurbineUse(TurbinePlace place, TurbineDuty duty, double speed, TurbineDesign design) {

        public String name() {
            return place.title();
        }
    }

    private final ShaftKey key;
    private final List<PumpUse> pumps = new ArrayList<>();
    private final List<TurbineUse> turbines = new ArrayList<>();
    private final MechanicalLosses losses;
    private double speed;
    private Optional<SpeedLimit> speedSetBy = Optional.empty();
    private Optional<String> driver = Optional.empty();
    private double pumpPower;
    private double takenOff;
    private double turbinePower;

    public Shaft(ShaftKey key, MechanicalLosses losses) {
        this.key = key;
        this.losses = losses;
    }

    public ShaftKey key() {
        return key;
    }

    public String name() {
        return key.title();
    }

    public MechanicalLosses losses() {
        return losses;
    }

    /** Speed of the turbine's end (rad/s). */
    public double speed() {
        return speed;
    }

    /** What keeps it from turning faster. */
    public SpeedLimit speedSetBy() {
        return speedSetBy.orElseThrow();
    }

    public void turnAt(SpeedLimit limit) {
        speed = limit.speed();
        speedSetBy = Optional.of(limit);
    }

    /** What drives it, where that is neither a turbine of the gas path nor a motor. */
    public Optional<String> driver() {
        return driver;
    }

    public void drivenBy(String what) {
        driver = Optional.of(what);
    }

    public void add(PumpUse pump, double power) {
        pumps.add(pump);
        pumpPower += power;
    }

    public void add(TurbineUse turbine, double power) {
        turbines.add(turbine);
        turbinePower += power;
    }

    /** Power taken off for something that is not on the shaft (W). */
    public void takeOff(double power) {
        takenOff += power;
    }

    /** Power taken off for something that is not on the shaft (W). */
    public double takenOff() {
        return takenOff;
    }

    public List<PumpUse> pumps() {
        return pumps;
    }

    public List<TurbineUse> turbines() {
        return turbines;
    }

    /** Power that turbines or a motor must give (W). */
    public double neededPower() {
        return losses.turbinePower(pumpPower + takenOff);
    }

    public double turbinePower() {
        return turbinePower;
    }
}
