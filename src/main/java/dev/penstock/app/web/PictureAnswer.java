package dev.penstock.app.web;

import dev.penstock.claims.picture.Facing;
import dev.penstock.claims.picture.Measured;
import dev.penstock.claims.picture.PictureMarks;
import dev.penstock.claims.picture.PictureMeasurement;
import dev.penstock.claims.picture.Rim;
import dev.penstock.claims.picture.Segment;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Notation;
import dev.penstock.quantities.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Measures marks on a picture. The picture itself never comes here: marks are numbers of pixels. */
final class PictureAnswer {

    private PictureAnswer() {}

    /**
     * @param body marks by their names, each a list of coordinates, and what is known
     * @return values with their errors, as claims
     */
    static Map<String, Object> of(RequestBody body) {
        if (body.text("known").isBlank()) {
            throw new Refusal(422, "write how long the known length is, for example 3.7 m");
        }
        double known = number(body, "known", Dimension.LENGTH).orElse(0);
        PictureMeasurement measured = new PictureMeasurement(new PictureMarks(
                body.decimal("width"),
                number(body, "view", Dimension.ANGLE).orElse(0),
                body.decimal("mark"),
                segment(body.decimals("reference"), "the known length")
                        .orElseThrow(() -> new Refusal(422, "mark the known length first")),
                known,
                number(body, "error", Dimension.LENGTH).orElse(0),
                body.flag("along"),
                number(body, "depth", Dimension.LENGTH),
                segment(body.decimals("throat"), "the throat"),
                rim(body.decimals("exit")),
                segment(body.decimals("length"), "the length"),
                facing(body.text("facing"))));
        return Map.of(
                "tilt",
                Notation.significant(Math.toDegrees(measured.tilt()), 3) + "°",
                "distance",
                Notation.significant(measured.distance(), 3) + " m",
                "facing",
                facing(measured, body.text("facing")),
                "values",
                measured.values().stream().map(PictureAnswer::value).toList());
    }

    private static Facing facing(String said) {
        return switch (said) {
            case "towards" -> Facing.TOWARDS;
            case "away" -> Facing.AWAY;
            default -> Facing.UNKNOWN;
        };
    }

    private static String facing(PictureMeasurement measured, String said) {
        if (!measured.facingMatters()) {
            return "Seen from the side, or without a throat: which way the exit faces changes nothing.";
        }
        return facing(said) == Facing.UNKNOWN
                ? "The rim looks the same whichever way the exit faces; say which, and the throat and the length are corrected for their"
                        + " distance, with a smaller error."
                : "The throat and the length are corrected for being "
                        + (facing(said) == Facing.TOWARDS ? "farther away" : "nearer") + " than the exit.";
    }

    private static OptionalDouble number(RequestBody body, String name, Dimension dimension) {
        if (body.text(name).isBlank()) {
            return OptionalDouble.empty();
        }
        Optional<Double> value = Units.parse(body.text(name), dimension).filter(Double::isFinite);
        return OptionalDouble.of(value.orElseThrow(() ->
                new Refusal(422, "\"" + body.text(name) + "\" cannot be used: write " + dimension.description())));
    }

    private static Optional<Segment> segment(List<Double> marks, String what) {
        if (marks.isEmpty()) {
            return Optional.empty();
        }
        if (marks.size() != 4) {
            throw new Refusal(422, what + " needs two marks");
        }
        return Optional.of(new Segment(marks.get(0), marks.get(1), marks.get(2), marks.get(3)));
    }

    private static Optional<Rim> rim(List<Double> marks) {
        if (marks.isEmpty()) {
            return Optional.empty();
        }
        if (marks.size() != 6) {
            throw new Refusal(
                    422, "the exit needs three marks: both ends of its longest diameter, and its rim between them");
        }
        return Optional.of(new Rim(
                new Segment(marks.get(0), marks.get(1), marks.get(2), marks.get(3)), marks.get(4), marks.get(5)));
    }

    private static Map<String, Object> value(Measured m) {
        String marks = Notation.PERCENT.write(m.pixel());
        String perspective = Notation.PERCENT.write(m.perspective());
        String known = Notation.PERCENT.write(m.reference());
        return Map.of(
                "path",
                m.path(),
                "title",
                m.title(),
                "value",
                text(m, m.value()),
                "within",
                text(m, m.half()),
                "pixel",
                marks,
                "perspective",
                perspective,
                "reference",
                known,
                "source",
                "measured in a picture: marks " + marks + ", perspective " + perspective + ", known length " + known);
    }

    private static String text(Measured m, double value) {
        return Notation.significant(m.unit(), 4).writeWithUnit(value);
    }
}
