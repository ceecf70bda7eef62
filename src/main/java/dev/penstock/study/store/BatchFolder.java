package dev.penstock.study.store;

import dev.penstock.errors.InvalidInput;
import dev.penstock.files.WholeFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The folder of a study's rows:
 *
 * <pre>
 * study.toml, what it names, schema.json     written before the first batch
 * batch=00017/part.parquet                   the rows of batch 17, written beside its place and moved there
 * batch=00017/_SUCCESS                       empty; the batch is finished and on the disk
 * </pre>
 *
 * A batch without {@code _SUCCESS} does not count. One process at a time writes there; its lock goes with it, however it ends.
 * Safe to share between threads.
 */
public final class BatchFolder implements AutoCloseable {

    /** The file of a batch. */
    public static final String PART = "part.parquet";

    /** The study that made the rows. */
    public static final String STUDY = "study.toml";

    /** What the columns hold. */
    public static final String SCHEMA = "schema.json";

    private static final String SUCCESS = "_SUCCESS";
    private static final String LOCK = ".lock";
    private static final Pattern BATCH = Pattern.compile("batch=(\\d{5,9})");

    private final Path folder;
    private final FileChannel channel;
    private final FileLock lock;

    private BatchFolder(Path folder, FileChannel channel, FileLock lock) {
        this.folder = folder;
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * Takes a new or empty folder for a study, or goes on with the one that this study has begun.
     *
     * @param folder folder, made if absent
     * @param origin text by file name of all that says what the rows are: {@code study.toml}, {@code schema.json}, and the
     *     files that the study names
     * @return the folder, held by this process until it is closed
     * @throws InvalidInput if the folder holds another study or other files, cannot be written, or another run writes there
     */
    public static BatchFolder open(Path folder, Map<String, String> origin) {
        check(folder, origin);
        try {
            Files.createDirectories(folder);
            FileChannel channel =
                    FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock lock = lock(folder, channel);
            if (!Files.exists(folder.resolve(STUDY))) {
                begin(folder, origin);
            }
            return new BatchFolder(folder, channel, lock);
        } catch (IOException e) {
            throw new InvalidInput(
                    "", "--out", folder.toString(), "it must be a folder that can be written (" + e + ")");
        }
    }

    /** The study comes last: a folder that has it has all that it names. */
    private static void begin(Path folder, Map<String, String> origin) {
        Map<String, String> here = new LinkedHashMap<>();
        origin.forEach((name, text) -> {
            Path file = folder.resolve(name);
            if (file.getParent().equals(folder)) {
                here.put(name, text);
            } else {
                WholeFiles.write(file.getParent(), Map.of(file.getFileName().toString(), text));
            }
        });
        here.put(STUDY, here.remove(STUDY));
        WholeFiles.write(folder, here);
    }

    private static FileLock lock(Path folder, FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return lock;
            }
        } catch (OverlappingFileLockException e) {
            // Another run of this process: refused like one of another process.
        }
        channel.close();
        throw new InvalidInput("", "--out", folder.toString(), "another run is writing there; wait for its end");
    }

    private static void check(Path folder, Map<String, String> origin) {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            boolean begun = Files.exists(folder.resolve(STUDY));
            Set<String> own = origin.keySet().stream()
                    .map(name -> Path.of(name).getName(0).toString())
                    .collect(Collectors.toSet());
            if (!begun
                    && files.map(f -> f.getFileName().toString())
                            .anyMatch(name -> !name.startsWith(".") && !own.contains(name))) {
                throw new InvalidInput(
                        "", "--out", folder.toString(), "it holds other files; name a new or an empty folder");
            }
            if (begun) {
                for (Map.Entry<String, String> file : origin.entrySet()) {
                    Path there = folder.resolve(file.getKey());
                    String text = Files.exists(there) ? Files.readString(there) : "";
                    if (!text.equals(file.getValue())) {
                        throw new InvalidInput(
                                "",
                                "--out",
                                folder.toString(),
                                "it holds another study (" + difference(file.getKey(), text, file.getValue())
                                        + "); name another folder");
                    }
                }
            }
        } catch (IOException e) {
            throw new InvalidInput("", "--out", folder.toString(), "it must be a folder that can be read (" + e + ")");
        }
    }

    private static String difference(String name, String there, String here) {
        List<String> theirs = there.lines().toList();
        List<String> ours = here.lines().toList();
        for (int i = 0; i < Math.max(theirs.size(), ours.size()); i++) {
            String their = i < theirs.size() ? plain(theirs.get(i)) : "";
            String our = i < ours.size() ? plain(ours.get(i)) : "";
            if (!their.equals(our)) {
                return name + " says " + (their.isEmpty() ? "nothing" : their) + " where this one says "
                        + (our.isEmpty() ? "nothing" : our);
            }
        }
        return name + " differs";
    }

    /** A line of TOML or JSON without the comma that parts it from the next. */
    private static String plain(String line) {
        String stripped = line.strip();
        return stripped.endsWith(",") ? stripped.substring(0, stripped.length() - 1) : stripped;
    }

    /** @return numbers of the finished batches */
    public BitSet finished() {
        BitSet numbers = new BitSet();
        batches(folder).forEach((number, part) -> numbers.set(number));
        return numbers;
    }

    /**
     * Keeps a batch; when this returns, it is on the disk.
     *
     * @param number number of the batch
     * @param parquet its file, see {@link RowFile}
     */
    public void keep(int number, byte[] parquet) {
        Path place = folder.resolve(String.format(Locale.ROOT, "batch=%05d", number));
        WholeFiles.writeBytes(place, Map.of(PART, parquet));
        WholeFiles.writeBytes(place, Map.of(SUCCESS, new byte[0]));
    }

    /**
     * @param folder folder of a study
     * @return the file of each finished batch, in the order of the batches
     * @throws InvalidInput if it is not the folder of a study
     */
    public static List<Path> parts(Path folder) {
        if (!Files.isRegularFile(folder.resolve(STUDY)) || !Files.isRegularFile(folder.resolve(SCHEMA))) {
            throw new InvalidInput(
                    "", "OUT", folder.toString(), "it must be the folder that a study of many points has written");
        }
        return List.copyOf(batches(folder).values());
    }

    private static Map<Integer, Path> batches(Path folder) {
        Map<Integer, Path> found = new TreeMap<>();
        try (Stream<Path> places = Files.list(folder)) {
            List<Path> all = new ArrayList<>(places.toList());
            for (Path place : all) {
                Matcher name = BATCH.matcher(place.getFileName().toString());
                if (name.matches()
                        && Files.exists(place.resolve(SUCCESS))
                        && Files.isRegularFile(place.resolve(PART))) {
                    found.put(Integer.parseInt(name.group(1)), place.resolve(PART));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return found;
    }

    @Override
    public void close() {
        try {
            lock.release();
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
