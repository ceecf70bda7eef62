package dev.penstock.reports.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where a JSON document comes from; every document begins with it.
 *
 * @param answer name of the command whose answer it is
 * @param line the line that made it
 */
public record AnswerOrigin(String answer, String line) {

    /** Key of the line that made a document. */
    public static final String COMMAND = "command";

    /**
     * @param command name of a command
     * @param arguments everything on the command line, the name of the command included
     * @return origin of what it prints
     */
    public static AnswerOrigin of(String command, List<String> arguments) {
        List<String> words = new ArrayList<>(List.of("penstock"));
        words.addAll(arguments);
        return new AnswerOrigin(command, ShellWords.line(words));
    }

    /**
     * @param document an answer
     * @return the same with its origin before it
     */
    public Map<String, Object> with(Map<String, Object> document) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("penstock_version", Release.version());
        map.put("schema", schema(answer));
        map.put(COMMAND, line);
        map.putAll(document);
        return map;
    }

    /**
     * @param command name of a command
     * @return file that says what its documents hold, from the home folder
     */
    public static String schema(String command) {
        return "docs/schema/answers/" + command + ".json";
    }
}
