package dev.penstock.turbomachinery.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.Designs;
import dev.penstock.chamber.Mixtures;
import dev.penstock.chamber.ThrustChamber;
import dev.penstock.chamber.contour.ContourPoint;
import dev.penstock.chamber.design.AltitudeCompensation;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.Efficiencies;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.design.NozzleDesign;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.cooling.design.ExtensionDesign;
import dev.penstock.cooling.design.ExtensionKind;
import dev.penstock.provenance.Spread;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The relations of the model's own card, added up here by hand: common practice, no source. */
class EngineMassModelTest {

    private static final double PRESSURE = 10e6;
    private static final double COOLED = 6;
    private static final ChamberPerformance CHAMBER = chamber();

    private static ChamberPerformance chamber() {
        return chamber(Designs.bell(40));
    }

    private static ChamberPerformance chamber(NozzleDesign nozzle) {
        Reactants mixture = Mixtures.mix(Mixtures.named("O2"), Mixtures.named("CH4"), 3.4);
        ChamberDesign design = new ChamberDesign(
                PRESSURE, Designs.combustor(2.5, 1.2), nozzle, ExpansionMode.SHIFTING, Efficiencies.IDEAL);
        return new ThrustChamber(Mixtures.nozzle(mixture)).forVacuumThrust(design, Injection.of(mixture), 1e6);
    }

    /** An engine of which only the chamber is there. */
    private record Parts(
            int chambers,
            double cooled,
            ExtensionKind kind,
            OptionalDouble parting,
            boolean jacket,
            List<CooledWall> walls,
            List<EngineParts.Burner> burners,
            List<EngineParts.Line> lines,
            List<EngineParts.GasDuct> ducts,
            boolean gimballed,
            List<MassItem> others,
            MassFactors factors) {

        static Parts bare() {
            return new Parts(
                    1,
                    COOLED,
                    ExtensionKind.RADIATING,
                    OptionalDouble.empty(),
                    true,
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    false,
                    List.of(),
                    MassFactors.NONE);
        }

        Parts with(ExtensionKind other, OptionalDouble part, boolean cooling) {
            return new Parts(
                    chambers, cooled, other, part, cooling, walls, burners, lines, ducts, gimballed, others, factors);
        }

        Parts with(EngineParts.Burner burner, EngineParts.Line line) {
            return new Parts(
                    chambers,
                    cooled,
                    kind,
                    parting,
                    jacket,
                    walls,
                    List.of(burner),
                    List.of(line),
                    ducts,
                    true,
                    others,
                    factors);
        }

        Parts with(List<CooledWall> cooling, List<EngineParts.GasDuct> gas) {
            return new Parts(
                    chambers, cooled, kind, parting, jacket, cooling, burners, lines, gas, gimballed, others, factors);
        }

        Parts with(int count, List<MassItem> known, MassFactors scaled) {
            return new Parts(
                    count, cooled, kind, parting, jacket, walls, burners, lines, ducts, gimballed, known, scaled);
        }

        EngineMass mass() {
            return new EngineMassModel()
                    .estimate(new EngineParts(
                            1e6,
                            parting.isEmpty()
                                    ? CHAMBER
                                    : chamber(Designs.bell(40)
                                            .with(new AltitudeCompensation(
                                                    AltitudeCompensation.Kind.STOWED, parting.getAsDouble()))),
                            chambers,
                            cooled,
                            new ExtensionDesign(kind, "niobium-c103", OptionalDouble.empty()),
                            jacket,
                            walls,
                            List.of(),
                            burners,
                            lines,
                            ducts,
                            gimballed,
                            List.of(),
                            others,
                            factors));
        }
    }

    private static double mass(EngineMass mass, MassPart part) {
        return mass.items().stream()
                .filter(item -> item.part() == part)
                .mapToDouble(item -> item.mass().mode())
                .sum();
    }

    /** Wall between two points as the side of a cut cone, where its middle is downstream at such an area ratio. */
    private static double wall(DoublePredicate downstreamRatio) {
        List<ContourPoint> points = CHAMBER.contour().points();
        double throat = CHAMBER.contour().throatRadius();
        double area = 0;
        for (int i = 0; i + 1 < points.size(); i++) {
            ContourPoint a = points.get(i);
            ContourPoint b = points.get(i + 1);
            double middle = (a.radius() + b.radius()) / 2;
            if (b.x() > 0 && downstreamRatio.test(middle * middle / throat / throat)) {
                area += 2 * Math.PI * middle * Math.hypot(b.x() - a.x(), b.radius() - a.radius());
            }
        }
        return area;
    }

