package dev.penstock.vehicle.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.LimitReached;
import dev.penstock.vehicle.SampleEngines;
import dev.penstock.vehicle.VehicleSizer;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.StructuralCoefficient;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LagrangeStagingTest {

    private static final double G = 9.81; // the book's

    /** [curtis-2014] §11.6, example of three stages: Isp 400, 350, 300 s; ε 0.10, 0.15, 0.20; 5000 kg; 10 km/s. */
    private static final List<LagrangeStaging.Stage> BOOK = List.of(
            new LagrangeStaging.Stage(400 * G, 0.10),
            new LagrangeStaging.Stage(350 * G, 0.15),
            new LagrangeStaging.Stage(300 * G, 0.20));

    @Test
    void reproducesTheThreeStageExampleOfTheTextbook() {
        LagrangeStaging.Optimum optimum = LagrangeStaging.optimum(BOOK, 10_000, 5000);
        assertThat(optimum.multiplier() * 1000).isCloseTo(0.46682, within(5e-6)); // s/km
        assertThat(optimum.massRatios().get(0)).isCloseTo(4.5409, within(5e-5));
        assertThat(optimum.massRatios().get(1)).isCloseTo(2.5074, within(5e-5));
        assertThat(optimum.massRatios().get(2)).isCloseTo(1.3606, within(5e-5));
        assertThat(optimum.stageMasses().get(0)).isCloseTo(165_679, within(17.0));
        assertThat(optimum.stageMasses().get(1)).isCloseTo(18_066, within(2.0));
        assertThat(optimum.stageMasses().get(2)).isCloseTo(2477, within(0.5));
        assertThat(optimum.startMass()).isCloseTo(191_221, within(19.0));
    }

    @Test
    void theSearchWithRealModelsFindsTheSameOptimum() {
        // identity: with coefficients that do not depend on size and no allowances both methods solve one problem
        List<StagePlan> stages = BOOK.stream()
                .map(s -> new StagePlan(
                        "stage",
                        Optional.empty(),
                        EngineCount.of(1),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        new Allowances(0, 0, 0, 0),
                        new StructuralCoefficient(s.structuralCoefficient(), 0),
                        false,
                        Recovery.NONE,
                        0))
                .toList();
        List<EnginePerformance> engines = BOOK.stream()
                .<EnginePerformance>map(s -> SampleEngines.kerosene(s.exhaustVelocity()))
                .toList();
        VehiclePlan plan = new VehiclePlan(
                "book",
                "",
                OptionalDouble.of(5000),
                OptionalDouble.empty(),
                DeltaVBudget.of(10_000),
                stages,
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                List.of());
        VehicleSizing sized = new VehicleSizer().size(plan, engines);
        LagrangeStaging.Optimum optimum = LagrangeStaging.optimum(BOOK, 10_000, 5000);
        assertThat(sized.startMass()).isCloseTo(optimum.startMass(), within(1e-6 * optimum.startMass()));
        for (int i = 0; i < 3; i++) {
            assertThat(sized.stages().get(i).massRatio())
                    .isCloseTo(optimum.massRatios().get(i), within(2e-3)); // flat near the optimum
        }
    }

    @Test
    void saysTheSpeedThatTheStagesCannotPass() {
        // Σ c ln(1/ε) = 3924 ln 10 + 3433.5 ln(20/3) + 2943 ln 5 = 20 286 m/s
        assertThatThrownBy(() -> LagrangeStaging.optimum(BOOK, 21_000, 5000))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("less than 20286 m/s");
    }
}
