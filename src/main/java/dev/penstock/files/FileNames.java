package dev.penstock.files;

import java.util.Locale;

/** Names of files, made from what people call things. */
public final class FileNames {

    private FileNames() {}

    /**
     * @param name name of a concept, a vehicle or a study
     * @return its letters and digits in small, with hyphens for everything between; empty if it has none
     */
    public static String of(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }
}