    @ParameterizedTest
    @CsvSource({"RADIATING, 8", "FILM_COOLED, 10", "ABLATIVE, 28"})
    void anExtensionWeighsWhatItsWallDoes(ExtensionKind kind, double perArea) {
        EngineMass mass = Parts.bare().with(kind, OptionalDouble.empty(), true).mass();
        assertThat(mass(mass, MassPart.EXTENSION))
                .isCloseTo(perArea * wall(ratio -> ratio > COOLED), withinPercentage(1e-9));
    }

    @Test
    void whatMovesOfAnExtensionWeighsAQuarterMore() {
        EngineMass mass = Parts.bare()
                .with(ExtensionKind.RADIATING, OptionalDouble.of(20), true)
                .mass();
        assertThat(mass(mass, MassPart.EXTENSION))
                .isCloseTo(8 * wall(ratio -> ratio > COOLED) + 2 * wall(ratio -> ratio > 20), withinPercentage(1e-9));
    }

    /** Liner and shell: 12 kg/m² and ρ p r FS/σ, with the gas pressure 0.56 A^-1.25 of the chamber's behind the throat. */
    @Test
    void aCooledWallHasALinerAndAShellThatHoldsThePressure() {
        List<ContourPoint> points = CHAMBER.contour().points();
        double throat = CHAMBER.contour().throatRadius();
        double sum = 0;
        for (int i = 0; i + 1 < points.size(); i++) {
            ContourPoint a = points.get(i);
            ContourPoint b = points.get(i + 1);
            double middle = (a.radius() + b.radius()) / 2;
            double ratio = Math.pow(middle / throat, 2);
            boolean downstream = (a.x() + b.x()) / 2 > 0;
            if (downstream && ratio > COOLED) {
                continue;
            }
            double pressure = downstream ? 0.56 * PRESSURE / Math.pow(ratio, 1.25) : PRESSURE;
            double side = 2 * Math.PI * middle * Math.hypot(b.x() - a.x(), b.radius() - a.radius());
            sum += side * (12 + 8200 * pressure * middle * 1.5 / 500e6);
        }
        EngineMass jacketed = Parts.bare().mass();
        assertThat(mass(jacketed, MassPart.CHAMBER)).isCloseTo(1.8 * sum, withinPercentage(1e-6));
        EngineMass sheet = Parts.bare()
                .with(ExtensionKind.RADIATING, OptionalDouble.empty(), false)
                .mass();
        EngineMass ablative = Parts.bare()
                .with(ExtensionKind.ABLATIVE, OptionalDouble.empty(), false)
                .mass();
        double walled = walledArea();
        assertThat(mass(sheet, MassPart.CHAMBER)).isEqualTo(mass(jacketed, MassPart.CHAMBER));
        assertThat(mass(ablative, MassPart.CHAMBER) - mass(sheet, MassPart.CHAMBER))
                .isCloseTo(1.8 * (28 - 12) * walled, withinPercentage(1e-6));
        assertThat(jacketed.items().get(0).name()).isEqualTo("chamber and cooled nozzle");
        assertThat(sheet.items().get(0).name()).isEqualTo("chamber");
    }

    private static double walledArea() {
        List<ContourPoint> points = CHAMBER.contour().points();
        double all = 0;
        for (int i = 0; i + 1 < points.size(); i++) {
            ContourPoint a = points.get(i);
            ContourPoint b = points.get(i + 1);
            all += Math.PI * (a.radius() + b.radius()) * Math.hypot(b.x() - a.x(), b.radius() - a.radius());
        }
        return all - wall(ratio -> ratio > COOLED);
    }

    /** Half of a plate a fifth of its diameter thick, of 8200 kg/m³. */
    @Test
    void anInjectorIsHalfAPlate() {
        double d = 2 * CHAMBER.contour().chamberRadius();
        assertThat(mass(Parts.bare().mass(), MassPart.INJECTOR))
                .isCloseTo(0.5 * 8200 * Math.PI / 4 * d * d * (d / 5), withinPercentage(1e-9));
    }

