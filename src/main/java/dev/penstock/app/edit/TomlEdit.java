package dev.penstock.app.edit;

import dev.penstock.input.InputKind;
import dev.penstock.input.InputValue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Writes changed values into a TOML text and leaves everything else as it was: comments, order, spacing. Knows keys on
 * lines of their own, in repeated tables too: {@code stage[1].engines}. Values inside inline tables are out of its reach,
 * which shows when the text is read again. Not thread-safe.
 */
public final class TomlEdit {

    private static final Pattern HEADER = Pattern.compile("\\s*\\[\\s*([^\\[\\]]+?)\\s*]\\s*(?:#.*)?");
    private static final Pattern REPEATED = Pattern.compile("\\s*\\[\\[\\s*([^\\[\\]]+?)\\s*]]\\s*(?:#.*)?");
    private static final Pattern KEY = Pattern.compile(
            "(\\s*((?:[\\w-]+|\"[^\"]*\")(?:\\s*\\.\\s*(?:[\\w-]+|\"[^\"]*\"))*)\\s*=\\s*)(.*)", Pattern.DOTALL);
    private static final Pattern LITERAL = Pattern.compile(
            "[-+]?(?:\\d+(?:\\.\\d+)?)(?:[eE][-+]?\\d+)?|true|false|\"(?:[^\"\\\\\\n]|\\\\.)*\"|'[^'\\n]*'|\\[[^\\n]*]");

    private final List<String> lines;

    private TomlEdit(String text) {
        this.lines = new ArrayList<>(List.of(text.split("\n", -1)));
    }

    /** A key on lines of its own. */
    private record Entry(String path, String table, int first, int last, String head, String value, String tail) {}

    /**
     * @param text TOML text
     * @param changes value by dotted path, as a command line writes them; an empty one takes a value or a table out
     * @param isText whether the value at a path is any text, which is then written in quotes even if it looks like a number
     * @return the text with the values in place
     */
    public static String apply(String text, Map<String, String> changes, Predicate<String> isText) {
        TomlEdit edit = new TomlEdit(text);
        changes.forEach((path, value) -> edit.set(path, value.isBlank() ? "" : literal(value, isText.test(path))));
        return String.join("\n", edit.lines);
    }

    /**
     * @param text TOML text of a concept or vehicle
     * @param changes value by dotted path, as a command line writes them; an empty one takes a value or a table out
     * @param inputs what the text says with these changes
     * @return the text with the values in place
     */
    public static String apply(String text, Map<String, String> changes, List<InputValue> inputs) {
        Set<String> texts = inputs.stream()
                .filter(i -> i.input().kind() instanceof InputKind.Text)
                .map(InputValue::key)
                .collect(Collectors.toSet());
        return apply(text, changes, texts::contains);
    }

    /**
     * @param text TOML text
     * @return what it says on lines of their own: value without quotes by dotted path, in the order of the text
     */
    public static Map<String, String> written(String text) {
        Map<String, String> map = new LinkedHashMap<>();
        new TomlEdit(text).entries().forEach(e -> map.putIfAbsent(e.path(), unquoted(e.value())));
        return map;
    }

    private static String unquoted(String value) {
        return value.replaceAll("^([\"'])(.*)\\1$", "$2");
    }

    /** Puts a literal in its place; an empty one takes out what is there. */
    private void set(String path, String literal) {
        if (literal.isEmpty()) {
            remove(path);
            return;
        }
        List<Entry> entries = entries();
        Optional<Entry> there =
                entries.stream().filter(e -> e.path().equals(path)).findFirst();
        if (there.isPresent()) {
            Entry entry = there.get();
            lines.subList(entry.first(), entry.last() + 1).clear();
            lines.add(entry.first(), entry.head() + literal + entry.tail());
            return;
        }
        insert(path, literal, entries);
    }

    /** Takes a value out, or a table with its header and all that stands in it; comments stay. */
    private void remove(String path) {
        TreeSet<Integer> gone = new TreeSet<>();
        entries().stream().filter(e -> within(e.path(), path)).forEach(e -> IntStream.rangeClosed(e.first(), e.last())
                .forEach(gone::add));
        Headers headers = new Headers();
        for (int i = 0; i < lines.size(); i++) {
            if (headers.enters(lines.get(i)) && within(headers.table, path)) {
                gone.add(i);
            }
        }
        gone.descendingIterator().forEachRemaining(i -> {
            lines.remove((int) i);
            if (i > 0
                    && i < lines.size()
                    && lines.get(i).isBlank()
                    && lines.get(i - 1).isBlank()) {
                lines.remove((int) i);
            }
        });
    }

    private static boolean within(String path, String table) {
        return path.equals(table) || path.startsWith(table + ".") || path.startsWith(table + "[");
    }

