package dev.penstock;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Source files as the compiler reads them, for tests of what code says. */
public final class ParsedSources {

    private ParsedSources() {}

    /**
     * @param folder folder with Java files, at any depth
     * @param reader told of every file, by its path below the folder with slashes, and what stands in it
     */
    public static void each(Path folder, BiConsumer<String, CompilationUnitTree> reader) throws IOException {
        List<Path> files;
        try (Stream<Path> walk = Files.walk(folder)) {
            files = walk.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    Writer.nullWriter(),
                    manager,
                    null,
                    List.of("-proc:none"),
                    null,
                    manager.getJavaFileObjectsFromPaths(files));
            for (CompilationUnitTree unit : task.parse()) {
                Path file = folder.relativize(Path.of(unit.getSourceFile().toUri()));
                reader.accept(file.toString().replace('\\', '/'), unit);
            }
        }
    }
}
