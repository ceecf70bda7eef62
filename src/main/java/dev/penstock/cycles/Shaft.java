package dev.penstock.cycles;

import dev.penstock.turbomachinery.PumpDesign;
import dev.penstock.turbomachinery.PumpDuty;
import dev.penstock.turbomachinery.TurbineDesign;
import dev.penstock.turbomachinery.TurbineDuty;
import java.util.ArrayList;
import java.util.List;

/** A shaft while an arrangement is laid out: what turns on it and the power it takes and gives. */
final class Shaft {

    /** A pump as asked for. */
    record PumpUse(String name, PumpDuty duty, PumpDesign design) {}

    /** A turbine as asked for. */
    record TurbineUse(String name, TurbineDuty duty, double speed, TurbineDesign design) {}

    private final String name;
    private final List<PumpUse> pumps = new ArrayList<>();
    private final List<TurbineUse> turbines = new ArrayList<>();
    private double speed;
    private double pumpPower;
    private double turbinePower;

    Shaft(String name) {
        this.name = name;
    }

    String name() {
        return name;
    }

    /** Speed of the turbine's end (rad/s). */
    double speed() {
        return speed;
    }

    void turnAt(double radiansPerSecond) {
        speed = radiansPerSecond;
    }

    void add(PumpUse pump, double power) {
        pumps.add(pump);
        pumpPower += power;
    }

    void add(TurbineUse turbine, double power) {
        turbines.add(turbine);
        turbinePower += power;
    }

    List<PumpUse> pumps() {
        return pumps;
    }

    List<TurbineUse> turbines() {
        return turbines;
    }

    double pumpPower() {
        return pumpPower;
    }

    double turbinePower() {
        return turbinePower;
    }
}
