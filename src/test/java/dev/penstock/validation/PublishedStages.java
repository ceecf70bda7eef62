package dev.penstock.validation;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.UsualFluids;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.engine.GivenEngine;
import dev.penstock.vehicle.engine.LoadedPropellant;
import dev.penstock.vehicle.mass.BuiltUpDryMass;
import dev.penstock.vehicle.mass.DryMassDesign;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.mass.PressurantSupply;
import dev.penstock.vehicle.mass.StageContents;
import dev.penstock.vehicle.mass.TankMaterial;
import dev.penstock.vehicle.mass.TankShell;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.stage.PropellantLoad;
import dev.penstock.vehicle.stage.StageLayout;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Stages that flew, with masses from memory, held against the dry-mass model. Engines are those of the table of built engines. */
final class PublishedStages {

    private static final FluidLibrary FLUIDS = FluidLibrary.open();
    private static final double TANK_PRESSURE = 3e5;

    private PublishedStages() {}

    /**
     * One stage.
     *
     * @param name what it is
     * @param engines its engines
     * @param dry its dry mass (kg)
     * @param byVolume dry mass with tanks by volume, as a stage of which nothing is stated gets them (kg)
     * @param byLoad with tanks by their loads (kg)
     * @param lines scatter of the lines of the first, independent of each other, over their sum (-)
     * @param source where the masses are from
     */
    record Row(String name, String engines, double dry, double byVolume, double byLoad, double lines, String source) {

        double miss() {
            return Math.log(byVolume / dry);
        }

        double missByLoad() {
            return Math.log(byLoad / dry);
        }
    }

    static List<Row> rows() {
        return PublishedEngine.table("/validation/stages.csv").stream()
                .map(PublishedStages::row)
                .toList();
    }

    private static Row row(Map<String, String> cells) {
        PublishedEngine published = PublishedEngine.named(cells.get("engine"));
        EnginePerformance engine = engine(published);
        int count = Integer.parseInt(cells.get("engines"));
        double propellant = 1e3 * Double.parseDouble(cells.get("propellant_t"));
        double dry = 1e3 * Double.parseDouble(cells.get("dry_t"));
        double start = propellant + dry + 1e3 * Double.parseDouble(cells.get("carried_t"));
        boolean common = cells.get("bulkhead").equals("common");
        PropellantLoad load = new PropellantLoad(propellant, 0, 0, 0, 0, engine.mixtureRatio(), 0, 0);
        StageContents contents = new StageLayout(
                        OptionalDouble.of(Double.parseDouble(cells.get("diameter_m"))),
                        common,
                        Allowances.USUAL.ullage())
                .contents(start, load, engine, count);
        boolean balloon = cells.get("tanks").equals("pressure-stabilized");
        MassTable byVolume = estimate(contents, Optional.empty());
        MassTable byLoad =
                estimate(contents, Optional.of(balloon ? TankShell.Kind.PRESSURE_STABILIZED : TankShell.Kind.INTEGRAL));
        return new Row(
                cells.get("stage"),
                count + " " + cells.get("engine"),
                dry,
                byVolume.total(),
                byLoad.total(),
                byVolume.independentScatter() / byVolume.total(),
                cells.get("source"));
    }

    private static MassTable estimate(StageContents contents, Optional<TankShell.Kind> tanks) {
        DryMassDesign plain = DryMassDesign.PLAIN;
        PressurantSupply gas = PressurantSupply.of(
                FLUIDS.propellant(UsualFluids.pressurant()).fluid(),
                30e6,
                290,
                OptionalDouble.empty(),
                PressurantSupply.COMPOSITE_BOTTLE);
        return new BuiltUpDryMass(new DryMassDesign(
                        tanks,
                        TankMaterial.ALUMINIUM,
                        Optional.of(gas),
                        false,
                        OptionalDouble.empty(),
                        OptionalDouble.of(contents.engine().mass()),
                        false,
                        0,
                        Optional.empty(),
                        plain.growthMargin()))
                .estimate(contents);
    }

    private static EnginePerformance engine(PublishedEngine e) {
        return GivenEngine.ofIsp(
                e.name(),
                1e3 * e.number("thrust_vac_kN"),
                e.number("isp_vac_s"),
                0,
                e.number("mixture_ratio"),
                loaded(e.oxidizer()),
                loaded(e.fuel()),
                e.number("mass_kg"));
    }

    private static LoadedPropellant loaded(String id) {
        Propellant propellant = FLUIDS.propellant(id);
        double temperature = propellant.storageTemperature();
        double pressure = Math.max(TANK_PRESSURE, propellant.storagePressure());
        double density =
                propellant.fluid().atPressureTemperature(pressure, temperature).density();
        return new LoadedPropellant(propellant, density, temperature, pressure);
    }

    /** Root of the mean square of how far the logarithm of the estimate misses (-). */
    static double spread(List<Row> rows) {
        return Math.sqrt(
                rows.stream().mapToDouble(r -> r.miss() * r.miss()).average().orElseThrow());
    }
}