    /** 265.07 kg/s of 1000 kg/m³ at 15 m/s fill a bore of 0.15 m; at 10 MPa its wall is 2.25 mm, its valve weighs 41 kg. */
    @Test
    void aLineHoldsItsPressureAndItsValveGoesWithItsBore() {
        double flow = Math.PI / 4 * 0.15 * 0.15 * 1000 * 15;
        double length =
                1.2 * (CHAMBER.contour().chamberLength() + CHAMBER.contour().nozzleLength());
        EngineParts.Burner burner = new EngineParts.Burner("generator", 4, 5e6, 5);
        EngineMass thick = Parts.bare()
                .with(burner, new EngineParts.Line("fuel pump", flow, 10e6, 1000))
                .mass();
        assertThat(mass(thick, MassPart.LINE))
                .isCloseTo(Math.PI * 0.15 * 2.25e-3 * 8000 * length, withinPercentage(1e-9));
        assertThat(mass(thick, MassPart.VALVE)).isCloseTo(41, within(1e-9));
        EngineMass thin = Parts.bare()
                .with(burner, new EngineParts.Line("fuel pump", flow, 2.5e6, 1000))
                .mass();
        assertThat(mass(thin, MassPart.LINE))
                .isCloseTo(Math.PI * 0.15 * 1.5e-3 * 8000 * length, withinPercentage(1e-9));
        assertThat(mass(thin, MassPart.VALVE)).isCloseTo(1 + 40 * 0.5, within(1e-9));
        assertThat(mass(thin, MassPart.GIMBAL)).isCloseTo(20, within(1e-9));
        // 2.5 × 2 ρ FS/σ p V with V = 4 kg/s × 5 ms/5 kg/m³ is 2.4 kg: less than 2 kg per √(kg/s)
        assertThat(mass(thin, MassPart.BURNER)).isCloseTo(4, within(1e-9));
        EngineMass hot = Parts.bare()
                .with(
                        new EngineParts.Burner("preburner", 100, 50e6, 40),
                        new EngineParts.Line("fuel pump", flow, 10e6, 1000))
                .mass();
        assertThat(mass(hot, MassPart.BURNER))
                .isCloseTo(5 * 8000 * 1.5 / 500e6 * 50e6 * (100 * 0.005 / 40), within(1e-9));
    }

    private static EngineMass pressureFed(double pressure, double thrust, ExtensionDesign wall, EngineParts.Line line) {
        Reactants mixture = Mixtures.mix(Mixtures.named("O2"), Mixtures.named("CH4"), 3.4);
        ChamberDesign design = new ChamberDesign(
                pressure, Designs.combustor(2.5, 1.2), Designs.bell(40), ExpansionMode.SHIFTING, Efficiencies.IDEAL);
        ChamberPerformance chamber =
                new ThrustChamber(Mixtures.nozzle(mixture)).forVacuumThrust(design, Injection.of(mixture), thrust);
        return new EngineMassModel()
                .estimate(new EngineParts(
                        thrust,
                        chamber,
                        1,
                        1,
                        wall,
                        false,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(line),
                        List.of(),
                        true,
                        List.of(),
                        List.of(),
                        MassFactors.NONE));
    }

    /** Small engines: sheets of at least 0.44 of the usual gauge, injectors that bend less, valves of 0.3 kg at least. */
    @Test
    void partsOfASmallEngineAreThinner() {
        ExtensionDesign sheet = ExtensionDesign.standard();
        EngineParts.Line thin = new EngineParts.Line("fuel", 0.1, 1e6, 1000);
        EngineMass large = pressureFed(4e6, 1e6, sheet, thin);
        EngineMass small = pressureFed(4e6, 100, sheet, thin);
        // alike in shape: areas go with thrust, an injector of the same pressure with its root cubed
        assertThat(mass(small, MassPart.EXTENSION))
                .isCloseTo(0.44e-4 * mass(large, MassPart.EXTENSION), withinPercentage(2));
        assertThat(mass(large, MassPart.EXTENSION)).isPositive();
        double bore = Math.sqrt(4 * 0.1 / (Math.PI * 1000 * 15));
        assertThat(mass(small, MassPart.VALVE))
                .isCloseTo(0.3 + 40 * Math.sqrt(0.1) * Math.pow(bore / 0.15, 2.5), withinPercentage(1e-6));
        EngineMass low = pressureFed(0.5e6, 1e5, sheet, thin);
        EngineMass high = pressureFed(2e6, 4e5, sheet, thin);
        // nearly the same throat, a quarter of the pressure: half the plate
        assertThat(mass(low, MassPart.INJECTOR)).isCloseTo(0.5 * mass(high, MassPart.INJECTOR), withinPercentage(3));
    }

