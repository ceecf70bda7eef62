package dev.penstock.turbomachinery;

import dev.penstock.turbomachinery.turbine.TurbineDefaults;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import dev.penstock.turbomachinery.turbine.TurbineDuty;
import dev.penstock.turbomachinery.turbine.TurbineModel;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import dev.penstock.turbomachinery.turbine.TurbineType;

/** Invented turbines for the tests. */
public final class SampleTurbine {

    private SampleTurbine() {}

    /** A two-row turbine of about 6 MW at 3000 rad/s on fuel-rich gas. */
    public static TurbineSizing twoRows() {
        PerfectGas gas = new PerfectGas(2650, 1.10);
        TurbineDesign design = TurbineDefaults.of(false).withStages(TurbineType.VELOCITY_COMPOUNDED, 1);
        return new TurbineModel().size("turbine", new TurbineDuty(gas, 5e6, 2650 * 900, 0.4e6, 18), 3000, design);
    }
}
