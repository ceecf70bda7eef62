package dev.penstock.app;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;

/**
 * Flies a flight again from its document: Runge and Kutta's classical method in polar coordinates, with the standard atmosphere and
 * nothing else of Penstock.
 */
final class Refly {

    private static final double STEP = 0.1;

    private final JsonNode flight;
    private final StandardAtmosphere1976 air = new StandardAtmosphere1976();
    private final double mu;
    private final double ground;
    private final double rotation;

    // radius, angle, speed upwards, speed along, mass
    private double[] y;
    private double time;
    private int part;
    private double coastEnd;
    private double burnEnd;
    private boolean alongMotion;
    private boolean covered;
    private double uncovered = Double.NaN;

    Refly(JsonNode flight) {
        this.flight = flight;
        this.mu = flight.at("/planet/gravitational_parameter_m3_s2").doubleValue();
        this.ground = flight.at("/planet/radius_m").doubleValue();
        this.rotation = flight.at("/planet/rotation_rate_rad_s").doubleValue()
                * Math.cos(flight.get("inclination_rad").doubleValue());
    }

    double time() {
        return time;
    }

    /** When the fairing went overboard (s); not a number where it did not. */
    double uncovered() {
        return uncovered;
    }

    double altitude() {
        return y[0] - ground;
    }

    double speed() {
        return Math.hypot(y[2], y[3]);
    }

    double mass() {
        return y[4];
    }

    Refly toOrbit() {
        y = new double[] {
            ground, 0, 0, rotation * ground, flight.get("start_mass_kg").doubleValue()
        };
        double level = flight.get("insertion_altitude_m").doubleValue();
        JsonNode second = flight.path("second_burn");
        covered = flight.has("fairing");
        burnEnd = begin();
        if (second.isMissingNode()) {
            return until(
                    flight.has("c3_m2_s2")
                            ? flight.get("c3_m2_s2").doubleValue() / 2
                            : -mu
                                    / (2 * ground
                                            + level
                                            + flight.get("apogee_altitude_m").doubleValue()));
        }
        until(-mu / (2 * ground + 2 * level));
        alongMotion = true;
        coastEnd = time + second.get("coast_s").doubleValue();
        return until(second.get("final_energy_J_kg").doubleValue());
    }

    private Refly until(double goal) {
        while (time < coastEnd || energy(y) < goal) {
            double step = STEP;
            for (String key : new String[] {"tilt_from_s", "path_from_s", "tangent_from_s"}) {
                double at = flight.at("/steering/" + key).doubleValue();
                step = time < at ? Math.min(step, at - time) : step;
            }
            step = time < coastEnd ? Math.min(step, coastEnd - time) : step;
            double[] next = stepped(step);
            if (time >= coastEnd
                    && next[4] < burnEnd
                    && part < flight.get("parts").size() - 1) {
                step *= (y[4] - burnEnd) / (y[4] - next[4]);
                y = stepped(step);
                time += step;
                if (covered && last(flight.get("fairing").get("parts")).equals(part(part))) {
                    burnEnd -= uncover();
                }
                y[4] -= flight.get("parts").get(part).get("dropped_after_kg").doubleValue();
                part++;
                burnEnd = begin();
                continue;
            }
            if (time >= coastEnd && energy(next) > goal) {
                step *= (goal - energy(y)) / (energy(next) - energy(y));
                y = stepped(step);
                time += step;
                return this;
            }
            if (mayUncover(time + step) && heating(next) < heatingLimit()) {
                double now = heating(y);
                step *= Math.max(0, Math.min(1, (now - heatingLimit()) / (now - heating(next))));
                y = stepped(step);
                time += step;
                burnEnd -= uncover();
                continue;
            }
            y = next;
            time += step;
        }
        return this;
    }

    private double heatingLimit() {
        return flight.at("/fairing/heating_limit_W_m2").doubleValue();
    }

    /** Whether the fairing is there and may go overboard in this part and at this time. */
    private boolean mayUncover(double at) {
        if (!covered || at <= flight.at("/steering/tangent_from_s").doubleValue()) {
            return false;
        }
        for (JsonNode name : flight.get("fairing").get("parts")) {
            if (name.asText().equals(part(part))) {
                return true;
            }
        }
        return false;
    }

    private double uncover() {
        double mass = flight.at("/fairing/mass_kg").doubleValue();
        y[4] -= mass;
        covered = false;
        uncovered = time;
        return mass;
    }

    private String part(int i) {
        return flight.get("parts").get(i).get("name").asText();
    }

    private static String last(JsonNode names) {
        return names.get(names.size() - 1).asText();
    }

    private double heating(double[] s) {
        double airSpeed = Math.hypot(s[2], s[3] - rotation * s[0]);
        return 0.5 * air.at(Math.max(s[0] - ground, 0)).density() * Math.pow(airSpeed, 3);
    }

