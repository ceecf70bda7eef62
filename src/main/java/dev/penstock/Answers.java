package dev.penstock;

import dev.penstock.chamber.flow.Expansion;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.combustion.gas.GasState;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.EngineSummary;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.Spread;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.List;

/** What the models answer, as the records that other programs see. */
final class Answers {

    private Answers() {}

    static Engine engine(EngineBalance balance) {
        EngineSummary engine = balance.engine();
        return new Engine(
                balance.concept().name(),
                engine.cycle(),
                engine.chamberPressure(),
                engine.mixtureRatio(),
                engine.vacuumThrust(),
                engine.seaLevelThrust(),
                engine.vacuumIsp(),
                engine.seaLevelIsp(),
                engine.massFlow(),
                engine.areaRatio(),
                engine.throatDiameter(),
                engine.exitDiameter(),
                engine.characteristicVelocity(),
                estimate(balance.mass().total()),
                balance.stations().stream().map(Answers::station).toList(),
                balance.pumps().stream().map(Answers::pump).toList(),
                balance.turbines().stream().map(Answers::turbine).toList(),
                balance.cooling().stream().map(Answers::jacket).toList(),
                balance.limits().stream().map(Answers::limit).toList(),
                sentences(balance.warnings()),
                balance.residualWorst());
    }

    private static Engine.Station station(Station s) {
        return new Engine.Station(
                s.number(),
                s.name(),
                s.medium(),
                s.pressure(),
                s.temperature(),
                s.density(),
                s.enthalpy(),
                s.massFlow());
    }

    private static Engine.Pump pump(PumpSizing pump) {
        return new Engine.Pump(
                pump.name(),
                pump.duty().massFlow(),
                pump.duty().inlet().pressure(),
                pump.duty().dischargePressure(),
                pump.power(),
                pump.efficiency(),
                pump.speed(),
                pump.stages(),
                pump.impellerDiameter(),
                pump.tipSpeed());
    }

    private static Engine.Turbine turbine(TurbineSizing turbine) {
        return new Engine.Turbine(
                turbine.name(),
                turbine.duty().massFlow(),
                turbine.inlet().temperature(),
                turbine.duty().pressureRatio(),
                turbine.power(),
                turbine.efficiency(),
                turbine.speed(),
                turbine.stages(),
                turbine.meanDiameter());
    }

    private static Engine.Jacket jacket(JacketResult jacket) {
        return new Engine.Jacket(
                jacket.circuit().name(),
                jacket.heatLoad(),
                jacket.pressureDrop(),
                jacket.coolantTemperatureRise(),
                jacket.peakWallTemperature(),
                jacket.peakHeatFlux());
    }

    private static Limit limit(LimitCheck check) {
        return new Limit(
                check.name(),
                check.value(),
                check.limit(),
                check.unit(),
                check.upper(),
                check.source(),
                check.met(),
                check.margin());
    }

    private static Estimate estimate(Spread spread) {
        return new Estimate(spread.low(), spread.mode(), spread.high());
    }

    static Vehicle vehicle(VehicleSizing vehicle) {
        return new Vehicle(
                vehicle.plan().name(),
                vehicle.startMass(),
                vehicle.payload(),
                vehicle.stages().stream().map(Answers::stage).toList(),
                sentences(vehicle.warnings()));
    }

    private static Vehicle.Stage stage(StageSizing stage) {
        return new Vehicle.Stage(
                stage.name(),
                stage.engines(),
                stage.isp(),
                stage.startMass(),
                stage.propellant().loaded(),
                stage.dryMass().total(),
                stage.deltaV(),
                stage.thrustToWeight(),
                stage.burnTime(),
                stage.oxidizerTankVolume(),
                stage.fuelTankVolume());
    }

    static Combustion combustion(double pressure, Expansion expansion, List<IdealExpansion> nozzles) {
        GasState gas = expansion.chamber();
        return new Combustion(
                pressure,
                gas.temperature(),
                gas.molarMass(),
                gas.gammaS(),
                expansion.characteristicVelocity(),
                gas.moleFractions(),
                nozzles.stream().map(Answers::nozzle).toList(),
                sentences(gas.warnings()));
    }

    private static Combustion.Nozzle nozzle(IdealExpansion e) {
        return new Combustion.Nozzle(
                e.areaRatio(),
                e.exit().pressure(),
                e.exit().temperature(),
                e.vacuumThrustCoefficient(),
                e.vacuumSpecificImpulse());
    }

    private static List<String> sentences(List<Warning> warnings) {
        return warnings.stream().map(w -> w.source() + ": " + w.message()).toList();
    }
}
