package dev.penstock.files;

import dev.penstock.errors.InvalidInput;
import java.io.File;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Files that appear whole or not at all: every one is written beside its place under a temporary name, and moved into
 * place only when all are complete. A reader never sees half a page; a failure leaves the old files. When they are written,
 * they are on the disk: a power cut afterwards takes nothing back. What a killed run left unfinished in a folder is cleared by
 * the next that writes there.
 */
public final class WholeFiles {

    private static final Pattern DRAFT = Pattern.compile("\\..+\\.\\d+\\.part");
    /** Nobody takes so long to write: a draft of this age has no owner. */
    private static final Duration ABANDONED = Duration.ofMinutes(10);

    private WholeFiles() {}

    /**
     * @param folder folder, made if absent
     * @param contents text by file name
     * @throws InvalidInput if the folder cannot be made or written
     */
    public static void write(Path folder, Map<String, String> contents) {
        Map<String, byte[]> bytes = new LinkedHashMap<>();
        contents.forEach((name, text) -> bytes.put(name, text.getBytes(StandardCharsets.UTF_8)));
        writeBytes(folder, bytes);
    }

    /**
     * @param folder folder, made if absent
     * @param contents bytes by file name
     * @throws InvalidInput if the folder cannot be made or written
     */
    public static void writeBytes(Path folder, Map<String, byte[]> contents) {
        Map<Path, Path> waiting = new LinkedHashMap<>();
        try {
            Path known = existing(folder);
            Files.createDirectories(folder);
            clear(folder);
            for (Map.Entry<String, byte[]> entry : contents.entrySet()) {
                Path draft = Files.createTempFile(folder, "." + entry.getKey() + ".", ".part");
                waiting.put(draft, folder.resolve(entry.getKey()));
                writeThrough(draft, entry.getValue());
                readableByOthers(draft);
            }
            for (Map.Entry<Path, Path> entry : waiting.entrySet()) {
                move(entry.getKey(), entry.getValue());
            }
            keep(folder);
            for (Path made = folder.toAbsolutePath(); !made.equals(known); made = made.getParent()) {
                keep(made.getParent());
            }
        } catch (IOException e) {
            throw new InvalidInput(
                    "", "folder", folder.toString(), "it must be a folder that can be written (" + e + ")");
        } finally {
            waiting.keySet().forEach(WholeFiles::discard);
        }
    }

    /** @return the folder, or the nearest one above it that is there already */
    private static Path existing(Path folder) {
        Path place = folder.toAbsolutePath();
        while (!Files.exists(place) && place.getParent() != null) {
            place = place.getParent();
        }
        return place;
    }

    private static void clear(Path folder) throws IOException {
        Instant before = Instant.now().minus(ABANDONED);
        try (DirectoryStream<Path> drafts = Files.newDirectoryStream(folder, WholeFiles::draft)) {
            for (Path draft : drafts) {
                try {
                    if (Files.getLastModifiedTime(draft, LinkOption.NOFOLLOW_LINKS)
                            .toInstant()
                            .isBefore(before)) {
                        Files.deleteIfExists(draft);
                    }
                } catch (NoSuchFileException e) {
                    // Its owner has finished, or another run has cleared it: it is gone, which is what was wanted.
                    continue;
                } catch (AccessDeniedException e) {
                    // Somebody else's: a leftover draft is harmless, and must not keep this file from being written.
                    continue;
                }
            }
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
    }

    private static boolean draft(Path file) {
        return DRAFT.matcher(file.getFileName().toString()).matches()
                && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
    }

    /** Returns when the bytes are on the disk, not only in the memory of the machine. */
    private static void writeThrough(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    /** The new names are on the disk too. Windows opens no folders, and needs none of this. */
    private static void keep(Path folder) throws IOException {
        if (File.separatorChar == '/') {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    private static void move(Path draft, Path place) throws IOException {
        try {
            Files.move(draft, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(draft, place, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Temporary files are private to their owner; a report is not. */
    private static void readableByOthers(Path file) {
        file.toFile().setReadable(true, false);
    }

    private static void discard(Path draft) {
        try {
            Files.deleteIfExists(draft);
        } catch (IOException e) {
            // A leftover draft is harmless: hidden, and never taken for a report.
            draft.toFile().deleteOnExit();
        }
    }
}
