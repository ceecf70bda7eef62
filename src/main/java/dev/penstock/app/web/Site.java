package dev.penstock.app.web;

import dev.penstock.claims.answer.JudgeEffort;
import dev.penstock.quantities.UnitSystem;
import dev.penstock.reports.page.Pages;
import freemarker.cache.ClassTemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The pages, the style sheet and the scripts of the local page, from the program's own archive. */
final class Site {

    private static final Pattern SCRIPT = Pattern.compile("[a-z]{1,20}\\.js");

    /**
     * A page.
     *
     * @param path path of the page
     * @param id name of its template and script
     * @param title title in the bar
     */
    record Page(String path, String id, String title) {

        /** Templates see public classes only, so they are given plain values. */
        private Map<String, String> map() {
            return Map.of("path", path, "id", id, "title", title);
        }
    }

    static final List<Page> PAGES = List.of(
            new Page("/", "engine", "Engine"),
            new Page("/together", "together", "Side by side"),
            new Page("/explore", "explore", "Explore"),
            new Page("/studies", "studies", "Studies"),
            new Page("/jacket", "jacket", "Jacket"),
            new Page("/vehicle", "vehicle", "Vehicle"),
            new Page("/claims", "claims", "Claims"));

    private final Configuration templates = configuration();

    /**
     * @param page page
     * @return its HTML
     */
    String html(Page page) {
        StringWriter out = new StringWriter();
        try {
            templates
                    .getTemplate(page.id() + ".ftlh")
                    .process(
                            Map.of(
                                    "pages", PAGES.stream().map(Page::map).toList(),
                                    "here", page.map(),
                                    "units",
                                            Arrays.stream(UnitSystem.values())
                                                    .map(u -> Map.of("id", u.id(), "title", u.title()))
                                                    .toList(),
                                    "usual_samples", JudgeEffort.USUAL.samples()),
                            out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (TemplateException e) {
            throw new IllegalStateException(e);
        }
        return out.toString();
    }

    /** @return style sheet: the colours and forms of the reports, and what the local page adds */
    String style() {
        return Pages.style() + resource("penstock.css").orElseThrow();
    }

    /**
     * @param name file name
     * @return the script, if there is one of that name
     */
    Optional<String> script(String name) {
        return SCRIPT.matcher(name).matches() ? resource(name) : Optional.empty();
    }

    /** @return a term and its sentence on each line */
    String glossary() {
        return resource("glossary.txt").orElseThrow();
    }

    private static Optional<String> resource(String name) {
        try (InputStream in = Site.class.getResourceAsStream(name)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Configuration configuration() {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setTemplateLoader(new ClassTemplateLoader(Site.class, ""));
        configuration.setDefaultEncoding("UTF-8");
        configuration.setLocale(Locale.ROOT);
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        return configuration;
    }
}
