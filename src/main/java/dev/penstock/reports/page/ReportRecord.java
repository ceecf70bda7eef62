package dev.penstock.reports.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.penstock.reports.text.JsonText;
import dev.penstock.reports.text.Markup;
import dev.penstock.reports.text.ShellWords;
import dev.penstock.reports.text.Software;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a page was made from, held by the page itself: the files, the command and the versions, so that the page can be
 * made again from nothing but itself.
 *
 * @param command command of Penstock that makes the page
 * @param options its further options, in order
 * @param changes values by dotted path that replaced or added to what the files say
 * @param cases names of the files that the command is given
 * @param files text of every file by its name, a relative path; those of engines of a vehicle included
 * @param software what the numbers were made with
 */
public record ReportRecord(
        String command,
        List<String> options,
        Map<String, String> changes,
        List<String> cases,
        Map<String, String> files,
        Software software) {

    /** Names what follows, so that a later form can be told from this one. */
    private static final String FORM = "penstock report 1";

    private static final String PLACE = "</footer>";
    private static final Pattern EMBEDDED =
            Pattern.compile("<a id=\"record\"[^>]* href=\"data:application/json;base64,([A-Za-z0-9+/=]+)\"");

    public ReportRecord {
        options = List.copyOf(options);
        changes = Collections.unmodifiableMap(new TreeMap<>(changes));
        cases = List.copyOf(cases);
        files = Collections.unmodifiableMap(new TreeMap<>(files));
    }

    /** @return the command line that makes the page, as it is typed beside the files */
    public String line() {
        List<String> words = new ArrayList<>(List.of("penstock", command));
        words.addAll(arguments());
        return ShellWords.line(words);
    }

    /** @return what follows the command on its line */
    public List<String> arguments() {
        List<String> arguments = new ArrayList<>(cases);
        arguments.addAll(options);
        changes.forEach((path, value) -> arguments.addAll(List.of("--set", path + "=" + value)));
        return arguments;
    }

    /**
     * @param html a page without a record
     * @return the page with this record in its footer, and each file as a link that saves it
     */
    public String addTo(String html) {
        StringBuilder text = new StringBuilder("<p>Made by <code>")
                .append(Markup.escape(line()))
                .append("</code> from");
        String comma = " ";
        for (Map.Entry<String, String> file : files.entrySet()) {
            text.append(comma).append(link(file.getKey(), "application/toml", "", file.getValue(), file.getKey()));
            comma = ", ";
        }
        text.append(", which this page holds, as well as ")
                .append(link("record.json", "application/json", " id=\"record\"", json(), "a record of all of it"))
                .append(
                        ": <code>penstock reproduce</code> with this page makes it again and compares every number.</p>\n")
                .append("<details><summary>Versions of the data files</summary><p class=\"versions\">");
        software.files().forEach((name, digest) -> text.append("<span>")
                .append(Markup.escape(name))
                .append(" <code>")
                .append(Software.shown(digest))
                .append("</code></span> "));
        text.append("</p></details>\n");
        int place = html.lastIndexOf(PLACE);
        return html.substring(0, place) + text + html.substring(place);
    }

    private static String link(String name, String type, String more, String content, String shown) {
        String data = Base64.getEncoder().encodeToString(content.getBytes(StandardCharsets.UTF_8));
        String file = name.substring(name.lastIndexOf('/') + 1);
        return "<a" + more + " download=\"" + Markup.escape(file) + "\" href=\"data:" + type + ";base64," + data + "\">"
                + Markup.escape(shown) + "</a>";
    }

    private String json() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("form", FORM);
        map.put("command", command);
        map.put("options", options);
        map.put("changes", changes);
        map.put("cases", cases);
        map.put("files", files);
        map.put(
                "made_with",
                Map.of("penstock", software.penstock(), "coolprop", software.coolProp(), "java", software.java()));
        map.put("data", software.data());
        map.put("data_files_sha256", software.files());
        return JsonText.of(new TreeMap<>(map));
    }

    /**
     * @param html a page
     * @return the record that it holds; empty if it holds none that can be read
     */
    public static Optional<ReportRecord> in(String html) {
        Matcher matcher = EMBEDDED.matcher(html);
        if (!matcher.find()) {
            return Optional.empty();
        }
        try {
            byte[] json = Base64.getDecoder().decode(matcher.group(1));
            JsonNode root = new ObjectMapper().readTree(new String(json, StandardCharsets.UTF_8));
            if (!root.path("form").asText().equals(FORM)) {
                return Optional.empty();
            }
            JsonNode with = root.path("made_with");
            return Optional.of(new ReportRecord(
                    root.path("command").asText(),
                    texts(root.path("options")),
                    map(root.path("changes")),
                    texts(root.path("cases")),
                    map(root.path("files")),
                    new Software(
                            with.path("penstock").asText(),
                            with.path("coolprop").asText(),
                            root.path("data").asText(),
                            with.path("java").asText(),
                            map(root.path("data_files_sha256")))));
        } catch (JsonProcessingException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static List<String> texts(JsonNode array) {
        List<String> list = new ArrayList<>();
        array.forEach(node -> list.add(node.asText()));
        return list;
    }

    private static Map<String, String> map(JsonNode object) {
        Map<String, String> map = new LinkedHashMap<>();
        object.properties().forEach(e -> map.put(e.getKey(), e.getValue().asText()));
        return map;
    }

    /**
     * @param here what is in use now
     * @return one sentence for each difference that can move a number
     */
    public List<String> differences(Software here) {
        List<String> list = new ArrayList<>();
        compare(list, "Penstock", software.penstock(), here.penstock());
        compare(list, "CoolProp", software.coolProp(), here.coolProp());
        compare(list, "Java", software.java(), here.java());
        software.files().forEach((name, digest) -> {
            String now = here.files().get(name);
            if (now == null) {
                list.add(name + " is not here");
            } else if (!now.equals(digest)) {
                list.add(name + " was " + Software.shown(digest) + ", here it is " + Software.shown(now));
            }
        });
        here.files().keySet().stream()
                .filter(name -> !software.files().containsKey(name))
                .forEach(name -> list.add(name + " was not there"));
        return list;
    }

    private static void compare(List<String> list, String what, String then, String now) {
        if (!then.equals(now)) {
            list.add("made with " + what + " " + then + ", here it is " + now);
        }
    }
}
