package dev.penstock.validation;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.Designs;
import dev.penstock.chamber.ThrustChamber;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.design.Efficiencies;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.design.OuterZone;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cooling.Jackets;
import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.gas.AcceleratedPipe;
import dev.penstock.cooling.gas.GasSideDesign;
import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.cooling.gas.HotGasProfiles;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.jacket.JacketStation;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.WallDesign;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Published chambers with a measured heat load or flux, computed with a gas-side design. Geometry, pressure and mixture are those of the
 * source; what the source does not give is assumed and said in {@link Measured#assumed}.
 */
final class CoolingCases {

    private static final double PSI = 6894.757;

    /**
     * A measured figure beside the computed one.
     *
     * @param what chamber
     * @param figure figure
     * @param source key of its source
     * @param printed as printed
     * @param computed as computed
     * @param assumed what the source leaves open
     * @param ownData whether the accelerated pipe law was made from this figure, so that it is no check of it
     */
    record Measured(
            String what,
            String figure,
            String source,
            double printed,
            double computed,
            String assumed,
            boolean ownData) {

        double ratio() {
            return computed / printed;
        }
    }

    private final FluidLibrary fluids = FluidLibrary.open();
    private final JacketSolver solver = new JacketSolver(WallLibrary.load(Path.of("fluids/walls")));
    private final SpeciesLibrary species = SpeciesLibrary.open(Path.of("").toAbsolutePath());

    /** Every case with a gas-side design. */
    List<Measured> all(GasSideDesign gasSide) {
        List<Measured> all = new ArrayList<>();
        all.add(expander(gasSide));
        all.add(scaling(gasSide));
        all.add(kerosene(gasSide));
        all.addAll(heatSink(gasSide));
        return all;
    }

    private static Efficiencies release(double efficiency) {
        return new Efficiencies(Map.of(LossKind.ENERGY_RELEASE, efficiency));
    }

    private Reactants stored(String name) {
        Propellant propellant = fluids.propellant(name);
        return Reactants.single(propellant, propellant.storedEnthalpy());
    }

    private Reactants warm(String name, double pressure, double temperature) {
        Propellant propellant = fluids.propellant(name);
        return Reactants.single(
                propellant,
                propellant.absoluteEnthalpy(propellant
                        .fluid()
                        .atPressureTemperature(pressure, temperature)
                        .enthalpy()));
    }

    private ChamberPerformance chamber(
            Injection injection,
            double pressure,
            CombustorDesign combustor,
            double areaRatio,
            double throatDiameter,
            double release) {
        ChamberDesign design = new ChamberDesign(
                pressure, combustor, Designs.bell(areaRatio), ExpansionMode.SHIFTING, release(release));
        return new ThrustChamber(NozzleFlow.of(species, injection.mixed()))
                .forThroatArea(design, injection, Math.PI / 4 * throatDiameter * throatDiameter);
    }

    /** RL10A-3-3A: 180 short and 180 long tubes of steel 347 in a pass and a half; 2.744 kg/s of hydrogen. */
    private Measured expander(GasSideDesign gasSide) {
        Injection injection = Injection.of(stored("oxygen"), stored("hydrogen"), 5.0);
        double pressure = 3.275e6;
        double epsilon =
                PublishedEngine.named("RL10A-3-3A").published("expansion_ratio").orElseThrow();
        ChamberPerformance chamber = chamber(injection, pressure, Designs.combustor(4.31, 0.9), epsilon, 0.1255, 0.985);
        Propellant hydrogen = fluids.propellant("hydrogen");
        FluidState tank = hydrogen.storageState();
        double discharge = 1100 * PSI;
        double pumped = tank.enthalpy() + (discharge - tank.pressure()) / (tank.density() * 0.58);
        JacketDesign design = Jackets.automatic()
                .withCells(120)
                .withWall(new WallDesign(
                        "stainless-347",
                        OptionalDouble.of(0.33e-3),
                        "nickel-200",
                        OptionalDouble.empty(),
                        Optional.empty()))
                .withChannels(
                        new ChannelLayout(ChannelKind.TUBE, OptionalDouble.empty(), List.of(), OptionalDouble.empty()))
                .withRoute(new CoolantRoute(
                        CoolantRoute.Kind.PASS_AND_A_HALF,
                        OptionalDouble.empty(),
                        OptionalDouble.of(epsilon),
                        OptionalDouble.empty(),
                        0.5))
                .withLimits(Jackets.limits(1.669e6 / pressure, 10))
                .withGasSide(gasSide);
        JacketResult result = solver.solve(
                new JacketCase(HotGasProfiles.of(chamber, hydrogen), hydrogen, discharge, pumped, 2.744, design, 1));
        return new Measured(
                "RL10A-3-3A jacket",
                "heat load, MW",
                "nasa-tm-107318",
                8.434,
                result.heatLoad() / 1e6,
                "L* 0.9 m, c* efficiency 0.985, number of tubes at the throat",
                false);
    }

    /** Calorimeter of the 40k scaling chamber: 116 channels around, water at 60 °F and 4600 psia. */
    private Measured scaling(GasSideDesign gasSide) {
        Injection injection = Injection.of(stored("oxygen"), warm("hydrogen", 15e6, 800), 6.0);
        ChamberPerformance chamber = chamber(injection, 10.87e6, Designs.combustor(2.92, 0.986), 7, 0.0841, 1.0);
        JacketResult result = watered(
                HotGasProfiles.of(chamber, fluids.propellant("hydrogen")),
                "copper-silver-zirconium",
                4600 * PSI,
                126,
                116,
                gasSide);
        return new Measured(
                "40k calorimeter, test 024",
                "heat load, MW",
                "dexter-2004",
                9.079,
                result.heatLoad() / 1e6,
                "hydrogen at 800 K, 126 kg/s of water, channel sizes",
                false);
    }

    /** Kerosene calorimeter, uniform mixture, clean wall. */
    private Measured kerosene(GasSideDesign gasSide) {
        HotGasProfile gas =
                HotGasProfiles.of(keroseneChamber(8.87e6, 3.32, Optional.empty()), fluids.propellant("rp-1"));
        JacketResult result = watered(gas, "copper", 15e6, 60, 100, clean(gasSide));
        return new Measured(
                "kerosene calorimeter, clean",
                "throat flux, MW/m²",
                "nasa-tp-2862",
                64,
                throat(result).heatFlux() / 1e6,
                "contraction 3.4, 60 kg/s of water, channel sizes",
                false);
    }

    /** The heat-sink chamber: C of St Pr^0.7 = C Re_d^−0.2 at reference enthalpy, in the throat and in the barrel. */
    private List<Measured> heatSink(GasSideDesign gasSide) {
        Injection injection = Injection.of(stored("oxygen"), warm("hydrogen", 8e6, 290), 5.7);
        ChamberPerformance chamber = chamber(injection, 6.2e6, Designs.combustor(4.64, 1.37), 4, 0.127, 0.98);
        HotGasProfile gas = HotGasProfiles.of(chamber, fluids.propellant("hydrogen"));
        JacketResult result = watered(gas, "copper", 15e6, 100, 100, gasSide);
        JacketResult law =
                watered(gas, "copper", 15e6, 100, 100, gasSide.withModel(GasSideDesign.Model.ACCELERATED_PIPE));
        double throat = AcceleratedPipe.constant(0)
                * throat(result).gasSideCoefficient()
                / throat(law).gasSideCoefficient();
        int barrel = barrel(result);
        double constant = AcceleratedPipe.constant(-Math.log(4.64))
                * result.stations().get(barrel).gasSideCoefficient()
                / law.stations().get(barrel).gasSideCoefficient();
        String assumed = "wall cooled by water";
        return List.of(
                new Measured("heat-sink chamber", "C in the throat", "nasa-tn-d-2832", 0.0148, throat, assumed, true),
                new Measured(
                        "other nozzles of the same work",
                        "C in the throat, middle of 0.017 to 0.023",
                        "nasa-tn-d-2832",
                        0.0200,
                        throat,
                        assumed + ", geometry of the heat-sink chamber",
                        false),
                new Measured(
                        "heat-sink chamber", "C in the barrel", "nasa-tn-d-2832", 0.0257, constant, assumed, true));
    }

    /** Station half-way between the injector and the end of the barrel. */
    private static int barrel(JacketResult result) {
        double face = result.stations().get(0).x();
        int at = 0;
        while (result.stations().get(at).x() < 0.5 * face) {
            at++;
        }
        return at;
    }

    static JacketStation throat(JacketResult result) {
        return result.stations().stream()
                .min((a, b) -> Double.compare(a.radius(), b.radius()))
                .orElseThrow();
    }

    /** The chamber of the kerosene calorimeter; 432 mm long, contraction assumed. */
    ChamberPerformance keroseneChamber(double pressure, double ratio, Optional<OuterZone> zone) {
        Injection injection = Injection.of(stored("oxygen"), stored("rp-1"), ratio);
        CombustorDesign combustor = Designs.combustor(3.4, 1.2);
        return chamber(injection, pressure, zone.map(combustor::withOuterZone).orElse(combustor), 4, 0.0659, 0.995);
    }

    /** The same chamber at 6 MPa with a share of its fuel as a film. */
    ChamberPerformance filmedChamber(double film) {
        Injection injection = Injection.of(stored("oxygen"), stored("rp-1"), 2.8);
        return chamber(injection, 6e6, Designs.filmed(3.4, 1.2, film), 4, 0.0659, 0.995);
    }

    HotGasProfile hotSide(ChamberPerformance chamber) {
        return HotGasProfiles.of(chamber, fluids.propellant("rp-1"));
    }

    JacketResult jacket(HotGasProfile gas) {
        return watered(gas, "copper", 15e6, 60, 100, Jackets.gasSide());
    }

    /** The kerosene calorimeter as a jacket. */
    JacketResult keroseneJacket(ChamberPerformance chamber, GasSideDesign gasSide) {
        return watered(HotGasProfiles.of(chamber, fluids.propellant("rp-1")), "copper", 15e6, 60, 100, gasSide);
    }

    private static GasSideDesign clean(GasSideDesign gasSide) {
        return gasSide.withSootFactor(0);
    }

    /** Water around the wall, so much of it that it stays cold; channels sized. */
    private JacketResult watered(
            HotGasProfile gas, String material, double pressure, double flow, double count, GasSideDesign gasSide) {
        Propellant water = fluids.propellant("water");
        FluidState inlet = water.fluid().atPressureTemperature(pressure, 288.7);
        JacketDesign design = Jackets.automatic()
                .withCells(120)
                .withWall(new WallDesign(
                        material, OptionalDouble.of(0.7e-3), "nickel-200", OptionalDouble.empty(), Optional.empty()))
                .withChannels(new ChannelLayout(
                        ChannelKind.MILLED, OptionalDouble.of(count), List.of(), OptionalDouble.empty()))
                .withRoute(Jackets.route(CoolantRoute.Kind.CIRCUMFERENTIAL))
                .withLimits(Jackets.limits(0.5, 10))
                .withGasSide(gasSide);
        return solver.solve(new JacketCase(gas, water, pressure, inlet.enthalpy(), flow, design, 1));
    }
}
