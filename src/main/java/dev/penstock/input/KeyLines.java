package dev.penstock.input;

import dev.penstock.provenance.KeyPath;
import java.util.HashMap;
import java.util.List;
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
        Nesting nesting = new Nesting();
        String[] all = text.split("\n", -1);
        for (int i = 0; i < all.length; i++) {
            if (nesting.outside() && all[i].length() <= LONGEST) {
                Matcher header = HEADER.matcher(all[i]);
                Matcher key = KEY.matcher(all[i]);
                if (key.matches()) {
                    String name = plain(key.group(1));
                    lines.putIfAbsent(table.isEmpty() ? name : table + "." + name, i + 1);
                } else if (header.matches()) {
                    table = numbered(plain(header.group(1)), all[i].strip().startsWith("[["), repeats);
                    lines.putIfAbsent(table, i + 1);
                }
            }
            nesting.read(all[i]);
        }
    }

    /** A table below a repeated one belongs to the last of those before it. */
    private static String numbered(String header, boolean repeated, Map<String, Integer> repeats) {
        StringBuilder path = new StringBuilder();
        List<String> parts = KeyPath.keys(header);
        for (int i = 0; i < parts.size(); i++) {
            path.append(i == 0 ? "" : ".").append(parts.get(i));
            String here = path.toString();
            if (repeated && i == parts.size() - 1) {
                repeats.merge(here, 1, Integer::sum);
            }
            if (repeats.containsKey(here)) {
                path.append('[').append(repeats.get(here) - 1).append(']');
            }
        }
        return path.toString();
    }

    /** Tells lines that begin a key or a table from those inside a list or a text of several lines. */
    private static final class Nesting {

        private int depth;
        private String quote = "";

        boolean outside() {
            return depth == 0 && quote.isEmpty();
        }

        void read(String line) {
            for (int i = 0; i < line.length(); i++) {
                char c = line.charAt(i);
                if (!quote.isEmpty()) {
                    if (c == '\\' && quote.startsWith("\"")) {
                        i++;
                    } else if (line.startsWith(quote, i)) {
                        i += quote.length() - 1;
                        quote = "";
                    }
                } else if (c == '#') {
                    break;
                } else if (c == '"' || c == '\'') {
                    String three = String.valueOf(c).repeat(3);
                    quote = line.startsWith(three, i) ? three : String.valueOf(c);
                    i += quote.length() - 1;
                } else if (c == '[' || c == '{') {
                    depth++;
                } else if (c == ']' || c == '}') {
                    depth = Math.max(0, depth - 1);
                }
            }
            if (quote.length() == 1) {
                quote = "";
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
        for (String p = plain(path); !p.isEmpty(); p = p.contains(".") ? p.substring(0, p.lastIndexOf('.')) : "") {
            Integer line = lines.get(p);
            if (line != null) {
                return OptionalInt.of(line);
            }
        }
        return OptionalInt.empty();
    }
}
