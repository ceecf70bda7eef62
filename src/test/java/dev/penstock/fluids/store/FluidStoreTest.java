package dev.penstock.fluids.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.DoubleBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept between runs is the same to the bit, whole, of its fluid, and never needed. */
class FluidStoreTest {

    private static final double[] NUMBERS = {1.5, -0.0, Double.MIN_VALUE, 1 / 3.0, 6.02e23};

    @TempDir
    Path folder;

    private final AtomicInteger made = new AtomicInteger();

    private FluidStore store(String content, String version, Path... folders) {
        return new FluidStore(List.of(folders), "fluid", content.getBytes(StandardCharsets.UTF_8), () -> version);
    }

    private double[] get(FluidStore store, int format) {
        return store.get("kind", format, FluidStoreTest::list, list -> list.length == NUMBERS.length, this::make);
    }

    private static double[] list(DoubleBuffer numbers) {
        double[] list = new double[numbers.remaining()];
        numbers.get(list);
        return list;
    }

    private double[] make() {
        made.incrementAndGet();
        return NUMBERS.clone();
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().toList();
        }
    }

    @Test
    void whatIsReadIsWhatWasMadeToTheBit() throws IOException {
        assertThat(get(store("a", "1", folder), 1)).containsExactly(NUMBERS);
        assertThat(get(store("a", "1", folder), 1)).containsExactly(NUMBERS);
        assertThat(made).hasValue(1);
        assertThat(files()).hasSize(1);
    }

    @Test
    void anotherContentVersionOrFormatHasItsOwnFile() throws IOException {
        get(store("a", "1", folder), 1);
        get(store("b", "1", folder), 1);
        get(store("a", "2", folder), 1);
        get(store("a", "1", folder), 2);
        assertThat(made).hasValue(4);
        assertThat(files()).hasSize(4);
        get(store("b", "1", folder), 1);
        assertThat(made).hasValue(4);
    }

    @Test
    void aBrokenFileIsMadeAnew() throws IOException {
        get(store("a", "1", folder), 1);
        Path file = files().get(0);
        byte[] whole = Files.readAllBytes(file);
        List<byte[]> broken = new ArrayList<>();
        for (int at = 0; at < whole.length; at += 3) {
            byte[] bytes = whole.clone();
            bytes[at] ^= 0x10;
            broken.add(bytes);
            broken.add(Arrays.copyOf(whole, at));
        }
        broken.add(Arrays.copyOf(whole, whole.length + 8));
        int before = made.get();
        for (byte[] bytes : broken) {
            Files.delete(file);
            Files.write(file, bytes);
            assertThat(get(store("a", "1", folder), 1)).containsExactly(NUMBERS);
            assertThat(made).hasValue(++before);
            assertThat(Files.readAllBytes(file)).isEqualTo(whole);
        }
    }

    @Test
    void whatNoLongerHoldsIsMadeAnew() {
        get(store("a", "1", folder), 1);
        store("a", "1", folder).get("kind", 1, FluidStoreTest::list, list -> false, this::make);
        assertThat(made).hasValue(2);
    }

    @Test
    void aFolderThatCannotBeWrittenIsPassedOver() throws IOException {
        Path file = Files.createFile(folder.resolve("in-the-way"));
        FluidStore store = store("a", "1", file.resolve("tables"), folder.resolve("second"));
        assertThat(get(store, 1)).containsExactly(NUMBERS);
        assertThat(get(store, 1)).containsExactly(NUMBERS);
        assertThat(made).hasValue(1);
        FluidStore nowhere = store("a", "1", file.resolve("tables"));
        assertThat(get(nowhere, 1)).containsExactly(NUMBERS);
        assertThat(get(nowhere, 1)).containsExactly(NUMBERS);
        assertThat(get(FluidStore.NONE, 1)).containsExactly(NUMBERS);
        assertThat(made).hasValue(4);
    }

    @Test
    void manyAtOnceReadAndWriteWholeFiles() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            List<Future<double[]>> answers = new ArrayList<>();
            for (int i = 0; i < 200; i++) {
                answers.add(threads.submit(() -> get(store("a", "1", folder), 1)));
            }
            for (Future<double[]> answer : answers) {
                assertThat(answer.get()).containsExactly(NUMBERS);
            }
        } finally {
            threads.shutdown();
        }
        assertThat(files()).hasSize(1);
    }

    @Test
    void whatAKilledRunLeftIsCleared() throws IOException {
        Path draft = Files.createFile(folder.resolve(".fluid.1.part"));
        assumeTrue(draft.toFile().setLastModified(System.currentTimeMillis() - 3_600_000));
        get(store("a", "1", folder), 1);
        assertThat(draft).doesNotExist();
    }

    @Test
    void theFoldersFollowTheStatedRule() throws IOException {
        Path home = folder.resolve("home");
        Files.createDirectories(home.resolve(".penstock"));
        Path user = folder.resolve("user").toAbsolutePath();
        String name = user.toString();
        Path kept = Path.of("penstock", "tables");
        assertThat(StoreFolders.of(home, Map.of(), name, "Linux"))
                .containsExactly(
                        home.resolve(".penstock/tables"), user.resolve(".cache").resolve(kept));
        assertThat(StoreFolders.of(folder, Map.of(), name, "Linux"))
                .containsExactly(user.resolve(".cache").resolve(kept));
        assertThat(StoreFolders.of(folder, Map.of("XDG_CACHE_HOME", name), "", "Linux"))
                .containsExactly(user.resolve(kept));
        assertThat(StoreFolders.of(folder, Map.of("XDG_CACHE_HOME", "relative"), "", "Linux"))
                .isEmpty();
        assertThat(StoreFolders.of(folder, Map.of(), name, "Mac OS X"))
                .containsExactly(user.resolve("Library/Caches").resolve(kept));
        assertThat(StoreFolders.of(folder, Map.of("LOCALAPPDATA", name), "", "Windows 11"))
                .containsExactly(user.resolve(kept));
        assertThat(StoreFolders.of(home, Map.of(StoreFolders.VARIABLE, name), "", "Linux"))
                .containsExactly(user);
        assertThat(StoreFolders.of(home, Map.of(StoreFolders.VARIABLE, "none"), name, "Linux"))
                .isEmpty();
    }
}