    /** 28 kg/m² to where the lining ends, 8 kg/m² of sheet behind it: between a wall that is all the one and all the other. */
    @Test
    void anAblativeWallMayEndInASheet() {
        EngineParts.Line line = new EngineParts.Line("fuel", 10, 1e6, 1000);
        double all = mass(
                pressureFed(1e6, 1e6, new ExtensionDesign(ExtensionKind.ABLATIVE, "", OptionalDouble.empty()), line),
                MassPart.EXTENSION);
        double part = mass(
                pressureFed(1e6, 1e6, new ExtensionDesign(ExtensionKind.ABLATIVE, "", OptionalDouble.of(6)), line),
                MassPart.EXTENSION);
        double none = mass(
                pressureFed(1e6, 1e6, new ExtensionDesign(ExtensionKind.ABLATIVE, "", OptionalDouble.of(1)), line),
                MassPart.EXTENSION);
        assertThat(none).isCloseTo(8.0 / 28 * all, withinPercentage(1));
        assertThat(part).isBetween(1.05 * none, 0.6 * all);
    }

    @Test
    void whatPartsMissTogetherScalesThemAll() {
        EngineMass plain = Parts.bare().mass();
        EngineMass scaled = Parts.bare()
                .with(1, List.of(), new MassFactors(Map.of(MassPart.ENGINE, 1.2)))
                .mass();
        assertThat(scaled.total().mode()).isCloseTo(1.2 * plain.total().mode(), withinPercentage(1e-9));
        Spread together = MassPart.ENGINE.scatter();
        assertThat(plain.total().high())
                .isGreaterThan(together.high() * plain.total().mode());
        assertThat(plain.total().low())
                .isLessThan(together.low() * plain.total().mode());
    }

    @Test
    void theRestIsAShareOfWhatTheModelsGiveAndScalesByItself() {
        List<MassItem> battery = List.of(
                new MassItem(MassPart.ELECTRIC, "battery", "battery", Spread.exactly(300), "invented for this test"));
        EngineMass plain = Parts.bare().mass();
        EngineMass electric = Parts.bare().with(1, battery, MassFactors.NONE).mass();
        double modelled = mass(plain, MassPart.CHAMBER)
                + mass(plain, MassPart.EXTENSION)
                + mass(plain, MassPart.INJECTOR)
                + mass(plain, MassPart.FRAME);
        assertThat(mass(plain, MassPart.REST)).isCloseTo(0.40 * modelled, withinPercentage(1e-9));
        assertThat(mass(electric, MassPart.REST)).isEqualTo(mass(plain, MassPart.REST));
        assertThat(electric.total().mode()).isCloseTo(1.40 * modelled + 300, withinPercentage(1e-9));
        EngineMass scaled = Parts.bare()
                .with(1, List.of(), new MassFactors(Map.of(MassPart.INJECTOR, 3.0, MassPart.REST, 0.5)))
                .mass();
        assertThat(mass(scaled, MassPart.INJECTOR)).isCloseTo(3 * mass(plain, MassPart.INJECTOR), within(1e-9));
        assertThat(mass(scaled, MassPart.REST))
                .isCloseTo(0.20 * (modelled + 2 * mass(plain, MassPart.INJECTOR)), withinPercentage(1e-9));
        assertThat(plain.wholeEngine()).isEmpty();
    }

