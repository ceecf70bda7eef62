package dev.penstock.app;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option that asks for a page. */
final class ReportOption {

    @Option(
            names = "--report",
            paramLabel = "DIR",
            description = "also write a self-contained page into this folder, made if absent")
    private Optional<Path> folder = Optional.empty();

    Optional<Path> folder() {
        return folder;
    }
}
