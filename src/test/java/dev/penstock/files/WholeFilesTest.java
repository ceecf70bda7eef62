package dev.penstock.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.errors.InvalidInput;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFilesTest {

    @TempDir
    Path folder;

    @Test
    void writesEveryFileAndLeavesNoDraft() throws Exception {
        Path target = folder.resolve("a/b");
        WholeFiles.write(target, Map.of("x.html", "ä", "y.html", "ß"));
        assertThat(Files.readString(target.resolve("x.html"))).isEqualTo("ä");
        try (Stream<Path> files = Files.list(target)) {
            assertThat(files.map(p -> p.getFileName().toString())).containsExactlyInAnyOrder("x.html", "y.html");
        }
    }

    @Test
    void oneFileThatCannotBeWrittenLeavesAllAsTheyWere() throws Exception {
        Files.writeString(folder.resolve("x.html"), "old");
        Map<String, String> contents = new LinkedHashMap<>();
        contents.put("x.html", "new");
        contents.put("no/such/folder.html", "new");
        assertThatThrownBy(() -> WholeFiles.write(folder, contents)).isInstanceOf(Exception.class);
        assertThat(Files.readString(folder.resolve("x.html"))).isEqualTo("old");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void whatAKilledRunLeftIsClearedByTheNext() throws Exception {
        Path left = Files.writeString(folder.resolve(".x.html.123456.part"), "half");
        Path other = Files.writeString(folder.resolve(".notes.part"), "somebody's");
        Path running = Files.writeString(folder.resolve(".y.html.654321.part"), "half");
        FileTime yesterday = FileTime.from(Instant.now().minus(Duration.ofDays(1)));
        Files.setLastModifiedTime(left, yesterday);
        Files.setLastModifiedTime(other, yesterday);
        WholeFiles.write(folder, Map.of("x.html", "whole"));
        assertThat(left).doesNotExist();
        assertThat(other).exists();
        assertThat(running).as("a draft of a run that goes on").exists();
        assertThat(folder.resolve("x.html")).hasContent("whole");
    }

    @Test
    void aFileInPlaceOfTheFolderIsBadInput() throws Exception {
        Path file = Files.writeString(folder.resolve("taken"), "text");
        assertThatThrownBy(() -> WholeFiles.write(file, Map.of("x.html", "new")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("folder is " + file);
        assertThat(Files.readString(file)).isEqualTo("text");
    }
}
