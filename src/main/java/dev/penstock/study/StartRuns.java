package dev.penstock.study;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import dev.penstock.turbomachinery.start.BottleStart;
import dev.penstock.turbomachinery.start.SpinUpDemand;
import dev.penstock.turbomachinery.start.StartFigures;
import dev.penstock.turbomachinery.start.StartGas;
import dev.penstock.turbomachinery.turbine.TurbineMap;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Spins the shafts of a balanced engine up on bottled gas. */
public final class StartRuns {

    private StartRuns() {}

    /**
     * One shaft and the gas that starts it.
     *
     * @param shaft name of the shaft
     * @param turbine turbine that the gas drives
     * @param speed speed to reach (rad/s)
     * @param gas gas and bottle
     */
    public record ShaftStart(String shaft, String turbine, double speed, StartGas gas) {}

    /** Figures of a shaft's start. */
    public static final FigureTable<ShaftStart> FIGURES = FigureTable.<ShaftStart>named(ShaftStart::shaft)
            .word("shaft", "shaft", ShaftStart::shaft)
            .word("turbine", "turbine", ShaftStart::turbine)
            .number(
                    "speed_rad_s",
                    "to",
                    new Notation("rad/s", "rpm", speed -> Notation.significant(speed * 30 / Math.PI, 4)),
                    ShaftStart::speed)
            .with(StartFigures.GAS, ShaftStart::gas)
            .table();

    /**
     * @param balance balanced engine
     * @param bottle gas, pressures and temperature
     * @param speedFraction speed to reach over design speed (-)
     * @param duration time of the rise (s)
     * @param starts number of starts that a bottle must hold
     * @param volume volume of the bottle of each shaft (m³); sized for the starts if empty
     * @return a start for every shaft that a turbine drives
     * @throws InvalidInput if no turbine drives a shaft
     */
    public static List<ShaftStart> of(
            EngineBalance balance,
            BottleStart bottle,
            double speedFraction,
            double duration,
            int starts,
            OptionalDouble volume) {
        List<ShaftStart> result = new ArrayList<>();
        for (ShaftBalance shaft : balance.shafts()) {
            shaft.turbines().stream()
                    .findFirst()
                    .map(turbine -> start(shaft, turbine, bottle, speedFraction, duration, starts, volume))
                    .ifPresent(result::add);
        }
        if (result.isEmpty()) {
            throw new InvalidInput(
                    "", "cycle", balance.concept().cycle().id(), "only a shaft with a turbine can be spun up on gas");
        }
        return result;
    }

    private static ShaftStart start(
            ShaftBalance shaft,
            TurbineSizing turbine,
            BottleStart bottle,
            double speedFraction,
            double duration,
            int starts,
            OptionalDouble volume) {
        SpinUpDemand demand = SpinUpDemand.of(shaft, speedFraction, duration);
        TurbineMap map = new TurbineMap(turbine);
        StartGas gas = volume.isPresent()
                ? bottle.startsOf(demand, map, volume.getAsDouble())
                : bottle.sizeFor(demand, map, starts);
        return new ShaftStart(shaft.name(), turbine.name(), demand.speed(), gas);
    }
}
