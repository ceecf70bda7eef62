package dev.penstock.reports.engine;

import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.reports.chart.Ink;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What drives a shaft and where its power goes; the two add up to the same. A main pump whose liquid turns a boost pump takes
 * that power too, which stands apart here, since it appears again on the shaft of the boost pump.
 *
 * @param shaft the shaft
 * @param main whether gas or a motor drives it, so that its power is no part of another shaft's
 * @param gives what drives it
 * @param takes pumps, gear and mechanical loss
 */
public record ShaftPowers(ShaftBalance shaft, boolean main, List<Share> gives, List<Share> takes) {

    /**
     * A part of the power of a shaft.
     *
     * @param label name for people
     * @param power the power (W)
     * @param ink its colour
     */
    public record Share(String label, double power, Ink ink) {}

    public ShaftPowers {
        gives = List.copyOf(gives);
        takes = List.copyOf(takes);
    }

    /**
     * @param balance balanced engine
     * @return its shafts, each with what it gives and takes
     */
    public static List<ShaftPowers> of(EngineBalance balance) {
        return balance.shafts().stream()
                .map(shaft -> new ShaftPowers(
                        shaft,
                        !boost(balance, shaft) || byGas(balance, shaft),
                        gives(balance, shaft),
                        takes(balance, shaft)))
                .toList();
    }

    /**
     * @param shares parts of a power
     * @return their sum (W)
     */
    public static double sum(List<Share> shares) {
        return shares.stream().mapToDouble(Share::power).sum();
    }

    private static List<Share> gives(EngineBalance balance, ShaftBalance shaft) {
        if (!shaft.turbines().isEmpty()) {
            return shaft.turbines().stream()
                    .map(t -> new Share(t.name(), t.power(), Ink.GAIN))
                    .toList();
        }
        return List.of(new Share(giver(balance, shaft), shaft.powerDelivered(), Ink.GAIN));
    }

    private static String giver(EngineBalance balance, ShaftBalance shaft) {
        if (shaft.otherDriver().isEmpty()) {
            return boost(balance, shaft) ? "gear" : "motor";
        }
        return byGas(balance, shaft) ? "boost turbine" : "hydraulic turbine";
    }

    /** Whether gas or warmed fuel turns it and nothing that a main pump gives. */
    private static boolean byGas(EngineBalance balance, ShaftBalance shaft) {
        return boost(balance, shaft)
                && shaft.pumps().stream()
                        .allMatch(pump -> balance
                                .concept()
                                .feed(key(balance, pump).side())
                                .boost()
                                .stream()
                                .anyMatch(b -> b.drive().byGas()));
    }

    private static List<Share> takes(EngineBalance balance, ShaftBalance shaft) {
        List<Share> takes = new ArrayList<>();
        for (PumpSizing pump : shaft.pumps()) {
            double drawn = boost(balance, shaft) ? 0 : drawn(balance, pump);
            takes.add(new Share(pump.name(), pump.power() - drawn, ink(balance, pump)));
            if (drawn > 0) {
                takes.add(new Share(pump.name() + ", for the boost pump", drawn, ink(balance, pump)));
            }
        }
        if (shaft.powerTakenOff() > 0) {
            takes.add(new Share("gear to the boost pump", shaft.powerTakenOff(), Ink.STEEL));
        }
        takes.add(new Share("mechanical loss", shaft.mechanicalLoss(), Ink.STEEL));
        return takes;
    }

    /** Power that a main pump's liquid gives to the boost pump before it (W). */
    private static double drawn(EngineBalance balance, PumpSizing pump) {
        PumpKey key = key(balance, pump);
        if (key.role() != PumpKey.Role.MAIN) {
            return 0;
        }
        return balance.shafts().stream()
                .filter(s -> s.otherDriver().isPresent()
                        && !byGas(balance, s)
                        && s.pumps().stream().anyMatch(b -> key(balance, b).side() == key.side()))
                .mapToDouble(ShaftBalance::powerDelivered)
                .sum();
    }

    private static PumpKey key(EngineBalance balance, PumpSizing pump) {
        return balance.machines().pumps().entrySet().stream()
                .filter(entry -> entry.getValue().equals(pump))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    private static boolean boost(EngineBalance balance, ShaftBalance shaft) {
        return shaft.pumps().stream().allMatch(pump -> key(balance, pump).role() == PumpKey.Role.BOOST);
    }

    /**
     * @param balance balanced engine
     * @param pump one of its pumps
     * @return the colour of what it pumps
     */
    public static Ink ink(EngineBalance balance, PumpSizing pump) {
        PumpKey key = key(balance, pump);
        return Ink.of(key.role() == PumpKey.Role.DILUENT ? Content.DILUENT : Content.of(key.side()));
    }
}
