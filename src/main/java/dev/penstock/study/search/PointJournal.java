package dev.penstock.study.search;

import dev.penstock.errors.InvalidInput;
import dev.penstock.study.space.StudyPoint;
import dev.penstock.study.space.StudySpace;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/**
 * The points that a search has tried, each written to a file as soon as it is known. A search follows from its seed, so that the same
 * search, begun again, asks for the same points: those of the file are taken from there, to the last bit, and the others are
 * worked out. A journal belongs to a case, its figures and one version of program and data. Safe to share between threads.
 */
public final class PointJournal implements AutoCloseable {

    /** Keeps nothing. */
    public static final PointJournal NONE = new PointJournal(Optional.empty());

    private static final String FORM = "penstock points 1 ";
    private static final String OPTION = "--journal";

    /** Ends each line: one that a kill has cut short does not count. */
    private static final String END = "\t.";

    private final Optional<FileChannel> file;
    private final Map<String, String> kept = new ConcurrentHashMap<>();

    private PointJournal(Optional<FileChannel> file) {
        this.file = file;
    }

    /**
     * @param path file, made if absent
     * @param question what is asked
     * @param software what the numbers are made with
     * @return the journal, held by this process until it is closed
     * @throws InvalidInput if the file is that of another case, no journal, in use, or cannot be written
     */
    public static PointJournal open(Path path, Question question, String software) {
        String first = FORM + digest(question, software);
        try {
            FileChannel channel = FileChannel.open(
                    path, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            if (!locked(channel)) {
                channel.close();
                throw refused(path, "another run is writing there; wait for its end");
            }
            PointJournal journal = new PointJournal(Optional.of(channel));
            String text = text(channel);
            if (text.isEmpty()) {
                journal.write(first + "\n");
            } else if (!text.startsWith(first + "\n")) {
                channel.close();
                throw refused(
                        path,
                        text.startsWith(FORM)
                                ? "it holds the points of another case, of other figures or of another version; name another file"
                                : "it is no journal of a study; name another file");
            } else {
                journal.take(text);
            }
            return journal;
        } catch (IOException e) {
            throw refused(path, "it must be a file that can be written (" + e + ")");
        }
    }

    private static boolean locked(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    private static InvalidInput refused(Path path, String why) {
        return new InvalidInput("", OPTION, path.toString(), why);
    }

    private static String text(FileChannel channel) throws IOException {
        ByteBuffer all = ByteBuffer.allocate(Math.toIntExact(channel.size()));
        while (all.hasRemaining() && channel.read(all) >= 0) {
            // Until all of it is there.
        }
        return new String(all.array(), StandardCharsets.UTF_8);
    }

    /** Takes the whole lines in; what a kill has left of one is ended, so that the next line stands by itself. */
    private void take(String text) throws IOException {
        text.lines().filter(line -> line.endsWith(END)).forEach(line -> {
            int tab = line.indexOf('\t');
            kept.put(line.substring(0, tab), line.substring(tab + 1, line.length() - END.length()));
        });
        if (!text.endsWith("\n")) {
            write("\n");
        }
    }

    private static String digest(Question question, String software) {
        String all = software + "\n" + question.subject().written() + "\n"
                + question.figures().stream().map(f -> f.path()).collect(Collectors.joining("\n"));
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(all.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** @return how many points it holds */
    public int size() {
        return kept.size();
    }

    /** The answer at a point: the one that was kept, or a new one, which is kept. */
    StudyPoint at(Question question, StudySpace space, double[] values) {
        if (file.isEmpty()) {
            return question.subject().evaluate(space, values, question.figures());
        }
        String key = space.changes(values).entrySet().stream()
                .map(e -> e.getKey() + "=" + e.getValue())
                .collect(Collectors.joining(";"));
        String line = kept.get(key);
        if (line != null) {
            return point(values, line);
        }
        StudyPoint point = question.subject().evaluate(space, values, question.figures());
        keep(key, line(point));
        return point;
    }

    private static String line(StudyPoint point) {
        List<String> words = new ArrayList<>();
        words.add(point.failure().map(StudyPoint.Failure::kind).orElse(""));
        words.add(point.failure().map(f -> f.sentence().replaceAll("\\s", " ")).orElse(""));
        for (double figure : point.figures()) {
            words.add(Double.toString(figure));
        }
        return String.join("\t", words);
    }

    private static StudyPoint point(double[] values, String line) {
        String[] words = line.split("\t", -1);
        double[] figures = new double[words.length - 2];
        for (int i = 0; i < figures.length; i++) {
            figures[i] = Double.parseDouble(words[i + 2]);
        }
        return new StudyPoint(
                values,
                figures,
                words[0].isEmpty() ? Optional.empty() : Optional.of(new StudyPoint.Failure(words[0], words[1])));
    }

    private synchronized void keep(String key, String line) {
        kept.put(key, line);
        try {
            write(key + "\t" + line + END + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(String text) throws IOException {
        FileChannel channel = file.orElseThrow();
        ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        channel.position(channel.size());
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }

    @Override
    public void close() {
        try {
            if (file.isPresent()) {
                file.get().close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
