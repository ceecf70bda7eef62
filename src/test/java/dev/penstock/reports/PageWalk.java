package dev.penstock.reports;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.provenance.Trail;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Walks the figures of a page: each opens its trail, and shows the value that stands there. */
final class PageWalk {

    private static final Pattern TABLE = Pattern.compile("<table.*?</table>", Pattern.DOTALL);
    private static final Pattern CAPTION = Pattern.compile("<caption>(.*?)</caption>", Pattern.DOTALL);
    private static final Pattern FIGURE =
            Pattern.compile("<t[dh](?: scope=\"row\")? class=\"n\">(.*?)</t[dh]>", Pattern.DOTALL);
    private static final Pattern LINK =
            Pattern.compile("<a class=\"trail\" href=\"#t:([^\"]+)\">(.*?)</a>", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("[-\u2212]?\\d+(\\.\\d+)?(e[-+]?\\d+)?");

    /** From SI to what people read: kilo, mega, bar, milli, per cent, minutes, rpm, tonnes, seconds of impulse. */
    private static final double[] UNITS = {
        1, 1e-3, 1e-5, 1e-6, 1e3, 100, 1 / 60.0, 30 / Math.PI, 180 / Math.PI, 1 / 9.80665
    };

    /** Their rows name a source in the row itself. */
    private static final Set<String> SOURCED =
            Set.of("Stated by the concept", "Stated by the plan", "Defaults", "Engines");

    /** Stands for a number that a thing does not have. */
    private static final String ABSENT = "-";

    private PageWalk() {}

    static void walk(String html, Trail trail) {
        List<String> faults = new ArrayList<>();
        int figures = 0;
        Matcher tables = TABLE.matcher(html);
        while (tables.find()) {
            Matcher caption = CAPTION.matcher(tables.group());
            String name = caption.find() ? caption.group(1) : "";
            Matcher cells = FIGURE.matcher(tables.group());
            while (!SOURCED.contains(name) && cells.find()) {
                String cell = cells.group(1);
                boolean stationNumber = cells.group().startsWith("<th") && name.equals("Stations");
                boolean absent = cell.equals(ABSENT);
                if (!cell.isBlank() && !absent && !stationNumber && !cell.contains("href=\"#t:")) {
                    faults.add(name + ": " + cell + " opens nothing");
                }
                figures++;
            }
        }
        assertThat(figures).isGreaterThan(10);
        faults.addAll(wrong(LINK, html, trail));
        assertThat(faults).isEmpty();
    }

    /** Walks the figures that open on another page. */
    static void walkTo(String page, String html, Trail trail) {
        Pattern link = Pattern.compile(
                "<a class=\"trail\" href=\"" + Pattern.quote(page) + "#t:([^\"]+)\">(.*?)</a>", Pattern.DOTALL);
        assertThat(link.matcher(html).results().count()).isGreaterThan(10);
        assertThat(wrong(link, html, trail)).isEmpty();
    }

    private static List<String> wrong(Pattern link, String html, Trail trail) {
        List<String> faults = new ArrayList<>();
        Matcher links = link.matcher(html);
        while (links.find()) {
            Optional<Trail.Entry> entry = trail.entry(links.group(1));
            if (entry.isEmpty()) {
                faults.add(links.group(2) + " opens " + links.group(1) + ", which is nowhere");
            } else if (!shows(links.group(2), entry.get().value())) {
                faults.add(links.group(2) + " opens " + links.group(1) + ", which is "
                        + entry.get().value());
            }
        }
        return faults;
    }

    /** Whether a text shows a value in some unit, to within half of its last digit. */
    private static boolean shows(String text, double value) {
        Matcher matcher = NUMBER.matcher(text);
        if (!matcher.find()) {
            return false;
        }
        if (text.contains("over 999")) {
            return value > 9.99;
        }
        if (text.contains("times the limit") && value > -9.99) {
            return false;
        }
        String number = matcher.group().replace('\u2212', '-');
        double shown = Double.parseDouble(number);
        int point = number.indexOf('.');
        int exponent = number.indexOf('e');
        int zeros = number.length() - number.replaceAll("0+$", "").length();
        int places = point < 0 ? -zeros : (exponent < 0 ? number.length() : exponent) - point - 1;
        double half =
                0.51 * Math.pow(10, (exponent < 0 ? 0 : Integer.parseInt(number.substring(exponent + 1))) - places);
        for (double unit : UNITS) {
            if (Math.abs(shown - unit * value) <= half) {
                return true;
            }
        }
        return false;
    }
}
