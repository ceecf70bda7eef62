package dev.penstock.fluids.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.coolprop.CoolPropWay;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidRange;
import dev.penstock.fluids.state.FluidSamples.Property;
import dev.penstock.fluids.state.Phase;
import dev.penstock.fluids.state.SaturationSamples;
import dev.penstock.fluids.store.FluidStore;
import java.lang.reflect.Proxy;
import java.nio.DoubleBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The table against the full model behind it. */
class FluidTableTest {

    private static final FluidLibrary FLUIDS = CoolPropWay.here().get(0).fluids();
    private static final int POINTS = 800;

    /** Of each state: by enthalpy and by temperature. */
    private static final int QUESTIONS = 2;

    private static final double LOW = 1e5;
    private static final double HIGH = 8e7;

    static List<String> coolants() {
        return FLUIDS.ids().stream()
                .filter(id -> FLUIDS.propellant(id).roles().contains(Propellant.Role.COOLANT))
                .toList();
    }

    /** What the model card states. */
    private static double allowed(Property property) {
        return switch (property) {
            case TEMPERATURE, DENSITY, SOUND_SPEED, ENTROPY -> 1e-4;
            case ISOBARIC_HEAT_CAPACITY -> 1e-3;
            case VISCOSITY -> 2e-3;
            case CONDUCTIVITY -> 6e-3;
        };
    }

    @ParameterizedTest
    @MethodSource("coolants")
    void theTableErrsByNoMoreThanItsCardSaysAndServesNearlyEverything(String id) {
        Fluid fluid = FLUIDS.propellant(id).fluid();
        double cold = fluid.range().minimumTemperature();
        double hot = fluid.range().maximumTemperature() * 0.9995;
        double high = Math.min(HIGH, 0.95 * fluid.range().maximumPressure());
        Random random = new Random(1);
        int tried = 0;
        int close = 0;
        try (FluidCursor full = fluid.cursor();
                FluidTableCursor fast = (FluidTableCursor) FluidTables.of(fluid).cursor()) {
            for (int i = 0; i < POINTS; i++) {
                double pressure = LOW * Math.pow(high / LOW, random.nextDouble());
                double temperature = cold * Math.pow(hot / cold, random.nextDouble());
                if (rough(fluid, pressure, temperature) || !has(full, pressure, temperature)) {
                    continue;
                }
                tried++;
                fast.setPressureEnthalpy(pressure, full.enthalpy());
                close += compare(fast, full) < 2e-4 ? 1 : 0;
                assertThat(fast.phase()).isEqualTo(full.phase());
                fast.setPressureTemperature(pressure, temperature);
                compare(fast, full);
                assertThat(fast.enthalpy())
                        .isCloseTo(full.enthalpy(), within(1e-4 * full.isobaricHeatCapacity() * temperature));
            }
            assertThat(tried).isGreaterThan(POINTS / 3);
            assertThat(fast.fullEvaluations()).isLessThan(3L * QUESTIONS * tried / 100);
            assertThat(close).isGreaterThan(tried * 9 / 10);
        }
    }

    /** Where the card states wider bands: beside the critical pressure, for helium of all temperatures. */
    private static boolean rough(Fluid fluid, double pressure, double temperature) {
        double p = pressure / fluid.criticalPressure().orElse(Double.POSITIVE_INFINITY);
        double t = temperature / fluid.criticalTemperature().orElse(Double.POSITIVE_INFINITY);
        return p > 0.9 && p < 1.15 && (Math.abs(t - 1) < 0.02 || fluid.id().equals("helium"));
    }

