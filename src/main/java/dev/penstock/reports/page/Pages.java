package dev.penstock.reports.page;

import dev.penstock.reports.chart.DrawingFont;
import dev.penstock.reports.chart.Ink;
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
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** Fills the page templates. Every value is escaped unless a template says that it is finished markup. */
public final class Pages {

    private static final Configuration TEMPLATES = configuration();

    private Pages() {}

    /**
     * @param template name of the template
     * @param model values by name
     * @return the page
     */
    public static String fill(String template, Map<String, Object> model) {
        Map<String, Object> all = new HashMap<>(model);
        all.put("style", style());
        StringWriter page = new StringWriter();
        try {
            TEMPLATES.getTemplate(template).process(all, page);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (TemplateException e) {
            throw new IllegalStateException(e);
        }
        return page.toString();
    }

    /** @return the style sheet of all pages, colours and the font of drawings included */
    public static String style() {
        return ":root{" + Ink.lightTheme() + "}\n@media screen and (prefers-color-scheme:dark){:root{" + Ink.darkTheme()
                + "}}\n" + DrawingFont.css() + "\n" + resource("page.css");
    }

    private static String resource(String name) {
        try (InputStream in = Pages.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not on the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Configuration configuration() {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setTemplateLoader(new ClassTemplateLoader(Pages.class, ""));
        configuration.setDefaultEncoding("UTF-8");
        configuration.setLocale(Locale.ROOT);
        configuration.setNumberFormat("computer");
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setWrapUncheckedExceptions(true);
        return configuration;
    }
}