    /** 1 MN from the chamber's wall to the middle: 3 · 8000 · 1.5/500e6 · 1e6 = 72 kg per metre of radius; four nozzles stand on a circle of r/sin 45°. */
    @Test
    void theThrustFrameReachesToTheChambers() {
        double chamber = CHAMBER.contour().chamberRadius();
        List<ContourPoint> points = CHAMBER.contour().points();
        double exit = points.get(points.size() - 1).radius();
        EngineMass one = Parts.bare().mass();
        EngineMass four = Parts.bare().with(4, List.of(), MassFactors.NONE).mass();
        assertThat(mass(one, MassPart.FRAME)).isCloseTo(72 * chamber, withinPercentage(1e-9));
        assertThat(mass(four, MassPart.FRAME)).isCloseTo(72 * (chamber + exit * Math.sqrt(2)), withinPercentage(1e-9));
    }

    /**
     * Gas of 4 MPa and 5 kg/m³ at Mach 0.3 flows at 300 m/s; 47.12 kg/s fill 0.2 m. Its wall is 2 mm at 200 MPa; at 0.4 MPa, where the same bore
     * takes a tenth of the flow, it would be 0.2 mm.
     */
    @Test
    void aGasDuctHoldsItsPressureAndADumpedOneIsLonger() {
        double flow = Math.PI / 4 * 0.2 * 0.2 * 5 * 300;
        double contour = CHAMBER.contour().chamberLength() + CHAMBER.contour().nozzleLength();
        EngineMass hot = Parts.bare()
                .with(List.of(), List.of(new EngineParts.GasDuct("duct", flow, 4e6, 5, false)))
                .mass();
        EngineMass dumped = Parts.bare()
                .with(List.of(), List.of(new EngineParts.GasDuct("duct", flow / 10, 0.4e6, 0.5, true)))
                .mass();
        assertThat(mass(hot, MassPart.DUCT))
                .isCloseTo(Math.PI * 0.2 * 2e-3 * 8000 * 4 * CHAMBER.contour().chamberRadius(), withinPercentage(1e-9));
        assertThat(mass(dumped, MassPart.DUCT))
                .isCloseTo(Math.PI * 0.2 * 1.5e-3 * 8000 * 1.2 * contour, withinPercentage(1e-9));
    }

    /** Girth of a tube over its pitch times its wall, and a tenth of braze: 1.1 π · 8000 · 0.33 mm · 3.33/3.66 = 8.30 kg/m². */
    @Test
    void tubesWeighTheirGirth() {
        assertThat(CooledWall.tubes(-1, 1, 0.33e-3, 3e-3).perArea()).isCloseTo(8.300, within(1e-3));
        CooledWall tubes = CooledWall.tubes(-1, 0, 0.33e-3, 3e-3);
        EngineMass lined = Parts.bare().mass();
        EngineMass all = Parts.bare()
                .with(List.of(new CooledWall(-1, 5, tubes.perArea())), List.of())
                .mass();
        EngineMass upstream = Parts.bare()
                .with(List.of(tubes, CooledWall.lined(1e-9, 5)), List.of())
                .mass();
        assertThat(mass(lined, MassPart.CHAMBER) - mass(all, MassPart.CHAMBER))
                .isCloseTo(1.8 * (12 - tubes.perArea()) * walledArea(), withinPercentage(1e-6));
        assertThat(mass(upstream, MassPart.CHAMBER))
                .isBetween(1.01 * mass(all, MassPart.CHAMBER), 0.99 * mass(lined, MassPart.CHAMBER));
    }

    /** Scatter is common to equal parts; the names of several say how many. */
    @Test
    void fourChambersWeighFourTimesOne() {
        EngineMass one = Parts.bare().mass();
        EngineMass four = Parts.bare().with(4, List.of(), MassFactors.NONE).mass();
        // chamber, extension and injector; the frame and the rest are one
        for (int i = 0; i < 3; i++) {
            MassItem single = one.items().get(i);
            MassItem several = four.items().get(i);
            assertThat(several.name()).isEqualTo("4 × " + single.name());
            assertThat(several.mass().mode()).isCloseTo(4 * single.mass().mode(), withinPercentage(1e-9));
            assertThat(several.mass().low())
                    .isCloseTo(4 * single.part().scatter().low() * single.mass().mode(), withinPercentage(1e-9));
            assertThat(several.mass().high())
                    .isCloseTo(
                            4 * single.part().scatter().high() * single.mass().mode(), withinPercentage(1e-9));
        }
    }
}