    private double begin() {
        JsonNode now = flight.get("parts").get(part);
        coastEnd = time + now.get("coast_before_s").doubleValue();
        y[4] -= now.get("spent_before_kg").doubleValue();
        return y[4] - now.get("burned_kg").doubleValue();
    }

    private double energy(double[] s) {
        return (s[2] * s[2] + s[3] * s[3]) / 2 - mu / s[0];
    }

    private double[] stepped(double h) {
        double[] k1 = rates(time, y);
        double[] k2 = rates(time + h / 2, moved(y, k1, h / 2));
        double[] k3 = rates(time + h / 2, moved(y, k2, h / 2));
        double[] k4 = rates(time + h * (1 - 1e-12), moved(y, k3, h));
        double[] next = y.clone();
        for (int i = 0; i < y.length; i++) {
            next[i] += h / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
        }
        return next;
    }

    private static double[] moved(double[] s, double[] k, double h) {
        double[] moved = s.clone();
        for (int i = 0; i < s.length; i++) {
            moved[i] += h * k[i];
        }
        return moved;
    }

    private double[] rates(double t, double[] s) {
        double radius = s[0];
        double along = s[3] - rotation * radius;
        double airSpeed = Math.hypot(s[2], along);
        var state = air.at(Math.max(radius - ground, 0));
        double q = 0.5 * state.density() * airSpeed * airSpeed;
        double drag = q
                * line(flight.at("/drag/mach"), flight.at("/drag/drag_coefficient"), airSpeed / state.soundSpeed())
                * flight.at("/drag/reference_area_m2").doubleValue();
        boolean burning = t >= coastEnd;
        double vacuum = 0;
        double lost = 0;
        double flow = 0;
        if (burning) {
            for (JsonNode group : flight.get("parts").get(part).get("engines")) {
                for (JsonNode engine : flight.get("engines")) {
                    if (engine.get("name").equals(group.get("engine"))) {
                        double count = group.get("count").doubleValue();
                        double full = engine.get("thrust_vacuum_N").doubleValue();
                        vacuum += count * full;
                        lost += count
                                * (full
                                        - line(
                                                engine.get("ambient_pressure_Pa"),
                                                engine.get("thrust_N"),
                                                state.pressure()));
                        flow += count * engine.get("mass_flow_kg_s").doubleValue();
                    }
                }
            }
        }
        double throttle = burning ? throttle(q, s[4], lost, vacuum) : 0;
        double thrust = burning ? throttle * vacuum - lost : 0;
        double pitch = alongMotion ? Math.atan2(s[2], s[3]) : pitch(t, q, Math.atan2(s[2], along));
        double brake = airSpeed > 0 ? drag / s[4] / airSpeed : 0;
        double up = thrust / s[4] * Math.sin(pitch) - brake * s[2] - mu / (radius * radius);
        double on = thrust / s[4] * Math.cos(pitch) - brake * along;
        return new double[] {s[2], s[3] / radius, up + s[3] * s[3] / radius, on - s[2] * s[3] / radius, -throttle * flow
        };
    }

    private double throttle(double q, double mass, double lost, double vacuum) {
        double least = flight.at("/limits_asked/minimum_throttle").doubleValue();
        double limit = flight.at("/limits_asked/dynamic_pressure_Pa").doubleValue();
        double from = flight.at("/throttle_rule/from_dynamic_pressure_Pa").doubleValue();
        double setting =
                Math.min(1, (flight.at("/limits_asked/acceleration_m_s2").doubleValue() * mass + lost) / vacuum);
        if (q > from) {
            setting = Math.min(setting, 1 - (q - from) / (limit - from) * (1 - least));
        }
        return Math.max(least, setting);
    }

    private double pitch(double t, double q, double path) {
        JsonNode law = flight.get("steering");
        if (t >= law.get("tangent_from_s").doubleValue()) {
            double wanted = Math.atan(law.get("tangent_start").doubleValue()
                    + law.get("tangent_rate_1_s").doubleValue()
                            * (t - law.get("tangent_from_s").doubleValue()));
            double most = law.get("angle_load_Pa").doubleValue() / Math.max(1, q);
            return Math.max(path - most, Math.min(path + most, wanted));
        }
        if (t >= law.get("path_from_s").doubleValue()) {
            return path;
        }
        return Math.PI / 2
                - (t >= law.get("tilt_from_s").doubleValue()
                        ? law.get("tilt_rad").doubleValue()
                        : 0);
    }

    private static double line(JsonNode xs, JsonNode ys, double x) {
        int last = xs.size() - 1;
        if (x <= xs.get(0).doubleValue()) {
            return ys.get(0).doubleValue();
        }
        for (int i = 1; i <= last; i++) {
            double to = xs.get(i).doubleValue();
            if (x <= to) {
                double from = xs.get(i - 1).doubleValue();
                double low = ys.get(i - 1).doubleValue();
                return low + (x - from) / (to - from) * (ys.get(i).doubleValue() - low);
            }
        }
        return ys.get(last).doubleValue();
    }
}
