package dev.penstock.app.console;

import java.io.File;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Pages whose files lie in temporary folders: people know such a file as {@code page.html/concept.toml}. Safe to share. */
public final class UnpackedPages {

    private final Map<Path, Path> pages = new ConcurrentHashMap<>();

    /** Notes that a folder has the files of a page. */
    void add(Path folder, Path page) {
        pages.put(folder, page);
    }

    /**
     * @param file any file
     * @return the file as people know it
     */
    public Path shown(Path file) {
        return pages.entrySet().stream()
                .filter(page -> file.startsWith(page.getKey()))
                .map(page -> page.getValue().resolve(page.getKey().relativize(file)))
                .findFirst()
                .orElse(file);
    }

    /**
     * @param text a sentence
     * @return the sentence with files as people know them
     */
    String shown(String text) {
        String shown = text;
        for (Map.Entry<Path, Path> page : pages.entrySet()) {
            shown = shown.replace(page.getKey() + File.separator, page.getValue() + File.separator);
        }
        return shown;
    }
}
