package dev.penstock.reports.text;

/** The version of the archive that the program runs from. */
public final class Release {

    private Release() {}

    /** @return version; words in its place where there is no archive */
    public static String version() {
        String version = Release.class.getPackage().getImplementationVersion();
        return version == null ? "(built from a working copy)" : version;
    }
}
