package dev.penstock.input;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import java.util.Locale;
import java.util.Optional;

/**
 * Writes a file to start from: what is stated, and every other input that a file of its kind may have. Behind {@code #} stand what
 * counts while it is left out, behind {@code ##} the inputs of tables that are not there.
 */
public final class FileTemplate {

    private static final int COMMENT_COLUMN = 44;
    private static final TomlMapper TOML = new TomlMapper();

    private final StringBuilder out = new StringBuilder();

    private FileTemplate() {}

    /**
     * @param file what a file of the kind may hold
     * @param stated text of the shortest file that can be used
     * @return the same with every other input behind a mark
     * @throws IllegalArgumentException if the text is no TOML (a defect in the caller)
     */
    public static String text(InputGroup file, String stated) {
        try {
            FileTemplate template = new FileTemplate();
            template.out
                    .append("# ")
                    .append(file.title())
                    .append(
                            ".\n# Values carry their unit. Lines that begin with # show what counts while they are left out, where it has a part.\n")
                    .append("# Lines that begin with ## belong to tables that are not there.\n");
            template.write(file, "", TOML.readTree(stated), true);
            return template.out.toString();
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private void write(InputGroup group, String path, JsonNode node, boolean within) {
        boolean there = within && (group.presence() == InputGroup.Presence.ALWAYS || !node.isMissingNode());
        String name = group.presence() == InputGroup.Presence.NAMED && !path.isEmpty() ? path + ".\"...\"" : path;
        if (!path.isEmpty()) {
            String header = group.presence() == InputGroup.Presence.REPEATED ? "[[" + name + "]]" : "[" + name + "]";
            out.append("\n# ").append(group.title()).append(".\n");
            out.append(there ? "" : "## ").append(header).append('\n');
        }
        for (Input<?> input : group.inputs()) {
            JsonNode value = node.path(input.key());
            out.append(
                    value.isMissingNode()
                            ? line(there ? "# " : "## ", input, Optional.empty(), input.whenAbsent())
                            : input.key() + " = " + value + "\n");
        }
        if (group.free().isPresent()) {
            node.fields().forEachRemaining(entry -> out.append('"')
                    .append(entry.getKey())
                    .append("\" = ")
                    .append(entry.getValue())
                    .append('\n'));
        }
        for (InputGroup inside : group.groups()) {
            inside(inside, path.isEmpty() ? inside.key() : path + "." + inside.key(), node.path(inside.key()), there);
        }
    }

    private void inside(InputGroup group, String path, JsonNode node, boolean within) {
        if (group.presence() == InputGroup.Presence.REPEATED && node.isArray()) {
            node.forEach(element -> write(group, path, element, within));
        } else if (group.presence() == InputGroup.Presence.NAMED && node.isObject()) {
            node.fields()
                    .forEachRemaining(entry -> write(
                            group.as(group.key(), group.title()).ifWritten(),
                            path + ".\"" + entry.getKey() + '"',
                            entry.getValue(),
                            within));
        } else {
            write(group, path, node, within);
        }
    }

    /**
     * @param mark what stands before an input that is not stated; empty for one that is
     * @param input an input
     * @param value its value as a file has it, if there is one
     * @param basis what its default rests on, or what the calculation does
     * @return its line, with title and what is allowed where it is not stated
     */
    public static String line(String mark, Input<?> input, Optional<String> value, String basis) {
        String assignment = mark + input.key() + " = "
                + value.or(() -> standing(input)).orElse(input.example().isEmpty() ? "..." : input.example());
        if (mark.isEmpty()) {
            return assignment + "\n";
        }
        String how = input.silence() == Input.Silence.COMPUTED ? "left out: " : "default: ";
        return String.format(
                        Locale.ROOT,
                        "%-" + COMMENT_COLUMN + "s # %s; %s%s%n",
                        assignment,
                        input.title(),
                        input.kind().allowed(),
                        basis.isEmpty() ? "" : "; " + how + basis)
                .replace("\r\n", "\n");
    }

    private static <T> Optional<String> standing(Input<T> input) {
        return input.usual().map(Usual::value).map(input.kind()::toml);
    }
}
