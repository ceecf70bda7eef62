package dev.penstock.reports;

import dev.penstock.cooling.JacketResult;
import dev.penstock.cycles.EngineBalance;
import dev.penstock.cycles.EngineSummary;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.turbomachinery.mass.EngineMass;
import java.util.Comparator;
import java.util.List;

/** A balanced engine as tables for a terminal. */
public final class BalanceText {

    private static final String LINE = System.lineSeparator();

    private BalanceText() {}

    /**
     * @param balance balanced engine
     * @return tables of engine, stations, machines and cooling, then limits and warnings
     */
    public static String of(EngineBalance balance) {
        StringBuilder text = new StringBuilder();
        text.append(balance.concept().name()).append(": ");
        text.append(balance.concept().cycle().title()).append(", ");
        text.append(balance.concept().oxidizer().fluid().name()).append(" and ");
        text.append(balance.concept().fuel().fluid().name()).append(LINE).append(LINE);
        text.append(engine(balance)).append(LINE);
        text.append(stations(balance)).append(LINE);
        machines(balance, text);
        balance.cooling().ifPresent(jacket -> text.append(cooling(jacket)).append(LINE));
        text.append(MassView.text(balance)).append(LINE);
        text.append(limits(balance.limits())).append(LINE);
        text.append("closed to ").append(Figures.significant(balance.residualWorst(), 2));
        text.append(" (worst relative residual, energy audit included)").append(LINE);
        text.append(warnings(balance.warnings()));
        return text.toString();
    }

    private static String engine(EngineBalance balance) {
        EngineSummary e = balance.engine();
        EngineMass mass = balance.mass();
        TextTable table = new TextTable().header("engine", "value", "<unit");
        table.row("thrust, vacuum", Figures.kilonewton(e.vacuumThrust()), "kN");
        table.row("thrust, sea level", Figures.kilonewton(e.seaLevelThrust()), "kN");
        table.row("specific impulse, vacuum", Figures.fixed(e.vacuumIsp(), 1), "s");
        table.row("specific impulse, sea level", Figures.fixed(e.seaLevelIsp(), 1), "s");
        table.row("chamber pressure", Figures.bar(e.chamberPressure()), "bar");
        table.row("mixture ratio, engine", Figures.significant(e.mixtureRatio(), 4), "");
        table.row("mixture ratio, chamber", Figures.significant(e.chamberMixtureRatio(), 4), "");
        table.row("mass flow", Figures.massFlow(e.massFlow()), "kg/s");
        table.row("area ratio", Figures.significant(e.areaRatio(), 4), "");
        table.row("throat diameter", Figures.millimetre(e.throatDiameter()), "mm");
        table.row("exit diameter", Figures.millimetre(e.exitDiameter()), "mm");
        table.row("characteristic velocity", Figures.significant(e.characteristicVelocity(), 5), "m/s");
        table.row("mass, dry", MassView.kilogram(mass.total().mode()), "kg");
        table.row("mass, band", MassView.between(mass.total()), "kg");
        table.row("thrust to weight", Figures.significant(mass.thrustToWeight().mode(), 3), "");
        table.row("thrust to weight, band", MassView.between(mass.thrustToWeight()), "");
        return table.text();
    }

    private static String stations(EngineBalance balance) {
        TextTable table = new TextTable().header("station", "<name", "<medium", "bar", "K", "kg/m³", "kg/s");
        balance.stations()
                .forEach(s -> table.row(
                        Integer.toString(s.number()),
                        s.name(),
                        s.medium(),
                        Figures.bar(s.pressure()),
                        Figures.kelvin(s.temperature()),
                        Figures.significant(s.density(), 4),
                        Figures.massFlow(s.massFlow())));
        return table.text();
    }

    private static void machines(EngineBalance balance, StringBuilder text) {
        if (!balance.pumps().isEmpty()) {
            TextTable table = new TextTable()
                    .header("pump", "discharge bar", "power", "efficiency", "rpm", "stages", "impeller mm", "tip m/s");
            balance.pumps()
                    .forEach(p -> table.row(
                            p.name(),
                            Figures.bar(p.duty().dischargePressure()),
                            Figures.power(p.power()),
                            Figures.percent(p.efficiency()),
                            Figures.rpm(p.speed()),
                            Integer.toString(p.stages()),
                            Figures.millimetre(p.impellerDiameter()),
                            Figures.significant(p.tipSpeed(), 4)));
            text.append(table.text()).append(LINE);
        }
        if (!balance.turbines().isEmpty()) {
            TextTable table = new TextTable()
                    .header("turbine", "inlet K", "pressure ratio", "power", "efficiency", "rpm", "kg/s", "mean mm");
            balance.turbines()
                    .forEach(t -> table.row(
                            t.name(),
                            Figures.kelvin(t.inlet().temperature()),
                            Figures.significant(
                                    t.inlet().pressure() / t.outlet().pressure(), 4),
                            Figures.power(t.power()),
                            Figures.percent(t.efficiency()),
                            Figures.rpm(t.speed()),
                            Figures.massFlow(t.duty().massFlow()),
                            Figures.millimetre(t.meanDiameter())));
            text.append(table.text()).append(LINE);
        }
        if (!balance.shafts().isEmpty()) {
            TextTable table = new TextTable()
                    .header("shaft", "rpm", "delivered", "absorbed", "mechanical loss", "mass kg", "<joins");
            balance.shafts()
                    .forEach(s -> table.row(
                            s.name(),
                            Figures.rpm(s.speed()),
                            Figures.power(s.powerDelivered()),
                            Figures.power(s.powerAbsorbed()),
                            Figures.power(s.mechanicalLoss()),
                            Figures.significant(s.mass(), 3),
                            String.join(", ", s.turbines()) + " to " + String.join(", ", s.pumps())));
            text.append(table.text()).append(LINE);
        }
    }

    private static String cooling(JacketResult jacket) {
        TextTable table = new TextTable().header("cooling", "value", "<unit");
        table.row("coolant temperature rise", Figures.kelvin(jacket.coolantTemperatureRise()), "K");
        table.row("coolant pressure drop", Figures.bar(jacket.pressureDrop()), "bar");
        table.row("heat load", Figures.significant(jacket.heatLoad() / 1e6, 4), "MW");
        table.row("peak heat flux", Figures.significant(jacket.peakHeatFlux() / 1e6, 4), "MW/m²");
        table.row("peak wall temperature", Figures.kelvin(jacket.peakWallTemperature()), "K");
        return table.text();
    }

    /**
     * @param limits limit checks
     * @return table with the margin of each
     */
    public static String limits(List<LimitCheck> limits) {
        TextTable table = new TextTable().header("limit, tightest first", "value", "<bound", "margin", "<");
        limits.stream()
                .sorted(Comparator.comparingDouble(LimitCheck::margin))
                .forEach(l -> table.row(
                        Figures.limitName(l.name()),
                        Figures.withUnit(l.value(), l.unit()),
                        Figures.bound(l),
                        Figures.margin(l.margin()),
                        l.met() ? "kept" : "MISSED"));
        return table.text();
    }

    /**
     * @param warnings warnings
     * @return one line for each
     */
    public static String warnings(List<Warning> warnings) {
        StringBuilder text = new StringBuilder();
        warnings.stream().distinct().forEach(w -> text.append("warning, ")
                .append(w.source())
                .append(": ")
                .append(w.message())
                .append(LINE));
        return text.toString();
    }
}
