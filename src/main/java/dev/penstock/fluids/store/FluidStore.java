package dev.penstock.fluids.store;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.DoubleBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Numbers that were worked out of one fluid's file, kept between runs. A file in the store belongs to a kind of numbers, their
 * format, the content of the fluid's file and the version of what answers for it; any other is not seen, a broken one is made anew.
 * Where nothing can be kept they are made by every process. Safe to share between threads.
 */
public final class FluidStore {

    /** Keeps nothing. */
    public static final FluidStore NONE = new FluidStore(List.of(), "", new byte[0], () -> "");

    private final List<Path> folders;
    private final String fluid;
    private final String content;
    private final Supplier<String> version;

    /**
     * @param folders where to keep them, see {@link StoreFolders}
     * @param fluid id of the fluid
     * @param file content of its file
     * @param version what answers for the fluid beside its file
     */
    public FluidStore(List<Path> folders, String fluid, byte[] file, Supplier<String> version) {
        this.folders = List.copyOf(folders);
        this.fluid = fluid;
        this.content = hash(file);
        this.version = version;
    }

    /**
     * @param kind kind of the numbers, a part of the file's name
     * @param format number of their format, raised whenever they mean something else, or come out other in
     *     any bit because what makes them, or the search behind it, has changed
     * @param read makes of the numbers what is wanted
     * @param holds whether what was read from a file still agrees with what answers for the fluid
     * @param make works the numbers out
     * @param <T> what is wanted
     * @return what was read, from the store if it is there
     */
    public <T> T get(
            String kind, int format, Function<DoubleBuffer, T> read, Predicate<T> holds, Supplier<double[]> make) {
        String key = folders.isEmpty() ? "" : kind + " " + format + "\n" + version.get() + "\n" + content;
        String name = fluid + "-" + kind + "-"
                + hash(key.getBytes(StandardCharsets.UTF_8)).substring(0, 16) + ".bin";
        for (Path folder : folders) {
            Optional<T> known =
                    NumberFile.read(folder.resolve(name), key).map(read).filter(holds);
            if (known.isPresent()) {
                return known.get();
            }
        }
        double[] numbers = make.get();
        for (Path folder : folders) {
            if (NumberFile.write(folder.resolve(name), key, numbers)) {
                break;
            }
        }
        return read.apply(direct(numbers));
    }

    /** Of the same class as numbers from a file, so that the reading of both is one piece of machine code. */
    private static DoubleBuffer direct(double[] numbers) {
        ByteBuffer bytes =
                ByteBuffer.allocateDirect(numbers.length * Double.BYTES).order(ByteOrder.nativeOrder());
        bytes.asDoubleBuffer().put(numbers);
        return bytes.asReadOnlyBuffer().order(ByteOrder.nativeOrder()).asDoubleBuffer();
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }
}
