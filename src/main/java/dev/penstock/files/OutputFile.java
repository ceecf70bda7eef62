package dev.penstock.files;

import dev.penstock.errors.InvalidInput;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A file that a command is told to write.
 *
 * @param option what names it, for sentences
 * @param path where it goes
 */
public record OutputFile(String option, Path path) {

    /** @return the ending of the file's name, in small letters, with its point; empty if it has another than these */
    public String ending(List<String> endings) {
        String name = path.toString().toLowerCase(Locale.ROOT);
        return endings.stream().filter(name::endsWith).findFirst().orElse("");
    }

    /**
     * @param endings endings that its name may have
     * @throws InvalidInput if it has none of them
     */
    public void requireEnding(List<String> endings) {
        if (ending(endings).isEmpty()) {
            int last = endings.size() - 1;
            throw new InvalidInput(
                    "",
                    option,
                    path.toString(),
                    "its name must end in " + String.join(", ", endings.subList(0, last)) + " or " + endings.get(last));
        }
    }

    /**
     * @return the folder that the file goes into
     * @throws InvalidInput if the path names no file
     */
    public Path folder() {
        Path folder = path.toAbsolutePath().getParent();
        if (folder == null) {
            throw new InvalidInput("", option, path.toString(), "write the path of a file");
        }
        return folder;
    }

    /**
     * Writes it, whole or not at all.
     *
     * @param content what it holds
     * @return where it is
     */
    public Path write(byte[] content) {
        WholeFiles.writeBytes(folder(), Map.of(path.getFileName().toString(), content));
        return path;
    }

    /** As {@link #write(byte[])}, text in UTF-8. */
    public Path write(String text) {
        return write(text.getBytes(StandardCharsets.UTF_8));
    }
}