    /** The card's wider bands: they hold for all but two in a hundred of states drawn over a third of the latent heat. */
    @ParameterizedTest
    @CsvSource({"methane", "hydrogen", "oxygen", "propane", "ammonia", "ethanol"})
    void besideTheCriticalPointTheTableServesRoughly(String id) {
        Fluid fluid = FLUIDS.propellant(id).fluid();
        double critical = fluid.criticalPressure().orElseThrow();
        FluidTable table = FluidTables.of(fluid);
        double middle = table.liquid().top(0);
        double latent = table.vapour().bottom(1) - table.liquid().top(1);
        Random random = new Random(4);
        int tried = 0;
        int wide = 0;
        try (FluidCursor full = fluid.cursor();
                FluidTableCursor fast = (FluidTableCursor) table.cursor()) {
            for (int i = 0; i < POINTS; i++) {
                double pressure = critical * (0.97 + 0.06 * random.nextDouble());
                double enthalpy = middle + 0.3 * latent * (2 * random.nextDouble() - 1);
                if (table.boils(pressure)) {
                    double x = table.coordinate(pressure);
                    boolean liquid = enthalpy < middle;
                    enthalpy = liquid
                            ? Math.min(enthalpy, table.liquid().top(x) - 1e-4 * latent)
                            : Math.max(enthalpy, table.vapour().bottom(x) + 1e-4 * latent);
                }
                try {
                    full.setPressureEnthalpy(pressure, enthalpy);
                    TableBuilder.read(full, new double[Property.values().length]);
                } catch (PropertyFailure e) {
                    continue; // without a conductivity there
                }
                fast.setPressureEnthalpy(pressure, enthalpy);
                tried++;
                wide += withinRoughBands(fast, full) ? 0 : 1;
            }
            assertThat(tried).isGreaterThan(POINTS / 2);
            assertThat(wide).isLessThanOrEqualTo(tried / 50);
            assertThat(fast.fullEvaluations()).isLessThan(tried / 10L);
        }
    }

    private static boolean withinRoughBands(FluidCursor fast, FluidCursor full) {
        return near(fast.temperature(), full.temperature(), 1e-4)
                && near(fast.density(), full.density(), 0.05)
                && near(fast.entropy(), full.entropy(), 0.02)
                && near(fast.soundSpeed(), full.soundSpeed(), 0.1)
                && near(fast.viscosity(), full.viscosity(), 0.1)
                && near(Math.log(fast.isobaricHeatCapacity() / full.isobaricHeatCapacity()) + 10, 10, 0.18)
                && near(Math.log(fast.conductivity() / full.conductivity()) + 10, 10, 0.18);
    }

    private static boolean near(double got, double wanted, double share) {
        return Math.abs(got - wanted) <= share * Math.abs(wanted);
    }

    private static boolean has(FluidCursor cursor, double pressure, double temperature) {
        try {
            cursor.setPressureTemperature(pressure, temperature);
            TableBuilder.read(cursor, new double[Property.values().length]);
            return cursor.phase() != Phase.TWO_PHASE;
        } catch (PropertyFailure e) {
            return false; // frozen, boiled away, or without a conductivity beside the critical point
        }
    }

    /** The worst relative error. */
    private static double compare(FluidCursor fast, FluidCursor full) {
        double[] got = new double[Property.values().length];
        double[] expected = new double[got.length];
        TableBuilder.read(fast, got);
        TableBuilder.read(full, expected);
        double worst = 0;
        for (Property property : Property.values()) {
            int k = property.ordinal();
            double size = Math.max(Math.abs(expected[k]), property == Property.ENTROPY ? TableError.ENTROPY_SCALE : 0);
            double error = Math.abs(got[k] - expected[k]) / size;
            assertThat(error)
                    .as("%s at %s Pa and %s K", property, full.pressure(), full.temperature())
                    .isLessThan(allowed(property));
            worst = Math.max(worst, error);
        }
        return worst;
    }

