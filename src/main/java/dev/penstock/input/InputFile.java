package dev.penstock.input;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import dev.penstock.errors.InvalidInput;
import dev.penstock.provenance.KeyPath;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A TOML file being read, with the problems found so far. Not thread-safe. */
public final class InputFile {

    /** Most characters of a file: far more than a concept has, far less than would hurt. */
    public static final int LARGEST = 1 << 20;

    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final TomlMapper TOML = new TomlMapper();
    /** One of several tables headed {@code [[name]]}, counted from zero. */
    private static final Pattern REPEATED = Pattern.compile("(.+)\\[(\\d{1,4})]");

    private final String name;
    private final String text;
    private final ObjectNode tree;
    /** Changes as they were typed: a text may look like a number. */
    private final Map<String, String> typed;

    private final InputTable root;
    private final List<InvalidInput.Problem> problems = new ArrayList<>();
    private final Map<String, InputValue> inputs = new LinkedHashMap<>();
    private final Map<String, String> sources = new LinkedHashMap<>();
    private KeyLines lines;
    private String sourceless = "no source given";
    private FileDefaults defaults = FileDefaults.NONE;

    private InputFile(String name, String text, ObjectNode tree, Map<String, String> typed) {
        this.name = name;
        this.text = text;
        this.tree = tree;
        this.typed = typed;
        this.root = new InputTable(this, "", tree, Optional.empty());
    }

    /**
     * The same text with other values, without parsing it again. Safe to call from several threads.
     *
     * @param changes values by dotted path, on top of those it was read with
     * @return a file with nothing asked of it yet
     * @throws InvalidInput if a path leads through a value
     */
    public InputFile with(Map<String, String> changes) {
        ObjectNode copy = tree.deepCopy();
        changes.forEach((path, value) -> change(copy, path, value));
        Map<String, String> all = new HashMap<>(typed);
        all.putAll(changes);
        return new InputFile(name, text, copy, all);
    }

    /**
     * @param path file to read
     * @return the file, with nothing asked of it yet
     * @throws InvalidInput if the file is absent, unreadable or no TOML
     */
    public static InputFile read(Path path) {
        return read(path, Map.of());
    }

    /**
     * @param path file to read
     * @param changes values by dotted path that replace or add to what the file says
     * @return the file, with nothing asked of it yet
     * @throws InvalidInput if the file is absent, unreadable or no TOML, or a path leads through a value
     */
    public static InputFile read(Path path, Map<String, String> changes) {
        try {
            if (Files.size(path) > LARGEST) {
                throw new InvalidInput("", "file", path.toString(), "it may hold " + (LARGEST >> 10) + " KiB");
            }
            return parse(path.toString(), Files.readString(path), changes);
        } catch (IOException e) {
            throw new InvalidInput("", "file", path.toString(), "it must be a readable text file in UTF-8");
        }
    }

    /**
     * @param name what to call the text in messages
     * @param text TOML text
     * @param changes values by dotted path that replace or add to what the text says; an empty one takes a value or a table out
     * @return the file, with nothing asked of it yet
     * @throws InvalidInput if the text is no TOML, or a path leads through a value
     */
    public static InputFile parse(String name, String text, Map<String, String> changes) {
        return parsePlain(name, withoutMark(text), changes);
    }

    /**
     * @param table tables and values, as JSON has them
     * @return the text of a file that says the same
     * @throws JsonProcessingException if it holds what TOML has no place for, such as null
     */
    public static String textOf(JsonNode table) throws JsonProcessingException {
        return TOML.writeValueAsString(table);
    }

