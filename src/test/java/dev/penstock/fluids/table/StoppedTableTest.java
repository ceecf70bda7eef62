package dev.penstock.fluids.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.store.FluidStore;
import dev.penstock.numerics.Cancellation;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables take seconds: who makes one, or waits for one, can be stopped. */
class StoppedTableTest {

    private static final int SOON = 300;

    /** One fluid by a correlation, one by CoolProp; a table asks hundreds of thousands of states. */
    @ParameterizedTest
    @ValueSource(strings = {"rp-1", "methane"})
    void aTableThatIsBeingMadeAsksAtEveryStateWhetherToStop(String id) {
        Fluid fluid = FluidLibrary.open().propellant(id).fluid();
        AtomicInteger asked = new AtomicInteger();
        assertThatThrownBy(() -> Cancellation.during(
                        () -> asked.incrementAndGet() > SOON, () -> new TableBuilder(fluid).build()))
                .isInstanceOf(CancellationException.class);
        assertThat(asked).hasValue(SOON + 1);
    }

    @Test
    void whoWaitsForATableIsStoppedWhileAnotherMakesIt() throws InterruptedException {
        Fluid fluid = withoutStore(FluidLibrary.open().propellant("methane").fluid());
        CountDownLatch begun = new CountDownLatch(1);
        AtomicBoolean enough = new AtomicBoolean();
        Thread maker = new Thread(() -> {
            try {
                Cancellation.during(
                        () -> {
                            begun.countDown();
                            return enough.get();
                        },
                        () -> FluidTables.of(fluid));
            } catch (CancellationException e) {
                // it was stopped, as it should be
            }
        });
        maker.start();
        begun.await();
        assertThatThrownBy(() -> Cancellation.during(() -> true, () -> FluidTables.of(fluid)))
                .isInstanceOf(CancellationException.class);
        assertThat(maker.isAlive()).isTrue();
        enough.set(true);
        maker.join();
    }

    /** The same fluid, of which nothing is kept. */
    private static Fluid withoutStore(Fluid fluid) {
        return (Fluid) Proxy.newProxyInstance(
                Fluid.class.getClassLoader(), new Class<?>[] {Fluid.class}, (proxy, method, arguments) -> {
                    switch (method.getName()) {
                        case "store":
                            return FluidStore.NONE;
                        case "equals":
                            return proxy == arguments[0];
                        case "hashCode":
                            return System.identityHashCode(proxy);
                        default:
                            return answer(fluid, method, arguments);
                    }
                });
    }

    private static Object answer(Fluid fluid, Method method, Object... arguments) throws Throwable {
        try {
            return method.invoke(fluid, arguments);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }
}
