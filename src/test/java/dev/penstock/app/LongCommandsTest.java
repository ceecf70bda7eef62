package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.app.console.Session;
import dev.penstock.input.HomeFolder;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Both launchers name the commands that are worth the second compiler; no command is misspelt there. */
class LongCommandsTest {

    private static final Pattern SHELL = Pattern.compile("\\n +([a-z |]+)\\) compilers=-XX:TieredStopAtLevel=4");
    private static final Pattern WINDOWS = Pattern.compile("for %%c in \\(([a-z ]+)\\) do .*TieredStopAtLevel=4");

    @Test
    void bothLaunchersKnowTheSame() throws Exception {
        List<String> shell = named("penstock", SHELL, " \\| ");
        assertThat(named("penstock.cmd", WINDOWS, " ")).isEqualTo(shell);
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        Session session = Session.open(HomeFolder.find(), InputStream.nullInputStream(), nowhere, nowhere, false);
        assertThat(CommandLineProgram.commandLine(session).getSubcommands().keySet())
                .containsAll(shell);
    }

    private static List<String> named(String launcher, Pattern pattern, String between) throws Exception {
        Matcher matcher = pattern.matcher(Files.readString(Path.of(launcher)));
        assertThat(matcher.find()).as(launcher).isTrue();
        return List.of(matcher.group(1).split(between));
    }
}
