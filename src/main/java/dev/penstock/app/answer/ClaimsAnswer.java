package dev.penstock.app.answer;

import dev.penstock.app.edit.TomlEdit;
import dev.penstock.claims.figure.ClaimFigure;
import dev.penstock.claims.figure.ClaimPaths;
import dev.penstock.claims.file.Claim;
import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.file.ClaimsInputs;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.Input;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Notation;
import dev.penstock.study.space.CaseFigures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the page of claims is told of a file: every claim as it is written, what is given, and what may be chosen. */
public final class ClaimsAnswer {

    private static final List<String> FIELDS = ClaimsInputs.CLAIMS.keys();

    /** What people claim most, to begin with. */
    private static final List<String> USUAL = List.of(
            "engine.isp_vacuum",
            "engine.isp_sea_level",
            "engine.thrust_vacuum",
            "engine.thrust_sea_level",
            "engine.chamber_pressure",
            "engine.mass",
            "engine.mass_flow",
            "nozzle.area_ratio",
            "nozzle.exit_diameter",
            "nozzle.throat_diameter",
            "nozzle.length",
            "propellants.mixture_ratio",
            "vehicle.start_mass",
            "vehicle.payload",
            "vehicle.height",
            "vehicle.burn_time");

    /** What can be claimed, by path; the same for every file. */
    private static final List<Map<String, String>> PATHS = paths();

    private final FluidLibrary fluids;

    public ClaimsAnswer(FluidLibrary fluids) {
        this.fluids = fluids;
    }

    /**
     * @param file what the text and its changes say
     * @param text text of the file
     * @param changes values by path that replace, add to or take out of what the text says
     * @return the file as the page shows it
     */
    public Map<String, Object> of(ClaimsFile file, String text, Map<String, String> changes) {
        Map<String, String> written = changed(TomlEdit.written(text), changes);
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", file.name());
        map.put("cycles", file.cycles().stream().map(Cycle::id).toList());
        map.put("oxidizers", file.oxidizers());
        map.put("fuels", file.fuels());
        map.put("claims", claims(file, written));
        map.put(
                "given",
                file.given().entrySet().stream()
                        .map(e -> Map.of("path", e.getKey(), "title", title(e.getKey()), "value", e.getValue()))
                        .toList());
        map.put(
                "priors",
                file.priors().entrySet().stream()
                        .map(e -> Map.of(
                                "path", e.getKey(),
                                "title", title(e.getKey()),
                                "low", number(e.getKey(), e.getValue().low()),
                                "high", number(e.getKey(), e.getValue().high()),
                                "source", e.getValue().source()))
                        .toList());
        file.body()
                .ifPresent(b -> map.put(
                        "body",
                        Map.of(
                                "base_diameter", number(b.baseDiameter(), "m"),
                                "top_diameter", number(b.topDiameter(), "m"),
                                "height", number(b.height(), "m"))));
        map.put("choices", choices());
        return map;
    }

    private static List<Map<String, String>> paths() {
        List<String> known = new ArrayList<>(USUAL);
        for (boolean vehicle : new boolean[] {false, true}) {
            CaseFigures.usual(vehicle)
                    .forEach(f -> known.add((vehicle ? "vehicle." : "") + CaseFigures.withoutUnit(f)));
        }
        return known.stream()
                .distinct()
                .filter(path -> ClaimPaths.dimension(path).isPresent())
                .map(path -> Map.of("path", path, "title", title(path)))
                .toList();
    }

    private Map<String, Object> choices() {
        return Map.of(
                "cycles",
                Cycle.all().stream()
                        .map(c -> Map.of("id", c.id(), "title", c.title()))
                        .toList(),
                "oxidizers",
                fluids.having(Propellant.Role.OXIDIZER),
                "fuels",
                fluids.having(Propellant.Role.FUEL),
                "paths",
                PATHS);
    }

    private static Map<String, String> changed(Map<String, String> written, Map<String, String> changes) {
        Map<String, String> map = new LinkedHashMap<>(written);
        changes.forEach((path, value) -> {
            if (value.isEmpty()) {
                map.keySet().removeIf(key -> key.equals(path) || key.startsWith(path + "."));
            } else {
                map.put(path, value);
            }
        });
        return map;
    }

    private static List<Map<String, Object>> claims(ClaimsFile file, Map<String, String> written) {
        List<Map<String, Object>> list = new ArrayList<>();
        for (Claim claim : file.claims()) {
            Map<String, String> fields = new LinkedHashMap<>();
            for (String field : FIELDS) {
                String text = written.get("claims." + claim.path() + "." + field);
                if (text != null) {
                    fields.put(field, text);
                }
            }
            boolean own = !fields.isEmpty();
            if (!own) {
                read(claim, fields);
            }
            list.add(Map.of(
                    "path", claim.path(),
                    "title", title(claim.path()),
                    "fields", fields,
                    "unit", unit(claim.path()),
                    "own", own));
        }
        return list;
    }

    /** A claim that no line of its own states, as it was read. */
    private static void read(Claim claim, Map<String, String> fields) {
        claim.value().ifPresent(v -> fields.put("value", number(claim.path(), v)));
        if (claim.value().isPresent()) {
            fields.put(
                    "within",
                    number(claim.path(), claim.high().orElse(0) - claim.value().getAsDouble()));
        } else {
            boolean both = claim.low().isPresent() && claim.high().isPresent();
            claim.low().ifPresent(v -> fields.put(both ? "low" : "at_least", number(claim.path(), v)));
            claim.high().ifPresent(v -> fields.put(both ? "high" : "at_most", number(claim.path(), v)));
        }
        fields.put("source", claim.source());
    }

    private static String number(String path, double value) {
        return number(value, unit(path));
    }

    private static String unit(String path) {
        return ClaimPaths.dimension(path).map(Dimension::siUnit).orElse("");
    }

    private static String number(double value, String unit) {
        return Notation.significant(unit, 6).writeWithUnit(value);
    }

    private static String title(String path) {
        Optional<String> ofInput = ClaimPaths.input(path).map(Input::title);
        return ofInput.or(() -> ClaimPaths.figure(path).map(ClaimFigure::title)).orElse("");
    }
}
