package dev.penstock.fluids;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidRange;
import dev.penstock.fluids.state.FluidState;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Invariance: the answer of a fluid depends on the question alone, to the last bit. */
class FluidHistoryTest {

    private static final int QUESTIONS = 40;
    private static final FluidLibrary LIBRARY = FluidLibrary.open();

    static List<String> ids() {
        return LIBRARY.ids();
    }

    @ParameterizedTest
    @MethodSource("ids")
    void noStateDependsOnTheOnesBefore(String id) {
        Fluid fluid = LIBRARY.propellant(id).fluid();
        List<Supplier<Object>> questions = questions(fluid);
        Map<Integer, Object> first = new HashMap<>();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < questions.size(); i++) {
            first.put(i, answer(questions.get(i)));
            order.add(i);
        }
        Collections.shuffle(order, new Random(3));
        for (int i : order) {
            assertThat(answer(questions.get(i))).as("%s, question %d", id, i).isEqualTo(first.get(i));
        }
        assertThat(first.values()).anyMatch(a -> a instanceof FluidState);
    }

    private static List<Supplier<Object>> questions(Fluid fluid) {
        Random random = new Random(1);
        FluidRange range = fluid.range();
        double cold = range.minimumTemperature();
        double hot = range.maximumTemperature();
        double top = Math.min(5e7, range.maximumPressure());
        List<Supplier<Object>> list = new ArrayList<>();
        for (int i = 0; i < QUESTIONS; i++) {
            double pressure = 1e5 * Math.pow(top / 1e5, random.nextDouble());
            double temperature = cold * Math.pow(hot / cold, random.nextDouble());
            list.add(() -> fluid.atPressureTemperature(pressure, temperature));
            list.add(() -> fluid.vapourPressure(temperature));
            list.add(() -> fluid.saturatedLiquid(temperature));
            try {
                FluidState state = fluid.atPressureTemperature(pressure, temperature);
                double other = pressure * (0.5 + 0.5 * random.nextDouble());
                list.add(() -> fluid.atPressureEnthalpy(other, state.enthalpy()));
                list.add(() -> fluid.atPressureEntropy(other, state.entropy()));
            } catch (PropertyFailure e) {
                // frozen or boiling there: the refusal is among the answers that are compared
                continue;
            }
        }
        return list;
    }

    private static Object answer(Supplier<Object> question) {
        try {
            return question.get();
        } catch (PropertyFailure e) {
            return e.getMessage();
        }
    }
}
