package dev.penstock.app.console;

import dev.penstock.reports.text.Release;
import picocli.CommandLine;

/** Tells the version to whoever asks the command line. */
public final class Version implements CommandLine.IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"Penstock " + Release.version()};
    }
}