    /** Where a coolant boils, or is about to: that was once left to the full model. */
    @ParameterizedTest
    @CsvSource({"methane, 3e6, 150", "oxygen, 2e6, 120", "propane, 2e6, 300", "water, 8e6, 500"})
    void besideBoilingTheTableServesBothSides(String id, double pressure, double cold) {
        Fluid fluid = FLUIDS.propellant(id).fluid();
        double t = boiling(fluid, pressure, cold);
        try (FluidTableCursor fast = (FluidTableCursor) FluidTables.of(fluid).cursor();
                FluidCursor full = fluid.cursor()) {
            for (double distance : new double[] {-0.05, -0.01, -1e-3, -1e-4, 1e-4, 1e-3, 0.01, 0.05}) {
                full.setPressureTemperature(pressure, t * (1 + distance));
                fast.setPressureEnthalpy(pressure, full.enthalpy());
                compare(fast, full);
                assertThat(fast.phase()).isEqualTo(distance < 0 ? Phase.LIQUID : Phase.GAS);
            }
            assertThat(fast.fullEvaluations()).isZero();
            full.setPressureTemperature(pressure, t * (1 - 1e-5));
            double liquid = full.enthalpy();
            full.setPressureTemperature(pressure, t * (1 + 1e-5));
            double middle = 0.5 * (liquid + full.enthalpy());
            fast.setPressureEnthalpy(pressure, middle);
            full.setPressureEnthalpy(pressure, middle);
            assertThat(fast.phase()).isEqualTo(Phase.TWO_PHASE);
            assertThat(fast.density()).isCloseTo(full.density(), within(1e-9 * full.density()));
            assertThat(fast.fullEvaluations()).isEqualTo(1);
        }
    }

