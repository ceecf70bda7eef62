package dev.penstock.app.console;

import picocli.CommandLine;

/** Reads the version from the archive that the program runs from. */
public final class Version implements CommandLine.IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"Penstock " + text()};
    }

    /** @return the version alone */
    public static String text() {
        String version = Version.class.getPackage().getImplementationVersion();
        return version == null ? "(built from a working copy)" : version;
    }
}
