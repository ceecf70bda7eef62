package dev.penstock.vehicle;

import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a vehicle's start mass or payload may turn out to be.
 *
 * @param figure which of them
 * @param samples vehicles sampled
 * @param closed how many of them close
 * @param failures why the others do not, in groups with counts, the most frequent first
 * @param likely the figure with everything at its most likely value
 * @param percentile5 value that 5 % of the samples that close stay below; not a number where none does
 * @param median the same for 50 %
 * @param percentile95 the same for 95 %
 * @param drivers what moves it, the strongest first
 */
public record VehicleSpread(
        Figure figure,
        int samples,
        int closed,
        Map<String, Integer> failures,
        double likely,
        double percentile5,
        double median,
        double percentile95,
        List<Driver> drivers) {

    /** What a plan leaves open. */
    public enum Figure {
        /** Start mass (kg), where the payload is given. */
        START_MASS("start_mass_kg", "start mass"),
        /** Payload (kg), where the start mass is given. */
        PAYLOAD("payload_kg", "payload"),
        /** Factor on the specific impulse (-), where both are given. */
        ISP_FACTOR("isp_factor", "specific impulse needed over that of the engines");

        private final String key;
        private final String title;

        Figure(String key, String title) {
            this.key = key;
            this.title = title;
        }

        /** @return key of documents */
        public String key() {
            return key;
        }

        /** @return as a sentence has it */
        public String title() {
            return title;
        }

        /**
         * @param plan what is asked for
         * @return what it leaves open
         */
        public static Figure of(VehiclePlan plan) {
            if (plan.payload().isPresent()) {
                return plan.startMass().isPresent() ? ISP_FACTOR : START_MASS;
            }
            return PAYLOAD;
        }

        /**
         * @param sizing a vehicle
         * @return its figure, SI
         */
        public double value(VehicleSizing sizing) {
            return switch (this) {
                case START_MASS -> sizing.startMass();
                case PAYLOAD -> sizing.payload();
                case ISP_FACTOR -> sizing.ispFactor().orElse(1);
            };
        }
    }

    /**
     * What moves the figure, by itself.
     *
     * @param name what it is
     * @param low the figure with it at its 5th percentile; of an engine, the 5th percentile of the figure
     * @param high the same for the 95th
     */
    public record Driver(String name, double low, double high) {

        /** @return distance between the two */
        public double length() {
            return Math.abs(high - low);
        }
    }

    public VehicleSpread {
        failures = Collections.unmodifiableMap(new LinkedHashMap<>(failures));
        drivers = List.copyOf(drivers);
    }
}
