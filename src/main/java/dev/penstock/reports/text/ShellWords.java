package dev.penstock.reports.text;

import java.util.List;
import java.util.stream.Collectors;

/** A command line as it is typed. */
public final class ShellWords {

    private ShellWords() {}

    /**
     * @param words program and arguments
     * @return the line, with quotes where a shell needs them
     */
    public static String line(List<String> words) {
        return words.stream().map(ShellWords::quoted).collect(Collectors.joining(" "));
    }

    private static String quoted(String word) {
        return word.matches("[\\w@%+=:,./-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
    }
}
