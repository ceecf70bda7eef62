package dev.penstock.input;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the line on which a dotted key stands in a TOML text, for error messages. */
final class KeyLines {

    private static final Pattern HEADER = Pattern.compile("\\s*\\[\\[?\\s*([^\\]]+?)\\s*]]?\\s*(#.*)?");
    private static final Pattern KEY =
            Pattern.compile("\\s*((?:[\\w-]+|\"[^\"]*\")(?:\\s*\\.\\s*(?:[\\w-]+|\"[^\"]*\"))*)\\s*=.*");

    /** No line with a key that matters is longer; the search for keys would use up the stack on much longer ones. */
    private static final int LONGEST = 2000;

    private final Map<String, Integer> lines = new HashMap<>();

    KeyLines(String text) {
        String table = "";
        Map<String, Integer> repeats = new HashMap<>();
        String[] all = text.split("\n", -1);
        for (int i = 0; i < all.length; i++) {
            if (all[i].length() > LONGEST) {
                continue;
            }
            Matcher header = HEADER.matcher(all[i]);
            Matcher key = KEY.matcher(all[i]);
            if (header.matches() && !key.matches()) {
                table = plain(header.group(1));
                if (all[i].strip().startsWith("[[")) {
                    table += "[" + (repeats.merge(table, 1, Integer::sum) - 1) + "]";
                }
                lines.putIfAbsent(table, i + 1);
            } else if (key.matches()) {
                String name = plain(key.group(1));
                lines.putIfAbsent(table.isEmpty() ? name : table + "." + name, i + 1);
            }
        }
    }

    private static String plain(String key) {
        return key.replace("\"", "").replaceAll("\\s*\\.\\s*", ".");
    }

    /**
     * @param path dotted key
     * @return its line, or that of the nearest table around it
     */
    OptionalInt line(String path) {
        for (String p = path; !p.isEmpty(); p = p.contains(".") ? p.substring(0, p.lastIndexOf('.')) : "") {
            Integer line = lines.get(p);
            if (line != null) {
                return OptionalInt.of(line);
            }
        }
        return OptionalInt.empty();
    }
}
