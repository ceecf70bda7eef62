package dev.penstock.app.web;

import dev.penstock.files.WholeFiles;
import dev.penstock.input.InputFile;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The folder whose files the browser may read and write. A name is checked against a pattern, then against where the file
 * really lies, so that neither dots nor links lead outside.
 */
final class Workspace {

    /** Far more than a concept, far less than would hurt. */
    static final int LARGEST = 256 * 1024;

    /** Folder of the studies. */
    static final String STUDIES = "studies";

    /** Folder of the claims. */
    static final String CLAIMS = "claims";

    private static final String VEHICLES = "vehicles";
    private static final Pattern NAME = Pattern.compile(
            "(?:(?:" + String.join("|", VEHICLES, STUDIES, CLAIMS) + ")/)?[A-Za-z0-9][A-Za-z0-9_-]{0,63}\\.toml");
    private static final int VERSION_LENGTH = 24;

    private final Path root;

    /**
     * A file as it was read.
     *
     * @param name name in the workspace
     * @param text text
     * @param version changes whenever the text does
     */
    record Document(String name, String text, String version) {

        /** @return the file as a page is told of it */
        Map<String, Object> map() {
            return Map.of("file", name, "text", text, "version", version);
        }
    }

    /** @param root folder, which must exist */
    Workspace(Path root) {
        try {
            this.root = root.toRealPath();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @return names of the files that hold engine concepts, sorted */
    List<String> concepts() {
        return names(root, "");
    }

    /** @return names of the files that hold vehicles, sorted */
    List<String> vehicles() {
        return names(root.resolve(VEHICLES), VEHICLES + "/");
    }

    /** @return names of the files that hold studies, sorted */
    List<String> studies() {
        return names(root.resolve(STUDIES), STUDIES + "/");
    }

    /** @return names of the files that hold claims, sorted */
    List<String> claims() {
        return names(root.resolve(CLAIMS), CLAIMS + "/");
    }

    /**
     * @param place path of a file
     * @return its name in the workspace; empty if it has none
     */
    Optional<String> nameOf(Path place) {
        if (!place.startsWith(root)) {
            return Optional.empty();
        }
        String name = root.relativize(place).toString().replace(File.separatorChar, '/');
        return NAME.matcher(name).matches() && inside(place) ? Optional.of(name) : Optional.empty();
    }

    private static List<String> names(Path folder, String prefix) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> prefix + file.getFileName())
                    .filter(name -> NAME.matcher(name).matches())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * @param name name in the workspace
     * @return its place
     * @throws Refusal with status 403 if the name leads elsewhere
     */
    Path place(String name) {
        if (!NAME.matcher(name).matches()) {
            throw new Refusal(403, "a file is named with letters, digits, - and _, and ends in .toml");
        }
        Path place = root.resolve(name).normalize();
        if (!inside(place)) {
            throw new Refusal(403, name + " does not lie in the workspace");
        }
        return place;
    }

    /**
     * @param place path of a file or of one to come
     * @return whether it lies in the workspace, links followed
     */
    boolean inside(Path place) {
        try {
            Path existing = place.toAbsolutePath().normalize();
            while (!Files.exists(existing, java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
                existing = existing.getParent();
            }
            return existing.toRealPath().startsWith(root);
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * @param name name in the workspace
     * @return the file
     * @throws Refusal if there is none, or it is too large
     */
    Document read(String name) {
        Path place = place(name);
        if (!Files.isRegularFile(place)) {
            throw new Refusal(404, "there is no " + name + " in the workspace");
        }
        try {
            if (Files.size(place) > LARGEST) {
                throw new Refusal(413, name + " is larger than " + LARGEST / 1024 + " KiB");
            }
            String text = InputFile.withoutMark(Files.readString(place));
            return new Document(name, text, version(text));
        } catch (IOException e) {
            throw new Refusal(422, name + " must be a readable text file in UTF-8");
        }
    }

    /**
     * @param body question of a page
     * @return the text that it sends; if none, that of the file which it names
     * @throws Refusal if there is neither
     */
    String text(RequestBody body) {
        String sent = body.text("text");
        return sent.isEmpty() ? read(body.text("file")).text() : sent;
    }

    /**
     * Saves a text, if the file is still what the writer had read.
     *
     * @param name name in the workspace
     * @param text text to write
     * @param version version that was read; empty for a file that must not exist yet
     * @return the file as written
     * @throws Refusal with status 409 and both texts if somebody else has written meanwhile
     */
    synchronized Document save(String name, String text, String version) {
        Path place = place(name);
        boolean exists = Files.exists(place);
        Document current = exists ? read(name) : new Document(name, "", "");
        if (!current.version().equals(version)) {
            String why = version.isEmpty()
                    ? "there is a file " + name + " already"
                    : exists ? name + " has been changed since it was opened" : name + " has been removed";
            throw new Refusal(409, why, Map.of("theirs", current.text(), "yours", text, "version", current.version()));
        }
        WholeFiles.write(place.getParent(), Map.of(place.getFileName().toString(), text));
        return new Document(name, text, version(text));
    }

    private static String version(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, VERSION_LENGTH);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