    private void insert(String path, String literal, List<Entry> entries) {
        int dot = path.lastIndexOf('.');
        String table = dot < 0 ? "" : path.substring(0, dot);
        int place = table.isEmpty() ? topEnd(entries) : endOfTable(table, entries);
        if (place >= 0) {
            lines.add(place, path.substring(dot + 1) + " = " + literal);
            return;
        }
        if (table.contains("[")) {
            insertBelow(path, literal, entries);
            return;
        }
        // The table may be written as dotted keys of a table around it; a header would then define it twice.
        Optional<Entry> dotted = entries.stream()
                .filter(e -> e.path().startsWith(table + "."))
                .filter(e -> table.startsWith(e.table()) && !e.table().equals(table))
                .reduce((first, second) -> second);
        if (dotted.isPresent()) {
            String around = dotted.get().table();
            String relative = around.isEmpty() ? path : path.substring(around.length() + 1);
            lines.add(dotted.get().last() + 1, relative + " = " + literal);
            return;
        }
        while (!lines.isEmpty() && lines.get(lines.size() - 1).isBlank()) {
            lines.remove(lines.size() - 1);
        }
        lines.addAll(List.of("", "[" + table + "]", path.substring(dot + 1) + " = " + literal, ""));
    }

    /** A table inside a repeated one gets no header of its own: the key goes to the table around it, with a dot. */
    private void insertBelow(String path, String literal, List<Entry> entries) {
        for (int dot = path.lastIndexOf('.'); dot > 0; dot = path.lastIndexOf('.', dot - 1)) {
            int place = endOfTable(path.substring(0, dot), entries);
            if (place >= 0) {
                lines.add(place, path.substring(dot + 1) + " = " + literal);
                return;
            }
        }
    }

    private int topEnd(List<Entry> entries) {
        return entries.stream()
                        .filter(e -> e.table().isEmpty())
                        .mapToInt(Entry::last)
                        .max()
                        .orElse(-1)
                + 1;
    }

    private int endOfTable(String table, List<Entry> entries) {
        Headers headers = new Headers();
        for (int i = 0; i < lines.size(); i++) {
            if (headers.enters(lines.get(i)) && headers.table.equals(table)) {
                int line = i;
                return entries.stream()
                                .filter(e -> e.table().equals(table))
                                .mapToInt(Entry::last)
                                .max()
                                .orElse(line)
                        + 1;
            }
        }
        return -1;
    }

    private List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        Headers headers = new Headers();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            Matcher key = KEY.matcher(line);
            if (!headers.enters(line) && key.matches()) {
                int last = i;
                String rest = key.group(3);
                while (end(rest) < 0 && last + 1 < lines.size()) {
                    rest = rest + "\n" + lines.get(++last);
                }
                int end = Math.max(end(rest), 0);
                String name = plain(key.group(2));
                String value = rest.substring(0, end).stripTrailing();
                entries.add(new Entry(
                        headers.table.isEmpty() ? name : headers.table + "." + name,
                        headers.table,
                        i,
                        last,
                        key.group(1),
                        value,
                        rest.substring(value.length())));
                i = last;
            }
        }
        return entries;
    }

    /** Follows the headers of a text; repeated tables are counted from zero. */
    private static final class Headers {

        private final Map<String, Integer> repeats = new LinkedHashMap<>();
        private String table = "";

        boolean enters(String line) {
            Matcher repeated = REPEATED.matcher(line);
            Matcher single = HEADER.matcher(line);
            if (repeated.matches()) {
                String name = indexed(plain(repeated.group(1)));
                table = name + "[" + (repeats.merge(name, 1, Integer::sum) - 1) + "]";
                return true;
            }
            if (single.matches()) {
                table = indexed(plain(single.group(1)));
                return true;
            }
            return false;
        }

        /** A table below a repeated one belongs to the last of those. */
        private String indexed(String name) {
            for (int dot = name.indexOf('.'); dot > 0; dot = name.indexOf('.', dot + 1)) {
                Integer count = repeats.get(name.substring(0, dot));
                if (count != null) {
                    return indexed(name.substring(0, dot) + "[" + (count - 1) + "]" + name.substring(dot));
                }
            }
            return name;
        }
    }

    /** @return where the value ends and blanks or a comment begin; -1 if it goes on on the next line */
    private static int end(String rest) {
        for (String fence : List.of("\"\"\"", "'''")) {
            if (rest.startsWith(fence)) {
                int close = rest.indexOf(fence, fence.length());
                return close < 0 ? -1 : close + fence.length();
            }
        }
        int depth = 0;
        char quote = 0;
        boolean comment = false;
        for (int i = 0; i < rest.length(); i++) {
            char c = rest.charAt(i);
            if (comment) {
                comment = c != '\n';
            } else if (quote != 0) {
                if (c == '\\' && quote == '"') {
                    i++;
                } else if (c == quote) {
                    quote = 0;
                }
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '[' || c == '{') {
                depth++;
            } else if (c == ']' || c == '}') {
                depth--;
            } else if (c == '#') {
                if (depth == 0) {
                    return i;
                }
                comment = true;
            }
        }
        return depth == 0 ? rest.length() : -1;
    }

    private static String plain(String key) {
        return key.replace("\"", "").replaceAll("\\s*\\.\\s*", ".");
    }

    private static String literal(String value, boolean anyText) {
        String text = value.strip();
        boolean quotes = text.startsWith("\"") || text.startsWith("'");
        if ((quotes || !anyText) && LITERAL.matcher(text).matches()) {
            return text;
        }
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
            } else if (c < ' ' || c == 0x7f) {
                quoted.append(String.format("\\u%04x", c));
            } else {
                quoted.appendCodePoint(c);
            }
        });
        return quoted.append('"').toString();
    }
}
