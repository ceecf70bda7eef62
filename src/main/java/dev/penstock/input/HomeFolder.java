package dev.penstock.input;

import java.nio.file.Path;

/**
 * The folder that holds Penstock's data ({@code fluids/}, {@code cycles/}) and what it fetches ({@code .penstock/}): the
 * system property {@code penstock.home}, else the environment variable {@code PENSTOCK_HOME}, else the working folder.
 */
public final class HomeFolder {

    private HomeFolder() {}

    /** @return the home folder, absolute; it need not exist */
    public static Path find() {
        String property = System.getProperty("penstock.home", "");
        String variable = System.getenv("PENSTOCK_HOME");
        String folder = !property.isBlank() ? property : variable == null ? "" : variable;
        return Path.of(folder).toAbsolutePath().normalize();
    }
}
