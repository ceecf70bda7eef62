package dev.penstock.claims.file;

import dev.penstock.claims.figure.Body;
import dev.penstock.cycles.arrangements.Cycle;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a claims file says, in SI.
 *
 * @param file name of the file, for messages
 * @param name what the claims are about
 * @param cycles cycles that are allowed
 * @param oxidizers oxidizers that are allowed, by id
 * @param fuels fuels that are allowed, by id
 * @param claims the claims, in the order of the file
 * @param given what is certain: values by path, as a concept file has them
 * @param priors beliefs that replace those of declarations, by path
 * @param body the vehicle's body, if it is known
 * @param aboutVehicle whether anything is said of a vehicle
 * @param about path of the figure that further facts should narrow; empty for the usual one
 */
public record ClaimsFile(
        String file,
        String name,
        List<Cycle> cycles,
        List<String> oxidizers,
        List<String> fuels,
        List<Claim> claims,
        Map<String, String> given,
        Map<String, Narrowed> priors,
        Optional<Body> body,
        boolean aboutVehicle,
        Optional<String> about) {

    /**
     * A belief that replaces that of a declaration.
     *
     * @param low lowest value, SI
     * @param high highest value, SI
     * @param likely most likely value, SI; empty if all are alike
     * @param source where it comes from
     */
    public record Narrowed(double low, double high, Optional<Double> likely, String source) {}

    public ClaimsFile {
        cycles = List.copyOf(cycles);
        oxidizers = List.copyOf(oxidizers);
        fuels = List.copyOf(fuels);
        claims = List.copyOf(claims);
        given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
        priors = Collections.unmodifiableMap(new LinkedHashMap<>(priors));
    }

    /**
     * @param table start of a path
     * @return whether anything below it is given
     */
    public boolean given(String table) {
        return given.keySet().stream().anyMatch(path -> path.startsWith(table));
    }
}
