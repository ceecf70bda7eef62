package dev.penstock.reports.vehicle;

import dev.penstock.reports.text.Markup;
import dev.penstock.vehicle.ascent.OrbitPlane;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;

/**
 * An Orbit Ephemeris Message, version 2.0 of the open standard CCSDS 502.0, in its notation by key and value and in XML. Places in
 * km to a micrometre, speeds in km/s, times in atomic time to a nanosecond.
 *
 * @param name name of the vehicle
 * @param release when the flight begins
 * @param created when the message is written
 * @param moments places and motion, times rising
 */
public record EphemerisMessage(String name, Instant release, Instant created, List<Moment> moments) {

    /** Moments that are closer than this (s) would have one time in the message. */
    static final double SHORTEST = 2e-9;

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd'T'HH:mm:ss.SSSSSSSSS", Locale.ROOT)
            .withZone(ZoneOffset.UTC);
    private static final DateTimeFormatter SECOND =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final String VERSION = "2.0";
    private static final String COMMENT =
            "The launch site lies in the half plane of the x and z axes at release. Flight of a"
                    + " point mass over a round planet.";
    private static final List<String> PLACES = List.of("X", "Y", "Z");
    private static final List<String> MOTIONS = List.of("X_DOT", "Y_DOT", "Z_DOT");

    /**
     * A moment.
     *
     * @param time time since release (s)
     * @param place place and motion
     */
    public record Moment(double time, OrbitPlane.Place place) {}

    public EphemerisMessage {
        moments = List.copyOf(moments);
    }

    private String at(double time) {
        Duration since = Duration.ofNanos(BigDecimal.valueOf(time)
                .movePointRight(9)
                .setScale(0, RoundingMode.HALF_EVEN)
                .longValueExact());
        return TIME.format(release.plus(since));
    }

    private Map<String, String> metadata() {
        Map<String, String> map = new LinkedHashMap<>();
        map.put("OBJECT_NAME", name.strip().replaceAll("\\s+", " "));
        map.put("OBJECT_ID", "UNKNOWN");
        map.put("CENTER_NAME", "EARTH");
        map.put("REF_FRAME", "EME2000");
        map.put("TIME_SYSTEM", "TAI");
        map.put("START_TIME", at(moments.get(0).time()));
        map.put("STOP_TIME", at(moments.get(moments.size() - 1).time()));
        map.put("INTERPOLATION", "HERMITE");
        map.put("INTERPOLATION_DEGREE", "3");
        return map;
    }

    private static List<String> places(OrbitPlane.Place p) {
        return List.of(kilometres(p.x()), kilometres(p.y()), kilometres(p.z()));
    }

    private static List<String> motions(OrbitPlane.Place p) {
        return List.of(kilometres(p.vx()), kilometres(p.vy()), kilometres(p.vz()));
    }

    private static String kilometres(double metres) {
        return String.format(Locale.ROOT, "%.9f", metres / 1e3);
    }

    private String creation() {
        return SECOND.format(created.truncatedTo(ChronoUnit.SECONDS));
    }

    /** @return the message as lines of keys and values */
    public String keysAndValues() {
        StringBuilder text = new StringBuilder();
        text.append("CCSDS_OEM_VERS = ").append(VERSION).append('\n');
        text.append("CREATION_DATE = ").append(creation()).append('\n');
        text.append("ORIGINATOR = PENSTOCK\n\nMETA_START\nCOMMENT ")
                .append(COMMENT)
                .append('\n');
        metadata()
                .forEach((key, value) ->
                        text.append(key).append(" = ").append(value).append('\n'));
        text.append("META_STOP\n\n");
        for (Moment moment : moments) {
            StringJoiner line = new StringJoiner(" ");
            line.add(at(moment.time()));
            places(moment.place()).forEach(line::add);
            motions(moment.place()).forEach(line::add);
            text.append(line).append('\n');
        }
        return text.toString();
    }

    /** @return the message as XML */
    public String xml() {
        StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        text.append("<oem id=\"CCSDS_OEM_VERS\" version=\"").append(VERSION).append("\">\n<header>\n");
        element(text, "CREATION_DATE", creation());
        element(text, "ORIGINATOR", "PENSTOCK");
        text.append("</header>\n<body>\n<segment>\n<metadata>\n");
        element(text, "COMMENT", COMMENT);
        metadata().forEach((key, value) -> element(text, key, value));
        text.append("</metadata>\n<data>\n");
        for (Moment moment : moments) {
            text.append("<stateVector>\n");
            element(text, "EPOCH", at(moment.time()));
            values(text, PLACES, "km", places(moment.place()));
            values(text, MOTIONS, "km/s", motions(moment.place()));
            text.append("</stateVector>\n");
        }
        return text.append("</data>\n</segment>\n</body>\n</oem>\n").toString();
    }

    private static void element(StringBuilder text, String name, String content) {
        text.append('<').append(name).append('>').append(Markup.escape(content));
        text.append("</").append(name).append(">\n");
    }

    private static void values(StringBuilder text, List<String> names, String unit, List<String> values) {
        for (int i = 0; i < names.size(); i++) {
            text.append('<')
                    .append(names.get(i))
                    .append(" units=\"")
                    .append(unit)
                    .append("\">");
            text.append(values.get(i)).append("</").append(names.get(i)).append(">\n");
        }
    }
}
