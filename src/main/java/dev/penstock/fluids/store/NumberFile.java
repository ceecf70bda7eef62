package dev.penstock.fluids.store;

import dev.penstock.files.WholeFiles;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.DoubleBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32C;

/**
 * A file of numbers under a key: a mark, the lengths, a check sum, the key, then the numbers in the machine's own order of bytes.
 * It appears whole or not at all, so that two processes that write it at once leave that of the later one; it is never changed in place,
 * so that one may be read while another takes its place.
 */
final class NumberFile {

    /** Another order of bytes makes another mark. */
    private static final long MARK = 0x50454e5354424c31L;

    private static final int HEAD = 4 * Long.BYTES;
    private static final int LONGEST_KEY = 4096;

    private NumberFile() {}

    /** @return the numbers, mapped into memory; empty if there is no such file, or it is not whole, or has another key */
    static Optional<DoubleBuffer> read(Path file, String key) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            long size = channel.size();
            if (size < HEAD || size > Integer.MAX_VALUE) {
                return Optional.empty();
            }
            ByteBuffer bytes =
                    channel.map(FileChannel.MapMode.READ_ONLY, 0, size).order(ByteOrder.nativeOrder());
            long mark = bytes.getLong();
            long count = bytes.getLong();
            long keyLength = bytes.getLong();
            long sum = bytes.getLong();
            if (mark != MARK
                    || keyLength < 0
                    || keyLength > LONGEST_KEY
                    || count < 0
                    || size != HEAD + padded(keyLength) + count * Double.BYTES
                    || sum != sum(bytes.duplicate())) {
                return Optional.empty();
            }
            byte[] its = new byte[(int) keyLength];
            bytes.get(its);
            if (!new String(its, StandardCharsets.UTF_8).equals(key)) {
                return Optional.empty();
            }
            bytes.position((int) (HEAD + padded(keyLength)));
            return Optional.of(bytes.slice().order(ByteOrder.nativeOrder()).asDoubleBuffer());
        } catch (IOException | RuntimeException e) {
            return Optional.empty(); // it cannot be read: it is as if it were not there
        }
    }

    private static long padded(long length) {
        return (length + 7) / 8 * 8;
    }

    /** Of all from where the buffer stands. */
    private static long sum(ByteBuffer bytes) {
        CRC32C sum = new CRC32C();
        sum.update(bytes);
        return sum.getValue();
    }

    /** @return whether the file is there now; a folder that cannot be made or written is no mistake */
    static boolean write(Path file, String key, double[] numbers) {
        byte[] keyBytes = key.getBytes(StandardCharsets.UTF_8);
        ByteBuffer bytes = ByteBuffer.allocate(
                        (int) (HEAD + padded(keyBytes.length) + (long) numbers.length * Double.BYTES))
                .order(ByteOrder.nativeOrder());
        bytes.putLong(MARK).putLong(numbers.length).putLong(keyBytes.length).putLong(0);
        bytes.put(keyBytes).position((int) (HEAD + padded(keyBytes.length)));
        bytes.asDoubleBuffer().put(numbers);
        bytes.putLong(3 * Long.BYTES, sum(bytes.duplicate().position(HEAD).limit(bytes.capacity())));
        try {
            WholeFiles.writeBytes(file.getParent(), Map.of(file.getFileName().toString(), bytes.array()));
            return true;
        } catch (RuntimeException e) {
            return false; // made again by the next process
        }
    }
}
