package dev.penstock.study;

import dev.penstock.errors.InvalidInput;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Units;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/**
 * A pair of propellants that an engine concept is tried with.
 *
 * @param oxidizer fluid id
 * @param fuel fluid id
 * @param mixtureRatio oxidizer over fuel by mass, engine total (-)
 */
public record PropellantPair(String oxidizer, String fuel, double mixtureRatio) {

    private static final String USUAL = "/dev/penstock/study/usual-pairs.txt";

    /** @return pairs in use, from the resource {@code usual-pairs.txt} */
    public static List<PropellantPair> usual() {
        try (InputStream in = PropellantPair.class.getResourceAsStream(USUAL)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(PropellantPair::parse)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(USUAL, e);
        }
    }

    /**
     * @param text oxidizer, fuel and mixture ratio, for example "oxygen/methane/3.4"
     * @return the pair
     * @throws InvalidInput if the text is not of that form
     */
    public static PropellantPair parse(String text) {
        String[] parts = text.split("/");
        double ratio =
                parts.length == 3 ? Units.parse(parts[2], Dimension.RATIO).orElse(-1.0) : -1;
        if (!(ratio > 0)) {
            throw new InvalidInput(
                    "", "--pair", text, "write oxidizer/fuel/mixture ratio, for example oxygen/methane/3.4");
        }
        return new PropellantPair(parts[0].strip(), parts[1].strip(), ratio);
    }

    /** @return the pair as changes to a concept file */
    Map<String, String> changes() {
        return Map.of(
                "propellants.oxidizer",
                '"' + oxidizer + '"',
                "propellants.fuel",
                '"' + fuel + '"',
                "propellants.mixture_ratio",
                Double.toString(mixtureRatio));
    }

    @Override
    public String toString() {
        return oxidizer + " / " + fuel;
    }
}
