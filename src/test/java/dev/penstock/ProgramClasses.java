package dev.penstock;

import dev.penstock.provenance.ModelCard;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Every class of the program as it was compiled, loaded but not initialised. */
public final class ProgramClasses {

    private static final String END = ".class";

    private ProgramClasses() {}

    /** @return the classes by name */
    public static List<Class<?>> all() throws IOException, ReflectiveOperationException {
        Path root;
        try {
            root = Path.of(ModelCard.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (java.net.URISyntaxException e) {
            throw new IOException(e);
        }
        List<String> names;
        try (Stream<Path> files = Files.walk(root.resolve("dev/penstock"))) {
            names = files.map(file -> root.relativize(file).toString())
                    .filter(name -> name.endsWith(END) && !name.endsWith("package-info" + END))
                    .map(name -> name.substring(0, name.length() - END.length())
                            .replace(root.getFileSystem().getSeparator(), "."))
                    .sorted()
                    .toList();
        }
        List<Class<?>> classes = new ArrayList<>();
        for (String name : names) {
            classes.add(Class.forName(name, false, ModelCard.class.getClassLoader()));
        }
        return classes;
    }
}
