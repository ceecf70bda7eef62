package dev.penstock.cooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.errors.PenstockException;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** From 100 N to 10 MN and 1 to 400 bar: a jacket with its limits, or a failure that says where and why. */
class JacketRangeTest {

    private static final JacketSolver SOLVER = Cases.solver();

    record Trial(String fuel, double chamberPressure, double thrust, ChannelKind kind) {}

    @Provide
    Arbitrary<Trial> trials() {
        return Combinators.combine(
                        Arbitraries.of("methane", "hydrogen", "rp-1", "ethanol", "propane"),
                        Arbitraries.doubles().between(5, 7.6),
                        Arbitraries.doubles().between(2, 7),
                        Arbitraries.of(ChannelKind.values()))
                .as((fuel, p, f, kind) -> new Trial(fuel, Math.pow(10, p), Math.pow(10, f), kind));
    }

    @Property(tries = 25)
    void anyJacketConservesEnergyOrSaysWhyNot(@ForAll("trials") Trial trial) {
        double ratio = trial.fuel().equals("hydrogen") ? 5.5 : 2.6;
        Cases.Engine engine =
                new Cases.Engine("oxygen", trial.fuel(), ratio, trial.chamberPressure(), 6, 3, 1.0, trial.thrust());
        JacketDesign design = Jackets.automatic()
                .withCells(40)
                .withChannels(new ChannelLayout(
                        trial.kind(), java.util.OptionalDouble.empty(), List.of(), java.util.OptionalDouble.empty()));
        try {
            JacketCase question = engine.fuelCooled(1.8 * trial.chamberPressure() + 2e5, design);
            JacketResult result = SOLVER.solve(question);
            double rise = question.massFlow()
                    * (result.outlet().enthalpy() - result.inlet().enthalpy());
            assertThat(result.heatLoad()).isPositive().isCloseTo(rise, within(1e-8 * rise));
            assertThat(result.pressureDrop()).isBetween(0.0, question.inletPressure());
            assertThat(result.limits()).isNotEmpty();
        } catch (PenstockException e) {
            assertThat(e.getMessage()).matches("(?s).*(x = |no state of).*");
        }
    }

    /** Jackets that were once hard: boiling, drying out, leaving the model, tiny throats. */
    @ParameterizedTest(name = "{0}/{1} at {3} Pa and {4} N, {5}")
    @CsvFileSource(resources = "/cooling/hard-jackets.csv", numLinesToSkip = 1)
    void hardJacketsAreResults(
            String oxidizer, String fuel, double ratio, double pressure, double thrust, ChannelKind kind) {
        Cases.Engine engine = new Cases.Engine(oxidizer, fuel, ratio, pressure, 10, 3, 1.0, thrust);
        JacketDesign design = Jackets.automatic()
                .withCells(50)
                .withChannels(new ChannelLayout(
                        kind, java.util.OptionalDouble.empty(), List.of(), java.util.OptionalDouble.empty()));
        JacketResult result = SOLVER.solve(engine.fuelCooled(1.8 * pressure + 2e5, design));
        assertThat(result.coolantTemperatureRise()).isPositive();
        assertThat(result.pressureDrop()).isPositive();
    }
}