    /**
     * @param text text of a file
     * @return the text without the mark that some editors put at its beginning
     */
    public static String withoutMark(String text) {
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    private static InputFile parsePlain(String name, String text, Map<String, String> changes) {
        if (text.length() > LARGEST) {
            throw new InvalidInput("", "file", name, "it may hold " + (LARGEST >> 10) + " KiB");
        }
        JsonNode tree;
        try {
            tree = TOML.readTree(text);
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            throw new InvalidInput(name + (line > 0 ? ":" + line : ""), "text", "not TOML", why(e));
        }
        ObjectNode object = tree instanceof ObjectNode o ? o : emptyTable();
        changes.forEach((path, value) -> change(object, path, value));
        return new InputFile(name, text, object, Map.copyOf(changes));
    }

    private static void change(ObjectNode root, String path, String value) {
        if (value.isBlank()) {
            remove(root, path);
            return;
        }
        List<String> parts = KeyPath.keys(path);
        ObjectNode table = root;
        for (int i = 0; i < parts.size() - 1; i++) {
            Matcher repeated = REPEATED.matcher(parts.get(i));
            JsonNode child = repeated.matches()
                    ? table.path(repeated.group(1)).get(Integer.parseInt(repeated.group(2)))
                    : table.get(parts.get(i));
            if (child == null && !repeated.matches()) {
                table = table.putObject(parts.get(i));
            } else if (child instanceof ObjectNode object) {
                table = object;
            } else {
                String why =
                        child == null ? "there is no table " + parts.get(i) : parts.get(i) + " is a value, not a table";
                throw new InvalidInput("--set", path, value, why);
            }
        }
        table.set(parts.get(parts.size() - 1), valueOf(value));
    }

    /** Keys may hold dots of their own: {@code claims."engine.mass"} is found by {@code claims.engine.mass}. */
    private static void remove(ObjectNode table, String path) {
        table.remove(path);
        for (int dot = path.indexOf('.'); dot > 0; dot = path.indexOf('.', dot + 1)) {
            Matcher repeated = REPEATED.matcher(path.substring(0, dot));
            JsonNode child = repeated.matches()
                    ? table.path(repeated.group(1)).get(Integer.parseInt(repeated.group(2)))
                    : table.get(path.substring(0, dot));
            if (child instanceof ObjectNode inside) {
                remove(inside, path.substring(dot + 1));
            }
        }
    }

    private static JsonNode valueOf(String value) {
        try {
            JsonNode node = TOML.readTree("v = " + value).get("v");
            return node == null ? JsonNodeFactory.instance.textNode(value) : node;
        } catch (JsonProcessingException e) {
            return JsonNodeFactory.instance.textNode(value);
        }
    }

    /**
     * @param text TOML text
     * @param paths dotted paths of values or tables
     * @return the text without them, where they are there; comments are lost
     * @throws InvalidInput if the text is no TOML
     */
    public static String without(String text, Collection<String> paths) {
        try {
            ObjectNode tree = (ObjectNode) TOML.readTree(text);
            paths.forEach(path -> remove(tree, path));
            return TOML.writeValueAsString(tree);
        } catch (JsonProcessingException e) {
            throw new InvalidInput("", "text", "not TOML", why(e));
        }
    }

    /**
     * @param text TOML text
     * @param changes values by dotted path that replace or add to what the text says
     * @return the text with them; comments are lost
     * @throws InvalidInput if the text is no TOML, or a path leads through a value
     */
    public static String with(String text, Map<String, String> changes) {
        try {
            ObjectNode tree = (ObjectNode) TOML.readTree(text);
            changes.forEach((path, value) -> change(tree, path, value));
            return TOML.writeValueAsString(tree);
        } catch (JsonProcessingException e) {
            throw new InvalidInput("", "text", "not TOML", why(e));
        }
    }

    /** What is wrong with a text, in the words of its reader but where those are about the reader. */
    private static String why(JsonProcessingException e) {
        return e instanceof StreamConstraintsException
                ? "tables or lists stand within each other too deeply, or a word or number in it is too long"
                : e.getOriginalMessage();
    }

    static ObjectNode emptyTable() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** A value where any text will do: what was typed as a change is one, whatever it looks like. */
    JsonNode asText(String path, JsonNode value) {
        String change = typed.get(path);
        return change == null || value.isTextual() ? value : JsonNodeFactory.instance.textNode(change.strip());
    }

    /** @return the top table */
    public InputTable root() {
        return root;
    }

    /** @return name of the file for messages */
    public String name() {
        return name;
    }

    /** @return the text as read, without changes */
    public String text() {
        return text;
    }

    /**
     * @param table a table whose keys are inputs or tables of inputs, and whose values say where those come from
     * @param prefix path of the table that the keys start from, with its dot; empty for the top of the file
     * @param otherwise what is said of a value whose source the file does not name
     * @return the sources by the table's own keys
     */
    public Map<String, String> sources(InputTable table, String prefix, String otherwise) {
        sourceless = otherwise;
        Map<String, String> own = new LinkedHashMap<>();
        for (String key : table.keys()) {
            table.optionalText(key).ifPresent(text -> own.put(key, text));
        }
        own.forEach((key, text) -> sources.put(prefix + key, text));
        return own;
    }

    /** @param everywhere defaults that hold for everything that is read from now on */
    public void defaults(FileDefaults everywhere) {
        defaults = everywhere;
    }

    FileDefaults defaults() {
        return defaults;
    }

    /** What the file says of the origin of a value; a source may be given for a whole table. */
    String source(String path) {
        for (String p = path; !p.isEmpty(); p = p.contains(".") ? p.substring(0, p.lastIndexOf('.')) : "") {
            String text = sources.get(p);
            if (text != null) {
                return text;
            }
        }
        return sourceless;
    }

    /** @return every input that was asked for so far, in that order, each once */
    public List<InputValue> inputs() {
        return List.copyOf(inputs.values());
    }

    void note(InputValue input) {
        inputs.put(input.key(), input);
    }

    /** Sought only where there is a problem to tell. */
    private KeyLines lines() {
        if (lines == null) {
            lines = new KeyLines(text);
        }
        return lines;
    }

    void problem(String path, String value, String allowed) {
        OptionalInt line = lines().line(path);
        String where = line.isPresent() ? name + ":" + line.getAsInt() : name;
        problems.add(new InvalidInput.Problem(where, path, value, allowed));
    }

    /**
     * Ends reading: keys that nobody asked for are noted, then all problems are thrown together.
     *
     * @throws InvalidInput if there is any problem
     */
    public void finish() {
        root.collectUnknown();
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems);
        }
    }

    /**
     * Ends reading of one table, where the rest of the file is another reader's.
     *
     * @param table the table read
     * @throws InvalidInput if there is any problem
     */
    public void finish(InputTable table) {
        table.collectUnknown();
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems);
        }
    }

    /** @return whether no problem has been noted yet */
    public boolean sound() {
        return problems.isEmpty();
    }
}