    private static double boiling(Fluid fluid, double pressure, double from) {
        double low = from;
        double high = fluid.criticalTemperature().orElseThrow() * (1 - 1e-3);
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (fluid.vapourPressure(middle) < pressure) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    @Test
    void outsideItsRangeTheFullModelAnswers() {
        Fluid water = FLUIDS.propellant("water").fluid();
        try (FluidTableCursor cursor = (FluidTableCursor) FluidTables.of(water).cursor()) {
            cursor.setPressureTemperature(150e6, 500);
            assertThat(cursor.snapshot()).isEqualTo(water.atPressureTemperature(150e6, 500));
            assertThat(cursor.fullEvaluations()).isEqualTo(1);
            cursor.setPressureEntropy(
                    25e6, water.atPressureTemperature(25e6, 320).entropy());
            assertThat(cursor.temperature()).isCloseTo(320, within(1e-3));
            assertThat(cursor.fullEvaluations()).isEqualTo(1);
        }
    }

    @Test
    void aFrozenStateIsRefusedAsByTheFullModel() {
        Fluid hydrogen = FLUIDS.propellant("hydrogen").fluid();
        try (FluidCursor cursor = FluidTables.of(hydrogen).cursor()) {
            assertThatThrownBy(() -> cursor.setPressureTemperature(6e7, 15)).isInstanceOf(PropertyFailure.class);
        }
    }

    /** A cursor that has been elsewhere answers to the bit as a fresh one does. */
    @Test
    void noAnswerDependsOnWhereTheCursorStood() {
        Fluid methane = FLUIDS.propellant("methane").fluid();
        FluidTable table = FluidTables.of(methane);
        try (FluidCursor moved = table.cursor();
                FluidCursor fresh = table.cursor()) {
            moved.setPressureTemperature(3e6, 500);
            moved.setPressureTemperature(12e6, 220);
            fresh.setPressureTemperature(12e6, 220);
            assertThat(moved.enthalpy()).isEqualTo(fresh.enthalpy());
            assertThat(moved.viscosity()).isEqualTo(fresh.viscosity());
        }
    }

    /** A table of the cold liquid, where no way takes long; the boiling line and states of all phases besides. */
    @Test
    void everyWayToCoolPropGivesTheSameNumbers() {
        List<List<double[]>> numbers = CoolPropWay.here().stream()
                .map(way -> numbers(way.fluids().propellant("nitrogen").fluid()))
                .toList();
        assertThat(numbers.get(0).get(0)).hasSizeGreaterThan(1000);
        for (List<double[]> other : numbers) {
            for (int i = 0; i < other.size(); i++) {
                assertThat(other.get(i)).containsExactly(numbers.get(0).get(i));
            }
        }
    }

    private static List<double[]> numbers(Fluid nitrogen) {
        List<double[]> all = new ArrayList<>();
        FluidRange cold = new FluidRange(nitrogen.range().minimumTemperature(), 71, 2e6);
        all.add(new TableBuilder((Fluid) Proxy.newProxyInstance(
                        Fluid.class.getClassLoader(),
                        new Class<?>[] {Fluid.class},
                        (proxy, method, arguments) ->
                                method.getName().equals("range") ? cold : method.invoke(nitrogen, arguments)))
                .build());
        SaturationSamples line =
                nitrogen.saturation(new double[] {1e5, 5e5, 2e6, 3.3e6}).orElseThrow();
        all.add(line.temperature());
        all.add(line.liquidEnthalpy());
        all.add(line.vapourEnthalpy());
        try (FluidCursor cursor = nitrogen.cursor()) {
            for (double pressure = 6e4; pressure < 9e7; pressure *= 3) {
                for (double temperature = 90; temperature < 1000; temperature *= 1.5) {
                    double[] values = new double[Property.values().length];
                    cursor.setPressureTemperature(pressure, temperature);
                    cursor.setPressureEnthalpy(pressure, cursor.enthalpy());
                    TableBuilder.read(cursor, values);
                    all.add(values);
                }
            }
        }
        return all;
    }

    /** What the model says of states does not matter here, only that every bit of the table comes back from the file. */
    @Test
    void aTableFromAFileAnswersToTheBitAsOneJustMade(@TempDir Path folder) {
        Fluid rp1 = FLUIDS.propellant("rp-1").fluid();
        FluidStore store = new FluidStore(List.of(folder), "rp-1", new byte[0], () -> "test");
        List<FluidTable> tables = Stream.of(1, 2)
                .map(i -> store.get(
                        "properties",
                        FluidTable.FORMAT,
                        numbers -> new FluidTable(rp1, numbers),
                        FluidTable::isOfItsModel,
                        () -> new TableBuilder(rp1).build()))
                .toList();
        Random random = new Random(4);
        double[] made = new double[Property.values().length];
        double[] read = new double[made.length];
        try (FluidCursor first = tables.get(0).cursor();
                FluidCursor second = tables.get(1).cursor()) {
            for (int i = 0; i < POINTS; i++) {
                double pressure = 2e6 * Math.pow(20, random.nextDouble());
                double temperature = 250 + 300 * random.nextDouble();
                first.setPressureTemperature(pressure, temperature);
                second.setPressureTemperature(pressure, temperature);
                TableBuilder.read(first, made);
                TableBuilder.read(second, read);
                assertThat(read).containsExactly(made);
                assertThat(second.enthalpy()).isEqualTo(first.enthalpy());
            }
        }
    }

    @Test
    void equalFluidsShareATableAndOthersDoNot() {
        Fluid rp1 = FLUIDS.propellant("rp-1").fluid();
        Fluid again = FluidLibrary.open().propellant("rp-1").fluid(); // reaches no CoolProp
        assertThat(FluidTables.of(again)).isSameAs(FluidTables.of(rp1));
        assertThat(FluidTables.of(FLUIDS.propellant("udmh").fluid())).isNotSameAs(FluidTables.of(rp1));
    }

    @Test
    void aTableOfAnotherModelIsNotTakenForThisOnes() {
        Fluid rp1 = FLUIDS.propellant("rp-1").fluid();
        Fluid udmh = FLUIDS.propellant("udmh").fluid();
        double[] numbers = new TableBuilder(rp1).build();
        assertThat(new FluidTable(rp1, DoubleBuffer.wrap(numbers)).isOfItsModel())
                .isTrue();
        assertThat(new FluidTable(udmh, DoubleBuffer.wrap(numbers)).isOfItsModel())
                .isFalse();
    }
}
