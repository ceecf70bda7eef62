package dev.penstock.vehicle.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.LimitReached;
import dev.penstock.vehicle.HowFar;
import dev.penstock.vehicle.SampleEngines;
import dev.penstock.vehicle.VehicleSizer;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.BuiltUpDryMass;
import dev.penstock.vehicle.mass.DryMassDesign;
import dev.penstock.vehicle.mass.DryMassModel;
import dev.penstock.vehicle.mass.GivenDryMass;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TradeTest {

    private static final EnginePerformance KEROSENE = SampleEngines.kerosene(3237);
    private static final EnginePerformance HYDROGEN = SampleEngines.hydrogen(4300);
    private static final Allowances ALLOWANCES = new Allowances(0.01, 1, 0.003, 0.03);

    private static StagePlan stage(DryMassModel dryMass) {
        return new StagePlan(
                "stage",
                Optional.empty(),
                EngineCount.of(3),
                OptionalDouble.empty(),
                OptionalDouble.of(4),
                ALLOWANCES,
                dryMass,
                false,
                Recovery.NONE,
                0);
    }

    private static VehiclePlan plan(
            OptionalDouble payload, OptionalDouble startMass, double deltaV, StagePlan... stages) {
        return new VehiclePlan(
                "sample",
                "",
                payload,
                startMass,
                DeltaVBudget.of(deltaV),
                List.of(stages),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                List.of());
    }

    @Test
    void theClosingCurveMeetsZeroWhereTheSizingDoes() {
        double startMass = 150e3;
        ClosingCurve curve = ClosingCurve.of(KEROSENE, ALLOWANCES, 3, startMass, 8000, 20e3);
        double dry = 0.9 * curve.closingDryMass();
        VehicleSizing sized = new VehicleSizer()
                .size(
                        plan(
                                OptionalDouble.empty(),
                                OptionalDouble.of(startMass),
                                8000,
                                stage(new GivenDryMass(dry, 0))),
                        List.of(KEROSENE));
        assertThat(sized.payload()).isCloseTo(curve.closingDryMass() - dry, within(1e-6 * startMass));
        assertThat(curve.points().get(0).payload()).isEqualTo(curve.closingDryMass());
    }

    @Test
    void withoutAllowancesTheClosingDryMassIsStartMassOverMassRatio() {
        // common practice, no source: 330 s and 9.81 m/s2, 9400 m/s: mass ratio 18.24
        ClosingCurve curve =
                ClosingCurve.of(SampleEngines.kerosene(330 * 9.81), new Allowances(0, 0, 0, 0), 1, 100e3, 9400, 10e3);
        assertThat(100e3 / curve.closingDryMass()).isCloseTo(18.24, within(0.005));
    }

    @Test
    void hydrogenIsLightAndBulky() {
        DryMassModel built = new BuiltUpDryMass(DryMassDesign.PLAIN);
        List<PropellantTrade.Row> rows = new PropellantTrade()
                .rows(
                        plan(OptionalDouble.of(8000), OptionalDouble.empty(), 9300, stage(built), stage(built)),
                        List.of(KEROSENE, HYDROGEN));
        assertThat(rows).extracting(PropellantTrade.Row::pair).containsExactly("oxygen / rp-1", "oxygen / hydrogen");
        PropellantTrade.Row kerosene = rows.get(0);
        PropellantTrade.Row hydrogen = rows.get(1);
        assertThat(hydrogen.sizing().orElseThrow().startMass())
                .isLessThan(kerosene.sizing().orElseThrow().startMass());
        assertThat(hydrogen.bulkDensity()).isLessThan(0.4 * kerosene.bulkDensity());
        assertThat(hydrogen.tankVolume()).isPositive();
        assertThat(hydrogen.height()).isPositive();
    }

    @Test
    void aCandidateThatDoesNotCloseGivesItsReason() {
        DryMassModel built = new BuiltUpDryMass(DryMassDesign.PLAIN);
        PropellantTrade.Row row = new PropellantTrade()
                .rows(plan(OptionalDouble.of(8000), OptionalDouble.empty(), 12_500, stage(built)), List.of(KEROSENE))
                .get(0);
        assertThat(row.sizing()).isEmpty();
        assertThat(row.reason()).contains("does not close");
        assertThat(row.tankVolume()).isZero();
    }

    @Test
    void comingBackCostsPayload() {
        DryMassModel built = new BuiltUpDryMass(DryMassDesign.PLAIN);
        List<ReuseTrade.Row> rows = new ReuseTrade()
                .rows(
                        plan(OptionalDouble.empty(), OptionalDouble.of(250e3), 9300, stage(built), stage(built)),
                        file -> KEROSENE);
        List<Double> payloads = rows.stream()
                .map(row -> row.sizing().map(VehicleSizing::payload).orElse(0.0))
                .toList();
        assertThat(payloads).hasSize(3);
        assertThat(payloads.get(0)).isGreaterThan(payloads.get(1));
        assertThat(payloads.get(1)).isGreaterThan(payloads.get(2));
    }

    @Test
    void theOnlyStageOfAVehicleToOrbitIsNotBroughtBack() {
        DryMassModel built = new BuiltUpDryMass(DryMassDesign.PLAIN);
        List<ReuseTrade.Row> rows = new ReuseTrade()
                .rows(plan(OptionalDouble.of(100), OptionalDouble.empty(), 9300, stage(built)), file -> HYDROGEN);
        assertThat(rows).hasSize(3);
        assertThat(rows.get(0).reason()).isNotEqualTo(ReuseTrade.FROM_ORBIT);
        assertThat(rows.subList(1, 3)).allSatisfy(row -> {
            assertThat(row.sizing()).isEmpty();
            assertThat(row.reason()).isEqualTo(ReuseTrade.FROM_ORBIT);
        });
    }

    @Test
    void whatWouldCloseClosesAndALittleLessDoesNot() {
        DryMassModel built = new BuiltUpDryMass(DryMassDesign.PLAIN);
        VehiclePlan plan = plan(OptionalDouble.empty(), OptionalDouble.of(150e3), 9300, stage(built));
        HowFar far = HowFar.of("it does not", plan, file -> KEROSENE, Optional.empty());
        double factor = far.impulseFactor().orElseThrow();
        assertThat(factor).isGreaterThan(1);
        VehicleSizer sizer = new VehicleSizer();
        double exhaust = 3237;
        assertThat(sizer.size(plan, List.of(SampleEngines.kerosene(1.001 * factor * exhaust)))
                        .payload())
                .isPositive();
        assertThatThrownBy(() -> sizer.size(plan, List.of(SampleEngines.kerosene(0.995 * factor * exhaust))))
                .isInstanceOf(LimitReached.class);
        double reached = far.reached().orElseThrow();
        assertThat(sizer.size(plan.withMission(DeltaVBudget.of(reached)), List.of(KEROSENE))
                        .payload())
                .isPositive();
        assertThatThrownBy(() -> sizer.size(plan.withMission(DeltaVBudget.of(1.005 * reached)), List.of(KEROSENE)))
                .isInstanceOf(LimitReached.class);
        assertThat(far.dryMassFactor().orElseThrow()).isBetween(0.1, 1.0);
        assertThat(far.near().orElseThrow().payload()).isPositive();
    }
}
