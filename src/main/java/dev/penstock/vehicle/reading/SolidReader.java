package dev.penstock.vehicle.reading;

import dev.penstock.input.InputTable;
import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.engine.SolidMotor;
import dev.penstock.vehicle.mass.DryMassInputs;
import dev.penstock.vehicle.mass.GivenDryMass;
import dev.penstock.vehicle.plan.SolidBooster;
import dev.penstock.vehicle.plan.StageInputs;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads solid boosters: thrust table, impulse, propellant and inert mass, which must agree. */
final class SolidReader {

    /** Share by which impulse times propellant may miss the thrust table (-): as much as rounded figures do. */
    private static final double AGREES = 0.02;

    private final InputTable table;

    SolidReader(InputTable table) {
        this.table = table;
    }

    /** @return whether the boosters are solid */
    boolean solid() {
        return table.has(StageInputs.THRUST_TIMES) || table.has(StageInputs.THRUSTS);
    }

    /**
     * @param propellant propellant of one (kg)
     * @return one booster; empty after a noted problem
     */
    Optional<SolidBooster> booster(double propellant) {
        List<Double> times = table.find(StageInputs.THRUST_TIMES).orElse(List.of());
        List<Double> thrusts = table.find(StageInputs.THRUSTS).orElse(List.of());
        OptionalDouble isp = table.number(StageInputs.ISP);
        double area = table.read(StageInputs.EXIT_AREA);
        Optional<GivenDryMass> inert = inert();
        if (!isATable(times, thrusts) || !agrees(times, thrusts, isp, propellant) || inert.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SolidBooster(new SolidMotor(times, thrusts, propellant, area), inert.get()));
    }

    private boolean isATable(List<Double> times, List<Double> thrusts) {
        boolean rising = times.size() == thrusts.size() && times.size() > 1 && times.get(0) == 0;
        for (int i = 1; rising && i < times.size(); i++) {
            rising = times.get(i) > times.get(i - 1);
        }
        boolean pushes = thrusts.stream().anyMatch(thrust -> thrust > 0);
        if (rising && pushes) {
            return true;
        }
        table.problem(
                StageInputs.THRUST_TIMES,
                times.size() + " times and " + thrusts.size() + " thrusts",
                "write as many of one as of the other, at least two, times rising from \"0 s\" and some thrust above zero");
        return false;
    }

    private boolean agrees(List<Double> times, List<Double> thrusts, OptionalDouble isp, double propellant) {
        if (isp.isEmpty()) {
            if (!table.has(StageInputs.ISP)) {
                table.problem(StageInputs.ISP, "missing", "solid boosters need their impulse, for example \"275 s\"");
            }
            return false;
        }
        double burnt = SolidMotor.impulse(times, thrusts) / (isp.getAsDouble() * Constants.STANDARD_GRAVITY);
        if (!(propellant > 0) || Math.abs(burnt / propellant - 1) <= AGREES) {
            return propellant > 0;
        }
        table.problem(
                StageInputs.PROPELLANT,
                String.format(Locale.ROOT, "%.6g kg", propellant),
                String.format(
                        Locale.ROOT,
                        "the thrust table at %.4g s burns %.6g kg; write that, or change thrusts or isp",
                        isp.getAsDouble(),
                        burnt));
        return false;
    }

    private Optional<GivenDryMass> inert() {
        InputTable dry = table.table(DryMassInputs.GROUP);
        OptionalDouble mass = dry.number(DryMassInputs.MASS);
        if (mass.isEmpty() && !dry.has(DryMassInputs.MASS)) {
            dry.problem(
                    DryMassInputs.MASS,
                    "missing",
                    "solid boosters need their inert mass, case and nozzle, for example \"8 t\"");
        }
        return mass.isPresent() ? Optional.of(new GivenDryMass(mass.getAsDouble(), 0)) : Optional.empty();
    }
}
