package dev.penstock.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.LimitReached;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.BuiltUpDryMass;
import dev.penstock.vehicle.mass.DryMassDesign;
import dev.penstock.vehicle.mass.DryMassModel;
import dev.penstock.vehicle.mass.FairedDryMass;
import dev.penstock.vehicle.mass.StructuralCoefficient;
import dev.penstock.vehicle.mass.TankMaterial;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.RocketEquation;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class VehicleSizerTest {

    private static final DryMassDesign WITH_INTERSTAGE = new DryMassDesign(
            Optional.empty(),
            TankMaterial.ALUMINIUM,
            Optional.empty(),
            false,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            true,
            0,
            Optional.empty(),
            0.15);

    private static final Allowances NONE = new Allowances(0, 0, 0, 0);

    private static StagePlan stage(String name, DryMassModel dryMass, Allowances allowances) {
        return new StagePlan(
                name,
                Optional.empty(),
                EngineCount.of(1),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                allowances,
                dryMass,
                false,
                Recovery.NONE,
                0);
    }

    private static VehiclePlan plan(
            OptionalDouble payload, OptionalDouble startMass, double deltaV, List<StagePlan> stages) {
        return new VehiclePlan(
                "sample",
                "",
                payload,
                startMass,
                DeltaVBudget.of(deltaV),
                stages,
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                List.of());
    }

    private static VehicleSizing forPayload(
            double payload, double deltaV, List<StagePlan> stages, EnginePerformance... e) {
        return new VehicleSizer()
                .size(plan(OptionalDouble.of(payload), OptionalDouble.empty(), deltaV, stages), List.of(e));
    }

    private static VehicleSizing forStartMass(
            double mass, double deltaV, List<StagePlan> stages, EnginePerformance... e) {
        return new VehicleSizer()
                .size(plan(OptionalDouble.empty(), OptionalDouble.of(mass), deltaV, stages), List.of(e));
    }

    @Test
    void reproducesTheLectureSingleStageToOrbit() {
        // [akin-mass], worked case: 9200 m/s, 430 s (4214 m/s), inert fraction 0.08, payload 5000 kg give a final over
        // start mass of 0.1127, payload fraction 0.0327, start mass 153 000, inert 12 240, propellant 135 800 kg,
        // oxygen 116 400 and hydrogen 19 390 kg at 6:1. The inert fraction of the start mass is turned into the
        // coefficient of dry mass and propellant: 12240/(12240 + 135800).
        StructuralCoefficient dryMass = new StructuralCoefficient(12240.0 / (12240 + 135800), 0);
        VehicleSizing sized =
                forPayload(5000, 9200, List.of(stage("only", dryMass, NONE)), SampleEngines.hydrogen(4214));
        StageSizing only = sized.stages().get(0);
        assertThat(sized.startMass())
                .isCloseTo(153_000, within(0.002 * 153_000)); // the lecture goes on from λ = 0.0327, three digits
        assertThat(only.finalMass() / only.startMass()).isCloseTo(0.1127, within(5e-5));
        assertThat(sized.payloadFraction()).isCloseTo(0.0327, within(5e-5));
        assertThat(only.dryMass().total()).isCloseTo(12_240, within(0.002 * 12_240));
        assertThat(only.propellant().oxidizer()).isCloseTo(116_400, within(0.002 * 116_400));
        assertThat(only.propellant().fuel()).isCloseTo(19_390, within(0.002 * 19_390));
    }

    @Test
    void splitsPropellantByMixtureRatioAndFillsTanksAtTheLoadingDensity() {
        // common practice, no source: at 2.7 the split is 73/27 by mass; 1250 and 840 kg/m3
        Allowances allowances = new Allowances(0, 0, 0, 0.03);
        StageSizing stage = forPayload(
                        1000,
                        6000,
                        List.of(stage("only", new StructuralCoefficient(0.08, 0), allowances)),
                        SampleEngines.kerosene(3237))
                .stages()
                .get(0);
        double loaded = stage.propellant().loaded();
        assertThat(stage.propellant().oxidizer() / loaded).isCloseTo(0.73, within(0.0005));
        assertThat(stage.propellant().fuel() / loaded).isCloseTo(0.27, within(0.0005));
        assertThat(stage.oxidizerTankVolume()).isCloseTo(0.72973 * loaded / 1250 / 0.97, within(1e-5 * loaded / 1250));
        assertThat(stage.fuelTankVolume()).isCloseTo(0.27027 * loaded / 840 / 0.97, within(1e-5 * loaded / 840));
    }

    @Test
    void similarStagesReachTheTextbookSpeeds() {
        // [curtis-2014] §11.5, similar stages with Isp 350 s, ε 0.15, payload fraction 0.05: 5657, 7407, 7929 m/s with
        // 9.81 m/s2; recomputed from the book's equation
        double[] deltaV = {5657, 7407, 7929};
        for (int n = 1; n <= 3; n++) {
            List<StagePlan> stages = new ArrayList<>();
            List<EnginePerformance> engines = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                stages.add(stage("stage " + (i + 1), new StructuralCoefficient(0.15, 0), NONE));
                engines.add(SampleEngines.kerosene(350 * 9.81));
            }
            VehicleSizing sized = forPayload(500, deltaV[n - 1], stages, engines.toArray(EnginePerformance[]::new));
            assertThat(sized.payloadFraction()).isCloseTo(0.05, within(2e-5));
        }
    }

    @Test
    void aFairingHeavierThanAllElseIsCarriedToo() {
        // 1 kg under a fairing of 800 kg, dropped at once: the stage burns for itself and what it carries alone
        DryMassModel covered = new FairedDryMass(new StructuralCoefficient(0.08, 0), 800);
        StageSizing only = forPayload(1, 3000, List.of(stage("only", covered, NONE)), SampleEngines.kerosene(3237))
                .stages()
                .get(0);
        double bare = only.startMass() - 800;
        assertThat(only.propellant().burned()).isCloseTo(bare * (1 - Math.exp(-3000 / 3237.0)), within(1e-6 * bare));
        assertThat(only.above()).isCloseTo(1, within(1e-6));
    }

    @Test
    void saysAtWhichDryMassASingleStageStopsClosing() {
        // R = 18.24 leaves 1/17.24 = 5.80 % of the propellant for dry mass; ε 0.08 means 8.70 %
        List<StagePlan> stages = List.of(stage("only stage", new StructuralCoefficient(0.08, 0), NONE));
        assertThatThrownBy(() -> forPayload(1000, 9400, stages, SampleEngines.kerosene(330 * 9.81)))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("only stage does not close at any size")
                .hasMessageContaining("mass ratio of 18.24")
                .hasMessageContaining("dry mass must stay below 5.80 % of the propellant")
                .hasMessageContaining("gives 8.70 %");
        assertThatThrownBy(() -> forStartMass(100_000, 9400, stages, SampleEngines.kerosene(330 * 9.81)))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("no payload is left")
                .hasMessageContaining("it stops closing at a dry mass of 5482 kg"); // 100 t / 18.24
    }

    @Test
    void theNumberInTheMessageDoesClose() {
        List<StagePlan> stages = List.of(stage("only stage", new StructuralCoefficient(0.08, 0), NONE));
        // ln(1/0.08) c, the limit without payload
        double limit = 330 * 9.81 * Math.log(1 / 0.08);
        assertThatThrownBy(() -> forPayload(1, limit + 1, stages, SampleEngines.kerosene(330 * 9.81)))
                .hasMessageContaining(String.format("below %.0f m/s", limit));
        assertThat(forPayload(1, limit - 1, stages, SampleEngines.kerosene(330 * 9.81))
                        .payload())
                .isEqualTo(1);
    }

    @Test
    void countsEnginesForTheWeightTheyLift() {
        StagePlan plan = new StagePlan(
                "only",
                Optional.empty(),
                new EngineCount(java.util.OptionalInt.empty(), 1.3, 1, 1, 1.2),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Allowances.USUAL,
                new BuiltUpDryMass(DryMassDesign.PLAIN),
                false,
                Recovery.NONE,
                101325);
        StageSizing stage = forPayload(4000, 6000, List.of(plan), SampleEngines.kerosene(3237))
                .stages()
                .get(0);
        double weight = stage.startMass() * 9.80665;
        assertThat(stage.engines() * 1e6).isGreaterThanOrEqualTo(1.3 * weight);
        assertThat((stage.engines() - 1) * 1e6).isGreaterThanOrEqualTo(1.2 * weight);
        assertThat((stage.engines() - 2) * 1e6).isLessThan(1.2 * weight);
    }

    @Property(tries = 40)
    void startMassAndPayloadFollowFromEachOther(
            @ForAll @DoubleRange(min = 200, max = 50_000) double payload,
            @ForAll @DoubleRange(min = 7000, max = 9500) double deltaV) {
        DryMassModel relations = new BuiltUpDryMass(WITH_INTERSTAGE);
        List<StagePlan> stages =
                List.of(stage("lower", relations, Allowances.USUAL), stage("upper", relations, Allowances.USUAL));
        EnginePerformance[] engines = {SampleEngines.kerosene(3200), SampleEngines.kerosene(3300)};
        VehicleSizing down = forPayload(payload, deltaV, stages, engines);
        VehicleSizing up = forStartMass(down.startMass(), deltaV, stages, engines);
        assertThat(up.payload()).isCloseTo(payload, within(1e-6 * payload));
    }

    @Property(tries = 40)
    void massesAddUpAndObeyTheRocketEquation(
            @ForAll @DoubleRange(min = 200, max = 50_000) double payload,
            @ForAll @DoubleRange(min = 7000, max = 9500) double deltaV) {
        DryMassModel relations = new BuiltUpDryMass(WITH_INTERSTAGE);
        Allowances allowances = new Allowances(0.01, 1, 0.002, 0.04);
        List<StagePlan> stages = List.of(stage("lower", relations, allowances), stage("upper", relations, allowances));
        VehicleSizing sized =
                forPayload(payload, deltaV, stages, SampleEngines.kerosene(3200), SampleEngines.hydrogen(4300));
        assertThat(sized.payload() + sized.dryMass() + sized.propellantMass())
                .isCloseTo(sized.startMass(), within(1e-9 * sized.startMass()));
        assertThat(sized.deltaV()).isCloseTo(deltaV, within(1e-9 * deltaV));
        for (StageSizing stage : sized.stages()) {
            double start = stage.finalMass() + stage.propellant().burned();
            double c = stage.engine().vacuumThrust() / stage.engine().massFlow();
            assertThat(RocketEquation.deltaV(c, start, stage.finalMass()))
                    .isCloseTo(stage.deltaV(), within(1e-9 * deltaV));
        }
    }
}
