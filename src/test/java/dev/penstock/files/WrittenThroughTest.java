package dev.penstock.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the operating system is asked for when files are written, as strace sees it: the bytes go to the disk before the file
 * gets its name, and the name goes to the disk before the writer returns. That the disk then keeps it, no test shows.
 */
class WrittenThroughTest {

    @TempDir
    Path folder;

    /** What is traced. */
    static final class Writer {

        private Writer() {}

        public static void main(String[] arguments) {
            WholeFiles.write(Path.of(arguments[0]), Map.of("kept.toml", "name = \"kept\"\n"));
            System.out.println("returned");
        }
    }

    @Test
    void bytesThenNameThenFoldersReachTheDiskBeforeTheWriterReturns() throws Exception {
        Path target = folder.toRealPath().resolve("made/studies");
        List<String> calls = trace(target);
        String draft = Pattern.quote(target + "/.kept.toml.") + "\\d+\\.part";
        int bytes = last(calls, "fsync\\(\\d+<" + draft + ">\\).* = 0");
        int name = last(calls, "rename.*\"" + draft + "\".*\"" + Pattern.quote(target + "/kept.toml") + "\".* = 0");
        int entry = last(calls, "fsync\\(\\d+<" + Pattern.quote(target.toString()) + ">\\).* = 0");
        int made =
                last(calls, "fsync\\(\\d+<" + Pattern.quote(target.getParent().toString()) + ">\\).* = 0");
        int above =
                last(calls, "fsync\\(\\d+<" + Pattern.quote(folder.toRealPath().toString()) + ">\\).* = 0");
        int returned = last(calls, "write\\(1<.*returned.*");
        assertThat(List.of(bytes, name, entry, made, above, returned)).isSorted();
    }

    private static int last(List<String> calls, String pattern) {
        Pattern wanted = Pattern.compile(".*" + pattern);
        for (int i = calls.size() - 1; i >= 0; i--) {
            if (wanted.matcher(calls.get(i)).matches()) {
                return i;
            }
        }
        throw new AssertionError("no call like " + pattern + " among\n" + String.join("\n", calls));
    }

    private List<String> trace(Path target) throws Exception {
        Path calls = folder.resolve("calls.txt");
        Process process;
        try {
            process = new ProcessBuilder(
                            "strace",
                            "-f",
                            "-y",
                            "-qq",
                            "-e",
                            "trace=fsync,fdatasync,rename,renameat,renameat2,write",
                            "-e",
                            "signal=none",
                            "-o",
                            calls.toString(),
                            ProcessHandle.current().info().command().orElse("java"),
                            "-Xint",
                            "-cp",
                            place(WholeFiles.class) + ":" + place(WrittenThroughTest.class),
                            Writer.class.getName(),
                            target.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve("out.txt").toFile())
                    .start();
        } catch (IOException e) {
            assumeTrue(false, "needs strace");
            throw e;
        }
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        String said = Files.readString(folder.resolve("out.txt"));
        assumeTrue(!said.contains("PTRACE"), "strace may not trace here: " + said);
        assertThat(process.exitValue()).as(said).isZero();
        return Files.readAllLines(calls);
    }

    private static String place(Class<?> type) {
        return Path.of(URI.create(
                        type.getProtectionDomain().getCodeSource().getLocation().toString()))
                .toString();
    }
}
